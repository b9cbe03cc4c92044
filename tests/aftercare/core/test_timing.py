"""Worked examples of the table of default rules, one behaviour a test, moments worked out by hand.

Clock changes of 2027, from the IANA tz database: New York and St John's spring forward on 14 March (02:00 to 03:00)
and back on 7 November; London on 28 March and 31 October; Sydney, Lord Howe (by half an hour) and Chatham go back on
4 April, and forward on 3 October (Chatham 26 September). All moments are written as UTC, local time beside them.
"""

from __future__ import annotations

from dataclasses import replace
from zoneinfo import ZoneInfo

import pytest

from aftercare.core import timing
from aftercare.core.timing import Client, Rules, Visit
from tests.aftercare.core.worked import (
    CHATHAM,
    KOLKATA,
    LONDON,
    LORD_HOWE,
    MIA,
    NEW_YORK,
    SENSITIVE_MIA,
    ST_JOHNS,
    SYDNEY,
    planned,
    utc,
    visit,
)

OLD_SET = visit(90, "full set", "done", "2026-12-01 10:00")  # so that Mia is no first client


@pytest.mark.parametrize(
    ("zone", "start", "first", "evening"),
    [
        (NEW_YORK, "2027-03-17 18:00", "2027-03-14 14:00", "2027-03-16 21:00"),  # -4 from 14 March on
        (LONDON, "2027-03-30 13:00", "2027-03-27 10:00", "2027-03-29 16:00"),  # GMT, then BST
        (SYDNEY, "2027-04-06 04:00", "2027-04-02 23:00", "2027-04-05 07:00"),  # +11, then +10
        (KOLKATA, "2027-01-10 08:30", "2027-01-07 04:30", "2027-01-09 11:30"),  # +5:30
        (LORD_HOWE, "2027-04-06 03:30", "2027-04-02 23:00", "2027-04-05 06:30"),  # +11, then +10:30
        (ST_JOHNS, "2027-03-16 16:30", "2027-03-13 13:30", "2027-03-15 19:30"),  # -3:30, then -2:30
        (CHATHAM, "2027-04-06 01:15", "2027-04-02 20:15", "2027-04-05 04:15"),  # +13:45, then +12:45
    ],
)
def test_prepare_falls_due_on_her_own_clock_three_days_before_and_on_the_evening_before(
    zone: ZoneInfo, start: str, first: str, evening: str
) -> None:
    found = planned([visit(1, "full set", "booked", start)], "2027-01-02 00:00", client=replace(MIA, zone=zone))

    assert found == {"1 prepare 0": first, "1 prepare 1": evening}


def test_the_local_date_of_a_visit_is_that_of_her_zone() -> None:
    early = visit(1, "lift", "booked", "2027-06-09 22:00")  # 08:00 on 10 June in Sydney

    found = planned([early], "2027-06-01 00:00", client=replace(MIA, zone=SYDNEY))

    assert found == {"1 prepare 0": "2027-06-07 00:00"}


@pytest.mark.parametrize("service", ["removal", "patch test", "touch-up", "lift", "consultation"])
def test_other_visits_have_one_step_of_prepare(service: str) -> None:
    found = planned([visit(1, service, "booked", "2027-06-10 13:00")], "2027-06-01 09:00")

    assert found == {"1 prepare 0": "2027-06-07 09:00"}


def test_an_other_visit_has_no_messages() -> None:
    visits = [visit(1, "other", "booked", "2027-06-10 13:00"), visit(2, "other", "done", "2027-05-31 13:00")]

    assert planned(visits, "2027-06-01 09:00") == {}


def test_a_fill_has_the_evening_step_only_while_no_set_is_done_here() -> None:
    fill = visit(1, "fill", "booked", "2027-06-10 13:00")

    assert planned([fill], "2027-06-01 09:00") == {"1 prepare 0": "2027-06-07 09:00", "1 prepare 1": "2027-06-09 16:00"}
    assert planned([fill, OLD_SET], "2027-06-01 09:00", "prepare") == {"1 prepare 0": "2027-06-07 09:00"}


def test_a_full_set_has_the_evening_step_for_every_client() -> None:
    found = planned([visit(1, "full set", "booked", "2027-06-10 13:00"), OLD_SET], "2027-06-01 09:00", "prepare")

    assert set(found) == {"1 prepare 0", "1 prepare 1"}


@pytest.mark.parametrize(
    ("service", "last"),
    [
        ("full set", "2027-06-09 16:00:00"),  # the aim of its evening step, 17:00 BST
        ("lift", "2027-06-10 10:00:00"),  # 3 h before 14:00 BST
    ],
)
def test_prepare_goes_up_to_its_last_moment_and_no_second_longer(service: str, last: str) -> None:
    booked = visit(1, service, "booked", "2027-06-10 13:00")
    a_second_later = last[:-1] + "1"

    assert planned([booked], last, "prepare")["1 prepare 0"] == last[:16]
    assert planned([booked], a_second_later, "prepare")["1 prepare 0"] == "too late"


def test_the_evening_step_goes_up_to_an_hour_before_the_start() -> None:
    booked = visit(1, "full set", "booked", "2027-06-10 13:00")

    assert planned([booked], "2027-06-10 12:00:00")["1 prepare 1"] == "2027-06-10 12:00"
    assert planned([booked], "2027-06-10 12:00:01")["1 prepare 1"] == "too late"


def test_the_evening_step_of_an_early_visit_heard_of_at_night_is_too_late() -> None:
    booked = visit(1, "full set", "booked", "2027-06-10 08:30")  # 09:30 BST; opens at 09:00, an hour before is 08:30

    assert planned([booked], "2027-06-09 19:30")["1 prepare 1"] == "too late"


def test_a_patch_test_is_asked_for_seven_days_before() -> None:
    booked = visit(1, "full set", "booked", "2027-03-17 18:00")

    found = planned([booked], "2027-03-01 00:00", "patch_test", client=replace(SENSITIVE_MIA, zone=NEW_YORK))

    assert found == {"1 patch_test 0": "2027-03-10 15:00"}  # 10:00 EST


def test_seventy_two_hours_before_are_elapsed_hours() -> None:
    client = replace(SENSITIVE_MIA, zone=NEW_YORK)
    booked = visit(1, "full set", "booked", "2027-03-16 14:00")  # 10:00 EDT; 72 h before it is 09:00 EST

    assert planned([booked], "2027-03-13 14:00:00", "patch_test", client=client) == {
        "1 patch_test 0": "2027-03-13 14:00"
    }
    assert planned([booked], "2027-03-13 14:00:01", "patch_test", client=client) == {"1 patch_test 0": "too late"}


@pytest.mark.parametrize("service", ["full set", "fill", "removal", "patch test", "touch-up", "lift"])
def test_care_follows_half_an_hour_after_the_end(service: str) -> None:
    done = visit(1, service, "done", "2027-06-10 13:00", minutes=75)

    assert planned([done], "2027-06-10 14:20", "care") == {"1 care 0": "2027-06-10 14:45"}


def test_a_consultation_has_no_care_and_no_check() -> None:
    assert planned([visit(1, "consultation", "done", "2027-06-10 13:00")], "2027-06-10 14:20") == {}


@pytest.mark.parametrize(
    ("end_minutes", "due"),
    [
        (389, "2027-06-10 19:59"),  # 20:59 BST
        (390, "2027-06-11 07:00"),  # 21:00 is closed; the next opening is 08:00
    ],
)
def test_care_keeps_its_own_longer_hours(end_minutes: int, due: str) -> None:
    done = visit(1, "lift", "done", "2027-06-10 13:00", minutes=end_minutes)

    assert planned([done], "2027-06-10 13:00", "care") == {"1 care 0": due}


def test_care_waits_for_the_opening_of_the_morning_on_which_the_clocks_changed() -> None:
    done = visit(1, "fill", "done", "2027-03-27 19:30", minutes=75)  # ends at 20:45 GMT, 28 March is the change

    assert planned([done], "2027-03-27 20:50", "care") == {"1 care 0": "2027-03-28 07:00"}  # 08:00 BST


def test_care_goes_up_to_twenty_four_elapsed_hours_after_the_end() -> None:
    done = visit(1, "fill", "done", "2027-03-27 17:00")  # ends at 18:00 GMT; a day later that is 19:00 BST

    assert planned([done], "2027-03-28 18:00:00", "care") == {"1 care 0": "2027-03-28 18:00"}
    assert planned([done], "2027-03-28 18:00:01", "care") == {"1 care 0": "too late"}


@pytest.mark.parametrize("service", ["removal", "lift"])
def test_one_check_follows_two_days_after(service: str) -> None:
    found = planned([visit(1, service, "done", "2027-06-10 13:00")], "2027-06-10 14:20", "check")

    assert found == {"1 check 1": "2027-06-12 09:00"}


def test_a_touch_up_has_no_check() -> None:
    assert planned([visit(1, "touch-up", "done", "2027-06-10 13:00")], "2027-06-10 14:20", "check") == {}


@pytest.mark.parametrize("service", ["patch test", "full set", "fill"])
def test_a_patch_test_and_the_first_done_set_are_checked_three_times(service: str) -> None:
    found = planned([visit(1, service, "done", "2027-06-10 13:00")], "2027-06-10 14:20", "check")

    assert found == {
        "1 check 1": "2027-06-12 09:00",
        "1 check 2": "2027-06-14 09:00",
        "1 check 3": "2027-06-17 09:00",
    }


def test_a_check_goes_up_to_twenty_four_hours_after_its_aim() -> None:
    done = visit(1, "lift", "done", "2027-06-10 13:00")

    assert planned([done], "2027-06-13 09:00:00", "check") == {"1 check 1": "2027-06-13 09:00"}
    assert planned([done], "2027-06-13 09:00:01", "check") == {"1 check 1": "too late"}


@pytest.mark.parametrize(
    ("client", "steps"), [(MIA, {"1 check 1"}), (SENSITIVE_MIA, {"1 check 1", "1 check 2", "1 check 3"})]
)
def test_the_second_done_set_is_checked_three_times_for_a_sensitive_client(client: Client, steps: set[str]) -> None:
    second = visit(1, "fill", "done", "2027-06-10 13:00")

    found = planned([OLD_SET, second], "2027-06-10 14:20", "check", client=client)

    assert {key for key in found if key.startswith("1 ")} == steps


def test_the_third_done_set_of_a_sensitive_client_is_checked_once() -> None:
    second, third = visit(91, "fill", "done", "2027-01-10 13:00"), visit(1, "fill", "done", "2027-06-10 13:00")

    found = planned([OLD_SET, second, third], "2027-06-10 14:20", "check", client=SENSITIVE_MIA)

    assert {key for key in found if key.startswith("1 ")} == {"1 check 1"}


def checks(client: Client, *visits: Visit, **numbers: int) -> dict[int, int]:
    """Return how many checks each visit gets, by the owner's numbers."""
    found = timing.plan(client, visits, Rules(**numbers), utc("2027-06-10 14:20"))  # type: ignore[arg-type]
    steps = [message.visit.id for message in found if message.occasion == "check"]
    return {visit.id: steps.count(visit.id) for visit in visits}


def test_the_owner_chooses_how_often_a_regulars_set_and_a_removal_are_checked() -> None:
    first, fill = visit(90, "full set", "done", "2027-01-10 13:00"), visit(1, "fill", "done", "2027-06-08 13:00")
    removal, lift = visit(2, "removal", "done", "2027-06-09 13:00"), visit(3, "lift", "done", "2027-06-10 13:00")
    every = (first, fill, removal, lift)

    assert checks(MIA, *every) == {90: 3, 1: 1, 2: 1, 3: 1}
    assert checks(MIA, *every, set_checks=2) == {90: 3, 1: 2, 2: 1, 3: 1}
    assert checks(MIA, *every, set_checks=3, other_checks=2) == {90: 3, 1: 3, 2: 2, 3: 2}


def test_so_many_first_sets_of_a_sensitive_client_get_all_three_as_the_owner_says() -> None:
    sets = [visit(n, "fill", "done", f"2027-06-0{n} 13:00") for n in range(1, 6)]

    assert checks(SENSITIVE_MIA, *sets, sensitive_sets=4) == {1: 3, 2: 3, 3: 3, 4: 3, 5: 1}
    assert checks(SENSITIVE_MIA, *sets, sensitive_sets=1) == {1: 3, 2: 1, 3: 1, 4: 1, 5: 1}


@pytest.mark.parametrize("fewest", [{"set_checks": 1, "other_checks": 1, "sensitive_sets": 1}])
def test_patch_tests_first_sets_and_the_first_after_a_reaction_keep_all_three(fewest: dict[str, int]) -> None:
    test, first = visit(1, "patch test", "done", "2027-05-20 13:00"), visit(2, "full set", "done", "2027-05-28 13:00")
    after = visit(3, "fill", "done", "2027-06-09 13:00")
    client = replace(MIA, reactions=(utc("2027-06-01 12:00"),))

    assert checks(client, test, first, after, **fewest) == {1: 3, 2: 3, 3: 3}


@pytest.mark.parametrize(
    ("since", "steps"), [("2027-06-05 09:00", 3), ("2027-06-06 09:00", 2), ("2027-06-06 09:00:01", 1)]
)
def test_a_later_check_that_was_over_when_the_rule_came_gets_no_message(since: str, steps: int) -> None:
    first, fill = visit(90, "full set", "done", "2027-01-10 13:00"), visit(1, "fill", "done", "2027-06-01 13:00")
    rules = Rules(set_checks=3, check_days=(2, 3, 4), since=utc(since))  # the last by 6 June, 10:00 in London

    found = timing.plan(MIA, [first, fill], rules, utc("2027-06-10 14:20"))

    assert len([one for one in found if one.visit.id == 1 and one.occasion == "check"]) == steps


def test_of_a_first_set_that_stands_in_the_book_twice_the_one_that_is_told_of_has_all_three() -> None:
    twice = [visit(1, "full set", "done", "2027-06-10 13:00"), visit(2, "fill", "done", "2027-06-10 13:00")]

    assert set(planned(twice, "2027-06-10 14:10", "check")) == {"2 check 1", "2 check 2", "2 check 3"}


def test_the_first_done_set_after_a_reaction_is_checked_three_times() -> None:
    after, later = visit(1, "fill", "done", "2027-06-01 13:00"), visit(2, "fill", "done", "2027-06-10 13:00")
    client = replace(MIA, reactions=(utc("2027-03-01 12:00"),))

    found = planned([OLD_SET, after, later], "2027-06-10 14:20", "check", client=client)

    assert {key for key in found if key[0] in "12"} == {"1 check 1", "1 check 2", "1 check 3", "2 check 1"}


def test_a_set_that_began_at_the_very_moment_of_a_reaction_is_not_after_it() -> None:
    same, later = visit(1, "fill", "done", "2027-06-01 13:00"), visit(2, "fill", "done", "2027-06-10 13:00")

    found = planned([OLD_SET, same, later], "2027-06-10 14:20", "check", client=replace(MIA, reactions=(same.start,)))

    assert {key for key in found if key[0] in "12"} == {"1 check 1", "2 check 1", "2 check 2", "2 check 3"}
