"""The morning list, and what a person does about a line of it."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponse, HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST

from aftercare import facts, matters, upkeep
from aftercare.forms.matters import CloseForm
from aftercare.models import Flag, Message
from aftercare.pages.morning import Matter, MorningList, morning_list
from aftercare.pages.promises import EARLY
from aftercare.pages.sheet import reads_health
from aftercare.views.client_forms import hers_or_403
from aftercare.views.errors import tell
from studio.access import StudioRequest, page, visit_or_404

ALL = "all"


@page()
def morning(request: StudioRequest) -> HttpResponse:
    """Show what is open: to an artist what is hers, to the owner also what is nobody's, or all.

    The front desk sees the lines about booking and delivery, and of everything else only how many wait.
    """
    everything = morning_list(request.studio, request.now)
    if not request.may.treat:
        return render(request, "aftercare/morning.html", _for_the_desk(everything))
    chosen = _chosen(request, everything)
    own = chosen == str(request.staff.pk)
    found = everything if chosen == ALL else everything.of(int(chosen), nobodys=request.may.own and own)
    context = {
        "found": found,
        "matters": [matter for matter in found.matters if _reads(request, matter)],
        "unkept": [line for line in found.unkept if line.kind != EARLY],
        "early": [line for line in found.unkept if line.kind == EARLY],
        "book_is_old": request.may.own and facts.book_is_old(request.studio, request.now),
        "elsewhere": len(everything) - len(found) if request.may.own else 0,
        "artists": [(str(artist.pk), artist.name) for artist in everything.artists] if request.may.own else [],
        "chosen": chosen,
        "own": own,
        "waiting": 0,
    }
    return render(request, "aftercare/morning.html", context)


def _chosen(request: StudioRequest, everything: MorningList) -> str:
    """Return whose list it is: hers, to the owner that of whom she chose, or all (also where she treats nobody)."""
    own = str(request.staff.pk)
    if not request.may.own:
        return own
    asked = request.GET.get("artist", "")
    if asked == own or asked in {str(artist.pk) for artist in everything.artists}:
        return asked
    return own if request.staff.is_artist and asked != ALL else ALL


def _for_the_desk(everything: MorningList) -> dict[str, object]:
    about_booking = ("not marked", "not delivered", "unsure")
    return {
        "found": everything,
        "matters": [],
        "unkept": [line for line in everything.unkept if line.kind in about_booking],
        "waiting": len(everything.matters),
        "chosen": ALL,
    }


def _reads(request: StudioRequest, matter: Matter) -> bool:
    return request.may.own or any(reads_health(request.staff, book) for book in matter.books)


@require_POST
@page("artist")
def flag_take(request: StudioRequest, flag_id: int) -> HttpResponseBase:
    """Say “I have this”."""
    flag = _flag_or_404(request, flag_id)
    try:
        matters.take(flag, by=request.staff, now=request.now)
    except ValidationError as error:
        tell(request, error)
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
        upkeep.plan_clients([client.pk for client in flag.clients.all()], request.now)
        messages.success(request, _("Closed, and kept on her card."))
        return redirect("morning")
    replies = flag.replies.select_related("line").order_by("received_at", "pk")
    return render(request, "aftercare/flag_close.html", {"form": form, "flag": flag, "replies": replies})


@require_POST
@page("artist")
def flag_reopen(request: StudioRequest, flag_id: int) -> HttpResponseBase:
    """Put a closed matter back on the list; what was written on closing stays with it."""
    flag = _flag_or_404(request, flag_id)
    try:
        matters.reopen(flag)
    except ValidationError as error:
        tell(request, error)
    else:
        upkeep.plan_clients([client.pk for client in flag.clients.all()], request.now)
        messages.success(request, _("Open again."))
    return redirect("morning")


@require_POST
@page("artist", "front desk")
def message_see_to(request: StudioRequest, message_id: int) -> HttpResponseBase:
    """Say that something was done about a message that did not arrive: it leaves the list."""
    rows = Message.objects.filter(studio=request.studio, client__isnull=False)
    message = get_object_or_404(rows, pk=message_id)
    client = hers_or_403(request, message.client_id or 0)
    try:
        matters.see_to(message, by=request.staff, now=request.now)
    except ValidationError as error:
        tell(request, error)
    else:
        messages.success(request, _("Seen to: %(name)s. It stays among her messages.") % {"name": client.name})
    return redirect("morning")


@require_POST
@page("artist")
def early_see_to(request: StudioRequest, visit_id: int) -> HttpResponseBase:
    """Say that somebody has looked into a set that is likely to fail early: it leaves the list."""
    visit = visit_or_404(request, visit_id)
    try:
        matters.see_to_early(visit, by=request.staff, now=request.now)
    except ValidationError as error:
        tell(request, error)
    else:
        messages.success(request, _("Seen to: %(name)s.") % {"name": visit.client.name})
    return redirect("morning")


def _flag_or_404(request: StudioRequest, flag_id: int) -> Flag:
    """Return the flag if one of its clients is hers to read; to the owner also one of nobody known."""
    flag = get_object_or_404(Flag.objects.prefetch_related("clients"), studio=request.studio, pk=flag_id)
    hers = request.may.read_health_of([client.pk for client in flag.clients.all()])
    if not (hers or request.may.own):
        get_object_or_404(Flag.objects.none())
    return flag
