"""A client's own page about a visit: the link is all; what she ticks or writes there is heard as a reply."""

from __future__ import annotations

import logging
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import wraps
from typing import Any, Concatenate, ParamSpec, cast

from csp.constants import NONE, SELF
from csp.decorators import csp_replace
from django.contrib.auth.decorators import login_not_required
from django.core.exceptions import ValidationError
from django.db import DatabaseError
from django.http import HttpRequest, HttpResponse, HttpResponseBase
from django.shortcuts import render
from django.utils import translation
from django.utils.translation import gettext as _
from django.views.decorators.cache import never_cache
from django.views.decorators.csrf import csrf_exempt
from django.views.decorators.http import require_http_methods

from aftercare import calendars, choices, facts, links, receiving, tasks, triage, upkeep, versions
from aftercare.core import calendar_file, say
from aftercare.core.reading import Reading, Urgency
from aftercare.core.ticks import EMERGENCIES, OTHERS, Asks, Tick
from aftercare.forms.hers import LONGEST_WORDS, MOST_PHOTOS, Told, new_form
from aftercare.lines import lines_of
from aftercare.links import Opened, Purpose
from aftercare.models import Attachment, Reply
from aftercare.pages.hers import HerPage
from aftercare.pages.ticks import SIDES, SINCE, SUITS, TICKS, in_words
from aftercare.pictures import LARGEST_FILE
from aftercare.receiving import TOO_MANY
from studio import clock

log = logging.getLogger(__name__)
P = ParamSpec("P")

MOST_AN_HOUR = 30  # tellings from one client's pages; a worse one than those is heard all the same
POLICY = {
    "default-src": [NONE],
    "script-src": [NONE],
    "font-src": [NONE],
    "manifest-src": [NONE],
    "style-src": [SELF],
    "img-src": [SELF],
    "form-action": [SELF],
    "base-uri": [NONE],
    "frame-ancestors": [NONE],
}


def private(
    view: Callable[Concatenate[HttpRequest, P], HttpResponse],
) -> Callable[Concatenate[HttpRequest, P], HttpResponseBase]:
    """Make a page hers alone: no sign-in, no cookie, kept nowhere, named to nobody, running nothing.

    Whoever has the link can post to it and nobody else can, so there is nothing for a token against forged requests to
    protect; and a page that names itself to nobody sends no origin to compare either.
    """

    @wraps(view)
    def shown(request: HttpRequest, /, *args: P.args, **kwargs: P.kwargs) -> HttpResponseBase:
        response = view(request, *args, **kwargs)
        response["Referrer-Policy"] = "no-referrer"
        response["X-Robots-Tag"] = "noindex, nofollow, noarchive"
        return response

    guarded = csrf_exempt(never_cache(login_not_required(csp_replace(POLICY)(shown))))
    return cast(Callable[Concatenate[HttpRequest, P], HttpResponseBase], guarded)


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


@private
@require_http_methods(["GET", "HEAD", "POST"])
def her_visit(request: HttpRequest, token: str) -> HttpResponse:
    """Show her page; what is posted is heard first, and answered on the page at once. GET changes nothing."""
    opened = links.opened(Purpose.VISIT, token)
    if opened is None:
        return gone(request)
    now = clock.now()
    language = spoken(request, opened)
    with translation.override(language):
        said = _hear(request, opened, language, now) if request.method == "POST" else Said()
        if links.opened(Purpose.VISIT, token) is None:  # she ended her links with this very page
            return render(request, "aftercare/hers/ended.html", {"studio": opened.client.studio, "lang": language})
        return _show(request, opened, token, language, said, now)


@private
@require_http_methods(["GET", "HEAD"])
def her_calendar(request: HttpRequest, token: str) -> HttpResponse:
    """Give the visit as an entry for her calendar; a calendar that asks again learns that it has moved."""
    opened = links.opened(Purpose.VISIT, token)
    if opened is None or opened.visit is None:
        return gone(request)
    body = calendars.of_visit(opened.visit, clock.now(), spoken(request, opened))
    response = HttpResponse(body, content_type=calendar_file.MEDIA_TYPE)
    response["Content-Disposition"] = f'attachment; filename="{calendar_file.FILE_NAME}"'
    return response


def gone(request: HttpRequest) -> HttpResponse:
    """Say that a link opens nothing, and what to do; nothing of any studio."""
    return render(request, "aftercare/hers/gone.html", status=404)


def spoken(request: HttpRequest, opened: Opened) -> str:
    """Return the language of the page: the one she switched to, else hers, else the studio's."""
    asked = request.POST.get("lang") or request.GET.get("lang", "")
    if asked in say.LANGUAGES:
        return asked
    return say.language_of(opened.client.language, opened.client.studio.language)


def _page(opened: Opened, language: str, now: datetime) -> HerPage:
    assert opened.visit is not None
    book = facts.load([opened.client.pk], now)[opened.client.pk]
    return HerPage(opened.visit, book, language, now, versions.finder(book.studio))


def _show(request: HttpRequest, opened: Opened, token: str, language: str, said: Said, now: datetime) -> HttpResponse:
    page = _page(opened, language, now)
    replies = _told(opened)
    again = said.told if said.told and said.told.ticked.is_about_her_eyes else None
    to_move = said.told if said.told and not said.told.ticked.is_about_her_eyes else None
    context = {
        "page": page,
        "studio": page.studio,
        "client": opened.client,
        "visit": opened.visit,
        "token": token,
        "lang": language,
        "languages": [("en", "English"), ("es", "Español")],
        "said": said,
        "form": new_form(),
        "emergencies": _offered(EMERGENCIES, again),
        "others": _offered(OTHERS, again),
        "nothing": _offered((Tick.NOTHING,), again),
        "sides": _chosen(SIDES, again and again.ticked.side),
        "since": _chosen(SINCE, again and again.ticked.since),
        "words": again.words if again else "",
        "lenses": again.ticked.lenses if again else bool(opened.client.wears_lenses),
        "longest": LONGEST_WORDS,
        "most_photos": MOST_PHOTOS,
        "suits": [(key, label, bool(to_move and key in to_move.ticked.suits)) for key, label in SUITS.items()],
        "move_words": to_move.words if to_move else "",
        "confirmed": page.has_asked(Asks.CONFIRM, replies),
        "moving": page.has_asked(Asks.MOVE, replies),
        "channels": choices.channels(opened.client),
        "channel": page.book.reach.channel,
    }
    response = render(request, "aftercare/hers/visit.html", context, status=said.status)
    response["Content-Language"] = language  # else the middleware names that of the browser
    return response


def _told(opened: Opened) -> list[Reply]:
    """Return the newest of what she told on her pages."""
    return list(Reply.objects.filter(client=opened.client).exclude(ticked={}).defer("raw").order_by("-pk")[:50])


def _offered(ticks: tuple[Tick, ...], again: Told | None) -> list[tuple[str, Any, bool]]:
    ticked = again.ticked.ticks if again else frozenset()
    return [(tick, TICKS[tick], tick in ticked) for tick in ticks]


def _chosen(words: Mapping[str, Any], one: object) -> list[tuple[str, Any, bool]]:
    return [(key, label, key == one) for key, label in words.items()]


# What she sends


def _hear(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    acts: dict[str, Callable[[HttpRequest, Opened, str, datetime], Said]] = {
        "eyes": _eyes,
        "confirm": _confirm,
        "move": _move,
        "channel": _channel,
        "language": _language,
        "stop": _stop,
        "record": _record,
        "end": _end,
        "not_me": _not_me,
    }
    act = acts.get(request.POST.get("do", ""))
    if act is None:
        return Said(problem=_("That button is not on this page any more. Look below, and press it again."), status=400)
    return act(request, opened, language, now)


def _eyes(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    assert opened.visit is not None
    told = Told.eyes(request, opened.visit.pk, language)
    if told.is_empty:
        problem = _("Nothing was sent: tick what you notice, or write it in your own words. Then press Send.")
        return Said(problem=problem, told=told, status=400, opened="eyes")
    return _listen(opened, told, language, now, "eyes")


def _listen(opened: Opened, told: Told, language: str, now: datetime, part: str) -> Said:
    """Have what she told put on a list, and answer at once what it tells of an eye; what is not kept is given back."""
    client = opened.client
    draft = Reply(studio=client.studio, client=client, ticked=told.ticked.to_keep(), text=told.words)
    found = triage.reading_of(draft)
    kind = triage.kind_for(draft, [client], found)
    page = _page(opened, language, now)
    if too_many(opened, found, now):
        problem = _("Not kept: very much was sent from this page within the hour. Call the studio; do not wait for us.")
        answers = page.answers(kind, None, found.language)
        return Said(problem=problem, told=told.without_files(), status=429, kind=kind, answers=answers, opened=part)
    reply = receive(opened, told, now)
    if reply is None:
        problem = _("Not kept: the service could not write it down. Press Send again, or call the studio now.")
        answers = page.answers(kind, None, found.language)
        return Said(problem=problem, told=told.without_files(), status=503, kind=kind, answers=answers, opened=part)
    page = _page(opened, language, now)  # the matter that it made holds her from now on
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


def _confirm(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    if not _page(opened, language, now).is_ahead:
        return Said(problem=_over(), status=400, opened="visit")
    if not _page(opened, language, now).has_asked(Asks.CONFIRM, _told(opened)) and not ask(
        request, opened, Asks.CONFIRM, language, now
    ):
        return _not_kept("visit")
    return Said(text=_("Thank you: the studio knows that you come."), opened="visit")


def _move(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    """Put it on the front desk's list; an eye that she tells of beside it is answered as anywhere on the page."""
    assert opened.visit is not None
    told = Told.asking(request, Asks.MOVE, opened.visit.pk, language)
    if not _page(opened, language, now).is_ahead:
        if not told.words:
            return Said(problem=_over(), status=400, opened="visit")
        said = _listen(opened, told.in_words_alone(), language, now, "visit")
        said.problem = said.problem or _over()
        return said
    said = _listen(opened, told, language, now, "visit")
    if said.heard:
        said.heard = bool(said.answers)
        said.text = _(
            "The studio has it and finds another day with you. Until you hear from them, the visit stays as it is."
        )
    return said


def _over() -> str:
    return _("This visit is not ahead any more. Call the studio for a new one.")


def _not_kept(opened: str) -> Said:
    return Said(problem=_("That could not be written down now. Call the studio."), status=503, opened=opened)


def _channel(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    channel = request.POST.get("channel", "")
    shown = _("Messages about my visits by text") if channel == "sms" else _("Messages about my visits by e-mail")
    return _choose(opened, lambda: choices.choose_channel(opened.client, channel, words_shown=shown, now=now), now)


def _language(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    wanted = request.POST.get("language", "")
    return _choose(opened, lambda: choices.choose_language(opened.client, wanted, now=now), now)


def _choose(opened: Opened, choose: Callable[[], object], now: datetime) -> Said:
    try:
        choose()
    except ValidationError as error:
        return Said(problem=" ".join(error.messages), status=400, opened="messages")
    opened.client.refresh_from_db()
    upkeep.plan_clients([opened.client.pk], now)
    return Said(text=_("Changed. It holds from the next message on."), opened="messages")


def _stop(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    if not choices.stop_everything(opened.client, now=now):
        return Said(text=_("There is no number or address of yours here: nothing goes to you."), opened="messages")
    upkeep.plan_clients([opened.client.pk], now)
    text = _(
        "Stopped: no more texts or e-mails about visits, aftercare or reminders. This page stays. If an eye hurts or "
        "swells, call the studio or see a doctor; do not wait for a message."
    )
    return Said(text=text, opened="messages")


def _record(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    channel = choices.send_record(opened.client, now=now)
    tasks.nudge()
    if channel == "sms":
        return Said(text=_("On its way, by text to your own number."), opened="messages")
    if channel == "email":
        return Said(text=_("On its way, by e-mail to your own address."), opened="messages")
    problem = _("There is no way to write to you. Ask the studio, and they show it to you.")
    return Said(problem=problem, opened="messages")


def _end(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    choices.end_links(opened.client, now=now)
    return Said()


def _not_me(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    """Somebody else got the link: the number rests, the links end, and the front desk asks for the right one."""
    if not ask(request, opened, Asks.NOT_ME, language, now):
        return _not_kept("messages")
    return Said(text=_("Thank you: the studio is told, and nothing more goes there."), opened="messages")
