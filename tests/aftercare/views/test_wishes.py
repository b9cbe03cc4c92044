"""What clients ask about their bookings: on the front desk's list, with no word on health."""

from __future__ import annotations

import pytest
from django.test import Client as Browser

from aftercare import links, receiving, triage
from aftercare.lines import lines_of
from aftercare.links import Purpose
from aftercare.models import Flag, Reply, Wish
from tests.cast import Cast
from tests.pages import SignIn, words


def wrote(cast: Cast, name: str, text: str) -> Reply:
    """Have a client of Ada's write; it is read."""
    if name not in cast.clients:
        cast.done(cast.client(name, "Quist"), cast.at(9, -3))
        cast.visit(cast.clients[name], cast.at(12, 2))
    line = lines_of(cast.studio)["sms"]
    reply = receiving.receive(line, cast.clients[name].mobile, text, received_at=cast.at(7))
    triage.read(reply.pk, cast.at(7))
    return reply


def test_the_front_desk_sees_what_is_asked_and_what_is_booked(cast: Cast, as_: SignIn) -> None:
    wrote(cast, "Bea", "could we move Friday to Saturday?")

    page = words(as_(cast.dee).get("/morning"))

    assert "About bookings" in page
    assert "could we move Friday to Saturday?" in page
    assert "Booked:" in page
    assert "Call Bea" in page
    assert "Bea Quist" not in words(as_(cast.ada).get("/morning"))
    assert "could we move Friday" in words(as_(cast.olga).get("/morning"))


def test_it_reads_no_word_on_health(cast: Cast, as_: SignIn) -> None:
    wrote(cast, "Mia", "my left lid is so itchy, can we move my fill?")

    page = words(as_(cast.dee).get("/morning"))

    assert "Mia Quist About a booking She also wrote about something for her artist: ask her." in page
    assert not [word for word in ("itchy", "lid", "itching") if word in page]
    assert "To her artist" not in page  # it is there already
    assert "itchy" in words(as_(cast.ada).get("/morning"))


@pytest.mark.parametrize(
    ("text", "word"),
    [
        ("I'm pregnant, can I move my visit to next month?", "pregnant"),
        ("need to cancel tomorrow, starting chemo", "chemo"),
        ("cancel please, had eye surgery yesterday", "surgery"),
        ("Could I book for next week? my allergies are bad now", "allergies"),
        ("puedo mover la cita, estoy embarazada", "embarazada"),
    ],
)
def test_nor_one_on_how_she_is_otherwise_which_her_artist_is_told(
    text: str, word: str, cast: Cast, as_: SignIn
) -> None:
    wrote(cast, "Mia", text)

    page = words(as_(cast.dee).get("/morning"))

    assert "Mia Quist About a booking She also wrote about something for her artist: ask her." in page
    assert word not in page
    assert word in words(as_(cast.ada).get("/morning"))


@pytest.mark.parametrize("text", ["I'm sick, can we move Friday?", "doctor's appointment at 3, can I come at 5?"])
def test_what_people_say_when_they_do_not_come_stays_a_wish(text: str, cast: Cast, as_: SignIn) -> None:
    wrote(cast, "Mia", text)

    assert text.replace("'", "&#x27;") in as_(cast.dee).get("/morning").content.decode()
    assert not Flag.objects.exists()


def test_what_was_seen_to_leaves_the_list_one_or_several_at_once(cast: Cast, as_: SignIn) -> None:
    for name in ("Bea", "Cleo", "Fay"):
        wrote(cast, name, "running 10 min late, sorry")
    bea, cleo, _fay = Wish.objects.order_by("pk")
    desk = as_(cast.dee)

    page = words(desk.post("/wishes/seen-to", {"wish": [bea.pk, cleo.pk]}, follow=True))

    assert "2 seen to." in page
    assert "Fay Quist" in page
    assert "Bea Quist" not in page
    bea.refresh_from_db()
    assert bea.seen_to_by == cast.dee
    assert "Tick at least one." in words(desk.post("/wishes/seen-to", {}, follow=True))


def test_the_desk_gives_her_artist_what_is_more_than_a_wish(cast: Cast, as_: SignIn) -> None:
    reply = wrote(cast, "Bea", "could we move Friday to Saturday?")

    as_(cast.dee).post(f"/wishes/{Wish.objects.get().pk}/hand-over")

    flag = Flag.objects.get()
    assert (flag.urgency, list(flag.clients.all()), list(flag.replies.all())) == (
        "unread",
        [cast.clients["Bea"]],
        [reply],
    )
    assert Wish.objects.get().seen_to_by == cast.dee
    assert "Bea Quist" in words(as_(cast.ada).get("/morning"))


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("CANCEL", "Wrote CANCEL: all texts to her have ended, and she may have meant the visit. Call her."),
        ("wrong number, sorry", "Says she is not the person meant: nothing more goes to this number."),
    ],
)
def test_a_cancel_and_a_wrong_number_are_told_to_the_desk(cast: Cast, as_: SignIn, text: str, said: str) -> None:
    wrote(cast, "Bea", text)

    assert said in words(as_(cast.dee).get("/morning"))


def test_it_is_not_an_artists_to_see_to_nor_another_studios(cast: Cast, as_: SignIn) -> None:
    wrote(cast, "Bea", "could we move Friday to Saturday?")
    wish = Wish.objects.get()

    assert as_(cast.ada).post("/wishes/seen-to", {"wish": [wish.pk]}).status_code == 403
    assert as_(cast.ada).post(f"/wishes/{wish.pk}/hand-over").status_code == 403
    wish.refresh_from_db()
    assert wish.seen_to_at is None


def test_what_was_not_understood_beside_a_wish_for_another_day_is_not_read_at_the_desk(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia", "Quist")
    visit = cast.visit(her, cast.at(12, 2))
    words_of_hers = "meu olho esquerdo arde muito e a pálpebra inchou"  # Portuguese: no reader of it here

    Browser().post(f"/v/{links.token(Purpose.VISIT, visit)}", {"do": "move", "words": words_of_hers})

    page = words(as_(cast.dee).get("/morning"))
    assert "Asks for another day She also wrote about something for her artist: ask her." in page
    assert "olho" not in page
    assert "olho" in words(as_(cast.olga).get("/morning"))  # it is a matter, too
