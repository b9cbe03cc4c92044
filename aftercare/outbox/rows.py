"""Writing many rows at once, where the ORM's ways would be the slowest part of sending.

On PostgreSQL one statement has the rows as one array a column (``unnest``), so that it is read and planned once, and
what is the same in all rows a single time; on SQLite one prepared statement is run for each row. Against both,
bulk_update's CASE expressions cost some twenty times as much; bulk_create cannot tell how many rows were new, and
takes SQLite for a database that knows 999 parameters at most.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import datetime
from types import NoneType
from typing import Any, NamedTuple, Self

import psycopg
from django.db import connection
from django.db.backends.base.base import BaseDatabaseWrapper
from django.db.backends.signals import connection_created
from django.db.backends.utils import CursorDebugWrapper, CursorWrapper
from django.db.models import JSONField, Model, QuerySet
from django.dispatch import receiver

from aftercare.core import delivery
from aftercare.core.delivery import Event, State
from aftercare.models import Message

_AS_THEY_ARE = (int, str)  # by every database that we know
_NEVER_UNASKED = 1_000_000  # how often a statement is run before it is prepared without anybody asking for it


def insert(rows: Sequence[Model]) -> int:
    """Insert rows that have no key yet; return how many. One that breaks a unique constraint is left out.

    None of their fields fills itself in as it is saved.
    """
    if not rows:
        return 0
    model = type(rows[0])
    return add(model, {field.name: _of_all(rows, field) for field in written(model)})


def add(model: type[Model], by_field: Mapping[str, Sequence[object]], *, spare: bool = True) -> int:
    """Insert rows given as columns of equal length, by field; others have their default. As :func:`insert` else.

    Not to ``spare`` those that break a unique constraint is to raise IntegrityError.
    """
    number = len(next(iter(by_field.values())))
    fields = written(model)
    given = [
        prepared(field, by_field[field.name] if field.name in by_field else [field.get_default()] * number)
        for field in fields
    ]
    into, taken = f"INSERT INTO {table(model)} ({columns(fields)})", " ON CONFLICT DO NOTHING" if spare else ""
    if connection.vendor == "postgresql":
        arrays = _Arrays(fields, given, varied=fields[0])
        statement = f"{into} SELECT {', '.join(arrays.places)} FROM {arrays.table}{taken}"
        return _run(statement, [*arrays.same, *arrays.given])
    places = ", ".join(["%s"] * len(fields))
    return _run_each(f"{into} VALUES ({places}){taken}", given)


def update(rows: Sequence[Model], names: Sequence[str], where: str = "", leases: Sequence[datetime | None] = ()) -> int:
    """Write the fields ``names`` of ``rows``, each where the guard ``where`` holds; return how many held.

    ``leases``: and where the row's lease is still the one given for it.
    """
    if not rows:
        return 0
    model = type(rows[0])
    guards: dict[str, Sequence[object]] = {"pk": [row.pk for row in rows]}
    if leases:
        guards["lease_until"] = leases
    return change(model, guards, {name: _of_all(rows, field(model, name)) for name in names}, where)


def change(
    model: type[Model],
    guards: Mapping[str, Sequence[object]],
    by_field: Mapping[str, Sequence[object]],
    where: str = "",
) -> int:
    """Write rows given as columns of equal length, by field, where ``guards``, given likewise, and ``where`` hold.

    The first guard tells the rows apart. Returns how many held.
    """
    guarding = [field(model, name) for name in guards]
    fields = [field(model, name) for name in by_field]
    kept = [[_one(field, value) for value in values] for field, values in zip(guarding, guards.values(), strict=True)]
    given = [prepared(field, values) for field, values in zip(fields, by_field.values(), strict=True)]
    more = f" AND {where}" if where else ""
    if connection.vendor == "postgresql":
        arrays = _Arrays([*guarding, *fields], [*kept, *given], varied=guarding[0], guards=len(guarding))
        held = " AND ".join(f"{quoted(field)} = {place}" for field, place in zip(guarding, arrays.places, strict=False))
        changes = _changes(fields, arrays.places[len(guarding) :])
        statement = f"UPDATE {table(model)} SET {changes} FROM {arrays.table} WHERE {held}{more}"
        return _run(statement, [*arrays.same, *arrays.given])
    held = " AND ".join(f"{quoted(field)} = %s" for field in guarding)
    changes = _changes(fields, ["%s"] * len(fields))
    return _run_each(f"UPDATE {table(model)} SET {changes} WHERE {held}{more}", [*given, *kept])


def move(ids: Sequence[int], event: Event, **changed: object) -> None:
    """Change the state of these messages as the table of states says, and whatever else goes with it."""
    targets: dict[State, list[State]] = {}
    for before, after in delivery.sources(event).items():
        targets.setdefault(after, []).append(before)
    for after, befores in targets.items() if ids else ():
        values = {"state": after.value, **changed}
        where = f"state IN ({', '.join(repr(state.value) for state in befores)})"
        change(Message, {"pk": ids}, {name: [value] * len(ids) for name, value in values.items()}, where)


class Standing(NamedTuple):
    """How a message that is locked stands."""

    pk: int
    state: str
    handed_over_at: datetime | None
    fell_back: bool  # the other channel has been tried
    address: str  # '' before it leaves, and again once she to whom it went was forgotten


def lock(ids: Collection[int]) -> list[Standing]:
    """Lock these messages in the order of their keys, within the caller's transaction; return how they stand.

    An update of many locks them as it comes upon them: two of them, or one and the receipts of the same messages, would
    wait for each other. SQLite has one writer, which waits for nobody.
    """
    return [Standing(*found) for found in find(Message, Standing._fields, "pk", ids, " FOR NO KEY UPDATE")]


def find(
    model: type[Model], names: Sequence[str], by: str, values: Iterable[object], lock: str = "", **same: object
) -> list[tuple[Any, ...]]:
    """Return these fields of the rows whose ``by`` is among ``values``, and whose others are the ``same``, by key.

    As the ORM does it, but on PostgreSQL as a prepared statement, and under the ``lock`` named.
    """
    if connection.vendor != "postgresql":
        found = model._default_manager.filter(**{f"{by}__in": list(values)}, **same).order_by("pk")
        return list(found.values_list(*names))
    one = field(model, by)
    held = [f"{quoted(one)} = ANY(%s::{kind(one)}[])", *(f"{quoted(field(model, name))} = %s" for name in same)]
    statement = f"SELECT {columns(field(model, name) for name in names)} FROM {table(model)}"
    statement += f" WHERE {' AND '.join(held)} ORDER BY {quoted(field(model, 'pk'))}{lock}"
    return fetch_prepared(statement, [list(values), *same.values()])


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


def kind(field: Any) -> str:
    """Return a column's type as an array's element: without the length, as a cast would cut texts off."""
    return str(field.db_type(connection)).partition("(")[0]


def value(field: Any, given: object) -> Any:
    return field.get_db_prep_save(given, connection)


def lease(at: object) -> Any:
    return value(Message._meta.get_field("lease_until"), at)


def written(model: type[Model]) -> list[Any]:
    return [field for field in model._meta.concrete_fields if not field.primary_key]


def field(model: type[Model], name: str) -> Any:
    return model._meta.pk if name == "pk" else model._meta.get_field(name)


def _changes(fields: Sequence[Any], places: Sequence[str]) -> str:
    return ", ".join(f"{quoted(field)} = {place}" for field, place in zip(fields, places, strict=True))


def _of_all(rows: Sequence[Model], field: Any) -> list[object]:
    return [getattr(row, field.attname) for row in rows]


def prepared(field: Any, values: Sequence[object]) -> Sequence[Any]:
    """Return values as the database takes them."""
    if _is_same(values):
        return [_one(field, values[0])] * len(values)
    return [_one(field, one) for one in values]


def _one(field: Any, given: object) -> Any:
    """As :func:`value`, without the way there for what is taken as it is."""
    return given if type(given) in _AS_THEY_ARE and not isinstance(field, JSONField) else value(field, given)


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
            if place >= guards and field is not varied and _is_same(values):
                self.places.append(f"%s::{kind(field)}")
                self.same.append(values[0])
            else:
                self.places.append(f"given.c{len(self.given)}")
                self.given.append(values)
                types.append(f"%s::{kind(field)}[]")
        names = ", ".join(f"c{place}" for place in range(len(types)))
        self.table = f"unnest({', '.join(types)}) AS given ({names})"


def fetch_prepared(statement: str, given: Sequence[Any]) -> list[tuple[Any, ...]]:
    """Run a statement on PostgreSQL that it has read and planned before; return what it gives back.

    ``given``: a list is an array.
    """
    with _run_prepared(statement, given) as cursor:
        return cursor.fetchall()


@receiver(connection_created, dispatch_uid="aftercare.plan_once")
def _plan_once(connection: BaseDatabaseWrapper, **_more: object) -> None:
    """Have PostgreSQL keep the plan of a prepared statement (its manual, PREPARE).

    As it takes ten values for an array that it has not seen, and for few what it has, it would plan anew each time:
    for a single message that took nearly as long as all the rest.
    """
    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute("SET plan_cache_mode = force_generic_plan")


@contextmanager
def _run_prepared(statement: str, given: Sequence[Any]) -> Iterator[psycopg.Cursor[tuple[Any, ...]]]:
    """Run a statement on PostgreSQL as a prepared one, within the caller's transaction.

    Django writes the values into the statement's text, which is then read and planned anew each time: of a statement
    for a few rows that is the most of it. It also forbids its connections to prepare, as some poolers cannot.
    """
    connection.ensure_connection()
    connection.connection.prepare_threshold = _NEVER_UNASKED
    written = [array(one) if isinstance(one, list) else one for one in given]
    with _Preparing(connection.connection) as cursor:
        # Django's wrapper counts it, translates errors and lets others know of it.
        wrapper = CursorDebugWrapper if connection.queries_logged else CursorWrapper
        wrapper(cursor, connection).execute(statement, written)
        yield cursor


class _Preparing(psycopg.Cursor[tuple[Any, ...]]):
    def execute(self, query: Any, params: Any = None, **options: Any) -> Self:
        return super().execute(query, params, **{**options, "prepare": True})


def array(values: list[Any]) -> list[Any] | str:
    """Return an array as PostgreSQL reads it (its manual, 8.15.2), or the list where psycopg has to write it.

    psycopg looks at each value anew, which costs more than all else that is done here for a message.
    """
    if not set(map(type, values)) <= _ELEMENTS.keys():
        return values
    return array_of(map(element, values))


def element(value: object) -> str:
    """Return a number, a text, a moment or None as PostgreSQL reads it within an array."""
    return _ELEMENTS[str if isinstance(value, str) else type(value)](value)  # a choice or a safe text is a text


def array_of(elements: Iterable[str]) -> str:
    return "{" + ",".join(elements) + "}"


def _as_text(value: object) -> str:
    return '"' + str(value).replace("\\", "\\\\").replace('"', '\\"') + '"'


def _as_null(_value: object) -> str:
    return "NULL"


_ELEMENTS: dict[type, Callable[[Any], str]] = {
    int: str,
    bool: str,
    str: _as_text,
    datetime: _as_text,
    NoneType: _as_null,
}


def _run(statement: str, given: Sequence[Any]) -> int:
    with _run_prepared(statement, given) as cursor:
        return max(cursor.rowcount, 0)


def _run_each(statement: str, given: Sequence[Sequence[Any]]) -> int:
    with connection.cursor() as cursor:
        cursor.executemany(statement, list(zip(*given, strict=True)))
        return max(int(cursor.rowcount), 0)
