"""How far the owner's numbers may go: both ends of each, and what two must keep to together."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core import limits
from aftercare.core.hours import Hours
from aftercare.core.limits import LIMITS, Unit, Why
from aftercare.core.rules import Rules

# With these, each number may stand at either end of its limits without getting into another's way.
ROOM: dict[str, dict[str, Any]] = {
    "prepare_days": {"evening_days": 0},
    "evening_days": {"prepare_days": 14},
    "at": {"hours": Hours(480, 1320), "reminder_hours": Hours(480, 1320)},
    "evening_at": {"hours": Hours(480, 1320)},
    "patch_test_days": {"patch_test_last_hours": 24, "test_booked_hours": 24},
    "patch_test_last_hours": {"patch_test_days": 30, "test_booked_hours": 24},
    "test_booked_hours": {"patch_test_days": 30, "patch_test_last_hours": 240},
    "fill_level": {"full_set_level": 0.2},
    "full_set_level": {"fill_level": 0.85},
    "page_next_minutes": {"nobody_after_minutes": 120},
    "nobody_after_minutes": {"page_next_minutes": 5},
}


def wrong(*, region: str = "ES", **numbers: Any) -> list[tuple[str, Why]]:
    return [(one.name, one.why) for one in limits.problems(replace(Rules(), **numbers), region)]


def wrong_hours(name: str, hours: Hours, region: str = "ES") -> list[tuple[str, Why]]:
    """Of a studio where everything falls due within these hours."""
    numbers: dict[str, Any] = {name: hours}
    return wrong(region=region, at=hours.opens + 60, evening_at=hours.opens + 60, **numbers)


@pytest.mark.parametrize("region", ["US", "GB", "IE", "ES", "MX", "PR", "AU"])
def test_the_defaults_keep_to_every_limit_everywhere(region: str) -> None:
    assert wrong(region=region) == []


@pytest.mark.parametrize("name", LIMITS)
def test_both_ends_of_a_limit_may_be_and_what_lies_just_beyond_may_not(name: str) -> None:
    limit = LIMITS[name]
    room: dict[str, Any] = ROOM.get(name, {})
    step = 0.001 if limit.unit in (Unit.SHARE, Unit.CHANCE) else 1

    for end in (limit.least, limit.most):
        assert wrong(**{**room, name: end}) == [], end
    for beyond in (limit.least - step, limit.most + step):
        assert (name, Why.BEYOND) in wrong(**{**room, name: beyond}), beyond


# 47 CFR 64.1200(c)(1), from memory: "before the hour of 8 a.m. or after 9 p.m. (local time at the called party's
# location)". Puerto Rico, Guam and the other territories are in the United States.
@pytest.mark.parametrize("name", limits.HOURS)
@pytest.mark.parametrize("region", ["US", "PR", "GU", "VI", "AS", "MP"])
def test_in_the_united_states_nothing_leaves_before_eight_or_after_nine(name: str, region: str) -> None:
    assert wrong_hours(name, Hours(8 * 60, 21 * 60), region) == []
    assert wrong_hours(name, Hours(8 * 60 - 1, 20 * 60), region) == [(name, Why.OUTSIDE)]
    assert wrong_hours(name, Hours(9 * 60, 21 * 60 + 1), region) == [(name, Why.OUTSIDE)]


@pytest.mark.parametrize("name", limits.HOURS)
def test_elsewhere_hours_are_seven_to_ten_at_the_widest_and_four_hours_at_least(name: str) -> None:
    assert wrong_hours(name, Hours(7 * 60, 22 * 60)) == []
    assert wrong_hours(name, Hours(7 * 60 - 1, 22 * 60)) == [(name, Why.OUTSIDE)]
    assert wrong_hours(name, Hours(9 * 60, 13 * 60)) == []
    assert wrong_hours(name, Hours(9 * 60, 13 * 60 - 1)) == [(name, Why.TOO_SHORT)]


def test_only_reminders_may_rest_on_days_of_the_week_and_not_on_most_of_them() -> None:
    resting: dict[str, Any] = {"weekdays_off": frozenset({6})}
    assert wrong(hours=Hours(540, 1200, **resting)) == [("hours", Why.NO_DAYS_OFF)]
    assert wrong(care_hours=Hours(540, 1200, **resting)) == [("care_hours", Why.NO_DAYS_OFF)]
    assert wrong(reminder_hours=Hours(540, 1200, frozenset({3, 4, 5, 6}))) == []
    assert wrong(reminder_hours=Hours(540, 1200, frozenset({2, 3, 4, 5, 6}))) == [("reminder_hours", Why.DAYS_OFF)]


@pytest.mark.parametrize("days", [(1, 2, 3), (4, 10, 14), (1, 10, 14)])
def test_checks_fall_within_the_days_in_which_reactions_mostly_show(days: tuple[int, int, int]) -> None:
    assert wrong(check_days=days) == []


@pytest.mark.parametrize("days", [(0, 2, 3), (5, 6, 7), (1, 11, 14), (1, 2, 15)])
def test_checks_fall_on_no_other_days(days: tuple[int, int, int]) -> None:
    assert wrong(check_days=days) == [("check_days", Why.CHECK_DAYS)]


def test_there_is_never_less_than_one_check_after_a_set_a_removal_or_a_lift() -> None:
    assert wrong(set_checks=0) == [("set_checks", Why.BEYOND)]
    assert wrong(other_checks=0) == [("other_checks", Why.BEYOND)]


@pytest.mark.parametrize(
    ("tiers", "may"),
    [
        (((0.0, 60),), True),
        (((0.95, 15), (0.05, 300), (0.0, 300)), True),
        (((0.7, 60), (0.6, 60), (0.5, 60), (0.4, 60), (0.3, 60), (0.0, 60)), True),
        (((0.7, 60), (0.6, 60), (0.5, 60), (0.4, 60), (0.3, 60), (0.2, 60), (0.0, 60)), False),
        (((0.6, 14), (0.0, 60)), False),
        (((0.6, 60), (0.0, 301)), False),
        (((0.96, 60), (0.0, 70)), False),
        (((0.04, 60), (0.0, 70)), False),
        (((0.6, 80), (0.0, 70)), False),
    ],
)
def test_the_less_is_left_the_longer_a_fill_takes(tiers: tuple[tuple[float, int], ...], may: bool) -> None:
    assert wrong(fill_minutes=tiers) == ([] if may else [("fill_minutes", Why.TIERS)])


@pytest.mark.parametrize(
    ("numbers", "expected"),
    [
        ({"at": 1199, "evening_at": 1199, "reminder_hours": Hours(600, 1200)}, []),
        ({"evening_at": 1200}, [("evening_at", Why.CLOSED_THEN)]),
        ({"at": 1140}, [("reminder_hours", Why.CLOSED_BEFORE)]),
        ({"evening_days": 2}, []),
        ({"evening_days": 3}, [("evening_days", Why.AFTER_EVENING)]),
        ({"patch_test_days": 4}, []),  # asked until 72 hours before: a day to come on
        ({"patch_test_days": 3}, [("patch_test_days", Why.TEST_TOO_LATE)]),
        ({"test_booked_hours": 72}, []),
        ({"test_booked_hours": 73}, [("test_booked_hours", Why.TEST_UNBOOKED)]),
        ({"fill_level": 0.41}, []),
        ({"fill_level": 0.40}, [("fill_level", Why.LEVELS)]),
        ({"nobody_after_minutes": 16}, []),
        ({"nobody_after_minutes": 15}, [("nobody_after_minutes", Why.NOBODY_FIRST)]),
    ],
)
def test_what_follows_on_something_comes_after_it(numbers: dict[str, Any], expected: list[tuple[str, Why]]) -> None:
    assert wrong(**numbers) == expected


@given(
    opens=st.integers(0, 1439),
    length=st.integers(1, 1440),
    region=st.sampled_from(("US", "ES")),
    off=st.frozensets(st.integers(0, 6), max_size=3),
)
def test_hours_cut_down_to_a_new_region_lie_within_it_and_within_what_they_were(
    opens: int, length: int, region: str, off: frozenset[int]
) -> None:
    hours = Hours(opens, min(opens + length, 1440), off)

    cut = limits.narrowed(replace(Rules(), reminder_hours=hours), region).reminder_hours

    least, most = limits.allowed_hours(region)
    assert least <= cut.opens < cut.closes <= most
    assert cut.weekdays_off == off
    if hours.opens < most and hours.closes > least:  # some of them may stay
        assert hours.opens <= cut.opens
        assert cut.closes <= hours.closes
