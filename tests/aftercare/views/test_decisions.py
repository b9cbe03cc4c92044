from __future__ import annotations

from datetime import timedelta

import pytest
from django.urls import reverse

from aftercare import stops
from studio import clock, records
from studio.models import Reaction
from tests.people import make_client, make_staff, make_studio, make_visit, sign_in

pytestmark = pytest.mark.django_db


def test_a_reaction_puts_her_on_hold_and_withholds_what_was_planned() -> None:
    studio = make_studio()
    ada = make_staff(studio, "Ada")
    mia = make_client(studio, email="mia@mail.example")
    heard = clock.now() - timedelta(days=1)
    visit = make_visit(mia, artist=ada, starts_at=heard + timedelta(days=9), heard_at=heard)

    sign_in(ada).post(reverse("reaction_new", args=[mia.pk]), {"words": "both lids swollen"})

    assert Reaction.objects.get().words == "both lids swollen"
    assert set(visit.messages.values_list("state", "reason")) == {("withheld", "on hold")}


def test_a_reaction_seen_on_an_earlier_day_keeps_that_day() -> None:
    studio = make_studio()
    mia = make_client(studio)
    browser = sign_in(make_staff(studio, "Olive", is_owner=True))
    form = {"words": "itchy", "day": "2026-01-05", "hour": "08:00"}

    browser.post(reverse("reaction_new", args=[mia.pk]), form)
    hour_alone = browser.post(reverse("reaction_new", args=[mia.pk]), {"words": "itchy", "hour": "08:00"})

    assert Reaction.objects.get().at.isoformat() == "2026-01-05T13:00:00+00:00"
    assert list(hour_alone.context["form"].errors) == ["day"]


def test_a_release_asks_both_questions_and_answers_neither() -> None:
    studio = make_studio()
    ada, mia = make_staff(studio, "Ada"), make_client(studio)
    make_visit(mia, artist=ada)
    reaction = records.record_reaction(client=mia, visit=None, words="itchy", by=ada, now=clock.now())
    browser, address = sign_in(ada), reverse("reaction_release", args=[reaction.pk])

    page = browser.get(address).content.decode()
    browser.post(address, {"clinician_consulted": "not_known"})
    held = Reaction.objects.get().released_at
    browser.post(address, {"clinician_consulted": "not_known", "test_first": "no"})

    assert "checked" not in page
    assert held is None
    released = Reaction.objects.get()
    assert (released.released_by, released.test_first, released.clinician_consulted) == (ada, False, "not_known")


def test_a_pause_of_a_day_gone_by_is_refused_in_words() -> None:
    studio = make_studio()
    mia = make_client(studio)
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    browser.post(reverse("client_pause", args=[mia.pk]), {"until": "2026-01-05"})
    page = browser.get(reverse("merges")).content.decode()

    mia.refresh_from_db()
    assert mia.paused_until is None
    assert "not ahead" in page


def test_a_pause_begins_and_ends() -> None:
    studio = make_studio()
    mia = make_client(studio)
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    browser.post(reverse("client_pause", args=[mia.pk]), {"until": "2099-01-05"})
    mia.refresh_from_db()
    paused = mia.paused_until
    browser.post(reverse("client_pause", args=[mia.pk]), {"resume": "1"})
    mia.refresh_from_db()

    assert (str(paused), mia.paused_until) == ("2099-01-05", None)


def test_a_stop_told_to_a_person_holds() -> None:
    studio = make_studio()
    zoe = make_client(studio, "Zoe", mobile="+12125550101")
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    browser.post(reverse("client_stop", args=[zoe.pk]), {"channel": "sms"})
    without_words = stops.standing(zoe)
    browser.post(reverse("client_stop", args=[zoe.pk]), {"channel": "sms", "words": "no more texts please"})

    assert without_words == {}
    assert stops.standing(zoe)["sms"].words == "no more texts please"


def test_a_declined_earlier_visit_is_counted_and_can_be_offered_again() -> None:
    studio = make_studio()
    mia = make_client(studio, "Mia")
    browser = sign_in(make_staff(studio, "Dee", is_front_desk=True))

    for _time in range(2):
        browser.post(reverse("client_declined", args=[mia.pk]))
    mia.refresh_from_db()
    counted = mia.earlier_declined
    browser.post(reverse("client_declined", args=[mia.pk]), {"again": "1"})

    mia.refresh_from_db()
    assert (counted, mia.earlier_declined) == (2, 0)
