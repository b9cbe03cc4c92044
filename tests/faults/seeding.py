"""Fills a service's database with one live studio, all of whose texts are due now: run in that service's environment.

    python tests/faults/seeding.py CLIENTS [BIND]

Every other client had a fill (aftercare is due), the rest have a removal booked (instructions are). All of them were
introduced before.
"""

from __future__ import annotations

import sys
from datetime import timedelta
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

import django  # found by the path above

django.setup()

from django.core.management import call_command  # noqa: E402

from aftercare import lines, planning  # noqa: E402
from aftercare.models import Message  # noqa: E402
from studio import clock  # noqa: E402
from studio.models import Client, Consent, Studio, Visit  # noqa: E402
from tests.services import zone_at_work  # noqa: E402

SENDER = "+12125550199"
DAYS = timedelta(days=1)


def mobile(number: int) -> str:
    """Return a number of its own for each client; valid in the sense of the phonenumbers library."""
    return f"+1212{2_000_000 + number}"


def fill(clients: int, bind: str) -> None:
    call_command("migrate", verbosity=0)
    now = clock.now()
    studio = Studio.objects.create(
        slug="birch", name="Birch Lane", region="US", time_zone=zone_at_work(now), live_since=now - 30 * DAYS
    )
    line = lines.lines_of(studio)["sms"]
    line.address, line.transport = SENDER, "aftercare.transports.smpp.Smpp"
    line.options = {"bind": bind}
    line.save()
    people = Client.objects.bulk_create(
        # Her zone is stated: else her number's, in which it may be night, would count beside the studio's.
        Client(studio=studio, first_name="Mia", mobile=mobile(number), time_zone=studio.time_zone)
        for number in range(clients)
    )
    said = {"channel": "sms", "purpose": "visits", "given": True, "at": now - 30 * DAYS, "how": "on paper"}
    Consent.objects.bulk_create(Consent(client=person, **said) for person in people)
    done = {"service": "fill", "status": "done", "starts_at": now - timedelta(minutes=110), "minutes": 75}
    booked = {"service": "removal", "status": "booked", "starts_at": now + 2 * DAYS, "minutes": 45}
    Visit.objects.bulk_create(
        Visit(studio=studio, client=person, heard_at=now - 9 * DAYS, **(booked if number % 2 else done))
        for number, person in enumerate(people)
    )
    planning.plan_studio(studio, now)
    Message.objects.bulk_create(
        Message(
            studio=studio,
            key=f"number:{line.pk}:{person.mobile}:opt_in:1",
            client=person,
            occasion="opt_in",
            channel="sms",
            line=line,
            address=person.mobile,
            state="delivered",
            planned_from=now,
        )
        for person in people
    )
    print(Message.objects.filter(state="planned", due_at__lte=clock.now()).count())


if __name__ == "__main__":
    fill(int(sys.argv[1]), sys.argv[2] if len(sys.argv) > 2 else "alpha")
