"""Changing many rows at once: one statement, run for each. The CASE expressions of bulk_update cost ten times that."""

from __future__ import annotations

from collections.abc import Collection
from typing import Any

from django.db import connection
from django.db.models import Model


def update(rows: Collection[Model], names: Collection[str]) -> None:
    """Write the fields ``names`` of rows of one model, by their keys."""
    if not rows:
        return
    model = type(next(iter(rows)))
    fields: list[Any] = [model._meta.get_field(name) for name in names]
    quote = connection.ops.quote_name
    changes = ", ".join(f"{quote(field.column)} = %s" for field in fields)
    statement = f"UPDATE {quote(model._meta.db_table)} SET {changes} WHERE id = %s"
    with connection.cursor() as cursor:
        cursor.executemany(statement, [[*(_value(field, row) for field in fields), row.pk] for row in rows])


def _value(field: Any, row: Model) -> Any:
    return field.get_db_prep_save(getattr(row, field.attname), connection)
