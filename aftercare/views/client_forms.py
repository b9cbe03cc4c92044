"""Writing about a client by hand: her card, and what she agreed to."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.http import HttpResponseBase
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from aftercare import stops, upkeep
from studio import records
from studio.access import StudioRequest, client_or_404, page
from studio.forms.clients import ClientForm, ConsentForm
from studio.models import Client, Consent


@require_http_methods(["GET", "POST"])
@page("artist", "front desk")
def client_new(request: StudioRequest) -> HttpResponseBase:
    """Add a client, with what she agreed to."""
    form = ClientForm(request.POST or None, studio=request.studio, client=None, health=request.may.treat)
    consent = ConsentForm(request.POST or None, prefix="consent")
    if request.method == "POST" and consent.is_valid():
        client = form.written(
            lambda clean: records.save_client(
                studio=request.studio,
                client=None,
                by=request.staff,
                now=request.now,
                answers=consent.answers(),
                **clean,
            )
        )
        if client:
            upkeep.plan_clients([client.pk], request.now)
            messages.success(request, _("%(name)s is added.") % {"name": client.name})
            return redirect("client", client.pk)
    elif request.method == "POST":
        form.is_valid()
    return render(request, "aftercare/client_form.html", {"form": form, "consent": consent, "client": None})


@require_http_methods(["GET", "POST"])
@page("artist", "front desk")
def client_edit(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Change a client's card, as far as the person may see it."""
    client = hers_or_403(request, client_id)
    health = request.may.read_health(client)
    form = ClientForm(request.POST or None, studio=request.studio, client=client, health=health)
    if request.method == "POST":
        saved = form.written(
            lambda clean: records.save_client(
                studio=request.studio, client=client, by=request.staff, now=request.now, **clean
            )
        )
        if saved:
            upkeep.plan_clients([client.pk], request.now)
            messages.success(request, _("Saved."))
            return redirect("client", client.pk)
    return render(request, "aftercare/client_form.html", {"form": form, "client": client})


@require_http_methods(["GET", "POST"])
@page("artist", "front desk")
def client_consent(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Add what she agreed to, or no longer does. A later yes, told to a person, also lifts her stop on that channel."""
    client = hers_or_403(request, client_id)
    form = ConsentForm(request.POST or None)
    if request.method == "POST" and form.is_valid():
        lifted = [_agree(request, client, answer) for answer in form.answers()]
        upkeep.catch_up(request.now, studio=request.studio)
        messages.success(request, _("Saved; her stop is lifted.") if any(lifted) else _("Saved."))
        return redirect("client", client.pk)
    shown = {"form": form, "client": client, "newest": _newest(client), "stopped": stops.standing(client)}
    return render(request, "aftercare/consent_form.html", shown)


def _agree(request: StudioRequest, client: Client, answer: records.Answer) -> bool:
    """Add one answer; return whether it lifted a stop of hers."""
    records.give_consent(
        client=client,
        channel=answer.channel,
        purpose=answer.purpose,
        given=answer.given,
        how=answer.how,
        words_shown=answer.words_shown,
        by=request.staff,
        now=request.now,
    )
    if not answer.given or answer.purpose != Consent.Purpose.VISITS:
        return False
    return stops.lift(client, answer.channel, how=answer.how, by=request.staff, now=request.now)


def hers_or_403(request: StudioRequest, client_id: int) -> Client:
    """The client; for owners, the front desk, and the artists who see her."""
    client = client_or_404(request, client_id)
    if not (request.may.book or request.may.read_health(client)):
        raise PermissionDenied(_("This client’s card is changed by the front desk and by the artists who see her."))
    return client


def _newest(client: Client) -> list[Consent]:
    newest = {(row.channel, row.purpose): row for row in client.consents.select_related("by")}
    return list(newest.values())
