"""The list of clients, found by name or by the last digits of the number."""

from __future__ import annotations

import re

from django.core.paginator import Paginator
from django.db.models import Max, Min, Q, QuerySet
from django.http import HttpResponse
from django.shortcuts import render

from studio import access
from studio.access import StudioRequest, page
from studio.alike import pattern
from studio.models import Client, Visit

PER_PAGE = 50
FEWEST_DIGITS = 3
WITH_AREA_CODE = 9  # digits from which on a 0 before them is one that is dialed at home only


@page()
def clients(request: StudioRequest) -> HttpResponse:
    """Show the clients whose names hold every word asked for, accents or none, or whose number ends so; else all."""
    asked = asked_for(request)
    found = _found(access.clients(request), asked)
    shown = Paginator(found, PER_PAGE).get_page(request.GET.get("page"))
    ids = [client.pk for client in shown]
    return render(request, "aftercare/clients.html", {"shown": shown, "asked": asked, "visits": _nearest(ids, request)})


def asked_for(request: StudioRequest) -> str:
    """Return what is searched for, without NUL: PostgreSQL takes none, and no name has one."""
    return request.GET.get("q", "").replace("\x00", "").strip()[:80]


def _found(rows: QuerySet[Client], asked: str) -> QuerySet[Client]:
    digits = re.sub(r"\D", "", asked)
    if len(digits) >= FEWEST_DIGITS and not re.search(r"[^\W\d_]", asked):
        return rows.filter(mobile__endswith=digits.lstrip("0") if len(digits) >= WITH_AREA_CODE else digits)
    for word in asked.split():
        named = pattern(word)
        rows = rows.filter(Q(first_name__iregex=named) | Q(last_name__iregex=named) | Q(email__istartswith=word))
    return rows.order_by("first_name", "last_name", "pk")


def _nearest(ids: list[int], request: StudioRequest) -> dict[int, dict[str, object]]:
    """Return for each client the start of her last done and of her next booked visit. One query."""
    rows = (
        Visit.objects.filter(client__in=ids)
        .values("client")
        .annotate(
            last=Max("starts_at", filter=Q(status=Visit.Status.DONE)),
            next=Min("starts_at", filter=Q(status=Visit.Status.BOOKED, starts_at__gte=request.now)),
        )
    )
    return {row["client"]: row for row in rows}
