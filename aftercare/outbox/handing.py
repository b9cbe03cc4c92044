"""Handing over: what is handed over, and what became of it once the answers are in."""

from __future__ import annotations

import random
import secrets
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Any

from aftercare import stops
from aftercare.core import delivery
from aftercare.core.delivery import OPEN, Event, State
from aftercare.models import Attempt, Line, Message, Receipt
from aftercare.outbox import falling_back, receipts, rows
from aftercare.transports.base import Outcome
from studio import clock

# A moment is in whole seconds, and so is what has passed since: what a provider asks for is not cut short by either.
ROUNDING = timedelta(seconds=2)
_luck = random.Random()  # it spreads waits and keeps no secret


@dataclass(frozen=True, slots=True)
class Told:
    """What the journal is told of a parcel whatever the moment: see departing. ``elements`` are those of arrays."""

    values: tuple[Any, ...]
    elements: tuple[str, ...]


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
    as_of: int | None = None  # the client's revision that it was judged by; None: it goes whatever it is
    heeds_stops: bool = True
    until: datetime | None = None  # from then on it must be judged anew; None: it goes at any hour
    receipt_wait: int = 0  # seconds for which a receipt may still tell what became of it
    key: str = ""  # by which the provider knows it again, see `Outgoing.key`
    likeness: str = ""
    key_lifetime: int = 0  # seconds
    told: Told | None = None  # where it was worked out ahead of its turn


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


def settle(answers: Sequence[Answered], now: datetime) -> Counter[str]:
    """Write down what became of journaled parcels; count the states that came of it. Call it within a transaction."""
    counts: Counter[str] = Counter()
    if not answers:
        return counts
    standing = rows.lock([answer.parcel.message.pk for answer in answers])
    answers = _without_forgotten(answers, standing)
    _note_attempts(answers, now)
    taken = [answer.parcel for answer in answers if answer.outcome.event is Event.TAKEN]
    if taken:
        went_on = {one.pk for one in standing if one.fell_back or one.state in OPEN}
        failed = _known_to_have_failed([parcel.reference for parcel in taken if parcel.message.pk in went_on])
        ids = [parcel.message.pk for parcel in taken if parcel.reference not in failed]
        rows.move(ids, Event.TAKEN, handed_over_at=now, lease_until=None, ended_at=None, reason="")
        counts[State.HANDED_OVER.value] = len(ids)
        named = {one.parcel.reference: one.outcome.provider_ref for one in answers if one.outcome.event is Event.TAKEN}
        receipts.match_early(named, now)
    for answer in answers:
        if answer.outcome.event is not Event.TAKEN:
            counts[_settle_failure(answer, now)] += 1
    return counts


def _without_forgotten(answers: Sequence[Answered], standing: Sequence[rows.Standing]) -> Sequence[Answered]:
    """Take out what a provider says in words, her number among them, where she was forgotten while it went."""
    forgotten = {one.pk for one in standing if not one.address}
    if not forgotten:
        return answers
    return [
        replace(one, outcome=replace(one.outcome, problem="")) if one.parcel.message.pk in forgotten else one
        for one in answers
    ]


def _known_to_have_failed(references: Sequence[str]) -> set[str]:
    """Return those tries whose receipt was quicker than the answer, and bad: their messages go by the other channel."""
    if not references:
        return set()
    bad = Receipt.objects.filter(attempt__reference__in=references, event=Event.FAILED)
    return set(bad.values_list("attempt__reference", flat=True))


def _note_attempts(answers: Sequence[Answered], now: datetime) -> None:
    outcomes = [answer.outcome for answer in answers]
    rows.change(
        Attempt,
        {"reference": [answer.parcel.reference for answer in answers]},
        {
            "ended_at": [now] * len(answers),
            "outcome": [delivery.advance(State.HANDING_OVER, outcome.event).value for outcome in outcomes],
            "problem": [outcome.problem[:400] for outcome in outcomes],
            "provider_ref": [outcome.provider_ref[: receipts.LONGEST_REF] for outcome in outcomes],
        },
    )


def _settle_failure(answer: Answered, now: datetime) -> str:
    """Write one message that was not taken; return its state. An earlier try's bad news changes nothing."""
    outcome = answer.outcome
    message = Message.objects.select_for_update().get(pk=answer.parcel.message.pk)
    newest = message.attempts.order_by("number").last()
    if message.state != State.HANDING_OVER or newest is None or newest.reference != answer.parcel.reference:
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
    message.save(update_fields=[*falling_back.CHANGED, "lease_until"])
    return message.state


def _try_again(message: Message, outcome: Outcome, now: datetime) -> None:
    message.tries += 1
    if message.tries < delivery.MOST_TRIES:
        waits = delivery.wait(message.tries, _luck.random(), urgent=message.rank == 0, asked=outcome.retry_after)
        message.due_at = message.not_before = now + waits + (ROUNDING if outcome.retry_after else timedelta())
        message.reason = ""
        return
    message.state, message.ended_at = State.UNDELIVERED, now
    message.reason = f"given up after {message.tries} tries: {outcome.problem}"[:200]


def _end_or_fall_back(message: Message, other_channel: str, now: datetime) -> None:
    message.ended_at = now
    if other_channel and falling_back.may_fall_back(message, now):
        falling_back.go_by(message, other_channel, now)
