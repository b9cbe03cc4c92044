"""What every write by hand shares: the row as it now stands, the check of its fields, the revisions that it raises."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TypeVar

from django.core.exceptions import ValidationError
from django.db.models import F, Model
from django.db.models.functions import Now
from django.utils.translation import gettext as _

from studio.models import Client, Studio, Visit

Row = TypeVar("Row", bound=Model)


def locked(row: Row) -> Row:
    """Read the row again, for this transaction alone: another person may have changed it since the page was shown."""
    manager = type(row)._default_manager
    return manager.select_for_update(of=("self",)).get(pk=row.pk)


def put(row: Model, fields: Mapping[str, object]) -> None:
    """Set the fields and check the whole row. Raises ValidationError, field by field."""
    for name, value in fields.items():
        setattr(row, name, value)
    row.full_clean()


def same_studio(studio: Studio, **rows: Model | None) -> None:
    """Raise ValidationError for a row of another studio; nobody sees, or writes to, another studio's people."""
    for field, row in rows.items():
        if row is not None and getattr(row, "studio_id", None) != studio.pk:
            raise ValidationError({field: _("This is not one of this studio’s: choose another.")})


def raise_client_revision(*client_ids: int) -> None:
    """Mark the clients as changed, so that whoever plans from their records plans them anew."""
    Client.objects.filter(pk__in=client_ids).update(revision=F("revision") + 1)


def raise_visit_revision(visit_ids: Iterable[int]) -> None:
    """Mark the visits as changed."""
    Visit.objects.filter(pk__in=list(visit_ids)).update(revision=F("revision") + 1, changed_at=Now())


def raise_studio_revision(studio: Studio) -> None:
    """Mark every client of the studio as changed: what was written bears on when all their messages fall due."""
    studio.clients.standing().update(revision=F("revision") + 1)
