"""A client's own page about a visit: the link is all; what she ticks or writes there is heard as a reply."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from functools import wraps
from typing import Any, Concatenate, ParamSpec, cast

from csp.constants import NONE, SELF
from csp.decorators import csp_replace
from django.conf import settings
from django.contrib.auth.decorators import login_not_required
from django.http import HttpRequest, HttpResponse, HttpResponseBase
from django.shortcuts import render
from django.utils import translation
from django.views.decorators.cache import never_cache
from django.views.decorators.csrf import csrf_exempt
from django.views.decorators.http import require_http_methods

from aftercare import calendars, choices, links
from aftercare.core import calendar_file, say
from aftercare.core.ticks import EMERGENCIES, OTHERS, Asks, Tick
from aftercare.forms.hers import LONGEST_WORDS, MOST_PHOTOS, Told, new_form
from aftercare.links import Opened, Purpose
from aftercare.pages.ticks import SIDES, SINCE, SUITS, TICKS
from aftercare.views.her_acts import hear
from aftercare.views.her_words import Said, page_of, told_before
from studio import clock

P = ParamSpec("P")

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
        said = hear(request, opened, language, now) if request.method == "POST" else Said()
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


def _show(request: HttpRequest, opened: Opened, token: str, language: str, said: Said, now: datetime) -> HttpResponse:
    page = page_of(opened, language, now)
    replies = told_before(opened)
    again = said.told if said.told and said.told.ticked.is_about_her_eyes else None
    to_move = said.told if said.told and not said.told.ticked.is_about_her_eyes else None
    context = {
        "page": page,
        "studio": page.studio,
        "visit": opened.visit,
        "token": token,
        "lang": language,
        "languages": settings.LANGUAGES,
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
        "hours": _chosen(page.hours, opened.client.wished_hours),
    }
    response = render(request, "aftercare/hers/visit.html", context, status=said.status)
    response["Content-Language"] = language  # else the middleware names that of the browser
    return response


def _offered(ticks: tuple[Tick, ...], again: Told | None) -> list[tuple[str, Any, bool]]:
    ticked = again.ticked.ticks if again else frozenset()
    return [(tick, TICKS[tick], tick in ticked) for tick in ticks]


def _chosen(words: Mapping[str, Any], one: object) -> list[tuple[str, Any, bool]]:
    return [(key, label, key == one) for key, label in words.items()]
