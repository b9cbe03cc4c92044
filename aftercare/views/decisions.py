"""What a person decides about a client: a pause, a stop, a reaction on record, its release."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponseBase
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_POST

from aftercare import stops, upkeep
from aftercare.views.client_forms import hers_or_403
from aftercare.views.errors import tell
from studio import records, undo
from studio.access import StudioRequest, client_or_404, health_or_403, page
from studio.forms.clients import PauseForm, ReactionForm, ReleaseForm, StopForm
from studio.forms.fields import RecordForm
from studio.models import Reaction, Visit


@require_POST
@page("artist", "front desk")
def client_pause(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Send her nothing until a day; or end the pause."""
    client = hers_or_403(request, client_id)
    form, until = PauseForm(request.POST), client.paused_until
    if "resume" in request.POST and until:
        records.resume(client=client, by=request.staff, now=request.now)
        undo.said(request, _("The pause is over."), request.path, [("until", until)])
    elif form.writes(lambda clean: records.pause(client=client, by=request.staff, now=request.now, **clean)):
        undo.said(request, _("Paused."), request.path, [("until", until) if until else ("resume", 1)])
    else:
        _tell_all(request, form)
    upkeep.plan_clients([client.pk], request.now)
    return redirect("client", client.pk)


@require_POST
@page("artist", "front desk")
def client_declined(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Note that she declined an earlier visit; or have it offered again."""
    client = hers_or_403(request, client_id)
    before = client.earlier_declined
    times = 0 if "again" in request.POST else min(before + 1, records.MOST_DECLINED)
    if "undo" in request.POST:
        times = max(before - 1, 0)
    records.note_declined(client=client, times=times, by=request.staff)
    if times > before:
        said = _("Noted. After two an earlier visit is not offered again.")
        undo.said(request, said, request.path, [("undo", 1)])
    else:
        messages.success(request, _("Noted."))
    upkeep.plan_clients([client.pk], request.now)
    return redirect("client", client.pk)


@require_POST
@page("artist", "front desk")
def client_stop(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Write down that she told someone here that she wants nothing more on a channel."""
    client = hers_or_403(request, client_id)
    form = StopForm(request.POST)
    if form.writes(
        lambda clean: stops.stop(client, clean["channel"], words=clean["words"], by=request.staff, now=request.now)
    ):
        messages.success(request, _("Stopped. Only her own START, or a new consent of hers, lifts it."))
    else:
        _tell_all(request, form)
    upkeep.catch_up(request.now, studio=request.studio)
    return redirect("client", client.pk)


@require_http_methods(["GET", "POST"])
@page("artist")
def reaction_new(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Put a reaction on record: she is on hold from then on."""
    client = client_or_404(request, client_id)
    health_or_403(request, client)
    visits = client.visits.filter(status=Visit.Status.DONE).order_by("-starts_at")
    form = ReactionForm(request.POST or None, visits=visits, zone=request.studio.zone, now=request.now)
    if request.method == "POST" and form.writes(
        lambda clean: records.record_reaction(
            client=client,
            visit=form.visits.get(clean["visit"]),
            words=clean["words"],
            at=clean.get("at"),
            by=request.staff,
            now=request.now,
        )
    ):
        upkeep.plan_clients([client.pk], request.now)
        messages.success(request, _("On record. She is on hold until a person decides: call her."))
        return redirect("client", client.pk)
    return render(request, "aftercare/reaction_form.html", {"form": form, "client": client})


@require_http_methods(["GET", "POST"])
@page("artist")
def reaction_release(request: StudioRequest, reaction_id: int) -> HttpResponseBase:
    """Decide that messages about visits may go to her again. It says nothing of her eyes."""
    rows = Reaction.objects.select_related("client__studio", "by")
    reaction = get_object_or_404(rows, pk=reaction_id, client__studio=request.studio)
    client = reaction.client
    health_or_403(request, client)
    form = ReleaseForm(request.POST or None)
    if request.method == "POST" and form.writes(
        lambda clean: records.release_reaction(reaction=reaction, by=request.staff, now=request.now, **clean)
    ):
        upkeep.plan_clients([client.pk], request.now)
        messages.success(request, _("Released. What was held is judged again."))
        return redirect("client", client.pk)
    return render(request, "aftercare/release_form.html", {"form": form, "client": client, "reaction": reaction})


def _tell_all(request: StudioRequest, form: RecordForm) -> None:
    tell(request, ValidationError([str(error) for errors in form.errors.values() for error in errors]))
