"""Sums over a period by the database: cases of any number, put together client by client, in several ways at once.

What an interval needs of them (`core.rates.Sums`) are sums of sums, which the ORM cannot write: hence the SQL here.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from django.core.exceptions import EmptyResultSet
from django.db import connection
from django.db.models import DateField, QuerySet
from django.db.models.functions import TruncMonth, TruncQuarter, TruncWeek, TruncYear

from aftercare.core.rates import Sums
from studio.models import Studio

STEPS = {"week": TruncWeek, "month": TruncMonth, "quarter": TruncQuarter, "year": TruncYear}


@dataclass(frozen=True, slots=True)
class Span:
    """What is counted: a studio's, or one artist's of it, from ``since`` to before ``until``, ``step`` by step."""

    studio: Studio
    since: datetime
    until: datetime
    step: str = "month"  # one of STEPS
    artist: int | None = None

    def bucket(self, field: str) -> Any:
        """Return an expression for the first day of a moment's step on the studio's clock."""
        return STEPS[self.step](field, output_field=DateField(), tzinfo=self.studio.zone)


@dataclass(frozen=True, slots=True)
class Group:
    """Some cases together, and the mean of what was asked beside their value."""

    sums: Sums
    beside: float | None


Groups = dict[str, dict[tuple[str, ...], Group]]  # by kind, then by the values of its columns, as text


def grouped(
    rows: QuerySet[Any],
    kinds: Mapping[str, tuple[str, ...]],
    *,
    value: str = "value",
    beside: str = "CAST(NULL AS DOUBLE PRECISION)",
    where: str = "1 = 1",
    also: Mapping[str, str] | None = None,
) -> Groups:
    """Sum up ``rows`` for each kind, a kind being the columns it groups by (two at most). One query.

    ``rows`` are values, ``who`` (the client) among them. ``value``, ``beside``, ``where`` and ``also`` (columns by
    name) are SQL over them, written here in the code: nothing that anybody typed may get into them.
    """
    try:
        inner, params = rows.order_by().query.sql_with_params()
    except EmptyResultSet:
        return {kind: {} for kind in kinds}
    more = "".join(f", {sql} AS {name}" for name, sql in (also or {}).items())
    text = "CAST({} AS TEXT)".format
    parts = []
    for kind, columns in kinds.items():
        one, two = (*(f"COALESCE({text(column)}, '')" for column in columns), "''", "''")[:2]
        parts.append(
            f"SELECT '{kind}', one, two, COUNT(*), SUM(n), SUM(s), SUM(n * n), SUM(n * s), SUM(s * s), SUM(b), SUM(m)"
            f" FROM (SELECT {one} AS one, {two} AS two, who, COUNT(*) AS n, SUM(value) AS s, SUM(beside) AS b,"
            " COUNT(beside) AS m FROM seen GROUP BY 1, 2, 3) of_client GROUP BY 2, 3"
        )
    seen = f"SELECT *, {value} AS value, {beside} AS beside FROM (SELECT *{more} FROM ({inner}) told) raw WHERE {where}"
    with connection.cursor() as cursor:
        cursor.execute(f"WITH seen AS ({seen}) {' UNION ALL '.join(parts)}", params)
        found = cursor.fetchall()
    groups: Groups = {kind: {} for kind in kinds}
    for kind, one, two, count, cases, total, *squares, told, asked in found:
        sums = Sums(int(count), int(cases), float(total), *(float(square) for square in squares))
        key = tuple(
            part[:10] if column == "bucket" else part for part, column in zip((one, two), kinds[kind], strict=False)
        )
        groups[kind][key] = Group(sums, float(told) / int(asked) if asked else None)
    return groups
