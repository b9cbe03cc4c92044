"""Callbacks of providers: kept as they came, until something is made of them."""

from __future__ import annotations

from django.db import models
from django.db.models import Q
from django.db.models.functions import Now

from aftercare.models.line import Line


class StoredCallback(models.Model):
    """One call of a provider at a line's address, known to be its own. Once it is understood, it is gone.

    One that cannot be understood stays, with its ``problem`` for a person. Written by one plain statement (webhooks),
    which is why the database knows the defaults.
    """

    # Its unique constraint begins with the line: an index of its own would only cost.
    line = models.ForeignKey(Line, on_delete=models.CASCADE, related_name="callbacks", db_index=False)
    digest = models.CharField(max_length=64)  # SHA-256 of address and body in hexadecimals
    url = models.TextField()
    headers = models.JSONField()  # names in lower case; none that says who called
    body = models.BinaryField()
    received_at = models.DateTimeField(db_default=Now())
    tries = models.PositiveSmallIntegerField(db_default=0)  # in vain
    again_at = models.DateTimeField(null=True, blank=True)  # when it is tried again; null: at once
    waits = models.BooleanField(db_default=True)  # false: only a person can do something about it
    problem = models.CharField(max_length=400, blank=True, db_default="")

    class Meta:
        ordering = ["id"]
        constraints = [models.UniqueConstraint(fields=["line", "digest"], name="one_callback_a_line_and_digest")]
        indexes = [models.Index(fields=["id"], condition=Q(waits=True), name="callback_waits")]

    def __str__(self) -> str:
        return f"callback of {self.received_at:%Y-%m-%d %H:%M}"
