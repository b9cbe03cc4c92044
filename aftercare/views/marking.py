"""Marking visits done or missed, and what goes out because of it."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import PermissionDenied, ValidationError
from django.db import transaction
from django.http import HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from aftercare import facts, upkeep
from aftercare.pages import shown
from aftercare.views.day_sheet import sheet_of
from aftercare.views.errors import tell
from studio import records, undo
from studio.access import StudioRequest, page, visit_or_404
from studio.forms.marking import DoneForm
from studio.models import SETS, Adhesive, Visit


@require_http_methods(["GET", "POST"])
@page("artist")
def visit_done(request: StudioRequest, visit_id: int) -> HttpResponseBase:
    """Mark a visit done, or correct what was written of it."""
    visit = visit_or_404(request, visit_id)
    last_set = _last_set(visit)
    health = request.may.read_health(visit.client)
    form = DoneForm(request.POST or None, visit=visit, last_set=last_set, health=health)
    if request.method == "POST" and form.writes(lambda _clean: _mark(request, visit, form)):
        upkeep.plan_clients([visit.client_id], request.now)
        if visit.status == Visit.Status.DONE:
            messages.success(request, _("Saved."))
        else:
            _say(request, visit, _("%(name)s: marked as done.") % {"name": visit.client.name})
        return redirect("visit_after", visit.pk)
    return render(request, "aftercare/visit_done.html", {"form": form, "visit": visit, "last_set": last_set})


@require_http_methods(["GET", "POST"])
@page()
def visit_missed(request: StudioRequest, visit_id: int) -> HttpResponseBase:
    """Say that she did not come."""
    visit = visit_or_404(request, visit_id)
    if request.method == "POST":
        try:
            records.mark_missed(visit=visit, by=request.staff, now=request.now)
        except ValidationError as error:
            tell(request, error)
        else:
            upkeep.plan_clients([visit.client_id], request.now)
            _say(request, visit, _("%(name)s: marked as missed.") % {"name": visit.client.name})
            return redirect(sheet_of(visit))
    return render(request, "aftercare/visit_missed.html", {"visit": visit, "sheet": sheet_of(visit)})


@require_http_methods(["POST"])
@page()
def visit_unmark(request: StudioRequest, visit_id: int) -> HttpResponseBase:
    """Take a mark back: what was done is for those who treat, the rest also for the front desk, who may set it."""
    visit = visit_or_404(request, visit_id)
    if visit.status == Visit.Status.DONE and not request.may.treat:
        raise PermissionDenied(_("Whether a visit was done is for the artists and the owner to say."))
    try:
        records.unmark(visit=visit, by=request.staff, now=request.now)
    except ValidationError as error:
        tell(request, error)
    else:
        upkeep.plan_clients([visit.client_id], request.now)
        messages.success(request, _("%(name)s: booked again, nothing marked.") % {"name": visit.client.name})
    return redirect(sheet_of(visit))


@page()
def visit_after(request: StudioRequest, visit_id: int) -> HttpResponse:
    """Show what goes to her because of this visit, when and why."""
    visit = visit_or_404(request, visit_id)
    reads = request.may.read_health_of([visit.client_id])
    rows = visit.messages.order_by("aim_at", "occasion", "step", "edition")
    return render(
        request,
        "aftercare/visit_after.html",
        {
            "visit": visit,
            "going": shown.show(rows, facts.rules_of(request.studio), reads),
            "sheet": sheet_of(visit),
        },
    )


def _say(request: StudioRequest, visit: Visit, said: str) -> None:
    """Say what a visit was marked as, with the way back where it was booked before: back is booked again."""
    if visit.status == Visit.Status.BOOKED:
        undo.said(request, said, reverse("visit_unmark", args=[visit.pk]))
    else:
        messages.success(request, said)


def _mark(request: StudioRequest, visit: Visit, form: DoneForm) -> Visit:
    """Write what was entered; a new adhesive and the mark stand or fall together."""
    with transaction.atomic():
        used = form.used(_adhesive(request, form))
        return records.mark_done(visit=visit, by=request.staff, now=request.now, **used)


def _adhesive(request: StudioRequest, form: DoneForm) -> Adhesive | None:
    if form.names_new_adhesive:
        product, lot = form.cleaned_data["new_product"].strip(), form.cleaned_data["new_lot"].strip()
        known = request.studio.adhesives.filter(product=product, lot=lot).first()
        return known or records.save_adhesive(
            studio=request.studio, adhesive=None, product=product, lot=lot, by=request.staff, now=request.now
        )
    chosen = form.cleaned_data.get("adhesive", "")
    return request.studio.adhesives.filter(pk=int(chosen)).first() if chosen.isdigit() else None


def _last_set(visit: Visit) -> Visit | None:
    before = Visit.objects.filter(client=visit.client_id, status=Visit.Status.DONE, starts_at__lt=visit.starts_at)
    return before.filter(service__in=SETS).select_related("adhesive").order_by("-starts_at", "-pk").first()
