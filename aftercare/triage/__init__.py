"""Triage: what is made of a reply.

It is read. Standard words and plain wishes to end are obeyed at once, what tells of an eye is answered at once, wishes
about bookings go to the front desk, and all else waits for her artist as a flag, the worst first.
"""

from __future__ import annotations

import dataclasses
import logging
from datetime import datetime
from typing import Any

from django.db import transaction

from aftercare import pictures
from aftercare.core import away, commands, reading, routing
from aftercare.core.commands import Command
from aftercare.core.reading import Reading, Topic, Urgency
from aftercare.core.routing import Route
from aftercare.core.ticks import Asks, Ticked, together
from aftercare.core.timing import Occasion
from aftercare.models import HELD_BY, Reply, Wish
from aftercare.triage import wishes
from aftercare.triage.answers import answer_at_once, kind_for
from aftercare.triage.whose import clients_of, last_told, open_matter, staff_of, words_of

__all__ = ["kind_for", "read", "read_waiting", "reading_of"]
log = logging.getLogger(__name__)

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
    clients = clients_of(reply, now)
    staff = staff_of(reply) if not clients else None
    reply.client = clients[0] if len(clients) == 1 else None
    reply.answers = last_told(reply)
    found = reading_of(reply)
    reply.reading = _kept(found)
    # On her page a word such as "stop" stands beside signs that she ticked: it is read, and obeyed, with them.
    command = None if reply.automatic or reply.ticked else commands.read(words_of(reply))
    reply.command = command or ""
    ended = not command and not reply.automatic and Topic.STOP in found.about
    obeyed = wishes.stop(reply, clients, found, now) if ended else wishes.obey(reply, command, clients, found, now)
    route = routing.beside(_route(reply, command, found, obeyed=obeyed), words_of(reply))
    if staff is not None and (command is Command.STOP or ended):
        wishes.tell_the_owners(reply, staff, now)
        route = Route(matter=found.urgency is not Urgency.NONE)
    sizes = list(reply.attachments.values_list("size", flat=True))
    unseen = any(size >= pictures.SMALLEST_PHOTO for size in sizes)
    # The front desk sees no picture, and nobody knows what is on it before her artist has looked.
    if unseen or (sizes and not reply.automatic):
        route = dataclasses.replace(route, matter=True)
    if route.rests:
        wishes.rest(reply, clients)
    if route.wish is not None:
        Wish.objects.create(studio_id=reply.studio_id, reply=reply, kind=route.wish, at=reply.received_at)
    if route.matter:
        reply.flag = open_matter(reply, clients, _urgency(reply, found, unseen=unseen), now)
        # The confirmation of a stop has the caution in it: only what an emergency calls for goes beside it.
        confirmed = ended and obeyed and found.urgency is not Urgency.EMERGENCY
        if not command and not reply.automatic and not confirmed:
            answer_at_once(reply, clients, found, now)
    reply.read_at = now
    reply.save(update_fields=["client", "answers", "command", "reading", "flag", "read_at"])
    return True


def reading_of(reply: Reply) -> Reading:
    """Read her words, together with what she ticked on her page. The reply need not be stored."""
    if not reply.ticked:
        return _read_words(reply)
    ticked = Ticked.kept(reply.ticked)
    only_photos = ticked.is_about_her_eyes and not ticked.ticks
    return together(ticked, _read_words(reply) if reply.text.strip() or only_photos else None)


def _read_words(reply: Reply) -> Reading:
    """Read it. What the reader trips over is not understood: a stop is obeyed and a person sees it all the same."""
    try:
        return reading.read(f"{words_of(reply)}\n\n{_quoted(reply)}" if reply.below else words_of(reply))
    except Exception:
        log.exception("the words of reply %s could not be read", reply.pk)
        return Reading(Urgency.NONE, (Topic.OTHER,), (), (), None, "und", unread=True, why=())


def _quoted(reply: Reply) -> str:
    """What stands under her words, marked as quoted: a bare "yes" has its meaning from the question there."""
    return "\n".join(f"> {line}" for line in reply.below.splitlines())


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


def _route(reply: Reply, command: Command | None, found: Reading, *, obeyed: bool) -> Route:
    """Where it goes. HELP may be a cry for it, CANCEL the visit, and a machine's words anything but an absence.

    What reads as thanks is at the end of the artist's list, and yet on it.
    """
    if reply.ticked:
        return _route_of_page(reply, found)
    if command is Command.STOP:
        may_cancel = commands.may_mean_the_visit(words_of(reply))
        return Route(matter=False, wish=routing.Wish.MAY_CANCEL if may_cancel else None)
    if command is Command.START:
        return Route(matter=not obeyed)
    if reply.automatic:
        return Route(matter=not _is_away(reply, found))
    if command is Command.HELP:
        return Route(matter=True)
    if _says_yes_to(reply, Occasion.PREPARE):
        return Route(matter=False, wish=routing.Wish.CONFIRMED)
    if _says_yes_to(reply, Occasion.OPT_IN):
        return Route(matter=False)
    return routing.of_words(found)


def _route_of_page(reply: Reply, found: Reading) -> Route:
    """Where it goes that she ticked or wrote on her page: a button has its one meaning, and words beside it theirs."""
    asks = Ticked.kept(reply.ticked).asks
    route = routing.of_words(found)
    if asks is None:
        return route
    is_matter = bool(reply.text.strip()) and route.matter
    return Route(matter=is_matter, wish=routing.Wish(asks), rests=asks is Asks.NOT_ME)


def _is_away(reply: Reply, found: Reading) -> bool:
    """Whether a machine says that she is away and no more: it stands in the conversation, and means nothing else."""
    ours = reply.answers.subject if reply.answers is not None else ""
    subject = reply.subject.replace(ours, "") if ours else reply.subject
    return away.says_only_that(subject, reply.text, found)


def _says_yes_to(reply: Reply, occasion: Occasion) -> bool:
    """Whether it is a bare yes to what we told her last, and that was about ``occasion``."""
    if reply.answers is None or reply.answers.occasion != occasion:
        return False
    words = words_of(reply).strip()
    return words in THUMBS or words.strip(".!👍 ").casefold() in YES


def _urgency(reply: Reply, found: Reading, *, unseen: bool) -> str:
    """How urgent a reply makes its matter. What was not understood is never less than that, nor is a photo."""
    urgent = found.urgency in HELD_BY
    not_understood = found.unread or unseen or reply.automatic or reply.command
    return UNREAD if not urgent and not_understood else str(found.urgency)
