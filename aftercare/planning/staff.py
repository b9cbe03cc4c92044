"""The morning list goes out: one message a day to each who works here, once it is her hour, also when nothing waits.

It is promised when its hour has come and never ahead: an hour that she changes holds from then on, and what the list
says is counted as it leaves.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from django.db.models import Q

from aftercare import facts, outbox
from aftercare.core import mornings
from aftercare.core.timing import Occasion
from aftercare.models import Message
from studio.models import Staff, Studio


def plan_mornings(now: datetime, *, studio: Studio | None = None) -> int:
    """Promise the lists whose hour has come; return how many. Whoever has no way to be told is left out.

    Two queries where none is due that is not promised yet.
    """
    due = {message.key: message for message in _due(now, studio)}
    known = Message.objects.filter(key__in=due, occasion=Occasion.MORNING_LIST).values_list("key", flat=True)
    for key in list(known) if due else ():
        del due[key]
    ways = facts.ways(message.staff for message in due.values() if message.staff) if due else {}
    new = []
    for message in due.values():
        if way := ways.get(message.staff_id or 0):
            message.channel, message.address = way.channel, way.address
            new.append(message)
    return outbox.promise(new) if new else 0


def _due(now: datetime, studio: Studio | None) -> Iterator[Message]:
    people = Staff.objects.filter(~Q(mobile="") | ~Q(email=""), is_active=True).select_related("studio")
    if studio is not None:
        people = people.filter(studio=studio)
    for person in people.order_by():
        day = mornings.due(person.morning_at, person.studio.zone, now) if facts.gets_a_list(person) else None
        if day is not None:
            yield Message(
                studio=person.studio,
                staff=person,
                key=mornings.key(person.pk, day[0]),
                occasion=Occasion.MORNING_LIST,
                due_at=day[1],
                aim_at=day[1],
                no_later_than=day[1] + mornings.LAST,
                planned_from=now,
            )
