from __future__ import annotations

from typing import Any

import pytest
from django.urls import reverse

from aftercare import stops
from studio.models import Client, Consent
from tests.people import NOW, make_client, make_staff, make_studio, make_visit, sign_in

pytestmark = pytest.mark.django_db
HEALTH_FIELDS = ("sensitive", "wears_lenses", "oily_lids", "note")


def filled(**fields: Any) -> dict[str, Any]:
    return {"first_name": "Mia", "mobile": "(212) 555-0101", **fields}


def test_a_client_is_added_with_her_consent_and_what_was_shown() -> None:
    desk = make_staff(make_studio(), "Dora", is_front_desk=True)
    answers = {"consent-sms_visits": "yes", "consent-how": "on paper", "consent-words_shown": "We text you."}

    answer = sign_in(desk).post(reverse("client_new"), filled(**answers))

    mia = Client.objects.get()
    assert answer.headers["Location"] == reverse("client", args=[mia.pk])
    assert (mia.mobile, mia.studio, mia.planned_revision) == ("+12125550101", desk.studio, mia.revision)
    consent = Consent.objects.get()
    assert (consent.channel, consent.purpose, consent.given, consent.by) == ("sms", "visits", True, desk)
    assert (consent.how, consent.words_shown) == ("on paper", "We text you.")


def test_a_consent_without_how_is_asked_for_and_nothing_is_written() -> None:
    desk = make_staff(make_studio(), "Dora", is_front_desk=True)

    answer = sign_in(desk).post(reverse("client_new"), filled(**{"consent-sms_visits": "yes"}))

    assert b"Say how she answered" in answer.content
    assert not Client.objects.exists()


def test_a_bad_number_stands_beside_its_field_and_nothing_is_written() -> None:
    desk = make_staff(make_studio(), "Dora", is_front_desk=True)

    answer = sign_in(desk).post(reverse("client_new"), filled(mobile="12"))

    assert "mobile" in answer.context["form"].errors
    assert not Client.objects.exists()


def test_what_the_front_desk_does_not_see_it_neither_shows_nor_changes() -> None:
    studio = make_studio()
    desk = make_staff(studio, "Dora", is_front_desk=True)
    mia = make_client(studio, sensitive=True, note="allergic to latex")
    browser = sign_in(desk)

    page = browser.get(reverse("client_edit", args=[mia.pk])).content.decode()
    browser.post(reverse("client_edit", args=[mia.pk]), filled(sensitive="no", note="nothing", last_name="Marsh"))

    for field in HEALTH_FIELDS:
        assert f'name="{field}"' not in page
    assert "latex" not in page
    mia.refresh_from_db()
    assert (mia.sensitive, mia.note, mia.last_name) == (True, "allergic to latex", "Marsh")


def test_an_artist_changes_the_health_notes_of_her_own_clients_only() -> None:
    studio = make_studio()
    ada = make_staff(studio, "Ada")
    hers, other = make_client(studio, "Mia"), make_client(studio, "Zoe")
    make_visit(hers, artist=ada)
    browser = sign_in(ada)

    browser.post(reverse("client_edit", args=[hers.pk]), filled(sensitive="yes"))
    refused = browser.post(reverse("client_edit", args=[other.pk]), filled(sensitive="yes"))

    hers.refresh_from_db()
    other.refresh_from_db()
    assert (hers.sensitive, other.sensitive, refused.status_code) == (True, None, 403)


def test_unknown_stays_unknown_until_someone_answers() -> None:
    studio = make_studio()
    mia = make_client(studio)
    browser = sign_in(make_staff(studio, "Olive", is_owner=True))

    browser.post(reverse("client_edit", args=[mia.pk]), filled(sensitive="", under_18="no"))

    mia.refresh_from_db()
    assert (mia.sensitive, mia.under_18) == (None, False)


def test_a_language_of_hers_that_is_not_in_the_list_is_kept() -> None:
    studio = make_studio()
    mia = make_client(studio, language="vi")
    browser = sign_in(make_staff(studio, "Olive", is_owner=True))

    page = browser.get(reverse("client_edit", args=[mia.pk])).content.decode()
    browser.post(reverse("client_edit", args=[mia.pk]), filled(language="vi"))

    assert '<option value="vi" selected>' in page
    mia.refresh_from_db()
    assert mia.language == "vi"


def test_a_later_yes_told_to_a_person_lifts_her_stop() -> None:
    studio = make_studio()
    desk = make_staff(studio, "Dora", is_front_desk=True)
    zoe = make_client(studio, "Zoe", mobile="+12125550101")
    stops.stop(zoe, "sms", words="STOP", by=None, now=NOW)
    browser = sign_in(desk)

    browser.post(reverse("client_consent", args=[zoe.pk]), {"sms_reminders": "yes", "how": "in person"})
    after_reminders = stops.standing(zoe)
    browser.post(reverse("client_consent", args=[zoe.pk]), {"sms_visits": "yes", "how": "in person"})

    assert list(after_reminders) == ["sms"]
    assert stops.standing(zoe) == {}
    assert zoe.consents.count() == 2


def test_a_question_that_was_not_asked_adds_no_answer() -> None:
    studio = make_studio()
    zoe = make_client(studio, "Zoe")

    sign_in(make_staff(studio, "Dora", is_front_desk=True)).post(reverse("client_consent", args=[zoe.pk]), {"how": ""})

    assert not zoe.consents.exists()
