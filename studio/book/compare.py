"""What a file changes: each field is compared with what the same book last said. Nothing is written here."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass, field

from django.utils.translation import gettext as _

from studio.book import missing
from studio.book.missing import MISSING, Days, Missing
from studio.book.rows import BadRow, Book, Row, Value
from studio.book.text import fold, rows_named, shown
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
    """A visit as its row states it; ``ref`` is None where the book has not named it before.

    ``client`` is the reference by which its client is known here. A ``stale`` row, of an older version than the one on
    record, changes nothing.
    """

    row: Row
    client: str
    ref: VisitRef | None = None
    changes: list[Change] = field(default_factory=list)
    stale: bool = False


@dataclass(slots=True)
class Comparison:
    """All that a file would do to a studio's records."""

    source: str
    clients: dict[str, ClientRow] = field(default_factory=dict)
    visits: list[VisitRow] = field(default_factory=list)
    bad: list[BadRow] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    gone: list[Missing] = field(default_factory=list)  # the latest first
    to_cancel: list[Missing] = field(default_factory=list)  # those of them that the file says are off
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


def compare(
    book: Book, studio: Studio, *, whole: Days | None = None, seen: Collection[str] | None = None
) -> Comparison:
    """Compare a book that was read with the studio's records.

    ``whole`` says that the file is the whole book of these days: booked visits of these days that the file does not
    hold are listed to be cancelled; where a person has looked at such a list, ``seen`` holds the references on it and
    no other visit is cancelled. Visits that a calendar takes out of a series by name are on the list anyway.
    """
    visit_refs = {ref.reference: ref for ref in _known_visits(book, studio)}
    client_refs = {ref.reference: ref for ref in _known_clients(book, studio)}
    result = Comparison(book.source, bad=list(book.bad), notes=list(book.notes))
    if book.source == "ics":
        result.renamed = _renamed(book, visit_refs, client_refs, studio)
    never_known: list[int] = []
    for row in book.rows:
        ref = visit_refs.get(row.visit)
        if ref is None and not row.client:
            never_known.append(row.number)
        elif not _refuse(row, ref, result):
            _add(row, ref, client_refs, result)
    result.notes += _remarks(result, never_known)
    result.gone = missing.find(book, studio)
    if whole and result.bad:
        result.notes.append(
            _("No visit is cancelled: a file with rows that cannot be used may not hold the whole book.")
        )
        whole = None
    off = missing.called_off(result.gone, book, studio, whole)
    result.to_cancel = [one for one in off if seen is None or one.reference in seen]
    return result


def _remarks(result: Comparison, never_known: list[int]) -> list[str]:
    stale = [visit.row.number for visit in result.visits if visit.stale]
    remarks = []
    if stale:
        remarks.append(
            _("Passed over, as an older version than the one on record: {rows}.").format(rows=rows_named(stale))
        )
    if never_known:
        remarks.append(
            _("Passed over, as cancelled and never known here: {rows}.").format(rows=rows_named(never_known))
        )
    return remarks


def _refuse(row: Row, ref: VisitRef | None, result: Comparison) -> bool:
    """Refuse what only the records show to be wrong: a share left where no set was done."""
    share = row.visit_says.get("share_left")
    if share is None or "status" in row.visit_says or (ref is not None and ref.said.get("share_left") == share):
        return False
    status = ref.visit.status if ref is not None else Visit.Status.BOOKED
    if status == Visit.Status.DONE:
        return False
    problem = _(
        '"{share}" is stated for a visit that is {status}: set its status to done, or leave share_left blank.'
    ).format(share=share, status=status)
    result.bad.append(BadRow(row.number, "share_left", shown(str(share)), problem))
    return True


def _add(row: Row, ref: VisitRef | None, client_refs: Mapping[str, ClientRef], result: Comparison) -> None:
    reference = result.renamed.get(row.client, row.client)
    visit = VisitRow(row, reference, ref)
    result.visits.append(visit)
    if ref is not None and _is_stale(row, ref):
        visit.stale = True
        return
    if row.client:
        _add_client(row, reference, client_refs, result)
    if ref is not None:
        changes = _changes(row.visit, ref.said, _says(row, ref))
        visit.changes = [change for change in changes if counts(change, ref, ref.visit)]
        if row.client and not _is_still_hers(reference, ref, client_refs):
            visit.changes.append(Change(row.visit, "client", ref.said.get("client"), reference))


def _says(row: Row, ref: VisitRef) -> Mapping[str, Value]:
    """What the row says; one that was called off is booked by being there again.

    For missing, in any book; by its STATUS in a calendar, whose events stand as long as they do not say otherwise
    (RFC 5545, 3.8.1.11). A spreadsheet's blank status says nothing.
    """
    if "status" in row.visit_says:
        return row.visit_says
    cancelled_by_calendar = ref.source == "ics" and ref.said.get("status") == Visit.Status.CANCELLED
    if ref.said.get(MISSING) or cancelled_by_calendar:
        return {**row.visit_says, "status": Visit.Status.BOOKED.value}
    return row.visit_says


def _is_stale(row: Row, ref: VisitRef) -> bool:
    """RFC 5546, 2.1.4: of two versions of one event the higher SEQUENCE is the newer."""
    ours, theirs = ref.said.get("sequence"), row.visit_says.get("sequence")
    return isinstance(ours, int) and isinstance(theirs, int) and theirs < ours


def _is_still_hers(reference: str, ref: VisitRef, client_refs: Mapping[str, ClientRef]) -> bool:
    if reference == ref.said.get("client"):
        return True
    known = client_refs.get(reference)  # two references of one client: given by a merge, or by a calendar before
    return known is not None and known.client_id == ref.visit.client_id


def _add_client(row: Row, reference: str, client_refs: Mapping[str, ClientRef], result: Comparison) -> None:
    client = result.clients.get(reference)
    if client is None:
        client = ClientRow(reference, {}, client_refs.get(reference))
        result.clients[reference] = client
    client.says.update(row.client_says)
    if client.ref is not None:
        known = {change.field for change in client.changes}
        fresh = {name: value for name, value in row.client_says.items() if name not in known}
        client.changes.extend(_changes(reference, client.ref.said, fresh))


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


def _known_visits(book: Book, studio: Studio) -> Iterable[VisitRef]:
    known = VisitRef.objects.filter(studio=studio, source=book.source).select_related("visit")
    few = known.only("studio", "source", "reference", "said", "visit__status", "visit__client")
    for references in _chunks([row.visit for row in book.rows]):
        yield from few.filter(reference__in=references)


def _known_clients(book: Book, studio: Studio) -> Iterable[ClientRef]:
    known = ClientRef.objects.filter(studio=studio, source=book.source)
    for references in _chunks(list({row.client for row in book.rows})):
        yield from known.filter(reference__in=references)


def _chunks(names: list[str]) -> Iterable[list[str]]:
    return (names[start : start + CHUNK] for start in range(0, len(names), CHUNK))
