"""The morning list, and what a person does about a line of it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from django.conf import settings
from django.contrib import messages
from django.core.exceptions import ValidationError
from django.db import transaction
from django.http import HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_http_methods, require_POST

from aftercare import facts, matters, upkeep
from aftercare.core.outcomes import Outcome
from aftercare.forms.matters import CloseForm, SeveralForm, when
from aftercare.lines import reach_nobody
from aftercare.models import Flag, Wish
from aftercare.pages import waiting
from aftercare.pages.matter import Matter
from aftercare.pages.morning import MorningList, morning_list
from aftercare.pages.sheet import reads_health
from aftercare.roadwatch import away_in
from aftercare.views.errors import tell
from aftercare.views.flags import flag_or_404
from studio import undo
from studio.access import StudioRequest, page
from studio.models import Reaction, Staff

ALL = "all"
LIST = "morning_list"  # the cookie that says whose list was looked at last: whoever closes a matter comes back to it
FOR_THE_DESK = ("not marked", "not delivered", "unsure", "no address")


@page()
def morning(request: StudioRequest) -> HttpResponse:
    """Show what is open: to an artist what is hers, to the owner also what is nobody's, or all.

    The front desk sees the lines about booking and delivery, and of everything else only how many wait.
    """
    everything = _hers_to_read(request, morning_list(request.studio, request.now))
    if not request.may.treat:
        return render(request, "aftercare/morning.html", _for_the_desk(everything))
    chosen = _chosen(request, everything)
    own = chosen == str(request.staff.pk)
    hers = everything if request.may.own else everything.of(request.staff, nobodys=False)
    request.waiting_now = waiting.among((matter.flag for matter in hers.matters), request.now)  # the menu's
    found = everything if chosen == ALL else everything.of(_person(request, chosen), nobodys=request.may.own and own)
    context = {
        "found": found,
        "groups": found.groups,
        "several": SeveralForm() if any(one.may_be_closed_with_others for one in found.matters) else None,
        "nowhere": [] if request.studio.in_rehearsal else reach_nobody(request.studio),
        "away": away_in(request.studio, request.now),
        "book_is_old": request.may.own and facts.book_is_old(request.studio, request.now),
        "elsewhere": len(everything) - len(found) if request.may.own else 0,
        "artists": [(str(artist.pk), artist.name) for artist in everything.artists] if request.may.own else [],
        "chosen": chosen,
        "own": own,
        "waiting": 0,
    }
    response = render(request, "aftercare/morning.html", context)
    if "artist" in request.GET:  # not in the session: that would be a write to the database for each look
        response.set_cookie(
            LIST, chosen, path=reverse("morning"), secure=settings.SESSION_COOKIE_SECURE, httponly=True, samesite="Lax"
        )
    return response


def _chosen(request: StudioRequest, everything: MorningList) -> str:
    """Return whose list it is: hers, to the owner that of whom she chose, or all (also where she treats nobody)."""
    own = str(request.staff.pk)
    if not request.may.own:
        return own
    asked = request.GET.get("artist") or request.COOKIES.get(LIST, "")
    if asked == own or asked in {str(artist.pk) for artist in everything.artists}:
        return asked
    return own if request.staff.is_artist and asked != ALL else ALL


def _person(request: StudioRequest, chosen: str) -> Staff:
    return request.staff if chosen == str(request.staff.pk) else request.studio.staff.get(pk=int(chosen))


def _for_the_desk(everything: MorningList) -> dict[str, object]:
    desk = replace(
        everything,
        matters=[],
        unkept=[line for line in everything.unkept if line.kind in FOR_THE_DESK],
        wishes=[wish for wish in everything.wishes if wish.kind != Wish.Kind.FORGET],
        lots=[],
    )
    return {
        "found": desk,
        "groups": desk.groups,
        "waiting": len(everything.matters),
        "chosen": ALL,
    }


def _hers_to_read(request: StudioRequest, everything: MorningList) -> MorningList:
    """Leave out what is not for her eyes."""
    if request.may.own or not request.may.treat:
        return everything
    hers = [m for m in everything.matters if _may_read(request, m)]
    return replace(everything, matters=hers)


def _may_read(request: StudioRequest, matter: Matter) -> bool:
    return request.staff.pk in matter.paged or any(reads_health(request.may, book) for book in matter.books)


@require_POST
@page("artist")
def flag_take(request: StudioRequest, flag_id: int) -> HttpResponseBase:
    """Say “I have this”; or, taking that back, that it waits for whoever takes it."""
    flag = flag_or_404(request, flag_id)
    giving_back = "undo" in request.POST
    try:
        (matters.give_back if giving_back else matters.take)(flag, by=request.staff, now=request.now)
    except ValidationError as error:
        tell(request, error)
    else:
        if giving_back:
            messages.success(request, _("Given back: it waits for whoever takes it."))
        else:
            said = _("You have this. It stays on the list until you close it.")
            undo.said(request, said, request.path, [("undo", 1)])
    return redirect("morning")


@require_http_methods(["GET", "POST"])
@page("artist")
def flag_close(request: StudioRequest, flag_id: int) -> HttpResponseBase:
    """Close it, with what came of it in a person's words."""
    flag = flag_or_404(request, flag_id)
    clients, told = list(flag.clients.order_by("pk")), matters.told(flag)
    form = CloseForm(request.POST or None, urgency=flag.urgency, tells_a_sign=told.any_sign, clients=clients)
    if request.method == "POST" and form.writes(lambda clean: _close(request, flag, clean)):
        upkeep.plan_clients([client.pk for client in clients], request.now)
        return _after_closing(request, flag)
    replies = flag.replies.select_related("line").order_by("received_at", "pk")
    shown = {
        "form": form,
        "flag": flag,
        "replies": replies,
        "clients": clients,
        "health": matters.is_about_health(flag),
    }
    return render(request, "aftercare/flag_close.html", shown)


def _close(request: StudioRequest, flag: Flag, clean: dict[str, Any]) -> Flag:
    with transaction.atomic():
        if clean.get("client"):
            matters.say_whose(flag, clean["client"])
        if clean["outcome"] == Outcome.NOT_REACHED:
            at = when(clean["try_again"], request.now, request.studio.zone)
            return matters.try_again(flag, at=at, words=clean["words"], by=request.staff, now=request.now)
        return matters.close(
            flag,
            outcome=Outcome(clean["outcome"]),
            words=clean["words"],
            on_record=clean["on_record"],
            by=request.staff,
            now=request.now,
        )


def _after_closing(request: StudioRequest, flag: Flag) -> HttpResponseBase:
    """Back to the list; where she is on hold for it now, that says so."""
    if flag.state != Flag.State.CLOSED:
        messages.success(request, _("Noted. It stays on the list, and you are told when it is time to try again."))
        return redirect("morning")
    held = (
        Reaction.objects.filter(client__in=flag.clients.all(), at=flag.opened_at, released_at=None)
        .select_related("client")
        .first()
    )
    if held is None:
        said = _("Closed, and kept on her card.")
        if (
            flag.outcome == Outcome.REMOVED
        ):  # that her lashes are off is on her record too: opening again leaves it there
            messages.success(request, said)
        else:
            undo.said(request, said, reverse("flag_reopen", args=[flag.pk]))
        return redirect("morning")
    said = _("Closed, and put on the record of %(name)s: she is on hold until someone releases her on her card.")
    undo.said(request, said % {"name": held.client.name}, reverse("flag_reopen", args=[flag.pk]))
    return redirect("morning")


@require_POST
@page("artist")
def flags_close(request: StudioRequest) -> HttpResponseBase:
    """Close several at once, none of which is about anybody's health."""
    form = SeveralForm(request.POST)
    chosen = [flag_or_404(request, int(pk)) for pk in request.POST.getlist("flag") if pk.isdecimal()]
    if not chosen:
        messages.error(request, _("Choose at least one."))
        return redirect("morning")
    if "undo" in request.POST:
        return _open_again(request, chosen)
    closed = form.written(
        lambda clean: matters.close_several(
            chosen, outcome=Outcome(clean["outcome"]), by=request.staff, now=request.now
        )
    )
    if closed is None:
        tell(request, ValidationError([str(error) for errors in form.errors.values() for error in errors]))
    else:
        said = ngettext("%(n)d closed.", "%(n)d closed.", closed) % {"n": closed}
        undo.said(request, said, request.path, [("undo", 1), *(("flag", flag.pk) for flag in chosen)])
    return redirect("morning")


@require_POST
@page("artist")
def flag_reopen(request: StudioRequest, flag_id: int) -> HttpResponseBase:
    """Put a closed matter back on the list; what was written on closing stays with it."""
    return _open_again(request, [flag_or_404(request, flag_id)])


def _open_again(request: StudioRequest, flags: list[Flag]) -> HttpResponseBase:
    try:
        with transaction.atomic():
            for flag in flags:
                matters.reopen(flag, now=request.now)
    except ValidationError as error:
        tell(request, error)
    else:
        upkeep.plan_clients([client.pk for flag in flags for client in flag.clients.all()], request.now)
        messages.success(request, _("Open again."))
    return redirect("morning")
