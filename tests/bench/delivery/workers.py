# ruff: noqa: E402  Django is set up first
"""What Celery's workers hand over a second, many a task, against one task a message: a run of ``all.py``, in a process.

    python tests/bench/delivery/workers.py [--number 1200] [--single 200]

``DATABASE_URL`` names a fresh database, ``REDIS_URL`` a broker. The same worker, with two children, first gets a task
for each message, which claims, judges, hands over and settles that one; then two of the service's own nudges for all
that is due. The road is in memory. Prints one line of JSON: messages a second of both, and how many times it is.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
sys.path.insert(0, str(ROOT))
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "studio.settings")

import django

django.setup()

from celery import shared_task, signals
from django.core.management import call_command

from aftercare import outbox, tasks
from aftercare.models import Message
from aftercare.sending.judging import Judge
from aftercare.sending.roads import Roads
from aftercare.sending.windows import Windows
from studio import clock
from studio.celery import app  # noqa: F401  the worker finds it here
from tests.bench.delivery import book

# What a worker does by itself where no beat is at work would take the messages of the single tasks.
signals.worker_ready.disconnect(dispatch_uid="aftercare.standby")

ROAD = "aftercare.transports.memory.Memory"
LONGEST = 90.0  # seconds


@shared_task(name="bench.one")
def one(pk: int) -> None:
    """Hand over one message, by the same steps as a sweep."""
    now = clock.now()
    with Roads() as roads:
        judge = Judge(now, roads, None)
        introduced = judge.introduce(judge.judge(outbox.claim_these([pk], now)))
        Windows(judge, now, lambda: False).hand_over(judge.without_waiting(introduced))


def rate(number: int, ask: Callable[[], object]) -> float:
    """Return messages a second from the moment when the workers are asked until ``number`` more are handed over."""
    began, until = time.monotonic(), book.still_to_go() - number
    ask()
    while book.still_to_go() > until:
        if time.monotonic() - began > LONGEST:
            sys.exit(f"{book.still_to_go() - until} messages of {number} are still to go")
        time.sleep(0.02)
    return number / (time.monotonic() - began)


def ask_for_all(times: int) -> None:
    """Give the workers as many of the service's own nudges."""
    for _ in range(times):
        tasks.send_due_task.apply_async()


def measure(number: int, single: int) -> dict[str, float]:
    call_command("migrate", verbosity=0)
    book.make(number, ROAD)
    command = [sys.executable, "-m", "celery", "-A", "tests.bench.delivery.workers", "worker", "--loglevel=ERROR"]
    worker = subprocess.Popen(
        [*command, "--concurrency=2", "--without-gossip", "--without-mingle"], cwd=ROOT, stdout=subprocess.DEVNULL
    )
    try:
        # It is up, and its children have loaded everything, once these have gone.
        rate(number, lambda: ask_for_all(2))
        book.rewind(clock.now())
        due = Message.objects.filter(occasion="prepare").order_by("pk").values_list("pk", flat=True)[:single]
        alone = rate(single, lambda: [one.apply_async((pk,)) for pk in due])
        if book.still_to_go() < number - single:
            sys.exit("the tasks of one message each were not what handed the messages over")
        book.rewind(clock.now())
        together = rate(number, lambda: ask_for_all(2))
    finally:
        worker.terminate()
        worker.wait()
    return {"alone": alone, "together": together, "times": together / alone}


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--number", type=int, default=1200)
    parser.add_argument("--single", type=int, default=200)
    chosen = parser.parse_args()
    print(json.dumps(measure(chosen.number, chosen.single)))
