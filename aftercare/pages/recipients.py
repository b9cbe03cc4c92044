"""For whom a wording is shown in its editor: a client of the studio, or the longest names there are."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from aftercare import facts, texts
from aftercare.core.fields import FIELDS, STAFF, Facts, Field, Value, kind_of
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook
from aftercare.models import Message
from aftercare.versions import Slot
from aftercare.wording import Finder, WordingError, Words, longest, values
from studio.models import Client, Studio, Visit

SOON = timedelta(days=14)
MOST_CLIENTS = 12
_LOOKED_AT = 80  # visits among which the clients to choose from are found


def of_studio(given: Facts, studio: Studio) -> Facts:
    """Put the studio's own name, telephone and country into facts made up for a preview."""
    return replace(given, studio=studio.name, studio_phone=studio.phone or given.studio_phone, region=studio.region)


def message_of(slot: Slot) -> Slot:
    """Return the slot of a message that carries a block, and any other as it is."""
    if slot.occasion == "how_to_stop":
        return replace(slot, occasion="patch_test", kind="")
    if not slot.is_caution:
        return slot
    occasion = {"": "care", "check": "check"}.get(slot.kind, "answer")
    return replace(slot, occasion=occasion, kind=slot.kind if occasion == "answer" else "", step=0)


def may_be_shown_for(slot: Slot) -> bool:
    """Whether it goes to clients at all."""
    return slot.occasion not in STAFF


def clients(studio: Studio, asked: str, now: datetime) -> list[Client]:
    """Return clients to choose from: those whose names hold every word asked for, else those of the latest visits."""
    known = Client.objects.standing().filter(studio=studio)
    if words := asked.split():
        for word in words:
            known = known.filter(first_name__icontains=word) | known.filter(last_name__icontains=word)
        return list(known.order_by("first_name", "last_name", "pk")[:MOST_CLIENTS])
    return of_late(studio, now)[:MOST_CLIENTS]


def of_late(studio: Studio, now: datetime) -> list[Client]:
    """Return the clients of the latest visits, and of the next two weeks', the last first."""
    visits = Visit.objects.filter(studio=studio, starts_at__lt=now + SOON).order_by("-starts_at")
    ids = list(dict.fromkeys(visits.values_list("client_id", flat=True)[:_LOOKED_AT]))
    by_id = Client.objects.standing().filter(studio=studio).in_bulk(ids)
    return [by_id[pk] for pk in ids if pk in by_id]


def facts_for(about: Slot, client: Client, now: datetime) -> Facts:
    """Return what this message would say to her: of the visit of hers that it would be for, else of her latest."""
    return facts_in(facts.load([client.pk], now)[client.pk], about, now)


def facts_in(book: ClientBook, about: Slot, now: datetime) -> Facts:
    """Return the same of a client whose book is loaded."""
    visit = visit_for(about, book, now)
    message = Message(
        studio=book.studio,
        client=book.client,
        visit=visit,
        occasion=about.occasion,
        kind=about.kind if about.occasion == Occasion.ANSWER else "",
        step=about.step,
        channel=about.channel,
        language=about.language,
    )
    found = texts.facts_of(message, book, now)
    return replace(found, kind=about.kind or found.kind)


def visit_for(about: Slot, book: ClientBook, now: datetime) -> Visit | None:
    """Return the visit of hers that a message would be for, else her latest; None where she has none."""
    visits = list(book.visits.values())
    ahead = about.occasion in (Occasion.PREPARE, Occasion.PATCH_TEST)
    fitting = [one for one in visits if (one.starts_at > now) is ahead] or visits
    of_kind = [one for one in fitting if about.kind in ("", kind_of(one.service))]
    chosen = of_kind or fitting
    return (chosen[0] if ahead else chosen[-1]) if chosen else None


def values_for(
    studio: Studio, slot: Slot, client: Client | None, find: Finder, now: datetime
) -> tuple[tuple[str, Field, Value], ...]:
    """Return the fields that a wording may use, each with its value for this client, or for the longest names."""
    about = message_of(slot)
    if client is not None:
        given = facts_for(about, client, now)
    else:
        plain = Words("", "", about.language)
        every = longest(about.occasion, about.kind, about.step, about.channel, about.language, plain)
        given = of_studio(next(iter(every)), studio)
    try:
        known = values(given, find)
    except WordingError:
        known = {}
    return tuple((name, field, known.get(name)) for name, field in FIELDS.items() if field.serves(slot.occasion))
