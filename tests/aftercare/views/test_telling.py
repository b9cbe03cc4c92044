"""The page from which those booked on a day are told something, and what the day sheet shows of it."""

from __future__ import annotations

import re
from typing import Any

import pytest
from django.test import Client as Browser

from aftercare import tasks
from aftercare.core.occasions import Occasion
from aftercare.models import Message
from studio.models import Absence, Service
from tests.cast import Cast
from tests.pages import SignIn, words

LATE = "All is an hour late today, please come an hour later."
HEALTH = re.compile(r"sensitive|lens|patch test|reaction|itch|\bhold\b|\beyes?\b", re.IGNORECASE)


@pytest.fixture
def day(cast: Cast) -> Cast:
    """Three who come today, one of them to Noor, one of whom cannot be reached; one who comes tomorrow."""
    cast.visit(cast.client("Mia", "Okafor"), cast.at(14))
    cast.visit(cast.client("Zoe", "Abara"), cast.at(15), artist=cast.noor)
    cast.visit(cast.client("Ines", "Moreau", texts=False), cast.at(16), Service.PATCH_TEST)
    cast.visit(cast.client("Tova", "Berg"), cast.at(14, 1))
    cast.plan()
    return cast


def tell(browser: Browser, text: str = "", query: str = "", **more: str) -> Any:
    path = f"/today/tell{query}"
    token = browser.get(path).context["form"]["token"].value()
    look = browser.post(path, {"text": text, "token": token, "look": "1"})
    return browser.post(path, {"text": text, "token": token, "seen": look.context["digest"], "send": "1", **more})


def notices() -> list[str]:
    return sorted(Message.objects.filter(occasion=Occasion.NOTICE).values_list("client__first_name", flat=True))


def test_the_page_says_who_is_told_how_when_and_at_what_cost_and_whom_to_call(day: Cast, as_: SignIn) -> None:
    page = as_(day.dee).get("/today/tell")

    said = words(page)
    assert "2 clients are told" in said
    assert "2 texts, charged as" in said
    assert "in rehearsal: on the pretend phone only" in said
    assert "not before" in said  # it is seven in the morning there
    assert "Call 1 client" in said
    assert re.search(r"Ines Moreau no way to reach her Call Ines: \(212\) 555-\d{4}", said)
    assert not HEALTH.findall(said)
    assert not Message.objects.filter(occasion=Occasion.NOTICE).exists()


def test_one_button_tells_them_and_the_day_sheet_shows_what_became_of_it(day: Cast, as_: SignIn) -> None:
    browser = as_(day.olga)

    page = browser.get(tell(browser, LATE)["Location"])

    assert notices() == ["Mia", "Zoe"]
    assert "2 clients are told. Call the 1 other." in words(page)
    assert words(page).count("is told") >= 2
    tasks.send_due(studio_id=day.studio.pk, now=day.at(9))
    sheet = words(browser.get("/today"))
    assert len(re.findall(r"told [^·]* on the pretend phone", sheet)) == 2
    assert "told already" not in words(browser.get("/today/tell?day=2020-01-01"))


def test_two_taps_tell_once(day: Cast, as_: SignIn) -> None:
    browser = as_(day.olga)
    token = browser.get("/today/tell").context["form"]["token"].value()
    look = browser.post("/today/tell", {"text": "", "token": token, "look": "1"})
    given = {"text": "", "token": token, "seen": look.context["digest"], "send": "1"}

    browser.post("/today/tell", given)
    again = browser.post("/today/tell", given, follow=True)

    assert notices() == ["Mia", "Zoe"]
    assert "nothing goes twice" in words(again)


def test_nothing_goes_that_was_not_looked_at(day: Cast, as_: SignIn) -> None:
    browser = as_(day.olga)

    page = tell(browser, LATE, seen="of another look")
    assert "Not sent yet" in words(page)
    token = page.context["form"]["token"].value()
    seen = page.context["digest"]
    other = browser.post("/today/tell", {"text": LATE + " Sorry.", "token": token, "seen": seen, "send": "1"})

    assert "Not sent yet" in words(other)
    assert notices() == []


def test_words_that_may_not_go_are_said_with_the_cure_and_do_not_go(day: Cast, as_: SignIn) -> None:
    browser = as_(day.dee)

    page = tell(browser, "Ada has an eye infection, come tomorrow.")

    assert "Not sent. To mend:" in words(page)
    assert "is never said" in words(page)
    assert "Tell 2 clients" not in words(page)
    assert notices() == []


def test_an_artist_tells_her_own_clients_and_theirs_for_whom_she_covers(day: Cast, as_: SignIn) -> None:
    browser = as_(day.noor)

    assert "Zoe Abara" in words(browser.get("/today/tell"))
    assert "Mia Okafor" not in words(browser.get("/today/tell"))
    assert browser.get(f"/today/tell?artist={day.ada.pk}").status_code == 404
    today = day.at(9).date()
    Absence.objects.create(staff=day.ada, cover=day.noor, first_day=today, last_day=today)
    assert "Mia Okafor" in words(browser.get("/today/tell"))
    tell(browser, query=f"?artist={day.ada.pk}")
    assert notices() == ["Mia"]


def test_another_day_and_one_artist_can_be_chosen(day: Cast, as_: SignIn) -> None:
    browser = as_(day.dee)

    tell(browser, query=f"?artist={day.noor.pk}")
    assert notices() == ["Zoe"]
    tell(browser, query=f"?day={day.at(9, 1):%Y-%m-%d}")
    assert notices() == ["Tova", "Zoe"]


def test_the_day_sheet_leads_there_only_where_somebody_is_still_to_come(day: Cast, as_: SignIn) -> None:
    assert "/today/tell" in as_(day.ada).get("/today").content.decode()
    assert "/today/tell" not in as_(day.ada).get("/today?artist=all").content.decode()
    assert "/today/tell" in as_(day.dee).get("/today?artist=all").content.decode()
    assert "/today/tell" not in as_(day.dee).get("/today?day=2020-01-01").content.decode()
    assert "Nobody is still to come" in words(as_(day.dee).get("/today/tell?day=2020-01-01"))


def test_another_studios_clients_and_staff_are_out_of_reach(day: Cast, as_: SignIn, strangers: Cast) -> None:
    browser = as_(day.olga)

    assert browser.get(f"/today/tell?artist={strangers.ada.pk}").status_code == 404
    assert browser.get("/today/tell?artist=x").status_code == 404
    assert "Rosa Lindqvist" not in words(browser.get("/today/tell"))
