"""What a line of the day sheet holds."""

from __future__ import annotations

import pytest

from aftercare import facts
from aftercare.pages import sheet
from studio.access import May
from studio.models import Service, Visit
from tests.cast import Cast, make


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def line_of(cast: Cast, visit: Visit) -> sheet.Line:
    books = facts.load([visit.client_id], cast.now)
    return sheet.lines([(visit.pk, visit.client_id)], books, May(cast.olga), cast.now)[0]


# What to set out is common practice, no source.


@pytest.mark.parametrize(
    ("asked", "things"),
    [
        ({}, []),
        ({"new": True}, ["a wide choice of lengths and curls", "time for the consultation"]),
        ({"sensitive": True}, ["cream remover", "sensitive tape", "bonder"]),
        ({"oily_lids": True}, ["the stronger primer"]),
        ({"service": Service.REMOVAL, "sensitive": True, "new": True}, ["cream remover", "sensitive tape"]),
        ({"service": Service.PATCH_TEST, "oily_lids": True, "new": True}, []),
        (
            {"service": Service.CONSULTATION, "new": True},
            ["a wide choice of lengths and curls", "time for the consultation"],
        ),
    ],
)
def test_what_to_set_out_follows_from_her_and_from_the_service(asked: dict[str, object], things: list[str]) -> None:
    usual = {"service": Service.FILL, "new": False, "sensitive": False, "oily_lids": False}

    found = sheet.set_out(**{**usual, **asked})  # type: ignore[arg-type]  # names and types as above

    assert [thing.words for thing in found] == things


def test_whatever_is_set_out_for_a_health_note_is_marked_as_telling_of_it() -> None:
    found = sheet.set_out(service=Service.FULL_SET, new=True, sensitive=True, oily_lids=True)

    told = [thing.words for thing in found if not thing.health]
    assert told == ["a wide choice of lengths and curls", "time for the consultation"]


def test_a_client_is_new_until_a_set_is_done(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -9), Service.PATCH_TEST)
    first, second = cast.visit(her, cast.at(9), Service.FULL_SET), cast.visit(her, cast.at(9, 20))
    assert line_of(cast, first).is_new

    first.status = Visit.Status.DONE
    first.save()

    assert not line_of(cast, second).is_new


def test_the_last_set_is_the_newest_done_before_this_visit(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -40))
    newest = cast.done(her, cast.at(9, -20), lash_map="D 0.05")
    cast.visit(her, cast.at(9, -10), status=Visit.Status.MISSED)
    cast.done(her, cast.at(9, -3), Service.REMOVAL)
    line = line_of(cast, cast.visit(her, cast.at(12)))

    assert line.last_set == newest
    assert line.days_since == 20


def test_a_patch_test_that_is_due_stands_as_missing_with_its_reason(cast: Cast) -> None:
    her = cast.client("Mia", sensitive=True)

    test = line_of(cast, cast.visit(her, cast.at(12), Service.FULL_SET)).test

    assert test is not None
    assert (test.state, test.why) == ("missing", "sensitive, first visit")


@pytest.mark.parametrize(
    ("result", "state"),
    [
        ("", "not read"),
        ("not answered", "not read"),
        ("no sign reported", "no sign reported"),
        ("looked at", "looked at"),
    ],
)
def test_a_patch_test_shows_what_was_read_and_never_that_all_is_well(cast: Cast, result: str, state: str) -> None:
    her = cast.client("Mia", sensitive=True)
    done = cast.done(her, cast.at(9, -6), Service.PATCH_TEST, test_result=result)

    test = line_of(cast, cast.visit(her, cast.at(12), Service.FULL_SET)).test

    assert test is not None
    assert (test.state, test.at) == (state, done.starts_at)


def test_a_patch_test_over_180_days_old_is_not_shown_as_one_that_counts(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -181), Service.PATCH_TEST, test_result="no sign reported")
    assert line_of(cast, cast.visit(her, cast.at(12))).test is None

    assert line_of(cast, cast.visit(her, cast.at(13, -1))).test is not None


def test_only_an_unhappy_last_visit_is_remembered(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -40), mirror_check="unhappy")
    visit = cast.visit(her, cast.at(12))
    assert line_of(cast, visit).left_unhappy is not None

    cast.done(her, cast.at(9, -20), mirror_check="happy")

    assert line_of(cast, visit).left_unhappy is None


def test_instructions_that_arrived_count_before_those_still_to_go(cast: Cast) -> None:
    her = cast.client("Mia")
    visit = cast.visit(her, cast.at(12, 1), Service.FULL_SET)
    cast.plan()
    told = cast.gone(her, visit, "prepare", cast.at(10, -2))
    line = line_of(cast, visit)

    assert line.prepare == told
    assert line.prepare_due is not None
    assert line.prepare_due.step == 1


def test_she_wrote_since_her_last_visit_and_not_before(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -20))
    cast.wrote(her, "before", cast.at(8, -20))
    cast.wrote(her, "after", cast.at(8, -19))

    assert [reply.text for reply in line_of(cast, cast.visit(her, cast.at(12))).wrote] == ["after"]


def test_a_visit_near_midnight_belongs_to_the_studio_s_day(cast: Cast) -> None:
    today = cast.now.astimezone(cast.studio.zone).date()
    her = cast.client("Mia")
    late, next_day = cast.visit(her, cast.at(23.9)), cast.visit(her, cast.at(24))
    cast.visit(her, cast.at(12), status=Visit.Status.CANCELLED)

    assert sheet.visit_ids(cast.studio, today) == [(late.pk, her.pk)]
    assert next_day.pk not in dict(sheet.visit_ids(cast.studio, today))
