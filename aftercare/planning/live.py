"""What leaves for real, and from when: going live, and the reminders of a first import."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from django.db import transaction
from django.db.models import Count, F, Max, Q, QuerySet

from aftercare import facts
from aftercare.core.delivery import OPEN, State
from aftercare.core.hours import DAY, moment, opening
from aftercare.core.timing import Reason, Rules, whole_seconds
from aftercare.models import Message
from studio.models import Client, Studio


def leaving(studio: Studio, now: datetime, hours: int = 48) -> dict[str, int]:
    """Return how many messages would leave within ``hours``, by occasion."""
    due = leaving_within(studio, now, hours)
    return dict(due.values_list("occasion").annotate(n=Count("pk")).order_by("occasion"))


def leaving_within(studio: Studio, now: datetime, hours: int = 48) -> QuerySet[Message]:
    """Return the messages that would leave within ``hours``."""
    due = Message.objects.filter(studio=studio, state=State.PLANNED, due_at__lte=now + timedelta(hours=hours))
    return due.exclude(no_later_than__lt=now)  # its time has passed: it is withheld when its turn comes


def go_live(studio: Studio, now: datetime) -> None:
    """End the rehearsal: from now on messages leave for real."""
    Studio.objects.filter(pk=studio.pk, live_since=None).update(live_since=now)


def go_back(studio: Studio) -> None:
    """Resume the rehearsal: from now on nothing leaves."""
    Studio.objects.filter(pk=studio.pk).update(live_since=None)


@dataclass(frozen=True, slots=True)
class FirstReminders:
    """How the reminders stand that were overdue when the book first came in."""

    waiting: int
    let_go: int  # and not gone yet
    last_from: datetime | None  # from when the last of them may leave


def first_reminders(studio: Studio) -> FirstReminders:
    """Count the reminders that wait for the owner's go, and those that have it and have not gone."""
    on_the_way = Q(state__in=(State.PLANNED, State.CLAIMED), go_from__isnull=False)
    found = Message.objects.filter(studio=studio).aggregate(
        waiting=Count("pk", filter=_WAITING),
        let_go=Count("pk", filter=on_the_way),
        last=Max("go_from", filter=on_the_way),
    )
    return FirstReminders(found["waiting"], found["let_go"], found["last"])


@transaction.atomic
def give_go(studio: Studio, now: datetime) -> int:
    """Let the reminders go that wait for it; return how many can still go.

    In the order of their aims, so many a day as the rules say, from the next opening of the reminders' hours on. A day
    on which others already go takes fewer. One whose last moment comes before its turn takes nobody else's turn.
    """
    waiting = _held(studio, _WAITING)
    turns = _turns(studio, facts.rules_of(studio), whole_seconds(now))
    gone = 0
    turn = next(turns)
    for message in waiting:
        message.go_from = turn
        if message.no_later_than is None or turn <= message.no_later_than:
            gone += 1
            turn = next(turns)
    Message.objects.bulk_update(waiting, ["go_from"], batch_size=500)
    return gone


@transaction.atomic
def take_back_go(studio: Studio) -> int:
    """Have those wait again that have not gone yet; return how many."""
    let_go = _held(studio, Q(go_from__isnull=False, state__in=OPEN))
    Message.objects.filter(pk__in=[message.pk for message in let_go]).update(go_from=None)
    return len(let_go)


_WAITING = Q(state=State.WITHHELD, reason=Reason.WAITS_FOR_GO, go_from=None)


def _held(studio: Studio, which: Q) -> list[Message]:
    """Lock these reminders in the order of their aims, and have their clients planned anew.

    Of two who press a button, the second finds what the first left. The clients are locked before their messages, as
    planning does it.
    """
    Studio.objects.select_for_update().get(pk=studio.pk)
    reminders = Message.objects.filter(which, studio=studio)
    ids = set(reminders.values_list("client_id", flat=True))
    list(Client.objects.filter(pk__in=ids).select_for_update(no_key=True).order_by("pk").values_list("pk"))
    Client.objects.filter(pk__in=ids).update(revision=F("revision") + 1)
    return list(reminders.select_for_update(of=("self",)).defer("text", "subject").order_by("aim_at", "pk"))


def _turns(studio: Studio, rules: Rules, now: datetime) -> Iterator[datetime]:
    """Give the moments from which they may leave, as many of each day as that day still has room for."""
    given = Message.objects.filter(studio=studio, go_from__isnull=False).exclude(reason=Reason.TOO_LATE)
    taken = Counter(_day(at, studio.zone) for at in given.values_list("go_from", flat=True) if at is not None)
    at = now
    while True:
        at = opening(at, rules.reminder_hours, studio.zone)
        for _ in range(max(1, rules.go_a_day) - taken[_day(at, studio.zone)]):
            yield at
        at = moment(_day(at, studio.zone) + DAY, 0, studio.zone)


def _day(at: datetime, zone: ZoneInfo) -> date:
    return at.astimezone(zone).date()
