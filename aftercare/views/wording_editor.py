"""The editor of a wording: its preview and check, saving a version, putting one back, trying it out on oneself."""

from __future__ import annotations

import secrets

from csp.decorators import csp_update
from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import Http404, HttpRequest, HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.template.loader import render_to_string
from django.utils.translation import gettext as _
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_http_methods, require_POST

from aftercare import letterhead, tasks, trials, versions
from aftercare.core import segments
from aftercare.core.fields import FIELDS
from aftercare.core.wordcheck import blocks_saving
from aftercare.forms.wordings import NOBODY_REAL, WhoForm, WordingForm
from aftercare.models import Wording
from aftercare.pages import recipients, shown
from aftercare.pages import wordings as listed
from aftercare.pages.puts import LABELS, OFTEN
from aftercare.pages.wording import Draft, Preview, check, composed, preview
from aftercare.versions import NOBODY, Seen, Slot
from aftercare.views.errors import tell
from aftercare.views.wordings import address_of, slot_or_404
from aftercare.wording import WordingError, Words
from studio import access
from studio.access import StudioRequest, page
from studio.models import Client

# A letter in its frame brings its own style, and the page asks for previews as she types.
SHOWS_LETTERS = csp_update({"style-src": letterhead.STYLE_HASHES, "connect-src": ["'self'"]})
ASKS = ("first", "visit_ahead", "nothing_open")  # what an if may ask, for an example where it is offered


@SHOWS_LETTERS  # type: ignore[arg-type]  # its type knows only views without arguments
@never_cache
@require_http_methods(["GET", "POST"])
@page("owner")
def wording(request: StudioRequest, occasion: str, variant: str, channel: str, language: str) -> HttpResponseBase:
    """Show one wording with its preview and check; save a new version, put an earlier one back, or try it out."""
    slot = slot_or_404(occasion, variant, channel, language)
    history = versions.history(request.studio, slot)
    if request.method == "POST" and "restore" in request.POST:
        return _restore(request, slot, history)
    form = WordingForm(request.POST or None, slot=slot, initial=_initial(slot, history))
    draft = _draft_in_force(slot, history)
    if request.method == "POST":
        if not form.is_valid():
            return _editor(request, slot, history, form, None)
        draft = form.draft
        if "cheaper" in request.POST:
            form = _respelled(request, slot, draft)
            draft = form.draft
        elif "save" in request.POST and _save(request, slot, form, draft):
            client = _client(request, slot)
            return redirect(f"{address_of(slot)}?who={client.pk}" if client else address_of(slot))
        elif "test" in request.POST:
            _test(request, slot, form, draft)
            form = _retyped(request, slot, token=secrets.token_hex(12))
    return _editor(request, slot, history, form, draft)


@SHOWS_LETTERS  # type: ignore[arg-type]  # its type knows only views without arguments
@never_cache
@require_POST
@page("owner")
def wording_preview(request: StudioRequest, occasion: str, variant: str, channel: str, language: str) -> HttpResponse:
    """Show a draft as it would arrive, as she types. Saves nothing."""
    slot = slot_or_404(occasion, variant, channel, language)
    form = WordingForm(request.POST, slot=slot)
    client = _client(request, slot)
    seen = _look(request, slot, form.draft, client) if form.is_valid() else Preview(())
    shown = {"slot": slot, "preview": seen, "typing": True}
    return render(
        request,
        "aftercare/wording_preview.html",
        {**shown, "shown_for": client, "who": recipients.may_be_shown_for(slot)},
    )


def _editor(
    request: StudioRequest, slot: Slot, history: list[Wording], form: WordingForm, draft: Draft | None
) -> HttpResponse:
    people = recipients.clients(request.studio, _asked(request, "find"), request.now)
    client, in_force = _client(request, slot), _draft_in_force(slot, history)
    seen = _look(request, slot, draft, client) if draft is not None else Preview(())
    who = _who_form(request, people)
    reader = client or (people[0] if people and recipients.may_be_shown_for(slot) else None)
    return render(
        request,
        "aftercare/wording.html",
        {
            "slot": slot,
            "what": shown.OCCASIONS.get(slot.occasion, slot.occasion),
            "form": form,
            "who": who if recipients.may_be_shown_for(slot) else None,
            "history": history,
            "preview": seen,
            "shown_for": client,
            "reads": None if slot.is_caution else _reads(request, slot, in_force, reader),
            "reads_for": reader,
            "labels": LABELS,
            "often": OFTEN,
            "instead": listed.in_its_place(slot, request.studio),
            "unsaved": draft != in_force,
            "refused": "save" in request.POST and seen.blocked,
            "first": slot.first() if slot.is_caution else None,
            "own_address": trials.address_of(request.staff, slot.channel),
            "newest_test": trials.newest(request.staff),
            "states": shown.STATES,
            "asks": next((name for name in ASKS if FIELDS[name].serves(slot.occasion)), ""),
            "stands_in": not slot.is_first and not (history and (history[0].body or history[0].added)),
        },
    )


def _look(request: StudioRequest, slot: Slot, draft: Draft, client: Client | None) -> Preview:
    return preview(request.studio, slot, draft, client, request.now)


def _reads(request: StudioRequest, slot: Slot, draft: Draft, reader: Client | None) -> Words | None:
    """Return what goes today, in words for one client; None where it cannot be filled in for her."""
    try:
        return composed(request.studio, slot, draft, reader, request.now)
    except WordingError:
        return None


def _asked(request: HttpRequest, name: str) -> str:
    given = request.POST if request.method == "POST" else request.GET
    return given.get(name, "").strip()[:80]


def _client(request: StudioRequest, slot: Slot) -> Client | None:
    """Return for whom it is shown: whom she chose, or the first whose name she asked for."""
    if not recipients.may_be_shown_for(slot):
        return None
    chosen, asked = _asked(request, "who"), _asked(request, "find")
    people = recipients.clients(request.studio, asked, request.now) if asked else []
    if people and chosen not in {str(one.pk) for one in people}:
        return people[0]
    return access.clients(request).filter(pk=int(chosen)).first() if chosen.isascii() and chosen.isdigit() else None


def _who_form(request: StudioRequest, people: list[Client]) -> WhoForm:
    chosen, asked = _asked(request, "who"), _asked(request, "find")
    ids = [str(one.pk) for one in people]
    if asked and people and chosen not in ids:
        chosen = ids[0]
    elif chosen.isascii() and chosen.isdigit() and chosen not in ids:
        people = [*access.clients(request).filter(pk=int(chosen)), *people]
    choices = [(str(one.pk), one.name) for one in people]
    return WhoForm(people=choices, initial={"find": asked, "who": chosen or NOBODY_REAL})


def _draft_in_force(slot: Slot, history: list[Wording]) -> Draft:
    """Return what the editor begins with; for a wording that is to be, what goes in its place today."""
    own = history[0] if history and not slot.is_fixed else None
    if own is not None and (own.body or own.added):
        return Draft(own.subject, own.body, own.added)
    first = slot.first()
    return Draft("", "") if slot.is_caution else Draft(first.subject, first.body)


def _initial(slot: Slot, history: list[Wording]) -> dict[str, object]:
    draft = _draft_in_force(slot, history)
    newest = history[0] if history else None
    kept = newest is not None and bool(newest.seen_by)
    return {
        "subject": draft.subject,
        "body": draft.body or (slot.first().body if slot.is_caution else ""),
        "added": draft.added,
        "seen_by": newest.seen_by if newest and kept else "",
        "seen_on": newest.seen_on if newest and kept else None,
        "seen": newest.version if newest else 0,
        "token": secrets.token_hex(12),
    }


def _respelled(request: StudioRequest, slot: Slot, draft: Draft) -> WordingForm:
    """Return the form with the cheapest spelling in place of what was typed."""
    name = "added" if slot.is_caution and not draft.body else "body"
    return _retyped(request, slot, **{name: segments.plainest(getattr(draft, name))})


def _retyped(request: StudioRequest, slot: Slot, **changed: str) -> WordingForm:
    """Return the form as it was sent, but for what is changed in it."""
    given = request.POST.copy()
    for name, value in changed.items():
        given[name] = value
    form = WordingForm(given, slot=slot)
    form.is_valid()
    return form


def _save(request: StudioRequest, slot: Slot, form: WordingForm, draft: Draft) -> bool:
    if blocks_saving(check(slot, draft, versions.finder(request.studio))):
        return False
    saved = form.writes(lambda clean: _write(request, slot, draft, clean["seen"], form.professional))
    if saved:
        messages.success(request, _("Saved. It is in force for every message that has not left yet."))
    return saved


def _write(request: StudioRequest, slot: Slot, draft: Draft, seen: int, professional: Seen) -> Wording:
    return versions.save(
        request.studio,
        slot,
        Words(draft.subject, draft.body),
        by=request.staff,
        now=request.now,
        seen=seen,
        addition=draft.added,
        professional=professional,
    )


def _test(request: StudioRequest, slot: Slot, form: WordingForm, draft: Draft) -> None:
    """Send the draft to her own phone or address; what she typed stays in the editor."""
    if blocks_saving(check(slot, draft, versions.finder(request.studio))):
        messages.error(request, _("The test was not sent: mend the text first."))
        return
    try:
        words = composed(request.studio, slot, draft, _client(request, slot), request.now)
        trials.send(words, slot.channel, to=request.staff, token=form.cleaned_data["token"], now=request.now)
    except ValidationError as error:
        tell(request, error)
        return
    except WordingError as error:
        messages.error(request, str(error))
        return
    tasks.nudge()
    if request.studio.in_rehearsal:
        messages.success(request, _("Your test goes to the pretend phone, as the studio is in rehearsal."))
    else:
        messages.success(request, _("Your test is on its way to you."))


def _restore(request: StudioRequest, slot: Slot, history: list[Wording]) -> HttpResponseBase:
    """Make an earlier version, or the first wording, the newest one; versions are checked as of today."""
    wanted = request.POST["restore"]
    row = next((row for row in history if str(row.version) == wanted), None)
    if row is None and wanted != "first":
        raise Http404
    draft = Draft(row.subject, row.body, row.added) if row else Draft("", "")
    empty = not (draft.body or draft.added)
    if not empty and blocks_saving(check(slot, draft, versions.finder(request.studio))):
        messages.error(
            request,
            _("That version does not stand up to today’s check: copy it into the text above, mend it and save it."),
        )
        return redirect(address_of(slot))
    professional = Seen(row.seen_by, row.seen_on) if row and row.seen_by else NOBODY
    try:
        _write(request, slot, draft, history[0].version if history else 0, professional)
    except ValidationError as error:
        tell(request, error)
    else:
        messages.success(request, _put_back(request, slot, ends=empty))
    return redirect(address_of(slot))


def _put_back(request: StudioRequest, slot: Slot, *, ends: bool) -> str:
    """Say what is in force now; of a wording that was added and ended, what goes in its place."""
    instead = listed.in_its_place(slot, request.studio) if ends else None
    if instead is None:
        return _("Put back. It is in force for every message that has not left yet.")
    words = render_to_string("aftercare/in_its_place.html", {"slot": slot, "instead": instead})
    return _("Ended. From now on this gets %(words)s.") % {"words": words}
