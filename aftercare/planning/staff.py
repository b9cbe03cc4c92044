"""What staff are told apart from pages: the morning list, and that a visit of theirs is over and not marked.

A list goes once a day to each who works here, once it is her hour, also when nothing waits. All of it is promised when
its moment has come and never ahead: an hour that she changes holds from then on, and what the list says is counted as
it leaves.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from django.db.models import Exists, OuterRef, Q

from aftercare import facts, outbox
from aftercare.core import mornings
from aftercare.core.reach import Reach
from aftercare.core.timing import Occasion
from aftercare.models import Message
from studio.models import Staff, Studio, Visit

NUDGE_AFTER = timedelta(minutes=30)  # after a visit's end
NUDGED_FOR = timedelta(days=1)  # from its start; after that the morning list alone has it


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


def plan_nudges(now: datetime, *, studio: Studio | None = None) -> int:
    """Ask the artists of visits that were over half an hour ago, and are not marked, what became of them.

    Once a visit. One query where there are none. History that was heard of afterwards is asked about by nobody.
    """
    over = Visit.objects.filter(status=Visit.Status.BOOKED, starts_at__range=(now - NUDGED_FOR, now - NUDGE_AFTER))
    if studio is not None:
        over = over.filter(studio=studio)
    asked = Message.objects.filter(visit=OuterRef("pk"), occasion=Occasion.ALERT)
    due = [
        visit
        for visit in over.filter(~Exists(asked)).select_related("studio").order_by("pk")
        if visit.heard_at < visit.booked_end <= now - NUDGE_AFTER
    ]
    teams = {visit.studio: facts.team(visit.studio, now.astimezone(visit.studio.zone).date()) for visit in due}
    ways = {one: facts.ways(team.people.values()) for one, team in teams.items()}
    return outbox.promise(
        message for visit in due if (message := _nudge(visit, teams[visit.studio], ways[visit.studio], now))
    )


def _nudge(visit: Visit, team: facts.Team, ways: dict[int, Reach], now: datetime) -> Message | None:
    """To her artist, or whoever stands in for her; else to an owner. None: nobody can be reached."""
    artist = team.standing(visit.artist_id) if visit.artist_id else None
    asked = next((one for one in (artist, *team.owners) if one is not None and one.pk in ways), None)
    if asked is None:
        return None
    return Message(
        studio=visit.studio,
        key=f"visit:{visit.pk}:{Occasion.ALERT}:unmarked",
        staff=asked,
        visit=visit,
        occasion=Occasion.ALERT,
        kind="unmarked",
        channel=ways[asked.pk].channel,
        address=ways[asked.pk].address,
        due_at=visit.booked_end + NUDGE_AFTER,
        planned_from=now,
    )
