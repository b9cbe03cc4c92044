"""A transport that keeps what it is given in a list of this process, answers as its options say, and is called back.

For tests and for trying out: it does all that the contract asks, with JSON and HMAC-SHA256 for a provider's own ways.
"""

from __future__ import annotations

import hashlib
import hmac
import json
from collections.abc import Iterator, Mapping, Sequence
from datetime import datetime
from typing import Any, ClassVar

from aftercare.core.delivery import Event
from aftercare.transports.base import (
    Callback,
    Forged,
    Outcome,
    Outgoing,
    ReceiptNote,
    ReplyNote,
    Transport,
    TransportError,
)

taken: list[Outgoing] = []  # everything handed over in this process, oldest first

WORDS = {"delivered": Event.DELIVERED, "bounced": Event.FAILED, "on its way": None}
SIGNATURE = "x-signature"


class Memory(Transport):
    """``refuse``, ``busy`` and ``lose`` list addresses that are refused for good, put off, or lost on the way."""

    name: ClassVar[str] = "memory"
    channels: ClassVar[frozenset[str]] = frozenset({"sms", "email"})

    def __init__(
        self,
        *,
        window: int = 50,
        receipt_wait: int = 0,
        secret: str = "",
        refuse: Sequence[str] = (),
        busy: Sequence[str] = (),
        lose: Sequence[str] = (),
        retry_after: float | None = None,
    ) -> None:
        self.window, self.receipt_wait = window, receipt_wait
        self.secret, self.retry_after = secret, retry_after
        self.fate = {
            **dict.fromkeys(busy, Event.NOT_TAKEN),
            **dict.fromkeys(refuse, Event.REFUSED),
            **dict.fromkeys(lose, Event.LOST),
        }

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        for outgoing in batch:
            event = self.fate.get(outgoing.address, Event.TAKEN)
            if event in (Event.TAKEN, Event.LOST):
                taken.append(outgoing)
            yield self._outcome(outgoing, event)

    def _outcome(self, outgoing: Outgoing, event: Event) -> Outcome:
        if event is Event.TAKEN:
            return Outcome(reference=outgoing.reference, event=event, provider_ref=f"memory-{outgoing.reference}")
        problem = {
            Event.NOT_TAKEN: f"The provider is busy and did not take the message to {outgoing.address} yet.",
            Event.REFUSED: f"The provider refused {outgoing.address} for good. Correct it on the client's card.",
            Event.LOST: "The line dropped before the provider answered: nobody knows whether it left.",
        }[event]
        after = self.retry_after if event is Event.NOT_TAKEN else None
        return Outcome(reference=outgoing.reference, event=event, problem=problem, retry_after=after)

    def sign(self, body: bytes) -> str:
        """Return the signature that a callback with this body carries."""
        return hmac.new(self.secret.encode(), body, hashlib.sha256).hexdigest()

    def verify(self, callback: Callback) -> None:
        given = callback.headers.get(SIGNATURE, "")
        if not self.secret or not hmac.compare_digest(given.encode(), self.sign(callback.body).encode()):
            raise Forged("The callback's signature is wrong: check the secret at the provider.")

    def parse_receipts(self, callback: Callback) -> list[ReceiptNote]:
        return [
            ReceiptNote(
                provider_ref=str(row["provider_ref"]),
                word=str(row["word"]),
                event=WORDS.get(str(row["word"])),
                reference=str(row.get("reference", "")),
                at=_moment(row),
                raw=json.dumps(row),
            )
            for row in _rows(callback, "word")
        ]

    def parse_replies(self, callback: Callback) -> list[ReplyNote]:
        return [
            ReplyNote(
                provider_ref=str(row["provider_ref"]),
                from_address=str(row["from"]),
                to_address=str(row.get("to", "")),
                text=str(row["text"]),
                at=_moment(row),
                raw=json.dumps(row),
            )
            for row in _rows(callback, "text", "from")
        ]


def _rows(callback: Callback, kind: str, *needed: str) -> list[Mapping[str, Any]]:
    """Return the callback's rows that have the key ``kind``; each must have those needed too."""
    try:
        rows = json.loads(callback.body)
    except ValueError as error:
        raise TransportError(f"The callback is no JSON: {error}", permanent=True) from error
    if not isinstance(rows, list) or not all(isinstance(row, dict) for row in rows):
        raise TransportError("The callback must be a list of objects.", permanent=True)
    found = [row for row in rows if kind in row]
    for row in found:
        for name in ("provider_ref", *needed):
            if name not in row:
                raise TransportError(f"The callback has a row without {name}: {row}", permanent=True)
    return found


def _moment(row: Mapping[str, Any]) -> datetime | None:
    try:
        return datetime.fromisoformat(str(row["at"])) if "at" in row else None
    except ValueError as error:
        raise TransportError(f"The callback has no ISO 8601 moment in {row}", permanent=True) from error
