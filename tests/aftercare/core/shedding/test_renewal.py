"""Shedding against published and computed residual lives, against quadrature, and lash by lash."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import integrate, stats

from aftercare.core.shedding.renewal import excess, left_by_shedding

# The equilibrium residual life (Ross; Tijms ch. 2): the share still present at t is 1 - 1/m times the integral of the
# survival from 0 to t. The values were computed from that, for all lashes, whatever their age.


@pytest.mark.parametrize(
    ("cycle", "spread", "shares"),
    [
        (90, 0.2, {7: 0.92222, 14: 0.84444, 21: 0.76667, 28: 0.68889}),
        (90, 0.3, {7: 0.92222, 14: 0.84444, 21: 0.76667, 28: 0.68892}),
        (145, 0.01, {7: 0.9517, 14: 0.9034, 21: 0.8552, 28: 0.8069}),
        (210, 0.01, {7: 0.9667, 14: 0.9333, 21: 0.9000, 28: 0.8667}),
        (330, 0.01, {7: 0.9788, 14: 0.9576, 21: 0.9364, 28: 0.9152}),
    ],
)
def test_what_is_left_of_all_lashes_follows_the_residual_life(
    cycle: float, spread: float, shares: dict[int, float]
) -> None:
    for day, share in shares.items():
        assert float(left_by_shedding(day, cycle, spread, least_age=0)) == pytest.approx(share, abs=6e-5)


def test_lashes_old_enough_to_carry_an_extension_shed_sooner() -> None:
    # Fixed cycle of 90 days, only lashes older than 30 days: (60 - t) / 60.
    for day, share in {7: 0.8833, 14: 0.7667, 21: 0.6500, 28: 0.5333}.items():
        assert float(left_by_shedding(day, 90, 0.005, least_age=30)) == pytest.approx(share, abs=6e-5)


@pytest.mark.parametrize("cycle", [60.0, 95.0, 220.0])
@pytest.mark.parametrize("spread", [0.06, 0.2, 0.4])
@pytest.mark.parametrize("at", [0.0, 17.0, 80.0, 200.0])
def test_the_mean_excess_is_the_integral_of_the_survival_function(cycle: float, spread: float, at: float) -> None:
    shape = spread**-2
    survival = stats.gamma(shape, scale=cycle / shape).sf
    area, _error = integrate.quad(survival, at, cycle * 8, limit=400, points=[cycle] if at < cycle else None)

    assert float(excess(at, cycle, spread)) == pytest.approx(area, abs=1e-6)


def test_the_mean_residual_life_is_half_the_mean_and_its_square_of_variation() -> None:
    # (m / 2)(1 + CV^2), from memory: the area under what is left. 46.8 and 49.05 days are the computed values.
    for spread, mean in ((0.2, 46.8), (0.3, 49.05)):
        area, _error = integrate.quad(lambda t, spread=spread: left_by_shedding(t, 90, spread, least_age=0), 0, 600)
        assert area == pytest.approx(mean, abs=1e-3)


def grown(chance: np.random.Generator, lashes: int, cycle: float, spread: float) -> tuple[np.ndarray, np.ndarray]:
    """Return ages and whole lengths of cycles met at one moment in equilibrium: the longer is met more often."""
    shape = spread**-2
    length = chance.gamma(shape + 1, cycle / shape, lashes)  # biased by length
    return chance.uniform(0, 1, lashes) * length, length


def passed(
    chance: np.random.Generator, age: np.ndarray, length: np.ndarray, days: float, cycle: float, spread: float
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Let days pass: return ages, lengths, and which follicles have shed their lash and grown another."""
    age, shed, shape = age + days, np.zeros(len(age), bool), spread**-2
    length = length.copy()
    while (over := age >= length).any():
        age[over] -= length[over]
        length[over] = chance.gamma(shape, cycle / shape, int(over.sum()))
        shed |= over
    return age, length, shed


@pytest.mark.parametrize("spread", [0.1, 0.3])
def test_a_fill_of_all_that_is_old_enough_starts_as_a_full_set_does(spread: float) -> None:
    chance, lashes, cycle, least = np.random.default_rng(7), 400_000, 90.0, 30.0
    age, length = grown(chance, lashes, cycle, spread)
    age, length, _shed = passed(chance, age, length, 21, cycle, spread)  # the full set has been on for three weeks

    carries = age > least  # the fill: every lash that is old enough has an extension again
    _age, _length, shed = passed(chance, age, length, 21, cycle, spread)

    left = float((~shed[carries]).mean())
    assert left == pytest.approx(float(left_by_shedding(21, cycle, spread, least)), abs=0.003)


def test_a_fill_that_leaves_the_newly_grown_bare_is_no_fresh_start() -> None:
    chance, lashes, cycle, spread, least = np.random.default_rng(8), 400_000, 90.0, 0.2, 30.0
    age, length = grown(chance, lashes, cycle, spread)
    first = age > least
    age, length, shed = passed(chance, age, length, 21, cycle, spread)

    carries = first & ~shed  # nothing was added at the second visit
    _age, _length, then = passed(chance, age, length, 21, cycle, spread)

    left = float((~then[carries]).mean())
    assert left < float(left_by_shedding(21, cycle, spread, least)) - 0.1
