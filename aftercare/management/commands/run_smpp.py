"""`manage.py run_smpp NAME`: keeps one connection to a carrier open, sends by it and stores what comes in by it."""

from __future__ import annotations

import logging
import threading
import time
from dataclasses import dataclass
from typing import Any

from django.conf import settings
from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.db import close_old_connections

from aftercare import engine, heartbeats, moved, receiving, sending
from aftercare.management import stopping
from aftercare.pages import morning
from aftercare.transports.smpp import Smpp
from studio import clock, lifeline

log = logging.getLogger(__name__)

_AWAY_SECONDS = 15.0  # between two notes that it is down
_IDLE_SECONDS = 0.5  # between two looks at what is due; what comes in meanwhile is stored at once
_ROUND_SECONDS = 30.0  # after which it says that it is alive, however much is due


class Command(BaseCommand):
    help = (
        "Keeps the connection SMPP_NAME to a carrier open until it gets SIGTERM or Ctrl-C: sends what is due on its "
        "lines, stores receipts and replies. One at a time for each name."
    )

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("bind", metavar="NAME", help="in small letters, as in SMPP_NAME")

    def handle(self, *args: Any, bind: str, **options: Any) -> None:
        lifeline.tie_if_asked()
        stop = stopping.when_asked()
        chosen = settings.AFTERCARE_BINDS.get(bind)
        if chosen is None:
            known = ", ".join(settings.AFTERCARE_BINDS) or "none yet"
            raise CommandError(
                f"There is no bind “{bind}”: set SMPP_{bind.upper()} in the environment. Known: {known}."
            )
        try:
            with engine.only_one(engine.place_of_bind(bind)):
                moved.refuse()
                self.stderr.write(f"The line to the carrier “{bind}” is looked after.")
                _look_after(Smpp(bind=bind, inbox=receiving.inbox(f"smpp:{bind}"), **chosen), stop)
        except engine.AlreadyRunning as refusal:
            raise CommandError(
                f"Another process already holds the bind “{bind}” on this machine: stop that one first."
            ) from refusal
        self.stderr.write(f"The line to the carrier “{bind}” is closed.")


@dataclass(slots=True)
class _Watch:
    """Writes down whether the line is up, when that changes and now and then while it is down."""

    road: Smpp
    was_up: bool | None = None
    again_at: float = 0.0

    def look(self) -> None:
        if self.road.is_up:
            if not self.was_up:
                sending.note_back(self.road)
                heartbeats.finished(self.road.account, now=clock.now())
        elif self.road.trouble and time.monotonic() >= self.again_at:
            sending.note_away(self.road)
            self.again_at = time.monotonic() + _AWAY_SECONDS
        self.was_up = self.road.is_up


def _look_after(road: Smpp, stop: threading.Event) -> None:
    """Send what is due, round by round, and hear what comes in, until ``stop`` is set."""
    failing = ""
    watch = _Watch(road)
    try:
        while not stop.is_set():
            try:
                watch.look()
                _round(road, stop)
                failing = ""
            except moved.HasMoved:
                raise
            except Exception as error:  # a database that is away must not end the connection
                if failing == repr(error):
                    log.error("%s still fails: %s", road.account, failing)
                else:
                    failing = repr(error)
                    log.exception("%s failed and is tried again in a second", road.account)
                stop.wait(1.0)
            finally:
                close_old_connections()
    finally:
        road.close()


def _round(road: Smpp, stop: threading.Event) -> None:
    moved.refuse()
    end = time.monotonic() + _ROUND_SECONDS
    if road.is_up:
        handed = sending.stream(
            road, road.bind, stop=stop.is_set, pause=lambda: time.monotonic() > end, count=morning.count
        )
        heartbeats.finished(road.account, now=clock.now())
        if handed:
            return
    # An outcome that comes here is of a round that failed: its message becomes unsure once its lease is over.
    road.collect(_IDLE_SECONDS)
