"""How many messages are journaled at once."""

from __future__ import annotations

import time
from dataclasses import dataclass, field

_TURN = 0.02  # seconds over which it is looked at how busy the wire was
_IDLE, _BUSY = 0.5, 0.7  # of that time, what else was done than waiting for the carrier


@dataclass(slots=True)
class Portion:
    """The most that leave in one commit, of a window of ``window``.

    While the carrier is waited for, few: a place in the window is free again as soon as its own answer is there, and
    the next text for it has not to wait until those for the others are written down too. Where that keeps the wire
    busy, more at once, of which each costs less.
    """

    window: int
    most: int = 0
    waited: float = 0.0  # seconds of this turn
    since: float = field(default_factory=time.monotonic)

    def __post_init__(self) -> None:
        self.most = self.window

    @property
    def least(self) -> int:
        """Of still fewer each would cost as much as some together."""
        return max(min(2, self.window), self.window // 10)

    def wait(self, seconds: float) -> None:
        """Take note that the carrier was waited for."""
        self.waited += seconds
        passed = time.monotonic() - self.since
        if passed < _TURN:
            return
        busy = 1 - self.waited / passed
        if busy > _BUSY:
            self.most = min(self.window, 2 * self.most)
        elif busy < _IDLE:
            self.most = max(self.least, self.most // 2)
        self.waited, self.since = 0.0, time.monotonic()
