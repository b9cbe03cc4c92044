"""How long something took, where some of it is still waited for."""

from __future__ import annotations

import math
import warnings

import numpy as np
import pytest
from statsmodels.duration.survfunc import SurvfuncRight

from aftercare.core.waits import within


@pytest.mark.parametrize("seed", range(5))
@pytest.mark.parametrize("waits", [6, 25, 200])
@pytest.mark.parametrize("share", [0.5, 0.9])
def test_quantiles_and_intervals_are_those_of_a_reference(seed: int, waits: int, share: float) -> None:
    """Source: statsmodels, SurvfuncRight (intervals on its "cloglog" scale).

    Its own quantile waits for *fewer* than 1 - share to be left, so that the value is taken from its survival function.
    """
    dice = np.random.default_rng(seed)
    times = dice.exponential(5, waits).round(1) + 0.1
    over = dice.random(waits) < 0.8

    found = within(list(times), list(over), share)

    reference = SurvfuncRight(times, over.astype(int))
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it takes the logarithm of 0 where nothing is left
        low, high = reference.quantile_ci(share)
    reached = reference.surv_times[reference.surv_prob <= 1 - share + 1e-12]
    assert found.value == (reached[0] if len(reached) else None)
    assert found.low == (None if math.isnan(low) else low)
    assert found.high == (None if math.isnan(high) or math.isinf(high) else high)
    assert (found.waits, found.standing) == (waits, int((~over).sum()))


def test_a_published_median_is_met() -> None:
    """Source: Freireich, Blood 1963;21:699, the treated arm; median 23 weeks. Data from memory."""
    ends = [6, 6, 6, 7, 10, 13, 16, 22, 23]
    standing = [6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35]

    found = within([*ends, *standing], [True] * len(ends) + [False] * len(standing), 0.5)

    assert found.value == 23


@pytest.mark.parametrize("waits", [1, 2, 3, 4, 10, 20, 31])
@pytest.mark.parametrize("share", [0.5, 0.9])
def test_where_all_are_over_so_many_were_over_by_then_and_no_later(waits: int, share: float) -> None:
    """Source: numpy, the inverse of the empirical distribution (type 1 of Hyndman and Fan, Am Stat 1996;50:361)."""
    times = np.random.default_rng(waits).exponential(5, waits)

    found = within(list(times), [True] * waits, share)

    assert found.value == np.quantile(times, share, method="inverted_cdf")


def test_half_of_the_published_ones_were_over_by_the_day_on_which_half_are_left() -> None:
    """Source: Bewick and others, Crit Care 2004;8:389, table 2, treatment 2: S is 0.500 from day 5 on."""
    over = [True, True, True, True, False, True, False, True]

    assert within([1, 1, 4, 5, 6, 9, 9, 22], over, 0.5).value == 5


def test_what_still_waits_is_neither_left_out_nor_taken_for_the_end() -> None:
    assert within([1, 2, 9, 9, 9], [True, True, False, False, False], 0.5).value is None
    assert within([1, 2, 3, 9, 9], [True, True, True, False, False], 0.5).value == 3
    assert within([1, 2, 3, 0.1, 0.1], [True, True, True, False, False], 0.5).value == 2


def test_where_nothing_is_over_nothing_can_be_said() -> None:
    found = within([1.0, 2.0], [False, False], 0.5)

    assert (found.value, found.low, found.high, found.standing) == (None, None, None, 2)


def test_no_waits_have_no_quantile() -> None:
    with pytest.raises(ValueError, match="Nothing was waited for"):
        within([], [], 0.5)
