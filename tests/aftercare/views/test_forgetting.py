"""What staff do about a client's links and her wish to be forgotten; and what they see of her own page."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client as Browser

from aftercare import links
from aftercare.links import Purpose
from aftercare.models import Revocation, Wish
from studio.models import Client, Visit
from tests.cast import Cast
from tests.pages import words

pytestmark = pytest.mark.django_db


def way(cast: Cast, first: str) -> str:
    return f"/v/{links.token(Purpose.VISIT, Visit.objects.filter(client=cast.clients[first]).latest('starts_at'))}"


def test_ticks_photos_and_words_stand_on_the_morning_list(morning_cast: Cast, as_: Any, client: Browser) -> None:
    client.post(way(morning_cast, "Bea"), {"do": "eyes", "tick": ["swollen", "light"], "side": "left", "since": "days"})

    said = words(as_(morning_cast.ada).get("/morning"))

    assert "She ticked: Light hurts, Swollen lid · eye: Left · since: Two to six days" in said


def test_another_day_stands_on_the_front_desk_s_list_with_when_it_suits(
    morning_cast: Cast, as_: Any, client: Browser
) -> None:
    client.post(way(morning_cast, "Bea"), {"do": "move", "suits": ["mornings"]})

    said = words(as_(morning_cast.dee).get("/morning"))

    assert "Asks for another day: Mornings" in said


def test_no_word_on_health_from_her_page_reaches_the_front_desk(morning_cast: Cast, as_: Any, client: Browser) -> None:
    client.post(way(morning_cast, "Bea"), {"do": "eyes", "tick": ["swollen"], "words": "puffy lid"})
    client.post(way(morning_cast, "Bea"), {"do": "move", "words": "my lid is swollen, can I come another day"})

    bea = morning_cast.clients["Bea"].pk
    dee = as_(morning_cast.dee)
    seen = words(dee.get("/morning")) + words(dee.get(f"/clients/{bea}"))

    assert "Asks for another day" in seen
    assert "swollen" not in seen.lower()
    assert "puffy" not in seen


def test_being_forgotten_is_the_owners_line(morning_cast: Cast, as_: Any, client: Browser) -> None:
    bea = morning_cast.clients["Bea"]
    client.post(f"/d/{links.token(Purpose.DATA, bea)}", {"do": "forget"})
    wish = Wish.objects.get(kind="forget")

    assert "Asks to be forgotten" in words(as_(morning_cast.olga).get("/morning?artist=all"))
    dee = as_(morning_cast.dee)
    assert "Asks to be forgotten" not in words(dee.get("/morning"))
    dee.post("/wishes/seen-to", {"wish": wish.pk})
    assert Wish.objects.get(pk=wish.pk).seen_to_at is None


def test_the_owner_forgets_her_once_nothing_is_ahead_and_says_that_it_is_for_good(morning_cast: Cast, as_: Any) -> None:
    bea = morning_cast.clients["Bea"]
    olga = as_(morning_cast.olga)

    assert "cancel it first" in words(olga.get(f"/clients/{bea.pk}/forget"))
    Visit.objects.filter(client=bea, status="booked").update(status="cancelled")
    olga.post(f"/clients/{bea.pk}/forget", {})
    assert Client.objects.get(pk=bea.pk).first_name == "Bea"
    said = words(olga.post(f"/clients/{bea.pk}/forget", {"for_good": "1"}, follow=True))

    assert "She is forgotten" in said
    assert Client.objects.get(pk=bea.pk).first_name == ""
    assert "Castellanos" not in words(olga.get("/clients"))
    assert "forgotten" in words(olga.get(f"/clients/{bea.pk}"))


def test_her_links_are_ended_from_her_card(morning_cast: Cast, as_: Any, client: Browser) -> None:
    old = way(morning_cast, "Bea")

    as_(morning_cast.dee).post(f"/clients/{morning_cast.clients['Bea'].pk}/links")

    assert client.get(old).status_code == 404
    assert Revocation.objects.get().why == "staff"


def test_the_way_to_her_page_stands_on_her_card_for_those_who_treat_her(
    morning_cast: Cast, as_: Any, client: Browser
) -> None:
    bea = morning_cast.clients["Bea"]

    for who, sees in (("olga", True), ("ada", True), ("noor", False), ("dee", False)):
        page = as_(getattr(morning_cast, who)).get(f"/clients/{bea.pk}").content.decode()
        assert ("/v/" in page) is sees, who
