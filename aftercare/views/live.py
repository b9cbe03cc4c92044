"""Going live, and back: the owner's one decision that messages leave for real."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import BadRequest
from django.http import HttpResponseBase
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from aftercare import planning
from aftercare.pages import shown
from studio.access import StudioRequest, page

HOURS = 48


@require_http_methods(["GET", "POST"])
@page("owner")
def going_live(request: StudioRequest) -> HttpResponseBase:
    """Count what would leave in the next 48 hours; one button goes live, one holds everything again."""
    if request.method == "POST":
        _decide(request)
        return redirect("going_live")
    counts = planning.leaving(request.studio, request.now, HOURS)
    rows = [(shown.OCCASIONS[occasion], n) for occasion, n in counts.items()]
    context = {"rows": rows, "total": sum(counts.values()), "hours": HOURS}
    return render(request, "aftercare/going_live.html", context)


def _decide(request: StudioRequest) -> None:
    answer = request.POST.get("answer")
    if answer == "live":
        planning.go_live(request.studio, request.now)
        messages.success(request, _("Live. What falls due from now on reaches your clients."))
    elif answer == "back":
        planning.go_back(request.studio)
        messages.success(request, _("In rehearsal again. Nothing leaves until you go live."))
    else:
        raise BadRequest("answer is neither live nor back")
