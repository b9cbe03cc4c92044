"""Sending: take what is due, judge it anew, write down that it goes, hand it over, write down what became of it.

No promise hangs on a process here: whatever is killed at whatever moment, the rows say where each message stands.
Nothing is handed over within a transaction, and nothing without having been journaled in one before.
"""

from __future__ import annotations

import logging
import time
from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from django.db import DatabaseError, connection, transaction

from aftercare import facts, outbox
from aftercare.core import delivery
from aftercare.core.delivery import OPEN, Event, State
from aftercare.core.timing import Occasion, Reason
from aftercare.facts import ClientBook, Verdict
from aftercare.models import Message
from aftercare.outbox import Answered
from aftercare.sending import introductions, letters
from aftercare.sending.letters import Letter, Sender
from aftercare.sending.roads import Road, Roads
from aftercare.texts import Count
from studio.models import Client, Studio

log = logging.getLogger(__name__)

BATCH = 500
RESTED = timedelta(minutes=1)  # when a road that failed again and again is tried next
AFTER_FAULT = timedelta(minutes=2)  # when a message that cannot be written is looked at next
MOST_FAULTS = 30


def sweep(
    now: datetime,
    *,
    studio_id: int | None = None,
    stop: Callable[[], bool] = lambda: False,
    count: Count | None = None,
) -> Counter[str]:
    """Hand over all that is due at ``now``; return how many messages came to stand how.

    ``stop`` is asked between windows: once it is true, what was claimed is let go and the sweep ends. ``count`` says
    what waits for a member of staff: no morning list can be written without it.
    """
    with Roads() as roads:
        sweeping = _Sweep(now, roads, stop, count)
        while not stop() and (batch := outbox.claim(now, BATCH, studio_id)):
            sweeping.carry(batch)
        return +sweeping.counts


@dataclass(slots=True)
class _Sweep:
    now: datetime
    roads: Roads
    stop: Callable[[], bool]
    count: Count | None
    counts: Counter[str] = field(default_factory=Counter)
    senders: dict[int, Sender] = field(default_factory=dict)

    def carry(self, batch: Sequence[Message]) -> None:
        """Carry one claimed batch to wherever each of its messages gets."""
        self._hand_over(self._introduce(self._judge(batch)))

    # Judging

    def _judge(self, batch: Sequence[Message]) -> list[Letter]:
        """Return what goes now; put the rest back as its judgement says."""
        ids = {message.client_id for message in batch if message.client_id is not None}
        # The revisions are read first: what is written to a client after that is noticed before her message goes.
        revisions = dict(Client.objects.filter(pk__in=ids).values_list("pk", "revision"))
        self._know_senders({message.studio_id for message in batch})
        books = facts.load(ids, self.now)
        going: list[Letter] = []
        for message in batch:
            who = message.client_id or 0
            letter = self._letter(message, books.get(who), revisions.get(who))
            if letter is not None:
                going.append(letter)
        stopped = letters.stops(letter.parcel.address for letter in going)
        for letter in going:
            if letters.is_stopped(letter.message, letter.parcel.line.pk, letter.parcel.address, stopped):
                self._apply(letter.message, Verdict(Event.WITHHOLD, Reason.NO_CONSENT))
        self._put_back(message for message in batch if message.state != State.CLAIMED)
        return [letter for letter in going if letter.message.state == State.CLAIMED]

    def _letter(
        self, message: Message, book: ClientBook | None, revision: int | None, *, judged: bool = False
    ) -> Letter | None:
        """Judge and write one message; of one that does not go, set what becomes of it and return None."""
        try:
            verdict = Verdict(Event.JOURNAL, channel=message.channel, address=message.address)
            if not judged:
                verdict = facts.judge(message, book, self.now)
            if verdict.event is not Event.JOURNAL:
                self._apply(message, verdict)
                return None
            message.channel = verdict.channel
            sender = self.senders[message.studio_id]
            return letters.write(message, verdict.address, sender, book, revision, self.roads, self.now, self.count)
        except DatabaseError:
            raise
        except Exception as error:  # one message that is broken must not keep all others from leaving
            log.exception("message %s could not be written", message.pk)
            self._put_off_for_fault(message, f"It could not be written: {error}")
            return None

    def _know_senders(self, studio_ids: set[int]) -> None:
        """Read the studios again, as one can go live or back meanwhile; their lines and wordings once a sweep."""
        for pk, studio in Studio.objects.in_bulk(studio_ids).items():
            if pk in self.senders:
                self.senders[pk].studio = studio
            else:
                self.senders[pk] = Sender.of(studio)

    def _apply(self, message: Message, verdict: Verdict) -> None:
        message.state = delivery.advance(State.CLAIMED, verdict.event)
        message.reason = verdict.reason[:200]
        message.channel = verdict.channel or message.channel
        if verdict.event is Event.PLAN:  # never the same moment again: this sweep would never end
            message.due_at = max(verdict.due_at or self.now, self.now + timedelta(seconds=1))
        else:
            message.ended_at = self.now

    def _put_off_for_fault(self, message: Message, reason: str) -> None:
        message.tries += 1
        if message.tries >= MOST_FAULTS:
            self._apply(message, Verdict(Event.WITHHOLD, reason))
        else:
            self._apply(message, Verdict(Event.PLAN, reason, self.now + AFTER_FAULT))

    def _put_back(self, messages: Iterable[Message]) -> None:
        self.counts += outbox.put_back(messages)

    # Introducing

    def _introduce(self, ready: list[Letter]) -> list[Letter]:
        """Send the introductions that go ahead; return those letters whose number is introduced."""
        self._hand_over([letter for letter in ready if letter.message.occasion == Occasion.OPT_IN])
        ready = [letter for letter in ready if letter.message.occasion != Occasion.OPT_IN]
        firsts = {first.pair: (first, letter) for letter in reversed(ready) if (first := letter.first)}
        owed = introductions.owed([first for first, _ in firsts.values()], self.now) if firsts else {}
        if not owed:
            return ready
        claimed = outbox.claim_these([message.pk for message in owed.values() if message], self.now)
        self._hand_over([one for message in claimed if (one := self._introduction(message, firsts))])
        unwritten = [message for message in claimed if message.state in OPEN and message.lease_until is not None]
        self._put_back(message for message in unwritten if message.state != State.CLAIMED)
        waiting = introductions.waiting_until([firsts[pair][0] for pair in owed], self.now)
        for letter in ready:
            first = letter.first
            if first is not None and first.pair in waiting:
                self._apply(letter.message, Verdict(Event.PLAN, due_at=waiting[first.pair]))
        self._put_back(letter.message for letter in ready if letter.message.state != State.CLAIMED)
        return [letter for letter in ready if letter.message.state == State.CLAIMED]

    def _introduction(
        self, message: Message, firsts: dict[introductions.Pair, tuple[introductions.First, Letter]]
    ) -> Letter | None:
        """Write an introduction. It goes at the hour of the message that it goes ahead of, by the same judgement."""
        _, model = firsts[(message.line_id or 0, message.address)]
        return self._letter(message, model.book, model.revision, judged=True)

    # Handing over

    def _hand_over(self, ready: Iterable[Letter]) -> None:
        by_road: dict[int, list[Letter]] = {}
        for letter in ready:
            by_road.setdefault(id(letter.road), []).append(letter)
        for group in by_road.values():
            self._by_one_road(group[0].road, group)

    def _by_one_road(self, road: Road, ready: list[Letter]) -> None:
        """Hand over window by window; what became of one is written with the journal of the next, in one commit."""
        answers: list[Answered] = []
        size = road.transport.window
        for start in range(0, len(ready), size):
            if self.stop() or road.rests:
                self._leave(ready[start:], road)
                break
            window = self._write(answers, ready[start : start + size], road)
            outcomes = road.send([letter.outgoing for letter in window]) if window else []
            answers = [
                Answered(letter.parcel, outcome, letter.other_channel if outcome.event is Event.REFUSED else "")
                for letter, outcome in zip(window, outcomes, strict=True)
            ]
        self._write(answers, [], road)

    def _write(self, answers: Sequence[Answered], window: Sequence[Letter], road: Road) -> list[Letter]:
        """Settle one window and journal the next; return those of it that may go."""
        try:
            with transaction.atomic():
                settled = outbox.settle(answers, self.now)
                going, staying = _judged_again(window)
                outbox.let_go(letter.message for letter in staying)
                outbox.journal([letter.parcel for letter in going], self.now, road.transport.patience)
        except DatabaseError:
            log.exception("the database failed while %d outcomes were written", len(answers))
            self.counts += _settle_at_last(answers, self.now)
            raise
        self.counts += settled
        return going

    def _leave(self, ready: Sequence[Letter], road: Road) -> None:
        """Leave the rest of a group: to be due at once where the sweep ends, after a rest where the road fails."""
        if road.rests:
            for letter in ready:
                self._apply(letter.message, Verdict(Event.PLAN, due_at=self.now + RESTED))
            self._put_back(letter.message for letter in ready)
        else:
            outbox.let_go(letter.message for letter in ready)


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
