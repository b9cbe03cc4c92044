"""Lots and reactions against published tables, reference libraries and drawn studios."""

from __future__ import annotations

import math

import numpy as np
import pytest
import statsmodels.api as sm
from scipy import stats

from aftercare.core.lots import RATIOS, FourFold, Gamma, GammaPoisson, evidence, is_worse

# Rifabutin and uveitis, the extreme example of Evans, Waller and Davis, Pharmacoepidemiol Drug Saf 2001;10:483. The
# cells, and the printed 586 and 22,740, are from memory.
RIFABUTIN = FourFold(41, 14, 754, 591_958)
SMALL = FourFold(5, 95, 20, 1880)  # five of 100 sets after one lot, 20 of 1,900 after all others
DRUGS = GammaPoisson((Gamma(0.2, 0.06, 0.1), Gamma(1.4, 1.8, 0.9)))  # a test vector: drugs, no adhesives

# Count, expected, weight of the first law, EBGM, EB05, EB95, computed for DuMouchel's model (Am Stat 1999;53:177).
DRAWN = [
    (0, 2, 0.13490, 0.1328, 0.0021, 0.9513),
    (1, 0.01, 0.28626, 2.0565, 0.3342, 29.229),
    (3, 0.1, 0.88404, 13.287, 1.9202, 40.128),
    (3, 1, 0.09003, 1.4750, 0.5837, 3.4246),
    (5, 1.25, 0.18329, 2.1692, 0.9857, 4.9370),
    (10, 1, 0.95765, 8.8295, 4.5525, 14.9692),
    (100, 10, 0.99972, 9.9102, 8.3811, 11.6513),
]


def test_the_published_extreme_comes_out_as_printed() -> None:
    assert RIFABUTIN.rate_ratio == pytest.approx(585.99, abs=0.005)
    # The paper's form has no correction: 22,740.
    assert RIFABUTIN.chi_square(yates=False) == pytest.approx(22_739.5, abs=0.05)
    assert RIFABUTIN.chi_square(yates=True) == pytest.approx(22_187.3, abs=0.05)


def test_a_small_lot_comes_out_as_computed() -> None:
    interval = SMALL.rate_ratio_interval

    assert SMALL.rate_ratio == pytest.approx(4.75)
    assert interval == pytest.approx((1.820, 12.395), abs=5e-4)
    assert SMALL.chi_square(yates=False) == pytest.approx(11.992, abs=5e-4)
    assert SMALL.chi_square(yates=True) == pytest.approx(9.007, abs=5e-4)
    assert SMALL.fisher == pytest.approx(0.006751, abs=5e-7)


@pytest.mark.parametrize("cells", [(5, 95, 20, 1880), (0, 30, 4, 100), (2, 3, 1, 9), (4, 0, 1, 7), (1, 40, 0, 60)])
def test_single_looks_are_those_of_the_reference_library(cells: tuple[int, int, int, int]) -> None:
    found = FourFold(*cells)
    square = np.asarray(cells).reshape(2, 2)

    assert found.fisher == pytest.approx(stats.fisher_exact(square, alternative="greater").pvalue)
    for yates in (True, False):
        assert found.chi_square(yates=yates) == pytest.approx(
            stats.chi2_contingency(square, correction=yates).statistic, abs=1e-12
        )


def test_nothing_is_divided_by_nothing() -> None:
    none = FourFold(0, 0, 0, 0)

    assert (none.rate_ratio, none.rate_ratio_interval, none.chi_square(yates=True)) == (None,) * 3
    assert none.fisher == 1
    assert FourFold(0, 10, 3, 10).rate_ratio == 0
    assert FourFold(0, 10, 3, 10).rate_ratio_interval is None
    with pytest.raises(ValueError, match="below 0"):
        FourFold(3, -1, 0, 0)


@pytest.mark.parametrize(("count", "expected", "weight", "middle", "low", "high"), DRAWN)
def test_ratios_are_drawn_together_as_published(
    count: int, expected: float, weight: float, middle: float, low: float, high: float
) -> None:
    law = DRUGS.after(count, expected)

    assert law.laws[0].weight == pytest.approx(weight, abs=5e-6)
    assert law.middle == pytest.approx(middle, rel=5e-5, abs=5e-5)  # half of the last digit printed
    assert law.quantile(0.05) == pytest.approx(low, rel=1e-3, abs=5e-5)
    assert law.quantile(0.95) == pytest.approx(high, rel=5e-5)


def test_the_law_of_the_studios_lots_is_the_one_that_a_reference_library_fits() -> None:
    counts = [0, 1, 0, 2, 9, 1, 0, 3, 1, 12, 0, 2]
    expected = [2.0, 3.1, 1.2, 2.5, 3.0, 2.2, 1.5, 2.9, 2.4, 3.5, 1.9, 2.8]

    [law] = GammaPoisson.fit(counts, expected).laws

    # Counts with a gamma of ratios are negative binomial: its alpha is 1 / shape, its mean the gamma's.
    model = sm.NegativeBinomial(counts, np.ones(len(counts)), exposure=np.asarray(expected))
    mean, alpha = model.fit(disp=0).params
    assert law.shape == pytest.approx(1 / alpha, rel=1e-3)
    assert law.shape / law.rate == pytest.approx(math.exp(mean), rel=1e-3)


def test_lots_no_more_unlike_than_chance_makes_them_are_nearly_one() -> None:
    law = GammaPoisson.fit([2, 3, 2, 3, 2], [2.4] * 5)
    assert law.after(3, 2.4).middle - law.after(2, 2.4).middle < 0.01


def test_a_lot_of_few_sets_is_drawn_further() -> None:
    law = GammaPoisson.fit([0, 1, 0, 2, 9, 1, 0, 3], [2.0, 3.1, 1.2, 2.5, 3.0, 2.2, 1.5, 2.9])
    assert law.after(1, 0.25).middle < law.after(12, 3).middle < 4


@pytest.mark.parametrize(("hits", "due"), [([9, 1, 2], [3.0] * 3), ([1, 1, 1, 1], [1.0] * 4), ([3] * 3, [1.0] * 4)])
def test_too_little_to_learn_from_says_so(hits: list[int], due: list[float]) -> None:
    with pytest.raises(ValueError, match="takes 4 of them and 5 reactions"):
        GammaPoisson.fit(hits, due)


def test_a_lot_without_a_set_has_nothing_to_expect() -> None:
    with pytest.raises(ValueError, match="without a set"):
        GammaPoisson.fit([3, 1, 2, 0], [1.0, 2.0, 1.0, 0.0])


@pytest.mark.parametrize(("sets", "others", "total"), [(40, 400, 7), (100, 100, 12), (3, 900, 3), (200, 0, 5)])
def test_evidence_is_one_on_average_for_a_lot_like_the_rest(sets: int, others: int, total: int) -> None:
    """Over every way in which the reactions can fall, each as likely as the sets' share makes it."""
    share = sets / (sets + others)
    ways = [n for n in range(total + 1) if n <= sets and total - n <= others]

    mean = sum(stats.binom.pmf(n, total, share) * evidence(n, sets, total - n, others) for n in ways)

    # A lot of three sets could have no more reactions than sets: what is left out is next to nothing.
    assert mean == pytest.approx(1, abs=1e-9)


def test_evidence_is_the_likelihood_ratio_of_two_binomials() -> None:
    ratios = np.asarray(RATIOS)
    worse = stats.binom.pmf(5, 25, ratios * 100 / (1900 + ratios * 100)).mean()
    assert evidence(5, 100, 20, 1900) == pytest.approx(worse / stats.binom.pmf(5, 25, 0.05))


def test_looking_after_every_set_marks_hardly_a_lot_that_is_like_the_rest() -> None:
    """800 lots of 300 sets each, beside 600 others at the same 2 %; a fixed test's p would mark many more."""
    draw = np.random.default_rng(20270309)
    marked = tempted = 0
    for _lot in range(800):
        other_hits = int(draw.binomial(600, 0.02))
        falls = np.flatnonzero(draw.random(300) < 0.02)  # looked at when it could have risen: after each reaction
        looks = [(number + 1, int(place) + 1) for number, place in enumerate(falls)]
        marked += any(evidence(hits, sets, other_hits, 600) >= 20 for hits, sets in looks)
        tempted += any(FourFold(h, s - h, other_hits, 600 - other_hits).fisher <= 0.05 for h, s in looks)

    assert marked <= 0.05 * 800
    assert tempted > 0.10 * 800


@pytest.mark.parametrize(("share", "rate"), [(0.5, 0.03), (0.2, 0.1), (0.9, 0.1)])
def test_lots_worn_side_by_side_are_marked_as_rarely(share: float, rate: float) -> None:
    """300 lots, looked at after each reaction while both they and the rest are worn on, from the first set."""
    draw = np.random.default_rng(20270311)
    marked = 0
    for _lot in range(300):
        on_lot, hit = draw.random(400) < share, draw.random(400) < rate
        sets, others = np.cumsum(on_lot), np.cumsum(~on_lot)
        hits, other_hits = np.cumsum(on_lot & hit), np.cumsum(~on_lot & hit)
        looks = np.flatnonzero(hit)
        marked += any(evidence(int(hits[n]), int(sets[n]), int(other_hits[n]), int(others[n])) >= 20 for n in looks)

    assert marked <= 0.05 * 300


def test_a_lot_three_times_as_bad_is_found_more_often_than_not() -> None:
    """Within 200 sets at 6 %, beside 1,500 at 2 %: 124 of these 200 are. Being let look often costs some power."""
    draw = np.random.default_rng(20270310)
    found = 0
    for _lot in range(200):
        other_hits = int(draw.binomial(1500, 0.02))
        falls = np.flatnonzero(draw.random(200) < 0.06)
        looks = [(number + 1, int(place) + 1) for number, place in enumerate(falls)]
        found += any(is_worse(hits, sets, other_hits, 1500, 0.05) for hits, sets in looks)

    assert found > 0.5 * 200


def test_two_reactions_are_never_enough() -> None:
    assert evidence(2, 2, 0, 5000) > 20
    assert not is_worse(2, 2, 0, 5000, 0.05)
    assert is_worse(3, 10, 5, 5000, 0.05)
    assert not is_worse(3, 100, 60, 2000, 0.05)


def test_a_lot_that_nobody_wore_says_nothing_and_impossible_counts_are_refused() -> None:
    assert evidence(0, 0, 5, 100) == 1
    with pytest.raises(ValueError, match="no 3 of 2"):
        evidence(3, 2, 0, 10)
