"""The pretend phone: only while nobody outside is reached."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from aftercare import tasks, trials
from aftercare.models import Flag, Message, Reply, Stop
from aftercare.wording import Words
from tests.cast import Cast
from tests.pages import SignIn, words


@pytest.fixture
def handed_over(cast: Cast) -> Message:
    """What Mia's phone shows: her aftercare of last night."""
    mia = cast.client("Mia")
    visit = cast.done(mia, cast.at(16, -1))
    return cast.gone(mia, visit, "care", cast.at(18, -1), text="Keep them dry.", state="handed_over", rehearsed=True)


def test_the_phones_that_have_something_on_them_are_listed(handed_over: Message, cast: Cast, as_: SignIn) -> None:
    cast.client("Zoe")

    page = words(as_(cast.olga).get("/phone"))

    assert "Mia" in page
    assert "Zoe" not in page


def test_an_answer_from_it_is_stored_and_stands_on_the_morning_list(
    handed_over: Message, cast: Cast, as_: SignIn
) -> None:
    mia, browser = cast.clients["Mia"], as_(cast.ada)
    assert "Keep them dry." in words(browser.get(f"/phone/{mia.pk}"))

    page = words(browser.post(f"/phone/{mia.pk}", {"text": "my eye burns", "channel": "sms"}, follow=True))

    reply = Reply.objects.get()
    assert (reply.client, reply.text, reply.answers) == (mia, "my eye burns", handed_over)
    assert "my eye burns" in page
    assert "my eye burns" in words(browser.get("/morning"))


def test_stop_from_it_stops_and_its_confirmation_arrives_there(handed_over: Message, cast: Cast, as_: SignIn) -> None:
    mia, browser = cast.clients["Mia"], as_(cast.ada)

    browser.post(f"/phone/{mia.pk}", {"text": "STOP", "channel": "sms"})
    tasks.send_due(now=cast.now + timedelta(seconds=30))  # due when it came in, by the database’s clock

    assert Stop.objects.get().address == mia.mobile
    assert "answer, by text" in words(browser.get(f"/phone/{mia.pk}"))
    assert not Flag.objects.exists()


@pytest.mark.parametrize("said", [{"text": "", "channel": "sms"}, {"text": "hello", "channel": "pigeon"}, {}])
def test_what_cannot_be_sent_changes_nothing(
    said: dict[str, str], handed_over: Message, cast: Cast, as_: SignIn
) -> None:
    page = as_(cast.ada).post(f"/phone/{cast.clients['Mia'].pk}", said)

    assert page.status_code == 200
    assert not Reply.objects.exists()


def test_a_live_studio_has_no_pretend_phone(handed_over: Message, cast: Cast, as_: SignIn) -> None:
    cast.studio.live_since = cast.now
    cast.studio.save()
    browser, her = as_(cast.olga), cast.clients["Mia"]

    assert browser.get("/phone").status_code == 404
    assert browser.get(f"/phone/{her.pk}").status_code == 404
    assert browser.post(f"/phone/{her.pk}", {"text": "hello", "channel": "sms"}).status_code == 404
    assert "/phone" not in browser.get("/today").content.decode()
    assert not Reply.objects.exists()


def test_what_left_for_real_is_not_on_it(handed_over: Message, cast: Cast, as_: SignIn) -> None:
    cast.gone(cast.clients["Mia"], None, "answer", cast.at(6), text="Left for real.", rehearsed=False)

    assert "Left for real." not in words(as_(cast.olga).get(f"/phone/{cast.clients['Mia'].pk}"))


def test_others_do_not_read_what_she_writes(handed_over: Message, cast: Cast, as_: SignIn) -> None:
    her = cast.clients["Mia"]

    assert as_(cast.noor).get(f"/phone/{her.pk}").status_code == 404
    assert "Mia" not in words(as_(cast.dee).get("/phone"))


def test_the_front_desk_sees_no_phone_even_of_those_whose_visits_the_book_gives_to_her(
    handed_over: Message, cast: Cast, as_: SignIn
) -> None:
    """A book may name her as the artist, or she was one: her role decides."""
    her = cast.clients["Mia"]
    her.visits.update(artist=cast.dee)
    desk = as_(cast.dee)

    assert "Mia" not in words(desk.get("/phone"))
    assert desk.get(f"/phone/{her.pk}").status_code == 404


def test_many_phones_cost_no_more_queries(cast: Cast, as_: SignIn, django_assert_max_num_queries: Any) -> None:
    for number in range(50):
        her = cast.client(f"Client{number}", texts=False)
        cast.gone(her, None, "answer", cast.at(6), rehearsed=True)
    browser = as_(cast.olga)

    with django_assert_max_num_queries(7):
        assert "Page 1 of 2" in words(browser.get("/phone"))


def test_one_s_own_phone_shows_what_went_to_oneself_alone(cast: Cast, as_: SignIn) -> None:
    cast.ada.email = "ada@wrenfield.example"
    cast.ada.save()
    trials.send(Words("Your visit", "Rinse first.", "en"), "email", to=cast.ada, token="1", now=cast.now)
    tasks.send_due(now=cast.now)

    assert "Your own phone" in words(as_(cast.ada).get("/phone"))
    assert "Test: Your visit" in words(as_(cast.ada).get("/phone/own"))
    assert "Your own phone" not in words(as_(cast.olga).get("/phone"))
    assert "Nothing on it yet." in words(as_(cast.olga).get("/phone/own"))
