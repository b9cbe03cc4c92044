"""Watching the roads: where nothing has left by one for a while, the owners of its studios are told, by another."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.core.exceptions import ImproperlyConfigured
from django.db.models import Value

from aftercare import facts, lines, outbox
from aftercare.core.occasions import ROAD_AWAY, Occasion
from aftercare.models import Heartbeat, Line, Message, RoadHealth
from studio import clock
from studio.models import Staff, Studio

TOLD_AFTER = timedelta(minutes=10)
NOBODY = "What keeps the carrier's connection open is not at work: whoever runs the service has to start it."


@dataclass(frozen=True, slots=True)
class Away:
    """A line of a studio by which nothing leaves: since when, and what was said the last time that it was tried."""

    line: Line
    since: datetime
    problem: str


def look(now: datetime) -> int:
    """Promise each owner one page for each road that has been away for a while; return how many are new.

    One query where every road works. A road that works again and fails anew is told of anew.
    """
    failing = _failing(clock.now())
    if not failing:
        return 0
    in_use = Line.objects.filter(is_active=True).exclude(studio__live_since=None).select_related("studio")
    away = {studio: found for studio, found in _by_studio(failing, in_use).items() if found}
    return outbox.promise(page for studio, found in away.items() for page in _pages(studio, found, now))


def away_in(studio: Studio, now: datetime) -> Sequence[Away]:
    """Return the lines of a live studio by which nothing leaves just now. One query where every road works."""
    failing = _failing(now)
    if not failing or studio.in_rehearsal:
        return ()
    in_use = Line.objects.filter(studio=studio, is_active=True).select_related("studio")
    return _by_studio(failing, in_use).get(studio, ())


@dataclass(frozen=True, slots=True)
class _Failing:
    """A road by which nothing leaves: since when, and why."""

    since: datetime
    problem: str


def _failing(now: datetime) -> dict[str, _Failing]:
    """Return the roads by which nothing has left for a while, by their account. One query.

    A road that stays open has a process of its own, which says by the road's name that it is at work: one that was
    killed cannot say that it is not. What the road itself said comes before that. ``now`` is the database's own.
    """
    before = now - TOLD_AFTER
    failing = RoadHealth.objects.filter(failing_since__lte=before, rests_until__isnull=False)
    silent = Heartbeat.objects.filter(name__contains=":", at__lte=before)  # the other parts have no account
    rows = silent.values_list("name", "at", Value(NOBODY)).union(
        failing.values_list("account", "failing_since", "problem"), all=True
    )
    found: dict[str, _Failing] = {}
    for account, since, problem in rows:
        if problem != NOBODY or account not in found:
            found[account] = _Failing(since, problem)
    return found


def _by_studio(failing: dict[str, _Failing], in_use: Iterable[Line]) -> dict[Studio, list[Away]]:
    found: dict[Studio, list[Away]] = {}
    for line in in_use:
        health = failing.get(_account(line))
        if health is not None:
            found.setdefault(line.studio, []).append(Away(line, health.since, health.problem))
    return found


def _account(line: Line) -> str:
    try:
        return lines.account_of(line)
    except ImproperlyConfigured:  # its messages say so themselves
        return ""


def _pages(studio: Studio, found: Sequence[Away], now: datetime) -> Iterable[Message]:
    owners = Staff.objects.filter(studio=studio, is_owner=True, is_active=True)
    for away in found:
        other = "email" if away.line.channel == "sms" else "sms"
        for owner, way in facts.ways(owners, first=other).items():
            yield Message(
                studio=studio,
                key=f"staff:{owner}:{Occasion.ALERT}:{ROAD_AWAY}:{away.line.pk}:{away.since:%Y%m%dT%H%M%S}",
                staff_id=owner,
                occasion=Occasion.ALERT,
                kind=ROAD_AWAY,
                channel=way.channel,
                address=way.address,
                due_at=now,
                planned_from=now,
            )
