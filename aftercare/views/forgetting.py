"""What staff do about a client's links and her wish to be forgotten."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponseBase
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST

from aftercare import erasing, links
from aftercare.views.client_forms import hers_or_403
from aftercare.views.errors import tell
from studio.access import StudioRequest, client_or_404, page


@require_POST
@page("artist", "front desk")
def client_links(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """End every link to her pages that was made up to now."""
    client = hers_or_403(request, client_id)
    links.revoke(client, why="staff", now=request.now)
    messages.success(
        request, _("Ended: the links that she was sent open nothing any more. Her next message brings a new one.")
    )
    return redirect("client", client.pk)


@require_http_methods(["GET", "POST"])
@page("owner")
def client_forget(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Show what goes and what stays; forget her once the owner has ticked that it is for good."""
    client = client_or_404(request, client_id)
    refused: list[str] = []
    try:
        erasing.refuse(client, request.now)
    except ValidationError as error:
        refused = error.messages
    if request.method == "POST" and not refused:
        if "for_good" not in request.POST:
            tell(request, ValidationError(_("Tick that it is for good: nobody can bring it back.")))
        else:
            erasing.erase(client, by=request.staff, now=request.now)
            messages.success(
                request,
                _("She is forgotten. Take her out of your appointment book too, or the next import brings her back."),
            )
            return redirect("clients")
    return render(request, "aftercare/forget.html", {"client": client, "refused": refused})
