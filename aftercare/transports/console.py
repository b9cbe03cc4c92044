"""A transport that shows each message on standard error. Standard output stays free: commands print data there."""

from __future__ import annotations

import sys
from collections.abc import Iterator, Sequence
from typing import ClassVar

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing, Transport


class Console(Transport):
    """Takes everything, reaches nobody. For development."""

    name: ClassVar[str] = "console"
    channels: ClassVar[frozenset[str]] = frozenset({"sms", "email"})
    window = 100

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        for outgoing in batch:
            sys.stderr.write(_shown(outgoing))  # one write a message, so that those of several processes do not mix
            sys.stderr.flush()
            yield Outcome(reference=outgoing.reference, event=Event.TAKEN)


def _shown(outgoing: Outgoing) -> str:
    sender = " ".join(part for part in (outgoing.sender_name, outgoing.sender) if part)
    head = [f"{outgoing.channel} to {outgoing.address}" + (f" from {sender}" if sender else "")]
    if outgoing.subject:
        head.append(outgoing.subject)
    body = "\n".join(f"  | {line}" for line in outgoing.text.splitlines() or [""])
    return "\n".join([*head, body, ""]).encode("utf-8", "replace").decode("utf-8")
