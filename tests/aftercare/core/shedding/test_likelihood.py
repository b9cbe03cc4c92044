"""The passes over a client's sets, against brute force, quadrature and finite differences."""

from __future__ import annotations

import itertools
from datetime import date, timedelta

import numpy as np
import pytest
from scipy import integrate, stats

from aftercare.core.shedding import LashSet, Seen
from aftercare.core.shedding import numbers as made
from aftercare.core.shedding.lattice import Lattice
from aftercare.core.shedding.likelihood import (
    Material,
    chances,
    emissions,
    forward,
    kernels_of,
    made_ready,
    posterior,
)
from aftercare.core.shedding.numbers import BEFORE, Numbers
from aftercare.core.shedding.records import Steps, pack
from aftercare.core.shedding.renewal import left_by_shedding

DAY = date(2027, 1, 4)
NUMBERS = BEFORE._replace(turn=-1.5)


def sets(*read: tuple[int, float, str]) -> tuple[LashSet, ...]:
    """Sets of so many days each, one after the other, with the share read at the end and the lot."""
    found, day = [], DAY
    for days, share, lot in read:
        found.append(LashSet(day, lot, (Seen(day + timedelta(days), share, "Ada"),)))
        day += timedelta(days)
    return tuple(found)


def material(hers: list[tuple[LashSet, ...]], lattice: Lattice, bad: float = 0.5, bias: float = 0.03) -> Material:
    records = pack(hers, Steps(0.05, {}))
    shifts = np.array([bad if name == "bad" else 0.0 for name in records.lots])
    return made_ready(lattice, records, shifts, np.full(len(records.kinds.day), bias))


HERS = [
    sets((21, 0.55, ""), (18, 0.6, "bad"), (25, 0.4, "")),
    sets((14, 0.8, "bad")),
    sets((20, 0.7, ""), (20, 0.35, "")),
]


@pytest.mark.parametrize("name", Numbers._fields)
def test_the_slope_is_that_of_finite_differences(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("aftercare.core.shedding.likelihood.PASSING", np.float64)  # else differences drown in rounding
    ready, by = material(HERS, Lattice(shape=(6, 18))), 1e-4

    _value, slope = posterior(ready, NUMBERS)
    more, less = (
        posterior(ready, NUMBERS._replace(**{name: getattr(NUMBERS, name) + sign * by}))[0] for sign in (1, -1)
    )

    assert slope[Numbers._fields.index(name)] == pytest.approx((more - less) / (2 * by), rel=1e-4, abs=1e-5)


def test_one_pass_weighs_all_the_ways_in_which_a_client_may_have_come() -> None:
    lattice, hers = Lattice(shape=(3, 5)), [HERS[0]]
    ready = material(hers, lattice)
    start, move = made.clients(lattice, NUMBERS), made.turns(lattice, NUMBERS)
    found = emissions(ready, chances(ready, NUMBERS), kernels_of(ready, NUMBERS))

    passed = forward(ready, found, start, move)

    total, after = 0.0, np.zeros(lattice.shape)
    rows = ready.emission[0]
    for cycle, *way in itertools.product(range(3), *[range(5)] * 4):
        weight = start[cycle, way[0]]
        for number, row in enumerate(rows):
            weight *= found[row, cycle, way[number]] * move[way[number], way[number + 1]]
        total += weight
        after[cycle, way[-1]] += weight
    assert passed.log_likelihood == pytest.approx(np.log(total), rel=1e-5)
    assert passed.after[0] == pytest.approx(after / total, abs=1e-5)


def test_one_reading_is_as_likely_as_quadrature_says() -> None:
    lattice = made.lattice_around(NUMBERS, (14, 44))
    ready = material([sets((21, 0.55, ""))], lattice, bias=0.0)
    eye, spread = made.eye(NUMBERS), made.spread(NUMBERS)
    hazard_sd = float(np.hypot(np.exp(NUMBERS.hazard_sd), np.exp(NUMBERS.luck)))  # client and luck in one

    def integrand(log_hazard: float, log_cycle: float) -> float:
        left = left_by_shedding(21, np.exp(log_cycle), spread) * np.exp(-np.exp(log_hazard) * 21)
        read = eye.chance(np.array([left]), np.array([0.55]), np.array([0.05]), np.zeros(1))[0]
        return float(
            read
            * stats.norm.pdf(log_cycle, NUMBERS.cycle, np.exp(NUMBERS.cycle_sd))
            * stats.norm.pdf(log_hazard, NUMBERS.hazard, hazard_sd)
        )

    low, high = NUMBERS.cycle - 1.2, NUMBERS.cycle + 1.2
    area, _error = integrate.dblquad(integrand, low, high, NUMBERS.hazard - 3.4, NUMBERS.hazard + 3.4, epsabs=1e-5)
    found = emissions(ready, chances(ready, NUMBERS), kernels_of(ready, NUMBERS))
    passed = forward(ready, found, made.clients(lattice, NUMBERS), made.turns(lattice, NUMBERS))

    assert np.exp(passed.log_likelihood) == pytest.approx(area, rel=2e-3)
