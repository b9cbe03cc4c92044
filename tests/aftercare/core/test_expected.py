"""What to expect when she comes in."""

from __future__ import annotations

import pytest

from aftercare.core.expected import Advice, advise, reading_on, share_on
from aftercare.core.shedding import Quantiles

CURVE: dict[str, list[float]] = {
    "days": [0, 10, 20],
    "low": [1.0, 0.7, 0.4],
    "middle": [1.0, 0.8, 0.5],
    "high": [1.0, 0.9, 0.7],
    "read_low": [0.95, 0.65, 0.3],
    "read_high": [1.0, 0.95, 0.8],
}
TIERS = ((0.60, 60), (0.45, 75), (0.30, 95), (0.0, 120))


def near(found: Quantiles | None) -> tuple[float, float, float]:
    assert found is not None
    return (round(found.low, 9), round(found.middle, 9), round(found.high, 9))


@pytest.mark.parametrize(
    ("day", "share"), [(0, (1, 1, 1)), (10, (0.7, 0.8, 0.9)), (15, (0.55, 0.65, 0.8)), (20, (0.4, 0.5, 0.7))]
)
def test_the_share_between_two_days_lies_on_the_line_between_them(day: int, share: tuple[float, ...]) -> None:
    assert near(share_on(CURVE, day)) == share


def test_what_an_artist_would_write_down_has_its_own_band() -> None:
    assert near(reading_on(CURVE, 15)) == (0.475, 0.65, 0.875)


@pytest.mark.parametrize("day", [-1, 21])
def test_outside_its_days_a_curve_says_nothing(day: int) -> None:
    assert share_on(CURVE, day) is None
    assert reading_on(CURVE, day) is None


def test_a_curve_without_days_says_nothing() -> None:
    assert share_on({"days": []}, 0) is None


@pytest.mark.parametrize(
    ("share", "minutes", "more"),
    [(0.60, 60, 0), (0.599, 60, 15), (0.45, 75, 0), (0.42, 75, 20), (0.30, 75, 20), (0.1, 75, 45), (0.7, 90, 0)],
)
def test_the_minutes_follow_the_owner_s_tiers(share: float, minutes: int, more: int) -> None:
    assert advise(share, 20, minutes, tiers=TIERS, longest_days=35, new_set=0.4).more_minutes == more


def test_below_the_last_tier_its_minutes_count() -> None:
    assert advise(0.1, 20, 60, tiers=((0.6, 60), (0.4, 90)), longest_days=35, new_set=0.05) == Advice(30)


def test_without_tiers_the_minutes_are_left_alone() -> None:
    assert advise(0.1, 20, 60, tiers=(), longest_days=35, new_set=0.05) == Advice()


@pytest.mark.parametrize(("days", "over"), [(35, False), (36, True)])
def test_a_fill_is_offered_up_to_the_owner_s_longest_time(days: int, over: bool) -> None:
    assert advise(0.7, days, 75, tiers=TIERS, longest_days=35, new_set=0.4).over_longest is over


@pytest.mark.parametrize(("share", "may"), [(0.4, False), (0.39, True)])
def test_under_the_full_set_level_a_new_set_may_be_needed(share: float, may: bool) -> None:
    assert advise(share, 20, 120, tiers=TIERS, longest_days=35, new_set=0.4).may_need_new_set is may
