"""Each Celery worker stands by for the beat: where no round has ended for too long, it does one itself.

A beat can be up and send nothing, and so can a broker. What hangs on the database alone is then done without either,
more slowly: every worker looks at the hours of the last rounds, by the database's clock.
"""

from __future__ import annotations

import importlib
import logging
import threading
from collections.abc import Callable
from datetime import timedelta
from functools import partial
from typing import Any

from celery.signals import worker_init, worker_ready, worker_shutdown

from aftercare import engine, heartbeats, tasks
from aftercare.engine import Job
from studio import clock

log = logging.getLogger(__name__)

LOOK_SECONDS = 5.0
SWEEP_LATE = timedelta(seconds=20)  # rounds are noted every ten seconds, and last five
USED_BY_ALL = ("aftercare.core.reading.reader", "scipy.optimize", "scipy.interpolate")
SLACK = timedelta(minutes=3)  # of the others, beyond the time between two of their rounds: they may last that long

_stop = threading.Event()


def jobs(stop: threading.Event) -> tuple[Job, ...]:
    """Give what is looked after, each job with a thread of its own."""
    return (
        Job("sweep", LOOK_SECONDS, partial(stand_in, "sweep", SWEEP_LATE, partial(send_on, stop)), grace=8),
        Job("run_imports", LOOK_SECONDS, partial(stand_in, "run_imports", SLACK, tasks.run_imports)),
        Job("poll_feeds", 60, partial(stand_in, "poll_feeds", timedelta(minutes=1) + SLACK, tasks.poll_feeds)),
        Job(
            "refit",
            60,
            partial(stand_in, "refit", timedelta(minutes=10) + SLACK, partial(tasks.refit, stop=stop.is_set)),
        ),
    )


def stand_in(name: str, late: timedelta, call: Callable[[], object]) -> bool:
    """Do a part's round if its last one ended too long ago, as when nothing tells the workers to; return whether."""
    if not heartbeats.is_late(name, late, now=clock.now()):
        return False
    log.warning("%s: no round has ended for %d s, so this worker does one by itself", name, late.total_seconds())
    call()
    return True


def send_on(stop: threading.Event) -> None:
    """Sweep until nothing is left, round after round."""
    while not stop.is_set() and tasks.send_due(stop=stop.is_set):
        pass


def load(**more: Any) -> None:
    """Load what takes its time before children are forked: they share it, and none is forked as a thread loads it."""
    for name in USED_BY_ALL:
        importlib.import_module(name)


def begin(**more: Any) -> None:
    """Look after the rounds for as long as this worker lives."""
    _stop.clear()
    threading.Thread(target=_stand_by, name="standby", daemon=True).start()


def _stand_by() -> None:
    if not _stop.wait(SWEEP_LATE.total_seconds()):  # after a pause of everything the beat comes first
        engine.run(jobs(_stop), _stop)


def end(**more: Any) -> None:
    """Stop looking: who shuts down takes on nothing more."""
    _stop.set()


worker_init.connect(load, weak=False, dispatch_uid="aftercare.standby")
worker_ready.connect(begin, weak=False, dispatch_uid="aftercare.standby")
worker_shutdown.connect(end, weak=False, dispatch_uid="aftercare.standby")
