"""Calendars that are polled: what is good of them comes in, and what is not is said to the owner."""

from __future__ import annotations

import logging
import time
from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from hashlib import sha256

from django.db.models import F, Q
from django.utils import translation
from django.utils.translation import gettext as _

from aftercare import imports
from aftercare.core.timing import whole_seconds
from studio.book import feeds
from studio.models import CalendarFeed, Studio, Visit

log = logging.getLogger(__name__)

MOST = 20  # lines of each kind that the owner is told
HALF = 32  # hex digits of a feed's digest that are of its data; the others are of how it was read
Fetch = Callable[[str, str], feeds.Fetched]


def poll_due(now: datetime, *, fetch: Fetch = feeds.fetch, seconds: float | None = None) -> int:
    """Poll the calendars whose time has come, the longest unasked first; return how many were asked.

    After ``seconds`` no further one is begun: the next round goes on from there.
    """
    end = None if seconds is None else time.monotonic() + seconds
    now = whole_seconds(now)
    asked = 0
    for feed in CalendarFeed.objects.select_related("studio").order_by(F("asked_at").asc(nulls_first=True), "pk"):
        if end is not None and time.monotonic() > end:
            break
        since = now - timedelta(minutes=feed.every_minutes)
        due = CalendarFeed.objects.filter(pk=feed.pk).filter(Q(asked_at=None) | Q(asked_at__lte=since))
        if due.update(asked_at=now) == 1:  # one worker wins
            with translation.override(feed.studio.language):  # of what its owner is told
                _poll(feed, now, fetch)
            asked += 1
    return asked


def _poll(feed: CalendarFeed, now: datetime, fetch: Fetch) -> None:
    """Ask one calendar. After a fault it is read from its beginning, so that no fault outlives its cause."""
    row = CalendarFeed.objects.filter(pk=feed.pk)
    try:
        row.update(read_at=now, **_asked(feed, now, fetch))
    except feeds.FeedError as error:
        row.update(problem=str(error), etag="", digest="")
    except Exception:  # one calendar must not keep the others from being asked
        log.exception("calendar of studio %s", feed.studio_id)
        row.update(
            problem=_("Something went wrong here; we have noted it. It is read again later."), etag="", digest=""
        )


def _asked(feed: CalendarFeed, now: datetime, fetch: Fetch) -> dict[str, str]:
    """Fetch a calendar and take in what changed; return what is kept of it."""
    reading = _reading(feed.studio, now)
    is_read_alike = feed.digest[HALF:] == reading
    fetched = fetch(feed.address, feed.etag if is_read_alike else "")
    digest = f"{fetched.digest[:HALF]}{reading}"
    if fetched.data is None or digest == feed.digest:
        return {"etag": fetched.etag}
    return {"problem": _take_in(feed, fetched.data, now), "etag": fetched.etag, "digest": digest}


def _reading(studio: Studio, now: datetime) -> str:
    """Name how a calendar is read today: with another pattern or table of names, or on another day, it reads anew."""
    return sha256(repr((now.date(), imports.context_of(studio))).encode()).hexdigest()[:HALF]


def _take_in(feed: CalendarFeed, data: bytes, now: datetime) -> str:
    """Import what is good of a calendar; return what its owner has to look at."""
    book = imports.read(feed.studio, data, "ics", now)
    if not book.rows and book.bad:
        raise feeds.FeedError(book.bad[0].problem)
    result = imports.run(feed.studio, book, now, skip_bad=True)
    bad = [
        _("event {row}, {field}: {problem}").format(row=one.row, field=one.field, problem=one.problem)
        for one in result.bad[:MOST]
    ]
    return "\n".join([*bad, *_missing(result, feed.studio, now)])


def _missing(result: imports.Result, studio: Studio, now: datetime) -> Iterator[str]:
    """Say which visits ahead are no longer in the calendar: they are unchanged, and still spoken of to the client."""
    moment = f"{now.astimezone(studio.zone):%Y-%m-%d %H:%M}"
    called_off = {one["visit"] for one in result.to_cancel}
    ahead = [one for one in result.gone if one["status"] == Visit.Status.BOOKED and one["starts_at"] > moment]
    for one in [one for one in ahead if one["visit"] not in called_off][:MOST]:
        yield _("no longer in the calendar: {client}, {starts_at}. Cancel the visit here if it is off.").format(
            client=one["client"], starts_at=one["starts_at"]
        )
