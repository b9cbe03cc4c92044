"""What became of those that left, and that the next ones are about to leave, when everything is asked once more."""

from __future__ import annotations

import logging
from collections import Counter
from collections.abc import Collection, Sequence
from dataclasses import dataclass, field
from datetime import datetime

from django.db import DatabaseError, connection, transaction

from aftercare import outbox
from aftercare.core.delivery import Event
from aftercare.facts import Verdict
from aftercare.outbox import Answered, limits
from aftercare.sending.absence import Absence
from aftercare.sending.judging import Judge
from aftercare.sending.letters import Letter
from aftercare.sending.roads import Road
from aftercare.transports.base import Outcome
from studio import clock

log = logging.getLogger(__name__)

Heard = tuple[Letter, Outcome]
NOT_LEFT = "The database failed as this was about to leave: it has not left."
DAY_LIMIT = "The day's limit of texts is reached."


@dataclass(slots=True)
class Journal:
    """Writes what leaves by one road and what became of it, and counts how messages came to stand."""

    road: Road
    judge: Judge
    now: datetime
    counts: Counter[str] = field(default_factory=Counter)

    def write(self, heard: Sequence[Heard], window: Sequence[Letter]) -> list[Letter]:
        """Settle what was heard and journal the next window in one commit; return those of it that may go.

        Where the database fails it is tried again for a while, so that what was heard is not lost; then raises. The
        window may have been written down all the same, only that nobody was told: as it has not left, that is settled.
        """
        if not heard and not window:
            return []
        try:
            with transaction.atomic():
                settled = self._settled(heard)
                going = self.depart(window, clock.now())
        except DatabaseError:
            log.exception("the database failed while %d outcomes were written", len(heard))
            self._settle_at_last([*heard, *map(not_left, window)])
            raise
        self.counts += settled
        return going

    def settle(self, heard: Sequence[Heard]) -> None:
        """Write down what was heard in one commit: all of it, or nothing where DatabaseError is raised."""
        with transaction.atomic():
            settled = self._settled(heard)
        self.counts += settled

    def depart(self, window: Sequence[Letter], at: datetime) -> list[Letter]:
        """Journal a window in one commit; return those of it that may go. What may not is put back.

        ``at`` is the moment by the database's clock.
        """
        window = self.judge.part_late(window, self.now)
        if not any(limits.is_counted(letter.parcel) for letter in window):
            return self._journaled(window, at)
        with transaction.atomic():  # what is counted on its day leaves
            over = limits.spend([letter.parcel for letter in window], self.now)
            within = [letter for letter in window if letter.message.pk not in over]
            going = self._journaled(within, at)
            gone = {letter.message.pk for letter in going}
            limits.give_back([letter.parcel for letter in within if letter.message.pk not in gone], self.now)
            self._put_off([(letter, over[letter.message.pk]) for letter in window if letter.message.pk in over])
        return going

    def _settled(self, heard: Sequence[Heard]) -> Counter[str]:
        limits.give_back([letter.parcel for letter, outcome in heard if outcome.event is Event.NOT_TAKEN])
        return outbox.settle([_answered(*one) for one in heard], self.now)

    def _settle_at_last(self, heard: Sequence[Heard]) -> None:
        """Outcomes that were heard must not be lost with the connection: try for a while before giving them up."""
        absence = Absence()
        while True:
            connection.close_if_unusable_or_obsolete()
            try:
                return self.settle(heard)
            except DatabaseError as error:
                if absence.outlasted(error, f"{len(heard)} outcomes are not written yet"):
                    return log.error("%d outcomes could not be written", len(heard))

    def part(self, window: Sequence[Letter], gone: Collection[int]) -> list[Letter]:
        """Return those of a window whose messages are journaled; the others are put back."""
        staying = [letter.message for letter in window if letter.message.pk not in gone]
        if staying:
            outbox.let_go(staying)
        return [letter for letter in window if letter.message.pk in gone]

    def _journaled(self, window: Sequence[Letter], at: datetime) -> list[Letter]:
        parcels = [letter.parcel for letter in window]
        return self.part(window, outbox.depart(parcels, self.now, at, self.road.transport.patience))

    def _put_off(self, over: Sequence[tuple[Letter, datetime]]) -> None:
        for letter, until in over:
            self.judge.apply(letter.message, Verdict(Event.PLAN, DAY_LIMIT, until))
        self.judge.put_back(letter.message for letter, _until in over)


def _answered(letter: Letter, outcome: Outcome) -> Answered:
    return Answered(letter.parcel, outcome, letter.other_channel if outcome.event is Event.REFUSED else "")


def not_left(letter: Letter) -> Heard:
    """Return the outcome of one that may have been journaled, but certainly was not handed over."""
    return letter, Outcome(reference=letter.parcel.reference, event=Event.NOT_TAKEN, problem=NOT_LEFT)
