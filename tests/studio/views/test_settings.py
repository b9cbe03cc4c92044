from __future__ import annotations

import pytest
from django.test import Client as Browser
from django.urls import reverse

from studio.models import Adhesive, CalendarFeed, ServiceName, Studio
from tests.people import make_staff, make_studio, sign_in

pytestmark = pytest.mark.django_db


@pytest.fixture
def owner() -> Browser:
    return sign_in(make_staff(make_studio(), "Olive", is_owner=True))


def test_the_studios_facts_are_kept(owner: Browser) -> None:
    facts = {"name": "Elm", "time_zone": "Europe/Madrid", "region": "ES", "language": "es", "date_order": "dmy"}

    owner.post(reverse("studio_facts"), facts)

    assert {name: getattr(Studio.objects.get(), name) for name in facts} == facts


def test_a_clock_that_nobody_has_is_refused(owner: Browser) -> None:
    facts = {"name": "Elm", "time_zone": "Mars/Olympus", "region": "ES", "language": "es"}

    answer = owner.post(reverse("studio_facts"), facts)

    assert list(answer.context["form"].errors) == ["time_zone"]
    assert Studio.objects.get().name == "Birch Lane"


def test_a_closing_day_is_added_and_taken_off(owner: Browser) -> None:
    owner.post(reverse("closing_days"), {"date": "2031-12-25", "name": "Holiday"})
    day = Studio.objects.get().closing_days.get()

    owner.post(reverse("closing_day_remove", args=[day.pk]))

    assert str(day.date) == "2031-12-25"
    assert not Studio.objects.get().closing_days.exists()


def test_an_adhesive_is_added_and_changed(owner: Browser) -> None:
    owner.post(reverse("adhesives"), {"product": "Birch 4", "lot": "0226", "dry_hours": "24"})
    adhesive = Adhesive.objects.get()

    owner.post(reverse("adhesive", args=[adhesive.pk]), {"product": "Birch 4", "lot": "0226", "dry_hours": "0"})
    owner.post(reverse("adhesive", args=[adhesive.pk]), {"product": "Birch 4", "lot": "0226", "dry_hours": "73"})

    assert Adhesive.objects.get().dry_hours == 0


def test_a_service_name_is_kept_and_forgotten(owner: Browser) -> None:
    owner.post(reverse("service_names"), {"name": "Wispy Refresh", "kind": "fill"})
    page = owner.get(reverse("service_names")).content.decode()
    name = ServiceName.objects.get()

    owner.post(reverse("service_name_remove", args=[name.pk]))

    assert (name.name, name.kind) == ("wispy refresh", "fill")
    assert "wispy refresh" in page
    assert not ServiceName.objects.exists()


def test_a_pattern_that_cannot_be_used_names_its_line_and_column(owner: Browser) -> None:
    answer = owner.post(
        reverse("calendar"), {"form": "pattern", "calendar_pattern": "SUMMARY: {service} - {name}\nPLACE: {artist}"}
    )

    assert "Line 2, column 1" in answer.content.decode()
    assert Studio.objects.get().calendar_pattern == ""


def test_a_pattern_and_a_calendar_are_kept_apart(owner: Browser) -> None:
    owner.post(reverse("calendar"), {"form": "pattern", "calendar_pattern": "SUMMARY: {service} - {name}"})
    owner.post(reverse("calendar"), {"form": "feed", "address": "webcal://cal.example/a.ics", "every_minutes": "30"})

    assert Studio.objects.get().calendar_pattern == "SUMMARY: {service} - {name}"
    assert CalendarFeed.objects.get().address == "https://cal.example/a.ics"
    owner.post(reverse("calendar_remove"))
    assert not CalendarFeed.objects.exists()


def test_what_was_wrong_with_the_calendar_is_shown(owner: Browser) -> None:
    CalendarFeed.objects.create(
        studio=Studio.objects.get(), address="https://cal.example/a.ics", problem="The calendar answered 404."
    )

    assert "answered 404" in owner.get(reverse("calendar")).content.decode()
