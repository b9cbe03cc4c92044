"""Lines of the morning list that leave it once somebody says that she has seen to them."""

from __future__ import annotations

from collections.abc import Callable

from django.contrib import messages
from django.core.exceptions import PermissionDenied, ValidationError
from django.http import HttpResponseBase
from django.shortcuts import get_object_or_404, redirect
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.http import require_POST

from aftercare import matters
from aftercare.models import Message, Wish
from aftercare.views.client_forms import hers_or_403
from aftercare.views.errors import tell
from studio import undo
from studio.access import StudioRequest, page, visit_or_404
from studio.models import Visit


def _on_her_list_or_403(request: StudioRequest, visit_id: int) -> Visit:
    """Return a visit whose lines are hers: as its artist, as her cover today, or as an owner."""
    visit = visit_or_404(request, visit_id)
    if request.may.own or visit.artist_id in request.may.stands_for:
        return visit
    if visit.artist is None:
        raise PermissionDenied(_("This is on the owners’ list: one of them sees to it."))
    raise PermissionDenied(
        _("This is on the list of %(name)s: she sees to it, whoever covers for her, or an owner.")
        % {"name": visit.artist.name}
    )


@require_POST
@page("artist", "front desk")
def message_see_to(request: StudioRequest, message_id: int) -> HttpResponseBase:
    """Say that something was done about a message that did not arrive: it leaves the list."""
    rows = Message.objects.filter(studio=request.studio, client__isnull=False)
    message = get_object_or_404(rows, pk=message_id)
    client = hers_or_403(request, message.client_id or 0)
    said = _("Seen to: %(name)s. It stays among her messages.") % {"name": client.name}
    return _seen_to(
        request,
        lambda: matters.see_to(message, by=request.staff, now=request.now),
        lambda: matters.unsee(message),
        said,
    )


@require_POST
@page("artist")
def unhappy_see_to(request: StudioRequest, visit_id: int) -> HttpResponseBase:
    """Say that somebody has seen to it that she left unhappy: it leaves the list."""
    visit = _on_her_list_or_403(request, visit_id)
    said = _("Seen to: %(name)s.") % {"name": visit.client.name}
    return _seen_to(
        request,
        lambda: matters.see_to_unhappy(visit, by=request.staff, now=request.now),
        lambda: matters.unsee_unhappy(visit),
        said,
    )


@require_POST
@page("artist")
def early_see_to(request: StudioRequest, visit_id: int) -> HttpResponseBase:
    """Say that somebody has looked into a set that is likely to fail early: it leaves the list."""
    visit = _on_her_list_or_403(request, visit_id)
    said = _("Seen to: %(name)s.") % {"name": visit.client.name}
    return _seen_to(
        request,
        lambda: matters.see_to_early(visit, by=request.staff, now=request.now),
        lambda: matters.unsee_early(visit),
        said,
    )


@require_POST
@page("artist", "front desk")
def address_see_to(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Say that somebody has seen to it that a client's address is nobody's: it leaves the list, and still rests."""
    client = hers_or_403(request, client_id)
    said = _("Seen to: %(name)s. No e-mail goes to that address.") % {"name": client.name}
    return _seen_to(
        request,
        lambda: matters.see_to_address(client, by=request.staff, now=request.now),
        lambda: matters.unsee_address(client),
        said,
    )


def _seen_to(
    request: StudioRequest, see_to: Callable[[], None], unsee: Callable[[], None], said: str
) -> HttpResponseBase:
    taking_back = "undo" in request.POST
    try:
        unsee() if taking_back else see_to()
    except ValidationError as error:
        tell(request, error)
    else:
        if taking_back:
            messages.success(request, _("It stands on the list again."))
        else:
            undo.said(request, said, request.path, [("undo", 1)])
    return redirect("morning")


@require_POST
@page("front desk")
def wishes_seen_to(request: StudioRequest) -> HttpResponseBase:
    """Say that what was asked about bookings has been seen to, one or several at once."""
    chosen = [int(pk) for pk in request.POST.getlist("wish") if pk.isdecimal()]
    if not chosen:
        messages.error(request, _("Tick at least one."))
    elif "undo" in request.POST:
        matters.unsee_wishes(request.studio, chosen)
        messages.success(request, _("It stands on the list again."))
    else:
        done = matters.see_to_wishes(request.studio, chosen, by=request.staff, now=request.now)
        said = ngettext("%(n)d seen to.", "%(n)d seen to.", done) % {"n": done}
        undo.said(request, said, request.path, [("undo", 1), *(("wish", pk) for pk in chosen)])
    return redirect("morning")


@require_POST
@page("front desk")
def wish_hand_over(request: StudioRequest, wish_id: int) -> HttpResponseBase:
    """Give it to her artist, to whom it may be more than a wish about a booking."""
    wish = get_object_or_404(Wish, studio=request.studio, pk=wish_id)
    matters.hand_over(wish, by=request.staff, now=request.now)
    messages.success(request, _("It stands on her artist’s list now."))
    return redirect("morning")
