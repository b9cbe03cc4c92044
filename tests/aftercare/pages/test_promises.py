"""Promises not kept."""

from __future__ import annotations

from datetime import timedelta

import pytest

from aftercare import matters
from aftercare.core.delivery import State
from aftercare.core.timing import Occasion
from aftercare.pages import morning
from studio.models import Service, Visit
from tests.cast import Cast, make


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


def test_old_things_are_left_to_the_cards(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.visit(her, cast.at(9, -15))
    cast.done(her, cast.at(9, -4), mirror_check=Visit.MirrorCheck.UNHAPPY)

    assert kinds(cast) == []
