"""Wall clocks: local days and minutes to moments, and the hours within which messages may leave.

Moments are aware datetimes in UTC, whole seconds. Minutes count from local midnight. No clock is read here.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, time, timedelta
from functools import lru_cache
from zoneinfo import ZoneInfo

DAY = timedelta(days=1)
# When a client wishes to be written to, from and until minutes since midnight on her clock.
WISHES = {"morning": (0, 12 * 60), "afternoon": (12 * 60, 24 * 60), "evening": (17 * 60, 24 * 60)}


@dataclass(frozen=True, slots=True)
class Hours:
    """Sending hours on a wall clock: ``opens`` inclusive, ``closes`` exclusive, in minutes since midnight."""

    opens: int
    closes: int
    weekdays_off: frozenset[int] = frozenset()  # Monday is 0
    days_off: frozenset[date] = frozenset()

    def __post_init__(self) -> None:
        if not 0 <= self.opens < self.closes <= 24 * 60:
            raise ValueError(f"sending hours must open before they close, not {self.opens} to {self.closes} minutes")
        if self.weekdays_off >= frozenset(range(7)):
            raise ValueError("sending hours need at least one day of the week on which they open")

    def open_on(self, day: date) -> bool:
        return day.weekday() not in self.weekdays_off and day not in self.days_off

    def wished(self, wish: str) -> Hours | None:
        """Return that part of these hours in which a client wishes to be written to; None: no wish, or no such part."""
        if wish not in WISHES:
            return None
        opens, closes = WISHES[wish]
        opens, closes = max(opens, self.opens), min(closes, self.closes)
        return replace(self, opens=opens, closes=closes) if opens < closes else None


@lru_cache(maxsize=4096)  # all clients of a studio ask for the same hours of the same days
def moment(day: date, minutes: int, zone: ZoneInfo) -> datetime:
    """Return the moment at which the wall clock of ``zone`` shows ``minutes`` on ``day``.

    A time that exists twice means the first; one that does not exist, the first moment that does (02:30 → 03:00).
    """
    wall = datetime.combine(day, time(minutes // 60, minutes % 60))
    found = wall.replace(tzinfo=zone).astimezone(UTC)  # fold=0: the first of two, or the offset before a gap
    if found.astimezone(zone).replace(tzinfo=None) == wall:
        return found
    # Between its reading with the offset after the gap and the one with the offset before it, the clock jumps over it.
    return _change(wall.replace(tzinfo=zone, fold=1).astimezone(UTC), found, zone)


def _change(early: datetime, late: datetime, zone: ZoneInfo) -> datetime:
    """Return the moment at which the clock changes to the offset that it has at ``late``, by bisection."""
    after = late.astimezone(zone).utcoffset()
    while late - early > timedelta(seconds=1):
        middle = early + timedelta(seconds=(late - early) // timedelta(seconds=2))
        if middle.astimezone(zone).utcoffset() == after:
            late = middle
        else:
            early = middle
    return late


def opening(at: datetime, hours: Hours, zone: ZoneInfo) -> datetime:
    """Return ``at`` if it lies within ``hours`` on the wall clock of ``zone``, else their next opening."""
    local = at.astimezone(zone)
    day = local.date()
    if _shows_open(local, hours):
        return at
    while (found := _opening_on(day, at, hours, zone)) is None:
        day += DAY
    return found


def _shows_open(local: datetime, hours: Hours) -> bool:
    return hours.open_on(local.date()) and hours.opens <= local.hour * 60 + local.minute < hours.closes


def _is_open(at: datetime, day: date, hours: Hours, zone: ZoneInfo) -> bool:
    local = at.astimezone(zone)
    return local.date() == day and _shows_open(local, hours)


def _opening_on(day: date, at: datetime, hours: Hours, zone: ZoneInfo) -> datetime | None:
    """Return the first moment of ``day`` from ``at`` on at which the hours open, or None."""
    if not hours.open_on(day):
        return None
    openings = [moment(day, hours.opens, zone)]
    if openings[0] < at:
        openings = _openings_again(day, hours, zone)
    return min((found for found in openings if found >= at and _is_open(found, day, hours, zone)), default=None)


def _openings_again(day: date, hours: Hours, zone: ZoneInfo) -> list[datetime]:
    """Return when the hours may open once more on ``day``: as the clock is put back, or shows their start again."""
    early, late = moment(day, 0, zone), moment(day + DAY, 0, zone)
    if late - early <= DAY:
        return []
    again = datetime.combine(day, time(hours.opens // 60, hours.opens % 60), tzinfo=zone).replace(fold=1)
    return [_change(early, late, zone), again.astimezone(UTC)]


def closing(at: datetime, hours: Hours, zones: Sequence[ZoneInfo]) -> datetime:
    """Return until when ``hours`` that are open at ``at`` on every clock of ``zones`` certainly stay open on all.

    It may be sooner than they close, as at midnight or where a clock is put back: never later.
    """
    return min(_closing(at, hours, zone) for zone in zones)


def _closing(at: datetime, hours: Hours, zone: ZoneInfo) -> datetime:
    day = at.astimezone(zone).date()
    closes = moment(day, hours.closes, zone) if hours.closes < 24 * 60 else moment(day + DAY, 0, zone)
    return closes if closes > at else at + timedelta(minutes=1)  # the clock shows these hours for the second time


def next_open(
    at: datetime, hours: Hours, zones: Sequence[ZoneInfo], limit: datetime, first: Hours | None = None
) -> datetime | None:
    """Return the first moment from ``at`` on that lies within ``hours`` on every clock of ``zones``.

    ``first`` are narrower hours on the first of them. None: there is no such moment up to and including ``limit``.
    """
    while at <= limit:
        start = at
        for zone in zones:
            at = opening(at, first if first and zone is zones[0] else hours, zone)
        if at == start or (len(zones) == 1 and at <= limit):  # of one clock nothing else can object
            return at
    return None
