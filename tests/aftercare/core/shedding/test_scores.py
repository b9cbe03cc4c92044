"""Scores against published and computed values."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from tests.bench.shedding.scores import coverage, crps, interval_score

FINE = (np.arange(20_000) + 0.5) / 20_000  # quantiles that stand for a law


@pytest.mark.parametrize(
    ("law", "truth", "value"),
    [
        (stats.norm(0.1, 0.4), 0.0, 0.10339992515976162),  # published by a public library of scores
        # N(0,1): closed form of Gneiting and others 2005, computed.
        (stats.norm(0, 1), 0.0, 0.233695),
        (stats.norm(0, 1), 0.5, 0.331404),
        (stats.norm(0, 1), 1.0, 0.602441),
        (stats.norm(0, 1), 2.0, 1.452792),
        (stats.norm(0, 1), 3.0, 2.436575),
        (stats.norm(21, 3), 25.0, 2.561802),
        (stats.lognorm(0.2, scale=21), 18.0, 1.844356),
        (stats.gamma(25, scale=21 / 25), 18.0, 1.678487),
    ],
)
def test_the_ranked_score_of_a_law(law: stats.rv_continuous, truth: float, value: float) -> None:
    assert crps(law.ppf(FINE), np.ones(len(FINE)), truth) == pytest.approx(value, abs=2e-4 * float(law.std()))


@pytest.mark.parametrize(("values", "truth", "value"), [([1, 2, 3], 2, 0.222222), ([14, 18, 21, 25], 20, 1.25)])
def test_the_ranked_score_of_an_ensemble(values: list[float], truth: float, value: float) -> None:
    assert crps(values, [1] * len(values), truth) == pytest.approx(value, abs=1e-6)  # computed


def test_the_interval_score_charges_width_and_what_lies_outside() -> None:
    assert float(interval_score(14, 28, 31, missed=0.1)) == 74  # computed
    assert float(interval_score(14, 28, 20)) == 14


def test_a_calibrated_interval_scores_what_theory_says() -> None:
    # (4 / alpha) phi(1.644854) = 4.125426 for the 90 % interval of N(0,1), computed.
    truth = stats.norm.ppf(FINE)
    assert float(interval_score(-1.644854, 1.644854, truth, missed=0.1).mean()) == pytest.approx(4.125426, abs=2e-3)


def test_calibrated_intervals_hold_as_many_as_they_say() -> None:
    truth = np.random.default_rng(3).standard_normal(200)
    # 171 to 188 of 200 is where 95 % of calibrated 90 % intervals lie, computed (binomial).
    assert 171 <= 200 * coverage(np.full(200, -1.644854), np.full(200, 1.644854), truth) <= 188
