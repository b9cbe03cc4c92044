"""The book's standing work: files that wait to be read or written, and calendars that are polled."""

from __future__ import annotations

import logging
from collections.abc import Callable
from datetime import datetime, timedelta

from django.db.models import Q

from aftercare import imports
from aftercare.core.timing import whole_seconds
from studio.book import feeds
from studio.models import BookFile, CalendarFeed

log = logging.getLogger(__name__)

BUSY = timedelta(minutes=2)  # how long a worker that says nothing is believed to be at work
State = BookFile.State


def run_waiting(now: datetime) -> int:
    """Read or write the files that wait; return how many."""
    waiting = BookFile.objects.filter(state__in=[State.READING, State.WRITING]).order_by("uploaded_at")
    done = 0
    for pk, state in waiting.values_list("pk", "state"):
        if _take(pk, state, now):
            _work(BookFile.objects.select_related("studio").get(pk=pk), now)
            done += 1
    return done


def _take(pk: int, state: str, now: datetime) -> bool:
    free = BookFile.objects.filter(pk=pk, state=state).filter(Q(busy_until=None) | Q(busy_until__lt=now))
    return free.update(busy_until=now + BUSY) == 1


def _work(file: BookFile, now: datetime) -> None:
    """Do what the file waits for. A fault of ours is kept with the file, where the person who waits sees it."""
    try:
        if file.state == State.READING:
            _read(file, now)
        else:
            _write(file, now)
    except Exception:
        log.exception("book file %s", file.pk)
        problem = "Something went wrong here, and nothing of this file was written. Try it once more; we have noted it."
        _end(file, State.FAILED, {**file.result, "problem": problem})


def _read(file: BookFile, now: datetime) -> None:
    book = imports.read(file.studio, bytes(file.data), file.format, now, _progress(file, now))
    _end(file, State.PREVIEW, imports.preview(file.studio, book, _whole(file)).page())


def _write(file: BookFile, now: datetime) -> None:
    progress = _progress(file, now)
    book = imports.read(file.studio, bytes(file.data), file.format, now, progress)
    result = imports.run(file.studio, book, now, skip_bad=file.skip_bad, whole=_whole(file), progress=progress)
    _end(file, State.DONE if result.written else State.PREVIEW, result.page())


def _whole(file: BookFile) -> imports.Days | None:
    return (file.whole_from, file.whole_to) if file.whole_from and file.whole_to else None


def _progress(file: BookFile, now: datetime) -> Callable[[str, int, int], None]:
    """Keep the page that waits informed, at most a hundred times."""
    last = [("", -1)]

    def say(what: str, done: int, total: int) -> None:
        step = (what, done * 100 // total if total else -1)
        if step != last[0]:
            last[0] = step
            BookFile.objects.filter(pk=file.pk).update(
                done_rows=done, all_rows=total, doing=what, busy_until=now + BUSY
            )

    return say


def _end(file: BookFile, state: str, result: dict[str, object]) -> None:
    BookFile.objects.filter(pk=file.pk).update(state=state, result=result, busy_until=None, doing="")


def poll_due(now: datetime, *, fetch: Callable[[str, str], feeds.Fetched] = feeds.fetch) -> int:
    """Poll the calendars whose time has come; return how many were asked."""
    now = whole_seconds(now)
    asked = 0
    for feed in CalendarFeed.objects.select_related("studio"):
        since = now - timedelta(minutes=feed.every_minutes)
        due = CalendarFeed.objects.filter(pk=feed.pk).filter(Q(asked_at=None) | Q(asked_at__lte=since))
        if due.update(asked_at=now) == 1:  # one worker wins
            _poll(feed, now, fetch)
            asked += 1
    return asked


def _poll(feed: CalendarFeed, now: datetime, fetch: Callable[[str, str], feeds.Fetched]) -> None:
    try:
        fetched = fetch(feed.address, feed.etag)
        problem = _take_in(feed, fetched, now)
    except feeds.FeedError as error:
        CalendarFeed.objects.filter(pk=feed.pk).update(problem=str(error))
        return
    digest = fetched.digest or feed.digest
    CalendarFeed.objects.filter(pk=feed.pk).update(read_at=now, etag=fetched.etag, digest=digest, problem=problem)


def _take_in(feed: CalendarFeed, fetched: feeds.Fetched, now: datetime) -> str:
    """Import what is good of a calendar that changed; return what was wrong with the rest."""
    if fetched.data is None or fetched.digest == feed.digest:
        return feed.problem
    book = imports.read(feed.studio, fetched.data, "ics", now)
    if not book.rows and book.bad:
        raise feeds.FeedError(book.bad[0].problem)
    result = imports.run(feed.studio, book, now, skip_bad=True)
    return "\n".join(f"event {one.row}, {one.field}: {one.problem}" for one in result.bad[:20])
