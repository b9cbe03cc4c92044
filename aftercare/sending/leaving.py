"""What is about to leave by a road that stays open is journaled while the road is listened to."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
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


@dataclass(slots=True)
class Leaving:
    """Journals one portion at a time; by ``departures`` where the database can be asked without waiting for its answer.

    What may leave meanwhile goes with the next, so that a portion is as small as the road is slow: a place that is free
    waits for no other, and where there is much to send each text costs less. A portion at which the database fails does
    not leave, and is due again once its lease is over.
    """

    road: Road
    roads: Roads
    departures: outbox.Departures | None
    counts: Counter[str] = field(default_factory=Counter)
    portion: Sequence[Letter] = ()
    journal: Journal | None = None  # of a portion that the database has been asked to write down
    absence: Absence = field(default_factory=Absence)

    @property
    def is_under_way(self) -> bool:
        """Whether a portion is being written down."""
        return self.journal is not None

    def begin(self, portion: Sequence[Letter], now: datetime) -> list[Letter]:
        """Have a portion written down; return those that may go, where that was done at once.

        ``now`` is the moment by the database's clock.
        """
        journal = Journal(self.road, Judge(now, self.roads, None), now)
        with self._for_a_while(portion):
            # What an owner's limit a day counts is counted in the same transaction, of which each step is waited for.
            if self.departures is None or any(limits.is_counted(letter.parcel) for letter in portion):
                return self._done(journal, journal.depart(portion, now))
            self.departures.begin([one.parcel for one in portion], now, now, self.road.transport.patience)
            self.portion, self.journal = portion, journal
        return []

    def fileno(self) -> int | None:
        """Return the descriptor at which there is something to read once the portion is written down."""
        with self._for_a_while(self.portion):
            return self.departures.fileno() if self.departures is not None and self.is_under_way else None
        return None

    def end(self, *, wait: bool = False) -> list[Letter]:
        """Return those of the portion that may go; none while it is not written down yet, unless that is waited for."""
        if self.departures is None or self.journal is None:
            return []
        with self._for_a_while(self.portion):
            if not (wait or self.departures.are_written()):
                return []
            return self._done(self.journal, self.journal.part(self.portion, self.departures.end()))
        return []

    def close(self) -> None:
        """Ask nothing more."""
        if self.departures is not None:
            self.departures.close()

    def _done(self, journal: Journal, going: list[Letter]) -> list[Letter]:
        self.absence.end()
        self.portion, self.journal = (), None
        self.counts += journal.judge.counts
        return going

    @contextmanager
    def _for_a_while(self, portion: Sequence[Letter]) -> Iterator[None]:
        """Put up with a database that is away for a while."""
        try:
            yield
        except DatabaseError as error:
            self.portion, self.journal = (), None
            if lasting := self.absence.outlasted(error, f"{len(portion)} texts leave later"):
                raise lasting from error
