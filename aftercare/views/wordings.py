"""The owner's wordings: what is in force, since when and by whom; changing one with its preview, check and test."""

from __future__ import annotations

from django.contrib import messages
from django.http import Http404, HttpRequest, HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.views.decorators.http import require_safe

from aftercare import versions
from aftercare.core import worddiff
from aftercare.core.fields import BLOCKS
from aftercare.pages import shown
from aftercare.pages import wordings as listed
from aftercare.versions import Slot
from aftercare.wording import Words
from studio.access import StudioRequest, page

NOTHING_YET = Words("", "")


@require_safe
@page("owner")
def wordings(request: StudioRequest) -> HttpResponse:
    """List every wording in one language: what is in force since when, by whom, and what is missing."""
    own = versions.newest(request.studio)
    asked = request.GET.get("language", request.studio.language)
    language = asked if versions.is_language(asked) else request.studio.language
    occasion = request.GET.get("occasion", "")
    context = {
        "rows": listed.rows(request.studio, own, language, occasion),
        "language": language,
        "languages": listed.languages(request.studio, own, language),
        "further": listed.further_languages(),
        "occasions": shown.OCCASIONS,
        "occasion": occasion,
        "services": sorted(versions.ADDABLE["prepare"][0]),
        "addable": list(versions.ADDABLE),
        "steps": range(4),
    }
    return render(request, "aftercare/wordings.html", context)


@require_safe
@page("owner")
def wording_new(request: StudioRequest) -> HttpResponseBase:
    """Lead to the editor of a wording that has none of its own yet."""
    asked = {name: request.GET.get(name, "") for name in ("occasion", "kind", "step", "channel", "language")}
    variant = f"{asked['kind']}.{asked['step']}" if asked["kind"] else f"any.{asked['step']}".removesuffix(".0")
    slot = versions.slot_at(asked["occasion"], variant, asked["channel"], asked["language"])
    if slot is None:
        messages.error(request, _("No such message is ever sent for that service or step: choose another."))
        return redirect(f"{reverse('wordings')}?language={asked['language'][:8]}")
    return redirect(address_of(slot))


@require_safe
@page("owner")
def wording_versions(request: StudioRequest, occasion: str, variant: str, channel: str, language: str) -> HttpResponse:
    """Show the versions of a wording, how two of them differ, and who received which."""
    slot = slot_or_404(occasion, variant, channel, language)
    history = versions.history(request.studio, slot)
    before = slot.first() if slot.is_first else listed.words_in_its_place(slot, request.studio) or NOTHING_YET
    texts = {0: before, **{row.version: versions.in_force(slot, row) or before for row in history}}
    numbers = sorted(texts, reverse=True)
    later = _chosen(request, "later", numbers, numbers[0])
    earlier = _chosen(request, "earlier", numbers, max((one for one in numbers if one < later), default=0))
    context = {
        "slot": slot,
        "instead": listed.in_its_place(slot, request.studio),
        "what": shown.OCCASIONS.get(slot.occasion, slot.occasion),
        "history": history,
        "goes_within": slot.occasion in BLOCKS,
        "numbers": numbers,
        "earlier": earlier,
        "later": later,
        "subject": worddiff.compare(texts[earlier].subject, texts[later].subject),
        "changes": worddiff.compare(texts[earlier].body, texts[later].body),
        "received": listed.received(request.studio, slot, numbers),
    }
    return render(request, "aftercare/wording_versions.html", context)


def slot_or_404(occasion: str, variant: str, channel: str, language: str) -> Slot:
    """Return the slot that an address names."""
    slot = versions.slot_at(occasion, variant, channel, language)
    if slot is None:
        raise Http404
    return slot


def address_of(slot: Slot) -> str:
    """Return where a wording is edited."""
    return reverse("wording", args=[slot.occasion, slot.variant, slot.channel, slot.language])


def _chosen(request: HttpRequest, name: str, numbers: list[int], otherwise: int) -> int:
    given = request.GET.get(name, "")
    return int(given) if given.isascii() and given.isdigit() and int(given) in numbers else otherwise
