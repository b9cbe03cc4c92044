"""The mark of a database whose records have moved to another: nothing is sent from it any more.

It is a row, so that whatever opens the database finds it, however it was started.
"""

from __future__ import annotations

from datetime import datetime
from typing import Any

from django.core.management.base import CommandError
from django.db import connections
from django.db.models.signals import pre_migrate

from aftercare.models import Heartbeat

NAME = "moved"


class HasMoved(CommandError):
    """The records of this database live in another by now, or are on their way there."""


def mark(to: str, now: datetime, *, done: bool) -> None:
    """Mark this database: its records are on their way ``to`` another, or ``done``: live there."""
    Heartbeat.objects.update_or_create(name=NAME, defaults={"at": now, "note": {"to": to, "done": done}})


def unmark() -> None:
    """Take the mark away: the move came to nothing."""
    Heartbeat.objects.filter(name=NAME).delete()


def found(using: str = "default") -> dict[str, Any] | None:
    """Return what the mark says (``to``, ``done``), or None."""
    note: dict[str, Any] | None = (
        Heartbeat.objects.using(using).filter(name=NAME).values_list("note", flat=True).first()
    )
    return note


def complaint(using: str = "default") -> str:
    """Return why nothing may run on this database, or ''."""
    note = found(using)
    if note is None:
        return ""
    if note["done"]:
        return (
            f"What was in this database was moved to {note['to']} and lives there: set DATABASE_URL to that one. Two "
            "services on two copies would send everything twice."
        )
    return (
        f"A move of this database to {note['to']} was begun and has not ended: run manage.py move_database again, or "
        "manage.py move_database --give-up to stay here."
    )


def refuse(using: str = "default") -> None:
    """Raise HasMoved where the mark is set."""
    if said := complaint(using):
        raise HasMoved(said)


def refuse_migration(using: str = "default", **more: Any) -> None:
    """Every way of starting the service migrates first, so this keeps all of it from starting."""
    if Heartbeat._meta.db_table in connections[using].introspection.table_names():
        refuse(using)


pre_migrate.connect(refuse_migration, weak=False, dispatch_uid="aftercare.moved")
