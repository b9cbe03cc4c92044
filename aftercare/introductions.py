"""The text that goes ahead of the first SMS from a line to a number: who writes, how often, how to stop. Once a number.

Numbers are introduced, not clients: those who share one are told once. Rehearsed introductions count in rehearsal only.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from aftercare import outbox
from aftercare.core.delivery import GONE, State
from aftercare.core.timing import Occasion
from aftercare.models import Message

NEEDS_NONE = frozenset({Occasion.OPT_IN, Occasion.ANSWER})  # an answer goes to who wrote to us
LOOK_AGAIN = timedelta(seconds=10)  # when another sender is at it

Pair = tuple[int, str]  # line, number


@dataclass(frozen=True, slots=True)
class First:
    """A message that may be the first from its line to its number."""

    message: Message
    line_id: int
    number: str
    rehearsed: bool

    @property
    def pair(self) -> Pair:
        return (self.line_id, self.number)


def owed(firsts: Iterable[First], now: datetime) -> dict[Pair, Message]:
    """Return the introduction that each number still waits for, promised here where there is none yet."""
    asked = {first.pair: first for first in firsts}
    waiting, done, editions = _standing(asked.values())
    missing = [first for pair, first in asked.items() if pair not in waiting and pair not in done]
    if missing:
        outbox.promise(_introduction(first, editions.get(first.pair, 0) + 1, now) for first in missing)
        waiting, _, _ = _standing(asked.values())
    return waiting


def waiting_until(firsts: Collection[First], now: datetime) -> dict[Pair, datetime]:
    """Return when to look again at those numbers whose introduction has still not gone."""
    waiting, done, _ = _standing(firsts)
    pairs = {first.pair for first in firsts} - done
    again = now + LOOK_AGAIN
    return {pair: max(again, waiting[pair].due_at or again) if pair in waiting else again for pair in pairs}


def _standing(firsts: Iterable[First]) -> tuple[dict[Pair, Message], set[Pair], dict[Pair, int]]:
    """Return the introductions that have not gone, the pairs whose has, and each pair's newest edition."""
    rehearsed = {first.pair: first.rehearsed for first in firsts}
    waiting: dict[Pair, Message] = {}
    done: set[Pair] = set()
    editions: dict[Pair, int] = {}
    lines, numbers = {pair[0] for pair in rehearsed}, {pair[1] for pair in rehearsed}
    rows = Message.objects.filter(occasion=Occasion.OPT_IN, line__in=lines, address__in=numbers).order_by("edition")
    for message in rows:
        pair = (message.line_id or 0, message.address)
        if pair not in rehearsed:
            continue
        editions[pair] = message.edition
        if State(message.state) not in GONE:
            waiting[pair] = message
        elif message.state != State.HANDING_OVER and message.rehearsed == rehearsed[pair]:
            done.add(pair)
    return {pair: message for pair, message in waiting.items() if pair not in done}, done, editions


def _introduction(first: First, edition: int, now: datetime) -> Message:
    about = first.message
    return Message(
        studio_id=about.studio_id,
        key=f"number:{first.line_id}:{first.number}:{Occasion.OPT_IN}:{edition}",
        edition=edition,
        client_id=about.client_id,
        visit_id=about.visit_id,
        occasion=Occasion.OPT_IN,
        channel="sms",
        line_id=first.line_id,
        address=first.number,
        due_at=now,
        aim_at=now,
        no_later_than=about.no_later_than,
        planned_from=now,
    )
