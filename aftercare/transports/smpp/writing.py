"""From an outgoing text to the bodies of its submit_sm, and to its outcome once all of them are answered."""

from __future__ import annotations

import re
import zlib
from typing import Final

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing
from aftercare.transports.smpp import pdu, texts
from aftercare.transports.smpp.pdu import BadUnit
from aftercare.transports.smpp.receipts import Sent

# Type of number and numbering plan, 5.2.5 and 5.2.6.
_UNKNOWN: Final = (0, 0)
_INTERNATIONAL: Final = (1, 1)
_SHORT: Final = (3, 0)  # network-specific
_LETTERS: Final = (5, 0)
_LONGEST_SHORT_CODE: Final = 8
_LONGEST_NAME: Final = 11  # characters: 3GPP TS 23.040, 9.1.2.5
_E164 = re.compile(r"\+[1-9][0-9]{5,14}")

Kind = tuple[int | None, int | None]  # type of number, numbering plan; None: as the address shows


class Text(Sent):
    """A text on its way, and what was heard of its parts; ``waiting`` counts those without an answer.

    Parts that the carrier is too busy for are written again until ``give_up_at``.
    """

    __slots__ = ("give_up_at", "is_over", "problem", "refused", "retry_after", "sender", "taken", "waiting")

    def __init__(self, outgoing: Outgoing, parts: int, give_up_at: float) -> None:
        super().__init__(outgoing.reference, outgoing.address, parts)
        self.sender = outgoing.sender
        self.waiting = parts
        self.taken = 0
        self.refused = self.is_over = False
        self.problem = ""
        self.retry_after: float | None = None
        self.give_up_at = give_up_at

    def outcome(self) -> Outcome:
        """Return what became of it, once all its parts are answered."""
        self.is_over = True
        if self.taken == self.parts:
            return Outcome(reference=self.reference, event=Event.TAKEN, provider_ref=self.provider_ref)
        event, problem = Event.REFUSED if self.refused else Event.NOT_TAKEN, self.problem
        if self.taken:
            event, problem = Event.REFUSED, f"Only {self.taken} of {self.parts} parts were taken. {problem}"
        return Outcome(reference=self.reference, event=event, problem=problem, retry_after=self.retry_after)


class Part:
    """One unit of a text: its body, and until when its answer is waited for. ``number``: user_message_reference."""

    __slots__ = ("body", "deadline", "is_last", "number", "text")

    def __init__(self, text: Text, body: bytes, number: int, is_last: bool) -> None:
        self.text, self.body, self.number, self.is_last = text, body, number, is_last
        self.deadline = 0.0


class Writer:
    """Writes texts for one bind; ``source`` and ``destination`` override what addresses show of their kind."""

    def __init__(self, receipts: bool, source: Kind, destination: Kind) -> None:
        self.receipts, self.source = int(receipts), source
        ton, npi = destination
        self.destination = (_INTERNATIONAL[0] if ton is None else ton, _INTERNATIONAL[1] if npi is None else npi)
        self._senders: dict[str, bytes] = {}
        self._long_texts = 0

    def parts_of(self, outgoing: Outgoing, give_up_at: float) -> list[Part]:
        """Return the parts of a text. Raises BadUnit for a number, a sender or a text that cannot go this way."""
        if _E164.fullmatch(outgoing.address) is None:
            raise BadUnit(f"“{outgoing.address}” is not a number for texts; correct it on the client's card")
        destination = pdu.write_address(*self.destination, outgoing.address[1:])
        source = self._senders.get(outgoing.sender) or self._sender(outgoing.sender)
        data_coding, parts = texts.parts_of(outgoing.text, self._long_texts)
        total = len(parts)
        self._long_texts += total > 1
        number = zlib.crc32(outgoing.reference.encode()) & 0xFFFF
        options = pdu.write_option(pdu.USER_MESSAGE_REFERENCE, number.to_bytes(2, "big"))
        text = Text(outgoing, total, give_up_at)
        return [
            Part(
                text,
                pdu.write_message(
                    source,
                    destination,
                    octets,
                    esm_class=pdu.HEADED if total > 1 else 0,
                    registered_delivery=self.receipts,
                    data_coding=data_coding,
                    options=options,
                ),
                number,
                place == total,
            )
            for place, octets in enumerate(parts, start=1)
        ]

    def _sender(self, sender: str) -> bytes:
        ton, npi = kind = kind_of(sender)
        if kind == _LETTERS and len(sender) > _LONGEST_NAME:
            raise BadUnit(
                f"the sender “{sender}” has {len(sender)} characters; a name in letters may have {_LONGEST_NAME}"
            )
        given_ton, given_npi = self.source
        written = pdu.write_address(
            ton if given_ton is None else given_ton, npi if given_npi is None else given_npi, sender.lstrip("+")
        )
        self._senders[sender] = written
        return written


def kind_of(sender: str) -> tuple[int, int]:
    """Tell type and plan of a sender: a number, a short code, a name in letters, or none ('': the carrier's own)."""
    if not sender:
        return _UNKNOWN
    if not sender.lstrip("+").isdigit():
        return _LETTERS
    return _SHORT if len(sender) <= _LONGEST_SHORT_CODE and not sender.startswith("+") else _INTERNATIONAL
