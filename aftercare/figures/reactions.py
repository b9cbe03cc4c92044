"""Sets that a reaction on record followed, per set done: over time, by service, by artist and by lot."""

from __future__ import annotations

from collections.abc import Collection

from django.db.models import Case, F, FloatField, Value, When

from aftercare.figures.grouped import Groups, Span, grouped
from studio.models import SETS, Visit

KINDS = {
    "all": (),
    "bucket": ("bucket",),
    "service": ("service",),
    "artist": ("by_artist",),
    "adhesive": ("by_adhesive",),
}


def reactions(span: Span, followed: Collection[int]) -> Groups:
    """Sum up the sets done in the span: 1 where the visit is among ``followed``, those that a reaction followed."""
    done = Visit.objects.filter(
        studio=span.studio,
        status=Visit.Status.DONE,
        service__in=SETS,
        starts_at__gte=span.since,
        starts_at__lt=span.until,
    )
    if span.artist is not None:
        done = done.filter(artist=span.artist)
    hit = Case(When(pk__in=followed, then=Value(1.0)), default=Value(0.0), output_field=FloatField())
    rows = done.annotate(
        who=F("client"), bucket=span.bucket("starts_at"), by_artist=F("artist"), by_adhesive=F("adhesive"), hit=hit
    ).values("who", "bucket", "service", "by_artist", "by_adhesive", "hit")
    return grouped(rows, KINDS, value="hit")
