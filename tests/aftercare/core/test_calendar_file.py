"""A visit as a calendar file, read back by other readers and held to RFC 5545."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import icalendar
import pytest
import recurring_ical_events
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core import calendar_file
from aftercare.core.calendar_file import visit_ics

NEW_YORK = ZoneInfo("America/New_York")
MADE = datetime(2026, 10, 1, 12, tzinfo=UTC)


def ics(**changed: Any) -> bytes:
    given = {
        "uid": calendar_file.uid_of(9, "lashes.example"),
        "sequence": 3,
        "starts_at": datetime(2026, 10, 14, 10, 30, tzinfo=NEW_YORK),
        "minutes": 75,
        "summary": "Visit at Wrenfield Lash Room",
        "now": MADE,
    }
    return visit_ics(**{**given, **changed})


def event(file: bytes) -> Any:
    (found,) = icalendar.Calendar.from_ical(file).walk("VEVENT")
    return found


def test_what_a_program_needs_to_know_the_visit_again_is_there() -> None:
    """RFC 5545, 3.6 and 3.6.1: PRODID, VERSION, UID and DTSTAMP; RFC 5546, 3.2.1: METHOD and SEQUENCE."""
    calendar = icalendar.Calendar.from_ical(ics())

    assert (calendar["VERSION"], calendar["METHOD"]) == ("2.0", "PUBLISH")
    assert calendar["PRODID"]
    found = event(ics())
    assert (found["UID"], found["SEQUENCE"], found["STATUS"]) == ("visit-9@lashes.example", 3, "CONFIRMED")
    assert found["DTSTAMP"].dt == MADE


def test_the_file_s_media_type_names_its_method() -> None:
    """RFC 6047, 2.4: the method parameter is that of the object."""
    assert "method=PUBLISH" in calendar_file.MEDIA_TYPE


@pytest.mark.parametrize(
    ("starts_at", "utc"),
    [  # the clocks of New York go forward on 8 March and back on 1 November 2026
        (datetime(2026, 10, 14, 10, 30, tzinfo=NEW_YORK), datetime(2026, 10, 14, 14, 30, tzinfo=UTC)),
        (datetime(2026, 11, 2, 10, 30, tzinfo=NEW_YORK), datetime(2026, 11, 2, 15, 30, tzinfo=UTC)),
        (datetime(2026, 3, 8, 10, 30, tzinfo=NEW_YORK), datetime(2026, 3, 8, 14, 30, tzinfo=UTC)),
        (datetime(2027, 7, 1, 9, 0, tzinfo=ZoneInfo("Pacific/Chatham")), datetime(2027, 6, 30, 20, 15, tzinfo=UTC)),
        (datetime(2026, 7, 1, 9, 0, tzinfo=ZoneInfo("Etc/GMT+5")), datetime(2026, 7, 1, 14, 0, tzinfo=UTC)),
        (datetime(2026, 7, 1, 9, 0, tzinfo=UTC), datetime(2026, 7, 1, 9, 0, tzinfo=UTC)),
    ],
)
def test_another_reader_finds_the_same_moment(starts_at: datetime, utc: datetime) -> None:
    (found,) = recurring_ical_events.of(icalendar.Calendar.from_ical(ics(starts_at=starts_at))).between(
        utc - timedelta(days=1), utc + timedelta(days=1)
    )

    assert found.start.astimezone(UTC) == utc
    assert (found.end - found.start) == timedelta(minutes=75)


def test_the_file_s_own_rules_of_the_clock_lead_to_the_same_moment() -> None:
    """RFC 5545, 3.2.19: each TZID has its VTIMEZONE, and a program may know no other."""
    calendar = icalendar.Calendar.from_ical(ics(starts_at=datetime(2026, 11, 2, 10, 30, tzinfo=NEW_YORK)))
    (zone,) = calendar.walk("VTIMEZONE")
    (found,) = calendar.walk("VEVENT")

    assert found["DTSTART"].params["TZID"] == zone["TZID"] == "America/New_York"
    own = zone.to_tz(lookup_tzid=False)
    assert datetime(2026, 11, 2, 10, 30, tzinfo=own).utcoffset() == timedelta(hours=-5)
    assert datetime(2026, 10, 14, 10, 30, tzinfo=own).utcoffset() == timedelta(hours=-4)


def test_minutes_are_elapsed_ones_where_the_clocks_change_meanwhile() -> None:
    """3.6.1 and 3.8.2.5: DURATION is exact where it is in hours and minutes."""
    file = ics(starts_at=datetime(2026, 10, 31, 23, 30, tzinfo=NEW_YORK), minutes=180)

    assert b"DURATION:PT3H\r\n" in file
    assert b"DTEND" not in file


def test_no_line_is_longer_than_75_octets_and_no_letter_is_torn() -> None:
    """RFC 5545, 3.1."""
    file = ics(summary="é" * 300, location="漢" * 100)

    assert all(len(line) <= 75 for line in file.split(b"\r\n"))
    for line in file.split(b"\r\n"):
        line.decode("utf-8")
    assert event(file)["SUMMARY"] == "é" * 300


def test_a_cancelled_visit_is_crossed_out() -> None:
    assert event(ics(cancelled=True, sequence=4))["STATUS"] == "CANCELLED"


def test_the_same_visit_makes_the_same_file() -> None:
    assert ics() == ics()


@pytest.mark.parametrize("text", ["a; b, c \\ d\ne", "BEGIN:VEVENT\r\nUID:x", "END:VCALENDAR", "\x00bell\x07"])
def test_words_make_no_lines_of_their_own(text: str) -> None:
    file = ics(summary=text, location=text, description=text)

    assert file.count(b"BEGIN:VEVENT\r\n") == 1
    assert file.count(b"\r\nUID:") == 1
    plain = text.replace("\r\n", "\n").replace("\x00", "").replace("\x07", "")
    assert event(file)["SUMMARY"] == plain
    assert event(file)["DESCRIPTION"] == plain


@given(text=st.text(max_size=80))
def test_any_words_come_back(text: str) -> None:
    found = event(ics(summary="x" + text, description=text))

    assert found["SUMMARY"].startswith("x")
    assert len(found["SUMMARY"]) <= len(text) + 1


@pytest.mark.parametrize(
    ("changed", "said"), [({"starts_at": MADE.replace(tzinfo=None)}, "time zone"), ({"minutes": 0}, "0 minutes")]
)
def test_what_is_no_visit_is_refused(changed: dict[str, Any], said: str) -> None:
    with pytest.raises(ValueError, match=said):
        ics(**changed)
