"""What was heard by a road that stays open is written down in groups, beside the road itself."""

from __future__ import annotations

import threading
import time
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from django.db import DatabaseError, connection

from aftercare.sending.absence import Absence
from aftercare.sending.journaling import Heard

LISTEN = 0.05  # seconds: how long what was heard may wait for its commit
MOST = 500  # outcomes in one commit


@dataclass(slots=True)
class Settler:
    """Takes what was heard and has it written, in a thread of its own once it is started.

    ``settle`` writes some in one commit, or nothing where it raises DatabaseError; it returns how messages came to
    stand. What could not be written is kept, and tried again while the database is away for a while.
    """

    settle: Callable[[Sequence[Heard]], Counter[str]]
    counts: Counter[str] = field(default_factory=Counter)
    error: BaseException | None = None
    heard: list[Heard] = field(default_factory=list)
    since: float = 0.0  # when the oldest of these was heard
    absence: Absence = field(default_factory=Absence)
    thread: threading.Thread | None = None
    ended: bool = False
    woken: threading.Condition = field(default_factory=threading.Condition)

    def start(self, name: str) -> None:
        """Write in a thread from now on."""
        self.thread = threading.Thread(target=self._run, name=name, daemon=True)
        self.thread.start()

    def take(self, heard: Sequence[Heard]) -> None:
        """Take what was heard just now."""
        with self.woken:
            self.since = self.since if self.heard else time.monotonic()
            self.heard += heard
            self.woken.notify()

    def turn(self) -> None:
        """Without a thread: write what has waited long enough. Raises what kept it from being written."""
        if self.thread is None and self._is_due():
            self._write()
        if self.error is not None:
            raise self.error

    def end(self) -> None:
        """Write all that is left; return once it is. Raises what kept it from being written."""
        with self.woken:
            self.ended = True
            self.woken.notify()
        if self.thread is not None:
            self.thread.join()
        while self.heard and self.error is None:
            self._write()
        if self.error is not None:
            raise self.error

    def _is_due(self) -> bool:
        return bool(self.heard) and (self.ended or len(self.heard) >= MOST or time.monotonic() - self.since >= LISTEN)

    def _run(self) -> None:
        try:
            while not (self.ended and not self.heard) and self.error is None:
                with self.woken:
                    if not self.heard:
                        self.woken.wait(LISTEN)
                if self._is_due():
                    self._write()
                elif self.heard:
                    time.sleep(LISTEN / 5)
        finally:
            connection.close()

    def _write(self) -> None:
        some = self.heard[:MOST]
        try:
            self.counts += self.settle(some)
        except DatabaseError as error:
            self.error = self.absence.outlasted(error, f"{len(self.heard)} outcomes are not written yet")
        except BaseException as error:  # the road's own thread raises it
            self.error = error
        else:
            self.absence.end()
            with self.woken:
                del self.heard[: len(some)]
