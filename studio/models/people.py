"""Who there is: users, studios, their staff and clients, and what each client agreed to."""

from __future__ import annotations

from datetime import time
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
MORNING = time(7, 30)  # when the morning list goes out where nobody says otherwise


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
    # Whom it pages beside the artist and the owners, see aftercare.core.paging.
    on_duty = models.ForeignKey(
        "Staff", on_delete=models.SET_NULL, null=True, blank=True, related_name="+", verbose_name=_("on duty")
    )
    third_contact = models.ForeignKey(
        "Staff", on_delete=models.SET_NULL, null=True, blank=True, related_name="+", verbose_name=_("third contact")
    )
    done_after_hours = models.PositiveSmallIntegerField(  # null: a visit counts as done only once somebody marks it
        _("count unmarked visits as done after, hours"), null=True, blank=True
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
    morning_at = models.TimeField(_("hour of her morning list"), default=MORNING)  # on the studio's clock
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

    @property
    def sees_matters(self) -> bool:
        """Whether she may read what a client wrote and take it: the front desk alone may not."""
        return self.is_owner or self.is_artist


class Absence(models.Model):
    """Days on which somebody of the staff is away, the first and the last among them, and who covers for her."""

    staff = models.ForeignKey(Staff, on_delete=models.CASCADE, related_name="absences")
    cover = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    first_day = models.DateField(_("first day away"))  # on the studio's clock
    last_day = models.DateField(_("last day away"))

    class Meta:
        ordering = ["first_day"]
        indexes = [models.Index(fields=["staff", "last_day"], name="absence_by_end")]
        constraints = [
            models.CheckConstraint(condition=models.Q(last_day__gte=models.F("first_day")), name="absence_in_order")
        ]

    def __str__(self) -> str:
        return f"{self.staff} away {self.first_day} to {self.last_day}"
