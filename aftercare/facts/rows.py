"""Reading the rows that a client's book is made of: one query each, however many clients."""

from __future__ import annotations

from collections import defaultdict

from django.db.models import Exists, OuterRef, QuerySet, Subquery, Value
from django.db.models.functions import Concat

from aftercare.models import Flag, Message, RuleSet, Stop
from studio.models import Client, Consent, Reaction, Visit, VisitRef

HELD_BY = ("emergency", "same_day")  # urgencies of a flag that put her on hold


def clients(ids: list[int]) -> list[tuple[Client, dict[str, object], bool]]:
    """These clients with their studios; with each the owner's own numbers, and whether an open flag holds her."""
    newest = RuleSet.objects.filter(studio=OuterRef("studio")).order_by("-version").values("values")[:1]
    standing = Flag.clients.through.objects.filter(client=OuterRef("pk"), flag__urgency__in=HELD_BY)
    held = Exists(standing.exclude(flag__state=Flag.State.CLOSED))
    people: QuerySet[Client] = Client.objects.filter(pk__in=ids).select_related("studio")
    rows = people.annotate(own_rules=Subquery(newest), flagged=held)
    return [(client, client.own_rules or {}, client.flagged) for client in rows]


def visits(ids: list[int]) -> tuple[dict[int, list[Visit]], dict[int, str]]:
    """Their visits in the order of time; and what breaks a tie between two at one moment: a book's reference."""
    found: dict[int, list[Visit]] = defaultdict(list)
    refs: dict[int, str] = {}
    named = VisitRef.objects.filter(visit=OuterRef("pk")).order_by("-pk")
    ref = Subquery(named.values(tie_break=Concat("source", Value(" "), "reference"))[:1])
    rows = Visit.objects.filter(client__in=ids).select_related("artist", "adhesive").annotate(tie_break=ref)
    for visit in rows.order_by("starts_at", "pk"):
        found[visit.client_id].append(visit)
        if visit.tie_break is not None:
            refs[visit.pk] = visit.tie_break
    return found, refs


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


def messages(hers: dict[int, list[Visit]]) -> dict[int, list[Message]]:
    """The messages about these clients' visits. A visit can have been another's: whose it is now counts."""
    found: dict[int, list[Message]] = defaultdict(list)
    whose = {visit.pk: client for client, visits in hers.items() for visit in visits}
    about = Message.objects.filter(visit__client__in=list(hers))
    for message in about.defer("text", "subject"):
        if (client := whose.get(message.visit_id or 0)) is not None:
            found[client].append(message)
    return found
