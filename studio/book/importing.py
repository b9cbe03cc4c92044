"""The one service that writes what a book says.

A long file is written in parts, a transaction each: one transaction over 10,000 rows would keep every other writer
waiting for seconds. All that is bad is known before the first part; an import that is broken off between two parts is
finished by importing the file again, which changes nothing of what stands already.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime
from decimal import Decimal

from django.db import transaction
from django.db.models import F

from studio.book.compare import ClientRow, Comparison, VisitRow, counts
from studio.book.rows import SERVICES, Value
from studio.models import Adhesive, Client, ClientRef, Consent, Staff, Studio, Visit, VisitRef
from studio.turns import let_others_in

HOW = "appointment book"
CONSENTS = {
    "sms_ok": ("sms", "visits"),
    "email_ok": ("email", "visits"),
    "sms_reminders_ok": ("sms", "reminders"),
    "email_reminders_ok": ("email", "reminders"),
}
PLAIN_CLIENT_FIELDS = (
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
VISIT_FIELDS = [
    "artist",
    "service",
    "service_name",
    "starts_at",
    "minutes",
    "status",
    "marked_at",
    "share_left",
    "share_seen",
    "adhesive",
    "revision",
]
PART = 1000  # visits in one transaction


def write(
    comparison: Comparison, studio: Studio, now: datetime, progress: Callable[[str], None] | None = None
) -> set[int]:
    """Write what the book changed, and cancel what it is said to have dropped; return the clients concerned.

    Each of them is left ahead of her plan: planning comes after, and apart.
    """
    say = progress or (lambda _text: None)
    concerned: set[int] = set()
    done = 0
    for part in _parts(comparison):
        if done:
            let_others_in()
        say(f"writing visits {done + 1:,} to {done + len(part.visits):,} of {len(comparison.visits):,}")
        done += len(part.visits)
        with transaction.atomic():
            writer = _Writer(part, studio, now)
            writer.clients()
            writer.visits()
            writer.cancel()
            writer.raise_revisions()
        concerned |= writer.concerned
    return concerned


def _parts(comparison: Comparison) -> Iterator[Comparison]:
    """Part a comparison so that a client stands with all her visits; the last part cancels."""
    visits: dict[str, list[VisitRow]] = {}
    for row in comparison.visits:
        reference = comparison.renamed.get(row.row.client, row.row.client)
        visits.setdefault(reference, []).append(row)
    part = _empty(comparison)
    for reference, rows in visits.items():
        if len(part.visits) >= PART:
            yield part
            part = _empty(comparison)
        part.visits.extend(rows)
        if reference in comparison.clients:
            part.clients[reference] = comparison.clients[reference]
    part.to_cancel = comparison.to_cancel
    yield part


def _empty(comparison: Comparison) -> Comparison:
    return Comparison(comparison.source, {}, [], [], [], [], [], comparison.renamed)


class _Writer:
    """One file's writing: look-ups made once, rows gathered, then written in bulk."""

    def __init__(self, comparison: Comparison, studio: Studio, now: datetime) -> None:
        self.comparison = comparison
        self.studio = studio
        self.now = now
        self.concerned: set[int] = set()
        self.raised: set[int] = set()
        self.client_of: dict[str, Client] = {}
        self.staff = {staff.name.casefold(): staff for staff in Staff.objects.filter(studio=studio)}
        self.adhesives = {(one.product, one.lot): one for one in Adhesive.objects.filter(studio=studio)}

    # -- clients ------------------------------------------------------------------------------------------------

    def clients(self) -> None:
        new = [row for row in self.comparison.clients.values() if row.ref is None]
        made = [self._client(row) for row in new]
        Client.objects.bulk_create(made, batch_size=1000)
        refs = []
        for row, client in zip(new, made, strict=True):
            self.client_of[row.reference] = client
            self.concerned.add(client.pk)
            refs.append(self._client_ref(row, client))
        ClientRef.objects.bulk_create(refs, batch_size=2000)
        self._rename()
        changed = [row for row in self.comparison.clients.values() if row.ref is not None]
        self._update_clients(changed)
        self._consents(new, changed)

    def _rename(self) -> None:
        """Give clients the new references that a calendar has for them, beside those they are known by."""
        known = [row for row in self.comparison.clients.values() if row.ref is not None]
        refs = {row.reference: row.ref for row in known if row.ref is not None}
        ClientRef.objects.bulk_create(
            ClientRef(
                studio=self.studio,
                source=self.comparison.source,
                reference=new,
                client_id=refs[old].client_id,
                said=refs[old].said,
            )
            for new, old in self.comparison.renamed.items()
            if old in refs
        )

    def _client(self, row: ClientRow) -> Client:
        client = Client(studio=self.studio)
        for name in PLAIN_CLIENT_FIELDS:
            if name in row.says:
                setattr(client, name, row.says[name])
        return client

    def _client_ref(self, row: ClientRow, client: Client) -> ClientRef:
        return ClientRef(
            studio=self.studio,
            source=self.comparison.source,
            reference=row.reference,
            client=client,
            said=dict(row.says),
        )

    def _update_clients(self, rows: list[ClientRow]) -> None:
        # Read again inside the transaction: a person may have written since the comparison was made.
        clients = Client.objects.in_bulk([row.ref.client_id for row in rows if row.ref and row.changes])
        refs: list[ClientRef] = []
        for row in rows:
            if row.ref is None:
                continue
            client = clients.get(row.ref.client_id, row.ref.client)
            self.client_of[row.reference] = client
            for change in row.changes:
                if change.field in PLAIN_CLIENT_FIELDS:
                    setattr(client, change.field, change.after)
                row.ref.said[change.field] = change.after
            if row.changes:
                refs.append(row.ref)
                self._touch(client.pk)
        Client.objects.bulk_update(clients.values(), PLAIN_CLIENT_FIELDS, batch_size=200)
        ClientRef.objects.bulk_update(refs, ["said"], batch_size=500)

    def _consents(self, new: list[ClientRow], changed: list[ClientRow]) -> None:
        """Append what the book says of consent: yes never undoes a no, no withdraws a yes."""
        said = [
            (self.client_of[row.reference], name, row.says[name])
            for row in new
            for name in CONSENTS
            if name in row.says
        ]
        said.extend(
            (self.client_of[row.reference], change.field, change.after)
            for row in changed
            for change in row.changes
            if change.field in CONSENTS
        )
        newest = self._newest_consents([client.pk for client, _name, _value in said])
        rows = []
        for client, name, value in said:
            channel, purpose = CONSENTS[name]
            before = newest.get((client.pk, channel, purpose))
            if before is None or (before is True and value is False):
                rows.append(
                    Consent(client=client, channel=channel, purpose=purpose, given=bool(value), at=self.now, how=HOW)
                )
                newest[client.pk, channel, purpose] = bool(value)
        Consent.objects.bulk_create(rows, batch_size=2000)

    def _newest_consents(self, ids: list[int]) -> dict[tuple[int, str, str], bool]:
        found: dict[tuple[int, str, str], bool] = {}
        known = [pk for pk in dict.fromkeys(ids) if pk not in self.concerned or pk in self.raised]
        for start in range(0, len(known), 500):
            rows = Consent.objects.filter(client__in=known[start : start + 500]).order_by("at", "pk")
            for client, channel, purpose, given in rows.values_list("client_id", "channel", "purpose", "given"):
                found[client, channel, purpose] = given
        return found

    # -- visits -------------------------------------------------------------------------------------------------

    def visits(self) -> None:
        new = [row for row in self.comparison.visits if row.ref is None]
        made = [self._visit(row) for row in new]
        Visit.objects.bulk_create(made, batch_size=1000)
        refs = [
            VisitRef(
                studio=self.studio,
                source=self.comparison.source,
                reference=row.row.visit,
                visit=visit,
                said={**row.row.visit_says, "client": row.row.client},
            )
            for row, visit in zip(new, made, strict=True)
        ]
        VisitRef.objects.bulk_create(refs, batch_size=2000)
        for visit in made:
            if visit.client_id not in self.concerned:
                self._touch(visit.client_id)
        self._update_visits([row for row in self.comparison.visits if row.ref is not None])

    def _visit(self, row: VisitRow) -> Visit:
        says = row.row.visit_says
        visit = Visit(studio=self.studio, client=self._client_of(row), heard_at=self.now)
        visit.minutes = SERVICES[str(says["service"])]
        for name, value in says.items():
            self._set(visit, name, value)
        self._set_adhesive(visit, says)
        visit.heard_as = visit.status
        return visit

    def _client_of(self, row: VisitRow) -> Client:
        reference = row.row.client
        return self.client_of[self.comparison.renamed.get(reference, reference)]

    def _update_visits(self, rows: list[VisitRow]) -> None:
        changed = [row.ref.visit_id for row in rows if row.ref and row.changes]
        visits = Visit.objects.select_related("adhesive").in_bulk(changed)  # read again, as for clients
        refs = []
        for row in rows:
            if row.ref is None:
                continue
            sequence = row.row.visit_says.get("sequence", row.ref.said.get("sequence"))
            if row.changes:
                self._update_visit(visits[row.ref.visit_id], row, row.ref)
            elif sequence == row.ref.said.get("sequence"):
                continue
            if sequence is not None:
                row.ref.said["sequence"] = sequence
            refs.append(row.ref)
        Visit.objects.bulk_update(visits.values(), VISIT_FIELDS, batch_size=200)
        VisitRef.objects.bulk_update(refs, ["said"], batch_size=500)

    def _update_visit(self, visit: Visit, row: VisitRow, ref: VisitRef) -> None:
        changes = [change for change in row.changes if counts(change, ref, visit)]
        for change in changes:
            self._set(visit, change.field, change.after)
        self._set_adhesive(visit, {change.field: change.after for change in changes})
        for change in row.changes:
            ref.said[change.field] = change.after
        visit.revision += 1
        self._touch(visit.client_id)

    def _set(self, visit: Visit, name: str, value: Value) -> None:
        if name == "artist":
            visit.artist = self._artist(str(value))
        elif name == "starts_at":
            visit.starts_at = datetime.fromisoformat(str(value))
        elif name == "share_left":
            visit.share_left = Decimal(str(value))
            visit.share_seen = Visit.ShareSeen.SEEN
        elif name == "status":
            self._set_status(visit, str(value))
        elif name in ("service", "service_name", "minutes"):
            setattr(visit, name, value)

    def _set_status(self, visit: Visit, status: str) -> None:
        # A visit that was known as booked and is now heard to be done has its aftercare from this moment on.
        if visit.pk and status == Visit.Status.DONE and visit.status == Visit.Status.BOOKED:
            visit.marked_at = self.now
        elif status != Visit.Status.DONE:
            visit.marked_at = None
        visit.status = status

    def _artist(self, name: str) -> Staff:
        """Return the artist of this name; one that is not known gets a record without sign-in."""
        staff = self.staff.get(name.casefold())
        if staff is None:
            staff = Staff.objects.create(studio=self.studio, name=name, is_artist=True)
            self.staff[name.casefold()] = staff
        return staff

    def _set_adhesive(self, visit: Visit, says: dict[str, Value]) -> None:
        if not {"adhesive", "adhesive_lot"} & says.keys():
            return
        before = visit.adhesive
        product = str(says.get("adhesive", before.product if before else ""))
        lot = str(says.get("adhesive_lot", before.lot if before else ""))
        if lot and not product:
            named = [one for one in self.adhesives.values() if one.lot == lot and one.product]
            if len(named) == 1:  # the lot is known here, and of one product only
                visit.adhesive = named[0]
                return
        adhesive = self.adhesives.get((product, lot))
        if adhesive is None:
            same = next((one for one in self.adhesives.values() if product and one.product == product), None)
            adhesive = Adhesive.objects.create(
                studio=self.studio, product=product, lot=lot, dry_hours=same.dry_hours if same else None
            )
            self.adhesives[product, lot] = adhesive
        visit.adhesive = adhesive

    def cancel(self) -> None:
        """Cancel the visits that a whole book from A to B no longer holds, if they are booked still."""
        for start in range(0, len(self.comparison.to_cancel), 500):
            refs = self.comparison.to_cancel[start : start + 500]
            booked = Visit.objects.filter(pk__in=[ref.visit_id for ref in refs], status=Visit.Status.BOOKED)
            still = set(booked.values_list("pk", flat=True))
            booked.update(status=Visit.Status.CANCELLED, revision=F("revision") + 1)
            for ref in refs:
                if ref.visit_id in still:
                    ref.said["status"] = Visit.Status.CANCELLED
                    self._touch(ref.visit.client_id)
            VisitRef.objects.bulk_update(refs, ["said"])

    # -- revisions ----------------------------------------------------------------------------------------------

    def _touch(self, client: int) -> None:
        self.concerned.add(client)
        self.raised.add(client)

    def raise_revisions(self) -> None:
        """Leave every client concerned ahead of her plan; new ones are so by birth."""
        raised = list(self.raised)
        for start in range(0, len(raised), 500):
            Client.objects.filter(pk__in=raised[start : start + 500]).update(revision=F("revision") + 1)
