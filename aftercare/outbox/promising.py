"""Promises: new messages, and those that planning changed before anything of them left."""

from __future__ import annotations

from collections.abc import Iterable

from aftercare.core import delivery
from aftercare.core.delivery import OPEN, Event, NoSuchStep, State
from aftercare.core.timing import Occasion
from aftercare.models import Message
from aftercare.outbox import rows

_PLANNED = (
    *("state", "reason", "channel", "due_at", "aim_at", "no_later_than", "planned_from", "about_start", "ended_at"),
    *("lease_until", "client", "fell_back", "not_before", "forecast"),
)
_OPEN = f"state IN ({', '.join(repr(state.value) for state in sorted(OPEN))})"
_PLANNING = (Event.PLAN, Event.WITHHOLD, Event.WITHDRAW)
_CAN_PLAN = frozenset(delivery.advance(State.PLANNED, event) for event in _PLANNING)


def promise(messages: Iterable[Message]) -> int:
    """Write messages that are not promised yet; return how many. One whose key is taken in its studio stays as it is.

    Raises NoSuchStep for a message whose state is none to begin with.
    """
    new = _checked(messages)
    for message in new:
        message.rank = delivery.rank(Occasion(message.occasion))
    return rows.insert(new)


def replan(messages: Iterable[Message]) -> int:
    """Write what planning changed of messages of which nothing has left; return how many still were so.

    A claimed one is taken from its sender. Raises NoSuchStep for a state that planning cannot give.
    """
    changed = sorted(_checked(messages), key=lambda message: message.pk)
    for message in changed:
        message.lease_until = None
    return rows.update(changed, _PLANNED, where=_OPEN)


def _checked(messages: Iterable[Message]) -> list[Message]:
    found = list(messages)
    for message in found:
        if message.state not in _CAN_PLAN:
            raise NoSuchStep(f"planning cannot make {message.key} {message.state}")
    return found
