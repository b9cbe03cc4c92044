"""How many visits a second one core plans: ``python -m tests.bench.timing``, no database.

2,500 invented clients in seven zones with eight visits each, half of them past and done, half booked within the next
weeks; a third of the clients sensitive, and of each the set that she wears is forecast. The best of five runs counts,
by processor time. Exits 1 below the limit.
"""

from __future__ import annotations

import random
import sys
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))  # run as a script from anywhere

from aftercare.core import timing
from aftercare.core.timing import Client, Planned, Rules, SetForecast, Slot, Standing, Visit

LIMIT = 20_000  # visits a second a core
CLIENTS, VISITS_EACH, RUNS = 2_500, 8, 5
NOW = datetime(2027, 3, 10, 15, 30, tzinfo=UTC)  # the clocks of America and Europe are about to change
ZONES = [
    ZoneInfo(name)
    for name in (
        "America/New_York",
        "Europe/London",
        "Australia/Sydney",
        "Asia/Kolkata",
        "Australia/Lord_Howe",
        "America/St_Johns",
        "Pacific/Chatham",
    )
]
SERVICES = ("full set", "fill", "fill", "fill", "fill", "removal", "patch test", "lift")
Book = tuple[Client, list[Visit], SetForecast | None]


def book(number: int, draw: random.Random) -> Book:
    visits = []
    for place in range(VISITS_EACH):
        is_past = place < VISITS_EACH // 2
        days = draw.uniform(-14, -0.1) if is_past else draw.uniform(0.1, 40)
        start = (NOW + timedelta(days=days)).replace(second=0)
        visits.append(
            Visit(
                id=number * VISITS_EACH + place,
                ref=f"v{place}",
                service=draw.choice(SERVICES),
                status="done" if is_past else "booked",
                start=start,
                end=start + timedelta(minutes=75),
                heard_at=NOW - timedelta(days=60),
                adhesive=draw.choice(("", "Onyx", "Slate")),
            )
        )
    zone = draw.choice(ZONES)
    client = Client(
        zone=zone,
        sensitive=draw.random() < 1 / 3,
        channel="sms",
        unreachable=None,
        reminder_channel="sms",
        reminder_unreachable=None,
    )
    return client, visits, forecast(visits, draw)


def forecast(visits: list[Visit], draw: random.Random) -> SetForecast | None:
    sets = [visit for visit in visits if visit.status == "done" and visit.service in ("full set", "fill")]
    if not sets:
        return None
    fill = draw.uniform(10, 30)
    return SetForecast(max(sets, key=lambda visit: visit.start).id, fill, fill + 6, fill + 12, id=1)


def waiting(messages: list[Planned]) -> dict[Slot, Standing]:
    return {
        m.slot: Standing(
            open_edition=m.edition,
            open_planned=m.reason is None,
            open_aim=m.aim,
            open_from=m.planned_from,
            open_forecast=m.forecast,
        )
        for m in messages
    }


def best(run: Callable[[], int]) -> tuple[float, int]:
    """Return the fewest seconds of processor time that a run took, and what it counted."""
    found, count = float("inf"), 0
    for _ in range(RUNS):
        began = time.process_time()
        count = run()
        found = min(found, time.process_time() - began)
    return found, count


def main() -> int:
    draw, rules = random.Random(1), Rules()
    books = [book(number, draw) for number in range(CLIENTS)]
    standing = [waiting(timing.plan(client, visits, rules, NOW, None, made)) for client, visits, made in books]

    def first() -> int:
        return sum(len(timing.plan(client, visits, rules, NOW, None, made)) for client, visits, made in books)

    def again() -> int:
        pairs = zip(books, standing, strict=True)
        return sum(
            len(timing.plan(client, visits, rules, NOW, record, made)) for (client, visits, made), record in pairs
        )

    slowest = float("inf")
    for name, run in (("first plan", first), ("planned again", again)):
        seconds, messages = best(run)
        rate = CLIENTS * VISITS_EACH / seconds
        slowest = min(slowest, rate)
        print(f"{name}: {rate:,.0f} visits a second a core, {messages:,} messages, {rate / LIMIT:.2f} of the limit")
    return 0 if slowest >= LIMIT else 1


if __name__ == "__main__":
    sys.exit(main())
