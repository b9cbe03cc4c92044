"""Anymail's two signals, listened to here alone. A receiver only stores: where it fails, the provider repeats.

What is stored is made something of by the next sweep.
"""

from __future__ import annotations

from typing import Any

from anymail.inbound import AnymailInboundMessage
from anymail.signals import AnymailInboundEvent, AnymailTrackingEvent, EventType, inbound, tracking
from django.dispatch import receiver

from aftercare import letterbox, outbox, receiving, tasks
from aftercare.core.delivery import Event
from aftercare.letterbox import Report
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
    report = letterbox.report_of(message)
    if report is not None and _follow(report, message, event):
        return
    words = letterbox.words_of(message)
    receiving.receive(
        line,
        message.from_email.addr_spec if message.from_email else (message.envelope_sender or ""),
        words.own,
        below=words.below,
        subject=message.subject or "",
        provider_ref=str(message.get("Message-ID") or event.event_id or ""),
        automatic=letterbox.is_automatic(message),
        received_at=event.timestamp or clock.now(),
        raw=message.as_string(),
        files=letterbox.files_of(message),
    )
    tasks.nudge()


def _follow(report: Report, message: AnymailInboundMessage, event: AnymailInboundEvent) -> bool:
    """Let the message that a report speaks of follow it; False where it is none of ours."""
    note = ReceiptNote(
        provider_ref=str(message.get("Message-ID") or event.event_id or report.reference),
        word=f"report: {report.action}",
        event=Event.FAILED if report.action == "failed" else None,
        reference=report.reference,
        at=event.timestamp,
        problem=f"A mail server reports: {report.action} {report.status}. {report.problem}".strip(),
        raw=receiving.storable(message.as_string()),
    )
    return outbox.note_receipt(None, note, clock.now()).attempt is not None


def _line(message: AnymailInboundMessage) -> Line | None:
    """Return the line that it was written to: one of the addresses that it names."""
    named = [message.envelope_recipient, *(address.addr_spec for address in (*message.to, *message.cc))]
    asked = [str(address).strip().lower() for address in named if address]
    lines = {line.address.lower(): line for line in Line.objects.filter(channel="email").exclude(address="")}
    return next((lines[address] for address in asked if address in lines), None)
