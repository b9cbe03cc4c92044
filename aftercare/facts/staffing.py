"""Who of a studio's staff is told of something, and how; who stands in for whoever is away."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from aftercare.core.reach import Reach
from aftercare.facts.books import ClientBook
from aftercare.models import Stop
from studio import covering
from studio.models import Staff, Studio, Visit


@dataclass(frozen=True, slots=True)
class Team:
    """Those who work in a studio on one day of its own clock, and who stands in for those who are away."""

    people: dict[int, Staff]
    away: dict[int, int | None]  # by who is away: her cover

    def standing(self, staff_id: int) -> Staff | None:
        """Return her, or while she is away whoever stands in for her; None: nobody does."""
        return self.people.get(covering.stands_in(self.away, staff_id) or 0)

    @property
    def owners(self) -> list[Staff]:
        return [person for person in self.people.values() if person.is_owner]


def team(studio: Studio, day: date) -> Team:
    """Read who works in the studio on ``day``. Two queries."""
    people = {person.pk: person for person in studio.staff.filter(is_active=True).order_by("pk")}
    return Team(people, covering.away(studio, day))


def responsible(book: ClientBook) -> Staff | None:
    """Return whose client she is now: the artist of her latest visit, else of her next one."""
    kept = [v for v in book.visits.values() if v.status in (Visit.Status.BOOKED, Visit.Status.DONE) and v.artist]
    begun = [visit for visit in kept if visit.starts_at <= book.now]
    if begun:
        return begun[-1].artist
    return kept[0].artist if kept else None


def ways(people: Iterable[Staff], *, first: str = "sms") -> dict[int, Reach]:
    """Return how each of them is told something: a text where she has a mobile, else an e-mail; never past a stop.

    ``first`` is the channel that is tried first. One query. Those without a way are left out.
    """
    asked = list(people)
    stopped = _stopped(asked)
    found: dict[int, Reach] = {}
    for person in asked:
        both = (("sms", person.mobile), ("email", person.email))
        for channel, address in both if first == "sms" else reversed(both):
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
