"""Shrinkage against its two textbook examples."""

from __future__ import annotations

import pytest

from aftercare.core.shrinkage import BetaBinomial, shrink_means

# Efron and Morris, JASA 1975;70:311 and Scientific American, May 1977: hits of 45 at bat, and the rest of the season.
HITS = [18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7]
REST = [
    *(0.346, 0.298, 0.276, 0.222, 0.273, 0.270, 0.263, 0.210, 0.269),
    *(0.230, 0.264, 0.256, 0.303, 0.264, 0.226, 0.285, 0.316, 0.200),
]

# Gelman and others, Bayesian Data Analysis, table 5.1: tumours among rats, 71 groups; the last is the current one.
RATS = [
    *[(0, 20)] * 7,
    *[(0, 19)] * 4,
    *[(0, 18)] * 2,
    (0, 17),
    *[(1, 20)] * 4,
    *[(1, 19)] * 2,
    *[(1, 18)] * 2,
    *((2, 25), (2, 24), (2, 23)),
    *[(2, 20)] * 6,
    *((1, 10), (5, 49), (2, 19), (5, 46), (3, 27), (2, 17), (7, 49), (7, 47)),
    *[(3, 20)] * 2,
    *((2, 13), (9, 48), (10, 50)),
    *[(4, 20)] * 7,
    (10, 48),
    *[(4, 19)] * 3,
    *((5, 22), (11, 46), (12, 49)),
    *[(5, 20)] * 2,
    *((6, 23), (5, 19), (6, 22)),
    *[(6, 20)] * 3,
    *((16, 52), (15, 46), (15, 47), (9, 24), (4, 14)),
]


def test_batting_averages_are_drawn_together_as_published() -> None:
    averages = [hits / 45 for hits in HITS]
    mean = sum(averages) / len(averages)

    drawn = shrink_means(averages, [mean * (1 - mean) / 45] * len(averages))

    # Published factor 0.212; 0.211653, 0.2939 and 0.2422 were computed from the data. Published .294 and .242, from
    # memory.
    assert (drawn[0] - mean) / (averages[0] - mean) == pytest.approx(0.211653, abs=1e-6)
    assert drawn[0] == pytest.approx(0.2939, abs=5e-5)
    assert drawn[-1] == pytest.approx(0.2422, abs=5e-5)


def test_the_drawn_averages_foretell_the_rest_of_the_season_better() -> None:
    averages = [hits / 45 for hits in HITS]
    mean = sum(averages) / len(averages)
    drawn = shrink_means(averages, [mean * (1 - mean) / 45] * len(averages))

    raw_error = sum((one - true) ** 2 for one, true in zip(averages, REST, strict=True))
    error = sum((one - true) ** 2 for one, true in zip(drawn, REST, strict=True))

    assert raw_error == pytest.approx(0.07532, abs=1e-5)  # computed
    assert error == pytest.approx(0.02131, abs=1e-5)  # computed


def test_a_mean_of_few_cases_is_drawn_further() -> None:
    drawn = shrink_means([0.1, 0.1, 0.0, -0.1, -0.1, 0.02], [0.0004, 0.04, 0.001, 0.001, 0.001, 0.001])
    assert drawn[1] < drawn[0]


def test_means_no_more_unlike_than_chance_makes_them_are_nearly_one() -> None:
    drawn = shrink_means([0.01, -0.01, 0.02, -0.02, 0.0], [0.01] * 5)
    assert max(drawn) - min(drawn) < 0.03


@pytest.mark.parametrize(("values", "variances"), [([1.0, 2.0, 3.0], [1.0] * 3), ([1.0] * 4, [1.0, 1.0, 0.0, 1.0])])
def test_what_cannot_be_drawn_together_says_so(values: list[float], variances: list[float]) -> None:
    with pytest.raises(ValueError, match="takes 4 or more"):
        shrink_means(values, variances)


def test_the_rats_law_and_the_current_group_are_those_of_the_textbook() -> None:
    assert (sum(hits for hits, _ in RATS), sum(cases for _, cases in RATS), len(RATS)) == (267, 1739, 71)

    law = BetaBinomial.fit([hits for hits, _ in RATS], [cases for _, cases in RATS])

    # Computed: marginal maximum likelihood on all 71 groups.
    assert law.alpha == pytest.approx(2.34161, rel=1e-4)
    assert law.beta == pytest.approx(14.11480, rel=1e-4)
    assert law.rate(4, 14) == pytest.approx(0.208219, abs=1e-5)
    assert law.rate(0, 20) == pytest.approx(0.064231, abs=1e-5)


def test_the_posterior_of_the_current_group_is_that_of_the_textbook() -> None:
    # Moments of the other 70 rates give (1.4, 8.6) and a mean of 0.223: printed in the book, from memory.
    assert BetaBinomial(1.35615, 8.61506).rate(4, 14) == pytest.approx(0.22344, abs=1e-5)


def test_rates_cannot_have_more_hits_than_cases() -> None:
    with pytest.raises(ValueError, match="more hits than cases"):
        BetaBinomial.fit([1, 2, 3, 9], [5, 5, 5, 5])
