"""The events of an iCalendar stream (RFC 5545), as they stand in the file: properties by name, zones by identifier.

Only the nesting of components is ours; content lines, escapes, dates and durations are read by icalendar. Its reader of
whole calendars is not used, since it drops what it cannot parse before anyone can be told, and keeps a file's own time
zones in one list for the whole process, where the next studio's file would meet them.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta, tzinfo
from zoneinfo import ZoneInfo

from django.utils.translation import gettext as _
from icalendar.parser import Contentline
from icalendar.prop import vDate, vDatetime, vDuration

from studio.book.moments import YEARS
from studio.book.text import Unreadable, shown
from studio.book.tzids import zone_of

_FOLD = re.compile(rb"\r*\n[ \t]")
_LINE_END = re.compile(r"\r*\n|\r")
_NAME = re.compile(r"[A-Za-z0-9-]+(?=[;:])")
_USED = frozenset(
    [
        *("UID", "SEQUENCE", "DTSTAMP", "LAST-MODIFIED", "STATUS"),
        *("SUMMARY", "DESCRIPTION", "LOCATION", "CATEGORIES", "COMMENT", "CONTACT", "ATTENDEE", "ORGANIZER"),
        *("DTSTART", "DTEND", "DURATION", "RRULE", "EXRULE", "RDATE", "EXDATE", "RECURRENCE-ID"),
    ]
)


class Odd(ValueError):
    """A property that cannot be used; ``field`` is its name, the message a sentence with the value and the cure."""

    def __init__(self, field: str, value: str, problem: str) -> None:
        super().__init__(problem)
        self.field = field
        self.value = value


@dataclass(frozen=True, slots=True)
class Property:
    """One content line: its parameters (names in capitals) and its value, unescaped (3.3.11)."""

    parameters: dict[str, str]
    value: str


@dataclass(slots=True)
class Calendar:
    """What an event needs to know of the calendar around it."""

    method: str = ""
    scale: str = ""
    zones: dict[str, tzinfo] = field(default_factory=dict)
    own_zones: dict[str, str] = field(default_factory=dict)  # TZID to the text of its VTIMEZONE


@dataclass(slots=True)
class Event:
    """One VEVENT. ``number`` is its ordinal in the file, from 1."""

    number: int
    calendar: Calendar
    properties: dict[str, list[Property]] = field(default_factory=dict)

    def first(self, name: str) -> Property | None:
        """Return the first property of this name."""
        return next(iter(self.all(name)), None)

    def all(self, name: str) -> list[Property]:
        """Return all properties of this name."""
        return self.properties.get(name, [])

    def text(self, name: str) -> str:
        """Return the texts of all properties of this name, a line each."""
        return "\n".join(found.value for found in self.all(name))

    def cancelled(self) -> bool:
        """Whether the event, or the whole calendar by its METHOD (RFC 5546), is a cancellation."""
        return self.calendar.method == "CANCEL" or self.text("STATUS").strip().upper() == "CANCELLED"

    def all_day(self) -> bool:
        """Whether the event has a date and no hour."""
        start = self.first("DTSTART")
        return start is not None and _is_date(start)

    def moment(self, name: str, wall: ZoneInfo) -> datetime | None:
        """Return a DATE-TIME property with its zone; one without a zone is the wall clock's. Raises :class:`Odd`."""
        found = self.first(name)
        return None if found is None else self.one_moment(name, found, found.value, wall)

    def one_moment(self, name: str, found: Property, value: str, wall: ZoneInfo) -> datetime:
        """Return one of the values of a DATE-TIME property with its zone. Raises :class:`Odd`."""
        value = value.strip()
        if value[-1:] in ("Z", "z"):
            zone: tzinfo = ZoneInfo("UTC")
        elif tzid := found.parameters.get("TZID", ""):
            zone = self._zone(name, tzid)
        else:
            zone = wall
        try:
            local: datetime = vDatetime.from_ical(value.upper().removesuffix("Z"))
        except ValueError:
            problem = _('{name} "{value}" is no date and hour: write it like 20260312T143000.').format(
                name=name, value=shown(value)
            )
            raise Odd(name, value, problem) from None
        if local.year not in YEARS:
            problem = _(
                '{name} "{value}" is not between the years 2000 and 2100: check the year and correct it.'
            ).format(name=name, value=shown(value))
            raise Odd(name, value, problem)
        return local.replace(tzinfo=zone)

    def _zone(self, name: str, tzid: str) -> tzinfo:
        zones = self.calendar.zones
        if tzid not in zones:
            zone = zone_of(tzid, self.calendar.own_zones.get(tzid, ""))
            if zone is None:
                problem = _(
                    '{name} is in the time zone "{value}", which is neither an IANA name nor described in the '
                    "file: write a name like America/New_York, or export the calendar with its VTIMEZONE."
                ).format(name=name, value=shown(tzid))
                raise Odd(name, tzid, problem)
            zones[tzid] = zone
        return zones[tzid]

    def sequence(self) -> int:
        """Return SEQUENCE, 0 if there is none. Raises :class:`Odd`."""
        found = self.first("SEQUENCE")
        value = found.value.strip() if found else "0"
        if not re.fullmatch(r"\d{1,9}", value, re.ASCII):
            raise Odd(
                "SEQUENCE",
                value,
                _('SEQUENCE "{value}" is no whole number: remove it or write 0.').format(value=shown(value)),
            )
        return int(value)


def parse_date(value: str) -> date | None:
    """Return a DATE value, or ``None`` for what is none."""
    try:
        day: date = vDate.from_ical(value.strip())
    except ValueError:
        return None
    return day


def parse_duration(name: str, value: str) -> timedelta:
    """Return a DURATION value. Raises :class:`Odd` for the property ``name``."""
    try:
        length: timedelta = vDuration.from_ical(value.strip().upper())
    except ValueError:
        raise Odd(
            name,
            value,
            _('{name} "{value}" is no length of time: write it like PT1H15M.').format(name=name, value=shown(value)),
        ) from None
    return length


def _is_date(found: Property) -> bool:
    return found.parameters.get("VALUE", "").upper() == "DATE" or bool(re.fullmatch(r"\d{8}", found.value.strip()))


def unfold(data: bytes) -> bytes:
    """Return the stream with its lines unfolded (3.1), in bytes: a fold may fall inside a character."""
    return _FOLD.sub(b"", data)


def events(text: str) -> tuple[list[Event], list[str]]:
    """Return the events of an unfolded stream, and notes. Raises :class:`~studio.book.text.Unreadable`."""
    found: list[Event] = []
    notes: list[str] = []
    open_parts: list[str] = []
    calendar = Calendar()
    zone_lines: list[str] = []
    for name, line in _lines(text):
        inside = open_parts[1] if len(open_parts) > 1 else ""
        if name in ("BEGIN", "END"):
            part = line.partition(":")[2].strip().upper()
            _nest(open_parts, name, part, row=max(len(found), 1))
            if name == "BEGIN" and open_parts == ["VCALENDAR"]:
                calendar = Calendar()
            elif name == "BEGIN" and open_parts == ["VCALENDAR", "VEVENT"]:
                found.append(Event(len(found) + 1, calendar))
            elif name == "BEGIN" and open_parts == ["VCALENDAR", "VTIMEZONE"]:
                zone_lines = []
        elif open_parts == ["VCALENDAR", "VEVENT"]:
            _take(found[-1], name, line, notes)
        elif open_parts == ["VCALENDAR"] and name in ("METHOD", "CALSCALE"):
            _about(calendar, name, line)
        if inside == "VTIMEZONE" or open_parts == ["VCALENDAR", "VTIMEZONE"]:
            zone_lines.append(line)
            if name == "END" and open_parts == ["VCALENDAR"]:
                _keep_zone(calendar, zone_lines)
    if open_parts:
        part = open_parts[-1]
        problem = _("The calendar breaks off inside {value}: export or fetch it again, it came only in part.").format(
            value=shown(part)
        )
        raise Unreadable("file", part, problem, row=max(len(found), 1))
    return found, notes


def _lines(text: str) -> Iterator[tuple[str, str]]:
    started = False
    for line in _LINE_END.split(text):
        if not line.strip():
            continue
        if not started and line.strip().upper() != "BEGIN:VCALENDAR":
            problem = _('"{value}" does not begin a calendar: choose an iCalendar file, or the format csv.').format(
                value=shown(line.strip())
            )
            raise Unreadable("file", line.strip(), problem)
        started = True
        name = _NAME.match(line)
        yield (name.group().upper() if name else ""), line


def _nest(open_parts: list[str], name: str, part: str, *, row: int) -> None:
    if name == "BEGIN":
        open_parts.append(part)
    elif open_parts and open_parts[-1] == part:
        open_parts.pop()
    else:
        still = shown(open_parts[-1]) if open_parts else "nothing"
        problem = _('"{value}" comes while {still} is open: export or fetch the calendar again.').format(
            value=shown(f"END:{part}"), still=still
        )
        raise Unreadable("file", f"END:{part}", problem, row=row)


def _about(calendar: Calendar, name: str, line: str) -> None:
    value = line.partition(":")[2].strip().upper()
    if name == "METHOD":
        if value not in ("", "PUBLISH", "REQUEST", "ADD", "CANCEL"):
            problem = _('METHOD "{value}" makes this an answer to an invitation: export the calendar itself.').format(
                value=shown(value)
            )
            raise Unreadable("METHOD", value, problem)
        calendar.method = value
    elif value != "GREGORIAN":
        problem = _('CALSCALE "{value}" is not the calendar in use here: export the calendar as GREGORIAN.').format(
            value=shown(value)
        )
        raise Unreadable("CALSCALE", value, problem)


def _take(event: Event, name: str, line: str, notes: list[str]) -> None:
    if name in _USED:
        try:
            _name, parameters, value = Contentline(line).parts()
        except ValueError:
            name = ""
        else:
            flat = {
                key.upper(): ",".join(text) if isinstance(text, list) else str(text) for key, text in parameters.items()
            }
            event.properties.setdefault(name, []).append(Property(flat, value))
    if not name:
        notes.append(
            _('Event {number}: the line "{value}" is no property and was left out.').format(
                number=event.number, value=shown(line)
            )
        )


def _keep_zone(calendar: Calendar, lines: list[str]) -> None:
    for line in lines:
        if line.upper().startswith(("TZID:", "TZID;")):
            calendar.own_zones.setdefault(line.partition(":")[2].strip(), "\r\n".join([*lines, ""]))
