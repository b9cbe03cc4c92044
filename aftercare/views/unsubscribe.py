"""The way out of e-mails, for whoever got one: no sign-in, no questions."""

from __future__ import annotations

from django.contrib.auth.decorators import login_not_required
from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils import translation
from django.views.decorators.cache import never_cache
from django.views.decorators.csrf import csrf_exempt
from django.views.decorators.http import require_http_methods

from aftercare import stops, unsubscribing
from aftercare.core import say
from aftercare.models import Line
from studio import clock


@require_http_methods(["GET", "HEAD", "POST"])
@csrf_exempt  # mail hosts have no cookie of ours (RFC 8058, 3.2); only who has the link can do anything
@never_cache
@login_not_required
def unsubscribe(request: HttpRequest, token: str) -> HttpResponse:
    """GET shows a button and changes nothing; POST ends all e-mail of the studio to the address.

    What the POST carries is not looked at: the link says it all, and no way of encoding it can then be the wrong one.
    Nobody is planned here, as mail hosts do not wait: until she is, nothing more leaves for her.
    """
    found = unsubscribing.read(token)
    if found is None:
        return render(request, "aftercare/unsubscribe.html", status=404)
    line, address = found
    if request.method == "POST":
        stops.unsubscribe(line, address, now=clock.now())
    facts = {
        "name": line.studio.name,
        "phone": line.studio.phone,
        "address": address,
        "is_ended": stops.is_unsubscribed(line, address),
    }
    with translation.override(_language(line, address)):
        return render(request, "aftercare/unsubscribe.html", facts)


def _language(line: Line, address: str) -> str:
    """The language in which she gets her e-mails."""
    hers = line.studio.clients.filter(email__iexact=address, merged_into=None).order_by("pk").first()
    return say.language_of(hers.language if hers else "", line.studio.language)
