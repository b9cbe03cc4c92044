"""Telling those who are booked on a day: who, how, when and what; then one button."""

from __future__ import annotations

import hashlib

from django.contrib import messages
from django.http import Http404, HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_http_methods

from aftercare import tasks, telling
from aftercare.forms.telling import TellForm
from aftercare.telling import Look
from aftercare.views.day_sheet import ALL, read_day
from studio.access import StudioRequest, page
from studio.models import Staff


@require_http_methods(["GET", "POST"])
@page()
def tell(request: StudioRequest) -> HttpResponseBase:
    """Show whom a word would reach, when and at what cost, and whom to call; then promise it."""
    day, problem = read_day(request.GET.get("day", ""), timezone.localdate(request.now))
    artist = _artist(request)
    artists = {artist.pk} if artist else None if request.may.see_every_list else request.may.stands_for
    visits = telling.booked(request.studio, day, request.now, artists)
    form = TellForm(request.POST or None)
    words = telling.source(form.cleaned_data["text"], request.studio) if form.is_bound and form.is_valid() else ""
    look = telling.look(request.studio, visits, words, request.now)
    as_seen = request.POST.get("seen") == _digest(look, words)
    if "send" in request.POST and form.is_valid() and as_seen and not look.is_blocked:
        return _sent(request, form, look, words)
    shown = {
        "day": day,
        "is_today": day == timezone.localdate(request.now),
        "problem": problem,
        "artist": artist,
        "form": form,
        "look": look,
        "own": bool(words),
        "digest": _digest(look, words),
        "changed": "send" in request.POST and not as_seen,
    }
    return render(request, "aftercare/tell.html", shown)


def _artist(request: StudioRequest) -> Staff | None:
    """Return the artist whose clients are meant; None: all whom she may tell. One of whom she may not is not found."""
    chosen = request.GET.get("artist", "")
    if chosen in ("", ALL):
        return None
    found = request.studio.staff.filter(pk=chosen).first() if chosen.isascii() and chosen.isdigit() else None
    if found is None or not (request.may.see_every_list or found.pk in request.may.stands_for):
        raise Http404
    return found


def _sent(request: StudioRequest, form: TellForm, look: Look, words: str) -> HttpResponse:
    told = telling.tell(look, words, token=form.cleaned_data["token"], by=request.staff, now=request.now)
    tasks.nudge()
    if told:
        said = ngettext("%(n)s client is told.", "%(n)s clients are told.", told) % {"n": told}
    else:
        said = _("They had been told already: nothing goes twice.")
    if look.call:
        said += " " + ngettext("Call the %(n)s other.", "Call the %(n)s others.", len(look.call)) % {
            "n": len(look.call)
        }
    messages.success(request, said)
    return redirect(f"{reverse('day_sheet')}?{request.GET.urlencode()}")


def _digest(look: Look, words: str) -> str:
    """Stands for whom it would reach and in which words: others are looked at before anything goes."""
    said = f"{words}|{[(one.visit.pk, one.channel, one.text) for one in look.tell]}"
    return hashlib.sha256(said.encode()).hexdigest()
