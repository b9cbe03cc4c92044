"""Going live, and back: the owner's one decision that messages leave for real; and the go for the first reminders."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import BadRequest
from django.http import HttpResponseBase
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_http_methods, require_POST

from aftercare import facts, planning, upkeep
from aftercare.lines import reach_nobody
from aftercare.pages.leaving import leaving
from studio.access import StudioRequest, page

HOURS = 48


@require_http_methods(["GET", "POST"])
@page("owner")
def going_live(request: StudioRequest) -> HttpResponseBase:
    """Count what would leave in the next 48 hours; one button goes live, one holds everything again."""
    if request.method == "POST":
        _decide(request)
        return redirect("going_live")
    found = leaving(request.studio, request.now, HOURS)
    context = {
        "found": found,
        "total": found.total,
        "hours": HOURS,
        "nowhere": reach_nobody(request.studio),
        "first": planning.first_reminders(request.studio),
        "a_day": facts.rules_of(request.studio).go_a_day,
    }
    return render(request, "aftercare/going_live.html", context)


@require_POST
@page("owner")
def first_reminders(request: StudioRequest) -> HttpResponseBase:
    """Let the reminders go that were overdue when the book first came in; or hold those that have not gone."""
    answer = request.POST.get("answer")
    if answer == "go":
        n = planning.give_go(request.studio, request.now)
        messages.success(request, ngettext("%(n)s reminder is let go.", "%(n)s reminders are let go.", n) % {"n": n})
    elif answer == "hold":
        n = planning.take_back_go(request.studio)
        messages.success(request, ngettext("%(n)s reminder waits again.", "%(n)s reminders wait again.", n) % {"n": n})
    else:
        raise BadRequest("answer is neither go nor hold")
    upkeep.catch_up(request.now, studio=request.studio)
    return redirect("going_live")


def _decide(request: StudioRequest) -> None:
    answer = request.POST.get("answer")
    if answer == "live":
        planning.go_live(request.studio, request.now)
        nowhere = reach_nobody(request.studio)
        if not nowhere:
            messages.success(request, _("Live. What falls due from now on reaches your clients."))
        elif len(nowhere) == 1:
            messages.warning(request, _("Live, but what is marked below reaches nobody yet."))
        else:
            messages.warning(request, _("Live, but nothing reaches anybody yet: see below."))
    elif answer == "back":
        planning.go_back(request.studio)
        messages.success(request, _("In rehearsal again. Nothing leaves until you go live."))
    else:
        raise BadRequest("answer is neither live nor back")
