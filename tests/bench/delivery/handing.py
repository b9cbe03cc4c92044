# ruff: noqa: E402  Django is set up first
"""Texts a second by one sender on one database, beside the SMS centre's own rate: a run of ``all.py``, in a process.

    python tests/bench/delivery/handing.py PORT CONTROL [--receipts] [--latency 20] [--number 1500] [--rounds 3]
                                           [--profile whole|handed]

The centre is running; ``DATABASE_URL`` names a fresh database. *whole* is all that ``run_smpp`` does: claimed, judged,
written, journaled, handed over, settled. *handed* is the same with letters that were judged beforehand. With receipts
a text counts once its receipt is stored and its message delivered. *leanest* is what a bare loop on a table of its own
reaches here, *leanest_own* the same loop on the service's tables (``leanest.py``). Prints one line of JSON: texts a
second, the best of the rounds, and the processor time of this process in ms a text, the least.
"""

from __future__ import annotations

import argparse
import cProfile
import json
import os
import pstats
import sys
import time
from collections import Counter
from collections.abc import Callable, Sequence
from contextlib import nullcontext
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[3]))
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "studio.settings")

import django

django.setup()

from django.conf import settings
from django.core.management import call_command
from django.db import connection

from aftercare import lines, outbox, receiving, sending
from aftercare.core.delivery import State
from aftercare.models import Attempt, Message, Receipt
from aftercare.outbox import Lane
from aftercare.sending.judging import Judge
from aftercare.sending.letters import Letter
from aftercare.sending.streaming import Feeder, hand_over
from aftercare.transports.smpp import Smpp
from studio import clock
from tests.bench.delivery import book
from tests.bench.delivery.bare import own_rate
from tests.bench.delivery.leanest import OwnPostgres, OwnSqlite, Postgres, Sqlite, Table, leanest_rate
from tests.smsc import Smsc

BIND = "bench"
BESIDE = settings.DATA_DIR / "leanest.sqlite3"
ROAD = "aftercare.transports.smpp.Smpp"
LONGEST = 60.0  # seconds to wait for receipts
MORE = 10  # times as many for the leanest, whose rate would be that of its first and last window else


class Judged(Feeder):
    """Gives letters that were judged beforehand."""

    __slots__ = ("letters",)

    letters: list[Letter]

    def judge_all(self) -> None:
        now = clock.now()
        claimed = outbox.claim(now, 1_000_000, lane=self.lane)
        judge = Judge(now, self.roads, self.count)
        self.letters = judge.without_waiting(judge.introduce(judge.judge(claimed)))

    def fill(self) -> bool:
        batch, self.letters = self.letters[: self.batch], self.letters[self.batch :]
        self._put(batch)
        return bool(batch)


def whole(road: Smpp) -> Callable[[], Counter[str]]:
    return lambda: sending.stream(road, BIND)


def handed(road: Smpp) -> Callable[[], Counter[str]]:
    bound = lines.bound()[BIND]
    lane = Lane(frozenset(bound.studios), frozenset(bound.lines), only=True)
    feeder = Judged(road, BIND, lane, lambda: False, None)
    feeder.judge_all()
    return lambda: hand_over(feeder)


def reported(number: int) -> bool:
    return Receipt.objects.exclude(attempt=None).count() >= number + book.GONE


def one_round(
    road: Smpp, send: Callable[[], Counter[str]], number: int, receipts: bool, profile: cProfile.Profile | None
) -> tuple[float, float]:
    """Return texts a second and ms of processor time a text. Exits where not all of them went."""
    began, worked = time.monotonic(), time.process_time()
    with profile or nullcontext():
        counts = send()
        while receipts and not reported(number):
            road.collect(0.05)
            if time.monotonic() - began > LONGEST:
                sys.exit(f"{Receipt.objects.count()} receipts of {number} came")
    passed, worked = time.monotonic() - began, time.process_time() - worked
    state = State.DELIVERED if receipts else State.HANDED_OVER
    gone = Message.objects.filter(state=state, occasion="prepare").count()
    longest = max(Message.objects.values_list("segments", flat=True), key=lambda parts: parts or 0)
    if longest != 1:
        sys.exit(f"a text has {longest} parts")
    if counts[State.HANDED_OVER] != number or gone != number or Attempt.objects.count() != number + book.GONE:
        sys.exit(f"{dict(counts)}, {gone} {state.value} instead of {number}")
    return number / passed, worked / number * 1000


def _tables() -> list[tuple[str, Table]]:
    """Return the narrow table of the leanest sender, and ours."""
    if connection.vendor == "postgresql":
        url = os.environ["DATABASE_URL"]
        return [("leanest", Postgres(url)), ("leanest_own", OwnPostgres(url))]
    return [("leanest", Sqlite(BESIDE)), ("leanest_own", OwnSqlite(Path(settings.DATABASES["default"]["NAME"])))]


def measure(
    centre: Smsc, receipts: bool, latency: int, window: int, number: int, rounds: int, profile: str
) -> dict[str, float]:
    call_command("migrate", verbosity=0)
    book.make(number, ROAD, bind=BIND)
    found: dict[str, list[float]] = {}
    profiler = cProfile.Profile() if profile else None
    ways: Sequence[tuple[str, Callable[[Smpp], Callable[[], Counter[str]]]]] = (("whole", whole), ("handed", handed))
    for _ in range(rounds):
        own = own_rate(centre, 1 if latency else window, 1.0, receipts=receipts)
        found.setdefault("own", []).append(own)
        for name, table in _tables():
            more = MORE * number if name == "leanest" and not latency else number
            if name == "leanest_own":
                book.rewind(clock.now())
            found.setdefault(name, []).append(leanest_rate(centre, table, window, more, receipts=receipts))
            table.close()
        for name, way in ways:
            if profile not in ("", name):
                continue
            book.rewind(clock.now())
            road = Smpp(
                bind=BIND, window=window, receipts=receipts, inbox=receiving.inbox(f"smpp:{BIND}"), **centre.address
            )
            road.collect(0.1)
            rate, cost = one_round(road, way(road), number, receipts, profiler)
            road.close()
            found.setdefault(name, []).append(rate)
            found.setdefault(f"{name}_ms", []).append(cost)
    if profiler is not None:
        pstats.Stats(profiler, stream=sys.stderr).sort_stats("tottime").print_stats(45)
        pstats.Stats(profiler, stream=sys.stderr).sort_stats("cumtime").print_stats(70)
    return {name: (min if name.endswith("_ms") else max)(values) for name, values in found.items()}


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("port", type=int)
    parser.add_argument("control", type=int)
    parser.add_argument("--receipts", action="store_true")
    parser.add_argument("--latency", type=int, default=0, help="ms; as the centre is set already")
    parser.add_argument("--window", type=int, default=200)
    parser.add_argument("--number", type=int, default=1500)
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--profile", choices=("whole", "handed"), default="")
    chosen = parser.parse_args()
    centre = Smsc(chosen.port, chosen.control)
    print(
        json.dumps(
            measure(
                centre,
                chosen.receipts,
                chosen.latency,
                chosen.window,
                chosen.number,
                chosen.rounds,
                chosen.profile,
            )
        )
    )
