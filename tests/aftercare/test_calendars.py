"""A visit as her calendar gets it."""

from __future__ import annotations

from datetime import UTC, timedelta

import icalendar
import pytest

from aftercare import calendars
from studio import records
from studio.models import Service, Visit
from tests.cast import Cast, make


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def test_the_file_is_of_the_studio_s_clock_and_says_nothing_on_health(cast: Cast) -> None:
    visit = cast.visit(cast.client("Mia", sensitive=True), cast.at(9, 3), Service.PATCH_TEST)

    file = calendars.of_visit(visit, cast.now, "en")

    (event,) = icalendar.Calendar.from_ical(file).walk("VEVENT")
    assert event["SUMMARY"] == "Visit at Wrenfield Lash Room"
    assert event.start.astimezone(UTC) == visit.starts_at.astimezone(UTC)
    assert b"atch" not in file
    assert b"Mia" not in file


def test_a_visit_that_moves_keeps_its_uid_and_gets_a_later_sequence(cast: Cast) -> None:
    visit = cast.visit(cast.client("Mia"), cast.at(9, 3))
    (before,) = icalendar.Calendar.from_ical(calendars.of_visit(visit, cast.now, "en")).walk("VEVENT")

    records.save_visit(
        studio=cast.studio, visit=visit, by=cast.dee, now=cast.now, starts_at=visit.starts_at + timedelta(hours=2)
    )
    moved = Visit.objects.get(pk=visit.pk)

    (after,) = icalendar.Calendar.from_ical(calendars.of_visit(moved, cast.now, "en")).walk("VEVENT")
    assert after["UID"] == before["UID"]
    assert after["SEQUENCE"] > before["SEQUENCE"]
    assert after.start - before.start == timedelta(hours=2)
