"""Answering a reply at once: what tells of an eye by its kind, at any hour."""

from __future__ import annotations

from datetime import datetime, timedelta

from aftercare import facts, outbox
from aftercare.core import answering, paging, say
from aftercare.core.reading import Reading
from aftercare.core.ticks import Ticked
from aftercare.core.timing import Occasion
from aftercare.models import Flag, Message, Reply
from studio.models import Client, Studio


def answer_at_once(reply: Reply, clients: list[Client], found: Reading, now: datetime) -> None:
    """Answer what tells of an eye, at any hour; what was said before goes again only later, a worse kind at once."""
    kind = kind_for(reply, clients, found)
    if not kind:
        return
    flag = reply.flag if kind in answering.CALLED_BACK else None
    if not reply.from_address:  # written on her page, and she can be told nothing but there
        if flag is not None:
            _promise_a_call(flag, reply.studio, now)
        return
    told = Message.objects.filter(line=reply.line_id, address=reply.from_address, occasion=Occasion.ANSWER)
    gone = told.filter(due_at__gt=now - timedelta(days=1)).values_list("kind", "due_at")
    if not answering.may_go(kind, [(one, at) for one, at in gone if at is not None], now):
        return
    hers = say.language_of(clients[0].language if clients else "", reply.studio.language)
    if flag is not None:
        _promise_a_call(flag, reply.studio, now)
    for language in answering.languages(found.language, hers):
        promise(reply, clients, kind, now, language)


def kind_for(reply: Reply, clients: list[Client], found: Reading) -> str:
    """Return the kind of answer that a reply calls for; '' for none. Her page asks about her eyes, as a check does."""
    ticked = Ticked.kept(reply.ticked)
    of_page = bool(reply.ticked) and ticked.is_about_her_eyes
    checked = of_page or (reply.answers is not None and reply.answers.occasion == Occasion.CHECK)
    lenses = ticked.lenses or any(client.wears_lenses for client in clients)
    return answering.answer_to(found, wears_lenses=lenses, after_check=checked)


def _promise_a_call(flag: Flag, studio: Studio, now: datetime) -> None:
    flag.call_by = paging.call_by(now, facts.rules_of(studio), studio.zone)
    flag.save(update_fields=["call_by"])


def promise(reply: Reply, clients: list[Client], kind: str, now: datetime, language: str = "") -> None:
    """Promise an answer to a reply: to where it came from, by the line that it came to, at any hour.

    Without a ``language`` it goes in hers, with one once in it. What came from the page of a client without a number or
    an address is answered there alone.
    """
    if not reply.from_address:
        return
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
