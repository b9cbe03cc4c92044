"""Settings: who is told of what cannot wait, and who is away."""

from __future__ import annotations

from django.contrib import messages
from django.http import HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST

from studio import booked, records, undo
from studio.access import StudioRequest, page
from studio.forms.duty import AbsenceForm, DutyForm
from studio.models import Absence
from studio.views.settings import added


@require_http_methods(["GET", "POST"])
@page("owner")
def duty(request: StudioRequest) -> HttpResponseBase:
    """Who is told beside the artist and the owners; and those who cannot be told at all."""
    form = DutyForm(request.POST or None, studio=request.studio)
    if request.method == "POST" and form.writes(
        lambda clean: records.save_duty(studio=request.studio, by=request.staff, now=request.now, **clean)
    ):
        messages.success(request, _("Saved."))
        return redirect("duty")
    people = request.studio.staff.filter(is_active=True, mobile="", email="").exclude(is_artist=False, is_owner=False)
    return render(request, "studio/duty.html", {"form": form, "unreachable": people})


@require_http_methods(["GET", "POST"])
@page("owner")
def absences(request: StudioRequest) -> HttpResponseBase:
    """Who is away, and who covers; add one."""
    form = AbsenceForm(request.POST or None, studio=request.studio)
    if request.method == "POST" and form.writes(
        lambda clean: records.add_absence(by=request.staff, now=request.now, **clean)
    ):
        asked = form.cleaned_data
        visits = booked.by_day(request.studio, asked["first_day"], asked["last_day"], request.now, asked["staff"])
        added(request, visits.total())
        return redirect("absences")
    today = request.now.astimezone(request.studio.zone).date()
    rows = Absence.objects.filter(staff__studio=request.studio, last_day__gte=today).select_related("staff", "cover")
    found = [
        (row, dict(booked.by_day(request.studio, row.first_day, row.last_day, request.now, row.staff))) for row in rows
    ]
    return render(request, "studio/absences.html", {"form": form, "rows": found})


@require_POST
@page("owner")
def absence_remove(request: StudioRequest, absence_id: int) -> HttpResponseBase:
    """Take one off the list."""
    absence = get_object_or_404(Absence, staff__studio=request.studio, pk=absence_id)
    records.remove_absence(absence=absence, by=request.staff, now=request.now)
    kept = [
        ("staff", absence.staff_id),
        ("cover", absence.cover_id or ""),
        ("first_day", absence.first_day),
        ("last_day", absence.last_day),
    ]
    undo.said(request, _("Taken off the list."), reverse("absences"), kept)
    return redirect("absences")
