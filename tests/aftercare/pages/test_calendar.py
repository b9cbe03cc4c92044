"""A visit as a calendar entry, read again by a library (RFC 5545)."""

from __future__ import annotations

from datetime import timedelta

import pytest
from icalendar import Calendar

from aftercare.pages import calendar
from studio import records
from studio.models import Visit
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db


@pytest.fixture
def visit() -> Visit:
    studio = make_studio(phone="+1 212 555 0199", address="4 Birch Lane; 2nd floor, New York")
    return make_visit(make_client(studio, "Mia", last_name="Okafor", note="allergic"), note="sensitive eyes")


def test_it_is_one_event_with_what_the_standard_asks_for(visit: Visit) -> None:
    # RFC 5545, 3.6: VERSION and PRODID; 3.6.1: UID and DTSTAMP; 3.1: CRLF, and lines of at most 75 octets.
    body = calendar.entry(visit, "fill")

    read = Calendar.from_ical(body)
    (event,) = read.walk("VEVENT")
    assert not event.errors
    assert (str(read["VERSION"]), bool(read["PRODID"]), "METHOD" in read) == ("2.0", True, False)
    assert event.decoded("dtstart") == visit.starts_at
    assert event.decoded("dtend") == visit.booked_end
    assert event.decoded("dtstamp") == event.decoded("last-modified")
    assert (str(event["SUMMARY"]), str(event["STATUS"])) == ("Fill, Birch Lane", "CONFIRMED")
    assert str(event["LOCATION"]) == "4 Birch Lane; 2nd floor, New York"
    assert all(len(line) <= 75 for line in body.split(b"\r\n"))
    assert b"\n" not in body.replace(b"\r\n", b"")


def test_a_moved_visit_keeps_its_name_and_has_a_higher_sequence(visit: Visit) -> None:
    # RFC 5545, 3.8.4.7 and 3.8.7.4.
    (before,) = Calendar.from_ical(calendar.entry(visit, "fill")).walk("VEVENT")
    dee = make_staff(visit.studio, "Dee", is_front_desk=True)
    records.save_visit(
        studio=visit.studio,
        visit=visit,
        client=None,
        by=dee,
        now=NOW,
        starts_at=visit.starts_at + timedelta(days=1),
    )
    visit.refresh_from_db()

    (after,) = Calendar.from_ical(calendar.entry(visit, "fill")).walk("VEVENT")

    assert str(after["UID"]) == str(before["UID"])
    assert after["SEQUENCE"] > before["SEQUENCE"]
    assert after.decoded("last-modified") >= before.decoded("last-modified")
    assert after.decoded("dtstart") == before.decoded("dtstart") + timedelta(days=1)


@pytest.mark.parametrize("status", ["cancelled", "missed"])
def test_what_does_not_take_place_is_cancelled_in_the_calendar_too(visit: Visit, status: str) -> None:
    visit.status = status

    (event,) = Calendar.from_ical(calendar.entry(visit, "fill")).walk("VEVENT")

    assert str(event["STATUS"]) == "CANCELLED"


def test_no_word_on_health_and_no_way_to_her_page_stands_in_it(visit: Visit) -> None:
    body = calendar.entry(visit, "fill").decode()

    assert "sensitive" not in body
    assert "allergic" not in body
    assert "/v/" not in body
    assert "Okafor" not in body


def test_an_hour_when_the_clocks_go_back_is_the_moment_that_was_booked(visit: Visit) -> None:
    # 2026-11-01, 01:30 in New York is there twice; the first is 05:30 UTC (RFC 5545, 3.3.5).
    visit.starts_at = visit.starts_at.replace(year=2026, month=11, day=1, hour=5, minute=30)

    assert b"DTSTART:20261101T053000Z" in calendar.entry(visit, "fill")
