"""What is asked of PostgreSQL in large numbers, without what Django and psycopg spend in Python on each value.

Loading this is enough: it is done as the app is loaded. What is asked and what comes back stay the same.
"""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

from django.db.backends.base.base import BaseDatabaseWrapper
from django.db.backends.signals import connection_created
from django.db.models import CharField, Field, ForeignKey, IntegerField, TextField
from django.db.models.fields.related_lookups import RelatedIn
from django.db.models.lookups import In
from django.db.models.sql.compiler import SQLCompiler
from django.dispatch import receiver
from psycopg.abc import Buffer
from psycopg.types.datetime import TimestamptzLoader

MANY = 20  # values; of fewer, as in the conditions of indexes, Django's own way is as good
_OF_KEYS, _OF_WORDS = (IntegerField, ForeignKey), (CharField, TextField)


class _InArray(In):  # type: ignore[type-arg]  # it is no generic at run time
    """A list of keys or texts as one array in place of a placeholder, and a walk through the compiler, for each."""

    def process_rhs(self, compiler: SQLCompiler, connection: BaseDatabaseWrapper) -> Any:
        many = connection.vendor == "postgresql" and self.rhs_is_direct_value() and len(self.rhs) >= MANY
        values = [one for one in self.rhs if one is not None] if many else []
        if many and isinstance(self.lhs.output_field, _OF_KEYS) and all(type(one) is int for one in values):
            return "ANY(%s::bigint[])", [list(set(values))]
        if many and isinstance(self.lhs.output_field, _OF_WORDS) and all(isinstance(one, str) for one in values):
            return "ANY(%s::text[])", [list({str(one) for one in values})]
        return super().process_rhs(compiler, connection)

    def get_rhs_op(self, connection: BaseDatabaseWrapper, rhs: str) -> str:
        return f"= {rhs}" if rhs.startswith("ANY(") else super().get_rhs_op(connection, rhs)


@Field.register_lookup
class InArray(_InArray):
    lookup_name = "in"


@ForeignKey.register_lookup
class RelatedInArray(RelatedIn, _InArray):
    lookup_name = "in"


class MomentLoader(TimestamptzLoader):
    """Reads a moment as Python does, which knows ISO 8601 by now; what it does not know, as psycopg does."""

    timezone = UTC  # Django puts its own loader in its place where this differs from the connection's

    def load(self, data: Buffer) -> datetime:
        try:
            at = datetime.fromisoformat(str(data, "ascii"))
        except ValueError:  # a year of five digits, or before the first one; infinity
            return super().load(data)
        return at if at.tzinfo is UTC else at.astimezone(UTC)


@receiver(connection_created)
def read_moments(connection: BaseDatabaseWrapper, **_: object) -> None:
    """Have a new connection to PostgreSQL, whose moments are in UTC, read them so."""
    if connection.vendor == "postgresql" and connection.timezone == UTC:
        connection.connection.adapters.register_loader("timestamptz", MomentLoader)
