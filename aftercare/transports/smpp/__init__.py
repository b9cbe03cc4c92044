"""SMS through a carrier's own port: SMPP 3.4, one connection that sends, hears receipts and hears what clients write.

A text of several parts is taken once all its parts are. If the carrier only asks for patience with some of them, those
are written again, alone; if it refuses some for good after it took others, the text is REFUSED and says so: sent again
it would arrive in pieces once more. Its number is that of its last part (see receipts.py for what its receipts mean).
Whatever had left when the line dropped, unanswered, is LOST; what had not left is NOT_TAKEN.
"""

from __future__ import annotations

import logging
import random
import time
from collections import deque
from collections.abc import Collection, Mapping, Sequence
from typing import Any, ClassVar

from aftercare.core.delivery import Event
from aftercare.core.pace import Pace
from aftercare.transports.base import Inbox, Outcome, Outgoing, Stream, TransportError
from aftercare.transports.smpp import pdu, statuses
from aftercare.transports.smpp.intake import Intake
from aftercare.transports.smpp.pdu import BadUnit, Unit
from aftercare.transports.smpp.receipts import Recent
from aftercare.transports.smpp.session import Account, Dropped, Session, has_come
from aftercare.transports.smpp.writing import Part, Writer

log = logging.getLogger(__name__)

_FIRST_WAIT, _LONGEST_WAIT = 0.5, 60.0  # seconds between two tries to connect
_ANSWER_SECONDS = 10.0  # for enquire_link
_LEAST_LEFT = 0.25  # of the patience: how long the answer to a part that is written again is waited for at least
_ASKED_TO_WAIT = 2.0  # seconds, where the carrier is busy: it does not say how long


class Smpp(Stream):
    """One bind. Waits are in seconds, ``rate`` in texts a second (0: as fast as they are taken).

    ``window`` is how many units may be unanswered at once, ``patience`` how long one may be; ``idle`` is the silence
    after which the carrier is asked whether it is there; ``join_seconds`` is how long the parts of what a client writes
    wait for the rest. ``source_…`` and ``dest_…`` override the type of number and numbering plan that addresses show.
    Without an ``inbox`` nothing that comes in is acknowledged.
    """

    name: ClassVar[str] = "smpp"
    channels: ClassVar[frozenset[str]] = frozenset({"sms"})

    def __init__(
        self,
        *,
        bind: str,
        host: str,
        system_id: str,
        password: str = "",
        port: int = 2775,
        system_type: str = "",
        tls: bool = False,
        ca_file: str = "",
        window: int = 50,
        rate: float = 0.0,
        receipts: bool = True,
        patience: int = 60,
        receipt_wait: int = 30,
        idle: float = 30.0,
        join_seconds: float = 30.0,
        source_ton: int | None = None,
        source_npi: int | None = None,
        dest_ton: int | None = None,
        dest_npi: int | None = None,
        inbox: Inbox | None = None,
    ) -> None:
        self.bind, self.window, self.patience, self.idle = bind, window, patience, idle
        self.receipt_wait = receipt_wait if receipts else 0
        self.trouble = ""  # why it is not connected, in a sentence
        self._to = Account(
            host=host,
            port=port,
            system_id=system_id,
            password=password,
            system_type=system_type,
            tls=tls,
            ca_file=ca_file,
        )
        self._writer = Writer(receipts, (source_ton, source_npi), (dest_ton, dest_npi))
        self._pace = Pace(rate)
        self._recent = Recent()
        self._intake = Intake(self.account, inbox, self._recent, join_seconds)
        self._session: Session | None = None
        self._retry_at, self._failures = 0.0, 0
        self._queue: deque[Part] = deque()
        self._in_flight: dict[int, Part] = {}  # by sequence number, the oldest first
        self._given_up: dict[int, Part] = {}
        self._heard: list[Outcome] = []

    @classmethod
    def account_of(cls, options: Mapping[str, Any]) -> str:
        """Return the account of the road that would be made with these options."""
        return f"{cls.name}:{options.get('bind', '')}"

    @property
    def account(self) -> str:
        return self.account_of({"bind": self.bind})

    @property
    def is_up(self) -> bool:
        return self._session is not None

    def room(self) -> int:
        return max(0, min(self.window - self.unanswered, self._pace.room(time.monotonic())))

    @property
    def unanswered(self) -> int:
        """How many units wait, to leave or for their answer."""
        return len(self._queue) + len(self._in_flight)

    def submit(self, batch: Sequence[Outgoing]) -> list[Outcome]:
        now = time.monotonic()
        session = self._session or self._connect(now)
        if session is None:
            wait = max(1.0, self._retry_at - now)
            return [_outcome(one.reference, Event.NOT_TAKEN, self.trouble, wait) for one in batch]
        refused: list[Outcome] = []
        for outgoing in batch:
            try:
                self._queue.extend(self._writer.parts_of(outgoing, now + self.patience))
            except BadUnit as error:
                refused.append(_outcome(outgoing.reference, Event.REFUSED, f"The text cannot be sent: {error}."))
        try:
            self._flush(session, now)
        except Dropped as error:
            self._broken(error)
        return refused

    def collect(self, seconds: float, besides: Collection[int] = ()) -> list[Outcome]:
        until = time.monotonic() + seconds
        while True:
            left = until - time.monotonic()
            self._turn(0.0 if self._heard else max(0.0, left), besides)
            if self._heard or left <= 0.0 or has_come(*besides):
                break
        heard, self._heard = self._heard, []
        return heard

    def close(self) -> None:
        if self._session is not None:
            self._session.close()
            self._drop("The line to the carrier was closed.")

    def _connect(self, now: float) -> Session | None:
        if now < self._retry_at:
            return None
        try:
            self._session = Session(self._to, idle=self.idle, answer_within=_ANSWER_SECONDS)
        except TransportError as error:
            self._wait(str(error), now, is_lasting=error.permanent)
            return None
        log.info("%s is connected to %s", self.account, self._to)
        self.trouble = ""
        return self._session

    def _wait(self, trouble: str, now: float, *, is_lasting: bool = False) -> None:
        """Put the next try to connect off, longer each time, and not to the moment when all others try."""
        wait = _LONGEST_WAIT if is_lasting else min(_LONGEST_WAIT, _FIRST_WAIT * 2.0 ** min(self._failures, 10))
        self._failures += 1
        self._retry_at = now + wait * random.uniform(0.5, 1.0)  # spreads tries, hides nothing
        self.trouble = trouble
        log.warning("%s: %s Tried again in %.1f s.", self.account, trouble, self._retry_at - now)

    def _turn(self, seconds: float, besides: Collection[int]) -> None:
        """Write what may leave, read what comes within ``seconds`` or until something has come ``besides``."""
        now = time.monotonic()
        session = self._session or self._connect(now)
        if session is None:
            time.sleep(max(0.0, min(seconds, self._retry_at - now)))
            return
        try:
            self._flush(session, now)
            units = session.read(max(0.0, min(seconds, self._next_matter(now) - now)), besides)
            now = time.monotonic()
            self._take_in(session, units, now)
            self._expire(now)
            self._flush(session, now)
        except Dropped as error:
            self._broken(error)

    def _flush(self, session: Session, now: float) -> None:
        """Write as many parts as window and pace allow, all at once."""
        if not self._queue:
            return
        room = min(len(self._queue), self.window - len(self._in_flight), self._pace.room(now))
        if room <= 0:
            return
        octets: list[bytes] = []
        for _ in range(room):
            part = self._queue.popleft()
            sequence = session.next_sequence()
            # Where it had to be written again there is less time left: who wrote it down gives it up by then.
            part.deadline = min(now + self.patience, max(part.text.give_up_at, now + self.patience * _LEAST_LEFT))
            self._in_flight[sequence] = part
            octets.append(pdu.write(pdu.SUBMIT_SM, sequence, part.body))
        self._pace.spend(room, now)
        session.write(b"".join(octets))

    def _next_matter(self, now: float) -> float:
        """Return the moment at which there is something to do though nothing has come."""
        moments = [next(iter(self._in_flight.values())).deadline] if self._in_flight else []
        if self._queue and len(self._in_flight) < self.window:
            moments.append(now + self._pace.wait())
        return min(*moments, self._intake.joiner.next_due, now + _LONGEST_WAIT)

    def _take_in(self, session: Session, units: Sequence[Unit], now: float) -> None:
        incoming: list[tuple[int, bytes]] = []
        others: list[Unit] = []
        for unit in units:
            command, status, sequence, body = unit
            if command == pdu.SUBMIT_SM_RESP:
                self._answered(sequence, status, body, now)
            elif command == pdu.DELIVER_SM:
                incoming.append((sequence, body))
            elif command == pdu.GENERIC_NACK:  # what it could not read it has not taken
                self._answered(sequence, status or statuses.UNKNOWN_COMMAND, b"", now)
            else:
                others.append(unit)
        if units:
            self._failures = 0
        if incoming or self._intake.joiner.next_due <= now:
            answers = self._intake.take(incoming, now)
            if answers:
                session.write(answers)
        for command, _, sequence, _ in others:
            session.answer(command, sequence)

    def _answered(self, sequence: int, status: int, body: bytes, now: float) -> None:
        part = self._in_flight.pop(sequence, None)
        if part is None:  # given up before; its receipts shall find it all the same
            late = self._given_up.pop(sequence, None)
            if late is not None and status == statuses.OK:
                self._recent.add(pdu.read_id(body), late.text)
            return
        text = part.text
        if status == statuses.OK:
            number = pdu.read_id(body)
            self._recent.add(number, text)
            text.taken += 1
            if part.is_last:
                text.provider_ref = number
        else:
            text.problem = statuses.sentence(status, address=text.address, sender=text.sender)
            text.refused = text.refused or status in statuses.REFUSED
            text.retry_after = _ASKED_TO_WAIT if status in statuses.BUSY else None
            if status in statuses.BUSY:
                self._pace.slow(now)
                if text.parts > 1 and now < text.give_up_at and not text.is_over:
                    self._queue.append(part)
                    return
        text.waiting -= 1
        if text.waiting == 0 and not text.is_over:
            self._heard.append(text.outcome())

    def _expire(self, now: float) -> None:
        """Give up what was not answered in time."""
        while self._in_flight:
            sequence = next(iter(self._in_flight))
            part = self._in_flight[sequence]
            if part.deadline > now:
                return
            self._given_up[sequence] = self._in_flight.pop(sequence)
            self._lose(part, f"The carrier did not answer within {self.patience} seconds")

    def _lose(self, part: Part, why: str) -> None:
        text = part.text
        if not text.is_over:
            text.is_over = True
            self._recent.lose(part.number, text)
            problem = f"{why}: nobody knows whether the text to {text.address} left."
            self._heard.append(_outcome(text.reference, Event.LOST, problem))

    def _broken(self, error: Dropped) -> None:
        why = f"The line to the carrier broke: {error}."
        self._drop(why)
        self._wait(why, time.monotonic())

    def _drop(self, why: str) -> None:
        """Take leave of a connection that is gone: every text on its way gets its outcome."""
        if self._session is not None:
            self._session.drop()
        self._session = None
        self._intake.joiner.forget()
        self._given_up.clear()
        in_flight, self._in_flight = self._in_flight, {}
        queue, self._queue = self._queue, deque()
        for part in in_flight.values():
            self._lose(part, why.rstrip("."))
        for part in queue:
            if part.text.taken:
                self._lose(part, why.rstrip("."))
            elif not part.text.is_over:
                part.text.is_over = True
                self._heard.append(_outcome(part.text.reference, Event.NOT_TAKEN, why))


def _outcome(reference: str, event: Event, problem: str, retry_after: float | None = None) -> Outcome:
    return Outcome(reference=reference, event=event, problem=problem, retry_after=retry_after)
