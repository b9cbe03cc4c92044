"""The owner's wordings, in versions. Where there is none, the first wording in templates/messages holds."""

from __future__ import annotations

from django.db import models

from studio.models import Staff, Studio


class Wording(models.Model):
    """One version of one text. The highest version is in force; a blank body means the first wording again."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="wordings")
    occasion = models.CharField(max_length=16)
    kind = models.CharField(max_length=24, blank=True)  # the variant: a service's kind or an answer's kind
    step = models.PositiveSmallIntegerField(default=0)
    channel = models.CharField(max_length=5)
    language = models.CharField(max_length=8)
    version = models.PositiveIntegerField()
    subject = models.CharField(max_length=200, blank=True)
    body = models.TextField(blank=True)
    at = models.DateTimeField()
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    class Meta:
        ordering = ["-version"]
        constraints = [
            models.UniqueConstraint(
                fields=["studio", "occasion", "kind", "step", "channel", "language", "version"],
                name="one_wording_a_version",
            )
        ]

    def __str__(self) -> str:
        return f"{self.occasion} {self.kind} {self.channel} {self.language}, version {self.version}"
