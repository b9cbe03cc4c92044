"""The standard words and plain wishes: stop, start, help; a number that is somebody else's; a colleague's stop."""

from __future__ import annotations

from datetime import datetime

from django.db import models

from aftercare import facts, links, outbox
from aftercare.core.commands import Command
from aftercare.core.reading import Reading
from aftercare.core.timing import Occasion
from aftercare.models import HELD_BY, Message, Reply, Stop
from aftercare.triage.answers import promise
from aftercare.triage.whose import plan_anew, words_of
from studio.models import Client, Staff

STAFF_STOP = "staff_stop"  # of a page: a colleague gets no more texts


def obey(reply: Reply, command: Command | None, clients: list[Client], found: Reading, now: datetime) -> bool:
    """Do what a standard word asks for; return whether it changed or answered anything."""
    if command is Command.STOP:
        return stop(reply, clients, found, now)
    if command is Command.START:
        return start(reply, clients, now)
    if command is Command.HELP and not in_force(reply).exists():
        promise(reply, clients, "help", now)
        return True
    return False


def stop(reply: Reply, clients: list[Client], found: Reading, now: datetime) -> bool:
    """End everything to this number on this line. A second STOP in a row is not confirmed again.

    Where she also tells of an eye, the confirmation carries the caution. Where nothing can go anyway, nothing ends.
    """
    if not reply.from_address:  # of a page: nothing goes to her anyhow
        return False
    _, is_new = Stop.objects.get_or_create(
        line_id=reply.line_id,
        address=reply.from_address,
        lifted_at=None,
        defaults={"at": reply.received_at, "words": words_of(reply)},
    )
    if is_new:
        plan_anew(clients)
        promise(reply, clients, "stopped_with_sign" if found.urgency in HELD_BY else "stopped", now)
    return is_new


def start(reply: Reply, clients: list[Client], now: datetime) -> bool:
    """Lift her stop. Without one a START is no consent: a person reads it."""
    stopped = in_force(reply)
    if reply.line.channel == "email":  # one click ends all e-mail of the studio, whichever line it came by
        of_studio = Stop.objects.filter(line__studio=reply.studio_id, line__channel="email", lifted_at=None)
        stopped = of_studio.filter(address=reply.from_address)
    lifted = stopped.update(lifted_at=reply.received_at, lifted_how=f"her own reply: {words_of(reply)}")
    if lifted:
        plan_anew(clients)
        promise(reply, clients, "started", now)
    return bool(lifted)


def rest(reply: Reply, clients: list[Client]) -> None:
    """Whoever has this number is not the one meant: nothing more goes there. She gets no confirmation, having asked for
    none; a corrected number on the record is another one, and is written to."""
    for client in clients:  # whoever has the number has her links, too
        links.revoke(client, why=Stop.Why.WRONG_PERSON, now=reply.received_at)
    if not reply.from_address:
        return
    _, is_new = Stop.objects.get_or_create(
        line_id=reply.line_id,
        address=reply.from_address,
        lifted_at=None,
        defaults={"at": reply.received_at, "words": words_of(reply), "why": Stop.Why.WRONG_PERSON},
    )
    if is_new:
        plan_anew(clients)


def tell_the_owners(reply: Reply, staff: Staff, now: datetime) -> None:
    """A colleague's STOP ends her pages by text, too: the owners are told at once, by a road that is open to them."""
    owners = Staff.objects.filter(studio=reply.studio_id, is_owner=True, is_active=True).select_related("studio")
    outbox.promise(
        Message(
            studio_id=reply.studio_id,
            key=f"staff:{staff.pk}:{Occasion.ALERT}:{STAFF_STOP}:{reply.pk}:{owner}",
            staff_id=owner,
            occasion=Occasion.ALERT,
            kind=STAFF_STOP,
            channel=way.channel,
            address=way.address,
            due_at=now,
            planned_from=now,
        )
        for owner, way in facts.ways(owners).items()
    )


def in_force(reply: Reply) -> models.QuerySet[Stop]:
    return Stop.objects.filter(line=reply.line_id, address=reply.from_address, lifted_at=None)
