"""Writing about a visit by hand: when and what, its cancelling, the result of a patch test."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import PermissionDenied, ValidationError
from django.http import HttpResponseBase
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST

from aftercare import upkeep
from aftercare.views.day_sheet import sheet_of
from aftercare.views.errors import tell
from studio import records, undo
from studio.access import StudioRequest, client_or_404, health_or_403, page, visit_or_404
from studio.forms.visits import TestResultForm, VisitForm
from studio.models import Client, Visit


@require_http_methods(["GET", "POST"])
@page("artist", "front desk")
def visit_new(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Add a visit of a client."""
    client = client_or_404(request, client_id)
    if not _may_book_for(request, client):
        raise PermissionDenied(_("Visits of this client are booked by the front desk and by the artists who see her."))
    form = VisitForm(request.POST or None, studio=request.studio, visit=None, artist=_own(request))
    if request.method == "POST":
        visit = form.written(
            lambda clean: records.save_visit(
                studio=request.studio,
                visit=None,
                client=client,
                status=clean["status"],
                by=request.staff,
                now=request.now,
                **form.visit_fields(),
            )
        )
        if visit:
            upkeep.plan_clients([client.pk], request.now)
            messages.success(request, _("The visit is added."))
            return redirect("client", client.pk)
    return render(request, "aftercare/visit_form.html", {"form": form, "client": client, "visit": None})


@require_http_methods(["GET", "POST"])
@page("artist", "front desk")
def visit_edit(request: StudioRequest, visit_id: int) -> HttpResponseBase:
    """Change when a visit is, for what and with whom. What was planned about it moves with it."""
    visit = _changeable_or_403(request, visit_id)
    form = VisitForm(request.POST or None, studio=request.studio, visit=visit)
    if request.method == "POST":
        saved = form.written(
            lambda clean: records.save_visit(
                studio=request.studio, visit=visit, by=request.staff, now=request.now, **form.visit_fields()
            )
        )
        if saved:
            upkeep.plan_clients([visit.client_id], request.now)
            messages.success(request, _("Saved."))
            return redirect(sheet_of(saved))
    shown = {"form": form, "client": visit.client, "visit": visit, "sheet": sheet_of(visit)}
    return render(request, "aftercare/visit_form.html", shown)


@require_POST
@page("artist", "front desk")
def visit_cancel(request: StudioRequest, visit_id: int) -> HttpResponseBase:
    """Cancel a visit; what was planned about it is withdrawn."""
    visit = _changeable_or_403(request, visit_id)
    try:
        records.cancel_visit(visit=visit, by=request.staff, now=request.now)
    except ValidationError as error:
        tell(request, error)
    else:
        upkeep.plan_clients([visit.client_id], request.now)
        said = _("%(name)s: cancelled.") % {"name": visit.client.name}
        undo.said(request, said, reverse("visit_unmark", args=[visit.pk]))
    return redirect(sheet_of(visit))


@require_http_methods(["GET", "POST"])
@page("artist")
def test_result(request: StudioRequest, visit_id: int) -> HttpResponseBase:
    """Write what a patch test showed. After a sign, the next page asks whether it was a reaction."""
    visit = visit_or_404(request, visit_id)
    health_or_403(request, visit.client)
    form = TestResultForm(request.POST or None, initial={"result": visit.test_result})
    if request.method == "POST":
        saved = form.written(
            lambda clean: records.record_test_result(
                visit=visit, result=clean["result"], by=request.staff, now=request.now
            )
        )
        if saved:
            upkeep.plan_clients([visit.client_id], request.now)
            if saved.test_result == Visit.TestResult.SIGN:
                messages.success(request, _("The sign is on record. Write it down as a reaction: she is then on hold."))
                return redirect("reaction_new", visit.client_id)
            messages.success(request, _("Saved."))
            return redirect("client", visit.client_id)
    return render(request, "aftercare/test_result_form.html", {"form": form, "client": visit.client, "visit": visit})


def _may_book_for(request: StudioRequest, client: Client) -> bool:
    # Who treats a client reads her health notes, so no artist books herself a client of someone else's.
    return request.may.book or request.may.read_health(client) or not client.visits.exists()


def _changeable_or_403(request: StudioRequest, visit_id: int) -> Visit:
    visit = visit_or_404(request, visit_id)
    if not (request.may.book or visit.artist_id == request.staff.pk):
        raise PermissionDenied(_("This visit is changed by the front desk and by its own artist."))
    return visit


def _own(request: StudioRequest) -> int | None:
    return request.staff.pk if request.staff.is_artist else None
