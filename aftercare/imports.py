"""The appointment book coming in: read, compare, write, plan. What the command, the page and the calendars share."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import asdict, dataclass, field
from datetime import date, datetime
from typing import Any

from django.db import transaction

from aftercare import planning
from studio.book import compare, csv, ics, importing
from studio.book.compare import Comparison
from studio.book.rows import BadRow, Book, Context
from studio.models import Studio

READERS = {"csv": csv.read, "ics": ics.read}
SHOWN_CHANGES = 50
Progress = Callable[[str, int, int], None]  # what is being done, how many of how many
Days = tuple[date, date]  # first and last, on the studio's wall clock


def _silent(_what: str, _done: int, _all: int) -> None:
    """Say nothing."""


@dataclass(slots=True)
class Result:
    """What an import did, or in a preview would do."""

    visits: dict[str, int]
    clients: dict[str, int]
    messages: dict[str, int]
    bad: list[BadRow]
    notes: list[str] = field(default_factory=list)
    unknown_services: list[str] = field(default_factory=list)
    gone: list[dict[str, str]] = field(default_factory=list)
    to_cancel: list[dict[str, str]] = field(default_factory=list)
    changes: list[dict[str, Any]] = field(default_factory=list)
    written: bool = False

    def contract(self) -> dict[str, Any]:
        """The JSON object that the command promises."""
        bad = [{"row": one.row, "field": one.field, "problem": one.problem} for one in self.bad]
        return {"visits": self.visits, "clients": self.clients, "messages": self.messages, "bad_rows": bad}

    def page(self) -> dict[str, Any]:
        """What the preview page shows; JSON."""
        return {**asdict(self), "bad_rows": [asdict(one) for one in self.bad]}


def context_of(studio: Studio) -> Context:
    """What reading needs to know of this studio."""
    names = {one.name: one.kind for one in studio.service_names.all()}
    return Context(studio.zone, studio.region, studio.date_order, names, studio.calendar_pattern)


def read(studio: Studio, data: bytes, format: str, now: datetime, progress: Progress = _silent) -> Book:
    """Read a file of the book; nothing is compared or written."""

    def step(done: int, total: int) -> None:
        progress("reading", done, total)

    return READERS[format](data, context_of(studio), now=now, progress=step)


def preview(studio: Studio, book: Book, whole: Days | None = None) -> Result:
    """Say what the book would change; nothing is written."""
    return _result(compare.compare(book, studio, whole=whole), book, studio)


def run(
    studio: Studio,
    book: Book,
    now: datetime,
    *,
    skip_bad: bool = False,
    dry_run: bool = False,
    whole: Days | None = None,
    progress: Progress = _silent,
) -> Result:
    """Write what the book changed and plan the messages; a book with a bad row writes nothing unless ``skip_bad``."""
    comparison = compare.compare(book, studio, whole=whole)
    result = _result(comparison, book, studio)
    if comparison.bad and not skip_bad:
        return result
    if dry_run:
        with transaction.atomic():
            _write(comparison, studio, now, result, progress)
            transaction.set_rollback(True)
        return result
    _write(comparison, studio, now, result, progress)
    result.written = True
    return result


def _write(comparison: Comparison, studio: Studio, now: datetime, result: Result, progress: Progress) -> None:
    concerned = importing.write(comparison, studio, now, lambda what: progress(what, 0, 0))
    total = len(concerned)
    # Also finishes the planning of an import that was interrupted: whoever is behind her plan is planned.
    counts = planning.catch_up(now, studio=studio, progress=lambda done: progress("planning clients", done, total))
    result.messages = _messages(counts)


def _messages(counts: Counter[str]) -> dict[str, int]:
    return {state: counts.get(state, 0) for state in ("planned", "withheld", "withdrawn")}


def _result(comparison: Comparison, book: Book, studio: Studio) -> Result:
    counts = comparison.counts()
    return Result(
        visits=counts["visits"],
        clients=counts["clients"],
        messages=_messages(Counter()),
        bad=comparison.bad,
        notes=comparison.notes,
        unknown_services=list(book.unknown_services),
        gone=[_visit(ref, studio) for ref in comparison.gone[:SHOWN_CHANGES]],
        to_cancel=[_visit(ref, studio) for ref in comparison.to_cancel],
        changes=_changes(comparison),
    )


def _visit(ref: Any, studio: Studio) -> dict[str, str]:
    starts = ref.visit.starts_at.astimezone(studio.zone)
    return {
        "visit": ref.reference,
        "client": ref.visit.client.name,
        "service": ref.visit.service,
        "starts_at": f"{starts:%Y-%m-%d %H:%M}",
    }


def _changes(comparison: Comparison) -> list[dict[str, Any]]:
    rows: list[dict[str, Any]] = []
    for client in comparison.clients.values():
        rows.extend({"of": "client", **asdict(change)} for change in client.changes)
    for visit in comparison.visits:
        rows.extend({"of": "visit", **asdict(change)} for change in visit.changes)
    return rows[:SHOWN_CHANGES]
