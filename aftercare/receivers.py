"""Anymail's two signals, listened to here alone. A receiver only stores: where it fails, the provider repeats.

What is stored is made something of by the next sweep; only what ends or moves messages is acted on at once.
"""

from __future__ import annotations

import logging
from typing import Any

from anymail.inbound import AnymailInboundMessage
from anymail.signals import AnymailInboundEvent, AnymailTrackingEvent, EventType, RejectReason, inbound, tracking
from django.db.models import Q
from django.dispatch import receiver

from aftercare import letterbox, machines, outbox, receiving, stops, tasks
from aftercare.core import bounces
from aftercare.core.delivery import Event
from aftercare.letterbox import Mail
from aftercare.machines import Report
from aftercare.models import Attempt, Line
from aftercare.outbox.receipts import LONGEST_REF
from aftercare.transports.base import ReceiptNote, storable
from aftercare.transports.email import Email
from studio import clock

log = logging.getLogger(__name__)

EVENTS = {
    EventType.DELIVERED: Event.DELIVERED,
    EventType.BOUNCED: Event.FAILED,
    EventType.REJECTED: Event.FAILED,
    EventType.FAILED: Event.FAILED,
}
# Whoever calls our mail unwanted has opted out of it (RFC 5965, 3.1 for "abuse"; common practice for providers' words).
ENDS = {EventType.COMPLAINED: stops.COMPLAINED, EventType.UNSUBSCRIBED: stops.UNSUBSCRIBED, "abuse": stops.COMPLAINED}


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
        raw=repr(event.esp_event),
    )
    said = [str(event.mta_response or ""), str(event.description or "")]
    invalid = event.reject_reason == RejectReason.INVALID
    nobodys = note.event is Event.FAILED and bounces.is_for_good(said, event.esp_event, invalid=invalid)
    _act(note, event.event_type, nobodys=nobodys)


def _act(note: ReceiptNote, said: str, *, nobodys: bool) -> Attempt | None:
    """Keep what is said of a message; end all e-mail to its address, or let that rest, where it means that.

    Returns the attempt that it is about, where that is one of ours.
    """
    now = clock.now()
    [known] = outbox.note_receipts(_account(note), [note], now)
    if known is None:
        return None
    attempt = Attempt.objects.select_related("message", "line").get(pk=known)
    message, line = attempt.message, attempt.line
    if not message.address:  # she was forgotten since: nobody is left to whom anything could go
        return attempt
    if said in ENDS:
        stops.unsubscribe(line, message.address, now=now, words=ENDS[said])
    if note.event is Event.FAILED:
        if nobodys and message.client_id is not None:
            stops.rest(line, message.address, now=now, words=note.problem or stops.CAME_BACK)
        tasks.nudge()  # it may be due by the other channel
    return attempt


def _account(note: ReceiptNote) -> str:
    """Return by which road the message went: a callback names the provider, which may have several accounts of ours."""
    named = Q(reference=note.reference) if note.reference else Q(provider_ref=note.provider_ref[:LONGEST_REF])
    went = Attempt.objects.filter(named, line__channel="email").order_by("-pk").values_list("provider", flat=True)
    return went.first() or Email.name


@receiver(inbound, dispatch_uid="aftercare.inbound")
def keep_reply(sender: object, event: AnymailInboundEvent, esp_name: str, **more: Any) -> None:
    """Keep an e-mail that came in to one of our addresses; what is for none of them is not ours."""
    message: AnymailInboundMessage = event.message
    mail = letterbox.read(message)
    line = _line(mail) or _line_it_follows(message)
    if line is None:
        log.warning("A mail came in that is for none of the lines' addresses: it is not kept.")
        return
    report = machines.report_of(message)
    if report is not None and _follow(report, mail, event):
        return
    receiving.receive(
        line,
        mail.sender,
        mail.words.own,
        below=mail.words.below,
        subject=mail.subject,
        provider_ref=_identity(mail, event),
        automatic=machines.wrote(message),
        received_at=event.timestamp or clock.now(),
        raw=mail.raw,
        files=mail.files,
    )
    if mail.sender and not machines.wrote(message):
        stops.wake(line, storable(mail.sender), now=clock.now())
    tasks.nudge()


def _identity(mail: Mail, event: AnymailInboundEvent) -> str:
    return mail.identity or str(event.event_id or "")


def _follow(report: Report, mail: Mail, event: AnymailInboundEvent) -> bool:
    """Let the message that a report speaks of follow it; False where it is none of ours."""
    note = ReceiptNote(
        provider_ref=_identity(mail, event) or report.reference,
        word=f"report: {report.action}",
        event=Event.FAILED if report.action == "failed" else None,
        reference=report.reference,
        at=event.timestamp,
        problem=f"A mail server reports: {report.action} {report.status}. {report.problem}".strip(),
        raw=mail.raw,
    )
    attempt = _act(note, report.action, nobodys=bounces.is_for_good([report.status, report.problem]))
    return attempt is not None


def _line(mail: Mail) -> Line | None:
    """Return the line that it was written to: one of the addresses that it names."""
    every = Line.objects.filter(channel="email").exclude(address="").order_by("is_active", "pk")
    lines = {line.address.lower(): line for line in every}  # of several the one in use, else the newest
    return next((lines[address] for address in mail.recipients if address in lines), None)


def _line_it_follows(message: AnymailInboundMessage) -> Line | None:
    """Return the line whose message it answers, whatever address it went to: many forward one address to another."""
    named = machines.references(message)
    ours = Attempt.objects.filter(reference__in=named, line__channel="email") if named else Attempt.objects.none()
    found = ours.select_related("line").order_by("-pk").first()
    return found.line if found is not None else None
