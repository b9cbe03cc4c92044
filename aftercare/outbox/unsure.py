"""What nobody answered for: leases that ended, and messages of which nobody knows whether they left."""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Sequence
from datetime import datetime

from django.db import transaction
from django.db.models import Count, OuterRef, Subquery

from aftercare.core import delivery
from aftercare.core.delivery import Event, State
from aftercare.core.timing import SAFETY
from aftercare.models import Attempt, Message
from aftercare.outbox import rows
from studio import clock

NOT_HEARD = "The service stopped before the answer was heard: nobody knows whether the message left."
_luck = random.Random()  # it spreads waits and keeps no secret


def expire_leases(now: datetime) -> Counter[str]:
    """Free what a sender has held for too long: claimed is due again, handing over is unsure; count the states."""
    with transaction.atomic():
        over = clock.now()
        late = rows.leases_over(over, State.CLAIMED, State.HANDING_OVER)
        found = list(late.values_list("pk", "state"))
        claimed = [pk for pk, state in found if state == State.CLAIMED]
        begun = [pk for pk, state in found if state == State.HANDING_OVER]
        rows.move(claimed, Event.LEASE_OVER, lease_until=None)
        # Its wait for a receipt was part of the lease: the policy may decide at once.
        rows.move(begun, Event.LEASE_OVER, lease_until=over, ended_at=now, reason=NOT_HEARD)
        unheard = Attempt.objects.filter(message__in=begun, ended_at=None)
        unheard.update(ended_at=now, outcome=State.UNSURE, problem=NOT_HEARD)
    return +Counter({State.PLANNED.value: len(claimed), State.UNSURE.value: len(begun)})


def free_claimed() -> int:
    """Free all that is claimed, whatever its lease; return how many. For when the only sender begins anew.

    Should another one be at work after all, it finds that what it claimed is no longer its own, and leaves it.
    """
    with transaction.atomic():
        held = Message.objects.filter(state=State.CLAIMED, lease_until__isnull=False)
        claimed = list(rows.unlocked(held).values_list("pk", flat=True))
        rows.move(claimed, Event.LEASE_OVER, lease_until=None)
    return len(claimed)


def resolve_unsure(now: datetime) -> Counter[str]:
    """Decide about unsure messages whose wait for a receipt is over; count the states.

    Where safety hangs on it the message goes again: twice is better than never. Reminders and the like do not, unless
    the provider knows it again by its key: then it cannot come twice.
    """
    with transaction.atomic():
        found = list(rows.leases_over(clock.now(), State.UNSURE))
        lost, keyed = _lost_tries(found), _known_by_key(found)
        for message in found:
            _decide(message, lost.get(message.pk, 0), now, keyed=message.pk in keyed)
        rows.update(found, ("state", "reason", "due_at", "ended_at", "lease_until", "not_before"))
    return Counter(message.state for message in found)


def _lost_tries(messages: Sequence[Message]) -> dict[int, int]:
    if not messages:
        return {}
    lost = Attempt.objects.filter(message__in=[message.pk for message in messages], outcome=State.UNSURE)
    return dict(lost.order_by().values_list("message").annotate(n=Count("pk")))


def _known_by_key(messages: Sequence[Message]) -> set[int]:
    """Return those whose provider still knows them by the key of their newest try."""
    if not messages:
        return set()
    newest = Attempt.objects.filter(message=OuterRef("message")).order_by("-number").values("pk")[:1]
    known = Attempt.objects.filter(message__in=[message.pk for message in messages], pk=Subquery(newest))
    return set(known.filter(key_until__gt=clock.now()).values_list("message", flat=True))


def _decide(message: Message, lost: int, now: datetime, *, keyed: bool) -> None:
    message.lease_until = None
    if message.occasion not in SAFETY and not keyed:
        message.reason = _with(message.reason, "It is not sent again, so that it does not come twice.")
    elif lost >= delivery.MOST_LOST:
        message.reason = _with(message.reason, f"It was lost {lost} times: please ask her.")
    elif message.no_later_than is not None and message.no_later_than < now:
        message.reason = _with(message.reason, "It is too late to send it again.")
    else:
        message.state = delivery.advance(State.UNSURE, Event.SEND_AGAIN)
        message.reason, message.ended_at = "", None
        waits = delivery.wait(lost - 1, _luck.random(), urgent=message.rank == 0) if lost > 1 else None
        message.not_before = now + waits if waits else None
        message.due_at = message.not_before or now


def _with(reason: str, more: str) -> str:
    return f"{reason[: 199 - len(more)]} {more}".strip()
