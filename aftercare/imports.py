"""The appointment book coming in: read, compare, write, forecast, plan. Shared by command, page and calendars."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Collection, Sequence
from dataclasses import asdict, dataclass, field
from datetime import datetime
from typing import Any

from django.db import transaction
from django.utils.translation import gettext as _

from aftercare import forecasting, upkeep
from studio.book import compare, csv, ics, importing
from studio.book.compare import Comparison
from studio.book.importing import Overtaken
from studio.book.missing import Days, Missing
from studio.book.parts import chunks, parts
from studio.book.rows import BadRow, Book, Context
from studio.models import Studio, VisitRef
from studio.turns import let_others_in

READERS = {"csv": csv.read, "ics": ics.read}
SHOWN_CHANGES = 50
MOST_OVERTAKEN = 5  # times that another import may come in between before this one gives up
Progress = Callable[[str, int, int], None]  # what is being done, how many of how many


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
    seen: Collection[str] | None = None,
    progress: Progress = _silent,
) -> Result:
    """Write what the book changed, forecast and plan; a book with a bad row writes nothing unless ``skip_bad``.

    ``whole`` and ``seen`` as for :func:`studio.book.compare.compare`. Raises Overtaken where other imports of the same
    visits keep coming in between.
    """
    comparison = compare.compare(book, studio, whole=whole, seen=seen)
    result = _result(comparison, book, studio)
    if comparison.bad and not skip_bad:
        return result
    if dry_run:
        result.messages = _messages(_try(comparison, studio, now, progress))
        return result
    if comparison.visits:  # a header alone, an empty calendar: the first book is still to come
        _note_the_first(studio, now)
    for overtaken in range(MOST_OVERTAKEN, -1, -1):
        try:
            concerned = importing.write(comparison, studio, now, lambda what: progress(what, 0, 0))
            break
        except Overtaken:
            if not overtaken:
                raise
            comparison = compare.compare(book, studio, whole=whole, seen=seen)
    _learn(studio, now, progress)
    result.messages = _messages(_plan(studio, now, len(concerned), progress))
    result.written = True
    return result


def _try(comparison: Comparison, studio: Studio, now: datetime, progress: Progress) -> Counter[str]:
    """Write and plan each part, and take it back: a dry run keeps others waiting no longer than a real one."""
    counts: Counter[str] = Counter()
    done = 0
    for part in parts(comparison):
        progress(_("trying visits"), done, len(comparison.visits))
        done += len(part.visits)
        with transaction.atomic():
            _note_the_first(studio, now)
            concerned = importing.write_part(part, studio, now)
            forecasting.fit_if_grown(now, studio=studio)
            counts += upkeep.plan_clients(sorted(concerned), now)
            transaction.set_rollback(True)
        let_others_in()
    return counts


def _note_the_first(studio: Studio, now: datetime) -> None:
    """Note when the first book came in, before its first visit is planned: what was due by then waits for a person."""
    Studio.objects.filter(pk=studio.pk, first_import_at=None).update(first_import_at=now)


def _learn(studio: Studio, now: datetime, progress: Progress) -> None:
    """Fit at once where many readings came in: a first book's forecasts do not wait for the night."""
    progress(_("learning from the shares left"), 0, 0)
    if forecasting.fit_if_grown(now, studio=studio):
        forecasting.renew(studio, now)


def _plan(studio: Studio, now: datetime, total: int, progress: Progress) -> Counter[str]:
    # Also finishes the planning of an import that was interrupted: whoever is behind her plan is planned.
    return upkeep.catch_up(now, studio=studio, progress=lambda done: progress(_("planning clients"), done, total))


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
        gone=_named(comparison.gone[:SHOWN_CHANGES], studio),
        to_cancel=_named(comparison.to_cancel, studio),
        changes=_changes(comparison),
    )


def _named(missing: Sequence[Missing], studio: Studio) -> list[dict[str, str]]:
    """Describe visits for a person, in the order given."""
    refs: dict[int, VisitRef] = {}
    for some in chunks(missing):
        refs.update(VisitRef.objects.select_related("visit__client").in_bulk([one.pk for one in some]))
    return [_visit(refs[one.pk], studio) for one in missing if one.pk in refs]


def _visit(ref: VisitRef, studio: Studio) -> dict[str, str]:
    starts = ref.visit.starts_at.astimezone(studio.zone)
    return {
        "visit": ref.reference,
        "client": ref.visit.client.name,
        "service": ref.visit.service,
        "starts_at": f"{starts:%Y-%m-%d %H:%M}",
        "status": ref.visit.status,
    }


def _changes(comparison: Comparison) -> list[dict[str, Any]]:
    rows: list[dict[str, Any]] = []
    for client in comparison.clients.values():
        rows.extend({"of": "client", **asdict(change)} for change in client.changes)
    for visit in comparison.visits:
        rows.extend({"of": "visit", **asdict(change)} for change in visit.changes)
    return rows[:SHOWN_CHANGES]
