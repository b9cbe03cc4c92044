"""Whose a reply is, what it answers, and the open matter that it belongs to."""

from __future__ import annotations

import re
from datetime import datetime, timedelta

from django.db.models import F

from aftercare.core.timing import Occasion
from aftercare.models import HELD_BY, URGENCIES, Flag, Message, Reply
from studio.models import Client, Staff

_ANSWERS = re.compile(r"\s*(re|aw|rv|sv|antw|fwd?|wg)\s*:", re.IGNORECASE)
WRITTEN_TO = timedelta(days=14)  # of several clients with one number, those who were written to within that


def words_of(reply: Reply) -> str:
    """Return what she wrote; the subject where there is nothing else, unless it is the one that she answers."""
    if reply.text.strip():
        return reply.text
    return "" if _ANSWERS.match(reply.subject) else reply.subject


def clients_of(reply: Reply, now: datetime) -> list[Client]:
    """Return whom it can be from: those with its number, of several those who were lately written to there.

    What came from a client's own page is hers, whatever number she has. Where nobody has the number any more, those who
    were lately written to there all the same.
    """
    if reply.client is not None:
        return [reply.client.merged_into or reply.client]
    standing = Client.objects.filter(studio=reply.studio_id, merged_into=None).order_by("pk")
    if reply.line.channel == "sms":
        hers = list(standing.filter(mobile=reply.from_address))
    else:
        hers = list(standing.filter(email__iexact=reply.from_address))
    if len(hers) == 1 or not reply.from_address:
        return hers if reply.from_address else []
    since = now - WRITTEN_TO
    told = Message.objects.filter(line=reply.line_id, address__iexact=reply.from_address, handed_over_at__gte=since)
    written_to = set(told.exclude(client=None).values_list("client_id", flat=True))
    if not hers:
        return list(standing.filter(pk__in=written_to))
    return [client for client in hers if client.pk in written_to] or hers


def staff_of(reply: Reply) -> Staff | None:
    """Return the member of staff who has this number or address, where no client does."""
    people = Staff.objects.filter(studio=reply.studio_id, is_active=True).order_by("pk")
    if not reply.from_address:
        return None
    by_text = reply.line.channel == "sms"
    return (
        people.filter(mobile=reply.from_address).first()
        if by_text
        else people.filter(email__iexact=reply.from_address).first()
    )


def last_told(reply: Reply) -> Message | None:
    """Return the message that it most likely answers: the last that went to this address by this line before it.

    An introduction goes just ahead of the text that she answers. What came from her own page, of a client without a
    number or an address, answers none.
    """
    if not reply.from_address:
        return None
    told = Message.objects.filter(line=reply.line_id, address=reply.from_address)
    last = list(told.filter(handed_over_at__lte=reply.received_at).order_by("-handed_over_at", "-pk")[:2])
    if len(last) == 2 and last[0].occasion == Occasion.OPT_IN and _together(*last):
        return last[1]
    return last[0] if last else None


def _together(one: Message, other: Message) -> bool:
    first, second = one.handed_over_at, other.handed_over_at
    return first is not None and second is not None and abs(first - second) < timedelta(minutes=1)


def open_matter(reply: Reply, clients: list[Client], urgency: str, now: datetime) -> Flag:
    """Return the open matter that the reply belongs to: hers, else that of its number, else a new one.

    The worst of its replies counts; one that is worse than what somebody has taken opens it anew.
    """
    open_ones = Flag.objects.exclude(state=Flag.State.CLOSED).filter(studio=reply.studio_id).order_by("-opened_at")
    if len(clients) == 1:
        standing = open_ones.filter(clients=clients[0]).first()
    else:
        standing = open_ones.filter(replies__line=reply.line_id, replies__from_address=reply.from_address).first()
    if standing is not None:
        if URGENCIES.index(urgency) < URGENCIES.index(standing.urgency):
            standing.urgency, standing.state, standing.urgent_since = urgency, Flag.State.OPEN, now
            standing.taken_at, standing.taken_by = None, None
            standing.save(update_fields=["urgency", "state", "urgent_since", "taken_at", "taken_by"])
            _hold(clients, urgency)
        return standing
    flag = Flag.objects.create(
        studio_id=reply.studio_id, urgency=urgency, opened_at=reply.received_at, urgent_since=now
    )
    flag.clients.set(clients)
    _hold(clients, urgency)
    return flag


def _hold(clients: list[Client], urgency: str) -> None:
    """An urgent matter holds what was planned for her, see facts: she is planned anew."""
    if urgency in HELD_BY:
        plan_anew(clients)


def plan_anew(clients: list[Client]) -> None:
    Client.objects.filter(pk__in=[client.pk for client in clients]).update(revision=F("revision") + 1)
