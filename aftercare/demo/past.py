"""What the demo's figures need from the weeks before: reminders that went, or could not, and matters long closed.

All of it is past and over, so that nothing is planned, paged or listed for it.
"""

from __future__ import annotations

import random
from collections.abc import Iterable
from datetime import datetime, timedelta

from aftercare.core.delivery import State
from aftercare.core.segments import measure
from aftercare.core.timing import Occasion, Rules
from aftercare.demo.cast import ZONE, Person
from aftercare.demo.year import at
from aftercare.lines import lines_of
from aftercare.models import Flag, Forecast, Message, Reply
from studio.models import SETS, Consent, Studio, Visit

AIM = 10 * 60  # minutes of the day
SAID = {
    "en": "Wrenfield Lash Room: by now your set may soon be ready for a fill. Reply with a day that suits you. "
    "Reply STOP to end texts.",
    "es": "Wrenfield Lash Room: su set pronto estará listo para un relleno. Responda con un día que le convenga. "
    "Responda STOP para no recibir más mensajes.",
}
WROTE = [
    ("same_day", "my lids are itchy and a bit puffy since this morning"),
    ("watch", "a few came off on the left side already"),
    ("none", "could I have them a little longer next time?"),
    ("same_day", "left eye is red and watering today"),
    ("none", "thank you, they look so good"),
]
MATTERS = 24


def write(studio: Studio, people: Iterable[Person], before: datetime, pick: random.Random) -> None:
    """Write both, of the weeks that end well before ``before``."""
    _reminders(studio, people, before)
    _matters(studio, before, pick)


def _reminders(studio: Studio, people: Iterable[Person], before: datetime) -> None:
    """A reminder for each set that had a forecast and is not on any more, where nothing had been booked."""
    line = lines_of(studio)["sms"]
    agreed = set(
        Consent.objects.filter(purpose="reminders", channel="sms", given=True).values_list("client", flat=True)
    )
    waits = {person.client.pk for person in people if not person.books_ahead}
    first: dict[int, Forecast] = {}
    rows = Forecast.objects.filter(client__in=waits, made_at__lt=before).select_related("client", "visit")
    for forecast in rows.order_by("made_at", "pk"):
        first.setdefault(forecast.visit_id, forecast)
    made = []
    for forecast in first.values():
        visit, lead = forecast.visit, Rules().lead_days
        day = visit.starts_at.astimezone(ZONE).date() + timedelta(days=max(9, round(forecast.fill_day) - lead))
        aim = at(day, AIM)
        later = Visit.objects.filter(client=visit.client_id, starts_at__gt=aim, starts_at__lt=before, service__in=SETS)
        if aim < forecast.made_at or not later.exists():
            continue
        went = visit.client_id in agreed
        text = SAID[forecast.client.language] if went else ""
        made.append(
            Message(
                studio=studio,
                key=f"visit:{visit.pk}:{Occasion.FILL_DUE.value}:0:1",
                client_id=visit.client_id,
                visit=visit,
                occasion=Occasion.FILL_DUE,
                state=State.HANDED_OVER if went else State.WITHHELD,
                reason="" if went else "no consent",
                channel="sms" if went else "",
                line=line if went else None,
                address=forecast.client.mobile if went else "",
                text=text,
                segments=measure(text).segments if went else None,
                rehearsed=went,
                due_at=aim,
                aim_at=aim,
                planned_from=forecast.made_at,
                handed_over_at=aim if went else None,
                ended_at=None if went else aim,
                forecast=forecast,
            )
        )
    Message.objects.bulk_create(made)


def _matters(studio: Studio, before: datetime, pick: random.Random) -> None:
    """Some replies of the months before, each taken after a while and closed."""
    line = lines_of(studio)["sms"]
    done = Visit.objects.filter(studio=studio, status=Visit.Status.DONE, service__in=SETS, client__mobile__gt="")
    rows = list(done.filter(starts_at__lt=before - timedelta(days=4)).select_related("client", "artist").order_by("pk"))
    for number, visit in enumerate(pick.sample(rows, MATTERS)):
        urgency, text = WROTE[number % len(WROTE)]
        wrote = visit.end + timedelta(hours=pick.randrange(14, 40))
        taken = wrote + timedelta(minutes=round(pick.lognormvariate(3.4 if urgency == "same_day" else 5, 0.7)))
        flag = Flag.objects.create(
            studio=studio,
            urgency=urgency,
            state=Flag.State.CLOSED,
            opened_at=wrote,
            urgent_since=wrote,
            taken_at=taken,
            taken_by=visit.artist,
            closed_at=taken + timedelta(hours=2),
            closed_by=visit.artist,
            outcome="over" if urgency == "same_day" else "answered",
            words="Spoke with her.",
        )
        flag.clients.add(visit.client)
        Reply.objects.create(
            studio=studio,
            line=line,
            from_address=visit.client.mobile,
            provider_ref=f"demo-past-{number}",
            received_at=wrote,
            text=text,
            client=visit.client,
            flag=flag,
            read_at=wrote,
        )
