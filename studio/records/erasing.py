"""Forgetting a client at her wish: name, contacts and words go; visits stay, without her, for the studio's figures.

What stays says nothing of who she was: a row without a name, her visits with what was used, and that a reaction
followed one of them. Without those a lot that hurts would look better for every client who leaves because of it.
"""

from __future__ import annotations

from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import transaction
from django.db.models import Q
from django.utils.translation import gettext as _

from studio.models import (
    BookFile,
    CalendarFeed,
    Client,
    ClientRef,
    Merge,
    Reaction,
    Staff,
    Studio,
    Visit,
    VisitRef,
)
from studio.records.writing import locked, raise_client_revision, same_studio

KEPT = frozenset(
    {"id", "studio", "merged_into", "created_at", "revision", "planned_revision", "forecast_revision", "erased_at"}
    | {"erased_by", "no_set_since", "on_break"}
)
WAITING = (BookFile.State.READING, BookFile.State.PREVIEW)
OF_ROWS = ("bad", "bad_rows", "notes", "gone", "to_cancel", "changes")  # of a file's result: what says who is in it


def refuse_erasing(client: Client, now: datetime) -> None:
    """Raise ValidationError where something of hers is still to come."""
    if client.erased_at is not None:
        raise ValidationError(_("She was forgotten before: nothing of hers is left."))
    if client.merged_into_id is not None:
        raise ValidationError(_("She was merged into another client: go to that one."))
    if client.studio.book_files.filter(state=BookFile.State.WRITING).exists():
        raise ValidationError(
            _("A file of the appointment book is being written, and she may stand in it: try again when that is done.")
        )
    if client.visits.filter(status=Visit.Status.BOOKED, starts_at__gt=now).exists():
        raise ValidationError(_("She has a visit booked: cancel it first, then she can be forgotten."))


@transaction.atomic
def erase_client(*, client: Client, by: Staff, now: datetime) -> list[int]:
    """Take her name, her contacts and all words about her off the records, for good; note who did it and when.

    Those who were merged into her are she: they go too. Returns the keys of all these rows. Raises ValidationError
    where something of hers is still to come.
    """
    same_studio(client.studio, by=by)
    row = locked(client)
    refuse_erasing(row, now)
    rows = [row, *Client.objects.select_for_update(of=("self",)).filter(merged_into=row)]
    ids = [one.pk for one in rows]
    for one in rows:
        _blank(one)
        one.erased_at, one.erased_by = now, by
        one.save()
    Visit.objects.filter(client__in=ids).update(note="", lash_map="", style="", room="")
    VisitRef.objects.filter(visit__client__in=ids).update(said={})
    ClientRef.objects.filter(client__in=ids).delete()
    Reaction.objects.filter(client__in=ids).update(words="", side="")
    Merge.objects.filter(Q(kept__in=ids) | Q(gone__in=ids)).delete()
    _forget_files(row.studio)
    # What its owner has to look at names clients: it is read anew, with the next reading.
    CalendarFeed.objects.filter(studio=row.studio).update(problem="", etag="", digest="")
    raise_client_revision(*ids)
    return ids


def _forget_files(studio: Studio) -> None:
    """Keep of a file that was brought in only that it was: her row stands in it, and in what it changed.

    One that waits for somebody's go would bring her back. Whoever reads it just now has lost the turn.
    """
    for file in BookFile.objects.select_for_update().filter(studio=studio).defer("data").order_by("pk"):
        file.result = {name: [] if name in OF_ROWS else said for name, said in file.result.items()}
        if file.state in WAITING:
            problem = _(
                "A client was forgotten: what this file held of her went with the rest of it. Choose it once more, "
                "without her."
            )
            file.state, file.busy_until, file.doing, file.result = BookFile.State.FAILED, None, "", {"problem": problem}
        file.data = b""
        file.save(update_fields=["data", "state", "busy_until", "doing", "result"])


def _blank(client: Client) -> None:
    """Put every field back to nothing but those that say nothing of her."""
    for column in Client._meta.concrete_fields:
        if column.name not in KEPT:
            setattr(client, column.attname, column.get_default())
