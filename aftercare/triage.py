"""Triage: what is made of a reply. The standard words are acted on; everything else waits for a person as a flag."""

from __future__ import annotations

import logging
from datetime import datetime, timedelta

from django.db import models, transaction
from django.db.models import F

from aftercare import outbox
from aftercare.core import commands
from aftercare.core.commands import Command
from aftercare.core.timing import Occasion
from aftercare.models import Flag, Message, Reply, Stop
from studio.models import Client

log = logging.getLogger(__name__)

WRITTEN_TO = timedelta(days=14)  # of several clients with one number, those who were written to within that
UNREAD = "unread"  # on screen: not understood


def read_waiting(now: datetime, studio_id: int | None = None) -> int:
    """Read every reply that waits to be read, oldest first; return how many."""
    waiting = Reply.objects.filter(read_at=None)
    if studio_id is not None:
        waiting = waiting.filter(studio=studio_id)
    ids = list(waiting.order_by("received_at", "pk").values_list("pk", flat=True)[:1000])
    return sum(_read_one(pk, now) for pk in ids)


def _read_one(pk: int, now: datetime) -> int:
    try:
        return int(read(pk, now))
    except Exception:  # one reply that cannot be read must not keep the others waiting; it is stored, and tried again
        log.exception("reply %s could not be read", pk)
        return 0


@transaction.atomic
def read(reply_id: int, now: datetime) -> bool:
    """Make something of one reply; return False where that has been done before."""
    reply = Reply.objects.select_for_update().filter(pk=reply_id, read_at=None).first()
    if reply is None:
        return False
    clients = _clients(reply, now)
    reply.client = clients[0] if len(clients) == 1 else None
    reply.answers = _last_told(reply)
    command = None if reply.automatic else commands.read(_words(reply))
    reply.command = command or ""
    if _wants_a_person(reply, command, _obey(reply, command, clients, now)):
        reply.flag = _flag(reply, clients, now)
    reply.read_at = now
    reply.save(update_fields=["client", "answers", "command", "flag", "read_at"])
    return True


def _words(reply: Reply) -> str:
    return reply.text if reply.text.strip() else reply.subject


def _obey(reply: Reply, command: Command | None, clients: list[Client], now: datetime) -> bool:
    """Do what a standard word asks for; return whether it changed or answered anything."""
    if command is Command.STOP:
        return _stop(reply, clients, now)
    if command is Command.START:
        return _start(reply, clients, now)
    if command is Command.HELP and not _in_force(reply).exists():
        _answer(reply, clients, "help", now)
        return True
    return False


def _wants_a_person(reply: Reply, command: Command | None, obeyed: bool) -> bool:
    """Whether a person has to look: at all but a plain STOP or START. HELP may be a cry for it, CANCEL the visit."""
    if command is Command.STOP:
        return commands.may_mean_the_visit(_words(reply))
    return not (command is Command.START and obeyed)


# The standard words


def _in_force(reply: Reply) -> models.QuerySet[Stop]:
    return Stop.objects.filter(line=reply.line_id, address=reply.from_address, lifted_at=None)


def _stop(reply: Reply, clients: list[Client], now: datetime) -> bool:
    """End everything to this number on this line. A second STOP in a row is not confirmed again."""
    _, is_new = Stop.objects.get_or_create(
        line_id=reply.line_id,
        address=reply.from_address,
        lifted_at=None,
        defaults={"at": reply.received_at, "words": _words(reply)},
    )
    if is_new:
        _plan_anew(clients)
        _answer(reply, clients, "stopped", now)
    return is_new


def _start(reply: Reply, clients: list[Client], now: datetime) -> bool:
    """Lift her stop. Without one a START is no consent: a person reads it."""
    lifted = _in_force(reply).update(lifted_at=reply.received_at, lifted_how=f"her own reply: {_words(reply)}")
    if lifted:
        _plan_anew(clients)
        _answer(reply, clients, "started", now)
    return bool(lifted)


def _plan_anew(clients: list[Client]) -> None:
    Client.objects.filter(pk__in=[client.pk for client in clients]).update(revision=F("revision") + 1)


def _answer(reply: Reply, clients: list[Client], kind: str, now: datetime) -> None:
    """Promise the one answer to a reply: to where it came from, by the line that it came to, at any hour."""
    outbox.promise(
        [
            Message(
                studio_id=reply.studio_id,
                key=f"reply:{reply.pk}:{Occasion.ANSWER}:{kind}",
                client=clients[0] if len(clients) == 1 else None,
                occasion=Occasion.ANSWER,
                kind=kind,
                channel=reply.line.channel,
                line_id=reply.line_id,
                address=reply.from_address,
                due_at=now,
                planned_from=now,
            )
        ]
    )


# Whose it is


def _clients(reply: Reply, now: datetime) -> list[Client]:
    """Return whom it can be from: those with its number, of several those who were lately written to there.

    Where nobody has the number any more, those who were lately written to there all the same.
    """
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


def _last_told(reply: Reply) -> Message | None:
    """Return the message that it most likely answers: the last that went to this address by this line before it."""
    told = Message.objects.filter(line=reply.line_id, address=reply.from_address)
    return told.filter(handed_over_at__lte=reply.received_at).order_by("-handed_over_at", "-pk").first()


def _flag(reply: Reply, clients: list[Client], now: datetime) -> Flag:
    """Return the open matter that the reply belongs to: hers, else that of its number, else a new one."""
    open_ones = Flag.objects.exclude(state=Flag.State.CLOSED).filter(studio=reply.studio_id).order_by("-opened_at")
    if len(clients) == 1:
        standing = open_ones.filter(clients=clients[0]).first()
    else:
        standing = open_ones.filter(replies__line=reply.line_id, replies__from_address=reply.from_address).first()
    if standing is not None:
        return standing
    flag = Flag.objects.create(studio_id=reply.studio_id, urgency=UNREAD, opened_at=reply.received_at)
    flag.clients.set(clients)
    return flag
