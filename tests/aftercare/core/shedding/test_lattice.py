"""The lattice of possible clients: what is left at its nodes, days to a level, and steps between them."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import optimize, stats

from aftercare.core.shedding.lattice import Lattice
from aftercare.core.shedding.renewal import left_by_shedding


def test_axes_are_even_in_the_logarithm() -> None:
    lattice = Lattice(50, 200, 0.001, 0.1, shape=(5, 7))

    assert lattice.cycles[[0, 2, -1]] == pytest.approx([50, 100, 200])
    assert lattice.hazards[[0, 3, -1]] == pytest.approx([0.001, 0.01, 0.1])
    assert np.ptp(np.diff(lattice.log_cycles)) == pytest.approx(0)
    assert np.ptp(np.diff(lattice.log_hazards)) == pytest.approx(0)


def test_what_is_left_is_what_both_causes_leave() -> None:
    lattice = Lattice(shape=(4, 6))

    left = lattice.left([0, 21, 400], 0.2)

    assert left.shape == (3, 4, 6)
    assert left[0] == pytest.approx(1)
    expected = left_by_shedding(21, lattice.cycles[1], 0.2) * np.exp(-lattice.hazards[4] * 21)
    assert left[1, 1, 4] == pytest.approx(float(expected))
    assert left[2].max() < 0.1


@pytest.mark.parametrize("level", [0.9, 0.6, 0.4, 0.05])
def test_days_to_a_level_are_where_a_root_finder_finds_them(level: float) -> None:
    lattice, spread = Lattice(shape=(3, 4)), 0.25

    days = lattice.days_to(level, spread)

    for cycle in range(3):
        for hazard in range(4):

            def above(day: float, cycle: int = cycle, hazard: int = hazard) -> float:
                kept = float(left_by_shedding(day, lattice.cycles[cycle], spread))
                return kept * float(np.exp(-day * lattice.hazards[hazard])) - level

            assert days[cycle, hazard] == pytest.approx(optimize.brentq(above, 0, 1500), abs=1e-6)


def test_a_level_that_is_never_reached_in_time_is_the_longest_time() -> None:
    assert Lattice(shape=(2, 2)).days_to(0.5, 0.2, most=2.0) == pytest.approx(np.full((2, 2), 2.0))


def test_steps_have_the_mean_and_the_spread_that_they_should() -> None:
    lattice = Lattice(shape=(2, 60))

    moves = lattice.moves(0.3, 0.25)

    assert moves.sum(axis=1) == pytest.approx(np.ones(60))
    middle = 30
    far = lattice.log_hazards - lattice.log_hazards[middle]
    mean = float(moves[middle] @ far)
    assert mean == pytest.approx(0.3, abs=1e-3)
    assert float(np.sqrt(moves[middle] @ (far - mean) ** 2)) == pytest.approx(0.25, abs=1e-3)


def test_steps_of_a_coarse_lattice_still_follow_the_normal_law() -> None:
    lattice = Lattice(shape=(2, 26))
    cell = float(np.diff(lattice.log_hazards)[0])

    moves = lattice.moves(0.0, 0.25)

    middle = 13
    assert moves[middle, middle] == pytest.approx(stats.norm.pdf(0, 0, 0.25) * cell, rel=0.01)
