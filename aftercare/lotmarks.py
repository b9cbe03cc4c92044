"""Lots of adhesive whose reactions pass the owner's level are marked once a night, and stand on the morning list.

Nobody has to think of looking. A mark stays for good, as the level is kept for a lot's whole life; it leaves the list
when the lot is set aside, or when the owner says that she has looked and leaves it in use, until one more reaction
comes after that.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from datetime import datetime, timedelta

from django.db.models import QuerySet

from aftercare import heartbeats, lotwatch
from studio.models import Adhesive, Studio
from studio.turns import let_others_in

EACH = timedelta(hours=20)  # between two looks at a studio: once a day, whenever the nightly round gets to it
_NAME = "lots:"


def mark_due(now: datetime, *, seconds: float, stop: Callable[[], bool] = lambda: False) -> int:
    """Weigh the lots of each studio that were not weighed today; return how many lots are marked anew.

    Begins no further studio after ``seconds``: the next look goes on from there.
    """
    end = time.monotonic() + seconds
    looked = heartbeats.last(_NAME)
    marked = 0
    for studio in Studio.objects.filter(adhesives__isnull=False).distinct().order_by("pk").iterator():
        name = f"{_NAME}{studio.pk}"
        if name in looked and now - looked[name] < EACH:
            continue
        if stop() or time.monotonic() > end:
            break
        marked += mark(studio, now)
        heartbeats.finished(name, now=now)
        let_others_in()
    return marked


def mark(studio: Studio, now: datetime) -> int:
    """Mark those lots of a studio that stand out and were not marked before; return how many.

    One that was looked at and left in use is to be looked at again once it has brought one more reaction.
    """
    found = [lot.adhesive for lot in lotwatch.watch(studio, now).lots if lot.stands_out]
    looked = {one.pk: one.looked_at for one in found if one.looked_at is not None}
    if looked:
        again = {
            one.visit.adhesive_id
            for one in lotwatch.followed(studio, now)
            if (since := looked.get(one.visit.adhesive_id or 0)) is not None and one.reactions[-1].at > since
        }
        Adhesive.objects.filter(pk__in=again).update(looked_at=None, looked_by=None)
    return Adhesive.objects.filter(pk__in=[one.pk for one in found], marked_at=None).update(marked_at=now)


def to_look_at(studio: Studio) -> QuerySet[Adhesive]:
    """Return the marked lots of a studio that are still in use, and that the owner has not looked at."""
    return Adhesive.objects.filter(studio=studio, marked_at__isnull=False, set_aside_at=None, looked_at=None)
