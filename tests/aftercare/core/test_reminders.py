"""Worked examples of reminders: when they are aimed, what they keep away from, what withholds them, what they follow.

Moments are written as UTC; Mia's clock is London's, in June and July an hour ahead of it. 1 June 2027 is a Tuesday.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core import reminders, timing
from aftercare.core.hours import Hours
from aftercare.core.reminders import Away
from aftercare.core.timing import Client, Occasion, Planned, Reason, Rules, SetForecast, Slot, Standing, Visit
from tests.aftercare.core.worked import DEFAULTS, MIA, NEW_YORK, gone, only, planned, told, utc, visit, waiting

SET = visit(1, "fill", "done", "2027-06-01 13:00")
EARLIER = visit(90, "full set", "done", "2027-05-04 13:00")
SETS = [EARLIER, SET]  # so that this one has but its first check, on 3 June
FORECAST = SetForecast(1, fill_day=22.4, full_set_low=30.2, full_set_day=36.8, id=1)
REMINDED = replace(MIA, reminder_channel="sms", reminder_unreachable=None)
THEN = "2027-06-04 09:00"
FILL, FULL = (1, Occasion.FILL_DUE, 0), (1, Occasion.FULL_SET_DUE, 0)


def plan(
    *more: Visit,
    now: str = THEN,
    client: Client = REMINDED,
    rules: Rules = DEFAULTS,
    standing: dict[Slot, Standing] | None = None,
    forecast: SetForecast | None = FORECAST,
) -> list[Planned]:
    found = timing.plan(client, [*SETS, *more], rules, utc(now), standing, forecast)
    return [message for message in found if message.occasion in timing.REMINDERS]


def reminded(*more: Visit, now: str = THEN, **given: object) -> dict[str, str]:
    """What becomes of the two: ``{"fill_due": "2027-06-16 09:00", "full_set_due": "already booked"}``."""
    found = told(plan(*more, now=now, **given))  # type: ignore[arg-type]
    return {key.split()[1]: outcome for key, outcome in found.items()}


def test_the_fills_reminder_is_a_weeks_wait_before_its_day_and_the_full_sets_on_its_day() -> None:
    assert reminded() == {"fill_due": "2027-06-16 09:00", "full_set_due": "2027-07-07 09:00"}


def test_it_is_earlier_where_the_full_set_level_may_come_early() -> None:
    assert reminded(forecast=replace(FORECAST, full_set_low=20.1))["fill_due"] == "2027-06-14 09:00"


def test_it_is_not_sooner_than_nine_days_after_the_set() -> None:
    assert reminded(forecast=replace(FORECAST, fill_day=11.0))["fill_due"] == "2027-06-10 09:00"


def test_nine_days_after_a_first_set_is_just_far_enough_from_its_last_check() -> None:
    found = planned([SET], THEN, client=REMINDED, forecast=replace(FORECAST, fill_day=11.0))

    assert found["1 check 3"] == "2027-06-08 09:00"
    assert found["1 fill_due 0"] == "2027-06-10 09:00"


@pytest.mark.parametrize(("fill_day", "occasions"), [(9.99, set()), (10.0, {"fill_due", "full_set_due"})])
def test_a_set_that_fails_early_is_for_its_artist_and_has_no_reminder(fill_day: float, occasions: set[str]) -> None:
    assert set(reminded(forecast=replace(FORECAST, fill_day=fill_day))) == occasions


@pytest.mark.parametrize("forecast", [None, replace(FORECAST, visit=90)])
def test_without_a_forecast_of_the_set_that_she_wears_there_is_none(forecast: SetForecast | None) -> None:
    assert reminded(forecast=forecast) == {}


def test_a_newer_set_takes_the_reminders_over() -> None:
    newer = visit(2, "full set", "done", "2027-06-20 13:00")

    assert reminded(newer, now="2027-06-20 15:00") == {}
    found = plan(newer, now="2027-06-20 15:00", forecast=replace(FORECAST, visit=2))
    assert {message.visit.id for message in found} == {2}


def test_they_do_not_go_on_sundays_or_closing_days() -> None:
    sunday = replace(FORECAST, fill_day=19.5)  # aimed at 13 June
    closed = Rules(reminder_hours=Hours(600, 1140, frozenset({6}), frozenset({date(2027, 6, 14)})))

    assert reminded(forecast=sunday)["fill_due"] == "2027-06-14 09:00"
    assert reminded(forecast=sunday, rules=closed)["fill_due"] == "2027-06-15 09:00"


def test_they_go_within_the_hours_of_both_her_clocks() -> None:
    assert reminded(client=replace(REMINDED, other_zone=NEW_YORK))["fill_due"] == "2027-06-16 14:00"


def test_the_fills_goes_until_the_eve_of_the_full_sets_and_that_for_two_weeks() -> None:
    assert reminded(now="2027-07-06 17:59")["fill_due"] == "2027-07-06 17:59"
    assert reminded(now="2027-07-06 18:00")["fill_due"] == "too late"
    assert reminded(now="2027-07-21 09:00")["full_set_due"] == "2027-07-21 09:00"
    assert reminded(now="2027-07-21 09:01")["full_set_due"] == "too late"


def test_the_eve_ends_at_midnight_where_the_hours_do() -> None:
    [fill] = only(plan(rules=Rules(reminder_hours=Hours(600, 24 * 60))), *FILL[1:])

    assert fill.no_later_than == utc("2027-07-06 23:00")


def test_a_set_that_was_first_heard_of_too_late_for_a_reminder_has_none() -> None:
    late = replace(SET, heard_at=utc("2027-07-06 18:01"))
    found = timing.plan(REMINDED, [EARLIER, late], DEFAULTS, utc("2027-07-06 18:01"), None, FORECAST)

    assert [message.occasion for message in found if message.occasion in timing.REMINDERS] == [Occasion.FULL_SET_DUE]


BOOKED = visit(5, "fill", "booked", "2027-07-07 08:00")


def test_the_reasons_are_asked_in_their_order() -> None:
    client = replace(
        REMINDED,
        on_hold=True,
        reminder_channel="",
        reminder_unreachable=Reason.NO_CONSENT,
        paused=True,
        on_break=True,
        first_import_at=utc("2027-06-20 09:00"),
    )

    def why(client: Client, *more: Visit) -> str:
        return reminded(*more, client=client, now="2027-06-20 09:00")["fill_due"]

    assert reminded(BOOKED, client=client, now="2027-07-06 18:00")["fill_due"] == "too late"
    assert why(client, BOOKED) == "on hold"
    assert why(replace(client, on_hold=False), BOOKED) == "no consent"
    client = replace(client, on_hold=False, reminder_channel="sms")
    assert why(client, BOOKED) == "paused"
    assert why(replace(client, paused=False), BOOKED) == "already booked"
    assert why(replace(client, paused=False)) == "no set on"
    assert why(replace(client, paused=False, on_break=False)) == "waiting for the owner's go"


def test_a_consent_to_messages_about_her_visits_is_none_to_reminders() -> None:
    found = planned(SETS, THEN, client=replace(MIA, reminder_unreachable=Reason.NO_CONSENT), forecast=FORECAST)

    assert found["1 check 1"] == "2027-06-04 09:00"
    assert found["1 fill_due 0"] == "no consent"


def test_a_consent_to_reminders_is_enough_for_them() -> None:
    client = replace(REMINDED, channel="", unreachable=Reason.NO_CONSENT)

    assert reminded(client=client)["fill_due"] == "2027-06-16 09:00"


@pytest.mark.parametrize(
    ("start", "fill", "full_set"),
    [
        ("2027-07-07 22:59", "already booked", "already booked"),  # the last minute of the full-set day
        ("2027-07-07 23:00", "2027-06-16 09:00", "already booked"),  # hers is the next day: an earlier visit is offered
        ("2027-07-21 09:00", "2027-06-16 09:00", "already booked"),
        ("2027-07-21 09:01", "2027-06-16 09:00", "2027-07-07 09:00"),
    ],
)
def test_who_comes_in_time_is_not_reminded(start: str, fill: str, full_set: str) -> None:
    assert reminded(visit(5, "full set", "booked", start)) == {"fill_due": fill, "full_set_due": full_set}


def test_only_a_set_counts_as_booked() -> None:
    assert reminded(replace(BOOKED, service="lift"))["fill_due"] == "2027-06-16 09:00"


@pytest.mark.parametrize(("times", "fill"), [(1, "2027-06-16 09:00"), (2, "already booked")])
def test_an_earlier_visit_is_not_offered_once_she_declined_twice(times: int, fill: str) -> None:
    late = visit(5, "fill", "booked", "2027-07-10 09:00")
    client = replace(REMINDED, earlier_declined=times)

    assert reminded(late, client=client)["fill_due"] == fill
    assert reminded(client=client)["fill_due"] == "2027-06-16 09:00"  # nothing booked, so nothing earlier than that


def test_after_a_removal_there_is_no_set_on() -> None:
    assert reminded(visit(5, "removal", "done", "2027-06-03 13:00")) == {
        "fill_due": "no set on",
        "full_set_due": "no set on",
    }


@pytest.mark.parametrize(
    ("status", "start"), [("done", "2027-06-01 10:00"), ("done", "2027-06-01 13:00"), ("booked", "2027-06-30 13:00")]
)
def test_a_removal_before_the_set_or_ahead_leaves_it_on(status: str, start: str) -> None:
    assert reminded(visit(5, "removal", status, start))["fill_due"] == "2027-06-16 09:00"


def test_on_a_break_she_is_not_reminded() -> None:
    assert set(reminded(client=replace(REMINDED, on_break=True)).values()) == {"no set on"}


IMPORTED = "2027-06-20 09:30"
OF_FIRST_IMPORT = replace(REMINDED, first_import_at=utc(IMPORTED))


def test_what_was_past_at_the_first_import_waits_for_the_owner_and_what_was_ahead_does_not() -> None:
    found = reminded(client=OF_FIRST_IMPORT, now=IMPORTED)

    assert found == {"fill_due": "waiting for the owner's go", "full_set_due": "2027-07-07 09:00"}


def test_a_set_that_was_heard_of_later_does_not_wait() -> None:
    later = replace(SET, heard_at=utc("2027-06-20 09:31"))
    found = timing.plan(OF_FIRST_IMPORT, [EARLIER, later], DEFAULTS, utc("2027-06-21 09:00"), None, FORECAST)

    assert told(found, "fill_due") == {"1 fill_due 0": "2027-06-21 09:00"}


def test_with_the_owners_go_it_leaves_from_then_on() -> None:
    standing = waiting(plan(client=OF_FIRST_IMPORT, now=IMPORTED))
    standing[FILL] = standing[FILL]._replace(go_from=utc("2027-06-24 09:00"))

    found = reminded(client=OF_FIRST_IMPORT, now="2027-06-21 12:00", standing=standing)

    assert found["fill_due"] == "2027-06-24 09:00"


def test_a_go_that_comes_too_late_is_too_late() -> None:
    standing = waiting(plan(client=OF_FIRST_IMPORT, now=IMPORTED))
    standing[FILL] = standing[FILL]._replace(go_from=utc("2027-07-07 09:00"))

    assert reminded(client=OF_FIRST_IMPORT, now=IMPORTED, standing=standing)["fill_due"] == "too late"


def sent(day: str, occasion: Occasion = Occasion.FULL_SET_DUE) -> dict[Slot, Standing]:
    return {(90, occasion, 1): Standing(gone_edition=1, gone_due=utc("2027-05-30 09:00"), gone_at=utc(day))}


@pytest.mark.parametrize(
    ("day", "due"), [("2027-06-11 09:00", "2027-06-16 09:00"), ("2027-06-12 15:00", "2027-06-17 09:00")]
)
def test_a_reminder_is_five_days_after_the_one_that_was_sent(day: str, due: str) -> None:
    assert reminded(standing=sent(day))["fill_due"] == due


def test_of_two_that_are_planned_within_five_days_the_later_one_moves() -> None:
    near = replace(FORECAST, full_set_low=30.0, full_set_day=18.5)  # the full set's on 19 June

    assert reminded(forecast=near) == {"fill_due": "2027-06-16 09:00", "full_set_due": "2027-06-21 09:00"}


def test_one_that_is_withheld_moves_no_other() -> None:
    near = replace(FORECAST, full_set_low=30.0, full_set_day=18.5)
    late = visit(5, "fill", "booked", "2027-07-10 08:00")

    assert reminded(late, forecast=near, client=replace(REMINDED, earlier_declined=2)) == {
        "fill_due": "already booked",
        "full_set_due": "2027-06-19 09:00",
    }


def test_an_overdue_one_leaves_now_and_the_later_one_moves_away_from_that() -> None:
    standing = waiting(plan())
    assert reminded(now="2027-07-05 09:00", standing=standing) == {
        "fill_due": "2027-06-16 09:00",
        "full_set_due": "2027-07-10 09:00",
    }


def test_an_overdue_one_that_cannot_leave_any_more_moves_no_other() -> None:
    assert reminded(now="2027-07-06 18:01", standing=waiting(plan()))["full_set_due"] == "2027-07-07 09:00"


@pytest.mark.parametrize(
    ("start", "due"),
    [
        ("2027-06-14 08:59", "2027-06-16 09:00"),
        ("2027-06-15 08:00", "2027-06-17 09:00"),
        ("2027-06-15 11:00", "2027-06-17 11:00"),
        ("2027-06-18 08:59", "2027-06-21 09:00"),  # before it too; 48 h after it is a Sunday
        ("2027-06-18 09:00", "2027-06-16 09:00"),
    ],
)
@pytest.mark.parametrize("status", ["missed", "cancelled"])
def test_it_keeps_clear_of_a_visit_that_fell_through(status: str, start: str, due: str) -> None:
    assert reminded(visit(5, "consultation", status, start))["fill_due"] == due


def test_a_visit_that_has_begun_and_is_not_marked_may_have_been_missed() -> None:
    fill = visit(5, "fill", "booked", "2027-06-17 10:00")

    assert reminded(fill, now="2027-06-17 09:59")["fill_due"] == "already booked"
    assert reminded(fill, now="2027-06-17 11:00")["fill_due"] == "2027-06-19 10:00"


def test_it_keeps_clear_of_a_check_that_is_planned() -> None:
    found = reminded(visit(5, "lift", "done", "2027-06-14 13:00"), now="2027-06-14 14:30")

    assert found["fill_due"] == "2027-06-18 09:00"  # the check is on the 16th


def test_it_keeps_clear_of_a_check_by_when_that_left() -> None:
    left = {(1, Occasion.CHECK, 1): Standing(gone_edition=1, gone_due=utc(THEN), gone_at=utc("2027-06-14 15:00:07"))}

    assert reminded(standing=left)["fill_due"] == "2027-06-16 15:00"
    [fill] = only(plan(standing=left), *FILL[1:])
    assert fill.due == utc("2027-06-16 15:00:07")


def test_a_check_that_is_withheld_is_nothing_to_keep_clear_of() -> None:
    lift = visit(5, "lift", "done", "2027-06-14 13:00")
    client = replace(REMINDED, held_visits=frozenset({5}))

    assert reminded(lift, now="2027-06-14 14:30", client=client)["fill_due"] == "2027-06-16 09:00"


def test_what_has_gone_for_a_set_does_not_go_again() -> None:
    standing = gone(only(plan(), *FILL[1:]))

    assert set(reminded(now="2027-06-17 09:00", standing=standing, forecast=replace(FORECAST, fill_day=30.0))) == {
        "full_set_due"
    }


@pytest.mark.parametrize(
    ("change", "due"),
    [(0.99, "2027-06-16 09:00"), (-0.99, "2027-06-16 09:00"), (1.0, "2027-06-17 09:00"), (-1.0, "2027-06-15 09:00")],
)
def test_it_follows_the_newest_forecast_but_for_a_change_under_a_day(change: float, due: str) -> None:
    newest = replace(FORECAST, fill_day=22.4 + change, id=2)

    assert reminded(standing=waiting(plan()), forecast=newest)["fill_due"] == due


def test_small_changes_do_not_add_up_unseen() -> None:
    standing = waiting(plan())
    for number, fill_day in enumerate((23.0, 23.3), start=2):
        found = plan(standing=standing, forecast=replace(FORECAST, fill_day=fill_day, id=number))
        standing = waiting(found)

    assert only(found, *FILL[1:])[0].forecast == FORECAST
    assert (
        reminded(standing=standing, forecast=replace(FORECAST, fill_day=23.4, id=4))["fill_due"] == "2027-06-17 09:00"
    )


def test_each_reminder_follows_by_its_own_day() -> None:
    newest = replace(FORECAST, full_set_day=40.2, id=2)
    fill, full_set = plan(standing=waiting(plan()), forecast=newest)

    assert (fill.forecast, full_set.forecast) == (FORECAST, newest)
    assert fill.no_later_than == utc("2027-07-10 18:00")  # the eve of where the other stands now


def test_a_changed_rule_is_followed_at_once() -> None:
    assert reminded(standing=waiting(plan()), rules=Rules(lead_days=6))["fill_due"] == "2027-06-17 09:00"


def test_a_forecast_that_puts_it_in_the_past_has_it_leave_now() -> None:
    newest = replace(FORECAST, fill_day=14.0, id=2)

    assert reminded(now="2027-06-14 12:00", standing=waiting(plan()), forecast=newest)["fill_due"] == "2027-06-14 12:00"


def test_what_was_withheld_and_may_go_again_is_planned_from_now() -> None:
    standing = waiting(plan(client=replace(REMINDED, on_hold=True)))

    assert reminded(now="2027-06-18 19:30", standing=standing)["fill_due"] == "2027-06-19 09:00"


def test_at_the_claim_it_keeps_its_distance_too() -> None:
    [fill] = only(plan(visit(5, "lift", "missed", "2027-06-15 11:00")), *FILL[1:])

    assert timing.may_go(fill, REMINDED, DEFAULTS, utc("2027-06-17 10:59")) == utc("2027-06-17 11:00")
    assert timing.may_go(fill, REMINDED, DEFAULTS, utc("2027-06-17 11:00")) == utc("2027-06-17 11:00")


def test_when_they_fall_due_is_said_with_the_owners_numbers() -> None:
    rules = Rules(lead_days=1, at=630, full_set_level=0.35)

    assert timing.explain(Occasion.FILL_DUE, 0, rules) == "10:30, 1 day before her set is forecast to need a fill"
    assert "10:30 on the day" in timing.explain(Occasion.FULL_SET_DUE, 0, rules)
    assert timing.explain(Occasion.FULL_SET_DUE, 0, rules).endswith("down to 35%")


@pytest.mark.parametrize(("days", "day"), [(0.0, 1), (13.0, 14), (13.99, 14)])
def test_the_date_of_a_forecast_is_the_one_in_whose_course_it_falls(days: float, day: int) -> None:
    assert reminders.day_of(date(2027, 6, 1), days) == date(2027, 6, day)


def test_a_set_that_lasts_for_ever_has_a_date() -> None:
    assert reminders.day_of(date(2027, 6, 1), float("inf")).year == 2037


def offered(today: str, **changed: float) -> tuple[date, date] | None:
    forecast = replace(FORECAST, **changed)  # type: ignore[arg-type]
    return reminders.window(date(2027, 6, 1), forecast, DEFAULTS, date.fromisoformat(today))


def test_the_days_offered_are_ten_at_most_from_shortly_before_the_fills_day() -> None:
    assert offered("2027-06-16") == (date(2027, 6, 21), date(2027, 6, 30))  # day 19.4 is a Sunday: from Monday on


def test_the_days_offered_end_before_the_full_sets_day_and_begin_tomorrow_at_the_soonest() -> None:
    assert offered("2027-06-28") == (date(2027, 6, 29), date(2027, 7, 6))  # at most ten, but day 36 is 7 July
    assert offered("2027-06-16", full_set_day=27.0) == (date(2027, 6, 21), date(2027, 6, 26))  # not on Sunday the 27th


def days_offered(*, closed: tuple[int, ...] = (), away: tuple[Away, ...] = ()) -> tuple[int, int] | None:
    """The days of June and July that are offered, 1 July as 31, where nothing else is in the way: 21 to 30."""
    hours = replace(DEFAULTS.reminder_hours, days_off=frozenset(june(day) for day in closed))
    rules = replace(DEFAULTS, reminder_hours=hours)
    found = reminders.window(date(2027, 6, 1), FORECAST, rules, june(16), away)
    return ((found[0] - june(1)).days + 1, (found[1] - june(1)).days + 1) if found else None


def june(day: int) -> date:
    return date(2027, 6, 1) + timedelta(days=day - 1)


@pytest.mark.parametrize(
    ("closed", "expected"),
    [
        ((), (21, 30)),
        ((21, 22), (23, 32)),  # Monday and Tuesday: from Wednesday on, ten days
        ((30,), (21, 29)),
        ((24, 25), (21, 30)),  # two days amid the others do no harm
        ((22, 23, 24), (25, 33)),  # after one day three shut ones: what lies behind them is more
        ((24, 25, 26), (21, 23)),  # with the Sunday four: "between the 21st and the 30th" would not be true
        (tuple(range(17, 40)), None),
    ],
)
def test_no_closing_day_is_offered_and_no_span_that_is_mostly_shut(
    closed: tuple[int, ...], expected: tuple[int, int] | None
) -> None:
    assert days_offered(closed=closed) == expected


def test_no_day_is_offered_on_which_her_artist_is_away() -> None:
    assert days_offered(away=(Away(june(18), june(23)),)) == (24, 33)
    assert days_offered(away=(Away(june(28), june(40)),)) == (21, 26)
    assert days_offered(away=(Away(june(1), june(60)),)) is None  # then it is to be soon


def test_days_on_which_somebody_covers_for_her_are_offered_only_where_too_few_others_are() -> None:
    assert days_offered(away=(Away(june(18), june(23), covered=True),)) == (24, 33)
    assert days_offered(away=(Away(june(1), june(60), covered=True),)) == (21, 30)
    assert days_offered(away=(Away(june(1), june(60), covered=True), Away(june(1), june(60)))) is None


@given(
    closed=st.frozensets(st.integers(15, 45), max_size=12),
    spans=st.lists(st.tuples(st.integers(10, 45), st.integers(0, 12), st.booleans()), max_size=3),
)
def test_whatever_is_offered_begins_and_ends_on_a_day_on_which_she_can_come(
    closed: frozenset[int], spans: list[tuple[int, int, bool]]
) -> None:
    away = tuple(Away(june(first), june(first + more), covered) for first, more, covered in spans)
    found = days_offered(closed=tuple(closed), away=away)

    if found is not None:
        assert found[0] < found[1] < found[0] + 10
        for day in found:
            assert day not in closed
            assert june(day).weekday() != 6
            assert not any(one.first <= june(day) <= one.last for one in away if not one.covered)


@pytest.mark.parametrize("today", ["2027-07-05", "2027-07-06", "2027-09-01"])
def test_where_hardly_a_day_is_left_none_are_named(today: str) -> None:
    assert offered(today) is None
