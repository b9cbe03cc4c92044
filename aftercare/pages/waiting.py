"""How many open matters must be acted on now: for the menu and the day sheet, so with as few queries as can be."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from django.db.models import Q

from aftercare import facts
from aftercare.models import HELD_BY, Flag
from studio.access import May
from studio.models import Studio


def now(studio: Studio, may: May, at: datetime) -> int:
    """Return how many nobody has, or wait to be tried again: to the owner all, to an artist those on her list.

    One query where none is open.
    """
    if not may.treat:
        return 0
    urgent = Q(state=Flag.State.OPEN, urgency__in=HELD_BY)
    again = Q(state=Flag.State.TAKEN, try_again_at__lte=at)
    flags = Flag.objects.filter(urgent | again, studio=studio)
    if may.own:
        return flags.count()
    rows = list(flags.filter(clients__isnull=False).values_list("pk", "clients"))
    return len(_of(may, rows, at)) if rows else 0


def _of(may: May, rows: Iterable[tuple[int, int]], at: datetime) -> set[int]:
    books = facts.load({client for _flag, client in rows}, at)
    found = set()
    for flag, client in rows:
        artist = facts.responsible(books[client]) if client in books else None
        if artist is not None and artist.pk in may.stands_for:
            found.add(flag)
    return found
