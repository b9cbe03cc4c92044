"""Lines to clients, and the numbers and addresses that said stop."""

from __future__ import annotations

from django.core.validators import MinValueValidator
from django.db import models
from django.utils.translation import gettext_lazy as _

from studio.models import Staff, Studio


class Line(models.Model):
    """A sender number or inbound address with its transport. It belongs to exactly one studio."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="lines")
    channel = models.CharField(max_length=5, choices=[("sms", _("text message")), ("email", _("e-mail"))])
    address = models.CharField(_("number or address"), max_length=254, blank=True)
    transport = models.CharField(max_length=120, blank=True)  # '': the one named in settings
    options = models.JSONField(default=dict, blank=True)
    is_active = models.BooleanField(default=True)
    price = models.DecimalField(  # of one segment, as the owner states it; null: not known
        _("price of one text"), max_digits=9, decimal_places=5, null=True, blank=True, validators=[MinValueValidator(0)]
    )
    currency = models.CharField(_("currency"), max_length=3, blank=True)  # ISO 4217
    # Limits of the owner's own, which never hold what safety hangs on; null: none.
    most_a_second = models.PositiveSmallIntegerField(
        _("texts a second"), null=True, blank=True, validators=[MinValueValidator(1)]
    )
    most_a_day = models.PositiveIntegerField(
        _("texts a day"), null=True, blank=True, validators=[MinValueValidator(1)]
    )  # in segments, as they are billed

    class Meta:
        ordering = ["channel", "id"]
        constraints = [
            # Whoever writes back to a number reaches the one studio that it belongs to.
            models.UniqueConstraint(
                fields=["channel", "address"],
                condition=models.Q(is_active=True) & ~models.Q(address=""),
                name="one_line_in_use_a_number",
                violation_error_message=_("That number or address is in use by another line."),
            )
        ]

    def __str__(self) -> str:
        return f"{self.channel} {self.address}".strip()


class Spending(models.Model):
    """How many segments left by a line on one local day of its studio; counted where the line has a limit a day."""

    line = models.ForeignKey(Line, on_delete=models.CASCADE, related_name="spending")
    day = models.DateField()
    segments = models.PositiveIntegerField(default=0)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["line", "day"], name="one_spending_a_line_and_day")]

    def __str__(self) -> str:
        return f"{self.segments} on {self.day}"


class RoadHealth(models.Model):
    """How the road to a carrier or mail provider fares, for every process that sends by it; by the database's clock.

    A road that fails rests, and is tried again: ``rests_until``. ``free_at``: when the next message may leave by one
    that is limited to so many a second.
    """

    account = models.CharField(max_length=60, primary_key=True)
    failed = models.PositiveIntegerField(default=0)  # windows in a row of which nothing was taken
    failing_since = models.DateTimeField(null=True, blank=True)
    rests_until = models.DateTimeField(null=True, blank=True)
    free_at = models.DateTimeField(null=True, blank=True)
    problem = models.CharField(max_length=400, blank=True)

    def __str__(self) -> str:
        return self.account


class Stop(models.Model):
    """A number or address that wants nothing more from a line. Apart from clients: it survives merge and import."""

    class Why(models.TextChoices):
        SAID = "said", _("said stop")
        WRONG_PERSON = "wrong_person", _("is not the person meant")
        BOUNCED = "bounced", _("nobody has it: what is sent there comes back")

    line = models.ForeignKey(Line, on_delete=models.CASCADE, related_name="stops")
    address = models.CharField(max_length=254)  # E.164, or an e-mail address in lower case
    why = models.CharField(max_length=12, choices=Why.choices, default=Why.SAID)
    at = models.DateTimeField()
    words = models.TextField(blank=True)  # as she wrote it, or how a person heard it
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    lifted_at = models.DateTimeField(null=True, blank=True)
    lifted_how = models.TextField(blank=True)
    lifted_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    # Of an address that nobody has: who has asked her for another one, or let it be.
    seen_to_at = models.DateTimeField(null=True, blank=True)
    seen_to_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    class Meta:
        ordering = ["at"]
        constraints = [
            models.UniqueConstraint(
                fields=["line", "address"], condition=models.Q(lifted_at=None), name="one_stop_in_force"
            )
        ]

    def __str__(self) -> str:
        return f"stop of {self.at:%Y-%m-%d}"
