"""Messages going out and gone, by where they stand, each with its reason."""

from __future__ import annotations

from collections.abc import Sequence

from django.db.models.functions import Coalesce
from django.http import HttpResponse
from django.shortcuts import render
from django.utils.translation import gettext_lazy as _

from aftercare import facts, planning
from aftercare.core.delivery import State
from aftercare.core.timing import Occasion
from aftercare.models import Flag, Message
from aftercare.pages import shown
from aftercare.pages.paging import Key, Stream, stretch
from studio.access import StudioRequest, page

PER_PAGE = 40
MOST_HOURS = 31 * 24
GROUPS = {
    "going": (_("Going out"), (State.PLANNED, State.CLAIMED, State.HANDING_OVER)),
    "gone": (_("Gone"), (State.HANDED_OVER, State.DELIVERED)),
    "trouble": (_("Not delivered, or not known"), (State.UNDELIVERED, State.UNSURE)),
    "withheld": (_("Withheld"), (State.WITHHELD,)),
    "withdrawn": (_("Withdrawn"), (State.WITHDRAWN,)),
}


@page()
def messages(request: StudioRequest) -> HttpResponse:
    """Show one group at a time: what is going out soonest first, everything else newest first."""
    group = request.GET.get("group", "going")
    group = group if group in GROUPS else "going"
    occasion = request.GET.get("occasion", "")
    hours = _hours(request) if group == "going" else 0
    streams = _streams(request, group, occasion, hours)
    found = stretch(streams, _key, request.GET.get("page", ""), PER_PAGE, falling=group != "going")
    reads = request.may.read_health_of({message.client_id for message in found.rows if message.client_id})
    offered = [(str(one), shown.OCCASIONS[one]) for one in Occasion if request.may.treat or one not in shown.TELLING]
    return render(
        request,
        "aftercare/messages.html",
        {
            "found": found,
            "lines": shown.show(
                found.rows, facts.rules_of(request.studio), reads, besides=_besides(request, found.rows)
            ),
            "groups": [(name, words) for name, (words, _states) in GROUPS.items()],
            "group": group,
            "group_words": GROUPS[group][0],
            "occasions": offered,
            "occasion": occasion,
            "hours": hours,
            "within": planning.leaving_within(request.studio, request.now, hours).count() if hours else 0,
        },
    )


def _hours(request: StudioRequest) -> int:
    """Return within how many hours from now they leave; 0: at any time."""
    asked = request.GET.get("hours", "")
    return min(int(asked), MOST_HOURS) if asked.isascii() and asked.isdigit() and len(asked) < 6 else 0


def _streams(request: StudioRequest, group: str, occasion: str, hours: int) -> list[Stream[Message]]:
    """Return the messages of each state by itself, as an index has them; those without a moment by what they aim at."""
    rows = Message.objects.filter(studio=request.studio)
    if hours:
        rows = planning.leaving_within(request.studio, request.now, hours)
    rows = rows.select_related("client", "staff", "seen_to_by")
    if occasion in {str(one) for one in Occasion} and (request.may.treat or occasion not in shown.TELLING):
        rows = rows.filter(occasion=occasion)
        if occasion in shown.TELLING and not request.may.own:  # the very filter would tell of other artists' clients
            rows = rows.filter(client__in=request.may.treated())
    states = GROUPS[group][1]
    dated = [Stream(rows.filter(state=state, due_at__isnull=False), "due_at") for state in states]
    undated = rows.filter(state__in=states, due_at=None).annotate(at=Coalesce("aim_at", "planned_from"))
    return [*dated, Stream(undated, "at")]


def _besides(request: StudioRequest, rows: Sequence[Message]) -> set[int]:
    """Return those to no one client that she may read: all as owner, else what she tried out and of her matters."""
    few = [message for message in rows if shown.is_for_few(message)]
    if request.may.own:
        return {message.pk for message in few}
    own = {message.pk for message in few if message.staff_id == request.staff.pk}
    flags = {message.flag_id for message in few if message.flag_id is not None}
    if not flags or not request.may.treat:
        return own
    hers = Flag.objects.filter(pk__in=flags, clients__in=request.may.treated()).values_list("pk", flat=True)
    seen = set(hers)
    return own | {message.pk for message in few if message.flag_id in seen}


def _key(message: Message) -> Key:
    return message.due_at or message.aim_at or message.planned_from, message.pk
