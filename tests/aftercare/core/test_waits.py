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
    """Source: statsmodels, SurvfuncRight (intervals on its "cloglog" scale)."""
    dice = np.random.default_rng(seed)
    times = dice.exponential(5, waits).round(1) + 0.1
    over = dice.random(waits) < 0.8

    found = within(list(times), list(over), share)

    reference = SurvfuncRight(times, over.astype(int))
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it takes the logarithm of 0 where nothing is left
        low, high = reference.quantile_ci(share)
    value = reference.quantile(share)
    assert found.value == (None if math.isnan(value) else value)
    assert found.low == (None if math.isnan(low) else low)
    assert found.high == (None if math.isnan(high) or math.isinf(high) else high)
    assert (found.waits, found.standing) == (waits, int((~over).sum()))


def test_a_published_median_is_met() -> None:
    """Source: Freireich, Blood 1963;21:699, the treated arm; median 23 weeks. Data from memory."""
    ends = [6, 6, 6, 7, 10, 13, 16, 22, 23]
    standing = [6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35]

    found = within([*ends, *standing], [True] * len(ends) + [False] * len(standing), 0.5)

    assert found.value == 23


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
