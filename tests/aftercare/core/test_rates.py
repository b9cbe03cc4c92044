"""Rates and means with their intervals, against published values."""

from __future__ import annotations

import math
import random

import numpy as np
import pytest
import statsmodels.api as sm
from scipy import stats

from aftercare.core import rates

# Newcombe, Stat Med 1998;17:857, Table I, method 3 (Wilson's score interval, no continuity correction). From memory.
NEWCOMBE = [(81, 263, 0.2553, 0.3662), (15, 148, 0.0624, 0.1605), (0, 20, 0.0, 0.1611), (1, 29, 0.0061, 0.1718)]

# Lohr, Sampling: Design and Analysis, example 5.2: grade points of the four students of each of 5 suites, of 100.
# She prints 2.826 with a standard error of 0.164, the finite population's 1 - 5/100 in it. From memory.
LOHR = [
    [3.08, 2.60, 3.44, 3.04],
    [2.36, 3.04, 3.28, 2.68],
    [2.00, 2.56, 2.52, 1.88],
    [3.00, 2.88, 3.44, 3.64],
    [2.68, 1.92, 3.28, 3.20],
]


@pytest.mark.parametrize(("hits", "cases", "low", "high"), NEWCOMBE)
def test_wilson_s_interval_is_newcombe_s(hits: int, cases: int, low: float, high: float) -> None:
    assert rates.wilson(hits, cases) == pytest.approx((low, high), abs=5e-5)


@pytest.mark.parametrize(("hits", "cases"), [(1, 0), (-1, 5), (6, 5)])
def test_impossible_counts_are_refused(hits: int, cases: int) -> None:
    with pytest.raises(ValueError, match="hits among"):
        rates.wilson(hits, cases)


def test_the_error_of_a_clustered_mean_is_lohr_s() -> None:
    values = [one for suite in LOHR for one in suite]
    groups = [number for number, suite in enumerate(LOHR) for _one in suite]

    found = rates.mean(values, groups)

    assert found.value == pytest.approx(2.826, abs=5e-4)
    assert found.high is not None
    error = (found.high - found.value) / stats.t.ppf(0.975, 4)
    assert error * math.sqrt(1 - 5 / 100) == pytest.approx(0.164, abs=5e-4)
    assert (found.cases, found.groups) == (20, 5)


def test_with_one_case_a_client_the_interval_of_a_mean_is_the_textbook_s() -> None:
    values = [3.0, 5.5, 4.0, 7.25, 1.0, 6.0]
    low, high = stats.t.interval(0.95, 5, loc=sum(values) / 6, scale=stats.sem(values))

    found = rates.mean(values, range(6))

    assert (found.low, found.high) == pytest.approx((low, high))


def test_with_one_case_a_client_the_interval_of_a_rate_is_all_but_wilson_s() -> None:
    """Its variance has n-1 for n, so the cases are worth one less."""
    hits = [True] * 8 + [False] * 2

    found = rates.rate(hits, range(10))

    assert (found.low, found.high) == pytest.approx(rates.wilson(8 * 0.9, 9))


def test_the_same_case_again_and_again_makes_nothing_surer() -> None:
    hits, clients = [True, True, False, True, False, True], range(6)

    once, often = rates.rate(hits, clients), rates.rate(hits * 50, [*clients] * 50)

    assert (often.low, often.high) == pytest.approx((once.low, once.high))
    assert often.cases == 300


def test_where_all_are_hits_each_client_counts_once() -> None:
    found = rates.rate([True] * 40, [number % 8 for number in range(40)])

    assert (found.low, found.high) == pytest.approx(rates.wilson(8, 8))


def test_likeness_that_cancels_out_never_counts_for_more_than_the_cases() -> None:
    found = rates.rate([True, False] * 10, [number // 2 for number in range(20)])

    assert (found.low, found.high) == pytest.approx(rates.wilson(10, 20))


def test_one_client_alone_has_no_interval() -> None:
    assert rates.mean([1.0, 2.0], ["Mia", "Mia"]) == rates.Figure(1.5, None, None, 2, 1)
    assert rates.rate([True, False], ["Mia", "Mia"]) == rates.Figure(0.5, None, None, 2, 1)


def test_nothing_has_no_mean() -> None:
    with pytest.raises(ValueError, match="nothing"):
        rates.mean([], [])


def test_the_interval_holds_the_truth_as_often_as_it_says_where_clients_differ() -> None:
    """60 clients with 1 to 8 visits each, whose own rates lie about 0.8; 400 such studios."""
    pick, held, naive = random.Random(4), 0, 0

    for _studio in range(400):
        hits: list[bool] = []
        groups: list[int] = []
        for client in range(60):
            own = pick.betavariate(2, 0.5)  # mean 0.8
            for _visit in range(pick.randint(1, 8)):
                hits.append(pick.random() < own)
                groups.append(client)
        found = rates.rate(hits, groups)
        assert found.low is not None
        assert found.high is not None
        held += found.low <= 0.8 <= found.high
        low, high = rates.wilson(sum(hits), len(hits))
        naive += low <= 0.8 <= high

    assert held / 400 > 0.92  # 0.95, less three standard errors of 400 trials
    assert naive / 400 < 0.85  # what counting visits would have claimed


@pytest.mark.parametrize("seed", range(4))
def test_sums_of_groups_say_the_same_as_a_reference_that_sees_every_case(seed: int) -> None:
    """Source: statsmodels, ordinary least squares on a constant with standard errors by cluster.

    Its correction is G/(G-1) · (n-1)/(n-1) for one constant, as here.
    """
    dice = np.random.default_rng(seed)
    groups = dice.integers(0, 12, 90)
    values = dice.normal(0.6, 0.1, 90) + 0.1 * (groups % 3)

    found = rates.mean_of(rates.Sums.of(list(values), list(groups)))

    model = sm.OLS(values, np.ones(90)).fit(cov_type="cluster", cov_kwds={"groups": groups}, use_t=True)
    low, high = model.conf_int()[0]
    assert found.value == pytest.approx(values.mean())
    assert (found.low, found.high) == pytest.approx((low, high))


def test_sums_of_equal_values_leave_no_spread_but_rounding() -> None:
    found = rates.mean_of(rates.Sums.of([0.1] * 30, [number % 7 for number in range(30)]))

    assert (found.low, found.high) == pytest.approx((0.1, 0.1))


def test_sums_without_cases_are_refused() -> None:
    with pytest.raises(ValueError, match="mean of nothing"):
        rates.Sums.of([], [])
