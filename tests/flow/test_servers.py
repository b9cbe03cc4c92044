"""The same code on PostgreSQL, Redis and Celery, by settings alone: real servers on private ports."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from contextlib import ExitStack, contextmanager, suppress
from pathlib import Path

import psycopg
import pytest

from tests import servers, services
from tests.servers import MailServer
from tests.services import ROOT, SLUG

pytestmark = [
    pytest.mark.servers,
    pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed"),
    pytest.mark.skipif(not servers.has_redis(), reason="Redis is not installed"),
]
PATIENCE_SECONDS = 60


@pytest.fixture(scope="module")
def postgres() -> Iterator[str]:
    with servers.postgres() as url:
        yield url


@pytest.fixture
def database(postgres: str) -> str:
    """An empty database of its own."""
    with psycopg.connect(postgres, autocommit=True) as connection:
        connection.execute("DROP DATABASE IF EXISTS studio WITH (FORCE)")
        connection.execute("CREATE DATABASE studio")
    return postgres.replace("/postgres?", "/studio?")


@contextmanager
def running(settings: Mapping[str, str], *command: str) -> Iterator[subprocess.Popen[bytes]]:
    process = subprocess.Popen(
        [sys.executable, "-m", *command], cwd=ROOT, env=settings, stdout=subprocess.DEVNULL, start_new_session=True
    )
    try:
        yield process
    finally:
        with suppress(ProcessLookupError):
            os.killpg(process.pid, signal.SIGKILL)
        process.wait()


def wait_for(what: Callable[[], bool]) -> None:
    end = time.monotonic() + PATIENCE_SECONDS
    while not what():
        assert time.monotonic() < end, "it did not come to pass"
        time.sleep(0.1)


def states(database: str) -> Counter[str]:
    with psycopg.connect(database) as connection:
        rows = connection.execute("SELECT state, count(*) FROM aftercare_message GROUP BY state").fetchall()
    return Counter(dict(rows))


def test_a_book_goes_in_and_workers_hand_over_each_message_once(database: str, tmp_path: Path) -> None:
    with ExitStack() as stack:
        redis = stack.enter_context(servers.redis())
        mail: MailServer = stack.enter_context(servers.smtp(tmp_path))
        settings = services.environment(
            tmp_path, DATABASE_URL=database, REDIS_URL=redis, EMAIL_URL=mail.url, REDIS_SOCKET_TIMEOUT="10"
        )
        services.make_live_studio(settings, tmp_path, 200)
        for name in ("one", "two"):
            command = ("celery", "-A", "studio", "worker", "-c", "2", "-n", name, "--loglevel=WARNING")
            stack.enter_context(running(settings, *command))
        for name in ("a", "b"):  # two beats by mistake: everything is looked at twice, and sent once
            schedule = f"--schedule={tmp_path / name}"
            stack.enter_context(running(settings, "celery", "-A", "studio", "beat", "--pidfile=", schedule))

        wait_for(lambda: states(database)["handed_over"] >= 200)

    assert states(database)["handed_over"] == 200
    assert len(mail.accepted) == len(set(mail.accepted)) == 200
    with psycopg.connect(database) as connection:
        numbers = connection.execute("SELECT count(*), max(number) FROM aftercare_attempt").fetchone()
        [beat] = connection.execute("SELECT count(*) FROM aftercare_heartbeat WHERE name = 'sweep'").fetchall()
    assert numbers == (200, 1)
    assert beat == (1,)


def test_several_processes_at_once_hand_over_each_message_once(database: str, tmp_path: Path) -> None:
    with servers.smtp(tmp_path) as mail:
        settings = services.environment(tmp_path, DATABASE_URL=database, EMAIL_URL=mail.url)
        services.make_live_studio(settings, tmp_path, 600)
        command = [sys.executable, "manage.py", "send_due", "--studio", SLUG]
        senders = [
            subprocess.Popen(command, cwd=ROOT, env=settings, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
            for _ in range(3)
        ]
        counts = [json.loads(sender.communicate(timeout=PATIENCE_SECONDS)[0]) for sender in senders]

    assert sum(count["handed_over"] for count in counts) == 600
    assert len(mail.accepted) == len(set(mail.accepted)) == 600
