"""What was just done is undone by one tap on the button beside the words that say so."""

from __future__ import annotations

import html
import re
from typing import Any

import pytest
from django.test import Client as Browser

from aftercare import matters
from aftercare.core.delivery import State
from aftercare.models import Flag, Message, Reply, Wish
from studio import records
from studio.models import Absence, Client, ClosingDay, ServiceName, Visit
from tests.cast import Cast
from tests.pages import SignIn, words


def undo(browser: Browser, response: Any) -> Any:
    """Tap Undo: post what the button beside the words would."""
    notes = response.content.decode().partition('class="notes"')[2].partition("</div>")[0]
    path = re.search(r'<form method="post" action="([^"]+)"', notes)
    assert path, f"no way back: {words(response)[:200]}"
    fields: dict[str, list[str]] = {}
    for name, value in re.findall(r'<input type="hidden" name="(\w+)" value="([^"]*)"', notes):
        fields.setdefault(name, []).append(html.unescape(value))
    return browser.post(path[1], fields, follow=True)


def test_words_without_a_way_back_have_no_button(cast: Cast, as_: SignIn) -> None:
    response = as_(cast.olga).post("/settings/closing-days", {"date": "2027-12-25", "name": ""}, follow=True)

    assert "Added." in words(response)
    assert "Undo" not in words(response)


def test_having_a_matter_is_given_back(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia")
    cast.done(mia, cast.at(10, -1))
    flag = cast.wrote(mia, "itchy", cast.at(6), urgency="same_day")
    browser = as_(cast.ada)

    undone = undo(browser, browser.post(f"/flags/{flag.pk}/take", follow=True))

    assert "Given back" in words(undone)
    flag.refresh_from_db()
    assert (flag.state, flag.taken_by, flag.taken_at) == (Flag.State.OPEN, None, None)


def test_nobody_gives_back_what_a_colleague_has_by_now(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia")
    cast.done(mia, cast.at(10, -1))
    flag = cast.wrote(mia, "itchy", cast.at(6), urgency="same_day")
    browser = as_(cast.ada)
    taken = browser.post(f"/flags/{flag.pk}/take", follow=True)
    matters.take(flag, by=cast.olga, now=cast.now)

    undone = undo(browser, taken)

    assert "Someone was quicker" in words(undone)
    flag.refresh_from_db()
    assert flag.taken_by == cast.olga


def test_closing_is_undone(cast: Cast, as_: SignIn) -> None:
    flag = cast.wrote(cast.client("Mia"), "may I use mascara?", cast.at(6))
    browser = as_(cast.olga)

    closed = browser.post(f"/flags/{flag.pk}/close", {"outcome": "answered", "words": "Told her."}, follow=True)
    undo(browser, closed)

    flag.refresh_from_db()
    assert flag.state == Flag.State.OPEN
    assert flag.words == "Told her."


def test_closing_that_put_something_on_her_record_is_not_undone_by_a_tap(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia")
    cast.done(mia, cast.at(10, -1))
    flag = cast.wrote(mia, "itchy", cast.at(6), urgency="same_day")

    closed = as_(cast.ada).post(
        f"/flags/{flag.pk}/close", {"outcome": "removed", "words": "Lashes off.", "on_record": ""}, follow=True
    )

    flag.refresh_from_db()
    assert flag.state == Flag.State.CLOSED
    assert "Undo" not in words(closed)


def test_closing_several_is_undone(cast: Cast, as_: SignIn) -> None:
    flags = [cast.wrote(cast.client(name), "thank you", cast.at(6), urgency="none") for name in ("Mia", "Bea")]
    Reply.objects.update(reading={"about": ["fine"]})
    browser = as_(cast.olga)
    chosen = [flag.pk for flag in flags]

    undo(browser, browser.post("/flags/close", {"flag": chosen, "outcome": "noted"}, follow=True))

    assert set(Flag.objects.values_list("state", flat=True)) == {Flag.State.OPEN}


@pytest.mark.parametrize("mark", ["done", "missed", "cancel"])
def test_a_mark_is_taken_back(mark: str, cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia")
    visit = cast.visit(mia, cast.at(5), "removal")
    browser = as_(cast.ada)

    undone = undo(browser, browser.post(f"/visits/{visit.pk}/{mark}", {"share": "not looked"}, follow=True))

    assert "booked again" in words(undone)
    visit.refresh_from_db()
    assert visit.status == Visit.Status.BOOKED


def test_the_front_desk_takes_back_what_it_marked_but_not_that_a_visit_was_done(cast: Cast, as_: SignIn) -> None:
    visit = cast.visit(cast.client("Mia"), cast.at(5))
    browser = as_(cast.dee)
    undo(browser, browser.post(f"/visits/{visit.pk}/missed", follow=True))
    visit.refresh_from_db()
    assert visit.status == Visit.Status.BOOKED
    records.mark_done(visit=visit, by=cast.ada, now=cast.now)

    assert browser.post(f"/visits/{visit.pk}/unmark").status_code == 403


def test_correcting_a_done_visit_has_no_way_back_to_booked(cast: Cast, as_: SignIn) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(5), "removal")

    saved = as_(cast.ada).post(f"/visits/{visit.pk}/done", {"share": "not looked", "style": "natural"}, follow=True)

    assert "Saved." in words(saved)
    assert "Undo" not in words(saved)


def test_a_lost_message_comes_back_to_the_list(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia")
    lost = cast.gone(mia, cast.done(mia, cast.at(10, -1)), "care", cast.at(5), state=State.UNDELIVERED)
    browser = as_(cast.ada)

    undo(browser, browser.post(f"/messages/{lost.pk}/seen-to", follow=True))

    assert Message.objects.get(pk=lost.pk).seen_to_at is None


def test_that_she_left_unhappy_comes_back_to_the_list(cast: Cast, as_: SignIn) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(10, -1), mirror_check="unhappy")
    browser = as_(cast.ada)

    undo(browser, browser.post(f"/visits/{visit.pk}/unhappy/seen-to", follow=True))

    visit.refresh_from_db()
    assert (visit.unhappy_seen_to_at, visit.unhappy_seen_to_by) == (None, None)


def test_wishes_come_back_to_the_front_desk_s_list(cast: Cast, as_: SignIn) -> None:
    for name in ("Mia", "Bea"):
        flag = cast.wrote(cast.client(name), "could we move Friday?", cast.at(6))
        Wish.objects.create(studio=cast.studio, reply=flag.replies.get(), kind="booking", at=cast.at(6))
    browser = as_(cast.dee)
    chosen = list(Wish.objects.values_list("pk", flat=True))

    undo(browser, browser.post("/wishes/seen-to", {"wish": chosen}, follow=True))

    assert not Wish.objects.exclude(seen_to_at=None).exists()


def test_a_pause_is_taken_back_to_what_it_was(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia")
    first, later = cast.at(12, 5).date(), cast.at(12, 9).date()
    browser, path = as_(cast.olga), f"/clients/{mia.pk}/pause"

    undo(browser, browser.post(path, {"until": first}, follow=True))
    mia.refresh_from_db()
    assert mia.paused_until is None
    browser.post(path, {"until": first}, follow=True)
    undo(browser, browser.post(path, {"until": later}, follow=True))
    mia.refresh_from_db()
    assert mia.paused_until == first
    undo(browser, browser.post(path, {"resume": 1}, follow=True))
    mia.refresh_from_db()
    assert mia.paused_until == first


def test_one_declined_too_many_is_taken_back(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia", earlier_declined=1)
    browser = as_(cast.olga)

    undo(browser, browser.post(f"/clients/{mia.pk}/declined", follow=True))

    mia.refresh_from_db()
    assert mia.earlier_declined == 1


def test_a_merge_is_undone(cast: Cast, as_: SignIn) -> None:
    mia, twin = cast.client("Mia"), cast.client("Mia", "Okafor")
    browser = as_(cast.olga)

    undo(browser, browser.post(f"/clients/{mia.pk}/merge", {"other": twin.pk}, follow=True))

    assert Client.objects.standing().filter(first_name="Mia").count() == 2


def test_what_was_taken_off_a_list_of_settings_is_put_back(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)
    day = ClosingDay.objects.create(studio=cast.studio, date=cast.at(12, 30).date(), name="Holiday & rest")
    name = ServiceName.objects.create(studio=cast.studio, name="hybrid top-up", kind="fill")
    away = Absence.objects.create(
        staff=cast.ada, cover=cast.noor, first_day=cast.at(12, 3).date(), last_day=cast.at(12, 5).date()
    )

    for path in (f"closing-days/{day.pk}", f"service-names/{name.pk}", f"absences/{away.pk}"):
        undo(browser, browser.post(f"/settings/{path}/remove", follow=True))

    assert ClosingDay.objects.get().name == "Holiday & rest"
    assert (ServiceName.objects.get().name, ServiceName.objects.get().kind) == ("hybrid top-up", "fill")
    assert Absence.objects.get().cover == cast.noor
