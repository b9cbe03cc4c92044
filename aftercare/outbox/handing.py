"""Handing over: written down before the first byte leaves, and again when the answers are in."""

from __future__ import annotations

import random
import secrets
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.db.models import Max, Q

from aftercare import stops
from aftercare.core import delivery, segments
from aftercare.core.delivery import Event, State
from aftercare.models import Attempt, Line, Message
from aftercare.outbox import falling_back, receipts, rows
from aftercare.transports.base import Outcome
from studio import clock

_luck = random.Random()  # noqa: S311  it spreads waits and keeps no secret


@dataclass(slots=True)
class Parcel:
    """A claimed message ready to be handed over: by which line, to where, in which words."""

    message: Message
    line: Line
    provider: str
    channel: str
    address: str
    subject: str
    text: str
    rehearsed: bool
    reference: str
    worded: str = ""  # by which wording and version
    receipt_wait: int = 0  # seconds for which a receipt may still tell what became of it
    key: str = ""  # by which the provider knows it again, see `Outgoing.key`
    likeness: str = ""
    key_lifetime: int = 0  # seconds
    attempt_id: int = 0  # once it is journaled


@dataclass(frozen=True, slots=True)
class Answered:
    """What became of a journaled parcel. ``other_channel`` is the way still open to her, if it was refused."""

    parcel: Parcel
    outcome: Outcome
    other_channel: str = ""


def new_reference() -> str:
    """Return a reference for one try: it travels with the message and cannot be guessed."""
    return secrets.token_hex(12)


def key_of(message: Message, likeness: str, reference: str) -> str:
    """Return the key of a try: that of an earlier one with the same contents, as long as it is known, else its own.

    Under one key the provider takes a message once, so that one whose answer was lost can go again.
    """
    if message.handing_over_at is None:  # never tried
        return reference
    known = Attempt.objects.filter(message=message, likeness=likeness, key_until__gt=clock.now()).exclude(key="")
    return known.order_by("number").values_list("key", flat=True).first() or reference


def hold(parcels: Sequence[Parcel]) -> set[int]:
    """Lock those messages that are still the caller's own, within its transaction; return their ids."""
    by_lease: dict[datetime | None, list[int]] = {}
    for parcel in parcels:
        by_lease.setdefault(parcel.message.lease_until, []).append(parcel.message.pk)
    own = Q(pk__in=[])
    for lease, ids in by_lease.items():
        own |= Q(pk__in=ids, lease_until=lease)
    mine = Message.objects.select_for_update().filter(own, state=State.CLAIMED)
    return set(mine.order_by("pk").values_list("pk", flat=True))


def journal(parcels: Sequence[Parcel], now: datetime, patience: int) -> None:
    """Write down that these held messages are about to be handed over. Commit before the first byte leaves.

    ``patience`` is in seconds: how long an answer may take before a crash is taken for granted.
    """
    numbers = _next_numbers(parcels)
    began = clock.now()
    attempts = Attempt.objects.bulk_create(
        Attempt(
            message=parcel.message,
            number=numbers.get(parcel.message.pk, 1),
            line=parcel.line,
            provider=parcel.provider,
            reference=parcel.reference,
            started_at=now,
            key=parcel.key,
            likeness=parcel.likeness,
            key_until=began + timedelta(seconds=parcel.key_lifetime) if parcel.key else None,
        )
        for parcel in parcels
    )
    for parcel, attempt in zip(parcels, attempts, strict=True):
        parcel.attempt_id = attempt.pk
        _fill(parcel, now, began + timedelta(seconds=patience + parcel.receipt_wait))
    written = ("state", "reason", "line", "channel", "address", "subject", "text", "segments", "rehearsed", "worded")
    rows.update([parcel.message for parcel in parcels], (*written, "handing_over_at", "lease_until"))


def _fill(parcel: Parcel, now: datetime, lease_until: datetime) -> None:
    message = parcel.message
    message.state = delivery.advance(State(message.state), Event.JOURNAL)
    message.line_id, message.channel, message.address = parcel.line.pk, parcel.channel, parcel.address
    message.subject, message.text, message.rehearsed = parcel.subject[:200], parcel.text, parcel.rehearsed
    if parcel.channel == "sms":  # kept where an e-mail follows: the text that failed has been paid for
        message.segments = segments.measure(parcel.text).segments
    message.worded = parcel.worded
    message.reason, message.handing_over_at, message.lease_until = "", now, lease_until


def _next_numbers(parcels: Sequence[Parcel]) -> dict[int, int]:
    """Number the next try of each message that was tried before."""
    tried = [parcel.message.pk for parcel in parcels if parcel.message.handing_over_at is not None]
    if not tried:
        return {}
    last = Attempt.objects.filter(message__in=tried).order_by().values_list("message").annotate(last=Max("number"))
    return {message: number + 1 for message, number in last}


def settle(answers: Sequence[Answered], now: datetime) -> Counter[str]:
    """Write down what became of journaled parcels; count the states that came of it. Call it within a transaction."""
    counts: Counter[str] = Counter()
    if not answers:
        return counts
    _note_attempts(answers, now)
    taken = [answer.parcel for answer in answers if answer.outcome.event is Event.TAKEN]
    if taken:
        ids = [parcel.message.pk for parcel in taken]
        rows.move(ids, Event.TAKEN, handed_over_at=now, lease_until=None, ended_at=None, reason="")
        counts[State.HANDED_OVER.value] = len(taken)
        named = {one.parcel.attempt_id: one.outcome.provider_ref for one in answers if one.outcome.event is Event.TAKEN}
        receipts.match_early(named, now)
    for answer in answers:
        if answer.outcome.event is not Event.TAKEN:
            counts[_settle_failure(answer, now)] += 1
    return counts


def _note_attempts(answers: Sequence[Answered], now: datetime) -> None:
    attempts = [
        Attempt(
            pk=answer.parcel.attempt_id,
            ended_at=now,
            outcome=delivery.advance(State.HANDING_OVER, answer.outcome.event),
            problem=answer.outcome.problem[:400],
            provider_ref=answer.outcome.provider_ref[: receipts.LONGEST_REF],
        )
        for answer in answers
    ]
    rows.update(attempts, ("ended_at", "outcome", "problem", "provider_ref"))


def _settle_failure(answer: Answered, now: datetime) -> str:
    """Write one message that was not taken; return its state. An earlier try's bad news changes nothing."""
    outcome = answer.outcome
    message = Message.objects.select_for_update().get(pk=answer.parcel.message.pk)
    newer = Attempt.objects.filter(message=message, pk__gt=answer.parcel.attempt_id)
    if message.state != State.HANDING_OVER or newer.exists():
        return message.state
    if outcome.bad_address and message.client_id is not None:
        stops.rest(answer.parcel.line, answer.parcel.address, now=now, words=outcome.problem)
    message.state = delivery.advance(State.HANDING_OVER, outcome.event)
    message.reason, message.lease_until = outcome.problem[:200], None
    if outcome.event is Event.LOST:
        message.ended_at = now
        message.lease_until = clock.now() + timedelta(seconds=answer.parcel.receipt_wait)
    elif outcome.event is Event.REFUSED:
        _end_or_fall_back(message, answer.other_channel, now)
    else:
        _try_again(message, outcome, now)
    message.save(
        update_fields=["state", "reason", "channel", "due_at", "ended_at", "lease_until", "tries", "fell_back"]
    )
    return message.state


def _try_again(message: Message, outcome: Outcome, now: datetime) -> None:
    message.tries += 1
    if message.tries < delivery.MOST_TRIES:
        waits = delivery.wait(message.tries, _luck.random(), urgent=message.rank == 0, asked=outcome.retry_after)
        message.due_at, message.reason = now + waits, ""
        return
    message.state, message.ended_at = State.UNDELIVERED, now
    message.reason = f"given up after {message.tries} tries: {outcome.problem}"[:200]


def _end_or_fall_back(message: Message, other_channel: str, now: datetime) -> None:
    message.ended_at = now
    if other_channel and falling_back.may_fall_back(message, now):
        falling_back.go_by(message, other_channel, now)
