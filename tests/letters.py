"""Lines and messages made as plainly as can be, and the steps of sending one by one."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from itertools import count
from typing import Any

from django.db import transaction

from aftercare import lines, outbox
from aftercare.core.delivery import Event
from aftercare.models import Line, Message
from aftercare.outbox import Answered, Parcel
from aftercare.transports.base import Outcome
from studio import clock
from studio.models import Client, Studio
from tests.people import NOW

MEMORY = "aftercare.transports.memory.Memory"
_numbers = count(1)


def make_line(studio: Studio, channel: str = "sms", **options: Any) -> Line:
    """Make a line on the memory transport; a number is one studio's alone."""
    number = 199 if studio.slug == "birch" else 150 + sum(map(ord, studio.slug)) % 49
    more = studio.lines.filter(channel=channel).count()
    address = f"+12125550{number - more}" if channel == "sms" else f"hello{more or ''}@{studio.slug}.example"
    return Line.objects.create(studio=studio, channel=channel, address=address, transport=MEMORY, options=options)


def make_message(client: Client, **fields: Any) -> Message:
    """Promise one message, due now, of a client who is planned; return it as it stands in the database."""
    key = fields.pop("key", f"test:{next(_numbers)}")
    facts: dict[str, Any] = {"occasion": "care", "channel": "sms", "due_at": NOW, "planned_from": NOW}
    outbox.promise([Message(studio=client.studio, client=client, key=key, **{**facts, **fields})])
    Client.objects.filter(pk=client.pk).update(revision=1, planned_revision=1)
    return Message.objects.get(studio=client.studio, key=key)


def parcel_of(message: Message, line: Line, *, receipt_wait: int = 0, **fields: Any) -> Parcel:
    address = "+12125550101" if line.channel == "sms" else "mia@mail.example"
    facts: dict[str, Any] = {
        "channel": line.channel,
        "address": address,
        "subject": "",
        "text": "Hello Mia",
        "rehearsed": message.studio.in_rehearsal,
    }
    return Parcel(
        message=message,
        line=line,
        provider="email" if line.channel == "email" else lines.account_of(line),
        reference=outbox.new_reference(),
        receipt_wait=receipt_wait,
        **{**facts, **fields},
    )


def begin(line: Line, *, now: datetime = NOW, patience: int = 60, receipt_wait: int = 0) -> list[Parcel]:
    """Claim what is due and journal it, as a sender does up to the first byte."""
    parcels = [parcel_of(message, line, receipt_wait=receipt_wait) for message in outbox.claim(now, 100)]
    assert outbox.depart(parcels, now, clock.now(), patience) == {parcel.message.pk for parcel in parcels}
    return parcels


def end(parcels: Sequence[Parcel], event: Event, *, now: datetime = NOW, other: str = "", **said: Any) -> None:
    """Settle journaled parcels with one and the same outcome."""
    answers = [Answered(one, Outcome(reference=one.reference, event=event, **said), other) for one in parcels]
    with transaction.atomic():
        outbox.settle(answers, now)
