"""The days that figures are about."""

from __future__ import annotations

from datetime import UTC, date, datetime, time

import pytest

from aftercare.pages.report import period
from studio.models import Studio

STUDIO = Studio(time_zone="America/New_York")
NOW = datetime(2027, 3, 9, 15, tzinfo=UTC)


@pytest.mark.parametrize(
    ("asked", "first", "step"),
    [
        ({}, date(2027, 1, 1), "week"),
        ({"period": "nonsense"}, date(2027, 1, 1), "week"),
        ({"period": "month"}, date(2027, 3, 1), "week"),
        ({"period": "quarter"}, date(2027, 1, 1), "week"),
        ({"period": "year"}, date(2026, 4, 1), "month"),
        ({"period": "this_quarter"}, date(2027, 1, 1), "week"),
        ({"period": "own", "from": "2025-01-15", "to": "2027-12-31"}, date(2025, 1, 15), "quarter"),
        ({"from": "2020-01-01", "to": "2027-03-09"}, date(2020, 1, 1), "year"),
    ],
)
def test_usual_periods_begin_with_a_month_and_end_now(asked: dict[str, str], first: date, step: str) -> None:
    found, problem = period.read(asked, STUDIO, NOW)

    assert problem == ""
    assert (found.first, found.last, found.step) == (first, date(2027, 3, 9), step)
    assert found.until == NOW


def test_days_are_those_of_the_studios_clock_also_when_the_clocks_change() -> None:
    found, _problem = period.read({"from": "2026-10-31", "to": "2026-11-01"}, STUDIO, NOW)

    assert found.since == datetime(2026, 10, 31, 4, tzinfo=UTC)
    assert found.until == datetime(2026, 11, 2, 5, tzinfo=UTC)


@pytest.mark.parametrize(
    ("begin", "end", "said"),
    [
        ("yesterday", "2027-01-01", "From: “yesterday” is no date. Write it as 2027-03-09."),
        ("2027-01-01", "", "To: “” is no date."),
        ("2027-02-01", "2027-01-01", "From: the first day lies after the last one."),
        ("2027-05-01", "2027-06-01", "From: that day is still to come."),
        ("1999-12-31", "2000-01-01", "From: there is nothing from before 2000."),
        ("2010-01-01", "2027-01-01", "To: ten years at most."),
        ("0001-01-01", "9999-12-31", "From: there is nothing from before 2000."),
    ],
)
def test_days_that_cannot_be_shown_say_which_and_what_would_mend_it(begin: str, end: str, said: str) -> None:
    found, problem = period.read({"period": "own", "from": begin, "to": end}, STUDIO, NOW)

    assert problem.startswith(said)
    assert found.name == "quarter"


@pytest.mark.parametrize(
    ("today", "first", "last"),
    [
        (date(2027, 1, 1), date(2026, 10, 1), date(2026, 12, 31)),
        (date(2027, 5, 31), date(2027, 1, 1), date(2027, 3, 31)),
        (date(2027, 12, 31), date(2027, 7, 1), date(2027, 9, 30)),
    ],
)
def test_the_last_quarter_is_a_whole_one_of_the_calendar(today: date, first: date, last: date) -> None:
    noon = datetime.combine(today, time(12), STUDIO.zone)

    found, problem = period.read({"period": "last_quarter"}, STUDIO, noon)

    assert (found.first, found.last, problem) == (first, last, "")
    assert found.until < noon
