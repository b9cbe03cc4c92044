"""Worked examples of when a patch test is due: as things stand now, for each booked set by itself.

180 days, 48 h and 72 h are the project's own defaults (common practice, no source). Moments are UTC, London's clock.
180 days before 2027-09-10 is 2027-03-14 (17 + 30 + 31 + 30 + 31 + 31 + 10 = 180).
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from aftercare.core import timing
from aftercare.core.timing import Calendar, Client, Rules, Visit
from tests.aftercare.core.worked import DEFAULTS, LONDON, MIA, NEW_YORK, SENSITIVE_MIA, utc, visit

NOW = "2027-08-20 09:00"
BOOKED = visit(1, "full set", "booked", "2027-09-10 13:00", adhesive="Onyx")
EVERYONE = Rules(test_everyone=True)
RECENT_SET = visit(2, "fill", "done", "2027-08-01 13:00", adhesive="Onyx")
REACTION = utc("2027-06-15 12:00")
RELEASED_TO_BE_TESTED = replace(MIA, test_first=True, reactions=(REACTION,))


def is_due(*others: Visit, client: Client = SENSITIVE_MIA, rules: Rules = DEFAULTS, booked: Visit = BOOKED) -> bool:
    found = timing.plan(client, [booked, *others], rules, utc(NOW))
    return any(message.occasion == "patch_test" and message.visit.id == booked.id for message in found)


def done_test(start: str, *, sign: bool = False) -> Visit:
    return visit(3, "patch test", "done", start, sign=sign)


def done_set(start: str, adhesive: str = "") -> Visit:
    return visit(2, "fill", "done", start, adhesive=adhesive)


def test_a_sensitive_first_client_is_tested() -> None:
    assert is_due()


def test_a_first_client_who_is_not_sensitive_is_tested_only_by_the_owners_choice() -> None:
    assert not is_due(client=MIA)
    assert is_due(client=MIA, rules=EVERYONE)


@pytest.mark.parametrize("service", ["removal", "lift", "touch-up", "consultation"])
def test_only_sets_are_tested_for(service: str) -> None:
    assert not is_due(booked=replace(BOOKED, service=service))


@pytest.mark.parametrize(
    ("last_set", "due"),
    [
        ("2027-03-14 09:00", False),  # 180 days, by date, whatever the hour
        ("2027-03-13 23:30", True),  # 181
    ],
)
def test_a_sensitive_client_is_tested_again_where_her_last_set_lies_over_180_days_back(
    last_set: str, due: bool
) -> None:
    assert is_due(done_set(last_set)) is due


def test_days_are_counted_on_her_own_clock() -> None:
    client = replace(SENSITIVE_MIA, zone=NEW_YORK)

    assert is_due(done_set("2027-03-14 03:30"), client=client)  # 22:30 EST on 13 March there: 181 days


def test_it_is_the_last_done_set_that_counts() -> None:
    assert not is_due(visit(4, "full set", "done", "2026-01-10 13:00"), RECENT_SET)


def test_a_client_who_is_not_sensitive_is_tested_after_a_long_pause_only_by_the_owners_choice() -> None:
    long_ago = done_set("2027-01-10 13:00")

    assert not is_due(long_ago, client=MIA)
    assert is_due(long_ago, client=MIA, rules=EVERYONE)
    assert not is_due(RECENT_SET, client=MIA, rules=EVERYONE)


@pytest.mark.parametrize(
    ("worn", "named", "due"),
    [("Onyx", "Onyx", False), ("Slate", "Onyx", True), ("", "Onyx", False), ("Slate", "", False), ("", "", False)],
)
def test_another_adhesive_calls_for_a_test_and_an_unknown_one_never_counts(worn: str, named: str, due: bool) -> None:
    assert is_due(done_set("2027-08-01 13:00", worn), booked=replace(BOOKED, adhesive=named)) is due


def test_another_adhesive_concerns_sensitive_clients_only() -> None:
    assert not is_due(done_set("2027-08-01 13:00", "Slate"), client=MIA, rules=EVERYONE)


def test_a_client_released_with_test_first_is_tested() -> None:
    assert is_due(RECENT_SET, client=RELEASED_TO_BE_TESTED)
    assert not is_due(RECENT_SET, client=replace(RELEASED_TO_BE_TESTED, test_first=False))


@pytest.mark.parametrize(("start", "due"), [("2027-03-14 09:00", False), ("2027-03-13 09:00", True)])
def test_a_done_test_answers_for_180_days(start: str, due: bool) -> None:
    assert is_due(done_test(start)) is due


def test_a_done_test_of_the_same_date_answers_only_where_it_came_before_the_visit() -> None:
    booked = replace(BOOKED, start=utc("2027-08-20 13:00"))

    assert not is_due(done_test("2027-08-20 08:00"), booked=booked)
    assert is_due(done_test("2027-08-20 13:00"), booked=booked)


def test_a_done_test_with_a_sign_on_record_answers_nothing() -> None:
    assert is_due(done_test("2027-08-01 09:00", sign=True))


@pytest.mark.parametrize(
    ("start", "due"), [("2027-06-15 11:59", True), ("2027-06-15 12:00", True), ("2027-06-15 12:01", False)]
)
def test_a_done_test_must_be_since_the_reaction(start: str, due: bool) -> None:
    assert is_due(RECENT_SET, done_test(start), client=RELEASED_TO_BE_TESTED) is due


def test_a_done_test_must_be_since_the_last_of_several_reactions() -> None:
    client = replace(RELEASED_TO_BE_TESTED, reactions=(utc("2027-08-05 12:00"), REACTION))

    assert is_due(RECENT_SET, done_test("2027-07-01 09:00"), client=client)


@pytest.mark.parametrize(
    ("start", "due"),
    [
        ("2027-09-08 13:00", False),  # 48 h before
        ("2027-09-08 13:01", True),
        ("2027-08-20 09:00", True),  # it has begun and nobody has marked it
        ("2027-08-20 09:01", False),
    ],
)
def test_a_booked_test_must_be_ahead_and_48_hours_before(start: str, due: bool) -> None:
    assert is_due(visit(3, "patch test", "booked", start)) is due


@pytest.mark.parametrize("status", ["cancelled", "missed"])
def test_a_test_that_was_not_kept_answers_nothing(status: str) -> None:
    assert is_due(visit(3, "patch test", status, "2027-08-01 09:00"))


def test_each_booked_set_is_judged_by_itself() -> None:
    soon, later = replace(BOOKED, start=utc("2027-08-30 13:00")), visit(5, "fill", "booked", "2027-12-01 13:00")
    last_set = done_set("2027-05-01 13:00")  # 121 days before the one, 214 before the other

    assert not is_due(last_set, later, booked=soon)
    assert is_due(last_set, soon, booked=later)


def test_why_a_test_is_due_can_be_asked_of_a_calendar() -> None:
    calendar = Calendar.of(replace(SENSITIVE_MIA, zone=LONDON), [BOOKED], DEFAULTS, utc(NOW))

    assert timing.test_due(BOOKED, calendar) != ""
    assert timing.test_due(RECENT_SET, calendar) == ""
