"""The owner's wordings: what is in force, since when and by whom; changing one with its preview and its check."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import Http404, HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from aftercare import versions
from aftercare.core import segments
from aftercare.core.fields import FIELDS, Facts
from aftercare.core.timing import Occasion
from aftercare.core.wordcheck import Problem, blocks_saving
from aftercare.forms.wordings import WordingForm
from aftercare.models import Wording
from aftercare.pages import shown
from aftercare.versions import Slot
from aftercare.views.errors import tell
from aftercare.wording import WordingError, Words, compose, longest, problems
from studio.access import StudioRequest, page
from studio.models import Studio
from studio.models.people import LANGUAGES

ORDER = {str(occasion): place for place, occasion in enumerate(Occasion)}
NOTHING_YET = Words("", "")


@dataclass(frozen=True, slots=True)
class Row:
    """One text of the list, by each channel that it has: its slot and the owner's newest version."""

    occasion: str
    kind: str
    step: int
    sms: tuple[Slot, Wording | None] | None
    email: tuple[Slot, Wording | None] | None


@dataclass(frozen=True, slots=True)
class Preview:
    """A wording as it arrives at its longest, and what it costs as an SMS."""

    words: Words
    measure: segments.Measure | None


@page("owner")
def wordings(request: StudioRequest) -> HttpResponse:
    """List every wording in one language: what is in force since when, by whom."""
    language = _language(request)
    own = versions.newest(request.studio)
    texts: dict[tuple[str, str, int], dict[str, tuple[Slot, Wording | None]]] = {}
    for slot in versions.slots():
        if slot.language == language:
            texts.setdefault((slot.occasion, slot.kind, slot.step), {})[slot.channel] = (slot, own.get(slot))
    rows = sorted(texts.items(), key=lambda text: (ORDER.get(text[0][0], len(ORDER)), text[0]))
    context = {
        "rows": [Row(occasion, kind, step, by.get("sms"), by.get("email")) for (occasion, kind, step), by in rows],
        "language": language,
        "languages": LANGUAGES,
        "occasions": shown.OCCASIONS,
    }
    return render(request, "aftercare/wordings.html", context)


@require_http_methods(["GET", "POST"])
@page("owner")
def wording(request: StudioRequest, occasion: str, variant: str, channel: str, language: str) -> HttpResponseBase:
    """Show one wording with its preview and check; save a new version, or put an earlier one back."""
    slot = versions.slot_at(occasion, variant, channel, language)
    if slot is None:
        raise Http404
    history = versions.history(request.studio, slot)
    if request.method == "POST" and "restore" in request.POST:
        return _restore(request, slot, history)
    words = _in_force(slot, history)
    initial = {"subject": words.subject, "body": words.body, "seen": history[0].version if history else 0}
    form = WordingForm(request.POST or None, channel=channel, initial=initial)
    found: tuple[Problem, ...] = ()
    if request.method == "POST" and form.is_valid():
        words = Words(form.cleaned_data.get("subject", ""), form.cleaned_data["body"])
        found = _problems(slot, words)
        if "save" in request.POST and not blocks_saving(found) and _save(request, slot, form, words):
            return redirect(request.path)
    return render(
        request,
        "aftercare/wording.html",
        {
            "slot": slot,
            "what": shown.OCCASIONS.get(slot.occasion, slot.occasion),
            "form": form,
            "history": history,
            "preview": _preview(request.studio, slot, words) if not blocks_saving(found) else None,
            "problems": found,
            "blocked": blocks_saving(found),
            "fields": [(name, field) for name, field in FIELDS.items() if field.serves(slot.occasion)],
        },
    )


def _language(request: StudioRequest) -> str:
    asked = request.GET.get("language", request.studio.language)
    return asked if asked in dict(LANGUAGES) else request.studio.language


def _in_force(slot: Slot, history: list[Wording]) -> Words:
    own = history[0] if history and not slot.is_fixed else None
    return Words(own.subject, own.body) if own and own.body else slot.first()


def _problems(slot: Slot, words: Words) -> tuple[Problem, ...]:
    return problems(slot.occasion, slot.kind, slot.step, slot.channel, slot.language, words)


def _save(request: StudioRequest, slot: Slot, form: WordingForm, words: Words) -> bool:
    saved = form.writes(
        lambda clean: versions.save(request.studio, slot, words, by=request.staff, now=request.now, seen=clean["seen"])
    )
    if saved:
        messages.success(request, _("Saved. It is in force for every message that has not left yet."))
    return saved


def _restore(request: StudioRequest, slot: Slot, history: list[Wording]) -> HttpResponseBase:
    """Make an earlier version, or the first wording, the newest one; versions are checked as of today."""
    wanted = request.POST["restore"]
    row = next((row for row in history if str(row.version) == wanted), None)
    words = Words(row.subject, row.body) if row else NOTHING_YET
    if row is None and wanted != "first":
        raise Http404
    if words.body and blocks_saving(_problems(slot, words)):
        messages.error(
            request,
            _("That version does not stand up to today’s check: copy it into the text above, mend it and save it."),
        )
        return redirect(request.path)
    try:
        seen = history[0].version if history else 0
        versions.save(request.studio, slot, words, by=request.staff, now=request.now, seen=seen)
    except ValidationError as error:
        tell(request, error)
    else:
        messages.success(request, _("Put back. It is in force for every message that has not left yet."))
    return redirect(request.path)


def _preview(studio: Studio, slot: Slot, words: Words) -> Preview | None:
    """Fill it in with the longest names there are, in this studio's own name; None where it cannot be."""
    try:
        every = longest(slot.occasion, slot.kind, slot.step, slot.channel, slot.language, words)
        filled = [compose(words, facts) for facts in _of_studio(studio, every)]
    except WordingError:
        return None
    if slot.channel != "sms":
        return Preview(max(filled, key=lambda one: len(one.body)), None)
    costs = [(segments.measure(one.body), one) for one in filled]
    measure, dearest = max(costs, key=lambda cost: (cost[0].segments, cost[0].units))
    return Preview(dearest, measure)


def _of_studio(studio: Studio, every: Iterable[Facts]) -> Iterable[Facts]:
    for facts in every:
        yield replace(facts, studio=studio.name, studio_phone=studio.phone or facts.studio_phone)
