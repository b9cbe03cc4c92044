"""Writing many rows at once, where the ORM's ways would be the slowest part of sending.

On PostgreSQL one statement has the rows as one array a column (``unnest``), so that it is read and planned once; on
SQLite one prepared statement is run for each row. Against both, bulk_update's CASE expressions cost some twenty times
as much; bulk_create cannot tell how many rows were new, and takes SQLite for a database that knows 999 parameters at
most.
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
    given = [[value(field, field.pre_save(row, add=True)) for row in rows] for field in fields]
    into = f"INSERT INTO {table(model)} ({columns(fields)})"
    if connection.vendor == "postgresql":
        return _run(f"{into} SELECT * FROM unnest({_arrays(fields)}) ON CONFLICT DO NOTHING", given)
    places = ", ".join(["%s"] * len(fields))
    return _run_each(f"{into} VALUES ({places}) ON CONFLICT DO NOTHING", given)


def update(rows: Sequence[Model], names: Sequence[str], where: str = "", leases: Sequence[datetime | None] = ()) -> int:
    """Write the fields ``names`` of ``rows``, each where the guard ``where`` holds; return how many held.

    ``leases``: and where the row's lease is still the one given for it.
    """
    if not rows:
        return 0
    model = type(rows[0])
    key: Any = model._meta.pk
    fields: list[Any] = [model._meta.get_field(name) for name in names]
    given = [[value(field, getattr(row, field.attname)) for row in rows] for field in fields]
    given.append([row.pk for row in rows])
    guarding = [Message._meta.get_field("lease_until")] if leases else []
    given += [[value(field, at) for at in leases] for field in guarding]
    in_one = connection.vendor == "postgresql"
    places = [f"given.c{place}" if in_one else "%s" for place in range(len(given))]
    changes = ", ".join(f"{quoted(field)} = {place}" for field, place in zip(fields, places, strict=False))
    conditions = [f"id = {places[len(fields)]}", *([where] if where else [])]
    conditions += [f"{quoted(field)} = {places[-1]}" for field in guarding]
    change, guard = f"UPDATE {table(model)} SET {changes}", " AND ".join(conditions)
    if in_one:
        names_given = ", ".join(f"c{place}" for place in range(len(given)))
        arrays = _arrays([*fields, key, *guarding])
        return _run(f"{change} FROM unnest({arrays}) AS given ({names_given}) WHERE {guard}", given)
    return _run_each(f"{change} WHERE {guard}", given)


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


def _arrays(fields: Sequence[Any]) -> str:
    """Return a place for an array of each field's values, of its type without the length: a cast would cut texts."""
    types = (field.db_type(connection).partition("(")[0] for field in fields)
    return ", ".join(f"%s::{kind}[]" for kind in types)


def _run(statement: str, given: Sequence[Any]) -> int:
    with connection.cursor() as cursor:
        cursor.execute(statement, given)
        return max(int(cursor.rowcount), 0)


def _run_each(statement: str, given: Sequence[Sequence[Any]]) -> int:
    with connection.cursor() as cursor:
        cursor.executemany(statement, list(zip(*given, strict=True)))
        return max(int(cursor.rowcount), 0)
