"""How many visits are booked on days on which the studio is closed, or somebody is away."""

from __future__ import annotations

from collections import Counter
from datetime import date, datetime, time, timedelta

from studio.models import Staff, Studio, Visit


def by_day(studio: Studio, first: date, last: date, now: datetime, artist: Staff | None = None) -> Counter[date]:
    """Count the visits still ahead of ``now`` from the first to the last day, on the studio's clock. One query."""
    begin = datetime.combine(first, time(), studio.zone)
    end = datetime.combine(last + timedelta(days=1), time(), studio.zone)
    rows = Visit.objects.filter(studio=studio, status=Visit.Status.BOOKED, starts_at__gte=begin, starts_at__lt=end)
    rows = rows.filter(starts_at__gt=now)
    if artist is not None:
        rows = rows.filter(artist=artist)
    moments = rows.order_by("starts_at").values_list("starts_at", flat=True)
    return Counter(at.astimezone(studio.zone).date() for at in moments)
