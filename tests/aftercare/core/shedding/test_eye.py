from __future__ import annotations

import numpy as np
import pytest

from aftercare.core.shedding.eye import FINEST, Eye, step_of

EYE = Eye(error=0.05, wrong=0.03)


@pytest.mark.parametrize("step", [0.25, 0.1, 0.05, 0.025])
@pytest.mark.parametrize("bias", [0.0, 0.08])
def test_something_is_always_written_down(step: float, bias: float) -> None:
    shares = np.round(np.arange(0, 1 + step / 2, step), 6)
    left = np.repeat(np.array([0.0, 0.03, 0.42, 0.97])[None], len(shares), axis=0)

    chances = EYE.chance(left, shares, np.full(len(shares), step), np.full(len(shares), bias))

    assert chances.sum(axis=0) == pytest.approx(1)


def test_slopes_are_those_of_finite_differences() -> None:
    left, by = np.array([[0.35, 0.62], [0.0, 0.9], [0.97, 0.5]]), 1e-6
    share, step, bias = np.array([0.4, 0.0, 1.0]), np.full(3, 0.05), np.array([0.0, 0.02, -0.03])
    odds = np.log(0.03 / 0.97)

    def at(error: float = 0.05, wrong: float = odds, moved: float = 0.0) -> np.ndarray:
        return np.asarray(Eye(error, float(1 / (1 + np.exp(-wrong)))).chance(left + moved, share, step, bias))

    slopes = EYE.slopes(left, share, step, bias)

    assert slopes.error == pytest.approx((at(0.05 * np.exp(by)) - at(0.05 * np.exp(-by))) / (2 * by), abs=1e-6)
    assert slopes.wrong == pytest.approx((at(wrong=odds + by) - at(wrong=odds - by)) / (2 * by), abs=1e-6)
    assert slopes.left == pytest.approx((at(moved=by) - at(moved=-by)) / (2 * by), abs=1e-5)


@pytest.mark.parametrize("step", [0.25, 0.1, 0.05])
def test_the_step_in_which_an_eye_reads_is_told_from_its_readings(step: float) -> None:
    chance = np.random.default_rng(1)
    assert step_of(np.round(chance.uniform(0.2, 0.9, 60) / step) * step) == step


def test_a_free_hand_reads_in_the_finest_step_and_few_readings_say_nothing() -> None:
    chance = np.random.default_rng(2)
    assert step_of(chance.uniform(0.2, 0.9, 60)) == FINEST
    assert step_of([0.5, 0.6], default=0.1) == 0.1


def test_one_slip_of_the_pen_does_not_change_a_step() -> None:
    assert step_of([*[0.4, 0.55, 0.6, 0.75] * 10, 0.62]) == 0.05
