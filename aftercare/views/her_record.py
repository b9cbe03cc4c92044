"""What is kept about a client, for her alone: to read, to take along, and to have forgotten."""

from __future__ import annotations

from django.conf import settings
from django.http import Http404, HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.utils import timezone, translation
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from aftercare import links, versions
from aftercare.core.ticks import Asks
from aftercare.links import Opened, Purpose
from aftercare.models import Attachment, Wish
from aftercare.pages import kept
from aftercare.pages.hers import emergency
from aftercare.views.her_words import Said, ask
from aftercare.views.hers import gone, private, spoken
from studio import clock
from studio.models import Client


@private
@require_http_methods(["GET", "HEAD", "POST"])
def her_record(request: HttpRequest, token: str) -> HttpResponse:
    """Show all of it. GET changes nothing; POST asks to be forgotten, which a person then does."""
    opened = links.opened(Purpose.DATA, token)
    if opened is None:
        return gone(request)
    language = spoken(request, opened)
    client = opened.client
    with translation.override(language), timezone.override(client.studio.zone):
        said = Said()
        if request.method == "POST" and request.POST.get("do") == "forget":
            said = _forget(request, opened, language)
        context = {
            "studio": client.studio,
            "sections": kept.kept(client),
            "token": token,
            "lang": language,
            "languages": settings.LANGUAGES,
            "said": said,
            "emergency": emergency(client, language, versions.finder(client.studio)),
            "asked": _has_asked(client),
        }
        response = render(request, "aftercare/hers/record.html", context, status=said.status)
        response["Content-Language"] = language
        return response


def _has_asked(client: Client) -> bool:
    return Wish.objects.filter(reply__client=client, kind=Wish.Kind.FORGET, seen_to_at=None).exists()


def _forget(request: HttpRequest, opened: Opened, language: str) -> Said:
    if not _has_asked(opened.client) and not ask(request, opened, Asks.FORGET, language, clock.now()):
        return Said(problem=_("That could not be written down now. Call the studio."), status=503)
    return Said(text=_("The studio’s owner has it and does it by hand. Until then all stays as it is."))


@private
@require_http_methods(["GET", "HEAD"])
def her_record_file(request: HttpRequest, token: str, kind: str) -> HttpResponse:
    """Give all of it as a file: for a machine, or to be read anywhere."""
    opened = links.opened(Purpose.DATA, token)
    if opened is None:
        return gone(request)
    client, now = opened.client, clock.now()
    with translation.override(spoken(request, opened)), timezone.override(client.studio.zone):
        sections = kept.kept(client)
        if kind == "json":
            body, media = kept.as_json(client, sections, now), "application/json"
        else:
            body, media = kept.as_text(client, sections, now), "text/plain; charset=utf-8"
    response = HttpResponse(body, content_type=media)
    response["Content-Disposition"] = f'attachment; filename="kept-about-me.{kind}"'
    return response


@private
@require_http_methods(["GET", "HEAD"])
def her_photo(request: HttpRequest, token: str, attachment_id: int) -> HttpResponse:
    """Give one of her own photos."""
    opened = links.opened(Purpose.DATA, token)
    if opened is None:
        return gone(request)
    row = get_object_or_404(Attachment, pk=attachment_id, reply__client=opened.client)
    if row.content is None:
        raise Http404
    return HttpResponse(bytes(row.content), content_type=row.kind)
