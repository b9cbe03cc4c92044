"""The studio's own facts: name, clock, closing days, adhesives, names of services, calendar."""

from __future__ import annotations

from datetime import date, datetime
from typing import TypedDict, Unpack

from django.core.exceptions import ValidationError
from django.db import transaction
from django.utils.translation import gettext as _
from phonenumbers import SUPPORTED_REGIONS

from studio.book import pattern
from studio.book.text import fold
from studio.models import Adhesive, CalendarFeed, ClosingDay, Service, ServiceName, Staff, Studio
from studio.records.writing import locked, put, raise_studio_revision, same_studio

LEAST_EVERY = 5  # minutes between two looks at a calendar: a guest's manners


class StudioFields(TypedDict, total=False):
    """The studio's facts that the owner may change."""

    name: str
    time_zone: str
    region: str
    language: str
    phone: str
    address: str
    date_order: str
    calendar_pattern: str


@transaction.atomic
def save_studio(*, studio: Studio, by: Staff | None, now: datetime, **fields: Unpack[StudioFields]) -> Studio:
    """Change the fields given. A new clock or country bears on every client's messages."""
    same_studio(studio, by=by)
    row = locked(studio)
    before = (row.time_zone, row.region)
    cleaned = {name: value.strip() if isinstance(value, str) else value for name, value in fields.items()}
    if "region" in cleaned:
        cleaned["region"] = _region(str(cleaned["region"]))
    if "calendar_pattern" in cleaned:
        _check_pattern(str(cleaned["calendar_pattern"]))
    put(row, cleaned)
    row.save()
    if before != (row.time_zone, row.region):
        raise_studio_revision(row)
    return row


@transaction.atomic
def save_closing_day(
    *, studio: Studio, day: ClosingDay | None, date: date, name: str = "", by: Staff | None, now: datetime
) -> ClosingDay:
    """Add or change a day on which the studio is closed; reminders stay away from it."""
    same_studio(studio, day=day, by=by)
    row = locked(day) if day else ClosingDay(studio=studio)
    if studio.closing_days.filter(date=date).exclude(pk=row.pk).exists():
        raise ValidationError({"date": _("This day is on the list already.")})
    put(row, {"date": date, "name": name.strip()})
    row.save()
    raise_studio_revision(studio)
    return row


@transaction.atomic
def remove_closing_day(*, day: ClosingDay, by: Staff | None, now: datetime) -> None:
    """The studio is open that day after all."""
    same_studio(day.studio, by=by)
    day.delete()
    raise_studio_revision(day.studio)


@transaction.atomic
def save_adhesive(
    *,
    studio: Studio,
    adhesive: Adhesive | None,
    product: str,
    lot: str = "",
    dry_hours: int | None = None,
    by: Staff | None,
    now: datetime,
) -> Adhesive:
    """Add or change an adhesive: product, lot, and the hours to keep dry (None: the usual words)."""
    same_studio(studio, adhesive=adhesive, by=by)
    if not (product.strip() or lot.strip()):
        raise ValidationError({"product": _("Write the product, the lot, or both.")})
    row = locked(adhesive) if adhesive else Adhesive(studio=studio)
    product, lot = product.strip(), lot.strip()
    if studio.adhesives.filter(product=product, lot=lot).exclude(pk=row.pk).exists():
        raise ValidationError({"lot": _("This product and lot are on the list already.")})
    put(row, {"product": product, "lot": lot, "dry_hours": dry_hours})
    row.save()
    return row


@transaction.atomic
def set_aside(*, adhesive: Adhesive, aside: bool, by: Staff | None, now: datetime) -> Adhesive:
    """Mark a lot as set aside, or take the mark back. The first mark stands: who set it, and when."""
    same_studio(adhesive.studio, by=by)
    row = locked(adhesive)
    if aside != (row.set_aside_at is not None):
        put(row, {"set_aside_at": now if aside else None, "set_aside_by": by if aside else None})
        row.save()
    return row


@transaction.atomic
def look_at_lot(*, adhesive: Adhesive, looked: bool, by: Staff | None, now: datetime) -> Adhesive:
    """Note that the owner has looked at a lot that is marked and leaves it in use, or take that back."""
    same_studio(adhesive.studio, by=by)
    row = locked(adhesive)
    if looked != (row.looked_at is not None):
        put(row, {"looked_at": now if looked else None, "looked_by": by if looked else None})
        row.save()
    return row


def save_service_name(*, studio: Studio, name: str, kind: str, by: Staff | None, now: datetime) -> ServiceName:
    """Say what the studio's own name for a service stands for; a blank kind: no visit at all (a break, a holiday)."""
    same_studio(studio, by=by)
    folded = fold(name)
    if not folded:
        raise ValidationError({"name": _("Write the name as the appointment book has it.")})
    if kind and kind not in Service.values:
        raise ValidationError({"kind": _("Choose one of the kinds listed.")})
    row = ServiceName.objects.filter(studio=studio, name=folded).first() or ServiceName(studio=studio)
    put(row, {"name": folded, "kind": kind})
    row.save()
    return row


def remove_service_name(*, service_name: ServiceName, by: Staff | None, now: datetime) -> None:
    """Forget it; the next file that holds it asks again."""
    same_studio(service_name.studio, by=by)
    service_name.delete()


@transaction.atomic
def save_feed(*, studio: Studio, address: str, every_minutes: int, by: Staff | None, now: datetime) -> CalendarFeed:
    """Poll this calendar. A new address is read from its beginning."""
    same_studio(studio, by=by)
    address = address.strip()
    # What calendars offer under “subscribe” is https in truth.
    if address.lower().startswith(("webcal://", "webcals://")):
        address = "https://" + address.partition("://")[2]
    if not address.lower().startswith(("https://", "http://")):
        raise ValidationError({"address": _("Write a calendar address that begins with https:// or webcal://.")})
    if every_minutes < LEAST_EVERY:
        raise ValidationError({"every_minutes": _("Write %(least)s minutes or more.") % {"least": LEAST_EVERY}})
    row = CalendarFeed.objects.filter(studio=studio).first() or CalendarFeed(studio=studio)
    if row.address != address:
        row.asked_at, row.read_at, row.etag, row.digest, row.problem = None, None, "", "", ""
    put(row, {"address": address, "every_minutes": every_minutes})
    row.save()
    return row


def remove_feed(*, feed: CalendarFeed, by: Staff | None, now: datetime) -> None:
    """Stop polling. The visits that came from it stay."""
    same_studio(feed.studio, by=by)
    feed.delete()


def _check_pattern(text: str) -> None:
    if text:
        try:
            pattern.compile(text)
        except pattern.PatternError as error:
            raise ValidationError({"calendar_pattern": str(error)}) from error


def _region(code: str) -> str:
    code = code.upper()
    if code not in SUPPORTED_REGIONS:
        raise ValidationError({"region": _("Write a country’s two letters (ISO 3166), such as US, GB or ES.")})
    return code
