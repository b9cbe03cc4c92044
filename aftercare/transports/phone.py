"""The pretend phone: what every studio in rehearsal hands its messages to.

The message row itself, once handed over, is what the phone shows; there is nothing to keep here.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import ClassVar

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing, Transport


class Phone(Transport):
    """Takes everything, reaches nobody, gives no receipts: handed over is where a message rests."""

    name: ClassVar[str] = "phone"
    channels: ClassVar[frozenset[str]] = frozenset({"sms", "email"})
    window = 500

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        for outgoing in batch:
            yield Outcome(reference=outgoing.reference, event=Event.TAKEN)
