"""Outside facts: the clock changes of New York in 2027 (14 March, 7 November; IANA time zone database)."""

from __future__ import annotations

from datetime import date, datetime, time
from zoneinfo import ZoneInfo

import pytest

from aftercare.core import mornings

NEW_YORK = ZoneInfo("America/New_York")


def at(text: str) -> datetime:
    return datetime.fromisoformat(text)


@pytest.mark.parametrize(
    ("hour", "now", "day"),
    [
        (time(7, 30), "2027-03-01T07:29:59-05:00", None),
        (time(7, 30), "2027-03-01T07:30:00-05:00", date(2027, 3, 1)),
        (time(7, 30), "2027-03-01T11:29:59-05:00", date(2027, 3, 1)),
        (time(7, 30), "2027-03-01T11:30:00-05:00", None),
        (time(23, 0), "2027-03-02T01:00:00-05:00", date(2027, 3, 1)),
        (time(0, 0), "2027-03-01T00:00:00-05:00", date(2027, 3, 1)),
    ],
)
def test_a_list_is_due_from_her_hour_on_for_four_hours(hour: time, now: str, day: date | None) -> None:
    found = mornings.due(hour, NEW_YORK, at(now))

    assert (found[0] if found else None) == day


@pytest.mark.parametrize(
    ("hour", "day", "since"),
    [
        (time(7, 30), "2027-03-14", "2027-03-14T11:30:00+00:00"),  # summer time since that night
        (time(7, 30), "2027-11-07", "2027-11-07T12:30:00+00:00"),
        (time(2, 30), "2027-03-14", "2027-03-14T07:00:00+00:00"),  # 2:30 does not exist: 3:00
        (time(1, 30), "2027-11-07", "2027-11-07T05:30:00+00:00"),  # it exists twice: the first
    ],
)
def test_her_hour_is_the_wall_clocks_when_clocks_change(hour: time, day: str, since: str) -> None:
    assert mornings.due(hour, NEW_YORK, at(since)) == (date.fromisoformat(day), at(since))


def test_the_key_names_person_and_day() -> None:
    assert mornings.key(4, date(2027, 3, 1)) == "artist:4:morning_list:2027-03-01"
