"""What comes in by a bind: receipts and texts, stored all of a read at once, and acknowledged after."""

from __future__ import annotations

import logging
from collections.abc import Sequence

from aftercare.transports.base import Inbox, ReceiptNote
from aftercare.transports.smpp import pdu, receipts, statuses
from aftercare.transports.smpp.incoming import Joiner, Whole
from aftercare.transports.smpp.pdu import BadUnit
from aftercare.transports.smpp.receipts import Recent

log = logging.getLogger(__name__)


class Intake:
    """Reads what was delivered to ``account`` and puts it into ``inbox``."""

    def __init__(self, account: str, inbox: Inbox | None, recent: Recent, join_seconds: float) -> None:
        self.account, self.inbox, self.recent = account, inbox, recent
        self.joiner = Joiner(join_seconds)

    def take(self, delivered: Sequence[tuple[int, bytes]], now: float) -> bytes:
        """Have the bodies of deliver_sm, each with its sequence number, stored; return the answers to be written.

        What could not be stored, or read, the carrier is asked to send again. Of a text whose other parts are missing
        there is no answer yet.
        """
        notes: list[ReceiptNote] = []
        wholes: list[Whole] = []
        kept: list[int] = []
        answers: list[bytes] = []
        for sequence, body in delivered:
            try:
                message = pdu.read_message(body)
            except BadUnit as error:
                log.error("%s: a unit cannot be read: %s. It is %s", self.account, error, body.hex())
                answers.append(_answer(sequence, statuses.ASK_AGAIN))
                continue
            if receipts.is_receipt(message):
                notes.append(receipts.note_of(message, self.recent))
                kept.append(sequence)
            elif (whole := self.joiner.add(sequence, message, now)) is not None:
                wholes.append(whole)
        wholes += self.joiner.overdue(now)
        if notes or wholes:
            kept += [sequence for whole in wholes for sequence in whole.sequences]
            status = statuses.OK if self._is_stored(notes, wholes) else statuses.ASK_AGAIN
            answers += [_answer(sequence, status) for sequence in kept]
        return b"".join(answers)

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
