"""Worked examples of where a planned moment falls: clock changes, sending hours, two zones, history, fractions.

Clock changes of 2027, from the IANA tz database: New York and St John's spring forward on 14 March (02:00 to 03:00)
and back on 7 November; London on 28 March and 31 October; Sydney, Lord Howe (by half an hour) and Chatham go back on
4 April, and forward on 3 October (Chatham 26 September). All moments are written as UTC, local time beside them.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from zoneinfo import ZoneInfo

import pytest

from aftercare.core import timing
from aftercare.core.hours import Hours
from aftercare.core.timing import Rules
from tests.aftercare.core.worked import (
    DEFAULTS,
    MIA,
    NEW_YORK,
    SENSITIVE_MIA,
    SYDNEY,
    planned,
    utc,
    visit,
)


def test_a_planned_time_that_is_jumped_over_means_the_first_that_exists() -> None:
    rules = Rules(at=150, hours=Hours(0, 1440))  # 02:30
    booked = visit(1, "lift", "booked", "2027-03-17 18:00")

    found = planned([booked], "2027-03-01 00:00", client=replace(MIA, zone=NEW_YORK), rules=rules)

    assert found == {"1 prepare 0": "2027-03-14 07:00"}  # 03:00 EDT


def test_a_planned_time_that_exists_twice_means_the_first() -> None:
    rules = Rules(at=90, hours=Hours(0, 1440))  # 01:30
    booked = visit(1, "lift", "booked", "2027-11-10 18:00")

    found = planned([booked], "2027-11-01 00:00", client=replace(MIA, zone=NEW_YORK), rules=rules)

    assert found == {"1 prepare 0": "2027-11-07 05:30"}  # 01:30 EDT


@pytest.mark.parametrize(
    ("now", "due"),
    [
        ("2027-06-08 07:59", "2027-06-08 08:00"),  # 08:59 BST, before the hours
        ("2027-06-08 08:00", "2027-06-08 08:00"),  # the opening is within them
        ("2027-06-08 18:59", "2027-06-08 18:59"),
        ("2027-06-08 19:00", "2027-06-09 08:00"),  # the close is not
    ],
)
def test_a_message_whose_aim_is_past_goes_now_or_at_the_next_opening(now: str, due: str) -> None:
    assert planned([visit(1, "lift", "booked", "2027-06-10 13:00")], now) == {"1 prepare 0": due}


def test_days_without_sending_are_skipped() -> None:
    rules = Rules(hours=Hours(540, 1200, weekdays_off=frozenset({6}), days_off=frozenset({date(2027, 6, 7)})))
    booked = visit(1, "lift", "booked", "2027-06-09 13:00")  # three days before is Sunday 6 June, Monday is off too

    assert planned([booked], "2027-06-01 00:00", rules=rules) == {"1 prepare 0": "2027-06-08 08:00"}


def test_where_her_number_is_in_another_zone_both_clocks_must_be_within_the_hours() -> None:
    client = replace(MIA, zone=NEW_YORK, other_zone=ZoneInfo("America/Los_Angeles"))
    booked = visit(1, "full set", "booked", "2027-01-20 19:00")

    found = planned([booked], "2027-01-02 00:00", client=client)

    # 10:00 in New York is 07:00 in Los Angeles, which opens at 09:00; 17:00 is 14:00.
    assert found == {"1 prepare 0": "2027-01-17 17:00", "1 prepare 1": "2027-01-19 22:00"}


def test_where_two_clocks_share_no_hour_a_check_is_too_late_but_care_finds_its_window() -> None:
    client = replace(MIA, other_zone=SYDNEY)  # in January 9 to 20 there is 22 to 9 in London, 8 to 21 is 21 to 10
    done = visit(1, "lift", "done", "2027-01-11 13:00")

    found = planned([done], "2027-01-11 14:00", client=client)

    assert found == {"1 care 0": "2027-01-12 08:00", "1 check 1": "too late"}


def test_imported_history_stays_quiet() -> None:
    done = visit(1, "lift", "done", "2027-06-09 13:00", heard="2027-06-10 14:00:01")  # ended at 14:00 the day before

    assert planned([done], "2027-06-10 14:00:01") == {"1 check 1": "2027-06-11 09:00"}


def test_a_visit_heard_of_at_the_very_last_moment_still_gets_its_message() -> None:
    done = visit(1, "lift", "done", "2027-06-09 13:00", heard="2027-06-10 14:00:00")

    assert planned([done], "2027-06-10 14:00:00", "care") == {"1 care 0": "2027-06-10 14:00"}


@pytest.mark.parametrize("status", ["cancelled", "missed"])
def test_cancelled_and_missed_visits_have_no_messages(status: str) -> None:
    visits = [visit(1, "full set", status, "2027-06-10 13:00"), visit(2, "fill", status, "2027-05-31 13:00")]

    assert planned(visits, "2027-06-01 09:00", client=SENSITIVE_MIA) == {}


def test_a_booked_visit_that_has_started_has_no_messages() -> None:
    booked = visit(1, "full set", "booked", "2027-06-10 13:00")

    assert planned([booked], "2027-06-10 13:00:00") == {}
    assert planned([booked], "2027-06-10 12:59:59") != {}


def test_fractions_of_a_second_are_dropped() -> None:
    done = replace(visit(1, "lift", "done", "2027-06-10 13:00"), end=utc("2027-06-10 14:00:00.900"))

    [care, _] = timing.plan(MIA, [done], DEFAULTS, utc("2027-06-10 14:10:00.700"))

    assert (care.due, care.no_later_than) == (utc("2027-06-10 14:30"), utc("2027-06-11 14:00"))


def test_a_visit_that_starts_within_the_present_second_is_ahead_no_more() -> None:
    booked = replace(visit(1, "lift", "booked", "2027-06-10 13:00"), start=utc("2027-06-10 13:00:00.900"))

    assert planned([booked], "2027-06-10 13:00:00.100") == {}
