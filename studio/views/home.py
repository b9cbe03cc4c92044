"""The first page, and the page of blocks."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render

from studio.access import StudioRequest, page


def home(request: HttpRequest) -> HttpResponseBase:
    """Send whoever is signed in to the day sheet."""
    return redirect("day_sheet")


@page()
def look(request: StudioRequest) -> HttpResponse:
    """Show each block of the look, with long names and with nothing in it."""
    return render(request, "studio/look.html")
