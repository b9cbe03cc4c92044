"""When messages fall due: one versioned row of rules a studio."""

from __future__ import annotations

from django.db import models

from studio.models import Staff, Studio


class RuleSet(models.Model):
    """The owner's numbers where they differ from ``core.timing.Rules``; the highest version is in force."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="rule_sets")
    version = models.PositiveIntegerField()
    values = models.JSONField(default=dict)
    at = models.DateTimeField()
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    class Meta:
        ordering = ["-version"]
        constraints = [models.UniqueConstraint(fields=["studio", "version"], name="one_rule_set_a_version")]

    def __str__(self) -> str:
        return f"rules, version {self.version}"
