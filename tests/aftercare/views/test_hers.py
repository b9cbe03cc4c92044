"""Her own page about a visit: an eye in trouble is heard, nothing she types is lost, and it is hers alone."""

from __future__ import annotations

import re
from datetime import datetime, timedelta
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.db import DatabaseError
from django.test import Client as Browser

from aftercare import erasing, facts, links, receiving, sending, stops, triage, upkeep
from aftercare.core.reading import Urgency
from aftercare.core.ticks import SENTENCES, Tick
from aftercare.forms.hers import LONGEST_WORDS
from aftercare.lines import lines_of
from aftercare.links import Purpose
from aftercare.models import Attachment, Flag, Message, Reply, Revocation, Stop, Wish
from aftercare.pages.hers import HerPage
from aftercare.transports.base import storable
from aftercare.views import her_words
from aftercare.wording import WordingError, Words
from studio import catalogue, clock
from studio.models import Client, Consent, Studio, Visit
from tests.aftercare.test_pictures import photo
from tests.pages import words
from tests.people import make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db
NUMBER = "+12125550101"
FORM = "a" * 16


@pytest.fixture
def studio() -> Studio:
    return make_studio(phone="+1 212 555 0199", live_since=clock.now(), address="4 Birch Lane")


@pytest.fixture
def mia(studio: Studio) -> Client:
    her = make_client(studio, mobile=NUMBER, email="mia@mail.example")
    Consent.objects.create(client=her, channel="sms", purpose="visits", given=True, at=clock.now(), how="on paper")
    return her


@pytest.fixture
def done(mia: Client) -> Visit:
    return make_visit(mia, status="done", starts_at=clock.now() - timedelta(days=2))


@pytest.fixture
def booked(mia: Client) -> Visit:
    now = clock.now()
    return make_visit(mia, starts_at=now + timedelta(days=5), heard_at=now - timedelta(days=20))


@pytest.fixture
def browser() -> Browser:
    """One that has no cookie, and whose posts would be refused wherever a token against forged ones is asked for."""
    return Browser(enforce_csrf_checks=True)


def way(visit: Visit) -> str:
    return f"/v/{links.token(Purpose.VISIT, visit)}"


def tell(browser: Browser, visit: Visit, **sent: Any) -> Any:
    return browser.post(way(visit), {"do": "eyes", "form": FORM, **sent})


# What it is


def test_it_opens_without_a_sign_in_and_sets_no_cookie(browser: Browser, done: Visit) -> None:
    page = browser.get(way(done))

    assert page.status_code == 200
    assert not page.cookies
    assert "How are your eyes?" in words(page)


def test_it_is_kept_nowhere_named_to_nobody_and_runs_nothing(browser: Browser, done: Visit) -> None:
    headers = browser.get(way(done)).headers

    assert headers["Referrer-Policy"] == "no-referrer"
    assert headers["X-Robots-Tag"].startswith("noindex")
    assert "no-store" in headers["Cache-Control"]
    policy = headers["Content-Security-Policy"]
    assert "default-src 'none'" in policy
    assert "script-src 'none'" in policy
    assert "unsafe" not in policy


def test_opening_it_changes_nothing(browser: Browser, booked: Visit, django_assert_num_queries: Any) -> None:
    before = [list(model.objects.values()) for model in (Reply, Flag, Message, Wish, Stop, Consent, Revocation)]

    browser.get(f"{way(booked)}?do=stop&lang=es")
    browser.head(way(booked))

    assert [list(model.objects.values()) for model in (Reply, Flag, Message, Wish, Stop, Consent, Revocation)] == before


def test_the_emergency_stands_first_with_the_number_of_her_country(browser: Browser, done: Visit) -> None:
    page = browser.get(way(done)).content.decode()

    assert page.index('href="tel:911"') < page.index("How are your eyes?") < page.index("What to do now")
    assert "rinse 20 min" in page
    Studio.objects.update(region="GB")
    assert 'href="tel:999"' in browser.get(way(done)).content.decode()


def test_the_number_that_her_page_calls_is_that_of_where_she_says_she_is(browser: Browser, done: Visit) -> None:
    Client.objects.update(time_zone="Europe/Dublin")

    page = browser.get(way(done)).content.decode()

    assert 'href="tel:112"' in page
    assert "112 or your local emergency number" in page
    assert "911" not in page


def test_no_page_leaves_a_sight_that_changes_for_a_doctor_today() -> None:
    # NHS, "Red eye" (reviewed 2022-03-21): a change of sight is for emergency care.
    told = [str(words) for message in catalogue.read("es") if message.id for words in (message.id, message.string)]

    sentences = [sentence for words in told for sentence in re.split(r"(?<=[.!?])\s", words)]

    today = [one for one in sentences if re.search(r"doctor today|ve hoy", one)]
    assert len(today) >= 4
    assert not [one for one in today if re.search(r"\bsight\b|visión", one)]


def test_it_says_what_to_do_after_the_visit_in_the_words_in_force(browser: Browser, done: Visit) -> None:
    said = words(browser.get(way(done)))

    assert "No steam, sauna or swimming" in said
    assert "2 days ago" in said
    assert "Hi Mia" not in said
    assert "answer with the word STOP" not in said
    assert "/v/" not in said


def test_before_a_visit_it_says_what_to_do_before(browser: Browser, booked: Visit) -> None:
    said = words(browser.get(way(booked)))

    assert "Before you come" in said
    assert "lens" in said


def test_it_speaks_her_language_and_can_be_switched(browser: Browser, done: Visit, mia: Client) -> None:
    Client.objects.filter(pk=mia.pk).update(language="es")

    assert '<html lang="es">' in browser.get(way(done)).content.decode()
    english = browser.get(f"{way(done)}?lang=en")
    assert '<html lang="en">' in english.content.decode()
    assert english.headers["Content-Language"] == "en"
    assert '<html lang="es">' in browser.get(f"{way(done)}?lang=xx").content.decode()


def test_while_she_is_on_hold_nothing_is_said_as_if_all_were_as_usual(
    browser: Browser, booked: Visit, done: Visit
) -> None:
    tell(browser, done, tick=["swollen"])

    said = words(browser.get(way(booked)))

    assert "wants to speak with you first" in said
    assert "Bare clean lashes" not in said
    assert "I come" not in said


@pytest.mark.parametrize(
    "service", ["full set", "fill", "removal", "patch test", "touch-up", "lift", "consultation", "other"]
)
@pytest.mark.parametrize("status", ["booked", "done", "cancelled", "missed"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_it_can_be_shown_for_every_service_and_state(
    service: str, status: str, language: str, browser: Browser, mia: Client
) -> None:
    away = timedelta(days=1 if status == "booked" else -1)
    visit = make_visit(mia, service=service, status=status, starts_at=clock.now() + away)

    page = browser.get(f"{way(visit)}?lang={language}")

    assert page.status_code == 200
    assert "{{" not in page.content.decode()


def test_html_and_stylesheet_stay_under_sixty_kilobytes(browser: Browser, booked: Visit, done: Visit) -> None:
    style = Path("aftercare/static/hers.css").stat().st_size + Path("studio/static/icon.svg").stat().st_size
    for visit in (booked, done):
        for language in ("en", "es"):
            assert len(browser.get(f"{way(visit)}?lang={language}").content) + style < 60_000


# Whose it is


def test_a_wrong_link_says_what_to_do_and_nothing_of_a_studio(browser: Browser, done: Visit) -> None:
    page = browser.get(way(done)[:-1])

    assert page.status_code == 404
    assert "ask your studio" in words(page)
    assert "Este enlace no funciona" in words(page)
    assert "Birch" not in page.content.decode()
    assert page.headers["Referrer-Policy"] == "no-referrer"


def test_the_link_of_another_purpose_opens_nothing(browser: Browser, done: Visit, mia: Client) -> None:
    assert browser.get(f"/v/{links.token(Purpose.DATA, mia)}").status_code == 404
    assert browser.get(f"/v/{links.token(Purpose.CONSULTATION, done)}").status_code == 404
    assert browser.get(f"/d/{links.token(Purpose.VISIT, done)}").status_code == 404


def test_the_link_of_one_client_never_shows_or_writes_for_another(
    browser: Browser, done: Visit, studio: Studio
) -> None:
    zoe = make_client(studio, "Zoe", mobile="+12125550102", email="zoe@mail.example")
    make_visit(zoe, starts_at=clock.now() + timedelta(days=1))

    page = browser.get(way(done)).content.decode()
    tell(browser, done, tick=["red"], client=str(zoe.pk))

    assert "Zoe" not in page
    assert Reply.objects.get().client == done.client


def test_a_revoked_link_opens_nothing_and_hears_nothing(browser: Browser, done: Visit, mia: Client) -> None:
    old = way(done)
    links.revoke(mia, why="staff", now=clock.now())

    assert browser.get(old).status_code == 404
    assert browser.post(old, {"do": "eyes", "tick": "red"}).status_code == 404
    assert browser.get(f"{old}/visit.ics").status_code == 404
    assert not Reply.objects.exists()


def test_whoever_has_it_does_not_read_what_else_is_kept(browser: Browser, done: Visit) -> None:
    tell(browser, done, tick=["swollen"], words="my secret words")

    page = browser.get(way(done)).content.decode()

    assert "my secret words" not in page
    assert NUMBER not in page
    assert "mia@mail.example" not in page


# An eye in trouble


@pytest.mark.parametrize("tick", [tick for tick in Tick if tick not in (Tick.FEVER, Tick.SICK)])
def test_a_tick_makes_the_same_matter_as_the_same_said_by_text(
    tick: Tick, browser: Browser, done: Visit, studio: Studio
) -> None:
    other = make_client(studio, "Zoe", mobile="+12125550102")
    Consent.objects.create(client=other, channel="sms", purpose="visits", given=True, at=clock.now(), how="on paper")
    reply = receiving.receive(lines_of(studio)["sms"], other.mobile, SENTENCES[tick], received_at=clock.now())
    triage.read(reply.pk, clock.now())

    tell(browser, done, tick=[tick])

    by_text, by_page = Flag.objects.order_by("pk")
    assert by_page.urgency == by_text.urgency
    assert by_page.state == by_text.state == "open"
    assert list(by_page.clients.all()) == [done.client]
    answers = (
        Message.objects.filter(occasion="answer").order_by("pk").values_list("address", "kind", "channel", "language")
    )
    assert sorted(row[1:] for row in answers if row[0] == NUMBER) == sorted(
        row[1:] for row in answers if row[0] == other.mobile
    )


@pytest.mark.parametrize(
    ("tick", "kind", "first"),
    [
        ("breathing", "breathing", "Call 911"),
        ("in_eye", "chemical", "RINSE THE EYE NOW"),
        ("will_not_open", "sealed", "Do not force the eye open"),
        ("sight", "sight", "Get emergency eye care (ER) NOW"),
    ],
)
def test_an_emergency_is_answered_on_the_page_at_once_with_the_text_that_goes_out(
    tick: str, kind: str, first: str, browser: Browser, done: Visit
) -> None:
    page = tell(browser, done, tick=[tick])

    said = words(page)
    assert said.index(first) < said.index("If an eye is in trouble")
    answer = Message.objects.get(occasion="answer")
    assert answer.kind == kind
    sending.sweep(clock.now())
    answer.refresh_from_db()
    assert answer.text in said


def test_emergency_words_are_answered_as_ticks_are(browser: Browser, done: Visit) -> None:
    said = words(tell(browser, done, words="remover dripped in my right eye what do i do"))

    assert "RINSE THE EYE NOW" in said
    assert Flag.objects.get().urgency == "emergency"


def test_what_is_to_be_seen_today_says_by_when_a_person_calls(browser: Browser, done: Visit) -> None:
    said = words(tell(browser, done, tick=["swollen"]))

    assert "We call you by" in said
    assert Flag.objects.get().call_by is not None


def test_words_that_nobody_understands_are_answered_as_a_sign(browser: Browser, done: Visit) -> None:
    said = words(tell(browser, done, words="mắt tôi hơi lạ"))

    assert "do not wait for our call" in said
    assert Flag.objects.get().urgency == "unread"


def test_words_in_another_language_are_answered_in_both(browser: Browser, done: Visit) -> None:
    said = words(tell(browser, done, words="no puedo abrir el ojo izquierdo", lang="en"))

    assert "Do not force the eye open" in said
    assert "No fuerces el ojo" in said


def test_that_she_notices_nothing_is_never_told_to_be_well(browser: Browser, done: Visit) -> None:
    said = words(tell(browser, done, tick=["nothing"]))

    assert "Sent: a person reads it" in said
    assert "do not wait for us" in said
    assert not Message.objects.filter(occasion="answer").exists()
    assert Flag.objects.get().urgency == "none"


def test_a_red_eye_of_one_who_ticks_that_she_wears_lenses_is_to_be_seen_today(browser: Browser, done: Visit) -> None:
    # NHS, "Red eye", reviewed 21 March 2022: a red eye in a contact-lens wearer is urgent.
    tell(browser, done, tick=["red"], lenses="1")

    assert Message.objects.get(occasion="answer").kind == "seen_today"


def test_a_stop_in_her_words_does_not_hide_the_sign_that_she_ticked(browser: Browser, done: Visit) -> None:
    tell(browser, done, tick=["swollen"], words="STOP")

    assert Flag.objects.get().urgency == "same_day"
    assert Stop.objects.get().address == NUMBER


def test_who_can_be_told_by_nothing_is_heard_all_the_same_and_told_on_the_page(
    browser: Browser, studio: Studio
) -> None:
    visit = make_visit(make_client(studio, "Ines"), status="done", starts_at=clock.now() - timedelta(days=1))

    said = words(tell(browser, visit, tick=["swollen"]))

    flag = Flag.objects.get()
    assert [client.first_name for client in flag.clients.all()] == ["Ines"]
    assert flag.call_by is not None
    assert "We call you by" in said
    assert not Message.objects.filter(occasion="answer").exists()


def test_after_a_stop_she_is_heard_and_no_text_goes(browser: Browser, done: Visit, mia: Client) -> None:
    for channel in ("sms", "email"):
        stops.stop(mia, channel, words="stop", by=None, now=clock.now())

    said = words(tell(browser, done, tick=["will_not_open"]))

    assert "Do not force the eye open" in said
    assert Flag.objects.get().urgency == "emergency"
    assert not Message.objects.filter(occasion="answer").exists()


def test_of_two_with_one_number_her_page_names_her(browser: Browser, done: Visit, studio: Studio) -> None:
    make_client(studio, "Zoe", mobile=NUMBER)

    tell(browser, done, tick=["red"])

    assert Reply.objects.get().client == done.client
    assert list(Flag.objects.get().clients.all()) == [done.client]


def test_she_is_held_and_paged_as_by_a_reply(browser: Browser, done: Visit, booked: Visit, studio: Studio) -> None:
    make_staff(studio, "Olga", is_owner=True, mobile="+12125550177", signs_in=False)
    tell(browser, done, tick=["sight"])

    reasons = Message.objects.filter(visit=booked).values_list("reason", flat=True)
    assert set(reasons) <= {"on hold", "too late"}
    assert "on hold" in reasons


def test_of_two_who_were_merged_the_one_that_was_kept_is_heard(browser: Browser, done: Visit, studio: Studio) -> None:
    kept = make_client(studio, "Mia", mobile="+12125550109")
    Client.objects.filter(pk=done.client_id).update(merged_into=kept)

    tell(browser, done, tick=["red"])

    assert Reply.objects.get().client == kept


# Nothing is lost


def test_the_same_form_sent_twice_is_one_reply(browser: Browser, done: Visit) -> None:
    first = tell(browser, done, tick=["red"], words="since noon")
    second = tell(browser, done, tick=["red"], words="since noon")

    assert Reply.objects.count() == 1
    assert words(first) == words(second)


def test_the_same_form_sent_with_something_worse_is_another_reply(browser: Browser, done: Visit) -> None:
    tell(browser, done, tick=["red"])
    tell(browser, done, tick=["red", "sight"])

    assert Reply.objects.count() == 2
    assert Flag.objects.get().urgency == "emergency"


def test_an_empty_form_says_what_to_do_and_stores_nothing(browser: Browser, done: Visit) -> None:
    page = tell(browser, done, side="left")

    assert page.status_code == 400
    assert "tick what you notice" in words(page)
    assert not Reply.objects.exists()


def test_ticks_that_there_are_not_are_left_out_and_her_words_kept(browser: Browser, done: Visit) -> None:
    tell(browser, done, tick=["red", "nonsense", "<script>"], side="middle", since="ever", words="hello", form="<b>")

    reply = Reply.objects.get()
    assert reply.ticked["ticks"] == ["red"]
    assert (reply.ticked["side"], reply.ticked["since"], reply.text) == (None, None, "hello")


@pytest.mark.parametrize("text", ["\x00 red \x00", "x" * 20_000, "<script>alert(1)</script>", "👁️ red"])
def test_whatever_she_types_is_kept_and_runs_nothing(text: str, browser: Browser, done: Visit) -> None:
    page = tell(browser, done, words=text)

    assert page.status_code == 200
    assert Reply.objects.get().text == storable(text.strip())
    assert "<script>" not in page.content.decode()
    assert len(text) <= LONGEST_WORDS or "x" * 20_000 in Reply.objects.get().text


def test_a_name_or_studio_that_looks_like_markup_is_shown_as_it_is(
    browser: Browser, done: Visit, studio: Studio
) -> None:
    Client.objects.update(first_name="<b>Mia</b>{{ x }}")
    Studio.objects.update(name="<i>Birch</i>")
    Visit.objects.update(service_name="<u>fill</u>")

    page = browser.get(way(done)).content.decode()

    assert "<b>Mia" not in page
    assert "<i>Birch" not in page
    assert "<u>fill" not in page
    assert "&lt;i&gt;Birch&lt;/i&gt;" in page


def test_photos_are_made_anew_and_her_words_are_kept_beside_one_that_is_none(browser: Browser, done: Visit) -> None:
    files = [
        SimpleUploadedFile("eye.jpg", photo(), content_type="image/jpeg"),
        SimpleUploadedFile("virus.jpg", b"MZ\x00 not a picture", content_type="image/jpeg"),
    ]

    page = tell(browser, done, words="look", photo=files)

    reply = Reply.objects.get()
    assert reply.text == "look"
    assert [row.content is not None for row in reply.attachments.all()] == [True, False]
    assert "virus.jpg: it is not a photo that can be read" in words(page)
    assert "eye.jpg" not in words(page)


def test_a_photo_alone_is_heard_as_something_to_be_looked_at(browser: Browser, done: Visit) -> None:
    said = words(tell(browser, done, photo=[SimpleUploadedFile("eye.jpg", photo(), content_type="image/jpeg")]))

    assert Flag.objects.get().urgency == "unread"
    assert "We call you by" in said


def test_more_than_three_photos_keep_three_and_say_so(browser: Browser, done: Visit) -> None:
    files = [SimpleUploadedFile(f"{n}.jpg", photo(), content_type="image/jpeg") for n in range(5)]

    said = words(tell(browser, done, tick=["red"], photo=files))

    assert Attachment.objects.filter(content__isnull=False).count() == 3
    assert said.count("only three photos can be kept at once") == 2


def test_of_a_hundred_files_her_words_and_three_photos_are_kept(browser: Browser, done: Visit) -> None:
    files = [SimpleUploadedFile(f"{n}.jpg", photo(), content_type="image/jpeg") for n in range(100)]

    page = tell(browser, done, words="look at all of these", photo=files)

    assert page.status_code == 200
    assert Reply.objects.get().text == "look at all of these"
    assert Attachment.objects.filter(content__isnull=False).count() == 3


def test_a_photo_that_is_too_large_is_named_and_no_more_of_it_is_read(browser: Browser, done: Visit) -> None:
    huge = BytesIO(b"\xff\xd8" + b"0" * 10_500_000)
    huge.name = "huge.jpg"

    said = words(tell(browser, done, tick=["red"], photo=huge))

    assert "huge.jpg: it is larger than 10 MB" in said
    assert Reply.objects.get().ticked["ticks"] == ["red"]


def test_words_that_cannot_be_written_down_are_given_back_with_what_to_do(
    browser: Browser, done: Visit, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*args: object, **kwargs: object) -> None:
        raise DatabaseError("disk full")

    monkeypatch.setattr(Reply.objects, "get_or_create", fail)

    page = tell(browser, done, tick=["will_not_open"], words="it is glued")

    assert page.status_code == 503
    said = words(page)
    assert "Do not force the eye open" in said
    assert "call the studio now" in said
    assert "it is glued" in page.content.decode()
    assert 'value="will_not_open" checked' in page.content.decode()


def test_what_cannot_be_read_at_once_is_stored_and_answered_and_read_later(
    browser: Browser, done: Visit, monkeypatch: pytest.MonkeyPatch
) -> None:
    with monkeypatch.context() as broken:
        broken.setattr(Flag.objects, "create", lambda **fields: 1 / 0)
        said = words(tell(browser, done, tick=["will_not_open"]))

    assert "Do not force the eye open" in said
    assert Reply.objects.get().read_at is None
    assert triage.read_waiting(clock.now()) == 1
    assert Flag.objects.get().urgency == "emergency"


def test_very_much_from_one_page_is_not_taken_but_a_worse_kind_is(
    browser: Browser, done: Visit, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(her_words, "MOST_AN_HOUR", 2)
    for number in range(2):
        tell(browser, done, tick=["red"], words=f"again {number}")

    refused = tell(browser, done, tick=["red"], words="and again")
    worse = tell(browser, done, tick=["sight"])
    once_more = tell(browser, done, tick=["sight"], words="still")

    assert refused.status_code == 429
    assert "and again" in refused.content.decode()
    assert worse.status_code == 200
    assert Reply.objects.count() == 3
    assert Flag.objects.get().urgency == Urgency.EMERGENCY
    assert "Get emergency eye care" in words(once_more)  # told at once all the same


@pytest.mark.parametrize("do", ["", "nonsense", "eyes<script>"])
def test_a_button_that_there_is_not_changes_nothing(do: str, browser: Browser, booked: Visit) -> None:
    assert browser.post(way(booked), {"do": do}).status_code == 400
    assert not Reply.objects.exists()


# Her visit


def test_that_she_comes_goes_to_the_front_desk_once(browser: Browser, booked: Visit) -> None:
    browser.post(way(booked), {"do": "confirm", "form": FORM})
    said = words(browser.post(way(booked), {"do": "confirm", "form": FORM}))

    assert [wish.kind for wish in Wish.objects.all()] == ["confirmed"]
    assert not Flag.objects.exists()
    assert "You said that you come." in said


def test_another_day_is_a_wish_that_holds_no_word_on_health(browser: Browser, booked: Visit) -> None:
    browser.post(way(booked), {"do": "move", "form": FORM, "suits": ["mornings", "saturdays", "x"]})

    wish = Wish.objects.get()
    assert wish.kind == "move"
    assert wish.reply.ticked["suits"] == ["saturdays", "mornings"]
    assert not Flag.objects.exists()
    assert Visit.objects.get(pk=booked.pk).status == "booked"


def test_a_sign_told_with_the_wish_for_another_day_is_heard(browser: Browser, booked: Visit) -> None:
    browser.post(way(booked), {"do": "move", "form": FORM, "words": "my left eye is swollen and hurts"})

    assert Wish.objects.get().kind == "move"
    assert Flag.objects.get().urgency == "same_day"


def test_a_sign_told_with_the_wish_for_another_day_is_answered_on_the_page(browser: Browser, booked: Visit) -> None:
    Client.objects.update(mobile="", email="")  # nothing but the page can tell her

    said = words(browser.post(way(booked), {"do": "move", "form": FORM, "words": "I cannot see out of my left eye"}))

    assert "Get emergency eye care" in said
    assert "finds another day with you" in said
    assert Flag.objects.get().urgency == Urgency.EMERGENCY


def test_a_wish_for_another_day_that_cannot_be_written_down_is_given_back_and_its_sign_answered(
    browser: Browser, booked: Visit, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*args: object, **kwargs: object) -> None:
        raise DatabaseError("the disk is full")

    monkeypatch.setattr(receiving, "receive", fail)
    sent = {"do": "move", "form": FORM, "suits": ["evenings"], "words": "my sight is gone in one eye"}
    page = browser.post(way(booked), sent)

    assert page.status_code == 503
    assert "Get emergency eye care" in words(page)
    assert 'value="evenings" checked' in page.content.decode()
    assert page.content.decode().count("my sight is gone in one eye") == 1  # in the field that it was written in


@pytest.mark.parametrize("status", ["cancelled", "done", "missed"])
def test_what_she_writes_about_a_visit_that_is_not_ahead_any_more_is_heard(
    status: str, browser: Browser, booked: Visit
) -> None:
    Visit.objects.filter(pk=booked.pk).update(status=status)

    said = words(browser.post(way(booked), {"do": "move", "form": FORM, "words": "my lid is swollen and it hurts"}))

    assert "not ahead any more" in said
    assert "We call you" in said
    assert (Flag.objects.get().urgency, Wish.objects.count()) == (Urgency.SAME_DAY, 0)


def test_a_visit_that_is_over_is_neither_confirmed_nor_moved(browser: Browser, done: Visit) -> None:
    for do in ("confirm", "move"):
        assert browser.post(way(done), {"do": do}).status_code == 400
    assert not Wish.objects.exists()


# Her choices


def test_she_chooses_by_what_she_is_told(browser: Browser, booked: Visit, mia: Client) -> None:
    browser.post(way(booked), {"do": "channel", "channel": "email"})

    mia.refresh_from_db()
    assert mia.channel == "email"
    consent = Consent.objects.order_by("pk").last()
    assert consent is not None
    assert (consent.channel, consent.purpose, consent.given, consent.how) == ("email", "visits", True, "her own page")
    assert consent.words_shown == "Messages about my visits by e-mail"


@pytest.mark.parametrize("channel", ["sms", "pigeon", ""])
def test_what_cannot_reach_her_is_not_chosen(channel: str, browser: Browser, booked: Visit, mia: Client) -> None:
    stops.stop(mia, "sms", words="stop", by=None, now=clock.now())

    page = browser.post(way(booked), {"do": "channel", "channel": channel})

    assert page.status_code == 400
    assert Client.objects.get(pk=mia.pk).channel == ""
    assert Stop.objects.get().lifted_at is None


def test_she_chooses_the_language_of_her_messages(browser: Browser, booked: Visit, mia: Client) -> None:
    browser.post(way(booked), {"do": "language", "language": "es"})
    assert Client.objects.get(pk=mia.pk).language == "es"

    assert browser.post(way(booked), {"do": "language", "language": "xx"}).status_code == 400
    assert Client.objects.get(pk=mia.pk).language == "es"


def due_here(studio: Studio) -> datetime:
    """When what to do before her visit leaves, on the studio's clock."""
    due = Message.objects.get(occasion="prepare", step=0).due_at
    assert due is not None
    return due.astimezone(studio.zone)


@pytest.mark.parametrize(
    ("language", "asked", "answered"),
    [
        ("en", ("When may we write to you?", "in the evening, from 5:00 pm"), "Changed."),
        ("es", ("¿Cuándo te podemos escribir?", "al final del día, desde las 5:00 pm"), "Cambiado."),
    ],
)
def test_she_chooses_when_she_is_written_to(
    language: str, asked: tuple[str, str], answered: str, browser: Browser, booked: Visit, mia: Client
) -> None:
    upkeep.plan_clients([mia.pk], clock.now())
    usual = due_here(mia.studio)
    page = browser.get(f"{way(booked)}?lang={language}")
    assert all(text in words(page) for text in asked)
    assert page.context["hours"][0][2]  # that she has no wish is what is marked

    page = browser.post(way(booked), {"do": "hours", "hours": "evening", "lang": language})

    assert answered in words(page)
    assert [key for key, _, chosen in page.context["hours"] if chosen] == ["evening"]
    mia.refresh_from_db()
    assert mia.wished_hours == "evening"
    due = due_here(mia.studio)
    assert (usual.hour, due.hour, due.date()) == (10, 17, usual.date())

    browser.post(way(booked), {"do": "hours", "hours": ""})
    assert due_here(mia.studio) == usual


@pytest.mark.parametrize("sent", [{"hours": "midnight"}, {}])
def test_hours_that_are_not_offered_change_nothing(
    sent: dict[str, str], browser: Browser, booked: Visit, mia: Client
) -> None:
    Client.objects.filter(pk=mia.pk).update(wished_hours="morning")
    page = browser.post(way(booked), {"do": "hours", **sent})
    assert (page.status_code, "Choose one of the times offered." in words(page)) == (400, True)
    assert Client.objects.get(pk=mia.pk).wished_hours == "morning"


def test_everything_is_stopped_by_one_button_on_both_roads(browser: Browser, booked: Visit) -> None:
    said = words(browser.post(way(booked), {"do": "stop"}))

    assert {(stop.line.channel, stop.address) for stop in Stop.objects.all()} == {
        ("sms", NUMBER),
        ("email", "mia@mail.example"),
    }
    assert "call the studio or see a doctor" in said
    assert not Message.objects.filter(state="planned").exists()


def test_her_record_goes_to_her_own_number_and_not_to_the_page(browser: Browser, booked: Visit, mia: Client) -> None:
    for _twice in range(2):
        page = browser.post(way(booked), {"do": "record"})

    assert "/d/" not in page.content.decode()
    message = Message.objects.get(kind="your_record")
    assert (message.channel, message.address) == ("sms", NUMBER)
    sending.sweep(clock.now())
    message.refresh_from_db()
    assert links.address(Purpose.DATA, mia) in message.text


def test_her_record_goes_nowhere_after_a_stop(browser: Browser, booked: Visit) -> None:
    browser.post(way(booked), {"do": "stop"})

    assert "no way to write to you" in words(browser.post(way(booked), {"do": "record"}))
    assert not Message.objects.filter(kind="your_record").exists()


def test_she_ends_her_links(browser: Browser, booked: Visit) -> None:
    old = way(booked)

    assert "The links are ended" in words(browser.post(old, {"do": "end"}))

    assert browser.get(old).status_code == 404
    assert Revocation.objects.get().why == "asked"


def test_whoever_it_is_not_about_ends_the_links_and_the_front_desk_is_told(browser: Browser, booked: Visit) -> None:
    old = way(booked)
    browser.post(old, {"do": "not_me", "form": FORM})

    assert Wish.objects.get().kind == "wrong_person"
    assert [(stop.address, stop.why) for stop in Stop.objects.all()] == [(NUMBER, "wrong_person")]
    assert browser.get(old).status_code == 404


def test_a_number_that_is_somebody_elses_ends_the_links_that_went_there(browser: Browser, booked: Visit) -> None:
    old = way(booked)
    reply = receiving.receive(
        lines_of(booked.studio)["sms"], NUMBER, "wrong number, I am not Mia", received_at=clock.now()
    )
    triage.read(reply.pk, clock.now())

    assert browser.get(old).status_code == 404
    assert Revocation.objects.get().why == "wrong_person"


def test_after_she_was_forgotten_her_links_open_nothing(browser: Browser, done: Visit, mia: Client) -> None:
    old, olga = way(done), make_staff(done.studio, "Olga", is_owner=True)
    erasing.erase(mia, by=olga, now=clock.now())

    assert browser.get(old).status_code == 404


def test_a_wording_that_cannot_be_filled_in_falls_back_to_the_first_one(done: Visit, mia: Client) -> None:
    def broken(occasion: str, kind: str, step: int, channel: str, language: str) -> Words:
        raise WordingError("unclosed if")

    book = facts.load([mia.pk], clock.now())[mia.pk]
    page = HerPage(done, book, "en", clock.now(), broken)

    assert any("sauna" in line for part in page.instructions for line in part.lines)
    assert "RINSE THE EYE NOW" in page.answer("chemical", None, "en")
