"""Receipts: kept as they come, and the message follows. In any order, twice, early, or about nothing that we know."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from django.db import transaction
from django.db.models import QuerySet

from aftercare.core import delivery
from aftercare.core.delivery import Event, State
from aftercare.models import Attempt, Message, Receipt
from aftercare.outbox import falling_back, rows
from aftercare.transports.base import ReceiptNote

LONGEST_REF = 120
STRAYS_WAIT = timedelta(hours=1)  # for the attempt that a receipt speaks of; later none comes


@dataclass(frozen=True, slots=True)
class _Try:
    """What of an attempt matters here."""

    pk: int
    message: int
    reference: str
    provider: str
    provider_ref: str
    key: str


@dataclass(frozen=True, slots=True)
class _News:
    """What a receipt says of an attempt."""

    attempt: _Try
    event: Event
    at: datetime
    problem: str


def note_receipts(account: str, notes: Sequence[ReceiptNote], now: datetime) -> list[int | None]:
    """Keep what a provider says became of attempts by one account, and let the messages follow.

    All or none, in one transaction; the same receipt twice is one. Returns the key of the attempt that each is about,
    where known.
    """
    if not notes:
        return []
    with transaction.atomic():
        attempts = _attempts_of(account, notes)
        standing = _locked(attempt for attempt in attempts if attempt is not None)
        notes = _without_forgotten(notes, attempts, standing)
        ids = [attempt.pk if attempt is not None else None for attempt in attempts]
        rows.add(Receipt, _kept(account, notes, ids, now))
        _follow(
            [
                _News(attempt, note.event, note.at or now, note.problem or _said(note.word))
                for note, attempt in zip(notes, attempts, strict=True)
                if attempt is not None and note.event is not None
            ],
            standing,
            now,
        )
    return ids


def _kept(
    account: str, notes: Sequence[ReceiptNote], attempts: Sequence[int | None], now: datetime
) -> dict[str, Sequence[object]]:
    return {
        "account": [account] * len(notes),
        "provider_ref": [note.provider_ref[:LONGEST_REF] for note in notes],
        "word": [note.word[:40] for note in notes],
        "event": [note.event.value if note.event else "" for note in notes],
        "at": [note.at or now for note in notes],
        "kept_at": [now] * len(notes),
        "raw": [note.raw for note in notes],
        "attempt": attempts,
    }


def _locked(attempts: Iterable[_Try]) -> list[rows.Standing]:
    ids = {attempt.message for attempt in attempts}
    return rows.lock(ids) if ids else []


def _without_forgotten(
    notes: Sequence[ReceiptNote], attempts: Sequence[_Try | None], standing: Iterable[rows.Standing]
) -> Sequence[ReceiptNote]:
    """Take her number and her words out of what is said late of a message to somebody who was forgotten meanwhile."""
    forgotten = {one.pk for one in standing if not one.address}
    if not forgotten:
        return notes
    return [
        replace(note, raw="", problem="") if attempt is not None and attempt.message in forgotten else note
        for note, attempt in zip(notes, attempts, strict=True)
    ]


def match_early(named: Mapping[str, str], now: datetime) -> None:
    """Match receipts that were quicker than the provider's answer, which names the reference that they speak of.

    ``named`` are the provider's references by ours. Nearly always none is waiting at all, which costs next to nothing.
    """
    references = {reference[:LONGEST_REF] for reference in named.values()} - {""}
    lately = Receipt.objects.filter(attempt=None, kept_at__gte=now - STRAYS_WAIT)  # a carrier's numbers begin anew
    if not references or not lately.exists():
        return
    strays = list(lately.filter(provider_ref__in=references))
    if strays:
        _match(strays, _tries(Attempt.objects.filter(reference__in=named).exclude(provider_ref="")), now)


def match_strays(now: datetime) -> None:
    """Match receipts that were stored while another process was still writing down the answer they speak of."""
    with transaction.atomic():
        strays = list(Receipt.objects.filter(attempt=None, kept_at__gte=now - STRAYS_WAIT).exclude(provider_ref=""))
        if strays:
            _match(strays, _tries(Attempt.objects.filter(provider_ref__in={one.provider_ref for one in strays})), now)


def _match(strays: Iterable[Receipt], attempts: Iterable[_Try], now: datetime) -> None:
    named = {(attempt.provider, attempt.provider_ref): attempt for attempt in attempts}
    matched = [
        (one, named[one.account, one.provider_ref]) for one in strays if (one.account, one.provider_ref) in named
    ]
    if not matched:
        return
    rows.change(
        Receipt,
        {"pk": [receipt.pk for receipt, _attempt in matched]},
        {"attempt": [attempt.pk for _receipt, attempt in matched]},
    )
    standing = _locked(attempt for _receipt, attempt in matched)
    forgotten = {one.pk for one in standing if not one.address}
    hers = [receipt.pk for receipt, attempt in matched if attempt.message in forgotten]
    if hers:
        Receipt.objects.filter(pk__in=hers).update(raw="")
    news = [
        _News(attempt, Event(receipt.event), receipt.at, _said(receipt.word))
        for receipt, attempt in matched
        if receipt.event
    ]
    _follow(news, standing, now)


_TRIED = ("pk", "message", "reference", "provider", "provider_ref", "key")  # in the order of _Try


def _tries(attempts: QuerySet[Attempt]) -> list[_Try]:
    return [_Try(*found) for found in attempts.values_list(*_TRIED)]


def _attempts_of(account: str, notes: Sequence[ReceiptNote]) -> list[_Try | None]:
    """Our own reference tells it best; a provider's may be the same for all recipients of one call: the newest then."""
    ours = _tries_by("reference", {note.reference for note in notes}, account)
    theirs = _tries_by("provider_ref", {note.provider_ref[:LONGEST_REF] for note in notes}, account)
    by_ours = {one.reference: one for one in ours}
    by_theirs = {one.provider_ref: one for one in theirs}
    return [by_ours.get(note.reference) or by_theirs.get(note.provider_ref[:LONGEST_REF]) for note in notes]


def _tries_by(name: str, named: set[str], account: str) -> list[_Try]:
    named -= {""}
    return [_Try(*found) for found in rows.find(Attempt, _TRIED, name, named, provider=account)] if named else []


def _follow(news: Sequence[_News], standing: Iterable[rows.Standing], now: datetime) -> None:
    """Let messages follow what is said of their attempts. ``standing``: how they stand, which are locked."""
    if not news:
        return
    failing = {one.attempt.message for one in news if one.event is Event.FAILED}
    _end_well([one for one in news if one.attempt.message not in failing], standing)
    _follow_each([one for one in news if one.attempt.message in failing], now)


def _end_well(news: Iterable[_News], standing: Iterable[rows.Standing]) -> None:
    """Let messages of which nothing but good is said come to their end. It is nearly all that is ever heard.

    ``standing``: how the messages stand, which are locked.
    """
    ends = {one.attempt.message: one.at for one in reversed(list(news))}
    reached = delivery.sources(Event.DELIVERED)
    ending = [one for one in standing if one.pk in ends and State(one.state) in reached]
    if not ending:
        return
    ids = [one.pk for one in ending]
    rows.change(
        Message,
        {"pk": ids},
        {
            "state": [reached[State(one.state)].value for one in ending],
            "reason": [""] * len(ids),
            "lease_until": [None] * len(ids),
            "handed_over_at": [one.handed_over_at or ends[one.pk] for one in ending],
            "ended_at": [ends[pk] for pk in ids],
        },
    )


def _follow_each(news: Sequence[_News], now: datetime) -> None:
    """Let messages follow one thing after the other. Bad news of an earlier try changes nothing."""
    ids = {one.attempt.message for one in news}
    if not ids:
        return
    messages = Message.objects.in_bulk(ids)
    newest = {one.message: one for one in _tries(Attempt.objects.filter(message__in=ids).order_by("number"))}
    changed: dict[int, Message] = {}
    failed: list[Message] = []
    for one in news:
        message = messages[one.attempt.message]
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


def _is_newest(attempt: _Try, newest: _Try) -> bool:
    """Whether nothing else has been tried since; what went under one key is one."""
    return attempt.pk == newest.pk or (attempt.key != "" and attempt.key == newest.key)


def _said(word: str) -> str:
    return f"The provider reports: {word}."
