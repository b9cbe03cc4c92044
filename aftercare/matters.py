"""What people do about open matters: take one, close it with what came of it, open it again; see to a lost message,
or to a set that is likely to fail early.

Guarded by the state that each step starts from, so that of two people who tap at once only one has it.
"""

from __future__ import annotations

from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import transaction
from django.db.models import F, QuerySet
from django.utils.translation import gettext as _

from aftercare.core import delivery
from aftercare.models import Flag, Forecast, Message
from studio.models import Client, Staff, Visit

State = Flag.State


def take(flag: Flag, *, by: Staff, now: datetime) -> Flag:
    """Note who has it. Taking over from a colleague is allowed: the newest name stands."""
    taken = _standing(flag).update(state=State.TAKEN, taken_at=now, taken_by=by)
    return _after(flag, taken)


@transaction.atomic
def close(flag: Flag, *, outcome: str, words: str, by: Staff, now: datetime) -> Flag:
    """Close it with what came of it. What was held for it alone is judged again by whoever plans."""
    if not words.strip():
        raise ValidationError({"words": _("Write a few words: they are all that is kept of it.")})
    closed = _standing(flag).update(
        state=State.CLOSED, closed_at=now, closed_by=by, outcome=outcome, words=words.strip()
    )
    _touch(flag)
    return _after(flag, closed)


@transaction.atomic
def reopen(flag: Flag) -> Flag:
    """Open it again: what was written on closing stays with it."""
    opened = Flag.objects.filter(pk=flag.pk, state=State.CLOSED).update(
        state=State.OPEN, taken_at=None, taken_by=None, closed_at=None, closed_by=None
    )
    _touch(flag)
    return _after(flag, opened)


def see_to(message: Message, *, by: Staff, now: datetime) -> None:
    """Note that somebody has done something about a message that did not arrive, or may not have."""
    lost = [delivery.State.UNDELIVERED, delivery.State.UNSURE]
    seen = Message.objects.filter(pk=message.pk, state__in=lost).update(seen_to_at=now, seen_to_by=by)
    if not seen:
        raise ValidationError(_("It has moved on by itself: look at the list again."))


def see_to_early(visit: Visit, *, by: Staff, now: datetime) -> None:
    """Note that somebody has looked into a set that is likely to fail early; later forecasts of it change nothing."""
    newest = Forecast.objects.in_force().filter(visit=visit)
    if not Forecast.objects.filter(pk__in=newest.values("pk")).update(seen_to_at=now, seen_to_by=by):
        raise ValidationError(_("Nothing is forecast of it any more: look at the list again."))


def _standing(flag: Flag) -> QuerySet[Flag]:
    return Flag.objects.filter(pk=flag.pk, state__in=[State.OPEN, State.TAKEN])


def _touch(flag: Flag) -> None:
    """A hold may end or begin with it: its clients are planned anew."""
    Client.objects.filter(pk__in=flag.clients.values("pk")).update(revision=F("revision") + 1)


def _after(flag: Flag, changed: int) -> Flag:
    if not changed:
        raise ValidationError(_("Someone was quicker: look at the list again."))
    flag.refresh_from_db()
    return flag
