"""Files of what was seen of lash sets, a reading a row, for forecasts without a database."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date
from functools import lru_cache
from pathlib import Path

from django.core.management.base import CommandError

from aftercare.core.shedding import History, LashSet, Seen
from studio.book import table
from studio.book.text import Unreadable, clean, decode, shown

NEEDED = ("client", "set_on", "observed_on", "fraction_left")
COLUMNS = (*NEEDED, "adhesive_lot")
TELL_EVERY = 100_000

_DATE = re.compile(r"\d{4}-\d{2}-\d{2}", re.ASCII)
_FRACTION = re.compile(r"(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d{1,3})?", re.ASCII | re.IGNORECASE)  # 5e-05, too
_PERCENT = re.compile(rf"(?:{_FRACTION.pattern})\s*%", re.ASCII | re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Observations:
    """What a file says: each client's history in the order of the file."""

    histories: list[History]
    readings: int
    notes: list[str]


@dataclass(slots=True)
class _Set:
    lot: str = ""
    seen: set[tuple[date, float]] = field(default_factory=set)  # a row that is there twice is one reading


@dataclass(slots=True)
class _Client:
    sets: dict[date, _Set] = field(default_factory=dict)
    worn: date | None = None
    worn_row: int = 0


@dataclass(frozen=True, slots=True)
class _Row:
    client: str
    set_on: date
    seen: tuple[date, float] | None  # None: the set that she wears
    lot: str


class _Bad(ValueError):
    def __init__(self, field: str, problem: str) -> None:
        super().__init__(problem)
        self.field = field


def read(file: Path, today: date | None, say: Callable[[str], None]) -> Observations:
    """Read a whole file; with ``today``, a date after it is refused.

    CommandError: the file cannot be read, or some of its rows cannot; the message names the row, field, value and cure
    of every one, so that they can be mended in one go.
    """
    try:
        data = file.read_bytes()
    except OSError as error:
        raise CommandError(f"{file} cannot be read ({error.strerror}): name a CSV file of observations.") from error
    try:
        text, note = decode(data)
        del data
        found = table.read(text, COLUMNS, NEEDED)
        clients, bad = _gather(found, today, say)
    except Unreadable as error:
        one = error.bad
        raise CommandError(f"{file}: nothing was written.\nrow {one.row}, {one.field}: {one.problem}") from error
    if bad:
        raise CommandError("\n".join([f"{file}: {len(bad)} bad rows, nothing was written.", *bad]))
    return _observations(clients, [note] * bool(note) + found.note("this command"))


def day(text: str) -> date:
    """Return the date that ``text`` states as ISO 8601, such as 2026-03-09; ValueError says what to write."""
    try:
        if not _DATE.fullmatch(text):
            raise ValueError
        return date.fromisoformat(text)
    except ValueError:
        raise ValueError(f'"{shown(text)}" is not a date: write it like 2026-03-09.') from None


def _gather(found: table.Table, today: date | None, say: Callable[[str], None]) -> tuple[dict[str, _Client], list[str]]:
    clients: dict[str, _Client] = {}
    bad: list[str] = []
    for done, (number, record) in enumerate(found.rows, start=1):
        try:
            row = _row(record, found, today)
            _add(row, number, clients.setdefault(row.client, _Client()))
        except _Bad as problem:
            bad.append(f"row {number}, {problem.field}: {problem}")
        if done % TELL_EVERY == 0:
            say(f"{done:,} rows read")
    bad += _worn_too_early(clients)
    return clients, bad


def _row(record: list[str], found: table.Table, today: date | None) -> _Row:
    if misfit := table.shape(record, found.width):
        raise _Bad("row", misfit[1])
    cells = {name: clean(record[place]) for place, name in found.columns}
    if not cells["client"]:
        raise _Bad("client", "client is blank: write whose set it is in each row.")
    set_on = _day("set_on", cells["set_on"], today)
    seen_on, share = cells["observed_on"], cells["fraction_left"]
    lot = cells.get("adhesive_lot", "")
    if not seen_on and not share:
        return _Row(cells["client"], set_on, None, _kept(lot))
    both = "write both, or leave both blank for the set that she now wears"
    if not seen_on:
        raise _Bad("observed_on", f'observed_on is blank while fraction_left is "{shown(share)}": {both}.')
    if not share:
        raise _Bad("fraction_left", f'fraction_left is blank while observed_on is "{shown(seen_on)}": {both}.')
    observed_on = _day("observed_on", seen_on, today)
    if observed_on < set_on:
        raise _Bad(
            "observed_on", f"{observed_on} lies before set_on, {set_on}: correct one of the two, or swap the two."
        )
    return _Row(cells["client"], set_on, (observed_on, _fraction(share)), _kept(lot))


def _day(field: str, text: str, today: date | None) -> date:
    if not text:
        raise _Bad(field, f"{field} is blank: write the date like 2026-03-09.")
    try:
        found = _known_day(text)
    except ValueError as problem:
        raise _Bad(field, str(problem)) from None
    if today and found > today:
        raise _Bad(field, f"{found} lies after today, {today}: correct it, or give a later --today.")
    return found


# Few dates, shares and lots stand in many rows: one object each keeps a long file small in memory.
_known_day = lru_cache(maxsize=20_000)(day)


@lru_cache(maxsize=20_000)
def _kept(lot: str) -> str:
    return lot


@lru_cache(maxsize=20_000)
def _fraction(text: str) -> float:
    if _PERCENT.fullmatch(text):
        raise _Bad("fraction_left", f'"{shown(text)}" is unclear: write what was left from 0 to 1, such as 0.6.')
    if not _FRACTION.fullmatch(text):
        raise _Bad("fraction_left", f'"{shown(text)}" is not a number from 0 to 1: write one such as 0.6.')
    found = float(text.replace(",", "."))
    if found > 1:
        raise _Bad("fraction_left", f'"{shown(text)}" is unclear: write what was left from 0 to 1, such as 0.6.')
    return found


def _add(row: _Row, number: int, client: _Client) -> None:
    """Add what a row says to its client; raise where it contradicts an earlier row."""
    lash_set = client.sets.setdefault(row.set_on, _Set(row.lot))
    if row.lot and lash_set.lot and row.lot != lash_set.lot:
        raise _Bad(
            "adhesive_lot",
            f'"{shown(row.lot)}" is not the lot that an earlier row has for the same set, "{shown(lash_set.lot)}": '
            "write one lot in all rows of a set.",
        )
    lash_set.lot = lash_set.lot or row.lot
    if row.seen:
        lash_set.seen.add(row.seen)
    elif client.worn:
        raise _Bad(
            "observed_on",
            f'row {client.worn_row} says already which set "{shown(row.client)}" now wears: leave observed_on and '
            "fraction_left blank in one row a client.",
        )
    else:
        client.worn, client.worn_row = row.set_on, number


def _worn_too_early(clients: dict[str, _Client]) -> list[str]:
    """Complain of a set said to be worn although a later one was put on."""
    return [
        f'row {client.worn_row}, set_on: {client.worn} is not the last set of "{shown(name)}", another was put on '
        f"on {max(client.sets)}: leave observed_on and fraction_left blank for her last set alone."
        for name, client in clients.items()
        if client.worn and client.worn != max(client.sets)
    ]


def _observations(clients: dict[str, _Client], notes: list[str]) -> Observations:
    readings = sum(len(one.seen) for client in clients.values() for one in client.sets.values())
    names = list(clients)
    # Each is let go as its history is made, so that a long file is not held twice.
    return Observations([_history(name, clients.pop(name)) for name in names], readings, notes)


def _history(name: str, client: _Client) -> History:
    sets = {on: _lash_set(on, client.sets[on]) for on in sorted(client.sets)}
    worn = sets.pop(client.worn) if client.worn else None
    return History(name, tuple(sets.values()), worn)


def _lash_set(on: date, known: _Set) -> LashSet:
    # On the day itself nothing can be gone yet: such a reading says nothing.
    return LashSet(on, known.lot, tuple(Seen(day, share) for day, share in sorted(known.seen) if day > on))
