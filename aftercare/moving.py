"""Moving all records to another database, in one transaction there, and comparing both sides table by table.

A move that fails, or is killed, leaves the other database as empty as it was. Primary keys stay what they are.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time
from decimal import Decimal
from hashlib import sha256
from typing import Any

from django.apps import apps
from django.contrib.auth.models import Permission
from django.contrib.contenttypes.models import ContentType
from django.contrib.sessions.models import Session
from django.core.management.color import no_style
from django.db import connections
from django.db.models import Model

from aftercare.moved import NAME
from studio.turns import in_turns

BATCH = 500
# What migrating makes by itself: taken away again, as those who may do what refer to the numbers of the other side.
MADE_BY_MIGRATING: tuple[type[Model], ...] = (Permission, ContentType)
Say = Callable[[str], None]


@dataclass(frozen=True, slots=True)
class Table:
    """One table on one side: its rows, and a digest of all that stands in them, in whatever order."""

    name: str
    rows: int
    digest: str


def models(*, sessions: bool = True) -> list[type[Model]]:
    """Return every model that has a table, those between two models among them."""
    found = [one for one in apps.get_models(include_auto_created=True) if one._meta.managed and not one._meta.proxy]
    return [one for one in found if sessions or one is not Session]


def filled(using: str) -> list[str]:
    """Return the tables of a database that hold rows of somebody's."""
    of_others = [one for one in models() if one not in MADE_BY_MIGRATING]
    return [one._meta.db_table for one in of_others if one._base_manager.using(using).exists()]


def copy(source: str, target: str, of: Sequence[type[Model]], say: Say = lambda _text: None) -> None:
    """Copy every row, within the caller's transactions on both sides; sequences go on after the highest key."""
    for model in MADE_BY_MIGRATING:
        model._base_manager.using(target).all().delete()
    for model in of:
        fields = model._meta.concrete_fields
        done = 0
        for batch in in_turns(_rows(model, source), BATCH):
            # raw: as it stands, so that no “added at” becomes now.
            model._base_manager.using(target)._insert(  # type: ignore[attr-defined]  # Django's own way to say raw
                batch, fields=fields, using=target, raw=True
            )
            done += len(batch)
            if done % 20_000 == 0:
                say(f"{model._meta.db_table}: {done:,} rows")
    with connections[target].cursor() as cursor:
        for statement in connections[target].ops.sequence_reset_sql(no_style(), list(of)):
            cursor.execute(statement)


def tables(using: str, of: Sequence[type[Model]]) -> list[Table]:
    """Return what stands in each table of a database."""
    return [_table(model, using) for model in of]


def _table(model: type[Model], using: str) -> Table:
    """Digest a table: the sum of its rows' digests, so that no collation's order comes into it."""
    names = [field.attname for field in model._meta.concrete_fields]
    rows = total = 0
    for row in _rows(model, using):
        rows += 1
        content = json.dumps([_plain(getattr(row, name)) for name in names], ensure_ascii=False)
        total += int.from_bytes(sha256(content.encode("utf-8", "surrogatepass")).digest(), "big")
    return Table(model._meta.db_table, rows, f"{total % 2**256:064x}")


def _rows(model: type[Model], using: str) -> Iterator[Model]:
    """Give the rows of a table but for the mark of a move, with texts that every database can hold."""
    rows = model._base_manager.using(using).order_by()
    for row in (rows.exclude(pk=NAME) if model._meta.label == "aftercare.Heartbeat" else rows).iterator(BATCH):
        for field in model._meta.concrete_fields:
            value = getattr(row, field.attname)
            if isinstance(value, str | dict | list):
                setattr(row, field.attname, _storable(value))
        yield row


def _storable(value: Any) -> Any:
    """Give a text or JSON value without the NUL letter, which PostgreSQL has no place for (manual, 8.3 and 8.14)."""
    if isinstance(value, str):
        return value.replace("\0", "\N{REPLACEMENT CHARACTER}")
    if isinstance(value, list):
        return [_storable(one) for one in value]
    if isinstance(value, dict):
        return {_storable(name): _storable(one) for name, one in value.items()}
    return value


def _plain(value: Any) -> Any:
    """Give a value in the one form that it has whatever database it came from."""
    if isinstance(value, bool) or value is None or isinstance(value, str):
        return value
    if isinstance(value, datetime | date | time):
        return value.isoformat()
    if isinstance(value, int | float | Decimal):  # jsonb keeps numbers, not their spelling: 1e16 comes back as digits
        return {"number": f"{Decimal(repr(value) if isinstance(value, float) else value).normalize():f}"}
    if isinstance(value, memoryview | bytes):
        return sha256(value).hexdigest()
    if isinstance(value, list):
        return [_plain(one) for one in value]
    if isinstance(value, dict):
        return {"object": sorted([name, json.dumps(_plain(one))] for name, one in value.items())}
    raise TypeError(f"{type(value).__name__}: no form of it is known that both databases share")
