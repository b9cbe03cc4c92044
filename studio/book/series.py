"""When the events of a calendar are: start and length, and for those that repeat each time that they do.

What an RRULE means is dateutil's to say, and what becomes of its days (EXDATE, RDATE, changed occurrences)
recurring-ical-events'. Both are given the times alone, in their zones, and no rule without an end.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import MAXYEAR, UTC, date, datetime, time, timedelta
from functools import partial
from itertools import islice, takewhile
from typing import Any
from zoneinfo import ZoneInfo

import recurring_ical_events
from dateutil.rrule import rrulestr  # type: ignore[import-untyped]  # it has no types of its own
from django.utils.translation import gettext as _
from icalendar import Calendar, Event
from icalendar.prop import vDDDLists, vDDDTypes, vRecur

from studio.book.events import Event as Found
from studio.book.events import Odd, Property, parse_date, parse_duration
from studio.book.moments import to_utc
from studio.book.text import shown

REACH = timedelta(days=400)  # how far back and ahead of now what repeats is written out
LONGEST = 720

_PLACE = "X-PLACE"
_FREQUENCIES = ("DAILY", "WEEKLY", "MONTHLY", "YEARLY")

Refuse = Callable[[str, str, str], None]


@dataclass(slots=True)
class Times:
    """When one event is. Moments keep their zone, which repetition needs; ``recurrence`` is RECURRENCE-ID."""

    start: datetime
    minutes: int | None = None
    recurrence: datetime | None = None
    onward: bool = False  # RANGE=THISANDFUTURE
    series: bool = False  # whether it repeats, and is not itself one changed occurrence
    more: dict[datetime, int | None] = field(default_factory=dict)  # RRULE and RDATE, with the minutes of a PERIOD
    without: list[datetime | date] = field(default_factory=list)  # EXDATE


@dataclass(frozen=True, slots=True)
class Occurrence:
    """One time at which a series comes up, in UTC; ``place`` is that of its event in what :func:`expand` was given."""

    place: int
    start: datetime
    minutes: int | None
    recurrence: datetime


def utc(moment: datetime) -> datetime:
    """Return a moment that has a zone in UTC, by RFC 5545, 3.3.5."""
    return to_utc(moment.replace(tzinfo=None), moment.tzinfo or UTC)


def times(event: Found, wall: ZoneInfo, now: datetime, refuse: Refuse) -> Times | None:
    """Return when the event is, or ``None`` after telling ``refuse`` (name, value, problem) of each odd property.

    A cancellation may leave out DTSTART where RECURRENCE-ID says what it is about (RFC 5546).
    """
    odd: list[Odd] = []

    def attempt(read: Callable[[], Any]) -> Any:
        try:
            return read()
        except Odd as error:
            odd.append(error)
            return None

    recurrence = attempt(lambda: event.moment("RECURRENCE-ID", wall))
    start = attempt(lambda: _start(event, recurrence, wall))
    if start is not None:
        found = Times(start, attempt(lambda: _minutes(event, start, wall)), recurrence)
        found.series = recurrence is None and bool(event.all("RRULE") or event.all("RDATE"))
        for rule in event.all("RRULE"):
            found.more.update(dict.fromkeys(attempt(partial(_ruled, rule.value, start, now)) or ()))
        found.more.update(attempt(lambda: dict(_more(event, wall))) or {})
        found.without = attempt(lambda: list(_without(event, wall))) or []
        attempt(lambda: _no_old_rules(event))
        about = event.first("RECURRENCE-ID")
        found.onward = about is not None and about.parameters.get("RANGE", "").upper() == "THISANDFUTURE"
    for error in odd:
        refuse(error.field, error.value, str(error))
    return None if odd else found


def _start(event: Found, recurrence: datetime | None, wall: ZoneInfo) -> datetime:
    start = event.moment("DTSTART", wall)
    if start is None and event.cancelled():
        start = recurrence
    if start is None:
        raise Odd("DTSTART", "", _("The event has no DTSTART: give it a start, like DTSTART:20260312T143000Z."))
    return start


def _minutes(event: Found, start: datetime, wall: ZoneInfo) -> int | None:
    """Return the length in whole minutes, ``None`` where the event states none, or one of no time at all."""
    if (end := event.moment("DTEND", wall)) is not None:
        return _whole("DTEND", event.text("DTEND"), utc(end) - utc(start))
    if (length := event.first("DURATION")) is not None:
        return _whole("DURATION", length.value, parse_duration("DURATION", length.value))
    return None


def _whole(name: str, value: str, length: timedelta) -> int | None:
    if length < timedelta():
        raise Odd(
            name,
            value,
            _('{name} "{value}" is before DTSTART: correct the one or the other.').format(
                name=name, value=shown(value)
            ),
        )
    if length > timedelta(minutes=LONGEST):
        problem = _(
            '{name} "{value}" makes the event longer than {longest} minutes: correct it, or name the event in '
            "the table of service names as no visit."
        ).format(name=name, value=shown(value), longest=LONGEST)
        raise Odd(name, value, problem)
    return int(length.total_seconds()) // 60 or None


def _values(event: Found, name: str) -> Iterator[tuple[Property, str]]:
    for found in event.all(name):
        for value in found.value.split(","):
            if value.strip():
                yield found, value.strip()


def _more(event: Found, wall: ZoneInfo) -> Iterator[tuple[datetime, int | None]]:
    for found, value in _values(event, "RDATE"):
        first, slash, last = value.partition("/")
        start = event.one_moment("RDATE", found, first, wall)
        if not slash:
            yield start, None
        elif last[:1] in ("P", "+"):
            yield start, _whole("RDATE", value, parse_duration("RDATE", last))
        else:
            yield start, _whole("RDATE", value, utc(event.one_moment("RDATE", found, last, wall)) - utc(start))


def _without(event: Found, wall: ZoneInfo) -> Iterator[datetime | date]:
    for found, value in _values(event, "EXDATE"):
        yield parse_date(value) or event.one_moment("EXDATE", found, value, wall)


def _no_old_rules(event: Found) -> None:
    if old := event.first("EXRULE"):
        problem = _('EXRULE "{value}" is no longer in the standard: write the days to leave out as EXDATE.').format(
            value=shown(old.value)
        )
        raise Odd("EXRULE", old.value, problem)


def _ruled(value: str, start: datetime, now: datetime) -> list[datetime]:
    """Return the starts that a rule gives, from the first to the end of :data:`REACH`."""
    try:
        rule = vRecur.from_ical(value.strip().upper())
        frequency, interval = rule.get("FREQ", [""])[0], int(rule.get("INTERVAL", [1])[0])
        count, until = rule.pop("COUNT", [None])[0], rule.pop("UNTIL", [None])[0]
        often = any(len(rule.get(name, [])) > 1 for name in ("BYHOUR", "BYMINUTE", "BYSECOND"))
        if frequency not in _FREQUENCIES or often:
            problem = _(
                'RRULE "{value}" repeats more than once a day: write each visit as an event of its own.'
            ).format(value=shown(value))
            raise Odd("RRULE", value, problem)
        if interval < 1 or (count is not None and count < 1):
            raise ValueError("an interval or count below 1")
        end = min(_end(until, start), now + REACH)
        return list(takewhile(lambda each: utc(each) <= end, islice(_steps(rule, start, end), count)))
    except Odd:
        raise
    except Exception:  # whatever the file made the libraries trip over, it is no rule
        problem = _('RRULE "{value}" is no rule of RFC 5545: correct it, like FREQ=WEEKLY;INTERVAL=3;COUNT=10.').format(
            value=shown(value)
        )
        raise Odd("RRULE", value, problem) from None


def _end(until: date | datetime | None, start: datetime) -> datetime:
    if until is None:
        return datetime.max.replace(tzinfo=UTC)
    if not isinstance(until, datetime):
        until = datetime.combine(until, time.max)  # a day alone: to its end
    return utc(until if until.tzinfo else until.replace(tzinfo=start.tzinfo))


def _steps(rule: Any, start: datetime, end: datetime) -> Iterator[datetime]:
    """Give the starts of a rule without end, by the wall clock of ``start``.

    dateutil searches for the next one up to the year 9999, which for the thirtieth of February takes seconds. So the
    search begins as late as it can: the calendar comes back, weekdays and all, after 400 years.
    """
    later = (MAXYEAR - 1 - max(start.year, end.year)) // 400 * 400
    first = start.replace(tzinfo=None, year=start.year + later)
    for each in rrulestr(rule.to_ical().decode(), dtstart=first):
        yield each.replace(year=each.year - later, tzinfo=start.tzinfo)


def expand(events: Sequence[Times], without: Sequence[datetime], now: datetime) -> list[Occurrence]:
    """Return each time a series comes up within :data:`REACH` of ``now``, in order. Raises :class:`Odd`.

    ``events`` are the series itself and its changed occurrences; ``without`` are further occurrences to leave out.
    """
    series = Calendar()
    for place, event in enumerate(events):
        series.add_component(_as_component(event, place, without if event.series else ()))
    try:
        found = recurring_ical_events.of(series).between((now - REACH).astimezone(UTC), (now + REACH).astimezone(UTC))
    except Exception:  # whatever the file made the library trip over, the series cannot be written out
        problem = _("The series cannot be written out day by day: write each visit as an event of its own.")
        raise Odd("RRULE", "", problem) from None
    return sorted((_occurrence(component, events) for component in found), key=lambda each: each.start)


def _as_component(event: Times, place: int, without: Sequence[datetime]) -> Any:
    component = Event()
    component["UID"] = "series"
    component[_PLACE] = place
    component["DTSTART"] = vDDDTypes(event.start)
    if event.recurrence is not None:
        component["RECURRENCE-ID"] = vDDDTypes(event.recurrence)
        if event.onward:
            component["RECURRENCE-ID"].params["RANGE"] = "THISANDFUTURE"
        return component
    component["RDATE"] = vDDDLists(list(event.more))
    component["EXDATE"] = vDDDLists([*event.without, *without])
    return component


def _occurrence(component: Any, events: Sequence[Times]) -> Occurrence:
    place: int = component[_PLACE]
    event = events[place]
    start: datetime = component["DTSTART"].dt
    minutes = event.more.get(start) or event.minutes
    # What THISANDFUTURE has moved is still known by the moment at which it would have been.
    moved = timedelta() if event.recurrence is None else event.start - event.recurrence
    return Occurrence(place, utc(start), minutes, utc(start - moved))
