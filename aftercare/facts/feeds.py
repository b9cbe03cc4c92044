"""How old a book is that comes by a calendar's feed."""

from __future__ import annotations

from datetime import datetime, timedelta

from studio.models import CalendarFeed, Studio

OLD = timedelta(hours=48)


def book_is_old(studio: Studio, now: datetime) -> bool:
    """Whether the studio's book comes by feed and was last read without fault over 48 hours ago.

    Nothing has come in yet from a feed that was never read, so what it would say cannot be old.
    """
    feed: CalendarFeed | None = getattr(studio, "calendar_feed", None)
    return feed is not None and feed.read_at is not None and now - feed.read_at > OLD
