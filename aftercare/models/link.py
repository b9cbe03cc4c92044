"""Links by which a client reaches her own pages without a sign-in."""

from __future__ import annotations

from django.db import models

from studio.models import Client


class Revocation(models.Model):
    """All links made for a client up to now open nothing any more. Links themselves are signed and kept nowhere."""

    client = models.ForeignKey(Client, on_delete=models.CASCADE, related_name="+")
    at = models.DateTimeField()
    why = models.CharField(max_length=20)  # wrong_person, asked, staff, forgotten, parted

    def __str__(self) -> str:
        return f"{self.why}, {self.at:%Y-%m-%d}"
