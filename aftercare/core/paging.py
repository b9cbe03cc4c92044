"""Who is told of an open matter that cannot wait, and when: the artist, then the owners, then a third contact.

A page is due from what is known at ``now``, never laid down ahead: who is away, who can be reached and what became of
the pages before count as they stand. An alarm's ladder starts anew when its matter becomes more urgent.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from itertools import chain
from zoneinfo import ZoneInfo

from aftercare.core.hours import DAY, Hours, moment, opening
from aftercare.core.rules import Rules

EMERGENCY, SAME_DAY = "emergency", "same_day"
AGAIN = 3  # the step of the first page that goes to everybody; those before are rungs
TEN = 10 * 60  # nothing that is to be seen to the same day is left past ten o'clock of the next calendar day
MINUTE, HOUR = timedelta(minutes=1), timedelta(hours=1)


@dataclass(frozen=True, slots=True)
class Page:
    """One page of this alarm: which step, to whom, and from when it counted for nothing (None: it counts).

    It counts for nothing once it is undelivered, or resting without having gone.
    """

    step: int
    person: int
    lost_at: datetime | None = None


@dataclass(frozen=True, slots=True)
class Alarm:
    """An open matter that nobody has taken: how urgent, since when, and the pages since.

    ``artists``, ``on_duty``, ``owners`` and ``third`` are those of them who can be reached, whoever covers for one
    that is away in her place. ``hours`` are those at which the studio is open, on the clock of ``zone``.
    """

    urgency: str
    since: datetime
    zone: ZoneInfo
    hours: Hours
    artists: Sequence[int] = ()
    on_duty: Sequence[int] = ()
    owners: Sequence[int] = ()
    third: Sequence[int] = ()
    pages: Sequence[Page] = ()


@dataclass(frozen=True, slots=True)
class Due:
    """A page that is to be promised now: its step, to whom, and since when it is due."""

    step: int
    person: int
    at: datetime


def due(alarm: Alarm, rules: Rules, now: datetime) -> list[Due]:
    """Return the pages that are due at ``now`` and not promised yet, the earliest step first.

    >>> at = datetime.fromisoformat("2027-03-09T07:00Z")
    >>> alarm = Alarm(EMERGENCY, at, ZoneInfo("UTC"), Rules().hours, artists=[1], owners=[2])
    >>> [(page.step, page.person) for page in due(alarm, Rules(), at + 15 * MINUTE)]
    [(0, 1), (1, 2)]
    """
    known = {(page.step, page.person) for page in alarm.pages}
    ladder = list(_ladder(alarm, _rungs(alarm), rules))
    found = chain(ladder, _again(alarm, rules, now) if alarm.urgency == EMERGENCY else _next_day(alarm, ladder))
    return [page for page in found if page.at <= now and (page.step, page.person) not in known]


def nobody_yet_at(alarm: Alarm, rules: Rules) -> datetime | None:
    """Return when she is told that nobody could see her message, unless somebody takes it first; None: she is not."""
    return alarm.since + rules.nobody_after_minutes * MINUTE if alarm.urgency == EMERGENCY else None


def _rungs(alarm: Alarm) -> list[tuple[int, ...]]:
    """Return who is asked one after the other: nobody twice, and no rung without anybody."""
    first = [*alarm.artists, *alarm.on_duty] if alarm.urgency == SAME_DAY else alarm.artists
    asked: set[int] = set()
    rungs = []
    for people in (first, alarm.owners, alarm.third if alarm.urgency == EMERGENCY else ()):
        if new := tuple(dict.fromkeys(one for one in people if one not in asked)):
            rungs.append(new)
            asked.update(new)
    return rungs


def _ladder(alarm: Alarm, rungs: Sequence[tuple[int, ...]], rules: Rules) -> Iterable[Due]:
    """Each rung after the one before has had its time, or as soon as no page of that one counts any more."""
    at = alarm.since
    for step, people in enumerate(rungs):
        yield from (Due(step, person, at) for person in people)
        at = min(_patience(alarm, at, rules), _lost(alarm, step, people) or datetime.max.replace(tzinfo=at.tzinfo))


def _patience(alarm: Alarm, at: datetime, rules: Rules) -> datetime:
    if alarm.urgency == EMERGENCY:
        return at + rules.page_next_minutes * MINUTE
    return after_open(at, rules.same_day_owner_minutes, alarm.hours, alarm.zone)


def _lost(alarm: Alarm, step: int, people: Sequence[int]) -> datetime | None:
    """Return since when no page of a rung counts, or None while one does or is still to be promised."""
    lost = {page.person: page.lost_at for page in alarm.pages if page.step == step}
    if any(lost.get(person) is None for person in people):
        return None
    return max(at for at in lost.values() if at is not None)


def _again(alarm: Alarm, rules: Rules, now: datetime) -> Iterable[Due]:
    """Everybody again each hour, for a day: an emergency is not left because it was slept through."""
    everybody = dict.fromkeys([*alarm.artists, *alarm.owners, *alarm.third])
    for number in range(rules.page_again_times):
        at = alarm.since + (number + 1) * rules.page_again_minutes * MINUTE
        if at > now:
            return
        yield from (Due(AGAIN + number, person, at) for person in everybody)


def _next_day(alarm: Alarm, ladder: Sequence[Due]) -> Iterable[Due]:
    """The owners and the third contact at the last call, but for whoever was told within the hour before."""
    at = last_call(alarm.since, alarm.zone)
    just_told = {page.person for page in ladder if at - HOUR < page.at}
    people = dict.fromkeys([*alarm.owners, *alarm.third]) or dict.fromkeys([*alarm.artists, *alarm.on_duty])
    return (Due(AGAIN, person, at) for person in people if person not in just_told)


def last_call(since: datetime, zone: ZoneInfo) -> datetime:
    """Return ten o'clock of the next calendar day on the clock of ``zone``: nothing of today is left past it."""
    return moment(since.astimezone(zone).date() + DAY, TEN, zone)


def after_open(at: datetime, minutes: int, hours: Hours, zone: ZoneInfo) -> datetime:
    """Return the moment at which ``minutes`` of ``hours`` have gone by since ``at``.

    >>> open_late = Hours(9 * 60, 20 * 60)
    >>> after_open(datetime.fromisoformat("2027-03-09T19:30+00:00"), 60, open_late, ZoneInfo("UTC")).isoformat()
    '2027-03-10T09:30:00+00:00'
    """
    for _ in range(minutes):  # minute by minute: it is right across every change of the clock, and they are few
        at = opening(at, hours, zone) + MINUTE
    return at


def open_hours(rules: Rules) -> Hours:
    """Return when a studio is taken to be open: its sending hours, but for its closing days."""
    return replace(rules.hours, days_off=rules.reminder_hours.days_off)


def call_by(at: datetime, rules: Rules, zone: ZoneInfo) -> datetime:
    """Return by when a person calls her: within so many open minutes, but by ten of the next calendar day.

    >>> sent = datetime.fromisoformat("2027-03-09T23:10+00:00")
    >>> call_by(sent, Rules(), ZoneInfo("UTC")).isoformat()
    '2027-03-10T10:00:00+00:00'
    """
    return min(after_open(at, rules.call_within_minutes, open_hours(rules), zone), last_call(at, zone))
