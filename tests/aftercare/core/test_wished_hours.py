"""The hours in which a client wishes to be written to: within the studio's, and only as far as that is in time."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import event, given
from hypothesis import strategies as st

from aftercare.core.hours import WISHES, moment
from aftercare.core.promises import first_moment
from aftercare.core.timing import Occasion, Planned
from tests.aftercare.core import oracle
from tests.aftercare.core.cases import ZONES, Case, cases, days, hours_of_a_day, wearing
from tests.aftercare.core.test_timing_against_oracle import bounded, is_open, told
from tests.aftercare.core.worked import DEFAULTS, MIA, utc
from tests.aftercare.core.worked import visit as a_visit

WISH = st.sampled_from(sorted(WISHES))


def wishing(case: Case, wish: str) -> Case:
    return case._replace(client=replace(case.client, wished=wish))


@bounded
@given(cases() | wearing(), WISH)
def test_nothing_leaves_outside_the_studios_hours_or_too_late(case: Case, wish: str) -> None:
    for message in wishing(case, wish).messages():
        if message.reason is None:
            assert message.due is not None
            hours = case.rules.hours_of(message.occasion)
            assert all(is_open(message.due, hours, zone) for zone in case.client.zones)
            assert message.due <= message.no_later_than


@bounded
@given(st.data(), st.sampled_from(ZONES), WISH, st.integers(0, 48 * 60))
def test_it_goes_at_her_hours_where_one_of_them_is_in_time_and_else_as_without_a_wish(
    data: st.DataObject, zone: ZoneInfo, wish: str, minutes: int
) -> None:
    """Against a walk from minute to minute."""
    day = data.draw(days(zone))
    hours = data.draw(hours_of_a_day(day))
    at = moment(day, data.draw(st.integers(0, 24 * 60 - 1)), zone)
    rules = replace(DEFAULTS, hours=hours)
    done = a_visit(1, "fill", "done", "2027-06-10 09:00")
    check = Planned(done, Occasion.CHECK, 1, 1, at, at + timedelta(minutes=minutes), at)

    usual = oracle.first_open(at, hours, (zone,), check.no_later_than)
    opens, closes = (max(WISHES[wish][0], hours.opens), min(WISHES[wish][1], hours.closes))
    hers = replace(hours, opens=opens, closes=closes) if opens < closes else None
    wished = oracle.first_open(at, hers, (zone,), check.no_later_than) if hers else None
    event("too late" if usual is None else "gives way" if wished is None else "later" if wished > usual else "same")
    assert first_moment(check, at, replace(MIA, zone=zone, wished=wish), rules) == (wished or usual)


@bounded
@given(cases() | wearing(), WISH)
def test_a_wish_that_the_studios_hours_meet_anyhow_changes_nothing(case: Case, wish: str) -> None:
    opens, closes = WISHES[wish]
    names = ("hours", "care_hours", "reminder_hours")
    meeting = {name: replace(getattr(case.rules, name), opens=opens, closes=closes) for name in names}
    case = case._replace(rules=replace(case.rules, **meeting))

    assert told(wishing(case, wish).plan()) == told(case.plan())


@pytest.mark.parametrize(
    ("wish", "due"), [("", "09:00"), ("morning", "09:00"), ("afternoon", "11:00"), ("evening", "16:00")]
)
def test_a_check_waits_for_her_hours_of_the_same_day(wish: str, due: str) -> None:
    done = a_visit(1, "full set", "done", "2027-06-10 13:00")
    (check,) = [
        one
        for one in Case(replace(MIA, wished=wish), [done], DEFAULTS, utc("2027-06-10 16:00")).messages()
        if (one.occasion, one.step) == (Occasion.CHECK, 1)
    ]
    assert check.due == utc(f"2027-06-12 {due}")  # London: an hour ahead
    assert check.reason is None


def test_care_waits_for_no_wish() -> None:
    done = a_visit(1, "fill", "done", "2027-06-10 09:00")
    (care,) = [
        one
        for one in Case(replace(MIA, wished="evening"), [done], DEFAULTS, utc("2027-06-10 10:00")).messages()
        if one.occasion is Occasion.CARE
    ]
    usual = Case(MIA, [done], DEFAULTS, utc("2027-06-10 10:00")).plan()[care.slot]
    assert care.due == usual.due
    assert care.reason is None


def test_what_would_come_too_late_in_her_hours_comes_in_the_studios() -> None:
    booked = a_visit(1, "lift", "booked", "2027-06-10 14:00")  # what to do before it: three hours ahead, or not at all
    (prepare,) = Case(replace(MIA, wished="evening"), [booked], DEFAULTS, utc("2027-06-10 08:30")).messages()
    assert (prepare.occasion, prepare.reason, prepare.due) == (Occasion.PREPARE, None, utc("2027-06-10 08:30"))
