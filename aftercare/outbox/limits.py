"""How many segments may leave by a line on one day of its studio, where the owner has set a limit."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, time, timedelta

from django.db.models import F
from django.db.models.functions import Greatest

from aftercare.core import segments
from aftercare.core.delivery import State
from aftercare.core.occasions import SAFETY, Occasion
from aftercare.models import Attempt, Line, Spending
from aftercare.outbox.handing import Parcel

NEVER_HELD = SAFETY | {Occasion.OPT_IN}  # an introduction goes ahead of what safety hangs on


def spend(parcels: Sequence[Parcel], now: datetime) -> dict[int, datetime]:
    """Count these parcels on their lines' day; return the messages that are beyond it, and when the next day begins.

    Call it in the transaction that journals them: two senders on one line wait for each other. What safety hangs on is
    counted and never held. A parcel by e-mail or in rehearsal costs nothing.
    """
    over: dict[int, datetime] = {}
    by_line: dict[int, list[Parcel]] = {}
    for parcel in parcels:
        if is_counted(parcel):
            by_line.setdefault(parcel.line.pk, []).append(parcel)
    for pk in sorted(by_line):
        over |= _spend(by_line[pk], now)
    return over


def give_back(parcels: Sequence[Parcel], counted_at: datetime | None = None) -> None:
    """Take parcels that were certainly not taken off the day that they were counted on: nobody bills them.

    That is the day of ``counted_at``, or that on which each was journaled: then call it before they are settled, in
    the same transaction. One that was not journaled after all, or is settled so already, is not given back.
    """
    counted = sorted(filter(is_counted, parcels), key=lambda parcel: parcel.line.pk)
    if counted_at is None and counted:
        tried = Attempt.objects.filter(reference__in=[parcel.reference for parcel in counted])
        standing = set(tried.exclude(outcome=State.PLANNED).values_list("reference", flat=True))
        counted = [parcel for parcel in counted if parcel.reference in standing]
    for parcel in counted:
        began = counted_at or parcel.message.handing_over_at
        if began is not None:
            day = parcel.line.spending.filter(day=began.astimezone(parcel.line.studio.zone).date())
            day.update(segments=Greatest(F("segments") - _cost(parcel), 0))


def spent_today(line: Line, now: datetime) -> int:
    """Return how many segments left by a line today, where it has a limit; else 0."""
    today = now.astimezone(line.studio.zone).date()
    return line.spending.filter(day=today).values_list("segments", flat=True).first() or 0


def _spend(parcels: Sequence[Parcel], now: datetime) -> dict[int, datetime]:
    line = parcels[0].line
    zone = line.studio.zone
    today = now.astimezone(zone).date()
    tomorrow = datetime.combine(today + timedelta(days=1), time(), zone)
    row, _made = Spending.objects.select_for_update().get_or_create(line=line, day=today)
    over: dict[int, datetime] = {}
    for parcel in parcels:
        cost = _cost(parcel)
        if row.segments + cost > (line.most_a_day or 0) and parcel.message.occasion not in NEVER_HELD:
            over[parcel.message.pk] = tomorrow
        else:
            row.segments += cost
    row.save(update_fields=["segments"])
    return over


def is_counted(parcel: Parcel) -> bool:
    """Whether its line has a limit a day that it counts on."""
    return parcel.channel == "sms" and parcel.line.most_a_day is not None and not parcel.rehearsed


def _cost(parcel: Parcel) -> int:
    return segments.measure(parcel.text).segments
