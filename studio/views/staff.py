"""The people who work here: who they are, what they may do, how they sign in."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponse, HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from studio import records
from studio.access import StudioRequest, page
from studio.forms.settings import GiveSignInForm, StaffForm
from studio.models import Staff


@require_safe
@page("owner")
def staff(request: StudioRequest) -> HttpResponseBase:
    """Everyone, those who left last."""
    people = request.studio.staff.select_related("user").order_by("-is_active", "name")
    return render(request, "studio/staff.html", {"people": people})


@require_http_methods(["GET", "POST"])
@page("owner")
def staff_new(request: StudioRequest) -> HttpResponseBase:
    """Add a person."""
    return _edit(request, None)


@require_http_methods(["GET", "POST"])
@page("owner")
def staff_edit(request: StudioRequest, staff_id: int) -> HttpResponseBase:
    """Change a person's name, roles and where she is told."""
    return _edit(request, get_object_or_404(Staff, studio=request.studio, pk=staff_id))


@never_cache
@require_http_methods(["GET", "POST"])
@page("owner")
def staff_sign_in(request: StudioRequest, staff_id: int) -> HttpResponseBase:
    """Make an account for her, or a new password. The one-time password is on this page once, and nowhere else."""
    person = get_object_or_404(Staff.objects.select_related("user"), studio=request.studio, pk=staff_id)
    form = GiveSignInForm(request.POST or None, initial={"email": person.user.email if person.user else person.email})
    made = None
    if request.method == "POST":
        made = form.written(
            lambda clean: records.give_sign_in(staff=person, email=clean["email"], by=request.staff, now=request.now)
        )
    shown = {"form": form, "person": person, "made": made}
    return render(request, "studio/staff_sign_in.html", shown)


@require_POST
@page("owner")
def staff_sign_out(request: StudioRequest, staff_id: int) -> HttpResponse:
    """End her sign-in to this studio."""
    person = get_object_or_404(Staff, studio=request.studio, pk=staff_id)
    try:
        records.take_sign_in(staff=person, by=request.staff, now=request.now)
    except ValidationError as error:
        for problem in error.messages:
            messages.error(request, problem)
    else:
        messages.success(request, _("%(name)s no longer signs in here.") % {"name": person.name})
    return redirect("staff_edit", person.pk)


def _edit(request: StudioRequest, person: Staff | None) -> HttpResponseBase:
    form = StaffForm(request.POST or None, studio=request.studio, staff=person)
    if request.method == "POST":
        saved = form.written(
            lambda clean: records.save_staff(
                studio=request.studio, staff=person, by=request.staff, now=request.now, **clean
            )
        )
        if saved:
            messages.success(request, _("Saved."))
            return redirect("staff" if person else "staff_edit", *([] if person else [saved.pk]))
    return render(request, "studio/staff_form.html", {"form": form, "person": person})
