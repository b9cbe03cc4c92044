"""The head of the studio's letters: its logo, and an e-mail beneath it in light and dark."""

from __future__ import annotations

from csp.decorators import csp_update
from django.contrib import messages
from django.http import HttpResponseBase
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from aftercare import letterhead
from aftercare.forms.wordings import LogoForm
from aftercare.pages.wording import Draft, preview
from aftercare.versions import slot_of
from studio.access import StudioRequest, page


@csp_update({"style-src": letterhead.STYLE_HASHES})
@require_http_methods(["GET", "POST"])
@page("owner")
def letter_head(request: StudioRequest) -> HttpResponseBase:
    """Show how the letters look; put a logo above them, or the studio's name again."""
    if request.method == "POST" and "remove" in request.POST:
        letterhead.remove_logo(request.studio)
        messages.success(request, _("The logo is gone: the studio’s name stands above its e-mails again."))
        return redirect("letterhead")
    form = LogoForm(request.POST or None, request.FILES or None)
    if request.method == "POST" and form.writes(
        lambda clean: letterhead.save_logo(
            request.studio, clean["logo"].read(letterhead.LARGEST_UPLOAD + 1), by=request.staff, now=request.now
        )
    ):
        messages.success(request, _("Saved. It stands above every e-mail from now on."))
        return redirect("letterhead")
    slot = slot_of("care", "fill", 0, "email", request.studio.language)
    first = slot.first() if slot else None
    shown = (
        preview(request.studio, slot, Draft(first.subject, first.body), None, request.now) if slot and first else None
    )
    context = {"form": form, "head": letterhead.of(request.studio), "preview": shown}
    return render(request, "aftercare/letterhead.html", context)
