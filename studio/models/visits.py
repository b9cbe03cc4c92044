"""Visits: what was booked, what was done and used, and how it looked afterwards."""

from __future__ import annotations

from datetime import datetime, timedelta

from django.core.validators import MaxValueValidator, MinValueValidator
from django.db import models
from django.utils.translation import gettext, pgettext_lazy
from django.utils.translation import gettext_lazy as _

from studio.models.clients import Client
from studio.models.people import Staff, Studio


class Service(models.TextChoices):
    """Kinds of service; the studio's own names for them are its ServiceName rows."""

    FULL_SET = "full set", _("full set")
    FILL = "fill", _("fill")
    REMOVAL = "removal", _("removal")
    PATCH_TEST = "patch test", _("patch test")
    TOUCH_UP = "touch-up", _("touch-up")
    LIFT = "lift", _("lift")
    CONSULTATION = "consultation", _("consultation")
    OTHER = "other", _("other")


SETS = (Service.FULL_SET, Service.FILL)


class Adhesive(models.Model):
    """An adhesive and its lot, as far as either is known."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="adhesives")
    product = models.CharField(_("product"), max_length=80, blank=True)
    lot = models.CharField(_("lot"), max_length=40, blank=True)
    dry_hours = models.PositiveSmallIntegerField(
        _("hours to keep dry"), null=True, blank=True, validators=[MaxValueValidator(72)]
    )
    set_aside_at = models.DateTimeField(null=True, blank=True)  # not to be used until somebody takes the mark back
    set_aside_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    marked_at = models.DateTimeField(null=True, blank=True)  # when its reactions first passed the owner's level
    looked_at = models.DateTimeField(null=True, blank=True)  # since then by the owner, who left it in use
    looked_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    class Meta:
        ordering = ["product", "lot"]
        constraints = [models.UniqueConstraint(fields=["studio", "product", "lot"], name="one_adhesive_a_lot")]

    def __str__(self) -> str:
        lot = gettext("lot %(lot)s") % {"lot": self.lot} if self.lot else ""
        return ", ".join(part for part in (self.product, lot) if part)


class Visit(models.Model):
    """One visit of one client. ``heard_at`` and ``known_booked`` keep imported history quiet."""

    class Status(models.TextChoices):
        BOOKED = "booked", _("booked")
        DONE = "done", _("done")
        CANCELLED = "cancelled", _("cancelled")
        MISSED = "missed", _("missed")

    class Remover(models.TextChoices):
        CREAM = "cream", _("cream remover")
        GEL = "gel", _("gel remover")

    class ShareSeen(models.TextChoices):
        SEEN = "seen", _("looked at")
        NOT_LOOKED = "not looked", _("not looked")

    class Outgrown(models.TextChoices):
        NONE = "none", pgettext_lazy("outgrown lashes", "none")
        SOME = "some", _("some")
        MANY = "many", _("many")

    class MirrorCheck(models.TextChoices):
        HAPPY = "happy", _("happy")
        TOUCHED_UP = "touched up", _("touched up")
        UNHAPPY = "unhappy", _("left unhappy")

    class TestResult(models.TextChoices):
        """Never “passed”, never “safe”: what was reported and seen, no more."""

        NO_SIGN = "no sign reported", _("no sign reported")
        SIGN = "sign", _("sign")
        LOOKED_AT = "looked at", _("looked at by staff")
        NOT_ANSWERED = "not answered", _("not answered")

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="visits")
    client = models.ForeignKey(Client, on_delete=models.CASCADE, related_name="visits")
    artist = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="visits")
    service = models.CharField(_("service"), max_length=16, choices=Service.choices)
    service_name = models.CharField(_("the studio's name for it"), max_length=120, blank=True)
    starts_at = models.DateTimeField(_("starts"))
    minutes = models.PositiveSmallIntegerField(_("minutes"), validators=[MinValueValidator(1), MaxValueValidator(720)])
    status = models.CharField(_("status"), max_length=9, choices=Status.choices, default=Status.BOOKED)
    room = models.CharField(_("room"), max_length=40, blank=True)
    heard_at = models.DateTimeField()  # when the service first heard of it
    heard_as = models.CharField(max_length=9, choices=Status.choices, default=Status.BOOKED)
    marked_at = models.DateTimeField(null=True, blank=True)  # when it was marked done, if it was known as booked
    counted_done = models.BooleanField(default=False)  # marked by the clock, not by a person

    style = models.CharField(_("style"), max_length=60, blank=True)
    lash_map = models.CharField(_("lash map"), max_length=200, blank=True)
    adhesive = models.ForeignKey(Adhesive, on_delete=models.PROTECT, null=True, blank=True, related_name="visits")
    remover = models.CharField(_("remover"), max_length=5, blank=True, choices=Remover.choices)
    tape = models.CharField(_("tape or pads"), max_length=60, blank=True)
    primer = models.CharField(_("primer"), max_length=60, blank=True)
    share_left = models.DecimalField(
        _("share left, %"),
        max_digits=4,
        decimal_places=1,
        null=True,
        blank=True,
        validators=[MinValueValidator(0), MaxValueValidator(100)],
    )  # percent of the last set still on at arrival
    share_seen = models.CharField(_("share left looked at"), max_length=10, blank=True, choices=ShareSeen.choices)
    outgrown = models.CharField(_("outgrown lashes"), max_length=4, blank=True, choices=Outgrown.choices)
    mirror_check = models.CharField(_("mirror check"), max_length=10, blank=True, choices=MirrorCheck.choices)
    unhappy_seen_to_at = models.DateTimeField(null=True, blank=True)  # somebody has seen to it that she left unhappy
    unhappy_seen_to_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    test_result = models.CharField(_("result of the patch test"), max_length=16, blank=True, choices=TestResult.choices)
    test_result_at = models.DateTimeField(null=True, blank=True)
    test_result_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    note = models.TextField(_("note"), blank=True)

    revision = models.PositiveIntegerField(default=1)
    changed_at = models.DateTimeField(null=True, blank=True)  # with the revision; null: it is as it was made
    created_at = models.DateTimeField(auto_now_add=True)

    class Meta:
        ordering = ["starts_at"]
        indexes = [
            models.Index(fields=["studio", "starts_at"], name="visit_by_start"),
            models.Index(fields=["client", "starts_at"], name="visit_of_client"),
            models.Index(fields=["artist", "starts_at"], name="visit_of_artist"),
            # What each round and each morning list looks among, however long the history is. Whole ones: SQLite takes a
            # partial index only where the words of its condition stand in the query, not as values beside it.
            models.Index(fields=["status", "starts_at"], name="visit_by_status"),
            models.Index(fields=["studio", "status", "starts_at"], name="visit_of_studio_by_status"),
            models.Index(fields=["studio", "mirror_check"], name="visit_by_mirror_check"),
        ]

    def __str__(self) -> str:
        return f"{self.service} {self.starts_at:%Y-%m-%d %H:%M}"

    @property
    def booked_end(self) -> datetime:
        """When the booked minutes are over."""
        return self.starts_at + timedelta(minutes=self.minutes)

    @property
    def end(self) -> datetime:
        """Its booked end, or the later moment at which a visit known as booked was marked done."""
        return max(self.booked_end, self.marked_at) if self.marked_at else self.booked_end

    @property
    def is_set(self) -> bool:
        return self.service in SETS


class VisitRef(models.Model):
    """A book's own reference for a visit, and what that book last said of it."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="+")
    source = models.CharField(max_length=8)  # csv, ics
    reference = models.CharField(max_length=200)
    visit = models.ForeignKey(Visit, on_delete=models.CASCADE, related_name="refs")
    said = models.JSONField(default=dict)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "source", "reference"], name="one_visit_a_reference")]

    def __str__(self) -> str:
        return self.reference
