"""What a changed number would move, before it is saved: 20,000 planned messages, against two seconds of one core.

    python tests/bench/rules_preview.py [--messages 20000] [--postgres]

A third of the clients have a first set done within the last days, with its aftercare, checks and reminders to come; a
third are regulars with a fill done lately and the next one booked; a third have a booked first set with a patch test
due. Prints the processor seconds of each change, the best of three looks, and their ratio to the limit; ends with 1
where one is above it. That the look tells what planning then does is a test's matter, see test_ahead.py.
"""

from __future__ import annotations

import argparse
import os
import random
import sys
import tempfile
import time
from contextlib import ExitStack
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))  # run as a script from anywhere

from tests import servers  # noqa: E402

LIMIT = 2.0  # seconds
NOW = datetime(2027, 3, 10, 15, 30, tzinfo=UTC)
DAY = timedelta(days=1)
CHANGES: list[dict[str, object]] = [
    {"at": 11 * 60},  # every message at an hour of the day
    {"prepare_days": 4, "check_days": [2, 5, 8]},
    {"lead_days": 10, "reminder_hours": [660, 1140, [0, 6]]},
    {"set_checks": 3},
    {"fill_level": 0.65},  # forecasts anew for everybody
]


def fill(messages: int) -> Any:
    """Fill a fresh database until so many messages are planned; return the studio."""
    from aftercare import planning
    from aftercare.core.delivery import State
    from aftercare.lines import lines_of
    from aftercare.models import Message
    from studio.models import Adhesive, Staff, Studio

    studio = Studio.objects.create(
        slug="bench", name="Bench", time_zone="America/New_York", region="US", first_import_at=NOW - 90 * DAY
    )
    lines_of(studio)
    artist = Staff.objects.create(studio=studio, name="Ada", is_artist=True)
    glue = Adhesive.objects.create(studio=studio, product="Onyx", lot="1")
    draw = random.Random(1)
    number = 0
    while Message.objects.filter(state=State.PLANNED).count() < messages:
        ids = write(studio, artist, glue, draw, range(number, number + 600))
        planning.plan_clients(ids, NOW - DAY)
        number += 600
    planning.plan_studio(studio, NOW)
    return studio


def write(studio: Any, artist: Any, glue: Any, draw: random.Random, numbers: range) -> list[int]:
    from aftercare.models import Forecast
    from studio.models import Client, Consent, Visit
    from tests.forecasts import DAYS, FILL, FULL_SET, SLOWER, shares

    levels = {"fill_level": FILL, "full_set_level": FULL_SET}

    people = Client.objects.bulk_create(
        Client(
            studio=studio, first_name="Mia", last_name=f"Ortega {n}", email=f"mia{n}@mail.example", sensitive=n % 5 == 0
        )
        for n in numbers
    )
    Consent.objects.bulk_create(
        Consent(client=her, channel="email", purpose=purpose, given=True, at=NOW - 90 * DAY, how="on paper")
        for her in people
        for purpose in ("visits", "reminders")
    )
    visits = []
    for her in people:
        common = {"studio": studio, "client": her, "artist": artist, "heard_at": NOW - 80 * DAY, "adhesive": glue}
        kind = her.pk % 3
        if kind == 0:
            start = NOW - draw.uniform(1.1, 1.9) * DAY
            visits.append(Visit(service="full set", status="done", starts_at=start, minutes=180, **common))
        elif kind == 1:
            for back in (60, 40, draw.uniform(1.1, 18)):
                service = "full set" if back == 60 else "fill"
                done = {"status": "done", "share_left": 55 if back < 60 else None}
                visits.append(Visit(service=service, starts_at=NOW - back * DAY, minutes=75, **common, **done))
            start = NOW + draw.uniform(3, 20) * DAY
            visits.append(Visit(service="fill", status="booked", starts_at=start, minutes=75, **common))
        else:
            start = NOW + draw.uniform(8, 20) * DAY
            visits.append(Visit(service="full set", status="booked", starts_at=start, minutes=180, **common))
    visits = Visit.objects.bulk_create(visits)
    worn = {visit.client_id: visit for visit in visits if visit.status == "done"}
    rows = []
    for visit in worn.values():
        day = draw.uniform(12, 26)
        low, middle, high = (shares(day * part) for part in (0.8, 1, 1.25))
        curve = {"days": DAYS, "low": low, "middle": middle, "high": high, "read_low": low, "read_high": high}
        rows.append(
            Forecast(
                client=visit.client, visit=visit, made_at=NOW - DAY, readings=3, **levels,
                fill_low=0.8 * day, fill_day=day, fill_high=1.25 * day, full_set_low=0.8 * day * SLOWER,
                full_set_day=day * SLOWER, full_set_high=1.25 * day * SLOWER, curve=curve, usual=middle, loss={},
            )
        )  # fmt: skip
    Forecast.objects.bulk_create(rows)
    return [her.pk for her in people]


def measure(messages: int) -> int:
    import django

    django.setup()
    from django.core.management import call_command

    from aftercare import ruling, upkeep
    from aftercare.models import Message
    from studio.models import Client

    call_command("migrate", verbosity=0)
    studio = fill(messages)
    planned = Message.objects.filter(state="planned").count()
    print(f"{planned:,} planned messages of {Client.objects.count():,} clients, {Message.objects.count():,} rows")
    slowest = 0.0
    for numbers in CHANGES:
        values = ruling.changed(ruling.values_of(studio), studio.region, numbers)
        rules = ruling.read(values, studio, NOW)
        times = []
        for _ in range(3):
            began = time.process_time()
            found = upkeep.preview(studio, rules, NOW)
            times.append(time.process_time() - began)
        seconds = min(times)
        slowest = max(slowest, seconds)
        print(f"{numbers}: {seconds:.2f} s, {seconds / LIMIT:.2f} of the limit; {dict(found.counts)}")
    return int(slowest > LIMIT)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--messages", type=int, default=20_000)
    parser.add_argument("--postgres", action="store_true", help="on a PostgreSQL of its own; else on SQLite")
    chosen = parser.parse_args()
    with ExitStack() as stack:
        folder = stack.enter_context(tempfile.TemporaryDirectory())
        url = stack.enter_context(servers.postgres()) if chosen.postgres else f"sqlite:///{folder}/bench.sqlite3"
        os.environ.update(
            DATA_DIR=folder, DATABASE_URL=url, DJANGO_SETTINGS_MODULE="studio.settings", LOG_LEVEL="ERROR"
        )
        sys.exit(measure(chosen.messages))
