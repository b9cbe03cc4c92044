"""Which messages a wording serves, were it in force: those of late that went in other words for want of it."""

from __future__ import annotations

from datetime import datetime

from django.db.models import Count

from aftercare import versions
from aftercare.core import say
from aftercare.models import Message, Wording
from aftercare.versions import Slot
from studio.models import Studio

Own = dict[Slot, Wording]


def ranked(slot: Slot, kind: str, step: int, language: str, studio: Studio) -> list[Slot]:
    """Return the slots that a message like ``slot``'s may go by, in her language first: the earlier, the sooner."""
    spoken = dict.fromkeys((say.subtag(language), say.subtag(studio.language), "en"))
    return [
        one for code in spoken if code for one in versions.candidates(slot.occasion, kind, step, slot.channel, code)
    ]


def serves(slot: Slot, kind: str, language: str, studio: Studio, own: Own) -> bool:
    """Say whether a message of a kind to a client who speaks ``language`` goes in the words of ``slot``."""
    for one in ranked(slot, kind, slot.step, language, studio):
        if one == slot:
            return True
        if versions.in_force(one, own.get(one)):
            return False
    return False


def sent(studio: Studio, slot: Slot, own: Own, since: datetime) -> int:
    """Return how often a wording went, in whatever version."""
    return Message.objects.filter(studio=studio, worded__in=_named(slot, own), handed_over_at__gte=since).count()


def sent_in_its_place(studio: Studio, slot: Slot, own: Own, since: datetime) -> int:
    """Return how often less exact words, or those of another language, went to whom this wording is for.

    Two queries at most, by the index of ``worded``: what it may stand in for is known by name.
    """
    if slot.is_first:
        return 0
    others = [one for one in ranked(slot, slot.kind, slot.step, slot.language, studio) if one != slot]
    names = {name: one for one in others for name in _named(one, own)}
    rows = (
        Message.objects.filter(studio=studio, worded__in=list(names), handed_over_at__gte=since)
        .order_by()
        .values_list("worded", "kind", "visit__service", "step", "language", "client__language")
        .annotate(n=Count("pk"))
    )
    found = 0
    for worded, kind, service, step, language, hers, n in rows:
        rank = ranked(slot, kind or service or "", step, language or hers or studio.language, studio)
        used = names[worded]
        found += n if slot in rank and used in rank and rank.index(slot) < rank.index(used) else 0
    return found


def _named(slot: Slot, own: Own) -> list[str]:
    newest = own.get(slot)
    return [slot.at(version) for version in range((newest.version if newest else 0) + 1)]
