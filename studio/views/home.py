"""The first page, the page of blocks, and the page for addresses that lead nowhere."""

from __future__ import annotations

from contextlib import suppress

from django.core.exceptions import PermissionDenied
from django.http import HttpRequest, HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.views.defaults import page_not_found

from studio.access import StudioRequest, page, stand


def home(request: HttpRequest) -> HttpResponseBase:
    """Send whoever is signed in to the day sheet."""
    return redirect("day_sheet")


def not_found(request: HttpRequest, exception: Exception) -> HttpResponse:
    """Say that there is no such page, in the language of whoever is signed in."""
    if request.user.is_authenticated:
        with suppress(PermissionDenied):
            stand(request)
    return page_not_found(request, exception)


@page()
def look(request: StudioRequest) -> HttpResponse:
    """Show each block of the look, with long names and with nothing in it."""
    return render(request, "studio/look.html")
