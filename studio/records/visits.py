"""Visits: booked, moved, and what became of them."""

from __future__ import annotations

from datetime import datetime, timedelta
from decimal import Decimal
from typing import TypedDict, Unpack

from django.core.exceptions import ValidationError
from django.db import transaction
from django.utils.translation import gettext as _

from studio.book.rows import SERVICES
from studio.models import Adhesive, Client, Service, Staff, Studio, Visit
from studio.records.writing import locked, put, raise_client_revision, raise_visit_revision, same_studio

Status, Seen = Visit.Status, Visit.ShareSeen


COUNTED_FOR = timedelta(days=30)  # older visits that nobody marked are left as they are


class UsedFields(TypedDict, total=False):
    """What was done and used, and how it looked. ``share_left`` is percent, 0 to 100, of the set on at arrival."""

    style: str
    lash_map: str
    adhesive: Adhesive | None
    remover: str
    tape: str
    primer: str
    share_left: Decimal | None
    share_seen: str
    outgrown: str
    mirror_check: str
    note: str


class VisitFields(UsedFields, total=False):
    """What a person may write on a visit. ``starts_at`` is an aware moment."""

    artist: Staff | None
    service: str
    service_name: str
    starts_at: datetime
    minutes: int | None
    room: str


@transaction.atomic
def save_visit(
    *,
    studio: Studio,
    visit: Visit | None,
    by: Staff | None,
    now: datetime,
    client: Client | None = None,
    status: str = Status.BOOKED,
    **fields: Unpack[VisitFields],
) -> Visit:
    """Add a visit of ``client`` with a ``status``, or change the fields given of a known one.

    A known visit keeps its client and status: the functions below change what became of it. ``minutes`` left out
    or None on a new visit means the usual length of its service. Raises ValidationError with field → cure.
    """
    same_studio(studio, client=client, visit=visit, by=by, artist=fields.get("artist"), adhesive=fields.get("adhesive"))
    row = locked(visit) if visit else _new(studio, client, status, now)
    if fields.get("minutes", 0) is None or (visit is None and "minutes" not in fields):
        fields["minutes"] = SERVICES.get(fields.get("service", row.service), SERVICES[Service.OTHER])
    _write(row, {**fields})
    if visit is None:
        _refuse_ahead(row, now)
    return _saved(row)


def cancel_visit(*, visit: Visit, by: Staff | None, now: datetime) -> Visit:
    """Cancel it; what was to be sent about it is withdrawn by whoever plans."""
    return _mark(visit, Status.CANCELLED, by, now)


def mark_missed(*, visit: Visit, by: Staff | None, now: datetime) -> Visit:
    """She did not come."""
    return _mark(visit, Status.MISSED, by, now)


def unmark(*, visit: Visit, by: Staff | None, now: datetime) -> Visit:
    """Take back what was marked: it is booked again."""
    return _mark(visit, Status.BOOKED, by, now)


def mark_done(*, visit: Visit, by: Staff | None, now: datetime, **fields: Unpack[UsedFields]) -> Visit:
    """Mark it done, with what was used and seen; or correct what was written of a done one."""
    return _mark(visit, Status.DONE, by, now, fields)


def count_done(now: datetime, *, studio: Studio | None = None) -> int:
    """Count visits as done that nobody has marked for as long as their studio's owner said; return how many."""
    waiting = Visit.objects.filter(
        studio__done_after_hours__isnull=False, status=Status.BOOKED, starts_at__range=(now - COUNTED_FOR, now)
    )
    if studio is not None:
        waiting = waiting.filter(studio=studio)
    counted = 0
    for visit in waiting.select_related("studio").order_by("pk"):
        hours = timedelta(hours=visit.studio.done_after_hours or 0)
        counted += visit.booked_end + hours <= now and _count_done(visit.pk, now)
    return counted


@transaction.atomic
def _count_done(visit_id: int, now: datetime) -> bool:
    row = Visit.objects.select_for_update().filter(pk=visit_id, status=Status.BOOKED).first()
    if row is None:
        return False  # somebody marked it meanwhile
    row.status, row.counted_done, row.marked_at = Status.DONE, True, now
    _saved(row)
    return True


@transaction.atomic
def record_test_result(*, visit: Visit, result: str, by: Staff | None, now: datetime) -> Visit:
    """Write what a patch test showed: what was reported and seen, no more. It never says that all is well."""
    same_studio(visit.studio, by=by)
    row = locked(visit)
    if row.service != Service.PATCH_TEST:
        raise ValidationError(_("This visit is no patch test: write the result on the patch test’s own visit."))
    if row.status != Status.DONE:
        raise ValidationError(_("This patch test is not marked done: mark it done first."))
    if result not in Visit.TestResult.values:
        raise ValidationError({"result": _("Choose one of the results listed.")})
    _write(row, {"test_result": result, "test_result_at": now, "test_result_by": by})
    return _saved(row)


def _new(studio: Studio, client: Client | None, status: str, now: datetime) -> Visit:
    if client is None:
        raise ValidationError({"client": _("Choose the client whose visit this is.")})
    if client.merged_into_id:
        raise ValidationError({"client": _("She was merged into another client: choose that one.")})
    return Visit(studio=studio, client=client, status=status, heard_at=now, heard_as=status)


def _write(row: Visit, fields: dict[str, object]) -> None:
    put(row, {name: value.strip() if isinstance(value, str) else value for name, value in fields.items()})
    if "share_left" not in fields and "share_seen" not in fields:
        return
    if row.share_seen == Seen.SEEN and row.share_left is None:
        raise ValidationError({"share_left": _("Write how much was left, 0 to 100 %, or choose “not looked”.")})
    if row.share_seen != Seen.SEEN and row.share_left is not None:
        raise ValidationError({"share_seen": _("A number stands here: choose “looked at”, or take the number out.")})


@transaction.atomic
def _mark(visit: Visit, status: str, by: Staff | None, now: datetime, used: UsedFields | None = None) -> Visit:
    used = used or {}
    same_studio(visit.studio, by=by, adhesive=used.get("adhesive"))
    row = locked(visit)
    if status != row.status:
        # The moment of marking is the real end only of a visit known as booked; what came in as done has its own.
        known = Status.BOOKED in (row.status, row.heard_as)
        late = status == Status.DONE and known and now > row.booked_end
        row.marked_at = now if late else None
    row.status = Status(status)
    row.counted_done = False
    _refuse_ahead(row, now)
    _write(row, {**used})
    return _saved(row)


def _refuse_ahead(row: Visit, now: datetime) -> None:
    zone = row.studio.zone
    ahead = row.starts_at.astimezone(zone).date() > now.astimezone(zone).date()
    if ahead and row.status in (Status.DONE, Status.MISSED):
        raise ValidationError(_("This visit is on a day still ahead: change its day first, or cancel it."))


def _saved(row: Visit) -> Visit:
    row.save()
    raise_visit_revision([row.pk])
    raise_client_revision(row.client_id)
    row.refresh_from_db()
    return row
