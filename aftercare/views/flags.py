"""Which open matters somebody may see to."""

from __future__ import annotations

from django.shortcuts import get_object_or_404

from aftercare.models import Flag
from aftercare.pages.matter import pages_about
from studio.access import StudioRequest


def flag_or_404(request: StudioRequest, flag_id: int) -> Flag:
    """Return the flag if a client of its is hers to read, or she was paged; to the owner also one of nobody known."""
    flag = get_object_or_404(Flag.objects.prefetch_related("clients"), studio=request.studio, pk=flag_id)
    hers = request.may.read_health_of([client.pk for client in flag.clients.all()])
    if not (hers or request.may.own or was_paged(request, flag)):
        get_object_or_404(Flag.objects.none())
    return flag


def was_paged(request: StudioRequest, flag: Flag) -> bool:
    """Whether she treats clients and was told of this matter: on duty, or as the third contact of an emergency.

    Whoever is called at night must see what for, and may take it: it is the one matter, not the client's card.
    """
    return request.may.treat and pages_about([flag.pk]).filter(staff=request.staff).exists()
