"""The best that is possible: the exact posterior under a world's own constants, on a fine grid.

Where clients turn, ``knowing`` is told who did and when; without, every possible moment is weighed, which is what
nobody who reads the same readings can better.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from scipy.special import ndtr

from tests.bench.shedding.worlds import Person, World, days_to, kept

CYCLES, HAZARDS = 29, 99
QUANTILES = (0.1, 0.5, 0.9)


class Limit:
    """The exact posterior of every client's worn set in one world."""

    def __init__(self, world: World, *, knowing: bool = True) -> None:
        self.world, self.knowing = world, knowing
        both = float(np.hypot(world.hazard_sd, world.luck))
        most = np.log(world.turned_by if world.turned else 1.0) + np.log(max(world.bad_lot, 1.0))
        self.cycles = np.log(world.cycle) + world.cycle_sd * np.linspace(-3.5, 3.5, CYCLES)
        self.hazards = np.linspace(np.log(world.hazard) - 4.2 * both, np.log(world.hazard) + 4.2 * both + most, HAZARDS)
        x = (self.cycles - np.log(world.cycle)) / world.cycle_sd
        y = (self.hazards - np.log(world.hazard)) / world.hazard_sd
        start = np.exp(-(x[:, None] ** 2) / 2 - y[None, :] ** 2 / 2)
        self.start = start / start.sum()
        self.kernels: dict[float, Any] = {}
        self.seen: dict[tuple[int, float, float], Any] = {}

    def quantiles(self, people: list[Person], level: float) -> Any:
        """Return the 10, 50 and 90 % quantiles of the days to ``level``: (clients, 3)."""
        at = days_to(level, np.exp(self.cycles)[:, None], np.exp(self.hazards)[None, :], self.world)
        weights = np.array([self._worn(person).reshape(-1) for person in people])
        order = np.argsort(at.reshape(-1))
        values, sorted_weights = at.reshape(-1)[order], weights[:, order]
        total = np.cumsum(sorted_weights, axis=1)
        passed = (total - sorted_weights / 2) / total[:, -1:]
        return np.array([np.interp(QUANTILES, row, values) for row in passed])

    def _worn(self, person: Person) -> Any:
        if self.knowing or not self.world.turned:
            return self._under(person, person.turns_at)
        count = len(person.sets) - 1
        last = count - self.world.settled
        if last < 1:
            return self._under(person, 10**6)
        found = (1 - self.world.turned) * self._under(person, 10**6)
        for turns_at in range(1, last + 1):
            found = found + self.world.turned / last * self._under(person, turns_at)
        return found

    def _under(self, person: Person, turns_at: int) -> Any:
        """Return how likely each node is for the worn set, together with the readings, if she turned then."""
        weight = self.start
        *past, (_days, _share, _hazard, lot) = person.sets
        for number, (days, share, _own, its_lot) in enumerate(past):
            weight = weight * self._reading(days, share, self._shift(number >= turns_at, its_lot))
        return weight @ self._kernel(self._shift(len(past) >= turns_at, lot))

    def _shift(self, turned: bool, lot: int) -> float:
        world = self.world
        return float((np.log(world.turned_by) if turned else 0.0) + (np.log(world.bad_lot) if lot == 0 else 0.0))

    def _kernel(self, shift: float) -> Any:
        if shift not in self.kernels:
            far = (self.hazards[None, :] - self.hazards[:, None] - shift) / self.world.luck
            kernel = np.exp(-(far**2) / 2)
            self.kernels[shift] = kernel / kernel.sum(axis=1, keepdims=True)
        return self.kernels[shift]

    def _reading(self, days: int, share: float, shift: float) -> Any:
        key = (days, share, shift)
        if key not in self.seen:
            world = self.world
            shed = kept(float(days), np.exp(self.cycles), world.spread, world.least_age)
            left = shed[:, None] * np.exp(-np.exp(self.hazards) * days)[None, :]
            number = round(share / world.step)
            low = -np.inf if number == 0 else (number - 0.5) * world.step
            high = np.inf if number >= round(1 / world.step) else (number + 0.5) * world.step
            right = ndtr((high - left) / world.eye) - ndtr((low - left) / world.eye)
            chance = (1 - world.wrong) * right + world.wrong * world.step / (1 + world.step)
            self.seen[key] = chance @ self._kernel(shift).T
        return self.seen[key]
