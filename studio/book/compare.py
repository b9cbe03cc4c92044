"""What a file changes: each field is compared with what the same book last said. Nothing is written here."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date

from studio.book.rows import BadRow, Book, Row, Value
from studio.book.text import fold
from studio.models import ClientRef, Studio, Visit, VisitRef

CHUNK = 500


@dataclass(frozen=True, slots=True)
class Change:
    """One field of one visit or client, as the book said it before and says it now (None: said nothing)."""

    reference: str
    field: str
    before: Value | None
    after: Value


@dataclass(slots=True)
class ClientRow:
    """A client as all her rows state her; ``ref`` is None where the book has not named her before."""

    reference: str
    says: dict[str, Value]
    ref: ClientRef | None = None
    changes: list[Change] = field(default_factory=list)


@dataclass(slots=True)
class VisitRow:
    """A visit as its row states it; ``ref`` is None where the book has not named it before."""

    row: Row
    ref: VisitRef | None = None
    changes: list[Change] = field(default_factory=list)


@dataclass(slots=True)
class Comparison:
    """All that a file would do to a studio's records."""

    source: str
    clients: dict[str, ClientRow]
    visits: list[VisitRow]
    bad: list[BadRow]
    notes: list[str]
    gone: list[VisitRef]  # known from this book, and not in the file
    to_cancel: list[VisitRef] = field(default_factory=list)  # those of them that a whole book from A to B cancels
    renamed: dict[str, str] = field(default_factory=dict)  # a client's new reference -> the one she is known by

    def counts(self) -> dict[str, dict[str, int]]:
        """How many visits and clients are new, changed, the same and (visits) gone."""
        visits = _counts(self.visits)
        return {"visits": {**visits, "gone": len(self.gone)}, "clients": _counts(self.clients.values())}


def _counts(rows: Iterable[ClientRow | VisitRow]) -> dict[str, int]:
    found = {"new": 0, "changed": 0, "same": 0}
    for row in rows:
        found["new" if row.ref is None else "changed" if row.changes else "same"] += 1
    return found


def compare(book: Book, studio: Studio, *, whole: tuple[date, date] | None = None) -> Comparison:
    """Compare a book that was read with the studio's records.

    ``whole`` says that the file is the whole book of these days (first and last, on the studio's wall clock): booked
    visits of these days that the file does not hold are listed to be cancelled.
    """
    visit_refs = {ref.reference: ref for ref in _known_visits(book, studio)}
    client_refs = {ref.reference: ref for ref in _known_clients(book, studio)}
    result = Comparison(book.source, {}, [], list(book.bad), list(book.notes), [])
    if book.source == "ics":
        result.renamed = _renamed(book, visit_refs, client_refs, studio)
    for row in book.rows:
        ref = visit_refs.get(row.visit)
        if _usable(row, ref, client_refs, result):
            _add(row, ref, client_refs, result)
    result.gone = _gone(book, studio)
    if whole:
        result.to_cancel = [ref for ref in result.gone if _falls_within(ref.visit, studio, whole)]
    return result


def _usable(row: Row, ref: VisitRef | None, client_refs: Mapping[str, ClientRef], result: Comparison) -> bool:
    """Refuse what only the records can show to be wrong; pass over what is out of date."""
    if ref is None and not row.client:
        result.notes.append(f"Row {row.number}: “{row.visit}” is cancelled and was never known here; passed over.")
        return False
    if ref is not None and _is_stale(row, ref):
        result.notes.append(f"Row {row.number}: “{row.visit}” is an older version than the one on record; passed over.")
        return False
    if ref is not None and row.client and not _is_still_hers(row, ref, client_refs, result):
        before = ref.said.get("client", "")
        problem = (
            f"“{row.client}”: visit “{row.visit}” was client “{before}”'s. A visit does not change hands: give the new "
            f"booking a reference of its own, and mark the old one cancelled."
        )
        result.bad.append(BadRow(row.number, "client", row.client, problem))
        return False
    return True


def _is_still_hers(row: Row, ref: VisitRef, client_refs: Mapping[str, ClientRef], result: Comparison) -> bool:
    before = ref.said.get("client", "")
    if row.client == before or result.renamed.get(row.client) == before:
        return True
    known = client_refs.get(row.client)  # two references of one client: given by a merge, or by a calendar before
    return known is not None and known.client_id == ref.visit.client_id


def _renamed(
    book: Book, visit_refs: Mapping[str, VisitRef], client_refs: dict[str, ClientRef], studio: Studio
) -> dict[str, str]:
    """Return the new references of clients who are known by another one.

    A calendar has no references of clients: theirs is made of what it states (an address, a number, else the name),
    and so changes when someone adds an address to an entry. The same visit under the same name is the same client.
    """
    found: dict[str, str] = {}
    for row in book.rows:
        ref = visit_refs.get(row.visit)
        before = ref.said.get("client") if ref is not None else None
        if before and row.client and row.client != before and row.client not in client_refs:
            found[row.client] = before
    known = ClientRef.objects.filter(studio=studio, source=book.source, reference__in=list(found.values()))
    client_refs.update({one.reference: one for one in known.select_related("client")})
    names = {row.client: _name(row.client_says) for row in book.rows}
    return {new: old for new, old in found.items() if old in client_refs and names[new] == _name(client_refs[old].said)}


def _name(says: Mapping[str, Value]) -> tuple[str, str]:
    return fold(str(says.get("first_name", ""))), fold(str(says.get("last_name", "")))


def _is_stale(row: Row, ref: VisitRef) -> bool:
    """RFC 5546, 2.1.4: of two versions of one event the higher SEQUENCE is the newer."""
    ours, theirs = ref.said.get("sequence"), row.visit_says.get("sequence")
    return isinstance(ours, int) and isinstance(theirs, int) and theirs < ours


def _add(row: Row, ref: VisitRef | None, client_refs: Mapping[str, ClientRef], result: Comparison) -> None:
    if row.client:
        reference = result.renamed.get(row.client, row.client)
        client = result.clients.get(reference)
        if client is None:
            client = ClientRow(reference, {}, client_refs.get(reference))
            result.clients[reference] = client
        client.says.update(row.client_says)
        if client.ref is not None:
            known = {change.field for change in client.changes}
            fresh = {name: value for name, value in row.client_says.items() if name not in known}
            client.changes.extend(_changes(reference, client.ref.said, fresh))
    visit = VisitRow(row, ref)
    if ref is not None:
        changes = _changes(row.visit, ref.said, row.visit_says)
        visit.changes = [change for change in changes if counts(change, ref, ref.visit)]
    result.visits.append(visit)


def _changes(reference: str, said: Mapping[str, Value], says: Mapping[str, Value]) -> list[Change]:
    return [Change(reference, name, said.get(name), value) for name, value in says.items() if said.get(name) != value]


def counts(change: Change, ref: VisitRef, visit: Visit) -> bool:
    """Whether a change of the book is one for the records.

    Done is never turned back to booked, and what a person marked done stays done whatever the book says. A calendar's
    version number alone is no change.
    """
    if change.field != "status" or visit.status != Visit.Status.DONE:
        return change.field != "sequence"
    done_by_the_book = ref.said.get("status") == Visit.Status.DONE
    return done_by_the_book and change.after != Visit.Status.BOOKED


def _gone(book: Book, studio: Studio) -> list[VisitRef]:
    here = book.seen
    known = VisitRef.objects.filter(studio=studio, source=book.source).select_related("visit__client")
    return [ref for ref in known.order_by("visit__starts_at", "reference").iterator(2000) if ref.reference not in here]


def _falls_within(visit: Visit, studio: Studio, whole: tuple[date, date]) -> bool:
    day = visit.starts_at.astimezone(studio.zone).date()
    return visit.status == Visit.Status.BOOKED and whole[0] <= day <= whole[1]


def _known_visits(book: Book, studio: Studio) -> Iterable[VisitRef]:
    known = VisitRef.objects.filter(studio=studio, source=book.source).select_related("visit__adhesive")
    for references in _chunks([row.visit for row in book.rows]):
        yield from known.filter(reference__in=references)


def _known_clients(book: Book, studio: Studio) -> Iterable[ClientRef]:
    known = ClientRef.objects.filter(studio=studio, source=book.source).select_related("client")
    for references in _chunks(list({row.client for row in book.rows})):
        yield from known.filter(reference__in=references)


def _chunks(names: list[str]) -> Iterable[list[str]]:
    return (names[start : start + CHUNK] for start in range(0, len(names), CHUNK))
