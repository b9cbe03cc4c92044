"""Reminders: when a client's set will soon need a fill, or a new set, by what is forecast of it.

Where the design leaves a choice:

- A forecast day is a fraction of days after the visit's local date. The date that stands for it is the one in whose
  course it falls (:func:`day_of`), and the aim is on that date at the usual hour.
- "A change under a day is ignored": a reminder keeps to the forecast that it was planned from until the newest moves
  its day, as a fraction, by a day or more. Rules and the visit's own date are followed at once.
- Days between reminders are calendar days in her zone: with five, one sent on the 1st allows the next on the 6th.
  Hours are elapsed time, and exactly so many hours away is far enough: the ninth day's reminder lies 48 h after the
  seventh day's check. Another reminder, or a check, stands where it left, or where it is due; one that is overdue
  leaves now.
- A missed or cancelled visit counts by its start, before and after. So does one whose start is past and that nobody has
  marked: it may have been missed, and if not, the next set's reminders replace these.
- A set that falls to the fill level too early has no reminder at all: its artist is told instead.
- "The close of sending hours" is a time of day; it is the limit on a day without sending hours too.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from aftercare.core.hours import DAY, moment
from aftercare.core.occasions import BOOKED, CANCELLED, MISSED, REMINDERS, Occasion, Reason
from aftercare.core.promises import (
    NOTHING,
    Apart,
    Planned,
    Row,
    Slot,
    Standing,
    decide,
    edition,
    promised,
    revive,
    was_over,
)
from aftercare.core.rules import Rules
from aftercare.core.visits import Calendar, SetForecast, Visit, whole_seconds

FURTHEST_DAY = 3_650  # a set that lasts for ten years needs no date
OFFERED_BEFORE, OFFERED_FOR = timedelta(days=3), timedelta(days=10)  # the days that a reminder names
LONG_GAP = 3  # days shut one after the other: "between Friday and Thursday" would not be true of them
SAME = 1.0  # days: a change of less than this is none


def day_of(start: date, days: float) -> date:
    """Return the date that stands for ``days`` after ``start``: the one in whose course they are over.

    >>> day_of(date(2027, 6, 1), 13.9)
    datetime.date(2027, 6, 14)
    """
    return start + timedelta(days=math.floor(min(days, FURTHEST_DAY)))


def fails_early(forecast: SetForecast, rules: Rules) -> bool:
    """Whether the set is forecast to need a fill so soon that its artist should look into it."""
    return forecast.fill_day < rules.early_days


@dataclass(frozen=True, slots=True)
class Away:
    """Days on which her artist is away, both included; ``covered``: somebody else does her work."""

    first: date
    last: date
    covered: bool = False


def window(
    start: date, forecast: SetForecast, rules: Rules, today: date, away: Sequence[Away] = ()
) -> tuple[date, date] | None:
    """Return the days to offer for her fill, both included, where ``start`` is the date of the set that she wears.

    From tomorrow, or some days before the fill level's median day, to the day before the full-set level's; ten days at
    most, and neither end on a day on which the studio is closed, her artist is away, or no reminders go. Where fewer
    than two days are left of those on which her artist is there, those on which somebody covers for her are taken too.
    None where there are not two of them either: then it is to be soon.
    """
    first = max(today + DAY, day_of(start, forecast.fill_day) - OFFERED_BEFORE)
    last = day_of(start, forecast.full_set_day) - DAY
    found = _stretch(first, last, rules, away)
    return found or _stretch(first, last, rules, [one for one in away if not one.covered])


def _stretch(first: date, last: date, rules: Rules, away: Sequence[Away]) -> tuple[date, date] | None:
    """Return the first days from ``first`` to ``last`` that can be offered: two at least, with no long gap in them."""
    hours = rules.reminder_hours
    offered: list[date] = []
    shut = 0
    day = first
    while day <= last and not (offered and day >= offered[0] + OFFERED_FOR):
        if day in hours.days_off or any(one.first <= day <= one.last for one in away):
            shut += 1
        elif hours.open_on(day):
            if shut >= LONG_GAP and len(offered) < 2:
                offered = []
            elif shut >= LONG_GAP:
                break
            offered.append(day)
            shut = 0
        day += DAY
    return (offered[0], offered[-1]) if len(offered) > 1 else None


def plan(
    calendar: Calendar, forecast: SetForecast | None, standing: Mapping[Slot, Standing], checks: Iterable[Planned]
) -> list[Planned]:
    """Return the reminders that should stand for the set that she wears and have not gone yet.

    ``forecast`` is the one in force for her last done set; one of another set counts as none, and then nothing is
    planned. ``checks`` are the checks still to go, decided.
    """
    if forecast is None or not calendar.done_sets or forecast.visit != calendar.done_sets[-1].id:
        return []
    if fails_early(forecast, calendar.rules):
        return []
    apart = _apart(calendar, standing, checks)
    found: list[Planned] = []
    for aimed in _aimed(calendar, forecast, standing):
        message = _reminder(aimed, calendar, standing.get(aimed.slot, NOTHING), apart)
        if message is not None:
            found.append(message)
            leaves = message.soonest(calendar.now)
            apart = apart.also_from(reminders=[leaves] if leaves else [])  # the later one moves
    return found


@dataclass(frozen=True, slots=True)
class _Aimed:
    """One row of the table of rules for the set that she wears; ``full_day`` is when it may need a new one."""

    row: Row
    forecast: SetForecast
    full_day: date

    @property
    def slot(self) -> Slot:
        visit, occasion, step, _, _ = self.row
        return (visit.id, occasion, step)


def _aimed(calendar: Calendar, newest: SetForecast, standing: Mapping[Slot, Standing]) -> Iterator[_Aimed]:
    """The two rows, the fill's first: its aim is always the earlier one where it can go at all."""
    worn, rules, zone = calendar.done_sets[-1], calendar.rules, calendar.client.zone
    start = calendar.dates[worn.id]
    kept = {occasion: _followed(worn, occasion, newest, standing, rules) for occasion in REMINDERS}
    full_day = day_of(start, _full_set_day(kept[Occasion.FULL_SET_DUE], rules))
    fill_day = day_of(start, _fill_day(kept[Occasion.FILL_DUE], rules))
    closes = _at(full_day - DAY, rules.reminder_hours.closes, calendar)
    fill = (worn, Occasion.FILL_DUE, 0, moment(fill_day, rules.at, zone), closes)
    last_day = full_day + timedelta(days=rules.full_set_last_days)
    full = (worn, Occasion.FULL_SET_DUE, 0, moment(full_day, rules.at, zone), moment(last_day, rules.at, zone))
    yield _Aimed(fill, kept[Occasion.FILL_DUE], full_day)
    yield _Aimed(full, kept[Occasion.FULL_SET_DUE], full_day)


def _at(day: date, minutes: int, calendar: Calendar) -> datetime:
    """The moment of ``minutes`` on her clock; the end of a day is the next one's beginning."""
    days, rest = divmod(minutes, 24 * 60)
    return moment(day + timedelta(days=days), rest, calendar.client.zone)


def _fill_day(forecast: SetForecast, rules: Rules) -> float:
    """Days after the set at which the fill's reminder is aimed, as a fraction."""
    return max(min(forecast.fill_day, forecast.full_set_low) - rules.lead_days, rules.reminder_after_days)


def _full_set_day(forecast: SetForecast, _rules: Rules) -> float:
    return forecast.full_set_day


_RECKON = {Occasion.FILL_DUE: _fill_day, Occasion.FULL_SET_DUE: _full_set_day}


def _followed(
    worn: Visit, occasion: Occasion, newest: SetForecast, standing: Mapping[Slot, Standing], rules: Rules
) -> SetForecast:
    """Return the forecast that the reminder keeps to: what it was planned from, while the newest says the same."""
    before = standing.get((worn.id, occasion, 0), NOTHING).open_forecast
    if before is None or before.visit != newest.visit:
        return newest
    reckon = _RECKON[occasion]
    return before if abs(reckon(newest, rules) - reckon(before, rules)) < SAME else newest


def _reminder(aimed: _Aimed, calendar: Calendar, on_record: Standing, apart: Apart) -> Planned | None:
    visit, occasion, _, _, _ = aimed.row
    number = edition(visit, occasion, on_record)
    if not number or was_over(aimed.row, on_record, calendar.rules):
        return None
    message = promised(aimed.row, number, on_record, calendar.now)
    message.forecast, message.apart, message.go_from = aimed.forecast, apart, on_record.go_from
    message.own_reason = _in_its_way(message, aimed.full_day, calendar)
    decide(message, calendar)
    revive(message, on_record, calendar)
    return message


def _in_its_way(message: Planned, full_day: date, calendar: Calendar) -> Reason | None:
    """Return what a reminder alone is withheld for."""
    if _is_booked(message, full_day, calendar):
        return Reason.ALREADY_BOOKED
    if calendar.client.on_break or calendar.taken_off(message.visit):
        return Reason.NO_SET_ON
    imported = calendar.client.first_import_at
    if imported is not None and message.visit.heard_at <= imported and message.aim < imported and not message.go_from:
        return Reason.WAITS_FOR_GO
    return None


def _is_booked(message: Planned, full_day: date, calendar: Calendar) -> bool:
    """Whether she comes in time as it is; or later, and has said that she does not want to come earlier."""
    booked = calendar.booked_sets
    if message.occasion is Occasion.FULL_SET_DUE:
        return any(visit.start <= message.no_later_than for visit in booked)
    if any(calendar.dates[visit.id] <= full_day for visit in booked):
        return True
    return bool(booked) and calendar.client.earlier_declined >= calendar.rules.most_declined


def _apart(calendar: Calendar, standing: Mapping[Slot, Standing], checks: Iterable[Planned]) -> Apart:
    """What her reminders keep away from: checks to go and gone, visits that fell through, reminders that have gone."""
    rules, now = calendar.rules, calendar.now
    nowhere = Apart(calendar.client.zone, timedelta(hours=rules.reminder_clear_hours), rules.reminder_gap_days)
    fell_through = [visit.start for visit in calendar.visits if _fell_through(visit, now)]
    ahead = [at for check in checks if (at := check.soonest(now)) is not None]
    gone = _gone(standing, frozenset({Occasion.CHECK}))
    return nowhere.also_from([*fell_through, *ahead, *gone], _gone(standing, REMINDERS))


def _fell_through(visit: Visit, now: datetime) -> bool:
    return visit.status in (MISSED, CANCELLED) or (visit.status == BOOKED and visit.start <= now)


def _gone(standing: Mapping[Slot, Standing], occasions: frozenset[Occasion]) -> Iterator[datetime]:
    """When messages of these occasions left her studio for her."""
    for (_, occasion, _), on_record in standing.items():
        at = on_record.gone_at or on_record.gone_due
        if occasion in occasions and at is not None:
            yield whole_seconds(at)
