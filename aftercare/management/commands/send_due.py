"""`send_due --studio SLUG [--now ISO]`: one sweep, in this process."""

from __future__ import annotations

import json
import signal
import threading
from argparse import ArgumentParser
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime
from typing import Any

from aftercare import tasks
from aftercare.core.delivery import State
from aftercare.management.arguments import add_now, add_studio, moment, studio_named
from aftercare.management.base import PromisingCommand
from studio.models import Studio

SHOWN = (State.HANDED_OVER, State.PLANNED, State.WITHHELD, State.WITHDRAWN, State.UNDELIVERED, State.UNSURE)


class Command(PromisingCommand):
    help = (
        "Claim what is due in a studio and hand it over. Prints one JSON object: how many messages came to stand how "
        "through this sweep."
    )

    def add_arguments(self, parser: ArgumentParser) -> None:
        add_studio(parser)
        add_now(parser)

    def promised(self, problem: str) -> str:
        return _json(Counter())

    def handle(self, *args: Any, **options: Any) -> None:
        studio, now = studio_named(options["studio"]), moment(options["now"])
        counts: Counter[str] = Counter()
        try:
            counts = self._sweep(studio, now)
        finally:  # the promised object is printed whatever happens
            self.stdout.write(_json(counts))

    def _sweep(self, studio: Studio, now: datetime | None) -> Counter[str]:
        self.stderr.write(f"{studio.name}{' (in rehearsal)' if studio.in_rehearsal else ''}: sending what is due …")
        stop = threading.Event()
        with _ending(stop):
            counts = tasks.send_due(studio_id=studio.pk, now=now, stop=stop.is_set)
        self.stderr.write("Stopped; the rest stays due." if stop.is_set() else "Nothing more is due.")
        return counts


def _json(counts: Counter[str]) -> str:
    return json.dumps({state.value: counts[state.value] for state in SHOWN})


@contextmanager
def _ending(stop: threading.Event) -> Iterator[None]:
    """Let SIGTERM end the sweep between two windows, and not in the middle of one."""
    before = signal.signal(signal.SIGTERM, lambda _number, _frame: stop.set())
    try:
        yield
    finally:
        signal.signal(signal.SIGTERM, before)
