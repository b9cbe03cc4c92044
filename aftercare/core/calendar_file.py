"""One visit as a calendar file (RFC 5545), for her own calendar: added once, moved or crossed out by a later file.

A program that knows the UID takes the file with the higher SEQUENCE (RFC 5546, 2.1.5), so both come from the visit and
never from the moment. Times are the studio's wall clock with its rules beside them (3.6.5): that is where she must be.
"""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final

from icalendar import Calendar, Event, Timezone, vDuration

MEDIA_TYPE: Final = 'text/calendar; method=PUBLISH; charset="utf-8"'
FILE_NAME: Final = "visit.ics"
_AROUND = timedelta(days=400)  # of the clock's rules as much as any program needs to place this one visit


def uid_of(visit: int, host: str) -> str:
    """Return the visit's name in every calendar that it ever gets into; ``host`` is the service's own."""
    return f"visit-{visit}@{host}"


def visit_ics(
    *,
    uid: str,
    sequence: int,
    starts_at: datetime,
    minutes: int,
    summary: str,
    now: datetime,
    location: str = "",
    description: str = "",
    url: str = "",
    cancelled: bool = False,
) -> bytes:
    """Return the calendar file of one visit.

    ``starts_at`` is aware, on the studio's wall clock (a ``ZoneInfo``); ``sequence`` rises whenever the visit changes.
    The words are plain text: the caller keeps health out of them, as calendars are shown on locked screens and shared.
    Raises ValueError where ``starts_at`` is naive or there are no minutes.
    """
    if starts_at.tzinfo is None:
        raise ValueError("starts_at has no time zone: give the studio's.")
    if minutes < 1:
        raise ValueError(f"A visit of {minutes} minutes is none: give 1 or more.")
    event = Event()
    event.add("uid", uid)
    event.add("dtstamp", now)
    event.add("sequence", sequence)
    event.add("dtstart", starts_at)
    # How long, not until when: an end on the wall clock would be an hour off where the clocks change meanwhile.
    event["duration"] = vDuration(timedelta(minutes=minutes))
    event.add("summary", _plain(summary))
    event.add("status", "CANCELLED" if cancelled else "CONFIRMED")
    event.add("class", "PRIVATE")
    for name, text in (("location", location), ("description", description)):
        if text.strip():
            event.add(name, _plain(text))
    if url:
        event.add("url", url)
    return _file(event, starts_at)


def _file(event: Event, starts_at: datetime) -> bytes:
    calendar = Calendar()
    calendar.add("prodid", "-//Aftercare for lash studios//Visits//EN")
    calendar.add("version", "2.0")
    calendar.add("calscale", "GREGORIAN")
    calendar.add("method", "PUBLISH")
    if getattr(starts_at.tzinfo, "key", "UTC") != "UTC":
        day = starts_at.date()
        calendar.add_component(
            Timezone.from_tzinfo(starts_at.tzinfo, first_date=day - _AROUND, last_date=day + _AROUND)
        )
    calendar.add_component(event)
    written: bytes = calendar.to_ical()
    return written


def _plain(text: str) -> str:
    """Take out what no TEXT may hold (3.1: controls but the tab), and settle line ends."""
    lines = text.replace("\r\n", "\n").replace("\r", "\n")
    return "".join(one for one in lines if one in "\n\t" or one.isprintable() or one in "\u200c\u200d").strip()
