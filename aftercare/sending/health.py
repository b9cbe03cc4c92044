"""How roads fare: one that fails again and again rests, for every process that sends by it, and is tried again.

All moments are by the database's clock, as processes on several machines look at them.
"""

from __future__ import annotations

import logging
import math
import random
import time
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.db import Error, transaction

from aftercare.core.delivery import Event
from aftercare.models import RoadHealth
from aftercare.transports.base import Outcome, Stream
from studio import clock

log = logging.getLogger(__name__)

FAILING = 5  # windows in a row of which nothing was answered for but by "not now": the road rests
_ANSWERED = frozenset({Event.TAKEN, Event.REFUSED})
SHORTEST_REST, LONGEST_REST = timedelta(seconds=30), timedelta(minutes=5)
DETOUR_AFTER = timedelta(minutes=30)  # what safety hangs on takes the other channel where one is away for so long
_luck = random.Random()  # it spreads waits and keeps no secret


@dataclass(slots=True)
class Health:
    """One road's health as this process knows it. Without an ``account`` it is this process's own affair."""

    account: str = ""
    failed: int = 0
    failing_since: datetime | None = None
    rests_until: datetime | None = None
    rested_at: float = -math.inf  # by time.monotonic(): when its newest rest was called for

    @classmethod
    def of(cls, account: str) -> Health:
        """Return how a road fares by what every process noted."""
        row = RoadHealth.objects.filter(pk=account).first()
        if row is None:
            return cls(account)
        return cls(account, row.failed, row.failing_since, row.rests_until)

    @property
    def rests(self) -> bool:
        """Whether it rests just now. One whose rest is over is tried with one window, and rests again if that fails."""
        if self.failed < FAILING:
            return False
        return self.rests_until is None or clock.now() < self.rests_until

    def away_since(self, before: datetime) -> bool:
        """Whether nothing was taken since a moment before ``before``."""
        return self.rests and self.failing_since is not None and self.failing_since < before

    def note(self, outcomes: Sequence[Outcome], left_at: float = math.inf) -> None:
        """Note what became of one window. Written down only where it says something new. Never raises.

        What is lost counts as what is not taken: by a road that never answers, all that is due would be lost.
        ``left_at``: when the last of them left, by time.monotonic(), where windows are heard of in pieces. A rest is
        for all that had left by then: what of it fails later makes the rest no longer.
        """
        try:
            self._note(outcomes, left_at)
        except Error as error:  # what became of the messages is still to be written: that must not go with it
            log.warning("how the road %s fares is not written down: %s", self.account, error)

    def _note(self, outcomes: Sequence[Outcome], left_at: float) -> None:
        if not outcomes:
            return
        if any(outcome.event in _ANSWERED for outcome in outcomes):
            if self.failed:
                self.failed, self.failing_since, self.rests_until, self.rested_at = 0, None, None, -math.inf
                self._write("")
            return
        if left_at <= self.rested_at:
            return
        now = clock.now()
        self.failed += 1
        self.failing_since = self.failing_since or now
        if self.failed >= FAILING:
            rest = min(LONGEST_REST, SHORTEST_REST * 2 ** min(self.failed - FAILING, 8))
            self.rests_until = now + rest * (0.8 + 0.4 * _luck.random())
            self.rested_at = time.monotonic()
        self._write(outcomes[-1].problem)

    def _write(self, problem: str) -> None:
        if not self.account:
            return
        RoadHealth.objects.update_or_create(
            account=self.account,
            defaults={
                "failed": self.failed,
                "failing_since": self.failing_since,
                "rests_until": self.rests_until,
                "problem": problem[:400],
            },
        )


def note_away(road: Stream) -> None:
    """Note that an open road's line is down, as it says: those who look at how roads fare see it."""
    Health.of(road.account).note([Outcome(reference="", event=Event.NOT_TAKEN, problem=road.trouble)])


def note_back(road: Stream) -> None:
    """Note that an open road's line is up again: it need not rest for having been down."""
    RoadHealth.objects.filter(account=road.account).update(failed=0, failing_since=None, rests_until=None, problem="")


def turn(name: str, number: int, a_second: float, *, within: timedelta = timedelta.max) -> timedelta:
    """Take a turn for ``number`` messages where only so many a second may leave; return how long to wait for it.

    Each process takes its turns from the same row, so that all together keep to the limit. One that is not ``within``
    reach is not taken: else each look at what waits for it would move everything further away.
    """
    with transaction.atomic():
        row, _made = RoadHealth.objects.select_for_update().get_or_create(account=name)
        now = clock.now()
        starts = max(row.free_at or now, now)
        if starts - now <= within:
            row.free_at = starts + timedelta(seconds=number / a_second)
            row.save(update_fields=["free_at"])
    return starts - now
