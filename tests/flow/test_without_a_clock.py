"""Workers whose beat is up and sends nothing, and workers whose database was started anew."""

from __future__ import annotations

import re
import subprocess
import sys
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

import psycopg
import pytest

from tests import servers, services
from tests.flow.test_servers import running, states, wait_for
from tests.services import ROOT

pytestmark = [
    pytest.mark.servers,
    pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed"),
    pytest.mark.skipif(not servers.has_redis(), reason="Redis is not installed"),
]
WORKER = ("celery", "-A", "studio", "worker", "-c", "1", "--loglevel=INFO", "--without-gossip", "--without-mingle")


@contextmanager
def worker(settings: Mapping[str, str], log: Path) -> Iterator[None]:
    with running(settings, *WORKER, f"--logfile={log}"):
        wait_for(lambda: log.exists() and " ready." in log.read_text())
        yield


def test_a_worker_sends_by_itself_where_nothing_tells_it_to(tmp_path: Path) -> None:
    with servers.postgres() as database, servers.redis() as redis, servers.smtp(tmp_path) as mail:
        settings = services.environment(
            tmp_path, DATABASE_URL=database, REDIS_URL=redis, EMAIL_URL=mail.url, REDIS_SOCKET_TIMEOUT="10"
        )
        services.make_live_studio(settings, tmp_path, 20)
        with worker(settings, tmp_path / "worker.log"):
            wait_for(lambda: states(database)["handed_over"] == 20)

        assert len(mail.accepted) == len(set(mail.accepted)) == 20
        assert "sweep: no round has ended for 20 s" in (tmp_path / "worker.log").read_text()
        assert "Task aftercare.send_due" not in (tmp_path / "worker.log").read_text(), "nothing came by the broker"


def test_a_kept_connection_that_the_database_closed_fails_no_task(tmp_path: Path) -> None:
    """PostgreSQL restarted under a worker: without a look at the connection, the next task would fail."""
    call = [sys.executable, "-m", "celery", "-A", "studio", "call", "aftercare.send_due"]
    log = tmp_path / "worker.log"
    with servers.postgres() as database, servers.redis() as redis:
        settings = services.environment(tmp_path, DATABASE_URL=database, REDIS_URL=redis, REDIS_SOCKET_TIMEOUT="10")
        services.manage(settings, "migrate", "--verbosity=0")
        with worker(settings, log):
            for times in (1, 2):
                subprocess.run(call, cwd=ROOT, env=settings, check=True, capture_output=True)
                wait_for(lambda times=times: log.read_text().count("succeeded") == times)  # type: ignore[misc]
            with psycopg.connect(database) as connection:
                opened = connection.execute(
                    "SELECT backend_start FROM pg_stat_activity WHERE datname = 'postgres' AND pid <> pg_backend_pid()"
                ).fetchall()
            assert len(opened) >= 1, "the worker keeps its connection between two tasks"

            servers.restart(database)
            subprocess.run(call, cwd=ROOT, env=settings, check=True, capture_output=True)
            wait_for(lambda: log.read_text().count("succeeded") == 3 or " raised " in log.read_text())

        assert not re.findall(r"Task aftercare\S+ raised.*", log.read_text())
