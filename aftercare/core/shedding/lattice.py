"""The lattice of possible clients on which everything is reckoned: mean cycle by bond hazard.

One node is one kind of client: lashes that cycle every ``cycle`` days, and bonds that fail at ``hazard`` a day. What is
left of her set after ``t`` days is ``A(t) * exp(-hazard * t)``, see renewal.py for ``A``. Both axes are even in the
logarithm, so that "twice as fast" is a step of the same length everywhere.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import ArrayLike

from aftercare.core.shedding.renewal import Floats, left_by_shedding

FAR = 7.0  # standard deviations: nobody is beyond


@dataclass(frozen=True)
class Lattice:
    """Nodes even in log cycle (days) and log hazard (of the bonds, a day): ``shape`` is (cycles, hazards)."""

    shortest: float = 40.0
    longest: float = 360.0
    slowest: float = 0.0004
    fastest: float = 0.2
    shape: tuple[int, int] = (8, 26)

    @cached_property
    def cycles(self) -> Floats:
        """Mean cycles in days: (cycles,)."""
        return np.asarray(np.geomspace(self.shortest, self.longest, self.shape[0]))

    @cached_property
    def hazards(self) -> Floats:
        """Bond hazards a day: (hazards,)."""
        return np.asarray(np.geomspace(self.slowest, self.fastest, self.shape[1]))

    @cached_property
    def log_cycles(self) -> Floats:
        """Logs of the mean cycles, evenly apart: (cycles,)."""
        return np.log(self.cycles)

    @cached_property
    def log_hazards(self) -> Floats:
        """Logs of the bond hazards, evenly apart: (hazards,)."""
        return np.log(self.hazards)

    def held(self, days: ArrayLike) -> Floats:
        """Return what failing bonds alone leave after each of ``days``: shape (days, hazards)."""
        return np.asarray(np.exp(-np.multiply.outer(np.asarray(days, float), self.hazards)))

    def kept(self, days: ArrayLike, spread: float) -> Floats:
        """Return what shedding alone leaves after each of ``days``: shape (days, cycles)."""
        return left_by_shedding(np.asarray(days, float)[:, None], self.cycles, spread)

    def left(self, days: ArrayLike, spread: float) -> Floats:
        """Return what is left after each of ``days``: shape (days, cycles, hazards)."""
        return np.asarray(self.kept(days, spread)[:, :, None] * self.held(days)[:, None, :])

    def days_to(self, level: float, spread: float, most: float = 2000.0) -> Floats:
        """Return the days until what is left falls to ``level`` (0 to 1), by bisection: shape (cycles, hazards)."""
        low, high = np.zeros(self.shape), np.full(self.shape, most)
        for _halving in range(36):
            middle = (low + high) / 2
            kept = left_by_shedding(middle, self.cycles[:, None], spread)
            above = kept * np.exp(-middle * self.hazards) > level
            low, high = np.where(above, middle, low), np.where(above, high, middle)
        return np.asarray((low + high) / 2)

    def moves(self, by: float, sd: float) -> Floats:
        """Return the chance of moving from each log hazard to each other: a normal step of mean ``by`` and ``sd``.

        Shape (hazards, hazards), from a row to a column: rows sum to 1. Densities at the nodes rather than masses
        around them: these would add the width of a cell to ``sd``, and a coarse lattice would then find less luck than
        there is.
        """
        far = (self.log_hazards[None, :] - self.log_hazards[:, None] - by) / sd
        weight = np.exp(-np.minimum(far**2 - (far**2).min(axis=1, keepdims=True), FAR**2) / 2)
        weight[weight <= np.exp(-(FAR**2) / 2)] = 0  # next to nothing: numbers that small slow all that follows
        return np.asarray(weight / weight.sum(axis=1, keepdims=True))
