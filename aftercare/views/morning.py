"""The morning list, and what a person does about a line of it."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponse, HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST

from aftercare import matters, planning
from aftercare.forms.matters import CloseForm
from aftercare.models import Flag
from aftercare.morning import MorningList, morning_list
from aftercare.sheet import reads_health
from studio.access import StudioRequest, page
from studio.models import Staff

ALL = "all"


@page()
def morning(request: StudioRequest) -> HttpResponse:
    """Show what is open: to an artist what is hers, to the owner also what is nobody's, or all.

    The front desk sees the lines about booking and delivery, and of everything else only how many wait.
    """
    everything = morning_list(request.studio, request.now)
    if not request.may.treat:
        return render(request, "aftercare/morning.html", _for_the_desk(everything))
    chosen = request.GET.get("artist", "")
    others = list(request.studio.staff.filter(is_artist=True, is_active=True)) if request.may.own else []
    found = _chosen(request, everything, chosen, others)
    context = {
        "found": found,
        "matters": [matter for matter in found.matters if _reads(request.staff, matter.books)],
        "unkept": found.unkept,
        "elsewhere": len(everything) - len(found) if request.may.own else 0,
        "artists": others,
        "chosen": chosen,
        "all": chosen == ALL or (request.may.own and not request.staff.is_artist and not chosen),
        "waiting": 0,
    }
    return render(request, "aftercare/morning.html", context)


def _chosen(request: StudioRequest, everything: MorningList, chosen: str, others: list[Staff]) -> MorningList:
    if not request.may.own:
        return everything.of(request.staff, nobodys=False)
    if chosen == ALL or (not chosen and not request.staff.is_artist):
        return everything
    other = next((staff for staff in others if str(staff.pk) == chosen), None)
    return everything.of(other, nobodys=False) if other else everything.of(request.staff, nobodys=True)


def _for_the_desk(everything: MorningList) -> dict[str, object]:
    about_booking = ("not marked", "not delivered", "unsure")
    return {
        "found": everything,
        "matters": [],
        "unkept": [line for line in everything.unkept if line.kind in about_booking],
        "waiting": len(everything.matters),
        "all": True,
    }


def _reads(staff: Staff, books: object) -> bool:
    return staff.is_owner or any(reads_health(staff, book) for book in books)  # type: ignore[attr-defined]


@require_POST
@page("artist")
def flag_take(request: StudioRequest, flag_id: int) -> HttpResponseBase:
    """Say “I have this”."""
    flag = _flag_or_404(request, flag_id)
    try:
        matters.take(flag, by=request.staff, now=request.now)
    except ValidationError as error:
        messages.error(request, " ".join(error.messages))
    else:
        messages.success(request, _("You have this. It stays on the list until you close it."))
    return redirect("morning")


@require_http_methods(["GET", "POST"])
@page("artist")
def flag_close(request: StudioRequest, flag_id: int) -> HttpResponseBase:
    """Close it, with what came of it in a person's words."""
    flag = _flag_or_404(request, flag_id)
    form = CloseForm(request.POST or None)
    if request.method == "POST" and form.writes(
        lambda clean: matters.close(
            flag, outcome=clean["outcome"], words=clean["words"], by=request.staff, now=request.now
        )
    ):
        planning.plan_clients([client.pk for client in flag.clients.all()], request.now)
        messages.success(request, _("Closed, and kept on her card."))
        return redirect("morning")
    replies = flag.replies.select_related("line").order_by("received_at", "pk")
    return render(request, "aftercare/flag_close.html", {"form": form, "flag": flag, "replies": replies})


def _flag_or_404(request: StudioRequest, flag_id: int) -> Flag:
    """Return the flag if one of its clients is hers to read; to the owner also one of nobody known."""
    flag = get_object_or_404(Flag.objects.prefetch_related("clients"), studio=request.studio, pk=flag_id)
    hers = request.may.read_health_of([client.pk for client in flag.clients.all()])
    if not (hers or request.may.own):
        get_object_or_404(Flag.objects.none())
    return flag
