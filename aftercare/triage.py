"""Triage: what is made of a reply.

It is read. Standard words and plain wishes to end are obeyed at once, what tells of an eye is answered at once, and
everything but a plain command or confirmation waits for a person as a flag, the worst first.
"""

from __future__ import annotations

import logging
from datetime import datetime, timedelta
from typing import Any

from django.db import models, transaction
from django.db.models import F

from aftercare import facts, outbox
from aftercare.core import answering, commands, paging, reading, say
from aftercare.core.commands import Command
from aftercare.core.reading import Reading, Topic, Urgency
from aftercare.core.timing import Occasion
from aftercare.models import HELD_BY, URGENCIES, Flag, Message, Reply, Stop
from studio.models import Client

log = logging.getLogger(__name__)

WRITTEN_TO = timedelta(days=14)  # of several clients with one number, those who were written to within that
UNREAD = "unread"  # on screen: not understood
THUMBS = frozenset({"👍", "👍🏻", "👍🏼", "👍🏽", "👍🏾", "👍🏿"})
YES = frozenset({"y", "yes", "yep", "yes please", "ok", "okay", "confirmed", "c", "si", "sí", "vale"})


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
    found = _read_words(reply)
    reply.reading = _kept(found)
    command = None if reply.automatic else commands.read(_words(reply))
    reply.command = command or ""
    ended = not command and not reply.automatic and Topic.STOP in found.about
    obeyed = _stop(reply, clients, found, now) if ended else _obey(reply, command, clients, found, now)
    if _wants_a_person(reply, command, obeyed):
        reply.flag = _flag(reply, clients, found, now)
        # The confirmation of a stop has the caution in it: only what an emergency calls for goes beside it.
        confirmed = ended and obeyed and found.urgency is not Urgency.EMERGENCY
        if not command and not reply.automatic and not confirmed:
            _answer_at_once(reply, clients, found, now)
    reply.read_at = now
    reply.save(update_fields=["client", "answers", "command", "reading", "flag", "read_at"])
    return True


def _read_words(reply: Reply) -> Reading:
    """Read it. What the reader trips over is not understood: a stop is obeyed and a person sees it all the same."""
    try:
        return reading.read(_words(reply))
    except Exception:
        log.exception("the words of reply %s could not be read", reply.pk)
        return Reading(Urgency.NONE, (Topic.OTHER,), (), (), None, "und", unread=True, why=())


def _kept(found: Reading) -> dict[str, Any]:
    """Return a reading as what JSON can hold."""
    return {
        "urgency": found.urgency,
        "about": list(found.about),
        "signs": list(found.signs),
        "negated": list(found.negated),
        "side": found.side,
        "language": found.language,
        "unread": found.unread,
        "why": [[one.finding, one.start, one.end] for one in found.why],
    }


def _words(reply: Reply) -> str:
    return reply.text if reply.text.strip() else reply.subject


def _obey(reply: Reply, command: Command | None, clients: list[Client], found: Reading, now: datetime) -> bool:
    """Do what a standard word asks for; return whether it changed or answered anything."""
    if command is Command.STOP:
        return _stop(reply, clients, found, now)
    if command is Command.START:
        return _start(reply, clients, now)
    if command is Command.HELP and not _in_force(reply).exists():
        _answer(reply, clients, "help", now)
        return True
    return False


def _wants_a_person(reply: Reply, command: Command | None, obeyed: bool) -> bool:
    """Whether a person has to look: at all but a plain STOP or START, and a yes to what we told her before a visit.

    HELP may be a cry for it, CANCEL the visit. What reads as thanks is at the end of the list, and yet on it.
    """
    if command is Command.STOP:
        return commands.may_mean_the_visit(_words(reply))
    return not (command is Command.START and obeyed) and not (not command and not reply.automatic and _confirms(reply))


def _confirms(reply: Reply) -> bool:
    """Whether it is a bare yes to what we told her before a visit."""
    if reply.answers is None or reply.answers.occasion != Occasion.PREPARE:
        return False
    words = _words(reply).strip()
    return words in THUMBS or words.strip(".!👍 ").casefold() in YES


def _answer_at_once(reply: Reply, clients: list[Client], found: Reading, now: datetime) -> None:
    """Answer what tells of an eye, at any hour; what was said before goes again only later, a worse kind at once."""
    checked = reply.answers is not None and reply.answers.occasion == Occasion.CHECK
    lenses = any(client.wears_lenses for client in clients)
    kind = answering.answer_to(found, wears_lenses=lenses, after_check=checked)
    if not kind:
        return
    told = Message.objects.filter(line=reply.line_id, address=reply.from_address, occasion=Occasion.ANSWER)
    gone = told.filter(due_at__gt=now - timedelta(days=1)).values_list("kind", "due_at")
    if not answering.may_go(kind, [(one, at) for one, at in gone if at is not None], now):
        return
    hers = say.language_of(clients[0].language if clients else "", reply.studio.language)
    if kind in answering.CALLED_BACK and reply.flag is not None:
        reply.flag.call_by = paging.call_by(now, facts.rules_of(reply.studio), reply.studio.zone)
        reply.flag.save(update_fields=["call_by"])
    for language in answering.languages(found.language, hers):
        _answer(reply, clients, kind, now, language)


# The standard words


def _in_force(reply: Reply) -> models.QuerySet[Stop]:
    return Stop.objects.filter(line=reply.line_id, address=reply.from_address, lifted_at=None)


def _stop(reply: Reply, clients: list[Client], found: Reading, now: datetime) -> bool:
    """End everything to this number on this line. A second STOP in a row is not confirmed again.

    Where she also tells of an eye, the confirmation carries the caution.
    """
    _, is_new = Stop.objects.get_or_create(
        line_id=reply.line_id,
        address=reply.from_address,
        lifted_at=None,
        defaults={"at": reply.received_at, "words": _words(reply)},
    )
    if is_new:
        _plan_anew(clients)
        _answer(reply, clients, "stopped_with_sign" if found.urgency in HELD_BY else "stopped", now)
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


def _answer(reply: Reply, clients: list[Client], kind: str, now: datetime, language: str = "") -> None:
    """Promise an answer to a reply: to where it came from, by the line that it came to, at any hour.

    Without a ``language`` it goes in hers, with one once in it.
    """
    outbox.promise(
        [
            Message(
                studio_id=reply.studio_id,
                key=":".join(["reply", str(reply.pk), Occasion.ANSWER, kind, *filter(None, [language])]),
                client=clients[0] if len(clients) == 1 else None,
                occasion=Occasion.ANSWER,
                kind=kind,
                flag=reply.flag,
                language=language,
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


def _urgency(reply: Reply, found: Reading) -> str:
    """How urgent a reply makes its matter. What was not understood is never less than that."""
    urgent = found.urgency in HELD_BY
    return UNREAD if not urgent and (found.unread or reply.automatic or reply.command) else str(found.urgency)


def _flag(reply: Reply, clients: list[Client], found: Reading, now: datetime) -> Flag:
    """Return the open matter that the reply belongs to: hers, else that of its number, else a new one.

    The worst of its replies counts; one that is worse than what somebody has taken opens it anew.
    """
    urgency = _urgency(reply, found)
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
        _plan_anew(clients)
