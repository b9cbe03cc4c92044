"""What the database puts together so that it comes along with a row rather than by a query of its own."""

from __future__ import annotations

from typing import Any

from django.db.models import Aggregate, FloatField, Func, TextField


class Listed(Aggregate):
    """Values as one text, with commas between."""

    function = "GROUP_CONCAT"  # SQLite's
    output_field = TextField()

    def as_postgresql(self, compiler: Any, connection: Any, **more: Any) -> Any:
        template = "STRING_AGG(%(expressions)s::text, ',')"
        return self.as_sql(compiler, connection, template=template, **more)


class Days(Func):
    """Days from one moment to another, as a fraction."""

    arity = 2
    output_field = FloatField()

    def as_sqlite(self, compiler: Any, connection: Any, **more: Any) -> Any:
        return self._less(compiler, "JULIANDAY({})")

    def as_postgresql(self, compiler: Any, connection: Any, **more: Any) -> Any:
        return self._less(compiler, "EXTRACT(EPOCH FROM {}) / 86400.0")

    def _less(self, compiler: Any, days: str) -> tuple[str, tuple[Any, ...]]:
        (begin, of_begin), (end, of_end) = (compiler.compile(one) for one in self.get_source_expressions())
        return f"({days.format(end)} - {days.format(begin)})", (*of_end, *of_begin)
