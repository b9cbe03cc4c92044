"""The text that goes ahead of the first SMS from a line to a number: who writes, how often, how to stop. Once a number.

Numbers are introduced, not clients: those who share one are told once. Rehearsed introductions count in rehearsal only.
"""

from __future__ import annotations

from collections.abc import Iterable
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


@dataclass(frozen=True, slots=True)
class _Waiting:
    """An introduction that has still not gone: its key, and when it is due."""

    pk: int
    due_at: datetime | None


@dataclass(slots=True)
class _Standing:
    """What is on record of a number: the newest edition, and how far its introduction has come."""

    edition: int = 0
    waiting: _Waiting | None = None
    is_leaving: bool = False  # another sender has it
    is_done: bool = False


def owed(firsts: Iterable[First], now: datetime) -> dict[Pair, int | None]:
    """Return the keys of the introductions that numbers still wait for, promised here where there is none yet.

    None stands for one that is leaving just now.
    """
    asked = {first.pair: first for first in firsts}
    found = _standing(asked.values())
    missing = [asked[pair] for pair, one in found.items() if not (one.is_done or one.is_leaving or one.waiting)]
    if missing:
        outbox.promise(_introduction(first, found[first.pair].edition + 1, now) for first in missing)
        found = _standing(asked.values())
    return {pair: one.waiting.pk if one.waiting else None for pair, one in found.items() if not one.is_done}


def waiting_until(firsts: Iterable[First], now: datetime) -> dict[Pair, datetime]:
    """Return when to look again at those numbers whose introduction has still not gone."""
    again = now + LOOK_AGAIN
    open_ones = {pair: one for pair, one in _standing(firsts).items() if not one.is_done}
    dues = {pair: one.waiting.due_at if one.waiting else None for pair, one in open_ones.items()}
    return {pair: max(again, due or again) for pair, due in dues.items()}


def _standing(firsts: Iterable[First]) -> dict[Pair, _Standing]:
    rehearsed = {first.pair: first.rehearsed for first in firsts}
    found = {pair: _Standing() for pair in rehearsed}
    lines, numbers = {pair[0] for pair in rehearsed}, {pair[1] for pair in rehearsed}
    rows = Message.objects.filter(occasion=Occasion.OPT_IN, line__in=lines, address__in=numbers).order_by("edition")
    of_each = rows.values_list("line_id", "address", "pk", "due_at", "edition", "state", "rehearsed")
    for line, address, pk, due_at, edition, state, in_rehearsal in of_each:
        pair = (line or 0, address)
        if pair not in found:
            continue
        standing = found[pair]
        standing.edition = edition
        if State(state) not in GONE:
            standing.waiting = _Waiting(pk, due_at)
        elif in_rehearsal == rehearsed[pair]:
            standing.is_leaving = standing.is_leaving or state == State.HANDING_OVER
            standing.is_done = standing.is_done or state != State.HANDING_OVER
    return found


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
