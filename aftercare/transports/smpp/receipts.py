"""What a carrier reports of a text later: read, matched with what was sent, and put in our words.

Sources: SMPP 3.4, 5.2.28 (message_state) and appendix B (the receipt's text), from memory. Which text a receipt speaks
of is told by the option receipted_message_id, else by ``id:`` in its text. Some carriers write the number of a text in
hexadecimal where they take it and in decimal where they report of it, or the other way round: both are tried, but only
for a text to the same number. The option user_message_reference has 16 bits and is used only for a text whose answer
was never heard.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Final

from aftercare.core.delivery import Event
from aftercare.transports.base import ReceiptNote
from aftercare.transports.smpp import pdu

_WORDS: Final[dict[int, str]] = {
    1: "ENROUTE",
    2: "DELIVRD",
    3: "EXPIRED",
    4: "DELETED",
    5: "UNDELIV",
    6: "ACCEPTD",
    7: "UNKNOWN",
    8: "REJECTD",
}
EVENTS: Final[dict[str, Event]] = {
    "DELIVRD": Event.DELIVERED,
    "EXPIRED": Event.FAILED,
    "DELETED": Event.FAILED,
    "UNDELIV": Event.FAILED,
    "REJECTD": Event.FAILED,
}
_PROBLEMS: Final[dict[str, str]] = {
    "EXPIRED": "her phone was off or out of reach for too long",
    "DELETED": "it was deleted at the carrier's",
    "UNDELIV": "it cannot be delivered to this number",
    "REJECTD": "her carrier rejected it",
}
_ID = re.compile(r"\bid:\s*(\S+)", re.IGNORECASE)
_STATE = re.compile(r"\bstat:\s*([A-Za-z]+)", re.IGNORECASE)
_ERROR = re.compile(r"\berr:\s*(\w+)", re.IGNORECASE)
_HEX = re.compile(r"[0-9A-Fa-f]{1,16}")
_KEPT: Final = 50_000  # texts in one generation; two are remembered


@dataclass(slots=True, eq=False)
class Sent:
    """A text on its way: what its receipts are matched with. ``arrived`` holds the parts that were delivered."""

    reference: str
    address: str
    parts: int = 1
    provider_ref: str = ""
    arrived: set[str] = field(default_factory=set)


class Recent:
    """The newest texts by the number that the carrier gave each part; the older ones are forgotten.

    It only helps: a receipt that is not found here is passed on with the number that it names.
    """

    def __init__(self) -> None:
        self._new: dict[str, Sent] = {}
        self._old: dict[str, Sent] = {}
        self._lost: dict[tuple[int, str], Sent] = {}
        self._spelling: Callable[[str, int], str] | None = None  # how receipts must be read, once it is known
        self._digits = 0  # of the carrier's last number

    def add(self, part: str, sent: Sent) -> None:
        """Remember a part that the carrier took; one that it gave no number cannot be told from others like it."""
        if not part:
            return
        if len(self._new) >= _KEPT:
            self._old, self._new = self._new, {}
        self._new[part] = sent
        self._digits = len(part)

    def lose(self, number: int, sent: Sent) -> None:
        """Remember a text whose answer was not heard, by its user_message_reference."""
        if len(self._lost) >= _KEPT:
            self._lost.clear()
        self._lost[number, sent.address] = sent

    def find(self, part: str, address: str) -> tuple[str, Sent | None]:
        """Return the carrier's number of a part as it was first given, and its text where that is remembered."""
        if (sent := self._get(part)) is not None:
            self._spelling = None
            return part, sent
        for spelling in (_lower_hex, _upper_hex, _decimal):
            other = spelling(part, self._digits)
            if (sent := self._get(other)) is not None and sent.address == address:
                self._spelling = spelling
                return other, sent
        return (self._spelling(part, self._digits) if self._spelling else part), None

    def find_lost(self, number: int, address: str) -> Sent | None:
        """Return the text whose answer was not heard."""
        return self._lost.get((number, address))

    def _get(self, part: str) -> Sent | None:
        return self._new.get(part) or self._old.get(part)


def is_receipt(message: pdu.Message) -> bool:
    """Tell a receipt, or news on the way, from a text that somebody wrote."""
    return message.esm_class & pdu.KIND in (pdu.RECEIPT, pdu.INTERMEDIATE)


def note_of(message: pdu.Message, recent: Recent) -> ReceiptNote:
    """Put a receipt in our words.

    A text of several parts is delivered once all parts are; until then each is news. Its number is that of its last
    part, which alone counts where the others are forgotten, as after a restart.
    """
    said = message.octets.decode("latin-1")
    state = message.options.get(pdu.MESSAGE_STATE, b"")
    word = _WORDS.get(state[0] if state else -1) or (_first(_STATE, said) or "UNKNOWN").upper()
    address = "+" + message.source.text.lstrip("+")
    given = message.options.get(pdu.RECEIPTED_MESSAGE_ID, b"").rstrip(b"\0").decode("latin-1") or _first(_ID, said)
    part, sent = recent.find(given, address)
    if sent is None and (number := message.options.get(pdu.USER_MESSAGE_REFERENCE)):
        sent = recent.find_lost(int.from_bytes(number, "big"), address)
    event = EVENTS.get(word) if message.esm_class & pdu.KIND == pdu.RECEIPT else None
    ref = part
    if sent is not None and sent.parts > 1 and event is Event.DELIVERED:
        sent.arrived.add(part)
        if len(sent.arrived) < sent.parts:
            word, event = f"{word} {len(sent.arrived)}/{sent.parts}", None
    if sent is not None and event is not None:
        ref = sent.provider_ref or part
    problem = f"The text to {address} did not arrive: {_why(message, word, said)}." if event is Event.FAILED else ""
    reference = sent.reference if sent is not None else ""
    return ReceiptNote(
        provider_ref=ref, word=word, event=event, reference=reference, problem=problem, raw=said or message.octets.hex()
    )


def _why(message: pdu.Message, word: str, said: str) -> str:
    # 5.3.2.31: the kind of network, then its error.
    network = message.options.get(pdu.NETWORK_ERROR_CODE, b"")[1:]
    error = str(int.from_bytes(network, "big")) if network else _first(_ERROR, said)
    why = _PROBLEMS[word]
    return f"{why} (the carrier's error {error})" if error.strip("0") else why


def _first(pattern: re.Pattern[str], text: str) -> str:
    found = pattern.search(text)
    return found[1] if found else ""


def _lower_hex(part: str, digits: int) -> str:
    return f"{int(part):x}".zfill(digits) if part.isascii() and part.isdigit() and len(part) <= 20 else part


def _upper_hex(part: str, digits: int) -> str:
    return _lower_hex(part, digits).upper()


def _decimal(part: str, digits: int) -> str:
    return str(int(part, 16)).zfill(digits) if _HEX.fullmatch(part) else part
