"""One commit: what became of those before, and that the next ones are about to leave. Everything is asked once more."""

from __future__ import annotations

import logging
import time
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime

from django.db import DatabaseError, connection, transaction

from aftercare import outbox
from aftercare.core.delivery import Event
from aftercare.facts import Verdict
from aftercare.outbox import Answered, limits
from aftercare.sending import letters
from aftercare.sending.judging import Judge
from aftercare.sending.letters import Letter
from aftercare.sending.roads import Road
from aftercare.transports.base import Outcome
from studio.models import Client, Studio

log = logging.getLogger(__name__)

Heard = tuple[Letter, Outcome]
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

        Where the database fails it is tried again for a while, so that what was heard is not lost; then raises.
        """
        try:
            return self.commit(heard, window)
        except DatabaseError:
            log.exception("the database failed while %d outcomes were written", len(heard))
            self.counts += _settle_at_last([_answered(*one) for one in heard], self.now)
            raise

    def commit(self, heard: Sequence[Heard], window: Sequence[Letter]) -> list[Letter]:
        """Do the same without trying again: all is written, or nothing is, and DatabaseError raised."""
        if not heard and not window:
            return []
        with transaction.atomic():
            settled = outbox.settle([_answered(*one) for one in heard], self.now)
            going, staying = _judged_again(window)
            going, over = _within_limits(going, self.now)
            outbox.let_go(letter.message for letter in staying)
            outbox.journal([letter.parcel for letter in going], self.now, self.road.transport.patience)
            limits.give_back([letter.parcel for letter, outcome in heard if outcome.event is Event.NOT_TAKEN])
        self.counts += settled
        self._put_off(over)
        return going

    def _put_off(self, over: Sequence[tuple[Letter, datetime]]) -> None:
        for letter, until in over:
            self.judge.apply(letter.message, Verdict(Event.PLAN, DAY_LIMIT, until))
        self.judge.put_back(letter.message for letter, _until in over)


def _answered(letter: Letter, outcome: Outcome) -> Answered:
    return Answered(letter.parcel, outcome, letter.other_channel if outcome.event is Event.REFUSED else "")


def _judged_again(window: Sequence[Letter]) -> tuple[list[Letter], list[Letter]]:
    """Within the journal's transaction: part those that still may go from those whose facts have changed.

    Those that are no longer this sender's own are in neither.
    """
    going: list[Letter] = []
    staying: list[Letter] = []
    if not window:
        return going, staying
    mine = outbox.hold([letter.parcel for letter in window])
    stopped = letters.stops(letter.parcel.address for letter in window)
    clients = Client.objects.filter(pk__in={letter.message.client_id for letter in window} - {None})
    revisions = {pk: (now, then) for pk, now, then in clients.values_list("pk", "revision", "planned_revision")}
    studios = Studio.objects.filter(pk__in={letter.sender.studio.pk for letter in window})
    rehearses = {pk: since is None for pk, since in studios.values_list("pk", "live_since")}
    for letter in window:
        parcel = letter.parcel
        if letter.message.pk in mine:
            still = (
                rehearses.get(letter.sender.studio.pk) == parcel.rehearsed
                and not letters.is_stopped(letter.message, parcel.line.pk, parcel.address, stopped)
                and _is_as_read(letter, revisions.get(letter.message.client_id or 0))
            )
            (going if still else staying).append(letter)
    return going, staying


def _is_as_read(letter: Letter, revisions: tuple[int, int] | None) -> bool:
    """Whether her records are as they were when the message was judged, and planned from. Answers go regardless."""
    if letter.message.client_id is None or letter.message.rank == 0:
        return True
    return revisions is not None and revisions[0] == letter.revision and revisions[1] >= revisions[0]


def _within_limits(going: Sequence[Letter], now: datetime) -> tuple[list[Letter], list[tuple[Letter, datetime]]]:
    """Part those that the owner's limit a day lets go from those that wait until her next day begins."""
    over = limits.spend([letter.parcel for letter in going], now)
    return (
        [letter for letter in going if letter.message.pk not in over],
        [(letter, over[letter.message.pk]) for letter in going if letter.message.pk in over],
    )


def _settle_at_last(answers: Sequence[Answered], now: datetime) -> Counter[str]:
    """Outcomes that were heard must not be lost with the connection: try for a while before giving them up."""
    for pause in (0.2, 1, 3, 5, 10) if answers else ():
        time.sleep(pause)
        connection.close_if_unusable_or_obsolete()
        try:
            with transaction.atomic():
                return outbox.settle(answers, now)
        except DatabaseError as error:
            log.warning("the outcomes are not written yet: %s", error)
    return Counter()
