"""What stands on the morning list, and whose it is."""

from __future__ import annotations

from datetime import timedelta

import pytest

from aftercare.models import Flag, Reply
from aftercare.pages import morning
from tests.cast import Cast, full_morning, make


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def test_a_matter_knows_the_visit_before_her_words_and_how_long_before(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(10, -9))
    before = cast.done(her, cast.at(10, -1))
    after = cast.visit(her, cast.at(12, 3))
    cast.wrote(her, "it itches", cast.at(5.25))

    (matter,) = morning.morning_list(cast.studio, cast.now).matters

    assert matter.last_visit == before
    assert matter.since_visit == timedelta(hours=18)
    assert matter.next_visit == after
    assert (matter.last_test, matter.last_test_read) == (None, "")


def test_words_from_the_chair_are_never_before_the_visit_s_end(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(6))
    cast.wrote(her, "it stings", cast.at(6.5))

    assert morning.morning_list(cast.studio, cast.now).matters[0].since_visit == timedelta()


def test_she_is_the_client_of_the_artist_of_her_latest_visit(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(10, -9), artist=cast.ada)
    cast.done(her, cast.at(10, -2), artist=cast.noor)
    cast.visit(her, cast.at(10, 9), artist=cast.ada)
    cast.wrote(her, "hello", cast.at(6))
    found = morning.morning_list(cast.studio, cast.now)

    assert len(found.of(cast.noor, nobodys=False).matters) == 1
    assert len(found.of(cast.ada, nobodys=False).matters) == 0
    assert found.artists == [cast.noor]


def test_one_who_never_came_is_the_client_of_the_artist_whom_she_booked(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.visit(her, cast.at(10, 9), artist=cast.noor)
    cast.wrote(her, "hello", cast.at(6))

    assert morning.morning_list(cast.studio, cast.now).artists == [cast.noor]


def test_what_several_may_have_written_stands_on_each_artist_s_list(cast: Cast) -> None:
    mia, twin = cast.client("Mia"), cast.client("Twin")
    cast.done(mia, cast.at(10, -9), artist=cast.ada)
    cast.done(twin, cast.at(10, -9), artist=cast.noor)
    cast.wrote(mia, "which of us?", cast.at(6)).clients.add(twin)
    found = morning.morning_list(cast.studio, cast.now)

    assert [len(found.of(staff, nobodys=False)) for staff in (cast.ada, cast.noor)] == [1, 1]
    assert found.matters[0].book is None


def test_whoever_was_told_of_a_call_can_be_called(cast: Cast) -> None:
    mia, twin, ida = cast.client("Mia"), cast.client("Twin"), cast.client("Ida", mobile="")
    cast.wrote(mia, "it pokes", cast.at(6))
    cast.wrote(mia, "it pokes us", cast.at(6.2)).clients.add(twin)
    by_mail = cast.wrote(mia, "both of us itch", cast.at(6.4))
    by_mail.clients.add(twin, ida)
    by_mail.replies.update(from_address="+both@home.example")
    nobody = cast.wrote(mia, "who is this", cast.at(6.6))
    nobody.clients.clear()
    found = {one.flag.pk: one.calls for one in morning.morning_list(cast.studio, cast.now).matters}

    assert sorted(found.values()) == sorted(
        [
            [("Mia", mia.mobile)],
            [("", mia.mobile)],
            [("Mia", mia.mobile), ("Twin", twin.mobile)],
            [("", mia.mobile)],
        ]
    )
    assert found[by_mail.pk] == [("Mia", mia.mobile), ("Twin", twin.mobile)]


def test_what_is_nobody_s_is_never_lost(cast: Cast) -> None:
    Flag.objects.create(studio=cast.studio, opened_at=cast.at(6), urgent_since=cast.at(6))
    cast.visit(cast.client("Mia"), cast.at(12, -1), artist=None)
    found = morning.morning_list(cast.studio, cast.now)

    assert len(found.of(cast.olga, nobodys=True)) == 2
    assert len(found.of(cast.olga, nobodys=False)) == 0


def test_a_closed_matter_and_another_studio_s_are_not_on_it(cast: Cast) -> None:
    full_morning(make("larkhill", "Larkhill Lashes"))
    Flag.objects.filter(pk=cast.wrote(cast.client("Mia"), "hello", cast.at(6)).pk).update(state="closed")

    found = morning.morning_list(cast.studio, cast.now)

    assert len(found) == 0
    assert found.as_of.reply == cast.at(6)


def test_what_she_was_answered_is_told_apart_from_what_was_planned_before(cast: Cast) -> None:
    her = cast.client("Mia")
    done = cast.done(her, cast.at(10, -1))
    cast.gone(her, done, "care", cast.at(4))
    cast.wrote(her, "it burns", cast.at(5))
    answer = cast.gone(her, None, "answer", cast.at(5.1))
    check = cast.gone(her, done, "check", cast.at(6))

    (matter,) = morning.morning_list(cast.studio, cast.now).matters

    assert matter.answered == [answer]
    assert matter.sent_since == [check]


def test_what_went_before_she_wrote_again_was_not_sent_since(cast: Cast) -> None:
    her = cast.client("Mia")
    done = cast.done(her, cast.at(10, -1))
    flag = cast.wrote(her, "it itches", cast.at(5))
    cast.gone(her, done, "check", cast.at(5.5))
    again = cast.wrote(her, "it burns", cast.at(6))
    Reply.objects.filter(flag=again).update(flag=flag)
    again.delete()

    (matter,) = morning.morning_list(cast.studio, cast.now).matters

    assert matter.sent_since == []


def test_an_answer_to_a_number_that_nobody_known_has_is_shown_with_its_matter(cast: Cast) -> None:
    cast.wrote(cast.client("Mia"), "it burns", cast.at(5))
    flag = cast.wrote(cast.client("Nobody", mobile="+12125550190"), "who is this?", cast.at(5))
    flag.clients.clear()
    answer = cast.gone(cast.clients["Nobody"], None, "answer", cast.at(5.1))
    answer.client = None
    answer.save()

    found = {matter.flag.pk: matter for matter in morning.morning_list(cast.studio, cast.now).matters}

    assert found.pop(flag.pk).answered == [answer]
    assert [matter.answered for matter in found.values()] == [[]]
