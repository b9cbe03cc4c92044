"""Claims: a sender takes what is due for itself alone, under a lease, and lets go of what does not go now."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from django.db import connection, transaction
from django.db.models import Q

from aftercare.core import delivery
from aftercare.core.delivery import OPEN, Event, State
from aftercare.core.occasions import KEEPS_ITS_LINE
from aftercare.models import Message
from aftercare.outbox import rows
from studio import clock
from studio.models import Client

LEASE = timedelta(seconds=60)  # how long a claimed message waits for its turn before another sender may have it


@dataclass(frozen=True, slots=True)
class Lane:
    """Which texts one sender takes, or leaves to others: those of these studios, and what is bound to these lines.

    A road that stays open belongs to one process, which alone takes the texts that go by it (``only``); everybody else
    takes all but these. A studio's lines may take several roads: what is bound to one goes by that one's.
    """

    texts_of: frozenset[int] = frozenset()
    lines: frozenset[int] = frozenset()
    only: bool = False

    def condition(self) -> str:
        """Return the SQL that tells this lane's messages ``m``; '' where it has no limits."""
        if self.is_empty:
            return "1 = 0" if self.only else ""
        theirs = (
            f"m.channel = 'sms' AND CASE WHEN m.line_id IS NOT NULL AND m.occasion IN ({_BOUND})"
            f" THEN m.line_id IN ({_listed(self.lines)}) ELSE m.studio_id IN ({_listed(self.texts_of)}) END"
        )
        return theirs if self.only else f"NOT ({theirs})"

    @property
    def is_empty(self) -> bool:
        return not (self.texts_of or self.lines)


_BOUND = ", ".join(repr(occasion.value) for occasion in sorted(KEEPS_ITS_LINE))


def _listed(ids: frozenset[int]) -> str:
    return ", ".join(map(str, sorted(ids) or [0]))  # no row has 0: an empty list is no SQL


ALL = Lane()


def claim(
    now: datetime,
    limit: int,
    studio_id: int | None = None,
    lane: Lane = ALL,
    *,
    ranks: Sequence[int] = delivery.RANKS,
) -> list[Message]:
    """Take up to ``limit`` messages that are due, for one sender alone; those for whom waiting is worst first.

    ``ranks`` are those that are looked at (`core.delivery.rank`).
    Messages of a client whose records are ahead of her plan wait until she is planned; answers do not.
    """
    found: list[Message] = []
    for rank in ranks:
        if len(found) < limit:
            found.extend(_claim(now, limit - len(found), rank, studio_id, lane))
    return found


def _claim(now: datetime, limit: int, rank: int, studio_id: int | None, lane: Lane) -> list[Message]:
    lease = clock.now() + LEASE
    at = Message._meta.get_field("due_at")
    of_studio: list[Any] = [] if studio_id is None else [studio_id]
    given = [rank, rows.value(at, now), *of_studio, limit, rows.value(at, now), rows.lease(lease)]
    with transaction.atomic():  # one statement, but its rows are read after it has run
        found = list(Message.objects.raw(_statement(rank, studio_id is not None, lane), given))
    return sorted(found, key=lambda message: (message.due_at or now, message.pk))


def _statement(rank: int, of_studio: bool, lane: Lane) -> str:
    messages = rows.table(Message)
    conditions = ["m.state = 'planned'", "m.rank = %s", "m.due_at <= %s"]
    if of_studio:
        conditions.append("m.studio_id = %s")
    if lane.condition():
        conditions.append(lane.condition())
    if rank > 0:
        behind = f"SELECT 1 FROM {rows.table(Client)} c WHERE c.id = m.client_id AND c.revision > c.planned_revision"
        conditions.append(f"NOT EXISTS ({behind})")
    lock = "FOR UPDATE OF m SKIP LOCKED" if connection.features.has_select_for_update_skip_locked else ""
    return f"""
        WITH due (id) AS (
            SELECT m.id FROM {messages} m WHERE {" AND ".join(conditions)} ORDER BY m.due_at, m.id LIMIT %s {lock}
        )
        UPDATE {messages} SET state = 'claimed', claimed_at = %s, lease_until = %s
        FROM due WHERE {messages}.id = due.id
        RETURNING {rows.columns(Message._meta.concrete_fields, prefix=f"{messages}.")}"""


def claim_these(ids: Sequence[int], now: datetime) -> list[Message]:
    """Take these messages whatever their due moment, as far as nothing of them has left and no sender has them.

    One that waits for its next try waits on.
    """
    may_go = Q(not_before=None) | Q(not_before__lte=now)
    with transaction.atomic():
        free = list(rows.unlocked(Message.objects.filter(may_go, pk__in=ids, state__in=OPEN - {State.CLAIMED})))
        lease = clock.now() + LEASE
        for message in free:
            planned = delivery.advance(State(message.state), Event.PLAN)
            message.state = delivery.advance(planned, Event.CLAIM)
            message.reason, message.ended_at, message.claimed_at, message.lease_until = "", None, now, lease
        rows.update(free, ("state", "reason", "ended_at", "claimed_at", "lease_until"))
    return free


def put_back(messages: Iterable[Message]) -> Counter[str]:
    """Let go of claimed messages that do not go now, as their new state, reason and due moment say; count the states.

    Those that are no longer the caller's own stay as they are.
    """
    mine = sorted(messages, key=lambda message: message.pk)
    leases = [message.lease_until for message in mine]
    for message in mine:
        message.lease_until = None
    changed = ("state", "reason", "channel", "due_at", "ended_at", "tries", "not_before", "fell_back", "lease_until")
    with transaction.atomic():
        rows.update(mine, changed, where="state = 'claimed'", leases=leases)
    return Counter(message.state for message in mine)


def let_go(messages: Iterable[Message]) -> Counter[str]:
    """Let go of claimed messages as they were: they are due at once."""
    mine = list(messages)
    for message in mine:
        message.state = delivery.advance(State.CLAIMED, Event.LEASE_OVER)
    return put_back(mine)
