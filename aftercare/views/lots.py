"""Lots of adhesive: what was reported after each, who wore one, what its supplier is told, and setting it aside."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.http import HttpResponse, HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from aftercare import asking, lotwatch, ruling, tasks
from aftercare.forms.lots import LevelForm
from studio import records, undo
from studio.access import StudioRequest, page
from studio.models import Adhesive


@require_http_methods(["GET", "POST"])
@page("owner", "artist")
def lots(request: StudioRequest) -> HttpResponseBase:
    """Show every lot with its counts, those to look at first; the owner sets from when on one is marked."""
    if request.method == "POST" and not request.may.own:
        raise PermissionDenied
    found = lotwatch.watch(request.studio, request.now)
    form = LevelForm(request.POST or None, initial={"one_in": found.one_in})
    if request.method == "POST" and form.writes(
        lambda clean: ruling.change(request.studio, by=request.staff, now=request.now, lot_chance=1 / clean["one_in"])
    ):
        messages.success(request, _("Kept. All lots are weighed by it from now on."))
        return redirect("lots")
    return render(request, "aftercare/lots.html", {"found": found, "days": lotwatch.FOLLOWED.days, "form": form})


@require_safe
@page("owner", "artist")
def lot_wearers(request: StudioRequest, adhesive_id: int) -> HttpResponse:
    """Show who wore a lot lately, newest first, without a word on anybody's health."""
    adhesive = _lot_or_404(request, adhesive_id)
    visits = lotwatch.wearers(adhesive, request.now)
    asked = asking.asked(adhesive)
    shown = {
        "adhesive": adhesive,
        "visits": visits,
        "days": lotwatch.WORN.days,
        "asked": asked,
        "to_ask": sum(visit.client_id not in asked for visit in visits),
    }
    return render(request, "aftercare/lot_wearers.html", shown)


@require_POST
@page("owner")
def lot_ask(request: StudioRequest, adhesive_id: int) -> HttpResponseBase:
    """Ask those who wore it how their eyes are, in the owner's wording."""
    adhesive = _lot_or_404(request, adhesive_id)
    asked = asking.ask(adhesive, lotwatch.wearers(adhesive, request.now), request.now)
    said = ngettext("%(n)d client is asked.", "%(n)d clients are asked.", asked) % {"n": asked}
    messages.success(request, f"{said} {_('Each in her own hours; what they answer comes to the morning list.')}")
    tasks.nudge()
    return redirect("lot_wearers", adhesive.pk)


@require_safe
@page("owner", "artist")
def lot_report(request: StudioRequest, adhesive_id: int) -> HttpResponseBase:
    """Show a sheet for the supplier: lot, dates and signs, nobody's name."""
    adhesive = _lot_or_404(request, adhesive_id)
    found = lotwatch.watch(request.studio, request.now)
    lot = next((one for one in found.lots if one.adhesive == adhesive), None)
    if lot is None:
        messages.info(request, _("Nobody has worn this lot yet: there is nothing to tell its supplier."))
        return redirect("lots")
    rows = [one for one in lotwatch.followed(request.studio, request.now) if one.visit.adhesive_id == adhesive.pk]
    # With its day a sign is somebody's: the day sheet says who came.
    reads = request.may.read_health_of({one.visit.client_id for one in rows})
    shown = {
        "lot": lot,
        "adhesive": adhesive,
        "rows": [(one, {"signs": one.signs}, one.visit.client_id in reads) for one in rows],
        "yates": lot.square.chi_square(yates=True),
        "days": lotwatch.FOLLOWED.days,
    }
    return render(request, "aftercare/lot_report.html", shown)


@require_POST
@page("owner", "artist")
def lot_aside(request: StudioRequest, adhesive_id: int) -> HttpResponseBase:
    """Set a lot aside, or (``aside`` is "no") take the mark back."""
    adhesive = _lot_or_404(request, adhesive_id)
    aside = request.POST.get("aside") != "no"
    records.set_aside(adhesive=adhesive, aside=aside, by=request.staff, now=request.now)
    said = _("Set aside: it is marked wherever it is chosen.") if aside else _("The mark is taken back.")
    messages.success(request, said)
    return redirect("lots")


@require_POST
@page("owner")
def lot_looked(request: StudioRequest, adhesive_id: int) -> HttpResponseBase:
    """Say that a marked lot was looked at and stays in use: it leaves the morning list. Or take that back."""
    adhesive = _lot_or_404(request, adhesive_id)
    looked = "undo" not in request.POST
    records.look_at_lot(adhesive=adhesive, looked=looked, by=request.staff, now=request.now)
    if looked:
        undo.said(request, _("Looked at: it stays in use, and leaves the morning list."), request.path, [("undo", 1)])
    else:
        messages.success(request, _("It stands on the morning list again."))
    return redirect("lots")


def _lot_or_404(request: StudioRequest, adhesive_id: int) -> Adhesive:
    rows = Adhesive.objects.select_related("studio", "set_aside_by").exclude(lot="")
    return get_object_or_404(rows, studio=request.studio, pk=adhesive_id)
