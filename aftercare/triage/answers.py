"""Answering a reply at once: what tells of an eye by its kind, at any hour."""

from __future__ import annotations

from datetime import datetime, timedelta

from aftercare import facts, outbox
from aftercare.core import answering, paging, say
from aftercare.core.reading import Reading
from aftercare.core.timing import Occasion
from aftercare.models import Message, Reply
from studio.models import Client


def answer_at_once(reply: Reply, clients: list[Client], found: Reading, now: datetime) -> None:
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
        promise(reply, clients, kind, now, language)


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
