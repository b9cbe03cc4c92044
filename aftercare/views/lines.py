"""The lines of a studio: where messages leave from and replies come in; what one text costs."""

from __future__ import annotations

from django.conf import settings
from django.contrib import messages
from django.http import HttpResponseBase
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from aftercare import hearing
from aftercare.forms.wordings import PriceForm
from aftercare.lines import lines_of, save_price
from studio.access import StudioRequest, page


@require_http_methods(["GET", "POST"])
@page("owner")
def lines(request: StudioRequest) -> HttpResponseBase:
    """Show each line with its transport, which whoever runs the service sets; the price of a text is the owner's."""
    found = lines_of(request.studio)
    line = found["sms"]
    price = None if line.price is None else f"{line.price.normalize():f}"
    form = PriceForm(request.POST or None, initial={"price": price, "currency": line.currency})
    if request.method == "POST" and form.writes(lambda clean: save_price(line, clean["price"], clean["currency"])):
        messages.success(request, _("Saved."))
        return redirect("lines")
    rows = [
        (line, (line.transport or settings.AFTERCARE[line.channel.upper()]["TRANSPORT"]).rpartition(".")[2])
        for line in found.values()
    ]
    return render(
        request, "aftercare/lines.html", {"rows": rows, "form": form, "kept": hearing.not_understood(request.studio)}
    )
