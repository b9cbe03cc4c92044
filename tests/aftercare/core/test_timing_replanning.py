"""Worked examples of planning again: what stands, what moves in place, what is told once more, what comes back.

Moments are written as UTC; Mia's clock is London's, in June an hour ahead of it.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from aftercare.core import timing
from aftercare.core.timing import Occasion, Planned, Reason, Rules, Standing
from tests.aftercare.core.worked import (
    DEFAULTS,
    MIA,
    SENSITIVE_MIA,
    gone,
    only,
    planned,
    told,
    utc,
    visit,
    waiting,
)

BOOKED = visit(1, "full set", "booked", "2027-06-10 13:00")
MOVED = visit(1, "full set", "booked", "2027-06-12 13:00")
OLD_SET = visit(90, "full set", "done", "2027-05-01 10:00")


def first_plan(now: str = "2027-06-01 09:00") -> list[Planned]:
    return timing.plan(SENSITIVE_MIA, [BOOKED], DEFAULTS, utc(now))


def test_an_overdue_message_stays_overdue() -> None:
    standing = waiting(first_plan())

    found = planned([BOOKED], "2027-06-08 12:00", "prepare", client=SENSITIVE_MIA, standing=standing)

    assert found == {"1 prepare 0": "2027-06-07 09:00", "1 prepare 1": "2027-06-09 16:00"}


def test_an_overdue_message_stays_overdue_even_past_its_last_moment_and_is_left_to_the_claim() -> None:
    standing = waiting(first_plan())

    found = planned([BOOKED], "2027-06-10 12:30", "prepare", client=SENSITIVE_MIA, standing=standing)

    assert found == {"1 prepare 0": "2027-06-07 09:00", "1 prepare 1": "2027-06-09 16:00"}


def test_what_has_gone_is_planned_no_second_time() -> None:
    assert planned([BOOKED], "2027-06-09 17:00", client=SENSITIVE_MIA, standing=gone(first_plan())) == {}


def test_a_visit_that_moves_before_anything_has_gone_is_planned_anew_in_place() -> None:
    found = planned([MOVED], "2027-06-02 09:00", client=SENSITIVE_MIA, standing=waiting(first_plan()))

    assert found == {
        "1 patch_test 0": "2027-06-05 09:00",
        "1 prepare 0": "2027-06-09 09:00",
        "1 prepare 1": "2027-06-11 16:00",
    }


def test_a_visit_that_moves_closer_than_its_new_aim_is_planned_from_now() -> None:
    standing = waiting(timing.plan(MIA, [MOVED], DEFAULTS, utc("2027-06-01 09:00")))

    found = planned([BOOKED], "2027-06-08 12:00", standing=standing)

    assert found == {"1 prepare 0": "2027-06-08 12:00", "1 prepare 1": "2027-06-09 16:00"}


def test_a_visit_that_moves_after_its_messages_had_gone_is_told_of_once_more() -> None:
    standing = gone(only(first_plan(), Occasion.PREPARE, 0) + only(first_plan(), Occasion.PATCH_TEST, 0))

    found = planned([MOVED], "2027-06-08 12:00", client=SENSITIVE_MIA, standing=standing)

    assert found == {
        "1 patch_test 0 edition 2": "2027-06-08 12:00",
        "1 prepare 0 edition 2": "2027-06-09 09:00",
        "1 prepare 1": "2027-06-11 16:00",
    }


def test_each_edition_has_a_key_of_its_own() -> None:
    standing = gone(only(first_plan(), Occasion.PREPARE, 0))

    found = timing.plan(SENSITIVE_MIA, [MOVED], DEFAULTS, utc("2027-06-08 12:00"), standing)

    assert only(first_plan(), Occasion.PREPARE, 0)[0].key == "visit:1:prepare:0:1"
    assert only(found, Occasion.PREPARE, 0)[0].key == "visit:1:prepare:0:2"


def test_a_visit_that_moves_by_an_hour_is_told_of_once_more_too() -> None:
    standing = gone(only(first_plan(), Occasion.PREPARE, 0))
    an_hour_later = replace(BOOKED, start=utc("2027-06-10 14:00"))

    found = planned([an_hour_later], "2027-06-08 12:00", "prepare", client=SENSITIVE_MIA, standing=standing)

    assert found["1 prepare 0 edition 2"] == "2027-06-08 12:00"


def test_a_visit_that_moves_back_is_told_of_no_more() -> None:
    sent = gone(only(first_plan(), Occasion.PREPARE, 0))
    again = timing.plan(SENSITIVE_MIA, [MOVED], DEFAULTS, utc("2027-06-08 12:00"), sent)
    [second] = waiting(only(again, Occasion.PREPARE, 0)).values()
    slot = (1, Occasion.PREPARE, 0)
    both = second._replace(gone_edition=1, gone_start=BOOKED.start, gone_due=sent[slot].gone_due)

    found = planned([BOOKED], "2027-06-08 13:00", "prepare", client=SENSITIVE_MIA, standing={slot: both})

    assert found == {"1 prepare 1": "2027-06-09 16:00"}


def test_a_second_visit_of_a_day_is_not_told_of_once_the_first_that_was_has_begun() -> None:
    first = visit(1, "removal", "booked", "2027-06-10 09:00")
    second = visit(2, "fill", "booked", "2027-06-10 15:00")
    at_first = timing.plan(MIA, [first, second, OLD_SET], DEFAULTS, utc("2027-06-07 09:00"))
    assert [*told(at_first, "prepare")] == ["1 prepare 0"]

    for now, became in [("2027-06-10 09:00", first), ("2027-06-10 10:00", replace(first, status="done"))]:
        assert planned([became, second, OLD_SET], now, "prepare", standing=gone(at_first)) == {}
    for status in ("cancelled", "missed"):
        she = [replace(first, status=status), second, OLD_SET]
        assert [*planned(she, "2027-06-10 10:00", "prepare", standing=gone(at_first))] == ["2 prepare 0"]
    assert [*planned([first, second, OLD_SET], "2027-06-10 10:00", "prepare")] == ["2 prepare 0"], "nobody told her"


def test_a_visit_that_moves_behind_another_of_the_day_is_told_of_once_that_has_begun() -> None:
    first = visit(1, "removal", "booked", "2027-06-10 09:00")
    second = visit(2, "lift", "booked", "2027-06-11 15:00")
    at_first = timing.plan(MIA, [first, second], DEFAULTS, utc("2027-06-07 09:00"))
    moved = replace(second, start=utc("2027-06-10 16:00"))

    found = planned([first, moved], "2027-06-10 10:00", "prepare", standing=gone(at_first))

    assert found == {"2 prepare 0 edition 2": "2027-06-10 10:00"}


def test_a_third_move_makes_a_third_edition() -> None:
    slot = (1, Occasion.PREPARE, 0)
    sent_twice = {slot: Standing(gone_edition=2, gone_start=MOVED.start, gone_due=utc("2027-06-09 09:00"))}
    moved_again = replace(BOOKED, start=utc("2027-06-14 13:00"))

    found = planned([moved_again], "2027-06-10 09:00", "prepare", standing=sent_twice)

    assert found["1 prepare 0 edition 3"] == "2027-06-11 09:00"


@pytest.mark.parametrize(("occasion", "step"), [(Occasion.CARE, 0), (Occasion.CHECK, 1)])
def test_care_and_checks_that_have_gone_are_not_said_again_where_the_visits_hour_is_corrected(
    occasion: Occasion, step: int
) -> None:
    done = visit(1, "lift", "done", "2027-06-10 13:00")
    standing = gone(only(timing.plan(MIA, [done], DEFAULTS, utc("2027-06-10 14:10")), occasion, step))
    corrected = visit(1, "lift", "done", "2027-06-10 11:00")

    assert planned([corrected], "2027-06-10 14:40", occasion, standing=standing) == {}


def test_a_canceled_visits_messages_are_no_longer_due() -> None:
    canceled = replace(BOOKED, status="cancelled")

    assert planned([canceled], "2027-06-02 09:00", standing=waiting(first_plan())) == {}


def test_a_message_of_a_visit_that_is_booked_again_is_planned_from_now() -> None:
    withdrawn = {slot: record._replace(open_planned=False) for slot, record in waiting(first_plan()).items()}

    found = planned([BOOKED], "2027-06-08 12:00", "prepare", client=SENSITIVE_MIA, standing=withdrawn)

    assert found == {"1 prepare 0": "2027-06-08 12:00", "1 prepare 1": "2027-06-09 16:00"}


def test_what_was_on_hold_and_may_go_again_is_planned_from_now() -> None:
    held = waiting(timing.plan(replace(MIA, on_hold=True), [BOOKED], DEFAULTS, utc("2027-06-01 09:00")))

    found = planned([BOOKED], "2027-06-08 20:00", standing=held)  # 21:00 BST, after hours

    assert found == {"1 prepare 0": "2027-06-09 08:00", "1 prepare 1": "2027-06-09 16:00"}


def test_what_was_on_hold_is_too_late_once_its_last_moment_is_past() -> None:
    held = waiting(timing.plan(replace(MIA, on_hold=True), [BOOKED], DEFAULTS, utc("2027-06-01 09:00")))

    assert planned([BOOKED], "2027-06-09 17:00", standing=held)["1 prepare 0"] == "too late"


def test_a_hold_withholds_what_was_planned() -> None:
    found = planned([BOOKED], "2027-06-02 09:00", client=replace(MIA, on_hold=True), standing=waiting(first_plan()))

    assert set(found.values()) == {"on hold"}


def test_a_changed_rule_moves_what_has_not_gone() -> None:
    found = planned([BOOKED], "2027-06-02 09:00", rules=Rules(prepare_days=2), standing=waiting(first_plan()))

    assert found == {"1 prepare 0": "2027-06-08 09:00", "1 prepare 1": "2027-06-09 16:00"}


FIRST, SECOND = visit(1, "full set", "done", "2027-06-10 13:00"), visit(2, "lift", "done", "2027-06-12 13:00")


def test_a_check_that_gave_way_comes_back_where_its_rival_is_gone_from_the_book() -> None:
    standing = waiting(timing.plan(MIA, [FIRST, SECOND], DEFAULTS, utc("2027-06-12 14:10")))

    found = planned([FIRST], "2027-06-13 09:00", "check", standing=standing)

    assert found["1 check 2"] == "2027-06-14 09:00"


def test_a_check_that_gave_way_does_not_come_back_because_the_day_has_gone_by() -> None:
    plan = timing.plan(MIA, [FIRST, SECOND], DEFAULTS, utc("2027-06-12 14:10"))
    rival = only(plan, Occasion.CHECK, 1)[-1:]
    standing = waiting(plan) | gone(rival)

    found = planned([FIRST, SECOND], "2027-06-15 08:30", "check", standing=standing)

    assert rival[0].visit.id == 2
    assert found["1 check 2"] == "another check that day"


def test_a_test_that_is_booked_in_time_makes_the_request_fall_away() -> None:
    test = visit(2, "patch test", "booked", "2027-06-05 13:00")

    assert planned([BOOKED, test], "2027-06-02 09:00", "patch_test", client=SENSITIVE_MIA) == {}


def test_a_fill_loses_its_evening_step_once_a_set_is_done() -> None:
    fill = visit(1, "fill", "booked", "2027-06-10 13:00")
    standing = waiting(timing.plan(MIA, [fill], DEFAULTS, utc("2027-06-01 09:00")))

    found = planned([fill, OLD_SET], "2027-06-02 09:00", "prepare", standing=standing)

    assert found == {"1 prepare 0": "2027-06-07 09:00"}


def judged(now: str, message: Planned) -> object:
    return timing.may_go(message, MIA, DEFAULTS, utc(now))


def test_at_the_claim_a_message_within_its_hours_goes_at_once() -> None:
    [prepare] = only(first_plan(), Occasion.PREPARE, 0)

    assert judged("2027-06-07 09:00", prepare) == utc("2027-06-07 09:00")
    assert judged("2027-06-08 12:34:56", prepare) == utc("2027-06-08 12:34:56")


def test_at_the_claim_a_message_outside_its_hours_gets_a_new_moment() -> None:
    [prepare] = only(first_plan(), Occasion.PREPARE, 0)

    assert judged("2027-06-07 19:00", prepare) == utc("2027-06-08 08:00")


def test_at_the_claim_a_message_after_its_last_moment_is_too_late() -> None:
    [prepare] = only(first_plan(), Occasion.PREPARE, 0)

    assert judged("2027-06-09 16:00:01", prepare) == Reason.TOO_LATE


def test_at_the_claim_what_is_withheld_says_why() -> None:
    held = timing.plan(replace(MIA, on_hold=True), [BOOKED], DEFAULTS, utc("2027-06-01 09:00"))

    assert judged("2027-06-07 09:00", only(held, Occasion.PREPARE, 0)[0]) == Reason.ON_HOLD
    assert set(told(held).values()) == {"on hold"}
