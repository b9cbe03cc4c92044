"""What would move by other rules: the plan as it stands beside the one that would be; nothing is written."""

from __future__ import annotations

import gc
from collections import Counter
from collections.abc import Collection, Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from enum import StrEnum

from aftercare import facts
from aftercare.core.delivery import OPEN, State
from aftercare.core.timing import REMINDERS, UNPLANNED, Occasion, Planned, Rules, SetForecast
from aftercare.facts import ClientBook
from aftercare.models import Message
from studio.models import SETS, Client, Studio, Visit

BATCH = 1000  # clients at a time
DAYS = 14  # that are compared


class Kind(StrEnum):
    """What a change does to a message."""

    MOVES = "moves"
    GOES = "goes away"
    COMES = "new"


@dataclass(frozen=True, slots=True)
class Move:
    """One message that would leave at another moment, not at all, or only then. ``why``: withheld for this reason."""

    kind: Kind
    client: Client
    occasion: Occasion
    step: int
    key: str
    before: datetime | None
    after: datetime | None
    why: str = ""

    @property
    def at(self) -> datetime:
        """The moment that it is listed by."""
        at = self.before or self.after
        assert at is not None  # one of the two is there, or nothing would move
        return at


@dataclass(slots=True)
class Moves:
    """What would move within the days compared; ``looked`` of ``clients`` were looked at."""

    clients: int
    looked: int = 0
    stay: int = 0  # messages of these days that leave when they would have
    found: list[Move] = field(default_factory=list)

    @property
    def counts(self) -> Counter[str]:
        return Counter(move.kind.value for move in self.found)

    @property
    def is_whole(self) -> bool:
        return self.looked == self.clients


def concerned(studio: Studio, now: datetime, *, reminders_alone: bool = False) -> list[int]:
    """Return the clients whose plan can follow from the rules: a visit lately or ahead, or a message to go.

    ``reminders_alone``: from those of the rules that are about reminders, which need a set that is done.
    """
    lately = Visit.objects.filter(studio=studio, starts_at__gte=now - facts.LOOK_BACK).order_by()
    to_go = Message.objects.filter(studio=studio, state=State.PLANNED, visit__isnull=False).order_by()
    if reminders_alone:
        lately = lately.filter(status=Visit.Status.DONE, service__in=SETS)
        to_go = to_go.filter(occasion__in=REMINDERS)
    ids = {*lately.values_list("client_id", flat=True), *to_go.values_list("visit__client_id", flat=True)}
    return sorted(ids)


def staying(studio: Studio, now: datetime, ids: Collection[int], days: int = DAYS) -> int:
    """Return how many messages of the next ``days`` are of other clients than these, whom nothing moves."""
    until = now + timedelta(days=days)
    leaves = Message.objects.filter(studio=studio, state__in=(State.PLANNED, State.CLAIMED), due_at__lte=until)
    about = leaves.filter(staff=None, visit__isnull=False).exclude(occasion__in=UNPLANNED).order_by()
    return sum(client not in ids for client in about.values_list("visit__client_id", flat=True))


def compare(
    ids: Iterable[int],
    studio: Studio,
    rules: Rules,
    in_force: Rules,
    now: datetime,
    forecasts: Mapping[int, SetForecast],
    moves: Moves,
    days: int = DAYS,
) -> None:
    """Add to ``moves`` what planning these clients by ``rules`` at ``now`` would change of the next ``days``.

    What planning by the rules ``in_force`` would change just as much is none of it: a visit may have begun meanwhile.
    """
    until = now + timedelta(days=days)
    found: dict[int, list[Move]] = {}
    books = facts.load_as_if(ids, now, studio, rules, forecasts)
    for client, book in books.items():
        found[client] = list(_of(book, now, until, moves))
        moves.looked += 1
    doubtful = [client for client, mine in found.items() if any(move.kind is not Kind.MOVES for move in mine)]
    as_is = {client: books[client].by(in_force).plan(now) for client in doubtful}
    for client, mine in found.items():
        anyway = {one.key: _goes(one) for one in as_is[client]} if client in as_is else None
        moves.found.extend(move for move in mine if anyway is None or anyway.get(move.key) != move.after)


def _goes(planned: Planned) -> datetime | None:
    """When a message would leave; None: not at all."""
    return planned.due if planned.reason is None else None


def _of(book: ClientBook, now: datetime, until: datetime, moves: Moves) -> Iterator[Move]:
    standing = {message.key: message for message in book.messages.values() if message.state in OPEN}
    for planned in book.plan(now):
        message = standing.pop(planned.key, None)
        before, after = _leaves(message), _goes(planned)
        kind = _kind(before, after, until)
        if kind is not None:
            why = str(planned.reason or "")
            yield Move(kind, book.client, planned.occasion, planned.step, planned.key, before, after, why)
        elif before is not None and before <= until:
            moves.stay += 1
    for message in standing.values():
        before = _leaves(message)
        if message.occasion not in UNPLANNED and before is not None and before <= until:
            why = facts.why_gone(message, book, now)
            yield Move(Kind.GOES, book.client, Occasion(message.occasion), message.step, message.key, before, None, why)


def _leaves(message: Message | None) -> datetime | None:
    """When a message leaves as things stand; None: not at all."""
    return message.due_at if message is not None and message.state in (State.PLANNED, State.CLAIMED) else None


def _kind(before: datetime | None, after: datetime | None, until: datetime) -> Kind | None:
    """What becomes of a message, as far as either moment lies within the days compared."""
    if before == after or min(at for at in (before, after) if at is not None) > until:
        return None
    if before is None:
        return Kind.COMES
    return Kind.GOES if after is None else Kind.MOVES


@contextmanager
def uninterrupted() -> Iterator[None]:
    """Keep the collector of cycles from looking again and again at thousands of rows that all are still needed."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
