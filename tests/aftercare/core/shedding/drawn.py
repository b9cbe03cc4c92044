"""Clients drawn from stated numbers, whose truth is known; natural shedding comes from the bench's own code."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, timedelta

import numpy as np

from aftercare.core.shedding import History, LashSet, Population, Seen
from aftercare.core.shedding import numbers as made
from aftercare.core.shedding.numbers import TURN_SD, Numbers, logistic
from aftercare.core.shedding.records import Steps
from aftercare.core.shedding.renewal import LEAST_AGE, Floats
from tests.bench.shedding.worlds import kept

BEGIN = date(2026, 1, 1)
# Median cycle 95 days, a bond in 83 lost a day; eyes off by five points, one reading in 33 plainly wrong.
USUAL = Numbers(
    cycle=float(np.log(95)),
    cycle_sd=float(np.log(0.2)),
    hazard=float(np.log(0.012)),
    hazard_sd=float(np.log(0.5)),
    spread=float(np.log(0.2)),
    luck=float(np.log(0.25)),
    eye=float(np.log(0.05)),
    wrong=float(np.log(0.03 / 0.97)),
    turn=float(np.log(0.02 / 0.98)),
    turn_by=float(np.log(0.7)),
    turn_worse=0.5,
)


@dataclass(frozen=True)
class World:
    """What a studio's clients, lots and eyes are really like."""

    numbers: Numbers = USUAL
    step: float = 0.05
    lots: tuple[float, ...] = ()  # the factor of each lot's bond hazard; each set is of one of them
    eyes: tuple[tuple[str, float], ...] = (("", 0.0),)  # artists and their bias; each reading is by one of them
    season: float = 0.0  # lashes shed 1 + season times as fast in October, 1 - season in April
    most_sets: int = 8

    def left(self, days: Floats, cycle: Floats, hazard: Floats, begun: Floats) -> Floats:
        """Return what is left after ``days`` of a set put on ``begun`` days after BEGIN."""
        year = 2 * np.pi / 365
        wave = np.sin(year * (begun + days - 288)) - np.sin(year * (begun - 288))
        shed = kept(days + self.season / year * wave, cycle, float(np.exp(self.numbers.spread)), LEAST_AGE)
        return np.asarray(shed * np.exp(-hazard * days))

    def days_to(self, level: float, cycle: Floats, hazard: Floats, begun: Floats) -> Floats:
        low, high = np.zeros(len(cycle)), np.full(len(cycle), 1500.0)
        for _halving in range(32):
            middle = (low + high) / 2
            above = self.left(middle, cycle, hazard, begun) > level
            low, high = np.where(above, middle, low), np.where(above, high, middle)
        return np.asarray((low + high) / 2)

    @property
    def known(self) -> Population:
        """The population of somebody who knows these numbers to the last digit."""
        return replace(
            Population.prior(),
            numbers=self.numbers,
            unsure=((0.0, 0.0), (0.0, 0.0)),
            luck_unsure=0.0,
            steps=Steps(self.step, {}),
        )


def called_worn(left: Floats) -> Floats:
    """Return how likely it is that a set of which so much is left is still called worn; with BARELY and NOT_KNOWN."""
    return np.asarray(0.02 + 0.98 * left**2 / (left**2 + 0.01))


@dataclass(frozen=True)
class Drawn:
    """So many clients: what the studio knows of them, and the truth of the set that each wears."""

    world: World
    histories: list[History]
    cycle: Floats
    hazard: Floats
    begun: Floats  # days after BEGIN at which the worn set was put on

    def days_to(self, level: float) -> Floats:
        return self.world.days_to(level, self.cycle, self.hazard, self.begun)

    def left(self, days: float) -> Floats:
        return self.world.left(np.full(len(self.cycle), days), self.cycle, self.hazard, self.begun)


def draw(world: World, clients: int, seed: int) -> Drawn:
    """Return so many clients of whom 0 to ``most_sets`` sets were seen, and who wear one more."""
    chance, most = np.random.default_rng(seed), world.most_sets
    numbers, shape = world.numbers, (clients, most + 1)
    cycle = np.exp(numbers.cycle + np.exp(numbers.cycle_sd) * chance.standard_normal(clients))
    first = numbers.hazard + np.exp(numbers.hazard_sd) * chance.standard_normal(clients)
    lot = chance.integers(0, max(1, len(world.lots)), shape)
    days = chance.integers(13, 32, shape).astype(float)
    begun = chance.integers(0, 365, clients)[:, None] + np.cumsum(days, axis=1) - days
    own = first[:, None] + _turned(numbers, shape, chance) + np.exp(numbers.luck) * chance.standard_normal(shape)
    hazard = np.exp(own) * np.array(world.lots or (1.0,))[lot]
    left = world.left(days, np.repeat(cycle[:, None], most + 1, axis=1), hazard, begun)
    share, artist = written(world, left, chance)
    count = chance.integers(0, most + 1, clients)
    lots = [[f"lot {one}" if world.lots else "" for one in row] for row in lot]
    histories = [
        History(
            str(her),
            tuple(
                LashSet(_day(begun[her, one]), lots[her][one], (_seen(begun, days, share, artist, her, one),))
                for one in range(count[her])
            ),
            LashSet(_day(begun[her, count[her]]), lots[her][count[her]]),
        )
        for her in range(clients)
    ]
    worn = (np.arange(clients), count)
    return Drawn(world, histories, cycle, hazard[worn], begun[worn])


def _turned(numbers: Numbers, shape: tuple[int, int], chance: np.random.Generator) -> Floats:
    """Return by how much each set's log hazard is off the client's first, for the turns that she has taken since."""
    turns = chance.random(shape) < logistic(numbers.turn)
    worse = np.where(chance.random(shape) < logistic(numbers.turn_worse), 1, -1)
    by = turns * (worse * np.exp(numbers.turn_by) + TURN_SD * chance.standard_normal(shape))
    by[:, 0] = 0
    return np.cumsum(by, axis=1)


def written(world: World, left: Floats, chance: np.random.Generator) -> tuple[Floats, np.ndarray]:
    """Return what is written down of sets of which so much is left, and by whom."""
    names, biases = zip(*world.eyes, strict=True)
    eye = made.eye(world.numbers)
    artist = chance.integers(0, len(names), left.shape)
    right = left + np.array(biases)[artist] + eye.error * chance.standard_normal(left.shape)
    # Plainly wrong is any step, all alike.
    steps = chance.integers(0, round(1 / world.step) + 1, left.shape) * world.step
    seen = np.where(chance.random(left.shape) < eye.wrong, steps, right)
    return np.round(np.clip(np.round(seen / world.step) * world.step, 0, 1), 4), np.array(names, dtype=object)[artist]


def _day(after: float) -> date:
    return BEGIN + timedelta(int(after))


def _seen(begun: Floats, days: Floats, share: Floats, artist: np.ndarray, her: int, one: int) -> Seen:
    return Seen(_day(begun[her, one] + days[her, one]), float(share[her, one]), artist[her, one])
