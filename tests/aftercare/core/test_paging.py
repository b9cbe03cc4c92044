"""Who is told of a client who cannot wait, and when."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from itertools import pairwise
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core.hours import Hours
from aftercare.core.paging import AGAIN, Alarm, Page, after_open, call_by, due, last_call, nobody_yet_at, open_hours
from aftercare.core.rules import Rules

RULES = Rules()
ZONE = ZoneInfo("America/New_York")
NIGHT = datetime(2027, 3, 9, 7, 0, tzinfo=UTC)  # 2 a.m. there, a Tuesday
NOON = datetime(2027, 3, 9, 17, 0, tzinfo=UTC)
MINUTE = timedelta(minutes=1)
ADA, OLGA, THIRD, DUTY = 1, 2, 3, 4


def alarm(urgency: str = "emergency", since: datetime = NIGHT, **fields: Any) -> Alarm:
    given = {"artists": [ADA], "owners": [OLGA], "third": [THIRD], **fields}
    return Alarm(urgency, since, ZONE, open_hours(RULES), **given)


def told(one: Alarm, minutes: float) -> list[tuple[int, float]]:
    """Return who is paged in the first minutes, and after how many, when everything is promised as it falls due."""
    return [(page.person, (page.at - one.since) / MINUTE) for page in due(one, RULES, one.since + minutes * MINUTE)]


def test_in_an_emergency_the_artist_is_told_at_once_then_the_owner_then_the_third_contact() -> None:
    assert told(alarm(), 0) == [(ADA, 0)]
    assert told(alarm(), 14.9) == [(ADA, 0)]
    assert told(alarm(), 15) == [(ADA, 0), (OLGA, 15)]
    assert told(alarm(), 59) == [(ADA, 0), (OLGA, 15), (THIRD, 30)]


@pytest.mark.parametrize(
    ("people", "expected"),
    [
        ({"artists": []}, [(OLGA, 0), (THIRD, 15)]),  # no artist, or nobody can reach her
        ({"artists": [OLGA]}, [(OLGA, 0), (THIRD, 15)]),  # the artist is the owner
        ({"owners": []}, [(ADA, 0), (THIRD, 15)]),
        ({"third": [OLGA]}, [(ADA, 0), (OLGA, 15)]),
        ({"artists": [], "owners": [], "third": []}, []),
        ({"artists": [ADA, DUTY]}, [(ADA, 0), (DUTY, 0), (OLGA, 15), (THIRD, 30)]),  # two who share a number
    ],
)
def test_where_nobody_can_be_told_the_next_is_and_nobody_waits_twice_for_one(
    people: dict[str, Any], expected: list[tuple[int, float]]
) -> None:
    assert told(alarm(**people), 59) == expected


def test_a_page_that_did_not_arrive_counts_as_not_taken_and_the_next_goes_at_once() -> None:
    lost = Page(0, ADA, lost_at=NIGHT + 2 * MINUTE)

    assert told(alarm(pages=[lost]), 2) == [(OLGA, 2)]
    assert told(alarm(pages=[lost]), 17) == [(OLGA, 2), (THIRD, 17)]
    assert told(alarm(artists=[ADA, DUTY], pages=[lost, Page(0, DUTY)]), 14) == []  # one of the two still counts


def test_whoever_is_told_is_not_told_the_same_again() -> None:
    pages = [Page(0, ADA), Page(1, OLGA)]

    assert told(alarm(pages=pages), 20) == []
    assert told(alarm(pages=pages), 30) == [(THIRD, 30)]


def test_an_emergency_is_not_left_because_it_was_slept_through() -> None:
    pages = [Page(0, ADA), Page(1, OLGA), Page(2, THIRD)]

    assert told(alarm(pages=pages), 60) == [(ADA, 60), (OLGA, 60), (THIRD, 60)]
    everyone = told(alarm(pages=pages), 60 * 48)
    assert len(everyone) == 3 * RULES.page_again_times
    assert max(minutes for _person, minutes in everyone) == 24 * 60


def test_after_an_hour_she_is_told_that_nobody_could_see_it() -> None:
    assert nobody_yet_at(alarm(), RULES) == NIGHT + 60 * MINUTE
    assert nobody_yet_at(alarm("same_day"), RULES) is None


def test_what_is_to_be_seen_to_today_tells_the_artist_and_the_person_on_duty_then_the_owner_after_an_open_hour() -> (
    None
):
    one = alarm("same_day", NOON, on_duty=[DUTY])

    assert told(one, 59) == [(ADA, 0), (DUTY, 0)]
    assert told(one, 60) == [(ADA, 0), (DUTY, 0), (OLGA, 60)]


def test_hours_at_which_the_studio_is_closed_do_not_count() -> None:
    assert told(alarm("same_day"), 8 * 60 - 1) == [(ADA, 0)]  # up to 10:00 there: it opened at 9:00
    assert told(alarm("same_day"), 8 * 60) == [(ADA, 0), (OLGA, 480)]


def test_it_is_never_left_past_ten_of_the_next_day() -> None:
    one = alarm("same_day", NOON, pages=[Page(0, ADA), Page(1, OLGA)])
    ten = datetime(2027, 3, 10, 10, 0, tzinfo=ZONE)

    assert due(one, RULES, ten - MINUTE) == []
    assert [(page.step, page.person, page.at) for page in due(one, RULES, ten)] == [
        (AGAIN, OLGA, ten),
        (AGAIN, THIRD, ten),
    ]


def test_nobody_is_told_twice_at_one_moment() -> None:
    """What comes in at closing is the owner's an open hour later: at ten, which is the last call as well."""
    one = alarm("same_day", datetime(2027, 3, 9, 20, 30, tzinfo=ZONE))

    assert [
        (page.person, page.at.astimezone(ZONE).hour) for page in due(one, RULES, one.since + timedelta(days=1))
    ] == [
        (ADA, 20),
        (OLGA, 10),
        (THIRD, 10),
    ]


@pytest.mark.parametrize(
    ("at", "by"),
    [
        ("2027-03-09T14:00-05:00", "2027-03-09T16:00-05:00"),  # two open hours
        ("2027-03-09T19:00-05:00", "2027-03-10T10:00-05:00"),  # one today, one tomorrow: ten at the latest
        ("2027-03-09T02:00-05:00", "2027-03-09T11:00-05:00"),
        ("2027-03-13T21:00-05:00", "2027-03-14T10:00-04:00"),  # the night on which the clocks go forward
    ],
)
def test_a_call_is_promised_within_two_open_hours_or_by_ten_of_the_next_day(at: str, by: str) -> None:
    assert call_by(datetime.fromisoformat(at), RULES, ZONE) == datetime.fromisoformat(by)


def test_a_closing_day_does_not_put_the_call_off_past_ten() -> None:
    closed = replace(RULES, reminder_hours=replace(RULES.reminder_hours, days_off=frozenset({date(2027, 3, 10)})))

    assert call_by(NOON + 9 * 60 * MINUTE, closed, ZONE) == datetime(2027, 3, 10, 10, 0, tzinfo=ZONE)
    assert after_open(NOON + 9 * 60 * MINUTE, 30, open_hours(closed), ZONE) == datetime(2027, 3, 11, 9, 30, tzinfo=ZONE)


moments = st.integers(0, 365 * 24 * 60).map(lambda minutes: datetime(2027, 1, 1, tzinfo=UTC) + minutes * MINUTE)


@given(at=moments, minutes=st.integers(0, 300))
def test_open_minutes_only_ever_go_by_while_the_studio_is_open(at: datetime, minutes: int) -> None:
    hours = Hours(9 * 60, 20 * 60, weekdays_off=frozenset({6}))

    ends = [after_open(at, so_far, hours, ZONE) for so_far in range(0, minutes + 1, 10)]

    assert ends[0] == at
    assert all(later - sooner >= 10 * MINUTE for sooner, later in pairwise(ends))
    for end in ends[1:]:
        local = (end - MINUTE).astimezone(ZONE)
        assert local.weekday() != 6
        assert 9 <= local.hour < 20


@given(at=moments)
def test_ten_of_the_next_day_is_always_ahead_and_less_than_two_days_off(at: datetime) -> None:
    assert timedelta(0) < last_call(at, ZONE) - at < timedelta(hours=35)
