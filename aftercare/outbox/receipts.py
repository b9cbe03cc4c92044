"""Receipts: kept as they come, and the message follows. In any order, twice, early, or about nothing that we know."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.db import transaction

from aftercare.core import delivery
from aftercare.core.delivery import Event, State
from aftercare.models import Attempt, Message, Receipt
from aftercare.outbox import falling_back, rows
from aftercare.transports.base import ReceiptNote

LONGEST_REF = 120
STRAYS_WAIT = timedelta(hours=1)  # for the attempt that a receipt speaks of; later none comes


@dataclass(frozen=True, slots=True)
class _News:
    """What a receipt says of an attempt."""

    attempt: Attempt
    event: Event
    at: datetime
    problem: str


def note_receipts(account: str, notes: Sequence[ReceiptNote], now: datetime) -> list[Attempt | None]:
    """Keep what a provider says became of attempts by one account, and let the messages follow.

    All or none, in one transaction; the same receipt twice is one. Returns the attempt that each is about, where known.
    """
    if not notes:
        return []
    with transaction.atomic():
        attempts = _attempts_of(account, notes)
        rows.insert([_receipt(account, note, attempt, now) for note, attempt in zip(notes, attempts, strict=True)])
        _follow(
            [
                _News(attempt, note.event, note.at or now, note.problem or _said(note.word))
                for note, attempt in zip(notes, attempts, strict=True)
                if attempt is not None and note.event is not None
            ],
            now,
        )
    return attempts


def _receipt(account: str, note: ReceiptNote, attempt: Attempt | None, now: datetime) -> Receipt:
    return Receipt(
        account=account,
        provider_ref=note.provider_ref[:LONGEST_REF],
        word=note.word[:40],
        event=note.event.value if note.event else "",
        at=note.at or now,
        kept_at=now,
        raw=note.raw,
        attempt=attempt,
    )


def match_early(named: Mapping[str, str], now: datetime) -> None:
    """Match receipts that were quicker than the provider's answer, which names the reference that they speak of.

    ``named`` are the provider's references by ours. Nearly always there is none, which is found without reading the
    attempts.
    """
    references = {reference[:LONGEST_REF] for reference in named.values()} - {""}
    if not references:
        return
    lately = Receipt.objects.filter(attempt=None, kept_at__gte=now - STRAYS_WAIT)  # a carrier's numbers begin anew
    strays = list(lately.filter(provider_ref__in=references))
    if strays:
        attempts = Attempt.objects.filter(reference__in=named).exclude(provider_ref="")
        _match(strays, {(attempt.provider, attempt.provider_ref): attempt for attempt in attempts}, now)


def match_strays(now: datetime) -> None:
    """Match receipts that were stored while another process was still writing down the answer they speak of."""
    with transaction.atomic():
        strays = list(Receipt.objects.filter(attempt=None, kept_at__gte=now - STRAYS_WAIT).exclude(provider_ref=""))
        if strays:
            found = Attempt.objects.filter(provider_ref__in={stray.provider_ref for stray in strays})
            _match(strays, {(attempt.provider, attempt.provider_ref): attempt for attempt in found}, now)


def _match(strays: Iterable[Receipt], attempts: dict[tuple[str, str], Attempt], now: datetime) -> None:
    matched = []
    for receipt in strays:
        receipt.attempt = attempts.get((receipt.account, receipt.provider_ref))
        if receipt.attempt is not None:
            matched.append(receipt)
    rows.update(matched, ("attempt",))
    news = [
        _News(receipt.attempt, Event(receipt.event), receipt.at, _said(receipt.word))
        for receipt in matched
        if receipt.event and receipt.attempt is not None
    ]
    _follow(news, now)


def _attempts_of(account: str, notes: Sequence[ReceiptNote]) -> list[Attempt | None]:
    """Our own reference tells it best; a provider's may be the same for all recipients of one call: the newest then."""
    by_account = Attempt.objects.filter(provider=account)
    ours = {note.reference for note in notes} - {""}
    theirs = {note.provider_ref[:LONGEST_REF] for note in notes} - {""}
    by_ours = {one.reference: one for one in by_account.filter(reference__in=ours)} if ours else {}
    by_theirs = {}
    if theirs:
        by_theirs = {one.provider_ref: one for one in by_account.filter(provider_ref__in=theirs).order_by("pk")}
    return [by_ours.get(note.reference) or by_theirs.get(note.provider_ref[:LONGEST_REF]) for note in notes]


def _follow(news: Sequence[_News], now: datetime) -> None:
    """Let messages follow what is said of their attempts. Bad news of an earlier try changes nothing."""
    ids = {one.attempt.message_id for one in news}
    if not ids:
        return
    messages = {one.pk: one for one in Message.objects.select_for_update().filter(pk__in=ids).order_by("pk")}
    newest = {one.message_id: one for one in Attempt.objects.filter(message__in=ids).order_by("number")}
    changed: dict[int, Message] = {}
    failed: list[Message] = []
    for one in news:
        message = messages[one.attempt.message_id]
        after = delivery.sources(one.event).get(State(message.state))
        if after is None or (one.event is Event.FAILED and not _is_newest(one.attempt, newest[message.pk])):
            continue
        message.state, message.lease_until, message.ended_at = after, None, one.at
        message.handed_over_at = message.handed_over_at or one.at
        message.reason = one.problem[:200] if one.event is Event.FAILED else ""
        changed[message.pk] = message
        if one.event is Event.FAILED:
            failed.append(message)
    falling_back.fall_back(failed, now)
    rows.update(list(changed.values()), ("lease_until", "handed_over_at", *falling_back.CHANGED))


def _is_newest(attempt: Attempt, newest: Attempt) -> bool:
    """Whether nothing else has been tried since; what went under one key is one."""
    return attempt.pk == newest.pk or (attempt.key != "" and attempt.key == newest.key)


def _said(word: str) -> str:
    return f"The provider reports: {word}."
