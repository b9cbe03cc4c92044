"""The owner's wordings, in versions, and the head of her letters. Where there is no version, the first wording in
templates/messages holds."""

from __future__ import annotations

from django.db import models

from studio.models import Staff, Studio


class Wording(models.Model):
    """One version of one text. The highest version is in force; a blank body means the first wording again.

    A caution can be added to: ``added`` stands below it. Other words in its place (a ``body``) are kept only with the
    professional who has seen them, and when.
    """

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="wordings")
    occasion = models.CharField(max_length=16)
    kind = models.CharField(max_length=24, blank=True)  # the variant: a service's kind or an answer's kind
    step = models.PositiveSmallIntegerField(default=0)
    channel = models.CharField(max_length=5)
    language = models.CharField(max_length=8)
    version = models.PositiveIntegerField()
    subject = models.CharField(max_length=200, blank=True)
    body = models.TextField(blank=True)
    added = models.TextField(blank=True)
    seen_by = models.CharField(max_length=120, blank=True)
    seen_on = models.DateField(null=True, blank=True)
    at = models.DateTimeField()
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    class Meta:
        ordering = ["-version"]
        constraints = [
            models.UniqueConstraint(
                fields=["studio", "occasion", "kind", "step", "channel", "language", "version"],
                name="one_wording_a_version",
            ),
            models.CheckConstraint(
                condition=~models.Q(occasion="caution")
                | models.Q(body="")
                | (~models.Q(seen_by="") & models.Q(seen_on__isnull=False)),
                name="no_other_caution_unseen",
            ),
        ]

    def __str__(self) -> str:
        return f"{self.occasion} {self.kind} {self.channel} {self.language}, version {self.version}"


class Letterhead(models.Model):
    """The logo above a studio's e-mails, made anew from what was uploaded. Without one its name stands there."""

    studio = models.OneToOneField(Studio, on_delete=models.CASCADE, related_name="letterhead")
    content = models.BinaryField()
    kind = models.CharField(max_length=12)  # image/png, image/jpeg
    width = models.PositiveSmallIntegerField()  # as it is shown, in CSS pixels
    height = models.PositiveSmallIntegerField()
    at = models.DateTimeField()
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    def __str__(self) -> str:
        return f"{self.kind}, {self.width} by {self.height}"
