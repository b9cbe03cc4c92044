"""Anymail's two signals, listened to here alone. A receiver only stores: where it fails, the provider repeats.

What is stored is made something of by the next sweep.
"""

from __future__ import annotations

from typing import Any

from anymail.inbound import AnymailInboundMessage
from anymail.signals import AnymailInboundEvent, AnymailTrackingEvent, EventType, inbound, tracking
from django.dispatch import receiver

from aftercare import outbox, receiving, tasks
from aftercare.core.delivery import Event
from aftercare.models import Line
from aftercare.transports.base import ReceiptNote
from studio import clock

# Complaints and unsubscriptions are kept with the receipts.
EVENTS = {
    EventType.DELIVERED: Event.DELIVERED,
    EventType.BOUNCED: Event.FAILED,
    EventType.REJECTED: Event.FAILED,
    EventType.FAILED: Event.FAILED,
}


@receiver(tracking, dispatch_uid="aftercare.tracking")
def keep_receipt(sender: object, event: AnymailTrackingEvent, esp_name: str, **more: Any) -> None:
    """Keep what a mail provider says became of a message."""
    reason = event.description or event.mta_response or event.reject_reason or ""
    note = ReceiptNote(
        provider_ref=str(event.message_id or event.event_id or ""),
        word=str(event.event_type),
        event=EVENTS.get(event.event_type),
        reference=str((event.metadata or {}).get("reference", "")),
        at=event.timestamp,
        problem=f"The mail provider reports: {event.event_type}. {reason}".strip(),
        raw=receiving.storable(repr(event.esp_event)),
    )
    outbox.note_receipt(None, note, clock.now())


@receiver(inbound, dispatch_uid="aftercare.inbound")
def keep_reply(sender: object, event: AnymailInboundEvent, esp_name: str, **more: Any) -> None:
    """Keep an e-mail that came in to one of our addresses; what is for none of them is not ours."""
    message: AnymailInboundMessage = event.message
    line = _line(message)
    if line is None:
        return
    receiving.receive(
        line,
        message.from_email.addr_spec if message.from_email else (message.envelope_sender or ""),
        message.stripped_text or message.text or "",
        subject=message.subject or "",
        provider_ref=str(message.get("Message-ID") or event.event_id or ""),
        automatic=is_automatic(message),
        received_at=event.timestamp or clock.now(),
        raw=message.as_string(),
    )
    tasks.nudge()


def is_automatic(message: AnymailInboundMessage) -> bool:
    """Whether a machine wrote it (RFC 3834, 5): out of the office, or a report that something did not arrive."""
    said = str(message.get("Auto-Submitted", "no")).partition(";")[0].strip().lower()
    return said != "no" or message.get_content_type() == "multipart/report"


def _line(message: AnymailInboundMessage) -> Line | None:
    """Return the line that it was written to: one of the addresses that it names."""
    named = [message.envelope_recipient, *(address.addr_spec for address in (*message.to, *message.cc))]
    asked = [str(address).strip().lower() for address in named if address]
    lines = {line.address.lower(): line for line in Line.objects.filter(channel="email").exclude(address="")}
    return next((lines[address] for address in asked if address in lines), None)
