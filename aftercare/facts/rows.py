"""Reading the rows that a client's book is made of: one query each, however many clients."""

from __future__ import annotations

from collections import defaultdict

from aftercare.models import Flag, Message, Stop
from studio.models import Client, Consent, Reaction, Visit, VisitRef

HELD_BY = ("emergency", "same_day")  # urgencies of a flag that put her on hold


def visits(ids: list[int]) -> dict[int, list[Visit]]:
    found: dict[int, list[Visit]] = defaultdict(list)
    for visit in Visit.objects.filter(client__in=ids).select_related("artist", "adhesive").order_by("starts_at", "pk"):
        found[visit.client_id].append(visit)
    return found


def tie_breaks(ids: list[int]) -> dict[int, str]:
    rows = VisitRef.objects.filter(visit__client__in=ids).values_list("visit_id", "source", "reference")
    return {visit: f"{source} {reference}" for visit, source, reference in rows}


def consents(ids: list[int]) -> dict[int, dict[tuple[str, str], bool]]:
    found: dict[int, dict[tuple[str, str], bool]] = defaultdict(dict)
    rows = Consent.objects.filter(client__in=ids).order_by("at", "pk")
    for client, channel, purpose, given in rows.values_list("client_id", "channel", "purpose", "given"):
        found[client][(channel, purpose)] = given  # the newest answer counts
    return found


def stops(clients: list[Client]) -> set[tuple[int, str, str]]:
    addresses = {client.mobile for client in clients} | {client.email.lower() for client in clients}
    rows = Stop.objects.filter(lifted_at=None, address__in=addresses - {""})
    return set(rows.values_list("line__studio_id", "line__channel", "address"))


def reactions(ids: list[int]) -> dict[int, list[Reaction]]:
    found: dict[int, list[Reaction]] = defaultdict(list)
    for reaction in Reaction.objects.filter(client__in=ids).order_by("at", "pk"):
        found[reaction.client_id].append(reaction)
    return found


def held_by_flags(ids: list[int]) -> set[int]:
    standing = Flag.objects.filter(clients__in=ids, urgency__in=HELD_BY).exclude(state=Flag.State.CLOSED)
    return set(standing.values_list("clients", flat=True))


def messages(hers: dict[int, list[Visit]]) -> dict[int, list[Message]]:
    """The messages about these clients' visits. A visit can have been another's: whose it is now counts."""
    found: dict[int, list[Message]] = defaultdict(list)
    whose = {visit.pk: client for client, visits in hers.items() for visit in visits}
    about = Message.objects.filter(visit__client__in=list(hers))
    for message in about.defer("text", "subject"):
        if (client := whose.get(message.visit_id or 0)) is not None:
            found[client].append(message)
    return found
