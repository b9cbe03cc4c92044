"""What a client tells on one of her own pages: stored as a reply before all else, then answered on the page at once."""

from __future__ import annotations

import logging
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from django.db import DatabaseError
from django.http import HttpRequest
from django.utils.translation import gettext as _

from aftercare import facts, receiving, tasks, triage, upkeep, versions
from aftercare.core.reading import Reading, Urgency
from aftercare.core.ticks import Asks
from aftercare.forms.hers import MOST_PHOTOS, Told
from aftercare.lines import lines_of
from aftercare.links import Opened
from aftercare.models import Attachment, Reply
from aftercare.pages.hers import HerPage
from aftercare.pages.ticks import in_words
from aftercare.pictures import LARGEST_FILE
from aftercare.receiving import TOO_MANY

log = logging.getLogger(__name__)
MOST_AN_HOUR = 30  # tellings from one client's pages; a worse one than those is heard all the same


@dataclass
class Said:
    """What came of what she sent: shown above all else."""

    text: str = ""
    problem: str = ""
    answers: list[str] = field(default_factory=list)
    kind: str = ""
    lost: list[str] = field(default_factory=list)  # photos that could not be kept, and why
    heard: bool = False
    echo: list[str] = field(default_factory=list)  # what was heard: her ticks, her words
    told: Told | None = None  # what was not kept, to be sent again
    status: int = 200
    opened: str = ""  # the part of the page that it was about


def page_of(opened: Opened, language: str, now: datetime) -> HerPage:
    """Return her page about a visit as things stand now."""
    assert opened.visit is not None
    book = facts.load([opened.client.pk], now)[opened.client.pk]
    return HerPage(opened.visit, book, language, now, versions.finder(book.studio))


def told_before(opened: Opened) -> list[Reply]:
    """Return the newest of what she told on her pages."""
    return list(Reply.objects.filter(client=opened.client).exclude(ticked={}).defer("raw").order_by("-pk")[:50])


def eyes(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    """Hear what she ticked and wrote under “How are your eyes?”."""
    assert opened.visit is not None
    told = Told.eyes(request, opened.visit.pk, language)
    if told.is_empty:
        problem = _("Nothing was sent: tick what you notice, or write it in your own words. Then press Send.")
        return Said(problem=problem, told=told, status=400, opened="eyes")
    return listen(opened, told, language, now, "eyes")


def listen(opened: Opened, told: Told, language: str, now: datetime, part: str) -> Said:
    """Have what she told put on a list, and answer at once what it tells of an eye; what is not kept is given back."""
    client = opened.client
    draft = Reply(studio=client.studio, client=client, ticked=told.ticked.to_keep(), text=told.words)
    found = triage.reading_of(draft)
    kind = triage.kind_for(draft, [client], found)
    page = page_of(opened, language, now)
    if too_many(opened, found, now):
        problem = _("Not kept: very much was sent from this page within the hour. Call the studio; do not wait for us.")
        answers = page.answers(kind, None, found.language)
        return Said(problem=problem, told=told.without_files(), status=429, kind=kind, answers=answers, opened=part)
    reply = receive(opened, told, now)
    if reply is None:
        problem = _("Not kept: the service could not write it down. Press Send again, or call the studio now.")
        answers = page.answers(kind, None, found.language)
        return Said(problem=problem, told=told.without_files(), status=503, kind=kind, answers=answers, opened=part)
    page = page_of(opened, language, now)  # the matter that it made holds her from now on
    answers = page.answers(kind, reply.flag, found.language)
    echo = [said for said in (in_words(told.ticked), told.words) if said]
    return Said(heard=True, kind=kind, answers=answers, lost=_lost(reply), opened=part, echo=echo)


def receive(opened: Opened, told: Told, now: datetime) -> Reply | None:
    """Store what she told, as a reply that came where she is reached, then read it; None where it was not stored.

    Where it cannot be read at once the engine reads it, as any other.
    """
    client = opened.client
    book = facts.load([client.pk], now)[client.pk]
    subject = f"{opened.purpose}{opened.visit.pk if opened.visit else client.pk}"
    try:
        reply = receiving.receive(
            lines_of(client.studio)[book.reach.channel or "sms"],
            book.reach.address,
            told.words,
            received_at=now,
            provider_ref=told.reference(subject),
            files=told.files,
            most_files=MOST_PHOTOS,
            client=client,
            ticked=told.ticked.to_keep(),
        )
    except DatabaseError:
        log.exception("what a client told on her page could not be stored")
        return None
    try:
        triage.read(reply.pk, now)
        upkeep.plan_clients([client.pk], now)
    except Exception:
        log.exception("reply %s waits to be read", reply.pk)
    tasks.nudge()
    reply.refresh_from_db()
    return reply


def too_many(opened: Opened, found: Reading, now: datetime) -> bool:
    """Whether her pages sent so much within the hour that what is no worse than all of it is not taken."""
    rows = Reply.objects.filter(client=opened.client, received_at__gt=now - timedelta(hours=1)).exclude(ticked={})
    urgencies = [row.get("urgency", "") for row in rows.values_list("reading", flat=True)]
    if len(urgencies) < MOST_AN_HOUR:
        return False
    worse = tuple(Urgency)[: tuple(Urgency).index(found.urgency) + 1]
    return any(urgency in worse for urgency in urgencies)


def _lost(reply: Reply) -> list[str]:
    """Say which photos were not kept, and why."""
    rows = Attachment.objects.filter(reply=reply, content=None).order_by("pk")
    return [f"{row.name or _('photo')}: {_why(row)}" for row in rows]


def _why(row: Attachment) -> str:
    if row.problem == TOO_MANY.format(most=MOST_PHOTOS):
        return _("only three photos can be kept at once. Send it by itself.")
    if row.size > LARGEST_FILE:
        return _("it is larger than 10 MB. Send a smaller one.")
    return _("it is not a photo that can be read. Take it anew, or tell it in words.")


def ask(request: HttpRequest, opened: Opened, asks: Asks, language: str, now: datetime) -> bool:
    """Have what she asks for by a button put on a list; return whether it was."""
    told = Told.asking(request, asks, opened.visit.pk if opened.visit else None, language)
    draft = Reply(studio=opened.client.studio, client=opened.client, ticked=told.ticked.to_keep(), text=told.words)
    return not too_many(opened, triage.reading_of(draft), now) and receive(opened, told, now) is not None
