"""What a reader of the appointment book hands on: rows that can be used, rows that cannot, and remarks.

A reader (:mod:`studio.book.csv`, :mod:`studio.book.ics`) turns the bytes of one file into a :class:`Book`. It knows no
database: comparing with what the book said before, and writing, come after it.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from types import MappingProxyType
from zoneinfo import ZoneInfo

Value = str | int | float | bool

# Minutes set aside for a visit whose length the book does not state. Common practice, no source.
SERVICES: Mapping[str, int] = MappingProxyType(
    {
        "full set": 180,
        "fill": 75,
        "removal": 45,
        "patch test": 15,
        "touch-up": 30,
        "lift": 60,
        "consultation": 30,
        "other": 30,
    }
)

CLIENT_COLUMNS = (
    "first_name",
    "last_name",
    "mobile",
    "email",
    "time_zone",
    "language",
    "sms_ok",
    "email_ok",
    "sms_reminders_ok",
    "email_reminders_ok",
    "sensitive",
    "under_18",
    "wears_lenses",
)
VISIT_COLUMNS = ("service", "artist", "starts_at", "minutes", "status", "share_left", "adhesive_lot", "adhesive")
COLUMNS = ("visit", "client", *CLIENT_COLUMNS, *VISIT_COLUMNS)
NEEDED = ("visit", "client", "first_name", "service", "starts_at")


@dataclass(frozen=True, slots=True)
class Context:
    """What reading needs to know of the studio.

    ``zone`` is the studio's wall clock; ``region`` an ISO 3166 alpha-2 code, for phone numbers written without a
    country code; ``date_order`` is ``"dmy"``, ``"mdy"`` or ``""``, which refuses slashed dates. ``service_names`` is
    the owner's own table from a name (folded by :func:`studio.book.text.fold`) to a kind of service, or to ``""`` for
    what is not a visit at all; ``pattern`` is the owner's pattern for calendars (:mod:`studio.book.pattern`), ``""``
    for the usual reading.
    """

    zone: ZoneInfo
    region: str
    date_order: str = ""
    service_names: Mapping[str, str] = field(default_factory=dict)
    pattern: str = ""


@dataclass(frozen=True, slots=True)
class Row:
    """One visit as the book states it, with only what it states.

    ``number`` is the spreadsheet's row (the header is row 1; a line break inside quotes does not count) or the
    ordinal of the event in a calendar, from 1. ``visit`` and ``client`` are the book's own references; ``client`` is
    ``""`` only for a cancelled event that no longer says whose it was. ``starts_at`` is UTC, ``2026-03-09T18:30:00Z``;
    ``minutes`` whole minutes; ``share_left`` percent from 0 to 100; ``mobile`` E.164. From a calendar ``visit_says``
    also has ``sequence``.
    """

    number: int
    visit: str
    client: str
    visit_says: dict[str, Value]
    client_says: dict[str, Value]


@dataclass(frozen=True, slots=True)
class BadRow:
    """One field that cannot be used. ``problem`` is a sentence with the value, what is wrong with it, and the cure."""

    row: int
    field: str
    value: str
    problem: str


@dataclass(frozen=True, slots=True)
class Book:
    """What one file says. A row with a bad field is in ``bad`` only.

    ``source`` is ``"csv"`` or ``"ics"``; ``notes`` are sentences that stop nothing; ``unknown_services`` are the names
    of services that are in no table, as written, once each; ``seen`` holds the reference of every visit in the file,
    those of bad rows too: a visit whose row is bad is not missing from the book.

    A calendar states an event in full, its repetitions included: ``stated`` holds the UID of each event that was read
    without fault, with its SEQUENCE, and ``reach`` the first and last moment up to which what repeats is written out.
    A known visit of such an event that falls in between and is not seen is off.
    """

    source: str
    rows: tuple[Row, ...]
    bad: tuple[BadRow, ...]
    notes: tuple[str, ...] = ()
    unknown_services: tuple[str, ...] = ()
    seen: frozenset[str] = frozenset()
    stated: Mapping[str, int] = field(default_factory=dict)
    reach: tuple[datetime, datetime] | None = None
