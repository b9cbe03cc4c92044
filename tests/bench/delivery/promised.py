# ruff: noqa: E402  Django is set up first
"""How fast planned messages are written, against ``bulk_create``: a run of ``all.py``, in a process of its own.

    python tests/bench/delivery/promised.py [--number 5000] [--rounds 5]

``DATABASE_URL`` names a fresh database. Both write the same rows in one transaction, and leave out those whose key is
taken. Prints one line of JSON: rows a second of both, the best of the rounds, which take turns.
"""

from __future__ import annotations

import argparse
import json
import os
import sys
import time
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[3]))
os.environ.setdefault("DJANGO_SETTINGS_MODULE", "studio.settings")

import django

django.setup()

from django.core.management import call_command
from django.db import connection, transaction

from aftercare import outbox
from aftercare.models import Message
from studio import clock
from studio.models import Client, Studio


def bulk_create(messages: list[Message]) -> object:
    return Message.objects.bulk_create(messages, ignore_conflicts=True)


def measure(number: int, rounds: int) -> dict[str, float]:
    call_command("migrate", verbosity=0)
    now = clock.now()
    studio = Studio.objects.create(slug="bench", name="Bench", region="US", time_zone="UTC")
    clients = Client.objects.bulk_create(Client(studio=studio, first_name="Mia") for _ in range(number))

    def messages() -> list[Message]:
        return [
            Message(
                studio=studio,
                client=client,
                key=f"visit:{client.pk}:care:0:1",
                occasion="care",
                channel="sms",
                due_at=now,
                aim_at=now,
                no_later_than=now + timedelta(days=1),
                planned_from=now,
                about_start=now,
            )
            for client in clients
        ]

    ways: dict[str, Callable[[list[Message]], object]] = {"bulk_create": bulk_create, "promise": outbox.promise}
    best: dict[str, float] = {}
    for _ in range(rounds):
        for name, write in ways.items():
            with connection.cursor() as cursor:
                cursor.execute("TRUNCATE aftercare_message CASCADE")
            made = messages()
            began = time.perf_counter()
            with transaction.atomic():
                write(made)
            best[name] = max(best.get(name, 0.0), number / (time.perf_counter() - began))
            if Message.objects.count() != number:
                sys.exit(f"{name} wrote {Message.objects.count()} messages instead of {number}")
    again = outbox.promise(messages())
    if again or Message.objects.count() != number:
        sys.exit(f"promised again, {again} of them were written twice")
    return best


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--number", type=int, default=5000)
    parser.add_argument("--rounds", type=int, default=5)
    chosen = parser.parse_args()
    print(json.dumps(measure(chosen.number, chosen.rounds)))
