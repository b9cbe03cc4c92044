"""Writing many rows at once, where the ORM's ways would be the slowest part of sending.

On PostgreSQL one statement has the rows as one array a column (``unnest``), so that it is read and planned once, and
what is the same in all rows a single time; on SQLite one prepared statement is run for each row. Against both,
bulk_update's CASE expressions cost some twenty times as much; bulk_create cannot tell how many rows were new, and
takes SQLite for a database that knows 999 parameters at most.
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
    """Insert rows that have no key yet; return how many. One that breaks a unique constraint is left out.

    None of their fields fills itself in as it is saved.
    """
    if not rows:
        return 0
    model = type(rows[0])
    fields = [field for field in model._meta.concrete_fields if not field.primary_key]
    given = [_column(field, rows) for field in fields]
    into = f"INSERT INTO {table(model)} ({columns(fields)})"
    if connection.vendor == "postgresql":
        arrays = _Arrays(fields, given, varied=fields[0])
        statement = f"{into} SELECT {', '.join(arrays.places)} FROM {arrays.table} ON CONFLICT DO NOTHING"
        return _run(statement, [*arrays.same, *arrays.given])
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
    given = [_column(field, rows) for field in fields]
    guarding = [key, *([Message._meta.get_field("lease_until")] if leases else [])]
    guards = [[row.pk for row in rows], *([[lease(at) for at in leases]] if leases else [])]
    more = f" AND {where}" if where else ""
    if connection.vendor == "postgresql":
        arrays = _Arrays([*guarding, *fields], [*guards, *given], varied=key, guards=len(guarding))
        held = " AND ".join(f"{quoted(field)} = {place}" for field, place in zip(guarding, arrays.places, strict=False))
        changes = _changes(fields, arrays.places[len(guarding) :])
        statement = f"UPDATE {table(model)} SET {changes} FROM {arrays.table} WHERE {held}{more}"
        return _run(statement, [*arrays.same, *arrays.given])
    held = " AND ".join(f"{quoted(field)} = %s" for field in guarding)
    changes = _changes(fields, ["%s"] * len(fields))
    return _run_each(f"UPDATE {table(model)} SET {changes} WHERE {held}{more}", [*given, *guards])


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


def _changes(fields: Sequence[Any], places: Sequence[str]) -> str:
    return ", ".join(f"{quoted(field)} = {place}" for field, place in zip(fields, places, strict=True))


def _column(field: Any, rows: Sequence[Model]) -> list[Any]:
    """Return a field's values of all rows as the database takes them."""
    found = [getattr(row, field.attname) for row in rows]
    if _is_same(found):
        return [value(field, found[0])] * len(found)
    return [value(field, one) for one in found]


def _is_same(values: Sequence[object]) -> bool:
    return values.count(values[0]) == len(values)


class _Arrays:
    """Columns of values as PostgreSQL gets them: ``places`` in a statement that reads from ``table``.

    The parameters of the places are ``same``, those of the table ``given``. The first ``guards`` columns vary, and so
    does ``varied``, as a table needs one.
    """

    def __init__(
        self, fields: Sequence[Any], columns: Sequence[Sequence[Any]], *, varied: Any, guards: int = 0
    ) -> None:
        self.places: list[str] = []
        self.same: list[Any] = []
        self.given: list[Sequence[Any]] = []
        types = []
        for place, (field, values) in enumerate(zip(fields, columns, strict=True)):
            kind = field.db_type(connection).partition("(")[0]  # without the length: a cast would cut texts off
            if place >= guards and field is not varied and _is_same(values):
                self.places.append(f"%s::{kind}")
                self.same.append(values[0])
            else:
                self.places.append(f"given.c{len(self.given)}")
                self.given.append(values)
                types.append(f"%s::{kind}[]")
        names = ", ".join(f"c{place}" for place in range(len(types)))
        self.table = f"unnest({', '.join(types)}) AS given ({names})"


def _run(statement: str, given: Sequence[Any]) -> int:
    with connection.cursor() as cursor:
        cursor.execute(statement, given)
        return max(int(cursor.rowcount), 0)


def _run_each(statement: str, given: Sequence[Sequence[Any]]) -> int:
    with connection.cursor() as cursor:
        cursor.executemany(statement, list(zip(*given, strict=True)))
        return max(int(cursor.rowcount), 0)
