"""Books made in a line or two: rows as a reader hands them on, and files as people export them."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

from django.apps import apps

from studio.book import clients, compare, importing
from studio.book.missing import Days
from studio.book.rows import BadRow, Book, Row
from studio.models import Studio
from tests.people import NOW

OF_CLIENT = {*clients.PLAIN_FIELDS, *clients.CONSENTS}
WHOLE_WEEK = (NOW.date(), datetime(2027, 3, 15, tzinfo=NOW.tzinfo).date())


def row(visit: str = "V1", client: str = "C1", number: int = 2, **says: Any) -> Row:
    """Make a row of Mia's fill on 12 March 2027 at 14:30 in New York, with what else it says."""
    of_client = {"first_name": "Mia"} | {name: says.pop(name) for name in list(says) if name in OF_CLIENT}
    of_visit = {"service": "fill", "starts_at": "2027-03-12T19:30:00Z", **says}
    return Row(number, visit, client, of_visit, of_client)


def book_of(
    *rows: Row, source: str = "csv", bad: tuple[BadRow, ...] = (), stated: Mapping[str, int] | None = None
) -> Book:
    """Make a book of these rows; ``stated`` are the UIDs that a calendar states in full, with their SEQUENCE."""
    reach = (NOW - timedelta(days=399), NOW + timedelta(days=399)) if source == "ics" else None
    seen = frozenset(one.visit for one in rows)
    return Book(source, rows, bad, seen=seen, stated=stated or {}, reach=reach)


def bring_in(
    studio: Studio, *rows: Row, now: datetime = NOW, whole: Days | None = None, **about: Any
) -> compare.Comparison:
    """Compare and write; nothing is planned."""
    comparison = compare.compare(book_of(*rows, **about), studio, whole=whole)
    importing.write(comparison, studio, now)
    return comparison


def everything() -> dict[str, list[dict[str, Any]]]:
    """Every row of every table of ours."""
    models = [*apps.get_app_config("studio").get_models(), *apps.get_app_config("aftercare").get_models()]
    return {model._meta.label: list(model._default_manager.order_by("pk").values()) for model in models}
