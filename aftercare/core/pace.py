"""How fast messages may leave: a limit, and less for a while after the carrier has asked for less."""

from __future__ import annotations

import math
from typing import Final

_BURST: Final = 0.1  # seconds' worth that may leave at once
_GROWTH: Final = 1.1  # a second without complaint
_SLOWEST: Final = 1.0  # messages a second
_FREE_AGAIN: Final = 2.0  # times the speed that was complained of: where no limit is known, there is none any more


class Pace:
    """Messages a second; ``limit`` 0: as fast as they are taken. Moments are seconds of any one clock.

    A complaint halves the pace, once a second at most, since a whole window is answered for in the same way; from then
    on it grows again by a tenth a second.
    """

    def __init__(self, limit: float = 0.0) -> None:
        self.limit = limit
        self.rate = limit or math.inf
        self._room = 1.0 + limit * _BURST
        self._filled = self._grown = self._slowed = -math.inf
        self._complained_of = math.inf
        self._counted_from, self._count, self._lately = -math.inf, 0, 0.0

    def room(self, now: float) -> int:
        """Return how many messages may leave now."""
        if self.rate != math.inf:
            self._grow(now)
        if self.rate == math.inf:
            return 1 << 30
        most = 1.0 + self.rate * _BURST
        self._room = min(most, self._room + self.rate * max(0.0, min(now - self._filled, 60.0)))
        self._filled = now
        return int(self._room)

    def spend(self, count: int, now: float) -> None:
        """Note that so many have left."""
        self._room -= count
        if now - self._counted_from >= 1.0:
            elapsed = now - self._counted_from
            self._lately = self._count / elapsed if elapsed < 5.0 else 0.0
            self._counted_from, self._count = now, 0
        self._count += count

    def wait(self) -> float:
        """Return the seconds until one more may leave."""
        return 0.0 if self.rate == math.inf else max(0.0, (1.0 - self._room) / self.rate)

    def slow(self, now: float) -> None:
        """Heed a complaint of the carrier."""
        if now - self._slowed < 1.0:
            return
        speed = self.rate if self.rate != math.inf else max(self._lately, float(self._count))
        self._complained_of = speed
        self.rate = max(_SLOWEST, speed / 2)
        self._room = 0.0
        self._filled = self._slowed = self._grown = now

    def _grow(self, now: float) -> None:
        if self.rate == self.limit or now - self._grown < 1.0:
            return
        self._grown = now
        self.rate *= _GROWTH
        if self.limit:
            self.rate = min(self.rate, self.limit)
        elif self.rate > _FREE_AGAIN * self._complained_of:
            self.rate = math.inf
