"""Writing what a book says of clients, and of what they agreed to. One part of a file, in one transaction."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import datetime

from studio.book import bulk
from studio.book.compare import ClientRow, Comparison
from studio.book.parts import chunks
from studio.book.rows import Value
from studio.models import Client, ClientRef, Consent, Studio

HOW = "appointment book"
CONSENTS = {
    "sms_ok": ("sms", "visits"),
    "email_ok": ("email", "visits"),
    "sms_reminders_ok": ("sms", "reminders"),
    "email_reminders_ok": ("email", "reminders"),
}
PLAIN_FIELDS = (
    "first_name",
    "last_name",
    "mobile",
    "email",
    "time_zone",
    "language",
    "sensitive",
    "under_18",
    "wears_lenses",
)


@dataclass(slots=True)
class Written:
    """The clients of a part by the references of the book; which are new, and which were changed."""

    of: dict[str, Client] = field(default_factory=dict)
    new: set[int] = field(default_factory=set)
    touched: set[int] = field(default_factory=set)


def write(part: Comparison, studio: Studio, now: datetime) -> Written:
    """Add the new clients and change the known ones, each with her answers."""
    result = Written()
    new = [row for row in part.clients.values() if row.ref is None]
    known = [(row, row.ref) for row in part.clients.values() if row.ref is not None]
    _add(new, part.source, studio, result)
    _change(known, result)
    _rename(dict(part.renamed), {row.reference: ref for row, ref in known}, part.source, studio)
    _answer(list(_answers(new, known, result)), result, now)
    return result


def _add(rows: list[ClientRow], source: str, studio: Studio, result: Written) -> None:
    made = [_client(row, studio) for row in rows]
    Client.objects.bulk_create(made, batch_size=1000)
    refs = []
    for row, client in zip(rows, made, strict=True):
        result.of[row.reference] = client
        result.new.add(client.pk)
        refs.append(
            ClientRef(studio=studio, source=source, reference=row.reference, client=client, said=dict(row.says))
        )
    ClientRef.objects.bulk_create(refs, batch_size=2000)


def _client(row: ClientRow, studio: Studio) -> Client:
    client = Client(studio=studio)
    for name in PLAIN_FIELDS:
        if name in row.says:
            setattr(client, name, row.says[name])
    return client


def _change(known: list[tuple[ClientRow, ClientRef]], result: Written) -> None:
    # Read here, within the transaction: a person may have written since the comparison was made.
    clients: dict[int, Client] = {}
    for ids in chunks({ref.client_id for _row, ref in known}):
        clients.update(Client.objects.in_bulk(ids))
    refs = []
    for row, ref in known:
        client = result.of[row.reference] = clients[ref.client_id]
        for change in row.changes:
            if change.field in PLAIN_FIELDS:
                setattr(client, change.field, change.after)
            ref.said[change.field] = change.after
        if row.changes:
            refs.append(ref)
            result.touched.add(client.pk)
    bulk.update([clients[pk] for pk in result.touched], PLAIN_FIELDS)
    bulk.update(refs, ["said"])


def _rename(renamed: dict[str, str], refs: dict[str, ClientRef], source: str, studio: Studio) -> None:
    """Give clients the new references that a calendar has for them, beside those they are known by."""
    ClientRef.objects.bulk_create(
        ClientRef(studio=studio, source=source, reference=new, client_id=refs[old].client_id, said=dict(refs[old].said))
        for new, old in renamed.items()
        if old in refs
    )


def _answers(
    new: list[ClientRow], known: list[tuple[ClientRow, ClientRef]], result: Written
) -> Iterator[tuple[Client, str, Value]]:
    """Give the answers that the book states for the first time, or anew."""
    for row in new:
        for name in CONSENTS.keys() & row.says.keys():
            yield result.of[row.reference], name, row.says[name]
    for row, _ref in known:
        for change in row.changes:
            if change.field in CONSENTS:
                yield result.of[row.reference], change.field, change.after


def _answer(said: list[tuple[Client, str, Value]], result: Written, now: datetime) -> None:
    """Append what the book says of consent: yes never undoes a no, no withdraws a yes."""
    newest = _newest({client.pk for client, _name, _value in said} - result.new)
    rows = []
    for client, name, value in said:
        channel, purpose = CONSENTS[name]
        before, at = newest.get((client.pk, channel, purpose), (None, now))
        if before is None or (before and not value):
            at = max(at, now)  # the newest answer counts: a no must not come to stand before the yes that it withdraws
            rows.append(Consent(client=client, channel=channel, purpose=purpose, given=bool(value), at=at, how=HOW))
            newest[client.pk, channel, purpose] = bool(value), at
    Consent.objects.bulk_create(rows, batch_size=2000)


def _newest(ids: Iterable[int]) -> dict[tuple[int, str, str], tuple[bool | None, datetime]]:
    found: dict[tuple[int, str, str], tuple[bool | None, datetime]] = {}
    for some in chunks(ids):
        rows = Consent.objects.filter(client__in=some).order_by("at", "pk")
        for client, channel, purpose, given, at in rows.values_list("client", "channel", "purpose", "given", "at"):
            found[client, channel, purpose] = given, at
    return found
