"""The demo's last ten days, lived through hour by hour by the service's own stages: nothing is made up afterwards."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta

from aftercare import forecasting, receiving, tasks, upkeep
from aftercare.core.reading import Side
from aftercare.core.ticks import Asks, Since, Suits, Tick, Ticked
from aftercare.demo.cast import ZONE, Person
from aftercare.demo.year import Before, Year, at
from aftercare.lines import lines_of
from aftercare.models import Line
from studio import records
from studio.models import SETS, Client, Studio, Visit

STEP = timedelta(hours=2)
WEEKS_BEFORE = 8  # in which forecasts are made as well, so that there is something to score
WEEKS_A_FIT = 4
WEEK = timedelta(days=7)
MARKED_AFTER = timedelta(minutes=10)  # an artist marks a visit done a little after its end
# What clients wrote: days before today and the clock, or hours before now; who; what.
REPLIES: list[tuple[tuple[int, int] | float, str, str]] = [
    ((3, 18 * 60 + 20), "Grace", "Good, thank you!"),
    ((2, 19 * 60 + 5), "Bea", "could we go a bit shorter on the inner corners next time?"),
    ((1, 9 * 60 + 50), "Keiko", "Half of the right side has come off already, is that right after 9 days?"),
    ((1, 10 * 60 + 32), "Hana", "GOOD"),
    ((1, 11 * 60 + 15), "Priya", "Please could I move Friday to the week after? Any morning"),
    ((1, 17 * 60 + 15), "Lucía", "Hola! Todo bien, gracias. ¿Cuándo puedo usar rímel?"),
    ((1, 18 * 60 + 40), "Maren", "was a bit pink around the edges last night but its gone now"),
    ((1, 20 * 60 + 10), "Rosa", "Running about 10 min late tomorrow, sorry"),
    ((1, 20 * 60 + 55), "Greta", "pls take me off this, and my lids are sore"),
    ((1, 21 * 60 + 40), "Wilhelmina", "Love them!! only my left lid is kinda puffy n itchy since last nite"),
    (2.6, "Odile", "one of the lashes keeps poking me in the corner"),  # her daughter has the same number
    (1.3, "Thandiwe", "mắt tôi hơi đỏ"),
    (0.9, "Imani", "woke up and cant open my right eye, its swollen and theres gunk"),
]

# What they ticked on their own pages, hours before now.
TICKED: list[tuple[float, str, Ticked, str]] = [
    (3.4, "Maren", Ticked(ticks=frozenset({Tick.ITCHING, Tick.WATERING}), side=Side.RIGHT, since=Since.YESTERDAY), ""),
    (20.5, "Hana", Ticked(asks=Asks.MOVE, suits=frozenset({Suits.WEEKDAYS, Suits.EVENINGS})), ""),
]


@dataclass(slots=True)
class Days:
    """The days from ``since`` to ``until``, for one studio."""

    studio: Studio
    people: list[Person]
    year: Year
    since: datetime
    until: datetime

    def forecast_before(self, say: Callable[[str], None]) -> None:
        """Forecast at the end of each week before, from what had been seen by then."""
        say(f"demo studio: the forecasts of {WEEKS_BEFORE} weeks, each from what was known then")
        evening = at(self.since.astimezone(ZONE).date(), 23 * 60)
        for weeks in range(WEEKS_BEFORE, 0, -1):
            if weeks % WEEKS_A_FIT == 0:  # the service fits each night; that would take long to make
                forecasting.fit(evening - weeks * WEEK, studio=self.studio)
            forecasting.renew(self.studio, evening - weeks * WEEK)

    def live(self, say: Callable[[str], None]) -> None:
        """Forecast, plan, hand over, mark and receive, each at its hour."""
        say("demo studio: planning its messages")
        forecasting.fit(self.since, studio=self.studio)
        upkeep.catch_up(self.since, studio=self.studio)
        line = lines_of(self.studio)["sms"]
        replies = sorted(self._told(), key=lambda one: one[0])
        moment, day = self.since, None
        while moment < self.until:
            moment = min(moment + STEP, self.until, *(at for at, *_told in replies[:1]))
            if (today := moment.astimezone(ZONE).date()) != day:
                day = today
                say(f"demo studio: living through {day:%A} {day.day} {day:%B}")
                forecasting.renew(self.studio, moment)
            self._mark_done(moment)
            while replies and replies[0][0] <= moment:
                self._receive(line, *replies.pop(0))
            tasks.send_due(studio_id=self.studio.pk, now=moment)

    def _moment(self, when: tuple[int, int] | float) -> datetime:
        if isinstance(when, tuple):
            return at(self.until.astimezone(ZONE).date() - timedelta(days=when[0]), when[1])
        return self.until - timedelta(hours=when)

    def _mark_done(self, moment: datetime) -> None:
        """Mark the visits that ended since, but today's last ones: those are left for you to mark."""
        people = {person.client.pk: person for person in self.people}
        booked = Visit.objects.filter(studio=self.studio, status=Visit.Status.BOOKED, starts_at__lt=moment)
        for visit in booked.select_related("client").order_by("starts_at"):
            marked_at = visit.booked_end + MARKED_AFTER
            if marked_at <= moment and self.until - marked_at > timedelta(hours=3):
                used = self.year.used(visit, people[visit.client_id], _last_set(visit)) if visit.is_set else {}
                records.mark_done(visit=visit, by=visit.artist, now=marked_at, **used)
                upkeep.plan_clients([visit.client_id], marked_at)

    def _told(self) -> list[tuple[datetime, str, str, Ticked | None]]:
        texts = [(self._moment(when), name, text, None) for when, name, text in REPLIES]
        return [*texts, *((self._moment(when), name, words, ticked) for when, name, ticked, words in TICKED)]

    def _receive(self, line: Line, moment: datetime, name: str, text: str, ticked: Ticked | None) -> None:
        client = Client.objects.get(studio=self.studio, first_name=name)
        reference = f"demo-{client.pk}-{moment:%d%H%M}"
        kept = ticked.to_keep() if ticked else None
        receiving.receive(
            *(line, client.mobile, text),
            provider_ref=reference,
            received_at=moment,
            client=client if ticked else None,
            ticked=kept,
        )


def _last_set(visit: Visit) -> Before | None:
    before = Visit.objects.filter(client=visit.client_id, status=Visit.Status.DONE, starts_at__lt=visit.starts_at)
    sets = before.filter(service__in=SETS).select_related("adhesive")
    last = sets.order_by("-starts_at").first()
    return Before(last.starts_at.astimezone(ZONE).date(), last.adhesive) if last else None
