"""Writing what a book says of visits. One part of a file, in one transaction."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import datetime
from decimal import Decimal

from django.db.models import F
from django.db.models.functions import Now

from studio.book import bulk
from studio.book.compare import Comparison, VisitRow, counts
from studio.book.missing import MISSING, Missing
from studio.book.parts import chunks
from studio.book.rows import SERVICES, Value
from studio.book.text import fold
from studio.models import Adhesive, Client, Staff, Studio, Visit, VisitRef

Status = Visit.Status
FIELDS = [
    "client",
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
    "changed_at",
]


def write(part: Comparison, studio: Studio, now: datetime, client_of: Mapping[str, Client]) -> set[int]:
    """Add the new visits and change the known ones; return the clients whose visits these are, or were."""
    writer = _Writer(studio, now, client_of)
    new = [row for row in part.visits if row.ref is None]
    known = [(row, row.ref) for row in part.visits if row.ref is not None]
    return writer.add(new, part.source) | writer.change(known)


def cancel(missing: Iterable[Missing]) -> set[int]:
    """Cancel the visits that the book says are off, if they are booked still; return whose they are."""
    touched: set[int] = set()
    for some in chunks(missing):
        versions = {one.pk: one.sequence for one in some}
        refs = VisitRef.objects.filter(pk__in=versions, visit__status=Status.BOOKED)
        booked = list(refs.select_related("visit").order_by("visit"))
        for ref in booked:
            ref.said.update({"status": Status.CANCELLED, MISSING: True})
            if versions[ref.pk] is not None:  # an older version that has it still is to change nothing
                ref.said["sequence"] = versions[ref.pk]
            touched.add(ref.visit.client_id)
        Visit.objects.filter(pk__in=[ref.visit_id for ref in booked], status=Status.BOOKED).update(
            status=Status.CANCELLED, revision=F("revision") + 1, changed_at=Now()
        )
        bulk.update(booked, ["said"])
    return touched


class _Writer:
    """Look-ups made once for a part: staff and adhesives by name."""

    def __init__(self, studio: Studio, now: datetime, client_of: Mapping[str, Client]) -> None:
        self.studio = studio
        self.now = now
        self.client_of = client_of
        self.staff = {staff.name.casefold(): staff for staff in Staff.objects.filter(studio=studio)}
        known = Adhesive.objects.filter(studio=studio).order_by("-pk")
        self.adhesives = {(fold(one.product), fold(one.lot)): one for one in known}

    def add(self, rows: list[VisitRow], source: str) -> set[int]:
        made = [self._visit(row) for row in rows]
        Visit.objects.bulk_create(made, batch_size=1000)
        VisitRef.objects.bulk_create(
            [
                VisitRef(
                    studio=self.studio,
                    source=source,
                    reference=row.row.visit,
                    visit=visit,
                    said={**row.row.visit_says, "client": row.row.client},
                )
                for row, visit in zip(rows, made, strict=True)
            ],
            batch_size=2000,
        )
        return {visit.client_id for visit in made}

    def _visit(self, row: VisitRow) -> Visit:
        says = row.row.visit_says
        visit = Visit(studio=self.studio, client=self.client_of[row.client], heard_at=self.now)
        visit.minutes = SERVICES[str(says["service"])]
        for name, value in says.items():
            self._set(visit, name, value)
        self._set_adhesive(visit, says)
        visit.heard_as = visit.status
        return visit

    def change(self, rows: list[tuple[VisitRow, VisitRef]]) -> set[int]:
        visits: dict[int, Visit] = {}
        for ids in chunks(ref.visit_id for row, ref in rows if row.changes):
            visits.update(Visit.objects.select_related("adhesive").in_bulk(ids))  # read again, as for clients
        touched: set[int] = set()
        for row, ref in rows:
            if row.changes:
                touched |= self._change(visits[ref.visit_id], row, ref)
            if "sequence" in row.row.visit_says:
                ref.said["sequence"] = row.row.visit_says["sequence"]
        bulk.update(visits.values(), FIELDS)
        bulk.update([ref for _row, ref in rows], ["said"])
        return touched

    def _change(self, visit: Visit, row: VisitRow, ref: VisitRef) -> set[int]:
        whose = {visit.client_id}
        changes = [change for change in row.changes if counts(change, ref, visit)]
        service = visit.service
        for change in changes:
            self._set(visit, change.field, change.after)
        self._set_adhesive(visit, {change.field: change.after for change in changes})
        ref.said.pop(MISSING, None)
        ref.said.update({change.field: change.after for change in row.changes})
        # The usual minutes of its service, where the book states none and nobody changed them.
        if "minutes" not in ref.said and visit.minutes == SERVICES[service]:
            visit.minutes = SERVICES[visit.service]
        visit.revision += 1
        visit.changed_at = self.now
        return whose | {visit.client_id}

    def _set(self, visit: Visit, name: str, value: Value) -> None:
        if name == "client":
            visit.client = self.client_of[str(value)]
        elif name == "artist":
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
        known_booked = Status.BOOKED in (visit.status, visit.heard_as)
        if visit.pk and status == Status.DONE and visit.status != status and known_booked:
            visit.marked_at = self.now
        elif status != Status.DONE:
            visit.marked_at = None
        visit.status = status

    def _artist(self, name: str) -> Staff:
        """Return the artist of this name; one that is not known gets a record without sign-in."""
        staff = self.staff.get(name.casefold())
        if staff is None:
            staff = Staff.objects.create(studio=self.studio, name=name, is_artist=True)
            self.staff[name.casefold()] = staff
        return staff

    def _set_adhesive(self, visit: Visit, says: Mapping[str, Value]) -> None:
        if not {"adhesive", "adhesive_lot"} & says.keys():
            return
        before = visit.adhesive
        product = str(says.get("adhesive", before.product if before else ""))
        lot = str(says.get("adhesive_lot", before.lot if before else ""))
        visit.adhesive = self.adhesives.get((fold(product), fold(lot))) or self._new_adhesive(product, lot)

    def _new_adhesive(self, product: str, lot: str) -> Adhesive:
        """Make one that is not known, with the hours of its product, or of its lot where only that is stated.

        The product itself is never guessed from a lot: what is due for her must not hang on what was imported first.
        """
        part, wanted = (0, fold(product)) if product else (1, fold(lot))
        hours = {one.dry_hours for key, one in self.adhesives.items() if key[part] == wanted}
        adhesive = Adhesive.objects.create(
            studio=self.studio, product=product, lot=lot, dry_hours=hours.pop() if len(hours) == 1 else None
        )
        self.adhesives[fold(product), fold(lot)] = adhesive
        return adhesive
