"""Clock changes are those of the IANA tz database: New York 2027-03-14 and 2027-11-07, Lord Howe (half an hour)
2027-04-04 and 2027-10-03, Chatham 2027-09-26. Beside the worked examples every answer is compared with one that was
found by walking through UTC minute by minute (oracle.py).
"""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aftercare.core.hours import Hours, closing, moment, next_open, opening
from tests.aftercare.core import oracle
from tests.aftercare.core.cases import ANY_MINUTE, ZONES, days, hours_of_a_day
from tests.aftercare.core.worked import CHATHAM, KOLKATA, LONDON, LORD_HOWE, NEW_YORK, SYDNEY, utc

DAYTIME = Hours(9 * 60, 20 * 60)
LOS_ANGELES = ZoneInfo("America/Los_Angeles")


@pytest.mark.parametrize(
    ("zone", "day", "minutes", "expected"),
    [
        (NEW_YORK, date(2027, 3, 13), 600, "2027-03-13 15:00"),
        (NEW_YORK, date(2027, 3, 14), 600, "2027-03-14 14:00"),
        (KOLKATA, date(2027, 3, 14), 600, "2027-03-14 04:30"),
        (LONDON, date(2027, 6, 10), 0, "2027-06-09 23:00"),
    ],
)
def test_a_wall_clock_time_is_a_moment(zone: ZoneInfo, day: date, minutes: int, expected: str) -> None:
    assert moment(day, minutes, zone) == utc(expected)


@pytest.mark.parametrize(
    ("zone", "day", "minutes", "expected"),
    [
        (NEW_YORK, date(2027, 3, 14), 119, "2027-03-14 06:59"),  # 01:59 EST exists
        (NEW_YORK, date(2027, 3, 14), 120, "2027-03-14 07:00"),  # 02:00 to 02:59 mean 03:00 EDT
        (NEW_YORK, date(2027, 3, 14), 150, "2027-03-14 07:00"),
        (NEW_YORK, date(2027, 3, 14), 179, "2027-03-14 07:00"),
        (NEW_YORK, date(2027, 3, 14), 181, "2027-03-14 07:01"),
        (LORD_HOWE, date(2027, 10, 3), 135, "2027-10-02 15:30"),  # 02:15 means 02:30 at +11
        (CHATHAM, date(2027, 9, 26), 200, "2027-09-25 14:00"),  # 03:20 means 03:45 at +13:45
    ],
)
def test_a_time_that_is_jumped_over_means_the_first_that_exists(
    zone: ZoneInfo, day: date, minutes: int, expected: str
) -> None:
    assert moment(day, minutes, zone) == utc(expected)


@pytest.mark.parametrize(
    ("zone", "day", "minutes", "expected"),
    [
        (NEW_YORK, date(2027, 11, 7), 90, "2027-11-07 05:30"),  # 01:30 EDT, not EST
        (LORD_HOWE, date(2027, 4, 4), 105, "2027-04-03 14:45"),  # 01:45 at +11, not +10:30
    ],
)
def test_a_time_that_exists_twice_means_the_first(zone: ZoneInfo, day: date, minutes: int, expected: str) -> None:
    assert moment(day, minutes, zone) == utc(expected)


def test_a_day_whose_midnight_is_jumped_over_begins_at_the_first_time_that_exists() -> None:
    beirut = ZoneInfo("Asia/Beirut")  # 2027-03-28 00:00 EET is 01:00 EEST

    assert moment(date(2027, 3, 28), 0, beirut) == utc("2027-03-27 22:00")


@pytest.mark.parametrize(
    ("now", "expected"),
    [
        ("2027-01-10 08:59:59", "2027-01-10 09:00:00"),
        ("2027-01-10 09:00:00", "2027-01-10 09:00:00"),
        ("2027-01-10 19:59:59", "2027-01-10 19:59:59"),
        ("2027-01-10 20:00:00", "2027-01-11 09:00:00"),
    ],
)
def test_hours_are_open_from_their_start_and_closed_at_their_end(now: str, expected: str) -> None:
    assert opening(utc(now), DAYTIME, LONDON) == utc(expected)


def test_the_next_opening_is_on_the_wall_clock_of_the_morning_after_the_change() -> None:
    assert opening(utc("2027-03-28 00:30"), DAYTIME, LONDON) == utc("2027-03-28 08:00")
    assert opening(utc("2027-10-30 20:00"), DAYTIME, LONDON) == utc("2027-10-31 09:00")


def test_hours_that_would_open_in_a_gap_open_at_its_end() -> None:
    assert opening(utc("2027-03-14 05:00"), Hours(150, 600), NEW_YORK) == utc("2027-03-14 07:00")


def test_hours_that_lie_wholly_in_a_gap_open_the_day_after() -> None:
    assert opening(utc("2027-03-14 05:00"), Hours(120, 180), NEW_YORK) == utc("2027-03-15 06:00")


def test_hours_that_a_fold_runs_through_are_open_both_times() -> None:
    first, second = utc("2027-11-07 05:15"), utc("2027-11-07 06:15")  # 01:15 EDT and 01:15 EST

    assert opening(first, Hours(60, 90), NEW_YORK) == first
    assert opening(second, Hours(60, 90), NEW_YORK) == second
    assert opening(utc("2027-11-07 05:45"), Hours(60, 90), NEW_YORK) == utc("2027-11-07 06:00")


def test_hours_that_lie_wholly_in_a_fold_open_twice() -> None:
    assert opening(utc("2027-11-07 05:45"), Hours(75, 90), NEW_YORK) == utc("2027-11-07 06:15")  # 01:15 EST


def test_hours_that_close_within_a_fold_open_again_as_the_clock_is_put_back() -> None:
    beirut = ZoneInfo("Asia/Beirut")  # on 2027-10-31 at 00:00 EEST it is 23:00 EET of the day before once more

    assert opening(utc("2027-10-30 20:45"), Hours(540, 1410), beirut) == utc("2027-10-30 21:00")
    assert opening(utc("2027-10-30 21:30"), Hours(540, 1410), beirut) == utc("2027-10-31 07:00")


def test_days_off_are_skipped() -> None:
    hours = Hours(540, 1200, weekdays_off=frozenset({6}), days_off=frozenset({date(2027, 1, 11)}))

    assert opening(utc("2027-01-10 12:00"), hours, LONDON) == utc("2027-01-12 09:00")  # a Sunday, then a holiday


def test_two_clocks_must_both_be_open() -> None:
    limit = utc("2027-01-12 00:00")

    assert next_open(utc("2027-01-10 15:00"), DAYTIME, (NEW_YORK, LOS_ANGELES), limit) == utc("2027-01-10 17:00")
    # 17:30 there is 20:30 in New York, so the next moment for both is the morning's 09:00 in Los Angeles.
    assert next_open(utc("2027-01-11 01:30"), DAYTIME, (NEW_YORK, LOS_ANGELES), limit) == utc("2027-01-11 17:00")


def test_the_limit_is_included_and_nothing_after_it() -> None:
    opens = utc("2027-01-11 09:00")

    assert next_open(utc("2027-01-10 21:00"), DAYTIME, (LONDON,), opens) == opens
    assert next_open(utc("2027-01-10 21:00"), DAYTIME, (LONDON,), opens - timedelta(seconds=1)) is None
    assert next_open(opens + timedelta(seconds=1), DAYTIME, (LONDON,), opens) is None


def test_two_clocks_that_share_no_hour_never_open() -> None:
    assert next_open(utc("2027-01-10 12:00"), DAYTIME, (LONDON, SYDNEY), utc("2027-01-20 12:00")) is None


def test_hours_without_a_day_of_the_week_are_refused() -> None:
    with pytest.raises(ValueError, match="at least one day of the week"):
        Hours(540, 1200, weekdays_off=frozenset(range(7)))


@pytest.mark.parametrize(("opens", "closes"), [(600, 600), (700, 600), (-1, 600), (0, 1441)])
def test_hours_that_do_not_open_before_they_close_are_refused(opens: int, closes: int) -> None:
    with pytest.raises(ValueError, match="must open before they close"):
        Hours(opens, closes)


zones = st.sampled_from(ZONES)


@settings(max_examples=300, deadline=None)
@given(st.data(), zones, ANY_MINUTE)
def test_every_moment_is_the_one_that_walking_finds(data: st.DataObject, zone: ZoneInfo, minutes: int) -> None:
    day = data.draw(days(zone))

    assert moment(day, minutes, zone) == oracle.when_shown(day, minutes, zone)


@settings(max_examples=300, deadline=None)
@given(
    st.data(),
    st.lists(zones, min_size=1, max_size=2),
    st.integers(0, 6 * 3600) | st.integers(0, 86_400),
    st.integers(0, 100),
)
def test_every_opening_is_the_one_that_walking_finds(
    data: st.DataObject, clocks: list[ZoneInfo], second: int, limit_hours: int
) -> None:
    day = data.draw(days(clocks[0]))
    hours = data.draw(hours_of_a_day(day))
    at = datetime(day.year, day.month, day.day, tzinfo=clocks[0]).astimezone(UTC) + timedelta(seconds=second)
    limit = at + timedelta(hours=limit_hours)

    assert next_open(at, hours, clocks, limit) == oracle.first_open(at, hours, clocks, limit)


@settings(max_examples=300, deadline=None)
@given(st.data(), st.lists(zones, min_size=1, max_size=2), st.integers(0, 86_400))
def test_until_they_close_they_are_open_at_every_minute(
    data: st.DataObject, clocks: list[ZoneInfo], second: int
) -> None:
    day = data.draw(days(clocks[0]))
    hours = data.draw(hours_of_a_day(day))
    at = datetime(day.year, day.month, day.day, tzinfo=clocks[0]).astimezone(UTC) + timedelta(seconds=second)
    at = next_open(at, hours, clocks, at + timedelta(days=3)) or at

    if next_open(at, hours, clocks, at) is None:  # two clocks that share no hour
        return
    until = closing(at, hours, clocks)

    assert until > at
    minute = at
    while minute < min(until, at + timedelta(minutes=1)):
        assert next_open(minute, hours, clocks, minute) == minute
        minute += timedelta(minutes=1)


def test_hours_close_on_the_first_of_two_clocks_and_at_midnight_they_are_looked_at_anew() -> None:
    assert closing(utc("2027-03-10 17:00"), DAYTIME, [NEW_YORK, LOS_ANGELES]) == utc("2027-03-11 01:00")
    assert closing(utc("2027-03-10 17:00"), Hours(0, 24 * 60), [NEW_YORK]) == utc("2027-03-11 05:00")
