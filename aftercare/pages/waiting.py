"""How many open matters must be acted on now: for the menu and the day sheet, so with as few queries as can be."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from django.db.models import OuterRef, Q, Subquery
from django.db.models.functions import Coalesce

from aftercare.core.occasions import Occasion
from aftercare.models import HELD_BY, Flag, Message
from studio.access import TREATED, May
from studio.models import Studio, Visit


def among(flags: Iterable[Flag], at: datetime) -> int:
    """Count the same among flags that are at hand."""
    return sum(
        (flag.state == Flag.State.OPEN and flag.urgency in HELD_BY)
        or (flag.state == Flag.State.TAKEN and flag.try_again_at is not None and flag.try_again_at <= at)
        for flag in flags
    )


def now(studio: Studio, may: May, at: datetime) -> int:
    """Return how many nobody has, or wait to be tried again: to the owner all, to an artist those on her list.

    One query.
    """
    if not may.treat:
        return 0
    urgent = Q(state=Flag.State.OPEN, urgency__in=HELD_BY)
    again = Q(state=Flag.State.TAKEN, try_again_at__lte=at)
    flags = Flag.objects.filter(urgent | again, studio=studio)
    if not may.own:
        pages = Message.objects.filter(staff=may.staff, occasion=Occasion.ALERT, handed_over_at__isnull=False)
        hers = Q(clients__isnull=False, artist__in=may.stands_for) | Q(pk__in=pages.values("flag"))
        flags = flags.alias(artist=_responsible(at)).filter(hers)
    return flags.order_by().values("pk").distinct().count()


def _responsible(at: datetime) -> Coalesce:
    """Whose client she is, as `facts.responsible` has it: the artist of her latest visit, else of her next one."""
    kept = Visit.objects.filter(client=OuterRef("clients"), status__in=TREATED, artist__isnull=False)
    begun = kept.filter(starts_at__lte=at).order_by("-starts_at", "-pk")
    ahead = kept.filter(starts_at__gt=at).order_by("starts_at", "pk")
    return Coalesce(Subquery(begun.values("artist")[:1]), Subquery(ahead.values("artist")[:1]))
