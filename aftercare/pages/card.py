"""What a client's card holds, read from her book: the conversation, what is still to go, her tests and visits."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.db.models import Q

from aftercare.core.delivery import GONE, OPEN, State
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook
from aftercare.models import Message, Reply
from aftercare.pages.files import brought, with_files
from aftercare.pages.shown import Shown
from studio.models import Client, Service, Visit

LATEST = 40  # entries of the conversation shown at first
FORMER = 12  # past visits shown at first
SHOWN_FOR = timedelta(days=14)  # what was withheld or withdrawn
RESTING = (State.WITHHELD, State.WITHDRAWN)


@dataclass(frozen=True, slots=True)
class Said:
    """One entry of the conversation: hers, or ours."""

    at: datetime
    reply: Reply | None = None
    shown: Shown | None = None


def conversation(replies: Iterable[Reply], gone: Iterable[Shown]) -> list[Said]:
    """Return what she wrote and what we wrote, in the order in which it was said."""
    said = [Said(reply.received_at, reply=reply) for reply in replies]
    said.extend(Said(shown.at, shown=shown) for shown in gone if shown.at is not None)
    return sorted(said, key=lambda entry: (entry.at, not _introduces(entry)))


def _introduces(entry: Said) -> bool:
    """An introduction goes just ahead of the first text, within the same second."""
    return entry.shown is not None and entry.shown.message.occasion == Occasion.OPT_IN


def replies_of(client: Client) -> list[Reply]:
    """Return the newest of what she wrote, newest first; of a shared number, also what nobody has assigned yet."""
    shared = Q(client=None, flag__in=client.flags.all())
    rows = Reply.objects.filter(Q(client=client) | shared).defer("raw").select_related("line", "flag__closed_by")
    return brought(with_files(rows).order_by("-received_at", "-pk")[: LATEST + 1])


def messages_of(book: ClientBook) -> tuple[list[Message], list[Message]]:
    """Return the newest of what we wrote, newest first; and all that is still open, in the order of its moments."""
    rows = Message.objects.filter(client=book.client).filter(Q(state__in=GONE) | Q(occasion=Occasion.OPT_IN))
    gone = list(rows.select_related("seen_to_by").order_by("-due_at", "-pk")[: LATEST + 1])
    known = {message.pk: message for message in gone if message.state in OPEN} | book.messages
    still = [message for message in known.values() if message.state in OPEN]
    still.sort(key=lambda message: (message.state in RESTING, message.aim_at or message.planned_from, message.pk))
    return [message for message in gone if message.state in GONE], still


def recent(still: Iterable[Message], now: datetime) -> list[Message]:
    """Leave out what was withheld or withdrawn long ago; Messages has all of it."""
    return [
        message
        for message in still
        if message.state not in RESTING or (message.aim_at or message.planned_from) >= now - SHOWN_FOR
    ]


def tests_of(book: ClientBook) -> list[Visit]:
    """Return her patch tests, newest first."""
    return [visit for visit in reversed(book.visits.values()) if visit.service == Service.PATCH_TEST]


def visits_of(book: ClientBook, now: datetime) -> tuple[list[Visit], list[Visit]]:
    """Return what is booked and still ahead, soonest first; and what is past, newest first."""
    ahead = [visit for visit in book.visits.values() if visit.starts_at > now]
    return ahead, [visit for visit in reversed(book.visits.values()) if visit.starts_at <= now]
