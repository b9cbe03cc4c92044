"""What the database puts together so that it comes along with a row rather than by a query of its own."""

from __future__ import annotations

from typing import Any

from django.db.models import Aggregate, TextField


class Listed(Aggregate):
    """Values as one text, with commas between."""

    function = "GROUP_CONCAT"  # SQLite's
    output_field = TextField()

    def as_postgresql(self, compiler: Any, connection: Any, **more: Any) -> Any:
        template = "STRING_AGG(%(expressions)s::text, ',')"
        return self.as_sql(compiler, connection, template=template, **more)
