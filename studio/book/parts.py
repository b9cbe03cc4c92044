"""A long file in parts, each of which can be written by itself."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TypeVar

from studio.book.compare import Comparison, VisitRow

Anything = TypeVar("Anything")
CHUNK = 500
PART = 1000  # visits in one transaction: no page or reply waits long for it


def parts(comparison: Comparison) -> Iterator[Comparison]:
    """Part what a comparison has to write so that a client stands with all her visits; the last part cancels."""
    visits: dict[str, list[VisitRow]] = {name: [] for name, row in comparison.clients.items() if row.changes}
    for row in comparison.visits:
        if _is_to_write(row):
            visits.setdefault(row.client, []).append(row)
    part = _empty(comparison)
    for reference, rows in visits.items():
        if len(part.visits) >= PART or len(part.clients) >= PART:
            yield part
            part = _empty(comparison)
        part.visits.extend(rows)
        if reference in comparison.clients:
            part.clients[reference] = comparison.clients[reference]
    part.to_cancel = comparison.to_cancel
    if part.visits or part.clients or part.to_cancel:
        yield part


def chunks(rows: Iterable[Anything]) -> Iterator[list[Anything]]:
    """Give the rows in lists of a size that any database takes as one list of arguments."""
    listed = list(rows)
    return (listed[start : start + CHUNK] for start in range(0, len(listed), CHUNK))


def _empty(comparison: Comparison) -> Comparison:
    return Comparison(comparison.source, renamed=comparison.renamed)


def _is_to_write(row: VisitRow) -> bool:
    if row.stale:
        return False
    says = row.row.visit_says
    return row.ref is None or bool(row.changes) or says.get("sequence") != row.ref.said.get("sequence")
