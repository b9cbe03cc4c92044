"""The owner's page: how good the forecasts were."""

from __future__ import annotations

from django.http import HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from aftercare.pages.quality import PERIODS, USUAL_PERIOD, quality
from studio.access import StudioRequest, page


@require_safe
@page("owner")
def forecasts(request: StudioRequest) -> HttpResponse:
    """Show forecasts beside what was seen, over a period."""
    period = request.GET.get("period", USUAL_PERIOD)
    if period not in PERIODS:
        period = USUAL_PERIOD
    context = {
        "found": quality(request.studio, period, request.now),
        "period": period,
        "periods": [(name, words) for name, (_days, words) in PERIODS.items()],
    }
    return render(request, "aftercare/forecasts.html", context)
