"""Who of a studio's staff gets a morning list, and how."""

from __future__ import annotations

from collections.abc import Iterable

from aftercare.core.reach import Reach
from aftercare.models import Stop
from studio.models import Staff


def ways(people: Iterable[Staff]) -> dict[int, Reach]:
    """Return how each of them gets her list: a text where she has a mobile, else an e-mail; never past a stop of hers.

    One query. Those without a way are left out.
    """
    asked = list(people)
    stopped = _stopped(asked)
    found: dict[int, Reach] = {}
    for person in asked:
        for channel, address in (("sms", person.mobile), ("email", person.email)):
            if address and (person.studio_id, channel, address.lower()) not in stopped:
                found.setdefault(person.pk, Reach(channel, address))
    return found


def _stopped(people: list[Staff]) -> set[tuple[int, str, str]]:
    addresses = {address.lower() for person in people for address in (person.mobile, person.email)} - {""}
    rows = Stop.objects.filter(lifted_at=None, address__in=addresses)
    return set(rows.values_list("line__studio_id", "line__channel", "address"))


def gets_a_list(person: Staff) -> bool:
    """Whether anything can wait for her: she works here, as an artist or as the owner."""
    return person.is_active and (person.is_artist or person.is_owner)
