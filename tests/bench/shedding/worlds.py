"""Worlds whose truth is known: clients, sets and readings drawn from stated constants, with no use of the model's code.

Natural shedding is the residual life of lashes older than ``least_age`` under gamma cycles; bonds fail at a constant
hazard; every set has its luck; an eye reads with an error, in a step, and is now and then plainly wrong.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from scipy.stats import gamma

from aftercare.core.shedding import History, LashSet, Seen

BEGIN = dt.date(2026, 1, 1)


@dataclass(frozen=True)
class World:
    """The constants of a world; days, hazards a day, spreads in the logarithm, shares."""

    name: str
    cycle: float = 95.0
    cycle_sd: float = 0.2
    hazard: float = 0.012
    hazard_sd: float = 0.5
    spread: float = 0.2  # coefficient of variation of one client's cycles
    least_age: float = 30.0
    luck: float = 0.25
    eye: float = 0.05
    step: float = 0.05
    wrong: float = 0.03
    most_sets: int = 8
    turned: float = 0.0  # share of clients who lose bonds ``turned_by`` times as fast from some set on
    turned_by: float = 2.0
    settled: int = 0  # at least so many sets have been seen since the turn; 0: the set now worn can be the first
    lots: int = 0
    bad_lot: float = 1.0  # factor of the bond hazard of lot 0
    limit: float = 1.03  # of the mean error against the best possible


@dataclass
class Person:
    """One client's truth, and what was seen of her: ``sets`` are (days, share read, hazard, lot), the last unseen."""

    cycle: float
    hazard: float
    turns_at: int
    sets: list[tuple[int, float, float, int]] = field(default_factory=list)


def kept(days: Any, cycle: Any, spread: float, least_age: float) -> Any:
    """Return what shedding leaves: E[(X - a - t)+] / E[(X - a)+], from the gamma law's own survival functions."""
    shape = spread**-2

    def excess(x: Any) -> Any:
        return cycle * gamma.sf(x, shape + 1, scale=cycle / shape) - x * gamma.sf(x, shape, scale=cycle / shape)

    return excess(least_age + days) / excess(least_age)


def days_to(level: float, cycle: Any, hazard: Any, world: World, most: float = 2000.0) -> Any:
    """Return the days until what is left falls to ``level``, by bisection."""
    low, high = np.broadcast_arrays(np.zeros(1), np.asarray(cycle * np.ones_like(hazard)))
    low, high = np.zeros(high.shape), np.full(high.shape, most)
    for _halving in range(45):
        middle = (low + high) / 2
        above = kept(middle, cycle, world.spread, world.least_age) * np.exp(-hazard * middle) > level
        low, high = np.where(above, middle, low), np.where(above, high, middle)
    return (low + high) / 2


def draw(world: World, clients: int, seed: int) -> list[Person]:
    """Return so many clients with 0 to ``most_sets`` sets seen, and one more that they wear."""
    chance = np.random.default_rng(seed)
    people = []
    for _number in range(clients):
        cycle = world.cycle * np.exp(world.cycle_sd * chance.standard_normal())
        hazard = world.hazard * np.exp(world.hazard_sd * chance.standard_normal())
        seen = int(chance.integers(0, world.most_sets + 1))
        turns = world.turned and chance.random() < world.turned and seen > world.settled
        person = Person(cycle, hazard, int(chance.integers(1, seen - world.settled + 1)) if turns else 10**6)
        for number in range(seen + 1):
            lot = int(chance.integers(0, world.lots)) if world.lots else -1
            own = hazard * np.exp(world.luck * chance.standard_normal())
            own *= world.turned_by if number >= person.turns_at else 1.0
            own *= world.bad_lot if lot == 0 else 1.0
            days = int(chance.integers(13, 32))
            left = float(kept(days, cycle, world.spread, world.least_age)) * np.exp(-own * days)
            plain_wrong = chance.random() < world.wrong
            read = chance.random() if plain_wrong else left + world.eye * chance.standard_normal()
            person.sets.append((days, float(np.clip(round(read / world.step) * world.step, 0, 1)), own, lot))
        people.append(person)
    return people


def histories(people: list[Person]) -> list[History]:
    """Return what a studio knows of them."""
    found = []
    for number, person in enumerate(people):
        day, past = BEGIN, []
        for days, share, _hazard, lot in person.sets[:-1]:
            seen = Seen(day + dt.timedelta(days=days), share)
            past.append(LashSet(day, f"lot {lot}" if lot >= 0 else "", (seen,)))
            day = seen.on
        lot = person.sets[-1][3]
        found.append(History(str(number), tuple(past), LashSet(day, f"lot {lot}" if lot >= 0 else "")))
    return found


def truth(world: World, people: list[Person], level: float) -> Any:
    """Return at how many days each worn set really falls to ``level``."""
    cycle = np.array([person.cycle for person in people])
    hazard = np.array([person.sets[-1][2] for person in people])
    return days_to(level, cycle, hazard, world)
