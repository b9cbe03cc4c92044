"""Promises not kept."""

from __future__ import annotations

from datetime import timedelta

import pytest

from aftercare import matters, stops
from aftercare.core.delivery import State
from aftercare.core.timing import Occasion
from aftercare.lines import lines_of
from aftercare.models import RuleSet
from aftercare.pages import morning
from studio.models import Client, Service, Visit
from tests.cast import Cast, make
from tests.forecasts import forecast


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def kinds(cast: Cast) -> list[str]:
    return [line.kind for line in morning.morning_list(cast.studio, cast.now).unkept]


@pytest.mark.parametrize(("hours", "kind"), [(71, ["no test"]), (73, [])])
def test_a_missing_patch_test_is_a_line_within_72_hours(hours: int, kind: list[str], cast: Cast) -> None:
    cast.visit(cast.client("Mia", sensitive=True), cast.now + timedelta(hours=hours), Service.FULL_SET)

    assert kinds(cast) == kind


@pytest.mark.parametrize(("minutes", "kind"), [(31, ["not marked"]), (29, [])])
def test_a_visit_that_nobody_marked_is_a_line_half_an_hour_after_its_end(
    minutes: int, kind: list[str], cast: Cast
) -> None:
    cast.visit(cast.client("Mia"), cast.now - timedelta(minutes=75 + minutes))

    assert kinds(cast) == kind


@pytest.mark.parametrize(
    ("result", "kind"), [("", ["not read"]), ("not answered", ["not read"]), ("no sign reported", []), ("sign", [])]
)
def test_a_test_that_was_not_read_is_a_line_on_the_day_of_the_set(result: str, kind: list[str], cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -5), Service.PATCH_TEST, test_result=result)
    cast.visit(her, cast.at(15), Service.FULL_SET)

    assert kinds(cast) == kind


def test_a_test_of_tomorrow_s_client_can_still_be_answered_today(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -5), Service.PATCH_TEST)
    cast.visit(her, cast.at(15, 1), Service.FULL_SET)

    assert kinds(cast) == []


@pytest.mark.parametrize("occasion", [Occasion.CARE, Occasion.CHECK, Occasion.PATCH_TEST, Occasion.ANSWER])
@pytest.mark.parametrize(("state", "kind"), [(State.UNDELIVERED, "not delivered"), (State.UNSURE, "unsure")])
def test_a_safety_message_that_failed_is_a_line(occasion: str, state: State, kind: str, cast: Cast) -> None:
    her = cast.client("Mia")
    visit = None if occasion == Occasion.ANSWER else cast.done(her, cast.at(9, -2))
    cast.gone(her, visit, occasion, cast.at(12, -1), state=state)

    assert kinds(cast) == [kind]


def test_a_reminder_or_instructions_that_failed_are_none(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.gone(her, cast.done(her, cast.at(9, -2)), "fill_due", cast.at(12, -1), state=State.UNDELIVERED)

    assert kinds(cast) == []


def test_a_safety_message_that_failed_stays_until_somebody_sees_to_it(cast: Cast) -> None:
    her = cast.client("Mia")
    lost = cast.gone(her, cast.done(her, cast.at(9, -90)), "care", cast.at(12, -90), state=State.UNDELIVERED)
    assert kinds(cast) == ["not delivered"]

    matters.see_to(lost, by=cast.dee, now=cast.now)

    assert kinds(cast) == []


def test_one_that_was_seen_to_and_fails_anew_is_a_line_again(cast: Cast) -> None:
    her = cast.client("Mia")
    done = cast.done(her, cast.at(9, -2))
    cast.gone(her, done, "care", cast.at(12, -1), state=State.UNDELIVERED, seen_to_at=cast.at(11, -1))

    assert kinds(cast) == ["not delivered"]


def test_one_that_was_seen_to_is_no_line_while_what_she_wrote_since_is_open(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.wrote(her, "red and sore", cast.at(9, -1), urgency="same_day")
    done = cast.done(her, cast.at(9, -2))
    cast.gone(her, done, "care", cast.at(12, -1), state=State.UNDELIVERED, seen_to_at=cast.at(13, -1))

    assert kinds(cast) == []


def test_nothing_leaves_the_list_by_growing_old(cast: Cast) -> None:
    cast.visit(cast.client("Mia"), cast.at(9, -90))
    cast.done(cast.client("Zoe"), cast.at(9, -90), mirror_check=Visit.MirrorCheck.UNHAPPY)

    assert kinds(cast) == ["not marked", "unhappy"]


@pytest.mark.parametrize(("day", "kind"), [(9.9, ["early"]), (10, [])])
def test_a_set_that_fails_before_the_tenth_day_is_a_line_for_its_artist(
    day: float, kind: list[str], cast: Cast
) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -2), artist=cast.noor)
    forecast(visit, cast.at(10, -2), fill_day=day)

    assert kinds(cast) == kind
    assert {line.artist for line in morning.morning_list(cast.studio, cast.now).unkept} <= {cast.noor}


def test_what_is_early_is_the_owner_s_to_say(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -2))
    forecast(visit, cast.at(10, -2), fill_day=11)
    RuleSet.objects.create(studio=cast.studio, version=1, at=cast.now, values={"early_days": 8})
    RuleSet.objects.create(studio=cast.studio, version=2, at=cast.now, values={"early_days": 12})
    assert kinds(cast) == ["early"]

    RuleSet.objects.create(studio=cast.studio, version=3, at=cast.now, values={"lead_days": 5})

    assert kinds(cast) == []


def test_the_line_says_on_which_day(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -2))
    forecast(visit, cast.at(10, -2), fill_day=8.7)

    [line] = morning.morning_list(cast.studio, cast.now).unkept

    assert (line.days, line.fill_on) == (8, cast.at(9, 6).astimezone(cast.studio.zone).date())


def test_it_is_the_newest_forecast_that_counts(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -2))
    forecast(visit, cast.at(10, -2), fill_day=8)
    forecast(visit, cast.at(10, -1), fill_day=15)

    assert kinds(cast) == []


@pytest.mark.parametrize("service", [Service.FILL, Service.REMOVAL])
def test_a_set_that_is_no_longer_on_is_no_line(service: str, cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -9))
    forecast(visit, cast.at(10, -9), fill_day=8)
    assert kinds(cast) == ["early"]

    cast.done(visit.client, cast.at(9, -1), service)

    assert kinds(cast) == []


def test_an_early_set_that_somebody_looked_into_is_no_line_whatever_is_forecast_of_it_later(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -2))
    forecast(visit, cast.at(10, -2), fill_day=8)

    matters.see_to_early(visit, by=cast.ada, now=cast.now)
    assert kinds(cast) == []
    forecast(visit, cast.now, fill_day=7)

    assert kinds(cast) == []


def test_an_early_set_stays_for_two_weeks(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -15))
    forecast(visit, cast.at(10, -15), fill_day=8)

    assert kinds(cast) == []


def test_another_studio_s_early_sets_are_not_shown(cast: Cast) -> None:
    strange = make("larkhill", "Larkhill Lashes")
    forecast(strange.done(strange.client("Zoe"), strange.at(9, -2)), strange.at(10, -2), fill_day=8)

    assert kinds(cast) == []


def test_an_address_that_nobody_has_is_a_line_until_somebody_sees_to_it(cast: Cast) -> None:
    her = cast.client("Mia", email="Mia@mail.example")
    stops.rest(lines_of(cast.studio)["email"], "mia@mail.example", now=cast.now)
    assert kinds(cast) == ["no address"]

    matters.see_to_address(her, by=cast.dee, now=cast.now)
    assert kinds(cast) == []

    matters.unsee_address(her)
    assert kinds(cast) == ["no address"]


def test_another_address_on_her_card_takes_her_off_the_list(cast: Cast) -> None:
    her = cast.client("Mia", email="mia@mail.example")
    stops.rest(lines_of(cast.studio)["email"], "mia@mail.example", now=cast.now)

    Client.objects.filter(pk=her.pk).update(email="mia@new.example")

    assert kinds(cast) == []


def test_an_address_that_said_stop_is_no_line(cast: Cast) -> None:
    cast.client("Mia", email="mia@mail.example")
    stops.unsubscribe(lines_of(cast.studio)["email"], "mia@mail.example", now=cast.now)

    assert kinds(cast) == []
