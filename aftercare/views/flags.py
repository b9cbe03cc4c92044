"""Which open matters somebody may see to."""

from __future__ import annotations

from django.shortcuts import get_object_or_404

from aftercare.models import Flag
from studio.access import StudioRequest


def flag_or_404(request: StudioRequest, flag_id: int) -> Flag:
    """Return the flag if one of its clients is hers to read; to the owner also one of nobody known."""
    flag = get_object_or_404(Flag.objects.prefetch_related("clients"), studio=request.studio, pk=flag_id)
    hers = request.may.read_health_of([client.pk for client in flag.clients.all()])
    if not (hers or request.may.own):
        get_object_or_404(Flag.objects.none())
    return flag
