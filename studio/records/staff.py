"""The people who work in a studio, and their sign-ins."""

from __future__ import annotations

import secrets
from datetime import datetime, time
from typing import TypedDict, Unpack

from django.core.exceptions import ValidationError
from django.core.validators import validate_email
from django.db import transaction
from django.utils.translation import gettext as _

from studio.models import Staff, Studio, User
from studio.models.people import LANGUAGES
from studio.records.numbers import number
from studio.records.writing import locked, put, same_studio

# No letter or digit that is mistaken for another when read aloud or copied by hand: 12 of 30 signs are 58 bits.
_SIGNS = "abcdefghjkmnpqrstuvwxyz2345678"


class StaffFields(TypedDict, total=False):
    """A person's name, roles and where she is told."""

    name: str
    is_owner: bool
    is_artist: bool
    is_front_desk: bool
    mobile: str
    email: str
    language: str
    morning_at: time
    is_active: bool


@transaction.atomic
def save_staff(
    *, studio: Studio, staff: Staff | None, by: Staff | None, now: datetime, **fields: Unpack[StaffFields]
) -> Staff:
    """Add a person, or change the fields given. The studio keeps at least one owner who can sign in."""
    same_studio(studio, staff=staff, by=by)
    had_owner = _has_owner(studio)
    row = locked(staff) if staff else Staff(studio=studio)
    cleaned = {name: value.strip() if isinstance(value, str) else value for name, value in fields.items()}
    if "mobile" in cleaned:
        cleaned["mobile"] = number(str(cleaned["mobile"]), region=studio.region)
    name = str(cleaned.get("name", row.name))
    if studio.staff.filter(name__iexact=name).exclude(pk=row.pk).exists():
        raise ValidationError({"name": _("Someone here has this name already: add a last name or an initial.")})
    put(row, cleaned)
    if not (row.is_owner or row.is_artist or row.is_front_desk):
        raise ValidationError(_("Choose at least one role: owner, artist or front desk."))
    row.save()
    _keep_an_owner(studio, had_owner)
    return row


def new_password() -> str:
    """Make a password that can be read out and typed on a phone: twelve signs, none like another, about 59 bits."""
    return "-".join("".join(secrets.choice(_SIGNS) for _sign in range(4)) for _group in range(3))


@transaction.atomic
def give_sign_in(*, staff: Staff, email: str, by: Staff | None, now: datetime) -> tuple[User, str]:
    """Make her account, or a new password for it; return it with the one-time password, which is stored nowhere.

    The account must choose its own password before it sees anything. One that opens another studio too is not this
    one's to open: she gets a new one, with another address. Raises ValidationError where the address is no address,
    or has an account already.
    """
    same_studio(staff.studio, by=by)
    row = locked(staff)
    email = email.strip().lower()
    try:
        validate_email(email)
    except ValidationError:
        raise ValidationError({"email": _("Write an e-mail address, such as ada@example.com.")}) from None
    is_others = row.user is not None and row.user.staff.exclude(studio=row.studio_id).exists()
    user = User(is_active=True) if row.user is None or is_others else row.user
    if User.objects.filter(email=email).exclude(pk=user.pk).exists():
        raise ValidationError({"email": _("This address has an account already: use another address.")})
    password = new_password()
    user.email, user.name, user.is_active, user.one_time_password = email, row.name, True, True
    user.set_password(password)
    user.save()
    row.user = user
    row.save(update_fields=["user"])
    return user, password


@transaction.atomic
def take_sign_in(*, staff: Staff, by: Staff | None, now: datetime) -> Staff:
    """End her sign-in to this studio at once; her account of other studios stays."""
    same_studio(staff.studio, by=by)
    had_owner = _has_owner(staff.studio)
    row = locked(staff)
    row.user = None
    row.save(update_fields=["user"])
    _keep_an_owner(row.studio, had_owner)
    return row


def choose_language(*, user: User, language: str) -> None:
    """Speak a language to her, on pages and in messages, in every studio that she works in."""
    if language not in dict(LANGUAGES):
        raise ValidationError({"language": _("Choose one of the languages listed.")})
    Staff.objects.filter(user=user).update(language=language)


def _has_owner(studio: Studio) -> bool:
    """Whether an owner can sign in. A studio in the making has none yet; one that has one keeps one."""
    return studio.staff.filter(is_owner=True, is_active=True, user__is_active=True).exists()


def _keep_an_owner(studio: Studio, had_one: bool) -> None:
    if had_one and not _has_owner(studio):
        raise ValidationError(
            _("The studio would be left without an owner who can sign in: make someone else owner first.")
        )
