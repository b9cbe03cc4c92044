"""The book's standing work: files that wait to be read or written. One worker a file, whatever else there is."""

from __future__ import annotations

import logging
import time
from datetime import datetime, timedelta
from typing import Any

from django.db.models import Q
from django.utils import translation
from django.utils.translation import gettext as _

from aftercare import imports
from studio import clock
from studio.book.importing import Overtaken
from studio.book.missing import Days
from studio.models import BookFile

log = logging.getLogger(__name__)

BUSY = timedelta(minutes=2)  # how long a worker that says nothing is believed to be at work
State = BookFile.State


def run_waiting(now: datetime, *, seconds: float | None = None) -> int:
    """Read or write the files that wait; return how many were taken up.

    One is taken up in any case. After ``seconds`` no further file is begun, and one that is being written is left
    between two of its parts; the next round goes on with it.
    """
    end = None if seconds is None else time.monotonic() + seconds
    waiting = BookFile.objects.filter(state__in=[State.READING, State.WRITING]).order_by("uploaded_at")
    done = 0
    for pk, state in waiting.values_list("pk", "state"):
        if done and end is not None and time.monotonic() > end:
            break
        turn = _Turn(pk, end)
        if turn.take(state):
            _work(turn, now)
            done += 1
    return done


class TurnLost(Exception):
    """Another worker has the file by now, as this one said nothing for too long."""


class RoundOver(Exception):  # no error: the file's turn goes on in the next round
    """The round has lasted long enough; what is written of the file stands."""


class _Turn:
    """One worker's hold on a file, by the database's clock; it is kept by saying how far things are."""

    def __init__(self, pk: int, end: float | None = None) -> None:
        self.pk = pk
        self.end_of_round = end  # by time.monotonic()
        self.parts = 0
        self.until: datetime | None = None
        self.step: tuple[str, int] = ("", -1)

    def take(self, state: str) -> bool:
        at = clock.now()
        free = BookFile.objects.filter(pk=self.pk, state=state).filter(Q(busy_until=None) | Q(busy_until__lt=at))
        self.until = at + BUSY
        return free.update(busy_until=self.until) == 1

    def progress(self, what: str, done: int, total: int) -> None:
        """Keep the page that waits informed, at most a hundred times for each thing. Raises TurnLost."""
        step = (what, done * 100 // total if total else -1)
        if step != self.step:
            self.step = step
            until = clock.now() + BUSY
            self._update(done_rows=done, all_rows=total, doing=what, busy_until=until)
            self.until = until

    def part(self, what: str, done: int, total: int) -> None:
        """Keep the page informed between two parts of writing. Raises RoundOver, but never before a part is written."""
        if self.parts and self.end_of_round is not None and time.monotonic() > self.end_of_round:
            raise RoundOver
        self.parts += 1
        self.progress(what, done, total)

    def end(self, state: str, result: dict[str, Any]) -> None:
        self._update(state=state, result=result, busy_until=None, doing="")

    def _update(self, **fields: Any) -> None:
        if not BookFile.objects.filter(pk=self.pk, busy_until=self.until).update(**fields):
            raise TurnLost(f"book file {self.pk} was taken over")


def _work(turn: _Turn, now: datetime) -> None:
    """Do what the file waits for, and say of it in the language of whoever waits what was found.

    A fault of ours is kept with the file, where she sees it.
    """
    file = BookFile.objects.select_related("studio", "by").get(pk=turn.pk)
    with translation.override((file.by and file.by.language) or file.studio.language):
        _worked(file, turn, now)


def _worked(file: BookFile, turn: _Turn, now: datetime) -> None:
    try:
        if file.state == State.READING:
            _read(file, turn, now)
        else:
            _write(file, turn, now)
    except TurnLost as lost:
        log.warning("%s", lost)
    except RoundOver:
        turn.end(State.WRITING, {**file.result, "rounds": file.result.get("rounds", 0) + 1})
    except Overtaken as overtaken:
        turn.end(State.FAILED, {**file.result, "problem": str(overtaken)})
    except Exception:
        log.exception("book file %s", file.pk)
        turn.end(State.FAILED, {**file.result, "problem": _sorry(file)})


def _sorry(file: BookFile) -> str:
    if file.state == State.READING:
        return _(
            "Something went wrong here, and nothing of this file was written. Choose it once more; we have noted it."
        )
    return _(
        "Something went wrong here before all of this file was written. Choose it once more: what stands already is "
        "not written twice. We have noted it."
    )


def _read(file: BookFile, turn: _Turn, now: datetime) -> None:
    book = imports.read(file.studio, bytes(file.data), file.format, now, turn.progress)
    turn.end(State.PREVIEW, imports.preview(file.studio, book, _whole(file)).page())


def _write(file: BookFile, turn: _Turn, now: datetime) -> None:
    book = imports.read(file.studio, bytes(file.data), file.format, now, turn.progress)
    seen = {one["visit"] for one in file.result.get("to_cancel", [])}  # nothing is cancelled that nobody was shown
    result = imports.run(
        file.studio, book, now, skip_bad=file.skip_bad, whole=_whole(file), seen=seen, progress=turn.part
    )
    page = result.page()
    if file.result.get("rounds"):  # this one wrote the rest alone: what the preview counted is what all of them did
        page |= {name: file.result[name] for name in ("visits", "clients") if name in file.result}
    turn.end(State.DONE if result.written else State.PREVIEW, page)


def _whole(file: BookFile) -> Days | None:
    return (file.whole_from, file.whole_to) if file.whole_from and file.whole_to else None
