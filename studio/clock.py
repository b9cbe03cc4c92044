"""The edges' clock. Everything else takes the present moment as an argument."""

from __future__ import annotations

from datetime import UTC, datetime

from django.db import connection


def now() -> datetime:
    """The database's own clock in UTC, whole seconds: one clock for every machine that shares the database."""
    with connection.cursor() as cursor:
        if connection.vendor == "sqlite":
            cursor.execute("SELECT strftime('%s', 'now')")
            return datetime.fromtimestamp(int(cursor.fetchone()[0]), tz=UTC)
        cursor.execute("SELECT clock_timestamp()")
        moment: datetime = cursor.fetchone()[0]
        return moment.astimezone(UTC).replace(microsecond=0)
