"""Judging: claimed messages are asked everything anew, and those that go are written. The rest is put back."""

from __future__ import annotations

import logging
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from django.db import DatabaseError

from aftercare import facts, outbox
from aftercare.core import delivery
from aftercare.core.delivery import Event, State
from aftercare.core.reach import Purpose, reach
from aftercare.core.timing import Occasion, Reason
from aftercare.facts import ClientBook, Verdict
from aftercare.models import Message
from aftercare.outbox import falling_back
from aftercare.sending import introductions, letters
from aftercare.sending.health import DETOUR_AFTER, SHORTEST_REST
from aftercare.sending.letters import Letter, Sender
from aftercare.sending.roads import Elsewhere, Roads
from aftercare.texts import Count
from studio import clock
from studio.models import Client, Studio

log = logging.getLogger(__name__)

AFTER_FAULT = timedelta(minutes=2)  # when a message that cannot be written is looked at next
MOST_FAULTS = 30
DETOUR = "The road that it was to take has been away for long: it goes by the other channel."


@dataclass(frozen=True, slots=True)
class Introduced:
    """Letters by their turn: answers and alerts, introductions, the rest where no number waits for one (``owed``)."""

    urgent: list[Letter]
    ahead: list[Letter]
    rest: list[Letter]
    owed: list[introductions.First]


@dataclass(slots=True)
class Judge:
    """Judges the batches of one sweep, and counts how messages came to stand that did not go."""

    now: datetime
    roads: Roads
    count: Count | None
    counts: Counter[str] = field(default_factory=Counter)
    senders: dict[int, Sender] = field(default_factory=dict)
    detours: bool = False  # the open road that these would take has been away for long: see detours

    def judge(self, batch: Sequence[Message]) -> list[Letter]:
        """Return what goes now, written; put the rest back as its judgement says."""
        ids = {message.client_id for message in batch if message.client_id is not None}
        # The revisions are read first: what is written to a client after that is noticed before her message goes.
        revisions = dict(Client.objects.filter(pk__in=ids).values_list("pk", "revision"))
        self._know_senders({message.studio_id for message in batch})
        books = facts.load(ids, self.now, {pk: sender.studio for pk, sender in self.senders.items()})
        going: list[Letter] = []
        for message in batch:
            who = message.client_id or 0
            letter = self._letter(message, books.get(who), revisions.get(who))
            if letter is not None:
                going.append(letter)
        stopped = letters.stops(letter.parcel.address for letter in going)
        for letter in going:
            if letters.is_stopped(letter.parcel, stopped):
                self.apply(letter.message, Verdict(Event.WITHHOLD, Reason.NO_CONSENT))
        self._detour([letter for letter in going if letter.message.state == State.CLAIMED])
        self.put_back(message for message in batch if message.state != State.CLAIMED)
        return [letter for letter in going if letter.message.state == State.CLAIMED]

    def introduce(self, ready: Sequence[Letter]) -> Introduced:
        """Part answers and alerts, which no introduction goes ahead of, the introductions, and what waits for those."""
        urgent = [letter for letter in ready if letter.message.rank == 0]
        ahead = [letter for letter in ready if letter.message.occasion == Occasion.OPT_IN]
        rest = [letter for letter in ready if letter.message.rank > 0 and letter.message.occasion != Occasion.OPT_IN]
        firsts = {first.pair: (first, letter) for letter in reversed(rest) if (first := letter.first)}
        owed = introductions.owed([first for first, _ in firsts.values()], self.now) if firsts else {}
        claimed = outbox.claim_these([pk for pk in owed.values() if pk], self.now) if owed else []
        ahead += [one for message in claimed if (one := self._introduction(message, firsts))]
        self.put_back(message for message in claimed if message.state != State.CLAIMED)
        return Introduced(urgent, ahead, rest, [firsts[pair][0] for pair in owed])

    def without_waiting(self, introduced: Introduced) -> list[Letter]:
        """Put back those letters whose number's introduction has still not gone; return the others."""
        waiting = introductions.waiting_until(introduced.owed, self.now) if introduced.owed else {}
        if not waiting:
            return introduced.rest
        for letter in introduced.rest:
            first = letter.first
            if first is not None and first.pair in waiting:
                self.apply(letter.message, Verdict(Event.PLAN, due_at=waiting[first.pair]))
        self.put_back(letter.message for letter in introduced.rest if letter.message.state != State.CLAIMED)
        return [letter for letter in introduced.rest if letter.message.state == State.CLAIMED]

    def apply(self, message: Message, verdict: Verdict) -> None:
        """Set what becomes of a claimed message that does not go now."""
        message.state = delivery.advance(State.CLAIMED, verdict.event)
        message.reason = verdict.reason[:200]
        message.channel = verdict.channel or message.channel
        if verdict.event is Event.PLAN:  # never the same moment again: this sweep would never end
            message.due_at = max(verdict.due_at or self.now, self.now + timedelta(seconds=1))
        else:
            message.ended_at = self.now

    def part_late(self, ready: Sequence[Letter], now: datetime) -> list[Letter]:
        """Return those that still go as they were judged; have the others, whose hours have closed, judged anew."""
        late = [letter for letter in ready if letter.parcel.until is not None and letter.parcel.until <= now]
        if not late:
            return list(ready)
        for letter in late:
            self.apply(letter.message, Verdict(Event.PLAN, due_at=now))
        self.put_back(letter.message for letter in late)
        return [letter for letter in ready if letter.parcel.until is None or letter.parcel.until > now]

    def put_back(self, messages: Iterable[Message]) -> None:
        """Let go of messages that do not go now, and count them."""
        self.counts += outbox.put_back(messages)

    def _letter(
        self, message: Message, book: ClientBook | None, revision: int | None, *, judged: Verdict | None = None
    ) -> Letter | None:
        """Judge and write one message; of one that does not go, set what becomes of it and return None."""
        try:
            verdict = judged or facts.judge(message, book, self.now)
            if verdict.event is not Event.JOURNAL:
                self.apply(message, verdict)
                return None
            message.channel = verdict.channel
            sender = self.senders[message.studio_id]
            return letters.write(
                message, verdict.address, sender, book, revision, self.roads, self.now, self.count, verdict.until
            )
        except DatabaseError:
            raise
        except Elsewhere:  # its channel is another than it was planned for: whoever has that road takes it
            self._leave_to_its_road(message, book)
            return None
        except Exception as error:  # one message that is broken must not keep all others from leaving
            log.exception("message %s could not be written", message.pk)
            self._put_off_for_fault(message, f"It could not be written: {error}")
            return None

    def _detour(self, going: Sequence[Letter]) -> None:
        """Have what safety hangs on go by the other channel, once, where its road has been away for long."""
        if not any(letter.road.rests for letter in going):
            return
        before = clock.now() - DETOUR_AFTER
        for letter in going:
            message = letter.message
            if not (letter.road.health.away_since(before) and falling_back.may_fall_back(message, self.now)):
                continue
            if channel := letter.other_channel:
                self._send_round(message, channel)

    def _leave_to_its_road(self, message: Message, book: ClientBook | None) -> None:
        """Leave a text to the process that has its road; where that has been away for long, take another if need be."""
        if not self.detours:
            self.apply(message, Verdict(Event.PLAN))
            return
        channel = ""
        if book is not None and falling_back.may_fall_back(message, self.now):
            channel = reach(book.contact, Purpose.VISITS, avoid=message.channel).channel
        if channel:
            self._send_round(message, channel)
        else:
            rest = SHORTEST_REST if message.rank > 0 else timedelta()
            self.apply(message, Verdict(Event.PLAN, due_at=self.now + rest))

    def _send_round(self, message: Message, channel: str) -> None:
        self.apply(message, Verdict(Event.PLAN, DETOUR, channel=channel))
        message.fell_back, message.tries, message.not_before = True, 0, None

    def _introduction(
        self, message: Message, firsts: dict[introductions.Pair, tuple[introductions.First, Letter]]
    ) -> Letter | None:
        """Write an introduction. It goes at the hour of the message that it goes ahead of, by the same judgement."""
        _, model = firsts[(message.line_id or 0, message.address)]
        goes = Verdict(Event.JOURNAL, channel=message.channel, address=message.address, until=model.parcel.until)
        return self._letter(message, model.book, model.revision, judged=goes)

    def _know_senders(self, studio_ids: set[int]) -> None:
        """Read the studios again, as one can go live or back meanwhile; their lines and wordings once a sweep."""
        for pk, studio in Studio.objects.select_related("calendar_feed").in_bulk(studio_ids).items():
            if pk in self.senders:
                self.senders[pk].studio = studio
            else:
                self.senders[pk] = Sender.of(studio)

    def _put_off_for_fault(self, message: Message, reason: str) -> None:
        message.tries += 1
        if message.tries >= MOST_FAULTS:
            self.apply(message, Verdict(Event.WITHHOLD, reason))
        else:
            self.apply(message, Verdict(Event.PLAN, reason, self.now + AFTER_FAULT))
