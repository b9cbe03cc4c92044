"""The lines of a studio: where messages leave from and replies come in; what one text costs."""

from __future__ import annotations

from django.conf import settings
from django.contrib import messages
from django.http import HttpResponseBase
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from aftercare import hearing
from aftercare.forms.lines import LineForm
from aftercare.lines import lines_of, reach_nobody, save
from aftercare.outbox.limits import spent_today
from aftercare.roadwatch import away_in
from studio.access import StudioRequest, page


@require_http_methods(["GET", "POST"])
@page("owner")
def lines(request: StudioRequest) -> HttpResponseBase:
    """Show each line with its transport, which whoever runs the service sets; price and limits are the owner's."""
    found = lines_of(request.studio)
    line = found["sms"]
    price = None if line.price is None else f"{line.price.normalize():f}"
    initial = {name: getattr(line, name) for name in ("currency", "most_a_second", "most_a_day")}
    form = LineForm(request.POST or None, initial={"price": price, **initial})
    if request.method == "POST" and form.writes(lambda clean: save(line, **clean)):
        messages.success(request, _("Saved."))
        return redirect("lines")
    rows = [
        (line, (line.transport or settings.AFTERCARE[line.channel.upper()]["TRANSPORT"]).rpartition(".")[2])
        for line in found.values()
    ]
    context = {
        "rows": rows,
        "form": form,
        "nowhere": reach_nobody(request.studio),
        "away": away_in(request.studio, request.now),
        "spent": spent_today(line, request.now),
        "limit": line.most_a_day,
        "kept": hearing.not_understood(request.studio),
    }
    return render(request, "aftercare/lines.html", context)
