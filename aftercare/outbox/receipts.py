"""Receipts: kept as they come, and the message follows. In any order, twice, early, or about nothing that we know."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from django.db import transaction

from aftercare.core import delivery
from aftercare.core.delivery import Event, State
from aftercare.models import Attempt, Line, Message, Receipt
from aftercare.transports.base import ReceiptNote

LONGEST_REF = 120


def note_receipt(line: Line | None, note: ReceiptNote, now: datetime) -> Receipt:
    """Keep what a provider says became of an attempt, and let the message follow. The same receipt twice is one."""
    with transaction.atomic():
        attempt = _attempt_of(line, note)
        receipt, _ = Receipt.objects.get_or_create(
            line=attempt.line if attempt else line,
            provider_ref=note.provider_ref[:LONGEST_REF],
            word=note.word[:40],
            defaults={
                "at": note.at or now,
                "event": note.event.value if note.event else "",
                "raw": note.raw,
                "attempt": attempt,
            },
        )
        if attempt is not None and note.event is not None:
            _follow(attempt, note.event, receipt.at, note.problem or _said(note.word))
    return receipt


def note_receipts(account: str, notes: Sequence[ReceiptNote], now: datetime) -> None:
    """Keep what the provider of an account says became of several attempts, all of it or nothing."""
    with transaction.atomic():
        for note in notes:
            note_receipt(None, note, now)


def match_early(attempt_ids: Sequence[int]) -> None:
    """Match receipts that were quicker than the provider's answer, which names the reference that they speak of."""
    named = Attempt.objects.filter(pk__in=attempt_ids).exclude(provider_ref="")
    attempts = {(attempt.line_id, attempt.provider_ref): attempt for attempt in named}
    if not attempts:
        return
    lines, references = zip(*attempts, strict=True)
    for receipt in Receipt.objects.filter(attempt=None, line__in=set(lines), provider_ref__in=references):
        attempt = attempts.get((receipt.line_id or 0, receipt.provider_ref))
        if attempt is not None:
            receipt.attempt = attempt
            receipt.save(update_fields=["attempt"])
            if receipt.event:
                _follow(attempt, Event(receipt.event), receipt.at, _said(receipt.word))


def _attempt_of(line: Line | None, note: ReceiptNote) -> Attempt | None:
    """Our own reference tells it best; a provider's may be the same for all recipients of one call."""
    attempts = Attempt.objects.select_related("line")
    if line is not None:
        attempts = attempts.filter(line=line)
    found = attempts.filter(reference=note.reference).first() if note.reference else None
    if found is None and note.provider_ref:
        found = attempts.filter(provider_ref=note.provider_ref[:LONGEST_REF]).order_by("-pk").first()
    return found


def _follow(attempt: Attempt, event: Event, at: datetime, problem: str) -> None:
    """Let the message follow a receipt. Bad news of an earlier try than the newest changes nothing."""
    message = Message.objects.select_for_update().get(pk=attempt.message_id)
    after = delivery.sources(event).get(State(message.state))
    is_newest = not Attempt.objects.filter(message=message, number__gt=attempt.number).exists()
    if after is None or (event is Event.FAILED and not is_newest):
        return
    message.state, message.lease_until, message.ended_at = after, None, at
    message.handed_over_at = message.handed_over_at or at
    message.reason = problem[:200] if event is Event.FAILED else ""
    message.save(update_fields=["state", "lease_until", "ended_at", "handed_over_at", "reason"])


def _said(word: str) -> str:
    return f"The provider reports: {word}."
