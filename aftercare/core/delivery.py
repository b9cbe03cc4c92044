"""The life of a message: states, events and the one table that joins them; whose turn it is, and when to try again.

Source: the project's own design. A row that stays put says why beside it.
"""

from __future__ import annotations

import math
from datetime import timedelta
from enum import StrEnum

from aftercare.core.timing import SAFETY, Occasion


class State(StrEnum):
    """Where a message stands."""

    PLANNED = "planned"
    CLAIMED = "claimed"  # one sender holds it, under a lease
    HANDING_OVER = "handing_over"  # journaled before the first byte left
    HANDED_OVER = "handed_over"  # the provider took it
    DELIVERED = "delivered"
    UNDELIVERED = "undelivered"
    WITHHELD = "withheld"
    WITHDRAWN = "withdrawn"
    UNSURE = "unsure"  # bytes may have left; no answer was heard


class Event(StrEnum):
    """What can happen to a message."""

    PLAN = "plan"  # planned (anew), or given a later due moment
    WITHHOLD = "withhold"
    WITHDRAW = "withdraw"
    CLAIM = "claim"
    LEASE_OVER = "lease over"
    JOURNAL = "journal"  # about to write the first byte
    TAKEN = "taken"  # the provider said yes
    NOT_TAKEN = "not taken"  # certainly not: may be tried again
    REFUSED = "refused"  # for good
    LOST = "lost"  # nobody knows
    DELIVERED = "delivered"  # a receipt
    FAILED = "failed"  # a receipt
    SEND_AGAIN = "send again"  # by the policy for unsure, or by the other channel


class NoSuchStep(ValueError):
    """The event cannot happen in this state."""


S, E = State, Event

NEXT: dict[State, dict[Event, State]] = {
    S.PLANNED: {
        E.PLAN: S.PLANNED,
        E.WITHHOLD: S.WITHHELD,
        E.WITHDRAW: S.WITHDRAWN,
        E.CLAIM: S.CLAIMED,
        E.TAKEN: S.HANDED_OVER,  # of an earlier try: the answer came after it had been given up
        E.DELIVERED: S.DELIVERED,  # the same, by receipt: it need not go again
    },
    S.CLAIMED: {
        E.LEASE_OVER: S.PLANNED,  # nothing had left
        E.PLAN: S.PLANNED,
        E.WITHHOLD: S.WITHHELD,
        E.WITHDRAW: S.WITHDRAWN,
        E.JOURNAL: S.HANDING_OVER,
        E.TAKEN: S.HANDED_OVER,  # of an earlier try
        E.DELIVERED: S.DELIVERED,  # of an earlier try
    },
    S.HANDING_OVER: {
        E.TAKEN: S.HANDED_OVER,
        E.NOT_TAKEN: S.PLANNED,
        E.REFUSED: S.UNDELIVERED,
        E.LOST: S.UNSURE,
        E.LEASE_OVER: S.UNSURE,  # the process died in between
        E.DELIVERED: S.DELIVERED,  # a receipt can come before the provider's answer
        E.FAILED: S.UNDELIVERED,
    },
    S.HANDED_OVER: {E.TAKEN: S.HANDED_OVER, E.DELIVERED: S.DELIVERED, E.FAILED: S.UNDELIVERED},
    S.DELIVERED: {
        E.TAKEN: S.DELIVERED,  # the answer came after the receipt
        E.LOST: S.DELIVERED,
        E.LEASE_OVER: S.DELIVERED,
        E.DELIVERED: S.DELIVERED,  # the same receipt twice
        E.FAILED: S.DELIVERED,  # receipts come in any order; one that arrived has arrived
    },
    S.UNDELIVERED: {
        E.TAKEN: S.UNDELIVERED,  # the answer came after the receipt
        E.FAILED: S.UNDELIVERED,
        E.DELIVERED: S.UNDELIVERED,  # it may have been tried by the other channel by now: a person decides
        E.SEND_AGAIN: S.PLANNED,
    },
    S.UNSURE: {
        E.TAKEN: S.HANDED_OVER,
        E.DELIVERED: S.DELIVERED,
        E.FAILED: S.UNDELIVERED,
        E.SEND_AGAIN: S.PLANNED,
        E.LOST: S.UNSURE,
        E.LEASE_OVER: S.UNSURE,
    },
    S.WITHHELD: {
        E.PLAN: S.PLANNED,
        E.WITHHOLD: S.WITHHELD,
        E.WITHDRAW: S.WITHDRAWN,
        E.TAKEN: S.HANDED_OVER,  # of an earlier try: what has gone has gone
        E.DELIVERED: S.DELIVERED,
    },
    S.WITHDRAWN: {
        E.PLAN: S.PLANNED,
        E.WITHHOLD: S.WITHHELD,
        E.WITHDRAW: S.WITHDRAWN,
        E.TAKEN: S.HANDED_OVER,  # of an earlier try
        E.DELIVERED: S.DELIVERED,
    },
}

OPEN = frozenset({S.PLANNED, S.CLAIMED, S.WITHHELD, S.WITHDRAWN})  # nothing has left: planned anew in place
GONE = frozenset(S) - OPEN  # history: something left, or may have


def advance(state: State, event: Event) -> State:
    """Return the state after ``event``.

    Raises NoSuchStep where the table has no such edge.

    >>> advance(State.CLAIMED, Event.JOURNAL).value
    'handing_over'
    """
    try:
        return NEXT[state][event]
    except KeyError:
        raise NoSuchStep(f"a message that is {state.value} cannot be {event.value}") from None


def sources(event: Event) -> dict[State, State]:
    """Return every edge that ``event`` takes, from state to state, but those that stay put."""
    return {state: steps[event] for state, steps in NEXT.items() if steps.get(event, state) is not state}


FALLS_BACK = frozenset(
    {Occasion.CARE, Occasion.CHECK, Occasion.PATCH_TEST, Occasion.NOTICE}
)  # tried once more, by the other channel

_AT_ONCE = frozenset({Occasion.ANSWER, Occasion.ALERT})
_NEXT = SAFETY | {Occasion.OPT_IN, Occasion.NOTICE, Occasion.MORNING_LIST}
RANKS = (0, 1, 2)


def rank(occasion: Occasion) -> int:
    """Return whose turn it is among those due: answers and alerts before all, reminders last.

    >>> rank(Occasion.ANSWER), rank(Occasion.CARE), rank(Occasion.PREPARE)
    (0, 1, 2)
    """
    return 0 if occasion in _AT_ONCE else 1 if occasion in _NEXT else 2


FIRST_WAIT, GROWTH, LONGEST_WAIT = timedelta(seconds=20), 3, timedelta(hours=1)
LONGEST_URGENT_WAIT = timedelta(minutes=5)
LONGEST_ASKED_WAIT = timedelta(days=1)  # a provider that asks for more is not believed
MOST_TRIES = 40  # a day and a half; what has a "no later than" ends by that
MOST_LOST = 4  # tries of which nobody knows what became of them, before a person has to look


def wait(tries: int, luck: float, *, urgent: bool = False, asked: float | None = None) -> timedelta:
    """Return how long to wait after the ``tries``-th try (from 1) that a passing fault ended.

    Waits grow threefold to an hour (five minutes where ``urgent``), spread by a fifth either way with ``luck`` from 0
    to 1, so that what failed together does not come back together. ``asked`` is the provider's Retry-After in seconds.

    >>> [int(wait(tries, 0.5).total_seconds()) for tries in (1, 2, 3, 9)]
    [20, 60, 180, 3600]
    """
    longest = LONGEST_URGENT_WAIT if urgent else LONGEST_WAIT
    grown = min(longest, FIRST_WAIT * GROWTH ** min(tries - 1, 8))
    spread = grown.total_seconds() * (0.8 + 0.4 * luck)
    least = min(asked or 0.0, LONGEST_ASKED_WAIT.total_seconds())
    return timedelta(seconds=math.ceil(max(spread, least)))
