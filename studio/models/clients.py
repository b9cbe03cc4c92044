"""Clients: who they are, what each agreed to, how the book calls them, and the reactions on record."""

from __future__ import annotations

from django.db import models
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from studio.models.people import Staff, Studio, check_zone


class ClientQuerySet(models.QuerySet["Client"]):
    """Clients, those merged into another and those forgotten among them."""

    def standing(self) -> ClientQuerySet:
        """Without those merged into another, and those forgotten: whoever lists clients lists these."""
        return self.filter(merged_into=None, erased_at=None)


class Client(models.Model):
    """A client of one studio. Health facts on it are for owners and for the artists who treat her."""

    class Channel(models.TextChoices):
        ANY = "", _("no choice stated")
        SMS = "sms", _("text message")
        EMAIL = "email", _("e-mail")

    class Hours(models.TextChoices):
        ANY = "", _("any time within the studio’s hours")
        MORNING = "morning", _("in the morning, until 12:00")
        AFTERNOON = "afternoon", _("in the afternoon or evening, from 12:00")
        EVENING = "evening", _("in the evening, from 17:00")

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="clients")
    first_name = models.CharField(_("first name"), max_length=80)
    last_name = models.CharField(_("last name"), max_length=80, blank=True)
    mobile = models.CharField(_("mobile"), max_length=16, blank=True)  # E.164
    email = models.EmailField(_("e-mail"), blank=True)
    time_zone = models.CharField(_("time zone"), max_length=64, blank=True, validators=[check_zone])  # '' not stated
    language = models.CharField(_("language"), max_length=16, blank=True)  # BCP 47; '' the studio's
    channel = models.CharField(_("reach her by"), max_length=5, blank=True, choices=Channel.choices)
    # Within the studio's hours, on her clock; where that would be too late her wish gives way.
    wished_hours = models.CharField(_("write to her"), max_length=9, blank=True, choices=Hours.choices)
    sensitive = models.BooleanField(_("sensitive"), null=True, blank=True)  # a health note
    wears_lenses = models.BooleanField(_("wears contact lenses"), null=True, blank=True)
    oily_lids = models.BooleanField(_("oily lids"), null=True, blank=True)
    under_18 = models.BooleanField(_("under 18"), null=True, blank=True)
    guardian_name = models.CharField(_("guardian's name"), max_length=120, blank=True)
    guardian_mobile = models.CharField(_("guardian's mobile"), max_length=16, blank=True)
    guardian_agreed_on = models.DateField(_("guardian agreed on"), null=True, blank=True)
    waiver_signed_on = models.DateField(_("waiver signed on"), null=True, blank=True)
    note = models.TextField(_("note"), blank=True)
    on_break = models.BooleanField(_("takes a break from lashes"), default=False)
    no_set_since = models.DateTimeField(null=True, blank=True)  # taken off without a removal in the book; a set ends it
    paused_until = models.DateField(_("send nothing until"), null=True, blank=True)
    earlier_declined = models.PositiveSmallIntegerField(_("declined an earlier visit, times"), default=0)
    merged_into = models.ForeignKey("self", on_delete=models.SET_NULL, null=True, blank=True, related_name="merged")
    # Forgotten at her wish, see records.erasing: what is left of her has no name.
    erased_at = models.DateTimeField(null=True, blank=True)
    erased_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    created_at = models.DateTimeField(auto_now_add=True)
    # Every write to her or her visits raises the revision; who plans from these records follows with planned_revision.
    revision = models.PositiveIntegerField(default=1)
    planned_revision = models.PositiveIntegerField(default=0)
    forecast_revision = models.PositiveIntegerField(default=0)  # the same, for what is forecast of her set

    objects = ClientQuerySet.as_manager()

    class Meta:
        ordering = ["first_name", "last_name"]
        indexes = [
            models.Index(
                fields=["studio"], condition=models.Q(revision__gt=models.F("planned_revision")), name="client_to_plan"
            ),
            models.Index(
                fields=["studio"],
                condition=models.Q(revision__gt=models.F("forecast_revision")),
                name="client_to_forecast",
            ),
            models.Index(
                fields=["paused_until"], condition=models.Q(paused_until__isnull=False), name="client_by_end_of_pause"
            ),
            models.Index(fields=["studio", "mobile"], name="client_by_mobile"),
            models.Index(fields=["studio", "email"], name="client_by_email"),
            models.Index(fields=["studio", "first_name", "last_name"], name="client_by_name"),
        ]

    def __str__(self) -> str:
        return self.name

    @property
    def name(self) -> str:
        if self.erased_at is not None:
            return gettext("a client who was forgotten")
        return f"{self.first_name} {self.last_name}".strip()


class Consent(models.Model):
    """One answer about one channel and purpose, as given. Rows are only ever added; the newest answer counts."""

    class Purpose(models.TextChoices):
        VISITS = "visits", _("messages about her visits")
        REMINDERS = "reminders", _("reminders")

    client = models.ForeignKey(Client, on_delete=models.CASCADE, related_name="consents")
    channel = models.CharField(max_length=5, choices=[("sms", _("text message")), ("email", _("e-mail"))])
    purpose = models.CharField(max_length=9, choices=Purpose.choices)
    given = models.BooleanField()
    at = models.DateTimeField()
    how = models.CharField(max_length=80)  # appointment book, on paper, by telephone, her own reply
    words_shown = models.TextField(blank=True)
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    class Meta:
        ordering = ["at", "id"]
        indexes = [models.Index(fields=["client", "channel", "purpose", "at"], name="consent_newest")]

    def __str__(self) -> str:
        return f"{self.channel} {self.purpose}: {'yes' if self.given else 'no'}"


class ClientRef(models.Model):
    """A book's own reference for a client, and what that book last said of her."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="+")
    source = models.CharField(max_length=8)  # csv, ics
    reference = models.CharField(max_length=200)
    client = models.ForeignKey(Client, on_delete=models.CASCADE, related_name="refs")
    said = models.JSONField(default=dict)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "source", "reference"], name="one_client_a_reference")]

    def __str__(self) -> str:
        return self.reference


class Reaction(models.Model):
    """A reaction on record. Until a person releases it she is on hold."""

    class Consulted(models.TextChoices):
        YES = "yes", _("yes")
        NO = "no", _("no")
        NOT_KNOWN = "not_known", _("not known")

    client = models.ForeignKey(Client, on_delete=models.CASCADE, related_name="reactions")
    visit = models.ForeignKey("studio.Visit", on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    at = models.DateTimeField()
    words = models.TextField(_("what was seen or said"), blank=True)
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    released_at = models.DateTimeField(null=True, blank=True)
    released_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    clinician_consulted = models.CharField(max_length=9, blank=True, choices=Consulted.choices)
    test_first = models.BooleanField(null=True, blank=True)
    # Of one that came by a reply: what was read in it, and what came of the matter.
    signs = models.JSONField(default=list, blank=True)  # core.reading.Sign values
    side = models.CharField(max_length=5, blank=True)  # left, right, both; '' not said
    outcome = models.CharField(max_length=16, blank=True)  # core.outcomes.Outcome

    class Meta:
        ordering = ["at"]

    def __str__(self) -> str:
        return f"reaction of {self.at:%Y-%m-%d}"


class Merge(models.Model):
    """Two clients made one: which rows moved, so that it can be undone."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="+")
    kept = models.ForeignKey(Client, on_delete=models.CASCADE, related_name="+")
    gone = models.ForeignKey(Client, on_delete=models.CASCADE, related_name="+")
    moved = models.JSONField()  # {"model label": [primary keys]}, and {"kept": fields before}
    at = models.DateTimeField()
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, related_name="+")
    undone_at = models.DateTimeField(null=True, blank=True)

    def __str__(self) -> str:
        return f"{self.gone} into {self.kept}"
