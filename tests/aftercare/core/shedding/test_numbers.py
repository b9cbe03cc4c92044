"""A population's numbers, and the tables that they make."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from aftercare.core.shedding import numbers as made
from aftercare.core.shedding.lattice import Lattice
from aftercare.core.shedding.numbers import BEFORE, BEFORE_SD, Numbers
from tests.aftercare.core.shedding.drawn import USUAL

FINE = Lattice(30, 500, 0.0002, 0.5, shape=(60, 80))


@pytest.mark.parametrize("name", Numbers._fields)
def test_what_is_believed_beforehand_falls_off_as_a_normal_law_does(name: str) -> None:
    at, by = USUAL, 1e-5
    law = stats.norm(np.array(BEFORE), np.array(BEFORE_SD))

    value, slope = made.density(at)

    at_prior, _slope = made.density(BEFORE)
    assert value - at_prior == pytest.approx(float((law.logpdf(np.array(at)) - law.logpdf(np.array(BEFORE))).sum()))
    more, less = (made.density(at._replace(**{name: getattr(at, name) + sign * by}))[0] for sign in (1, -1))
    assert slope[Numbers._fields.index(name)] == pytest.approx((more - less) / (2 * by), abs=1e-6)


def test_published_cycles_lie_within_what_is_believed_beforehand() -> None:
    # 90 +- 5 days (Thibaut et al., Br J Dermatol 2010;162:304, from memory), 145 days (30 + 15 + 100, the sum of what
    # reviews of bimatoprost print), 5 to 11 months (Aumond and Bitton, J Optom 2018;11:211, from memory).
    for cycle in (90, 145, 150, 210, 330):
        far = (np.log(cycle) - BEFORE.cycle) / BEFORE_SD.cycle
        assert abs(far) < 3, cycle


def test_shares_of_clients_follow_two_normal_laws() -> None:
    share = made.clients(FINE, USUAL)

    assert share.sum() == pytest.approx(1)
    for weight, at, mean, spread in (
        (share.sum(axis=1), FINE.log_cycles, USUAL.cycle, USUAL.cycle_sd),
        (share.sum(axis=0), FINE.log_hazards, USUAL.hazard, USUAL.hazard_sd),
    ):
        assert float(weight @ at) == pytest.approx(mean, abs=1e-3)
        assert float(np.sqrt(weight @ (at - mean) ** 2)) == pytest.approx(np.exp(spread), abs=1e-3)


def test_what_is_unsure_of_the_medians_widens_the_shares_and_ties_them() -> None:
    unsure = np.array([[0.04, 0.03], [0.03, 0.09]])

    share = made.clients(FINE, USUAL, unsure)

    x, y = FINE.log_cycles - USUAL.cycle, FINE.log_hazards - USUAL.hazard
    covariance = np.diag([np.exp(2 * USUAL.cycle_sd), np.exp(2 * USUAL.hazard_sd)]) + unsure
    assert float(share.sum(axis=1) @ x**2) == pytest.approx(covariance[0, 0], rel=0.01)
    assert float(share.sum(axis=0) @ y**2) == pytest.approx(covariance[1, 1], rel=0.01)
    assert float(x @ share @ y) == pytest.approx(covariance[0, 1], rel=0.02)


def test_few_turn_and_those_for_the_worse_or_the_better_as_the_odds_say() -> None:
    numbers = USUAL._replace(turn=float(np.log(0.1 / 0.9)), turn_worse=float(np.log(3)))

    moves = made.turns(FINE, numbers)

    middle = 40
    far = FINE.log_hazards - FINE.log_hazards[middle]
    assert moves.sum(axis=1) == pytest.approx(np.ones(80))
    assert moves[middle, far > 0.1].sum() == pytest.approx(0.1 * 0.75, abs=1e-3)
    assert moves[middle, far < -0.1].sum() == pytest.approx(0.1 * 0.25, abs=1e-3)
    worse = moves[middle, far > 0.1] @ far[far > 0.1] / moves[middle, far > 0.1].sum()
    assert worse == pytest.approx(0.7, abs=0.01)


def test_luck_and_what_is_unsure_of_a_lot_add_as_squares() -> None:
    kernel = made.luck(FINE, USUAL, shift=0.4, unsure=0.3)

    middle = 40
    far = FINE.log_hazards - FINE.log_hazards[middle]
    mean = float(kernel[middle] @ far)
    assert mean == pytest.approx(0.4, abs=2e-3)
    assert float(np.sqrt(kernel[middle] @ (far - mean) ** 2)) == pytest.approx(np.hypot(0.25, 0.3), abs=2e-3)


def test_a_lattice_around_a_population_holds_nearly_all_of_it() -> None:
    lattice = made.lattice_around(USUAL, (14, 44))
    sets = float(np.hypot(np.exp(USUAL.hazard_sd), np.exp(USUAL.luck)))

    outside = (
        stats.norm.cdf(np.log(lattice.shortest), USUAL.cycle, np.exp(USUAL.cycle_sd)),
        stats.norm.sf(np.log(lattice.longest), USUAL.cycle, np.exp(USUAL.cycle_sd)),
        stats.norm.cdf(np.log(lattice.slowest), USUAL.hazard, sets),
        stats.norm.sf(np.log(lattice.fastest), USUAL.hazard, sets),
    )

    assert max(outside) < 1e-3
    assert lattice.shape == (14, 44)
