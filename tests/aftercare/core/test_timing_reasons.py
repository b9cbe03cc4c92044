"""Worked examples of what holds a message back: reasons and their order, one visit a date, one check a day.

Moments are written as UTC; Mia's clock is London's, in June an hour ahead of it.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from aftercare.core.hours import Hours
from aftercare.core.timing import Occasion, Reason, Rules, Standing
from tests.aftercare.core.worked import MIA, NEW_YORK, SENSITIVE_MIA, planned, utc, visit


def test_too_late_is_said_before_on_hold_and_on_hold_before_no_way_to_reach_her() -> None:
    client = replace(MIA, on_hold=True, channel="", unreachable=Reason.NO_WAY, paused=True)
    booked = visit(1, "full set", "booked", "2027-06-10 13:00")

    found = planned([booked], "2027-06-09 17:00", client=client)  # 18:00 BST, an hour after the evening's aim

    assert found == {"1 prepare 0": "too late", "1 prepare 1": "on hold"}


@pytest.mark.parametrize("why", [Reason.NO_WAY, Reason.NO_CONSENT])
def test_whom_nothing_can_reach_is_told_of_before_a_pause(why: Reason) -> None:
    client = replace(MIA, channel="", unreachable=why, paused=True)

    found = planned([visit(1, "lift", "booked", "2027-06-10 13:00")], "2027-06-01 09:00", client=client)

    assert found == {"1 prepare 0": why.value}


def test_on_hold_stops_what_leads_to_the_next_visit_but_not_care_and_checks() -> None:
    visits = [visit(1, "fill", "done", "2027-06-01 07:00"), visit(2, "fill", "booked", "2027-06-20 13:00")]
    client = replace(MIA, on_hold=True, test_first=True)

    found = planned(visits, "2027-06-01 08:10", client=client)

    assert {key for key, outcome in found.items() if outcome == "on hold"} == {"2 patch_test 0", "2 prepare 0"}
    assert found["1 care 0"] == "2027-06-01 08:30"
    assert found["1 check 1"] == "2027-06-03 09:00"


def test_a_pause_leaves_care_and_checks_alone() -> None:
    visits = [visit(1, "fill", "done", "2027-06-01 07:00"), visit(2, "fill", "booked", "2027-06-20 13:00")]

    found = planned(visits, "2027-06-01 08:10", client=replace(MIA, paused=True))

    assert {key for key, outcome in found.items() if outcome == "paused"} == {"2 prepare 0"}


def test_the_checks_of_a_visit_that_a_reaction_followed_stop_and_those_of_others_go_on() -> None:
    visits = [visit(1, "lift", "done", "2027-06-01 13:00"), visit(2, "lift", "done", "2027-06-02 13:00")]

    found = planned(visits, "2027-06-02 14:10", "check", client=replace(MIA, held_visits=frozenset({1})))

    assert found == {"1 check 1": "on hold", "2 check 1": "2027-06-04 09:00"}


def test_of_the_booked_visits_of_a_date_only_the_earliest_has_prepare_with_its_own_steps() -> None:
    visits = [visit(1, "full set", "booked", "2027-06-10 13:00"), visit(2, "patch test", "booked", "2027-06-10 08:00")]

    assert planned(visits, "2027-06-01 09:00", "prepare") == {"2 prepare 0": "2027-06-07 09:00"}


def test_a_date_is_that_of_her_own_zone() -> None:
    client = replace(MIA, zone=NEW_YORK)  # both on 10 June there: 18:00 and 21:00
    visits = [visit(1, "lift", "booked", "2027-06-10 22:00"), visit(2, "lift", "booked", "2027-06-11 01:00")]

    assert set(planned(visits, "2027-06-01 09:00", client=client)) == {"1 prepare 0"}


def test_a_visit_to_which_the_table_gives_nothing_takes_no_other_visits_place() -> None:
    visits = [visit(1, "other", "booked", "2027-06-10 08:00"), visit(2, "lift", "booked", "2027-06-10 13:00")]

    assert set(planned(visits, "2027-06-01 09:00")) == {"2 prepare 0"}


def test_of_the_done_visits_of_a_date_only_the_latest_has_care_and_only_the_latest_checked_one_a_check() -> None:
    visits = [
        visit(1, "removal", "done", "2027-06-10 08:00"),
        visit(2, "lift", "done", "2027-06-10 10:00"),
        visit(3, "touch-up", "done", "2027-06-10 12:00"),
    ]

    found = planned(visits, "2027-06-10 13:10")

    assert found == {"3 care 0": "2027-06-10 13:30", "2 check 1": "2027-06-12 09:00"}


@pytest.mark.parametrize("removal", [1, 3])
def test_of_a_removal_and_a_set_at_one_moment_the_set_is_told_of_cared_for_and_checked(removal: int) -> None:
    for status, now, found in [
        ("booked", "2027-06-01 09:00", {"2 prepare 0", "2 prepare 1"}),
        ("done", "2027-06-10 09:10", {"2 care 0", "2 check 1", "2 check 2", "2 check 3"}),
    ]:
        both = [visit(2, "full set", status, "2027-06-10 08:00"), visit(removal, "removal", status, "2027-06-10 08:00")]
        assert set(planned(both, now)) == found


def test_patch_tests_are_asked_for_visit_by_visit() -> None:
    visits = [visit(1, "full set", "booked", "2027-06-20 08:00"), visit(2, "fill", "booked", "2027-06-20 13:00")]

    found = planned(visits, "2027-06-01 09:00", "patch_test", client=SENSITIVE_MIA)

    assert found == {"1 patch_test 0": "2027-06-13 09:00", "2 patch_test 0": "2027-06-13 09:00"}


FIRST, SECOND = visit(1, "full set", "done", "2027-06-10 13:00"), visit(2, "lift", "done", "2027-06-12 13:00")


def test_of_the_checks_of_one_day_only_that_of_the_latest_visit_goes() -> None:
    found = planned([FIRST, SECOND], "2027-06-12 14:10", "check")

    assert found["1 check 2"] == "another check that day"
    assert found["2 check 1"] == "2027-06-14 09:00"
    assert found["1 check 3"] == "2027-06-17 09:00"


def test_a_check_that_is_withheld_for_another_reason_holds_back_no_other() -> None:
    found = planned([FIRST, SECOND], "2027-06-12 14:10", "check", client=replace(MIA, held_visits=frozenset({2})))

    assert found["1 check 2"] == "2027-06-14 09:00"


def test_a_check_that_was_sent_that_day_holds_back_one_of_an_earlier_visit() -> None:
    sent = {(2, Occasion.CHECK, 1): Standing(gone_edition=1, gone_due=utc("2027-06-14 09:00"))}

    assert planned([FIRST, SECOND], "2027-06-14 08:00", "check", standing=sent)["1 check 2"] == "another check that day"


def test_a_sent_check_counts_even_where_its_visit_turned_out_to_be_another_service() -> None:
    sent = {(2, Occasion.CHECK, 1): Standing(gone_edition=1, gone_due=utc("2027-06-14 09:00"))}
    corrected = replace(SECOND, service="touch-up")

    found = planned([FIRST, corrected], "2027-06-14 08:00", "check", standing=sent)

    assert found["1 check 2"] == "another check that day"


def test_a_check_that_was_sent_that_day_holds_back_none_of_a_later_visit() -> None:
    sent = {(1, Occasion.CHECK, 2): Standing(gone_edition=1, gone_due=utc("2027-06-14 08:00"))}

    assert planned([FIRST, SECOND], "2027-06-14 08:30", "check", standing=sent)["2 check 1"] == "2027-06-14 09:00"


def test_of_two_checks_of_one_visit_on_one_day_the_later_step_goes() -> None:
    rules = Rules(check_days=(1, 2, 7), hours=Hours(540, 1200, weekdays_off=frozenset({4})))  # not on Fridays

    found = planned([FIRST], "2027-06-10 14:10", "check", rules=rules)  # 10 June is a Thursday

    assert found["1 check 1"] == "another check that day"
    assert found["1 check 2"] == "2027-06-12 09:00"
