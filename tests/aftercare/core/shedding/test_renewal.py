"""Shedding against published and computed residual lives, against quadrature, and lash by lash."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import integrate, stats

from aftercare.core.shedding.renewal import excess, left_by_shedding
from tests.aftercare.core.shedding.lashes import grown, passed

# The equilibrium residual life (Ross; Tijms ch. 2): the share still present at t is 1 - 1/m times the integral of the
# survival from 0 to t. The values were computed from that, for all lashes, whatever their age.


@pytest.mark.parametrize(
    ("cycle", "spread", "shares"),
    [
        (90, 0.2, {7: 0.92222, 14: 0.84444, 21: 0.76667, 28: 0.68889}),
        (90, 0.3, {7: 0.92222, 14: 0.84444, 21: 0.76667, 28: 0.68892}),
        (145, 0.01, {7: 0.9517, 14: 0.9034, 21: 0.8552, 28: 0.8069}),
        (150, 0.01, {7: 0.9533, 14: 0.9067, 21: 0.8600, 28: 0.8133}),
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


def test_shedding_alone_would_bring_a_set_to_its_fill_after_many_weeks() -> None:
    # The days at which 60 % is left of all lashes, computed from fixed cycles.
    for cycle, days in {90: 36, 145: 58, 210: 84}.items():
        assert float(left_by_shedding(days, cycle, 0.01, least_age=0)) == pytest.approx(0.6, abs=1e-4)


@pytest.mark.parametrize(("least_age", "hazard"), [(0, 0.0158), (30, 0.0080)])
def test_the_rest_of_what_the_trade_sees_is_failed_bonds(least_age: float, hazard: float) -> None:
    # The hazard that leaves 55 % after three weeks beside a fixed cycle of 90 days, computed.
    left = float(left_by_shedding(21, 90, 0.005, least_age)) * np.exp(-21 * hazard)

    assert left == pytest.approx(0.55, abs=1e-3)


def test_what_is_left_is_one_less_the_law_of_the_residual_life() -> None:
    # f(x) = (4 - x) / 8 on (0, 4): mean 4/3, mean residual life 1, and 0.740916 of residual lives are at most 1.45 (a
    # posed problem's answer, 3/4 * 379349/384000). So the form of A(t) is right for a law that is not a gamma's.
    def mean_excess(x: float) -> float:
        return float(integrate.quad(lambda u: (u - x) * (4 - u) / 8, x, 4)[0])

    assert mean_excess(0) == pytest.approx(4 / 3)
    assert integrate.quad(lambda t: mean_excess(t) / mean_excess(0), 0, 4)[0] == pytest.approx(1)
    assert 1 - mean_excess(1.45) / mean_excess(0) == pytest.approx(0.740916, abs=1e-6)


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


@pytest.mark.parametrize(
    ("cycle", "least_age", "mean"),
    [(90, 0, 45), (145, 0, 72.5), (150, 0, 75), (210, 0, 105), (330, 0, 165), (90, 30, 30)],
)
def test_the_mean_residual_life_of_a_fixed_cycle_is_half_of_what_is_still_to_come(
    cycle: float, least_age: float, mean: float
) -> None:
    area, _error = integrate.quad(lambda t: left_by_shedding(t, cycle, 0.005, least_age), 0, 2 * cycle, points=[cycle])

    assert area == pytest.approx(mean, rel=1e-3)


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
