"""The lines of a studio, to look at: where messages leave from and replies come in."""

from __future__ import annotations

from django.conf import settings
from django.http import HttpResponseBase
from django.shortcuts import render
from django.views.decorators.http import require_safe

from aftercare.lines import lines_of
from studio.access import StudioRequest, page


@require_safe
@page("owner")
def lines(request: StudioRequest) -> HttpResponseBase:
    """Show each line with its transport; they are set by whoever runs the service."""
    rows = [
        (line, (line.transport or settings.AFTERCARE[line.channel.upper()]["TRANSPORT"]).rpartition(".")[2])
        for line in lines_of(request.studio).values()
    ]
    return render(request, "aftercare/lines.html", {"rows": rows})
