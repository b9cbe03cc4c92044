"""What the engine does again and again: as Celery tasks, and as plain calls for the embedded loop.

Tasks carry no promise. They say "look at these rows", so that one lost, doubled or late changes nothing.
"""

from __future__ import annotations

import logging
import threading
import time
from collections import Counter
from collections.abc import Callable
from datetime import datetime

from celery import current_task, shared_task
from django.conf import settings
from django.db import transaction

from aftercare import (
    bookwork,
    forecasting,
    hearing,
    heartbeats,
    lotmarks,
    moved,
    outbox,
    paging,
    planning,
    polling,
    receiving,
    roadwatch,
    sending,
    triage,
    upkeep,
)
from aftercare.pages import morning
from studio import clock
from studio.models import Studio

log = logging.getLogger(__name__)

# Then no more is claimed, and the next round begins: with a new "now", and with the replies that came in meanwhile.
SWEEP_SECONDS = 5
# Then what was claimed is let go, however slow its road: what she wrote meanwhile is read and answered.
SLOW_SECONDS = 10
# Then nothing further is begun, and the next look goes on: a worker's task must be over long before its time limit.
ROUND_SECONDS = 40
REFIT_SECONDS = 40


def send_due(
    *, studio_id: int | None = None, now: datetime | None = None, stop: Callable[[], bool] = lambda: False
) -> Counter[str]:
    """Read what came in, forecast and plan what changed, hand over what is due; count how messages came to stand.

    A round for all studios ends after some seconds, done or not; one for a single studio goes on until nothing is due.
    """
    moved.refuse()
    moment = now or clock.now()
    hearing.read_waiting(moment, stop=stop)
    receiving.take_up_strays()
    triage.read_waiting(moment, studio_id)
    studio = None if studio_id is None else Studio.objects.get(pk=studio_id)
    paging.look(moment, studio_id)
    roadwatch.look(moment)
    upkeep.catch_up(moment, studio=studio)
    planning.plan_mornings(moment, studio=studio)
    planning.plan_nudges(moment, studio=studio)
    outbox.match_strays(moment)
    outbox.expire_leases(moment)
    outbox.resolve_unsure(moment)
    if studio_id is not None:
        return sending.sweep(moment, studio_id=studio_id, stop=stop, count=morning.count)
    began = time.monotonic()
    counts = sending.sweep(
        now or clock.now(),  # reading and planning may have taken minutes, in which sending hours have closed
        stop=lambda: stop() or time.monotonic() - began > SLOW_SECONDS,
        enough=lambda: time.monotonic() - began > SWEEP_SECONDS,
        count=morning.count,
    )
    heartbeats.finished("sweep", now=clock.now())
    return counts


def take_up() -> None:
    """Take up what a loop that died had in hand; for the embedded loop, which is the only one, when it begins."""
    freed = outbox.free_claimed()
    if freed:
        log.info("%d messages that an earlier run had claimed are due again", freed)


def run_imports(*, now: datetime | None = None) -> int:
    """Read or write the book's files that wait; return how many."""
    done = bookwork.run_waiting(now or clock.now(), seconds=ROUND_SECONDS)
    heartbeats.finished("run_imports", now=clock.now())
    return done


def poll_feeds(*, now: datetime | None = None) -> int:
    """Look at the calendars whose turn it is; return how many."""
    asked = polling.poll_due(now or clock.now(), seconds=ROUND_SECONDS)
    heartbeats.finished("poll_feeds", now=clock.now())
    return asked


def refit(*, now: datetime | None = None, stop: Callable[[], bool] = lambda: False) -> int:
    """Once a night fit each studio to its readings, forecast anew and weigh its lots; return how many were fitted."""
    moment = now or clock.now()
    began = time.monotonic()
    done = forecasting.refit_due(moment, seconds=REFIT_SECONDS, stop=stop)
    lotmarks.mark_due(moment, seconds=REFIT_SECONDS - (time.monotonic() - began), stop=stop)
    heartbeats.finished("refit", now=clock.now())
    return done


def _send_due(**more: object) -> None:
    began = time.monotonic()
    counts = send_due()
    if counts:
        log.info("%s: a round of %.1f s: %s", current_task.request.hostname, time.monotonic() - began, dict(counts))
    # The round's time was up before the work was done. The clock adds a sender a second to those that go on so, until
    # every free worker on every machine has its share.
    if counts and time.monotonic() - began >= SWEEP_SECONDS:
        _nudge_soon()


def _run_imports(**more: object) -> None:
    run_imports()


def _poll_feeds(**more: object) -> None:
    poll_feeds()


def _refit(**more: object) -> None:
    refit()


send_due_task = shared_task(name="aftercare.send_due")(_send_due)
run_imports_task = shared_task(name="aftercare.run_imports")(_run_imports)
poll_feeds_task = shared_task(name="aftercare.poll_feeds")(_poll_feeds)
refit_task = shared_task(name="aftercare.refit")(_refit)


_nudging = threading.Lock()


def nudge() -> None:
    """Have a worker look at what is due soon after this transaction: the only door to the broker.

    Never holds anything up and never fails: a broker that is away or frozen costs a thread a few seconds, and what is
    due is found by the next tick. Without Redis there is nothing to do, as the embedded loop looks each second.
    """
    if settings.REDIS_URL:
        transaction.on_commit(_nudge_soon, robust=True)


def _nudge_soon() -> None:
    if _nudging.acquire(blocking=False):  # one nudge on its way is as good as many
        threading.Thread(target=_publish, name="nudge", daemon=True).start()


def _publish() -> None:
    try:
        send_due_task.apply_async(expires=5, retry=False)
    except Exception as error:  # whatever a broker can do wrong
        log.warning("the broker does not answer (%s); the next tick finds what is due", error)
    finally:
        _nudging.release()
