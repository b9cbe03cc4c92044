"""What is about to leave by a road that stays open is journaled while the road is listened to."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import datetime

from django.db import DatabaseError

from aftercare import outbox
from aftercare.outbox import limits
from aftercare.sending.absence import Absence
from aftercare.sending.journaling import Journal
from aftercare.sending.judging import Judge
from aftercare.sending.letters import Letter
from aftercare.sending.roads import Road, Roads

AT_ONCE = 2  # portions: what is free while one is written down waits less, and each takes longer


@dataclass(frozen=True, slots=True)
class _Portion:
    """Letters that the database has been asked to write down."""

    letters: Sequence[Letter]
    journal: Journal
    departures: outbox.Departures


@dataclass(slots=True)
class Leaving:
    """Journals portion by portion; ``beside`` where the database can be asked without waiting for its answer.

    A portion at which the database fails does not leave. It may have been written down all the same, only that nobody
    was told: ``failed`` are letters that certainly were not handed over, to be settled as such once the database is
    back. What was not written down is due again once its lease is over.
    """

    road: Road
    roads: Roads
    beside: Sequence[outbox.Departures]
    counts: Counter[str] = field(default_factory=Counter)
    under_way: list[_Portion] = field(default_factory=list)
    failed: list[Letter] = field(default_factory=list)
    absence: Absence = field(default_factory=Absence)

    @property
    def held(self) -> int:
        """How many letters are being written down."""
        return sum(len(portion.letters) for portion in self.under_way)

    @property
    def free(self) -> int:
        """How many portions could begin now."""
        return len(self.beside) - len(self.under_way) if self.beside else 1

    def share(self, places: int) -> int:
        """Return how many leave together where so many places of the window are free.

        Some at a time, so that the first of them is not on the wire only when the last is written down, and places
        become free one after the other as well; not fewer, as each portion costs something by itself.
        """
        window = self.road.transport.window
        return min(places, max(2, window // 10, places // 4)) if self.beside else places

    def begin(self, letters: Sequence[Letter], moment: Callable[[], datetime]) -> list[Letter]:
        """Have a portion written down; return those that may go, where that was done at once.

        ``moment`` asks the database's clock.
        """
        with self.for_a_while(letters):
            now = moment()
            journal = Journal(self.road, Judge(now, self.roads, None), now)
            # What an owner's limit a day counts is counted in the same transaction, of which each step is waited for.
            if not self.beside or any(limits.is_counted(letter.parcel) for letter in letters):
                return self._done(journal, journal.depart(letters, now))
            letters = journal.judge.part_late(letters, now)
            if not letters:
                return self._done(journal, [])
            busy = [portion.departures for portion in self.under_way]
            departures = next(one for one in self.beside if one not in busy)
            departures.begin([letter.parcel for letter in letters], now, now, self.road.transport.patience)
            self.under_way.append(_Portion(letters, journal, departures))
        return []

    def descriptors(self) -> list[int]:
        """Return those at which there is something to read once a portion is written down."""
        return [portion.departures.fileno() for portion in self.under_way]

    def end(self, *, wait: bool = False) -> list[Letter]:
        """Return those that may go of the portions that are written down by now; of all, if they are waited for."""
        going: list[Letter] = []
        for portion in list(self.under_way):
            with self.for_a_while(portion.letters):
                if not (wait or portion.departures.are_written()):
                    continue
                gone = portion.departures.end()
                going += self._done(portion.journal, portion.journal.part(portion.letters, gone))
            self.under_way.remove(portion)
        return going

    def give_up(self) -> None:
        """Ask nothing more. What is being written down does not leave any more."""
        for portion in self.under_way:
            self.failed += portion.letters
        self.under_way.clear()
        for departures in self.beside:
            departures.close()

    @contextmanager
    def for_a_while(self, letters: Sequence[Letter]) -> Iterator[None]:
        """Put up with a database that is away for a while: these letters have not left."""
        try:
            yield
        except DatabaseError as error:
            self.failed += letters
            if lasting := self.absence.outlasted(error, f"{len(letters)} texts leave later"):
                raise lasting from error

    def _done(self, journal: Journal, going: list[Letter]) -> list[Letter]:
        self.absence.end()
        self.counts += journal.judge.counts
        return going
