"""How much of a set was left at the next visit, over time, by who put it on, with which adhesive, as which service."""

from __future__ import annotations

from datetime import timedelta

from django.db.models import Case, F, FloatField, IntegerField, Value, When, Window
from django.db.models.functions import Cast, Lag

from aftercare.core.shedding import LONGEST_WORN
from aftercare.facts.rows import BY_KIND
from aftercare.figures.grouped import Groups, Span, grouped
from studio.aggregates import Days
from studio.models import SETS, Service, Visit

KINDS = {
    "all": (),
    "bucket": ("bucket",),
    "artist": ("by_artist",),
    "artist by bucket": ("by_artist", "bucket"),
    "adhesive": ("by_adhesive",),
    "adhesive by bucket": ("by_adhesive", "bucket"),
    "service": ("by_service",),
    "service by bucket": ("by_service", "bucket"),
}


def shares(span: Span) -> Groups:
    """Sum up the shares seen in the span (0 to 1), each of the set that she came in with; beside it the days worn.

    A set belongs to whoever put it on, whoever saw it later. Left out is what was seen after a removal, or of a set
    put on more than LONGEST_WORN days before.
    """
    ends = Visit.objects.filter(
        studio=span.studio,
        status=Visit.Status.DONE,
        service__in=[*SETS, Service.REMOVAL],
        starts_at__gte=span.since - timedelta(days=LONGEST_WORN + 1),
        starts_at__lt=span.until,
    )
    seen = When(service__in=SETS, share_left__isnull=False, starts_at__gte=span.since, then=1)
    rows = ends.annotate(
        who=F("client"),
        bucket=span.bucket("starts_at"),
        counts=Case(seen, default=0, output_field=IntegerField()),
        share=Cast("share_left", FloatField()) / Value(100.0),
        by_artist=_before("artist"),
        by_adhesive=_before("adhesive"),
        by_service=_before("service"),
        worn=Days(_before("starts_at"), F("starts_at")),
    ).values("who", "bucket", "counts", "share", "by_artist", "by_adhesive", "by_service", "worn")
    hers = "" if span.artist is None else f" AND by_artist = {int(span.artist)}"
    sets = ", ".join(f"'{service.value}'" for service in SETS)
    # Days are whole ones: half a day stands for the hour at which a visit begins.
    where = f"counts = 1 AND worn - 0.5 <= {LONGEST_WORN} AND by_service IN ({sets}){hers}"
    return grouped(rows, KINDS, value="share", beside="worn", where=where)


def _before(field: str) -> Window:
    """Return what the client's visit before says."""
    return Window(Lag(field), partition_by=[F("client")], order_by=[F("starts_at").asc(), BY_KIND, F("pk").asc()])
