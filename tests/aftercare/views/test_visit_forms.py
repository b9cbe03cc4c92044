from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from django.urls import reverse

from studio import clock
from studio.models import Visit
from tests.people import make_client, make_staff, make_studio, make_visit, sign_in

pytestmark = pytest.mark.django_db


def filled(**fields: Any) -> dict[str, Any]:
    return {"service": "fill", "day": "2031-07-01", "hour": "14:30", "status": "booked", **fields}


def test_a_visit_stands_at_its_hour_on_the_studios_wall_clock_and_is_planned() -> None:
    studio = make_studio()
    mia = make_client(studio, email="mia@mail.example")

    sign_in(make_staff(studio, "Dora", is_front_desk=True)).post(reverse("visit_new", args=[mia.pk]), filled())

    visit = Visit.objects.get()
    assert (visit.starts_at, visit.minutes) == (datetime(2031, 7, 1, 18, 30, tzinfo=UTC), 75)
    assert (visit.heard_as, visit.status) == ("booked", "booked")
    assert visit.messages.filter(occasion="prepare").exists()


def test_an_hour_that_the_clocks_skip_is_asked_for_anew() -> None:
    """America/New_York went, and by today's rules goes, from 02:00 to 03:00 on the second Sunday of March."""
    studio = make_studio()
    mia = make_client(studio)

    answer = sign_in(make_staff(studio, "Dora", is_front_desk=True)).post(
        reverse("visit_new", args=[mia.pk]), filled(day="2027-03-14", hour="02:30")
    )

    assert list(answer.context["form"].errors) == ["hour"]
    assert not Visit.objects.exists()


def test_of_an_hour_that_comes_twice_the_first_is_taken() -> None:
    """RFC 5545, 3.3.5: 2026-11-01 01:30 in America/New_York is 05:30 UTC."""
    studio = make_studio()
    mia = make_client(studio)

    sign_in(make_staff(studio, "Dora", is_front_desk=True)).post(
        reverse("visit_new", args=[mia.pk]), filled(day="2026-11-01", hour="01:30")
    )

    assert Visit.objects.get().starts_at == datetime(2026, 11, 1, 5, 30, tzinfo=UTC)


def test_a_moved_visit_shows_its_old_hour_and_takes_the_new_one() -> None:
    studio = make_studio()
    visit = make_visit(make_client(studio), starts_at=datetime(2031, 7, 1, 18, 30, tzinfo=UTC))
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))

    page = browser.get(reverse("visit_edit", args=[visit.pk])).content.decode()
    browser.post(reverse("visit_edit", args=[visit.pk]), filled(hour="09:00", minutes=90))

    assert 'value="14:30"' in page
    assert 'value="2031-07-01"' in page
    visit.refresh_from_db()
    assert (visit.starts_at.hour, visit.minutes, visit.revision) == (13, 90, 2)


def test_another_studios_artist_cannot_be_chosen() -> None:
    studio = make_studio()
    visit = make_visit(make_client(studio))
    ivy = make_staff(make_studio("elm"), "Ivy")

    answer = sign_in(make_staff(studio, "Dora", is_front_desk=True)).post(
        reverse("visit_edit", args=[visit.pk]), filled(artist=ivy.pk)
    )

    assert list(answer.context["form"].errors) == ["artist"]
    assert Visit.objects.get().artist is None


def test_an_artist_changes_her_own_visits_and_nobody_elses() -> None:
    studio = make_studio()
    ada = make_staff(studio, "Ada")
    mia = make_client(studio)
    hers, other = make_visit(mia, artist=ada), make_visit(mia)
    browser = sign_in(ada)

    assert browser.get(reverse("visit_edit", args=[hers.pk])).status_code == 200
    assert browser.get(reverse("visit_edit", args=[other.pk])).status_code == 403
    assert browser.post(reverse("visit_cancel", args=[other.pk])).status_code == 403


def test_no_artist_books_herself_into_another_clients_health_notes() -> None:
    studio = make_studio()
    ada = make_staff(studio, "Ada")
    mia, walk_in = make_client(studio), make_client(studio, "Zoe")
    make_visit(mia, artist=make_staff(studio, "Ivy"))
    browser = sign_in(ada)

    assert browser.get(reverse("visit_new", args=[mia.pk])).status_code == 403
    assert browser.get(reverse("visit_new", args=[walk_in.pk])).status_code == 200


def test_a_cancelled_visit_withdraws_what_was_planned() -> None:
    studio = make_studio()
    mia = make_client(studio, email="mia@mail.example")
    browser = sign_in(make_staff(studio, "Dora", is_front_desk=True))
    browser.post(reverse("visit_new", args=[mia.pk]), filled())
    visit = Visit.objects.get()

    browser.post(reverse("visit_cancel", args=[visit.pk]))

    visit.refresh_from_db()
    assert visit.status == "cancelled"
    assert set(visit.messages.values_list("state", flat=True)) == {"withdrawn"}


def test_cancelling_takes_a_post() -> None:
    studio = make_studio()
    visit = make_visit(make_client(studio))

    answer = sign_in(make_staff(studio, "Dora", is_front_desk=True)).get(reverse("visit_cancel", args=[visit.pk]))

    assert (answer.status_code, Visit.objects.get().status) == (405, "booked")


def test_a_sign_on_a_patch_test_leads_to_the_reaction() -> None:
    studio = make_studio()
    ada = make_staff(studio, "Ada")
    began = clock.now() - timedelta(days=2)
    visit = make_visit(make_client(studio), artist=ada, service="patch test", status="done", starts_at=began)

    answer = sign_in(ada).post(reverse("test_result", args=[visit.pk]), {"result": "sign"})

    visit.refresh_from_db()
    assert answer.headers["Location"] == reverse("reaction_new", args=[visit.client_id])
    assert (visit.test_result, visit.test_result_by) == ("sign", ada)


def test_the_page_of_a_result_never_says_passed_or_safe() -> None:
    studio = make_studio()
    began = clock.now() - timedelta(days=2)
    visit = make_visit(make_client(studio), service="patch test", status="done", starts_at=began)

    page = sign_in(make_staff(studio, "Olive", is_owner=True)).get(reverse("test_result", args=[visit.pk]))

    words = page.content.decode().lower()
    assert "passed" not in words
    assert "safe" not in words
