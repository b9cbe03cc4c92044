"""Writing many rows at once, where the ORM's ways would be the slowest part of sending.

One prepared statement is run for many rows. Against it bulk_update's CASE expressions cost some twenty times as much;
bulk_create cannot tell how many rows were new, and takes SQLite for a database that knows 999 parameters at most.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import Any

from django.db import connection
from django.db.models import Model, QuerySet

from aftercare.core import delivery
from aftercare.core.delivery import Event, State
from aftercare.models import Message


def insert(rows: Sequence[Model]) -> int:
    """Insert rows that have no key yet; return how many. One that breaks a unique constraint is left out."""
    if not rows:
        return 0
    model = type(rows[0])
    fields = [field for field in model._meta.concrete_fields if not field.primary_key]
    places = ", ".join(["%s"] * len(fields))
    return _run(
        f"INSERT INTO {table(model)} ({columns(fields)}) VALUES ({places}) ON CONFLICT DO NOTHING",
        [[value(field, field.pre_save(row, add=True)) for field in fields] for row in rows],
    )


def update(rows: Sequence[Model], names: Sequence[str], where: str = "", given: Sequence[Sequence[Any]] = ()) -> int:
    """Write the fields ``names`` of ``rows``, each where the guard ``where`` holds; return how many held.

    ``given`` has the guard's parameters for each row.
    """
    if not rows:
        return 0
    model = type(rows[0])
    fields: list[Any] = [model._meta.get_field(name) for name in names]
    changes = ", ".join(f"{quoted(field)} = %s" for field in fields)
    guard = f" AND {where}" if where else ""
    guards = given or [()] * len(rows)
    return _run(
        f"UPDATE {table(model)} SET {changes} WHERE id = %s{guard}",
        [
            [*(value(field, getattr(row, field.attname)) for field in fields), row.pk, *more]
            for row, more in zip(rows, guards, strict=True)
        ],
    )


def move(ids: Sequence[int], event: Event, **changed: object) -> None:
    """Change the state of these messages as the table of states says, and whatever else goes with it."""
    targets: dict[State, list[State]] = {}
    for before, after in delivery.sources(event).items():
        targets.setdefault(after, []).append(before)
    for after, befores in targets.items() if ids else ():
        Message.objects.filter(pk__in=ids, state__in=befores).update(state=after, **changed)


def unlocked(messages: QuerySet[Message]) -> QuerySet[Message]:
    """Lock these messages in the order of their keys, but those that somebody else has locked: they are left out."""
    if connection.features.has_select_for_update_skip_locked:
        messages = messages.select_for_update(skip_locked=True)
    return messages.order_by("pk")


def leases_over(at: datetime, *states: State) -> QuerySet[Message]:
    """Lock the messages in these states whose lease has ended at ``at``, the database's clock."""
    # "Is not null" is said aloud: without it SQLite takes the order of the keys for a reason to read the whole table.
    over = Message.objects.filter(lease_until__isnull=False, lease_until__lte=at, state__in=states)
    return unlocked(over)


def table(model: type[Model]) -> str:
    return connection.ops.quote_name(model._meta.db_table)


def columns(fields: Iterable[Any], prefix: str = "") -> str:
    return ", ".join(f"{prefix}{quoted(field)}" for field in fields)


def quoted(field: Any) -> str:
    return connection.ops.quote_name(field.column)


def value(field: Any, given: object) -> Any:
    return field.get_db_prep_save(given, connection)


def lease(at: object) -> Any:
    return value(Message._meta.get_field("lease_until"), at)


def _run(statement: str, rows: Sequence[Sequence[Any]]) -> int:
    with connection.cursor() as cursor:
        cursor.executemany(statement, rows)
        return max(int(cursor.rowcount), 0)
