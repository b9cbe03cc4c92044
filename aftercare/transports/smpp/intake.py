"""What comes in by a bind: receipts and texts, stored many at once, and acknowledged after.

Receipts wait for more of them, for a moment: what storing costs is nearly the same for one and for hundreds. What a
client writes is stored as it comes.
"""

from __future__ import annotations

import logging
import math
from collections.abc import Sequence

from aftercare.transports.base import Inbox, ReceiptNote
from aftercare.transports.smpp import pdu, receipts, statuses
from aftercare.transports.smpp.incoming import Joiner, Whole
from aftercare.transports.smpp.pdu import BadUnit
from aftercare.transports.smpp.receipts import Recent

log = logging.getLogger(__name__)

MOST = 500  # receipts stored at once
LONGEST = 0.05  # seconds that one waits for more
QUIET = 0.005  # seconds without another: the carrier may be waiting for its answers


class Intake:
    """Reads what was delivered to ``account`` and puts it into ``inbox``."""

    def __init__(self, account: str, inbox: Inbox | None, recent: Recent, join_seconds: float) -> None:
        self.account, self.inbox, self.recent = account, inbox, recent
        self.joiner = Joiner(join_seconds)
        self._notes: list[ReceiptNote] = []
        self._unanswered: list[int] = []  # the sequence numbers of these
        self._first_at = self._last_at = math.inf

    @property
    def next_due(self) -> float:
        """When there is something to do though nothing has come; infinite where there is nothing."""
        return min(self._first_at + LONGEST, self._last_at + QUIET, self.joiner.next_due)

    def take(self, delivered: Sequence[tuple[int, bytes]], now: float) -> bytes:
        """Take the bodies of deliver_sm, each with its sequence number; return the answers to be written by now.

        What could not be stored, or read, the carrier is asked to send again. Of a text whose other parts are missing
        there is no answer yet, nor of receipts that wait for more.
        """
        wholes: list[Whole] = []
        answers: list[bytes] = []
        for sequence, body in delivered:
            try:
                message = pdu.read_message(body)
            except BadUnit as error:
                log.error("%s: a unit cannot be read: %s. It is %s", self.account, error, body.hex())
                answers.append(_answer(sequence, statuses.ASK_AGAIN))
                continue
            if receipts.is_receipt(message):
                self._first_at = min(self._first_at, now)
                self._last_at = now
                self._notes.append(receipts.note_of(message, self.recent))
                self._unanswered.append(sequence)
            elif (whole := self.joiner.add(sequence, message, now)) is not None:
                wholes.append(whole)
        wholes += self.joiner.overdue(now)
        if wholes or len(self._notes) >= MOST or self.next_due <= now:
            answers.append(self.store(wholes))
        return b"".join(answers)

    def store(self, wholes: Sequence[Whole] = ()) -> bytes:
        """Store the receipts that wait, and these texts; return the answers."""
        notes, kept = self._notes, [*self._unanswered, *(one for whole in wholes for one in whole.sequences)]
        self._notes, self._unanswered = [], []
        self._first_at = self._last_at = math.inf
        if not kept:
            return b""
        status = statuses.OK if self._is_stored(notes, wholes) else statuses.ASK_AGAIN
        return b"".join([_answer(sequence, status) for sequence in kept])

    def forget(self) -> None:
        """The line has dropped: receipts are stored that nobody can be answered any more, texts in parts come again."""
        self.store()
        self.joiner.forget()

    def _is_stored(self, notes: Sequence[ReceiptNote], wholes: Sequence[Whole]) -> bool:
        if self.inbox is None:
            log.error("%s: nobody takes what comes in; the carrier is asked to send it again", self.account)
            return False
        try:
            self.inbox(notes, [whole.note for whole in wholes])
        except Exception:  # whatever it was, nothing is kept: the outcomes heard beside it must still be told
            log.exception("%s: what came in could not be stored; the carrier is asked to send it again", self.account)
            return False
        return True


def _answer(sequence: int, status: int) -> bytes:
    return pdu.write(pdu.DELIVER_SM_RESP, sequence, b"\0", status)  # message_id is unused: 4.6.2
