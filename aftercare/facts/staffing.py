"""Who of a studio's staff is told of something, and how; who stands in for whoever is away."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from aftercare.core.reach import Reach
from aftercare.facts.books import ClientBook
from aftercare.models import Stop
from studio.models import Absence, Staff, Studio, Visit


@dataclass(frozen=True, slots=True)
class Team:
    """Those who work in a studio on one day of its own clock, and who stands in for those who are away."""

    people: dict[int, Staff]
    away: dict[int, int | None]  # by who is away: her cover

    def standing(self, staff_id: int) -> Staff | None:
        """Return her, or while she is away whoever stands in for her; None: nobody does."""
        asked: set[int] = set()
        while staff_id in self.away:
            cover = self.away[staff_id]
            if cover is None or cover in asked:
                return None
            asked.add(staff_id)
            staff_id = cover
        return self.people.get(staff_id)

    @property
    def owners(self) -> list[Staff]:
        return [person for person in self.people.values() if person.is_owner]

    def covered_by(self, person: Staff) -> set[int]:
        """Return whose lists she has beside her own today; those that nobody stands in for are the owners'."""
        stand_ins = {pk: self.standing(pk) for pk in self.away}
        return {
            pk
            for pk, stand_in in stand_ins.items()
            if pk != person.pk and (person.is_owner if stand_in is None else stand_in == person)
        }


def team(studio: Studio, day: date) -> Team:
    """Read who works in the studio on ``day``. Two queries."""
    people = {person.pk: person for person in studio.staff.filter(is_active=True).order_by("pk")}
    absences = Absence.objects.filter(staff__in=people, first_day__lte=day, last_day__gte=day).order_by("pk")
    away = {absence.staff_id: absence.cover_id if absence.cover_id in people else None for absence in absences}
    return Team(people, away)


def responsible(book: ClientBook) -> Staff | None:
    """Return whose client she is now: the artist of her latest visit, else of her next one."""
    kept = [v for v in book.visits.values() if v.status in (Visit.Status.BOOKED, Visit.Status.DONE) and v.artist]
    begun = [visit for visit in kept if visit.starts_at <= book.now]
    if begun:
        return begun[-1].artist
    return kept[0].artist if kept else None


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
