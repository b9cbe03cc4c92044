"""The embedded engine: one process that looks, each second, at what Celery's workers would be told to look at.

Each job has a thread of its own, so that a long import or a slow calendar never holds up what is due. Nothing here
carries a promise: what a killed loop had in hand is found again in the database.
"""

from __future__ import annotations

import fcntl
import logging
import os
import sqlite3
import threading
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from django.conf import settings
from django.db import close_old_connections, connection, connections

from aftercare import tasks

log = logging.getLogger(__name__)
# The log could not be carried back into the database, as the disk is full. Nothing is added to it meanwhile: else what
# a person frees would be written full again, by transactions that fail, before the log can be emptied.
_no_room = threading.Event()


@dataclass(frozen=True, slots=True)
class Job:
    """One thing to do again and again. At the end it gets `grace` seconds to finish a round that it is in."""

    name: str
    every_seconds: float
    call: Callable[[], object]
    grace: float = 1.0
    needs_room: bool = True  # waits while the disk is full


class AlreadyRunning(Exception):  # read by people as it stands
    """Another loop looks at this database."""


def jobs(stop: threading.Event) -> tuple[Job, ...]:
    """Give what is to be done; sending hears of `stop` between two windows of messages."""
    # It gets longer to finish one: what is cut off between "sent" and "answer heard" can only show as unsure.
    looked_at = (
        Job("send_due", 1, partial(tasks.send_due, stop=stop.is_set), grace=8),
        Job("run_imports", 1, tasks.run_imports),
        Job("poll_feeds", 60, tasks.poll_feeds),
        Job("refit", 600, partial(tasks.refit, stop=stop.is_set)),
    )
    if connection.vendor == "sqlite":
        file = connection.settings_dict["NAME"]
        return (*looked_at, Job("checkpoint", 10, partial(_checkpoint, file), needs_room=False))
    return looked_at


def run(todo: Sequence[Job], stop: threading.Event) -> bool:
    """Do the jobs until `stop` is set. False if one of them was cut off at the end."""
    threads = [threading.Thread(target=_repeat, args=(job, stop), name=job.name, daemon=True) for job in todo]
    for thread in threads:
        thread.start()
    stop.wait()
    ending = time.monotonic()
    for job, thread in zip(todo, threads, strict=True):
        thread.join(max(0.0, ending + job.grace - time.monotonic()))
    cut_off = [thread.name for thread in threads if thread.is_alive()]
    if cut_off:
        log.warning("Ended in the middle of: %s. The next start takes it up.", ", ".join(cut_off))
    return not cut_off


def place() -> Path:
    """Give the file that stands for the one loop of this database: beside it, or in the data folder for a server's."""
    if connection.vendor == "sqlite":
        return Path(f"{connection.settings_dict['NAME']}.engine")
    return Path(settings.DATA_DIR) / "engine.lock"


def place_of_bind(bind: str) -> Path:
    """Give the file that stands for the one process on this machine that holds a bind."""
    return Path(settings.DATA_DIR) / f"smpp-{bind}.lock"


@contextmanager
def only_one(file: Path) -> Iterator[None]:
    """Hold the place of the one loop; AlreadyRunning if it is taken."""
    file.parent.mkdir(parents=True, exist_ok=True)
    handle = os.open(file, os.O_RDWR | os.O_CREAT, 0o644)
    try:
        try:
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError as error:
            pid = os.read(handle, 20).decode().strip() or "unknown"
            raise AlreadyRunning(
                f"Another loop (process {pid}) already looks at this database: two would only be in each other's way. "
                "Stop that one first, or leave it be."
            ) from error
        os.ftruncate(handle, 0)
        os.pwrite(handle, f"{os.getpid()}\n".encode(), 0)
        yield
    finally:
        os.close(handle)


def make_room() -> None:
    """Empty what log an earlier run left, before anything is added to it: the disk may be full."""
    if connection.vendor == "sqlite":
        checkpoint(connection.settings_dict["NAME"])


def _checkpoint(file: str | Path) -> None:
    """Carry the log back, and note whether there was room for it."""
    try:
        if checkpoint(file):
            _no_room.clear()
    except sqlite3.OperationalError as error:
        if error.sqlite_errorcode == sqlite3.SQLITE_FULL:
            _no_room.set()
        raise


def checkpoint(file: str | Path) -> bool:
    """Carry SQLite's log back into the database and empty it. False: skipped, as someone writes.

    No other connection does it, and none can write meanwhile (TRUNCATE holds the writer's lock): SQLite before 3.51.3
    can lose commits where one connection starts the log anew while another checkpoints (sqlite.org/wal.html,
    "WAL-reset bug"). The wait is short, as every page that writes waits with it.
    """
    with closing(sqlite3.connect(file, timeout=0.5, isolation_level=None)) as keeper:
        try:
            keeper.execute("BEGIN IMMEDIATE")
        except sqlite3.OperationalError:
            return False
        keeper.execute("ROLLBACK")
        keeper.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
        return True


def _repeat(job: Job, stop: threading.Event) -> None:
    failing = ""
    while not stop.is_set():
        began = time.monotonic()
        try:
            if not (job.needs_room and _no_room.is_set()):
                job.call()
            failing = ""
        # A fault in one job, or a database that is away, must not stop the others, nor this one for good.
        except Exception as error:
            if failing == repr(error):
                log.error("%s still fails: %s", job.name, failing)
            else:
                failing = repr(error)
                log.exception("%s failed and is tried again in %g s", job.name, job.every_seconds)
        finally:
            close_old_connections()
        stop.wait(max(0.0, began + job.every_seconds - time.monotonic()))
    connections.close_all()
