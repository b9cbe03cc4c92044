"""Who there is: users, studios, their staff and clients, and what each client agreed to."""

from __future__ import annotations

from typing import ClassVar
from zoneinfo import ZoneInfo

import phonenumbers
from django.contrib.auth.base_user import AbstractBaseUser, BaseUserManager
from django.contrib.auth.models import PermissionsMixin
from django.core.exceptions import ValidationError
from django.db import models
from django.db.models.functions import Lower
from django.utils.translation import gettext_lazy as _

from studio.zones import is_zone

LANGUAGES = [("en", _("English")), ("es", _("Spanish"))]


def check_zone(name: str) -> None:
    """Raise ValidationError unless ``name`` is an IANA time zone."""
    if not is_zone(name):
        raise ValidationError(
            _("“%(name)s” is not a time zone. Write its IANA name, such as America/New_York."), params={"name": name}
        )


def check_region(code: str) -> None:
    """Raise ValidationError unless ``code`` is a country that has telephone numbers."""
    if code not in phonenumbers.SUPPORTED_REGIONS:
        raise ValidationError(
            _("“%(code)s” is not a country. Write its two letters (ISO 3166), such as US, GB or ES."),
            params={"code": code},
        )


class UserManager(BaseUserManager["User"]):
    """Users are known by their e-mail address."""

    def create_user(self, email: str, password: str | None = None, **fields: object) -> User:
        user = self.model(email=self.normalize_email(email).lower(), **fields)
        user.set_password(password)
        user.save(using=self._db)
        return user

    def create_superuser(self, email: str, password: str | None = None, **fields: object) -> User:
        return self.create_user(email, password, **{**fields, "is_superuser": True})

    def get_by_natural_key(self, username: str | None) -> User:
        return self.get(email=(username or "").strip().lower())


class User(AbstractBaseUser, PermissionsMixin):
    """Someone who signs in."""

    email = models.EmailField(_("e-mail"), unique=True)
    name = models.CharField(_("name"), max_length=120, blank=True)
    is_active = models.BooleanField(default=True)
    one_time_password = models.BooleanField(default=False)  # made by an owner; to be replaced at the first sign-in
    created_at = models.DateTimeField(auto_now_add=True)

    USERNAME_FIELD = "email"
    REQUIRED_FIELDS: ClassVar[list[str]] = []

    objects: ClassVar[UserManager] = UserManager()

    def __str__(self) -> str:
        return self.name or self.email


class Studio(models.Model):
    """A lash studio. Everything else belongs to exactly one."""

    class DateOrder(models.TextChoices):
        UNSET = "", _("not set: dates such as 12/03/2026 are refused")
        DMY = "dmy", _("day first: 12/03/2026 is 12 March")
        MDY = "mdy", _("month first: 12/03/2026 is 3 December")

    slug = models.SlugField(unique=True)
    name = models.CharField(_("name"), max_length=80)
    time_zone = models.CharField(_("time zone"), max_length=64, validators=[check_zone])
    region = models.CharField(
        _("country"), max_length=2, validators=[check_region], help_text=_("Two letters, such as US, GB or ES.")
    )
    language = models.CharField(_("first language"), max_length=8, choices=LANGUAGES, default="en")
    phone = models.CharField(_("telephone for clients"), max_length=32, blank=True)
    address = models.CharField(_("postal address"), max_length=200, blank=True)
    date_order = models.CharField(
        _("dates in spreadsheets"), max_length=3, blank=True, choices=DateOrder.choices, default=DateOrder.UNSET
    )
    calendar_pattern = models.TextField(
        _("how calendar entries are read"), blank=True, help_text=_("For example: SUMMARY: {service} - {name}")
    )
    is_demo = models.BooleanField(default=False)
    first_import_at = models.DateTimeField(null=True, blank=True)  # reminders already past then wait for a person's go
    live_since = models.DateTimeField(null=True, blank=True)  # null: in rehearsal, reaches nobody outside
    created_at = models.DateTimeField(auto_now_add=True)

    def __str__(self) -> str:
        return self.name

    @property
    def zone(self) -> ZoneInfo:
        """The studio's wall clock."""
        return ZoneInfo(self.time_zone)

    @property
    def in_rehearsal(self) -> bool:
        return self.live_since is None


class ClosingDay(models.Model):
    """A day on which the studio is closed; reminders stay away from it."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="closing_days")
    date = models.DateField(_("date"))
    name = models.CharField(_("name"), max_length=80, blank=True)

    class Meta:
        ordering = ["date"]
        constraints = [models.UniqueConstraint(fields=["studio", "date"], name="one_closing_day_a_date")]

    def __str__(self) -> str:
        return f"{self.date} {self.name}".strip()


class ServiceName(models.Model):
    """The studio's own name for a kind of service; a blank kind is no visit at all."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="service_names")
    name = models.CharField(_("name in the book"), max_length=120)  # folded: lower case, single spaces
    kind = models.CharField(_("kind"), max_length=16, blank=True)

    class Meta:
        ordering = ["name"]
        constraints = [models.UniqueConstraint(fields=["studio", "name"], name="one_kind_a_service_name")]

    def __str__(self) -> str:
        return self.name


class Staff(models.Model):
    """A person's roles in one studio; those who only stand in the book have no sign-in."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="staff")
    user = models.ForeignKey(User, on_delete=models.SET_NULL, null=True, blank=True, related_name="staff")
    name = models.CharField(_("name"), max_length=80)
    is_owner = models.BooleanField(_("owner"), default=False)
    is_artist = models.BooleanField(_("artist"), default=False)
    is_front_desk = models.BooleanField(_("front desk"), default=False)
    mobile = models.CharField(_("mobile"), max_length=16, blank=True)
    email = models.EmailField(_("e-mail"), blank=True)
    language = models.CharField(_("language"), max_length=8, choices=LANGUAGES, blank=True)
    is_active = models.BooleanField(_("works here"), default=True)

    class Meta:
        ordering = ["name"]
        verbose_name_plural = "staff"
        constraints = [
            models.UniqueConstraint("studio", Lower("name"), name="one_staff_a_name"),
            models.UniqueConstraint(fields=["studio", "user"], name="one_staff_a_user"),
        ]

    def __str__(self) -> str:
        return self.name


class ClientQuerySet(models.QuerySet["Client"]):
    """Clients, those merged into another among them."""

    def standing(self) -> ClientQuerySet:
        """Without those merged into another: whoever lists clients lists these."""
        return self.filter(merged_into=None)


class Client(models.Model):
    """A client of one studio. Health facts on it are for owners and for the artists who treat her."""

    class Channel(models.TextChoices):
        ANY = "", _("no choice stated")
        SMS = "sms", _("text message")
        EMAIL = "email", _("e-mail")

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="clients")
    first_name = models.CharField(_("first name"), max_length=80)
    last_name = models.CharField(_("last name"), max_length=80, blank=True)
    mobile = models.CharField(_("mobile"), max_length=16, blank=True)  # E.164
    email = models.EmailField(_("e-mail"), blank=True)
    time_zone = models.CharField(_("time zone"), max_length=64, blank=True, validators=[check_zone])  # '' not stated
    language = models.CharField(_("language"), max_length=16, blank=True)  # BCP 47; '' the studio's
    channel = models.CharField(_("reach her by"), max_length=5, blank=True, choices=Channel.choices)
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
    paused_until = models.DateField(_("send nothing until"), null=True, blank=True)
    earlier_declined = models.PositiveSmallIntegerField(_("declined an earlier visit, times"), default=0)
    merged_into = models.ForeignKey("self", on_delete=models.SET_NULL, null=True, blank=True, related_name="merged")
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
