"""The one service that writes what a book says.

A long file is written in parts, a transaction each: one transaction over 10,000 rows would keep every other writer
waiting for seconds. All that is bad is known before the first part; an import that is broken off between two parts is
finished by importing the file again, which changes nothing of what stands already.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import datetime
from typing import TypeVar

from django.db import transaction
from django.db.models import F, Model, QuerySet
from django.utils.translation import gettext as _

from studio.book import clients, visits
from studio.book.compare import Comparison
from studio.book.parts import chunks, parts
from studio.models import Client, ClientRef, Studio, Visit, VisitRef
from studio.turns import let_others_in

Row = TypeVar("Row", bound=Model)


class Overtaken(Exception):
    """Another import wrote what this one was compared with: compare anew. What is written so far stands."""


def write(
    comparison: Comparison, studio: Studio, now: datetime, progress: Callable[[str], None] | None = None
) -> set[int]:
    """Write what the book changed, and cancel what it says is off; return the clients concerned.

    Each of them is left ahead of her plan: planning comes after, and apart. Raises Overtaken.
    """
    say = progress or (lambda _text: None)
    concerned: set[int] = set()
    done, total = 0, sum(len(part.visits) for part in parts(comparison))
    for number, part in enumerate(parts(comparison)):
        if number:
            let_others_in()
        if part.visits:
            say(
                _("writing visits {first:,} to {last:,} of {total:,}").format(
                    first=done + 1, last=done + len(part.visits), total=total
                )
            )
        done += len(part.visits)
        with transaction.atomic():
            concerned |= write_part(part, studio, now)
    return concerned


def write_part(part: Comparison, studio: Studio, now: datetime) -> set[int]:
    """Write one part of :func:`parts` within the caller's transaction; return the clients concerned.

    Raises Overtaken before anything of the part is written.
    """
    _lock(part, studio)
    known = clients.write(part, studio, now)
    touched = known.touched | visits.write(part, studio, now, known.of) | visits.cancel(part.to_cancel)
    raised = sorted(touched - known.new)  # new ones are ahead of their plan by birth
    for ids in chunks(raised):
        Client.objects.filter(pk__in=ids).update(revision=F("revision") + 1)
    return known.new | touched


def _lock(part: Comparison, studio: Studio) -> None:
    """Have the records to ourselves, and make sure that they are those that the file was compared with.

    Imports of one studio take turns at its row; visits come before clients, as when a person writes, and each in the
    order of its key. SQLite has one writer anyway.
    """
    Studio.objects.select_for_update(no_key=True).get(pk=studio.pk)
    _check_new(part, studio)
    visit_refs = {row.ref.pk: row.ref for row in part.visits if row.ref is not None}
    client_refs = {row.ref.pk: row.ref for row in part.clients.values() if row.ref is not None}
    for ids in chunks(visit_refs):
        for pk, said, client in VisitRef.objects.filter(pk__in=ids).values_list("pk", "said", "visit__client"):
            _check(visit_refs[pk].said == said and visit_refs[pk].visit.client_id == client)
    for ids in chunks(client_refs):
        for pk, said, client in ClientRef.objects.filter(pk__in=ids).values_list("pk", "said", "client"):
            _check(client_refs[pk].said == said and client_refs[pk].client_id == client)
    before = [ref.visit.client_id for ref in visit_refs.values()]
    _hold(Visit.objects.all(), [ref.visit_id for ref in visit_refs.values()])
    _hold(Client.objects.all(), [*before, *(ref.client_id for ref in client_refs.values())])


def _check(unchanged: bool) -> None:
    if not unchanged:
        raise Overtaken(_("Another import wrote to these visits or clients just now: import the file again."))


def _check_new(part: Comparison, studio: Studio) -> None:
    new_visits = [row.row.visit for row in part.visits if row.ref is None]
    new_clients = [row.reference for row in part.clients.values() if row.ref is None]
    new_clients += [new for new, old in part.renamed.items() if old in part.clients]
    for model, references in ((VisitRef, new_visits), (ClientRef, new_clients)):
        known = model._default_manager.filter(studio=studio, source=part.source)
        for names in chunks(references):
            _check(not known.filter(reference__in=names).exists())


def _hold(rows: QuerySet[Row], ids: Iterable[int]) -> None:
    for some in chunks(sorted(set(ids))):
        held = rows.filter(pk__in=some).select_for_update(no_key=True).order_by("pk")
        list(held.values_list("pk", flat=True))
