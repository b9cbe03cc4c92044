"""What a client answered before her visits, for those who treat her; and the owner's own form of the questions."""

from __future__ import annotations

from itertools import zip_longest

from django.contrib import messages
from django.http import HttpResponseBase
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from aftercare import consulting, links, upkeep
from aftercare.core.consultation import CAN_BE_OFF
from aftercare.forms.consultation import ALWAYS, ASKED, QuestionsForm
from aftercare.links import Purpose
from aftercare.pages import consultation as pages
from studio import records
from studio.access import StudioRequest, client_or_404, health_or_403, page
from studio.models import Visit
from studio.models.people import LANGUAGES


@require_safe
@page("artist")
def client_answers(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Show what she answered last, what of it a professional should look at, what changed, and each time before."""
    client = client_or_404(request, client_id)
    health_or_403(request, client)
    rows = list(client.consultations.select_related("visit").order_by("-at", "-pk"))
    kept = [row for row in rows if row.is_kept]
    newest, before = (*kept, None, None)[:2]
    ahead = client.visits.filter(status=Visit.Status.BOOKED, starts_at__gt=request.now).order_by("starts_at")
    return render(
        request,
        "aftercare/answers.html",
        {
            "client": client,
            "newest": newest,
            "told": pages.told(newest, before) if newest else [],
            "before": before,
            "times": [(row, pages.told(row, earlier)) for row, earlier in zip_longest(kept[1:], kept[2:])],
            "rows": rows,
            "last": rows[0] if rows else None,
            "asked_for": [
                (visit, links.address(Purpose.CONSULTATION, visit))
                for visit in ahead
                if consulting.is_asked_for(visit, request.now)
            ][:3],
        },
    )


@require_POST
@page("artist")
def client_sensitive(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Mark her as sensitive: a person has read her answers and decides; the software never does."""
    client = client_or_404(request, client_id)
    health_or_403(request, client)
    records.save_client(studio=request.studio, client=client, by=request.staff, now=request.now, sensitive=True)
    upkeep.plan_clients([client.pk], request.now)
    messages.success(request, _("She is marked as sensitive. Her card takes it back."))
    return redirect("client_answers", client.pk)


@require_http_methods(["GET", "POST"])
@page("owner")
def questions(request: StudioRequest) -> HttpResponseBase:
    """Say which questions are asked beside those on safety, and what clients sign."""
    form_now = consulting.form_of(request.studio)
    initial = {
        "asked": [key for key in CAN_BE_OFF if key not in form_now.off],
        "seen": form_now.version,
        **{f"waiver_{language}": consulting.waiver_of(form_now, language) for language, _name in LANGUAGES},
    }
    form = QuestionsForm(request.POST or None, initial=initial)
    if request.method == "POST" and form.writes(
        lambda clean: consulting.save_form(
            studio=request.studio,
            off=form.off,
            waiver=form.waiver,
            by=request.staff,
            now=request.now,
            seen=clean["seen"],
        )
    ):
        messages.success(request, _("Saved. It is in force from now on; what was signed stays as it was."))
        return redirect("questions")
    return render(
        request,
        "aftercare/questions.html",
        {
            "form": form,
            "in_force": form_now,
            "always": [ASKED[key].words for key in ALWAYS],
            "versions": list(request.studio.question_forms.select_related("by").order_by("-version")),
        },
    )
