"""What a carrier called to say and nobody understood: read once more."""

from __future__ import annotations

from django.contrib import messages
from django.http import HttpResponseBase
from django.shortcuts import redirect
from django.utils.translation import gettext as _
from django.views.decorators.http import require_POST

from aftercare import hearing
from studio.access import StudioRequest, page


@require_POST
@page("owner")
def calls_again(request: StudioRequest) -> HttpResponseBase:
    """Have them read again, as whoever runs the service has mended what was wrong."""
    hearing.read_again(request.studio)
    messages.success(request, _("They are read again within a few seconds."))
    return redirect("lines")
