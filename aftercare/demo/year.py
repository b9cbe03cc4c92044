"""A year of the demo's visits: when, by whom, what was used, and how much of each set was left.

The shares left follow from natural shedding (a mean cycle of about 115 days) and failed bonds, which differ by client
and by visit. Common practice, no source for the numbers.
"""

from __future__ import annotations

import math
import random
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from typing import NamedTuple

from aftercare.demo.cast import PAST_DAYS, ZONE, Person
from studio.models import Adhesive, Studio, Visit
from studio.records import UsedFields

AHEAD_DAYS = 35
OPENS, CLOSES = 9 * 60, 19 * 60
ROOMS = ["Window room", "Back room", "Small room"]
SET_MINUTES = {"fill": 75, "full set": 180}
BAD_LOT, BAD_LOT_TIMES = "0419", 1.8  # as fast as with another do bonds of that lot fail


class Before(NamedTuple):
    """The set that she came in with: put on when, with what."""

    day: date
    adhesive: Adhesive | None


@dataclass(slots=True)
class Chairs:
    """Each artist's taken time, so that no two visits share a chair."""

    taken: dict[tuple[int, date], list[tuple[int, int]]] = field(default_factory=dict)

    def find(self, artist: int, day: date, minutes: int, pick: random.Random) -> tuple[date, int]:
        """Return the first day from ``day`` on, and a start in minutes, at which the artist has time."""
        while True:
            spans = self.taken.setdefault((artist, day), [])
            starts = range(OPENS, CLOSES - minutes + 1, 15)
            free = [one for one in starts if all(one >= end or one + minutes <= start for start, end in spans)]
            if free:
                start = pick.choice(free[:6])
                spans.append((start, start + minutes))
                return day, start
            day += timedelta(days=1)


def share_left(days: int, cycle: float, bond: float, luck: float) -> float:
    """Return the share of a set still on after ``days``: natural shedding, times bonds that hold with a visit's luck.

    >>> share_left(0, 90, 0.01, 1)
    1.0
    """
    shed = max(0.0, 1 - days / (cycle * 0.75))  # extensions sit on grown lashes, which shed sooner
    return shed * math.exp(-bond * luck * days)


def at(day: date, minutes: int) -> datetime:
    """Return the moment at which the studio's wall clock shows ``minutes`` since midnight on ``day``."""
    return datetime.combine(day, time(minutes // 60, minutes % 60), tzinfo=ZONE).astimezone(UTC)


@dataclass(slots=True)
class Year:
    """The making of a year of visits up to, and weeks past, ``today``."""

    studio: Studio
    adhesives: list[Adhesive]
    today: date
    heard_at: datetime  # visits that end before it are history, the others booked
    pick: random.Random
    chairs: Chairs = field(default_factory=Chairs)

    def write(self, people: list[Person]) -> None:
        """Write every client's visits."""
        Visit.objects.bulk_create(visit for person in people for visit in self._visits_of(person))

    def _visits_of(self, person: Person) -> list[Visit]:
        visits: list[Visit] = []
        day = self.today - timedelta(days=PAST_DAYS - person.starts_after)
        if person.client.sensitive:
            visits.append(self._visit(person, "patch test", 15, day - timedelta(days=8)))
        last: Before | None = None
        while day <= self.today + timedelta(days=AHEAD_DAYS):
            service = "full set" if last is None else "fill"
            visit = self._visit(person, service, SET_MINUTES[service], day)
            day = visit.starts_at.astimezone(ZONE).date()
            if visit.status == Visit.Status.DONE:
                for name, value in self.used(visit, person, last).items():
                    setattr(visit, name, value)
            if visit.status != Visit.Status.MISSED:
                last = Before(day, visit.adhesive)
            visits.append(visit)
            day += timedelta(days=max(10, round(self.pick.gauss(person.every, 3))))
        until = at(self.today + timedelta(days=AHEAD_DAYS if person.books_ahead else 1), 0)
        return [visit for visit in visits if visit.starts_at < until]

    def _visit(self, person: Person, service: str, minutes: int, day: date) -> Visit:
        day, start = self.chairs.find(person.artist.pk, day, minutes, self.pick)
        starts_at = at(day, start)
        past = starts_at + timedelta(minutes=minutes) < self.heard_at
        missed = past and service == "fill" and self.pick.random() < 0.04
        status = Visit.Status.MISSED if missed else Visit.Status.DONE if past else Visit.Status.BOOKED
        visit = Visit(
            studio=self.studio,
            client=person.client,
            artist=person.artist,
            service=service,
            starts_at=starts_at,
            minutes=minutes,
            status=status,
            heard_at=self.heard_at,
            heard_as=status,
            room=ROOMS[person.artist.pk % len(ROOMS)],
            style="" if service == "patch test" else person.style,
        )
        if service == "patch test" and past:
            result = Visit.TestResult
            visit.test_result = self.pick.choice([result.NO_SIGN, result.NO_SIGN, result.NOT_ANSWERED])
            visit.test_result_at, visit.test_result_by = starts_at + timedelta(days=3), person.artist
        return visit

    def used(self, visit: Visit, person: Person, last: Before | None) -> UsedFields:
        """Return what an artist writes down when she marks a set done; ``last`` is the set before."""
        pick, sensitive = self.pick, person.client.sensitive
        used = UsedFields(
            adhesive=self.adhesives[2] if sensitive else pick.choice(self.adhesives[:2]),
            lash_map=person.lash_map,
            remover=Visit.Remover.CREAM if sensitive else pick.choice(["", Visit.Remover.GEL]),
            tape="sensitive tape" if sensitive else "gel pads",
            primer="stronger primer" if person.client.oily_lids else "primer",
            mirror_check=pick.choices(Visit.MirrorCheck.values, [0.86, 0.11, 0.03])[0],
        )
        if last is None:
            return used
        days = (visit.starts_at.astimezone(ZONE).date() - last.day).days
        lot = BAD_LOT_TIMES if last.adhesive and last.adhesive.lot == BAD_LOT else 1
        share = share_left(days, person.cycle, person.bond * lot, pick.lognormvariate(0, 0.25))
        used["outgrown"] = pick.choices(Visit.Outgrown.values, [0.4, 0.5, 0.1])[0]
        used["share_seen"] = Visit.ShareSeen.NOT_LOOKED
        if pick.random() < 0.92:
            used["share_seen"] = Visit.ShareSeen.SEEN
            used["share_left"] = Decimal(min(100, max(0, 5 * round(20 * share + pick.gauss(0, 0.8)))))
        return used
