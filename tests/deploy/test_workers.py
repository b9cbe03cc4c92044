"""deploy/start --workers: the grown engine on one machine, with servers of its own."""

from __future__ import annotations

import hashlib
import json
import os
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import urllib.request
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import ExitStack, suppress
from datetime import UTC, datetime
from pathlib import Path

import psycopg
import pytest

from deploy import private, starting
from deploy.supervise import StepFailed
from tests import servers, services
from tests.services import ROOT

PATIENCE_SECONDS = 90
MESSAGES = 700  # more than one sender takes at once


@pytest.fixture
def stack() -> Iterator[ExitStack]:
    with ExitStack() as one:
        yield one


@pytest.fixture
def folder() -> Iterator[Path]:
    """A folder with a short path that every user may enter."""
    one = Path(tempfile.mkdtemp(prefix="grown-", dir="/tmp"))  # a socket's path must be short
    one.chmod(0o755)
    yield one
    for pid in running(one):
        with suppress(ProcessLookupError):
            os.kill(pid, signal.SIGKILL)
    shutil.rmtree(one, ignore_errors=True)


def running(folder: Path) -> dict[int, str]:
    """Every process whose environment or command names the folder."""
    found = {}
    for entry in Path("/proc").iterdir():
        if entry.name.isdigit() and int(entry.name) != os.getpid():
            with suppress(OSError):
                command = (entry / "cmdline").read_bytes()
                if command and str(folder).encode() in command + (entry / "environ").read_bytes():
                    found[int(entry.name)] = command.replace(b"\0", b" ").decode()
    return found


def soon(condition: Callable[[], object], seconds: float = PATIENCE_SECONDS) -> bool:
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        if condition():
            return True
        time.sleep(0.1)
    return False


def states(data: Path) -> Counter[str]:
    with psycopg.connect(host=str(data / "postgres"), user="aftercare", dbname="postgres") as connection:
        return Counter(dict(connection.execute("SELECT state, count(*) FROM aftercare_message GROUP BY 1").fetchall()))


@pytest.mark.servers
@pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed")
@pytest.mark.skipif(not servers.has_redis(), reason="Redis is not installed")
@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="looks at processes through /proc")
def test_two_workers_send_a_book_stop_cleanly_and_keep_what_they_did(folder: Path, stack: ExitStack) -> None:
    data = folder / "data"
    data.mkdir()
    url = f"postgres://aftercare@{str(data / 'postgres').replace('/', '%2F')}:5432/postgres"
    (data / f"demo-made-{hashlib.sha256(url.encode()).hexdigest()[:12]}").touch()  # the demo is not what this is about
    port = servers.free_port()
    log = folder / "log"

    started: list[subprocess.Popen[bytes]] = []

    def kill() -> None:
        for one in started:
            one.kill()
            one.wait()

    stack.callback(kill)

    def start(mail: str) -> subprocess.Popen[bytes]:
        settings = services.environment(data, EMAIL_URL=mail, PORT=str(port), LOG_LEVEL="INFO")
        command = [sys.executable, str(ROOT / "deploy" / "start"), "--workers", "2"]
        with log.open("ab") as stream:
            started.append(subprocess.Popen(command, env=settings, stdout=stream, stderr=stream))
        return started[-1]

    with servers.smtp(folder, pause=0.003) as mail:
        first = start(mail.url)
        assert soon(lambda: "Ready: " in log.read_text() or first.poll() is not None)
        assert first.poll() is None, log.read_text()[-3000:]
        own = dict(line.split("=", 1) for line in (data / "grown.env").read_text().splitlines())
        assert own["DATABASE_URL"] == url
        settings = services.environment(data, EMAIL_URL=mail.url, **own)
        services.make_live_studio(settings, folder, 1)
        services.write_book(folder / "book.csv", MESSAGES, datetime.now(UTC), services.zone_at_work(datetime.now(UTC)))
        services.manage(settings, "import_book", str(folder / "book.csv"), "--studio", services.SLUG)
        assert soon(lambda: states(data)["handed_over"] == MESSAGES), (states(data), log.read_text()[-3000:])

        # The first may have gone in rehearsal, between its import and the going live.
        assert MESSAGES - 1 <= len(mail.accepted) == len(set(mail.accepted)) <= MESSAGES
        with urllib.request.urlopen(f"http://127.0.0.1:{port}/healthz", timeout=10) as response:
            assert json.load(response)["ok"] is True
        rounds = re.findall(r"(worker\d)@\S+ a round of .*?'handed_over': (\d+)", log.read_text())
        assert {name for name, _ in rounds} == {"worker1", "worker2"}
        _is_noeviction_and_kept(own["REDIS_URL"])

        first.send_signal(signal.SIGINT)
        assert first.wait(60) == 0
        assert running(data) == {}
        assert log.read_text().rstrip().endswith("Stopped. Nothing is left running.")

        second = start(mail.url)
        assert soon(lambda: log.read_text().count("Ready: ") == 2), log.read_text()[-3000:]
        assert states(data)["handed_over"] == MESSAGES
        assert soon(lambda: sum(" worker " in line for line in running(data).values()) >= 6), running(data)

        second.kill()
        second.wait()
        assert soon(lambda: not running(data), 10), running(data)


def _is_noeviction_and_kept(url: str) -> None:
    import redis  # the client that Celery brings; only this test talks to it by itself

    with redis.Redis.from_url(url) as broker:
        said = {name: broker.config_get(name)[name] for name in ("appendonly", "appendfsync", "maxmemory-policy")}
    assert said == {"appendonly": "yes", "appendfsync": "everysec", "maxmemory-policy": "noeviction"}


@pytest.mark.parametrize("value", ["0", "65", "two", "-1", "1.5", "٢"])
def test_a_number_of_workers_that_is_none_is_refused_with_the_cure(value: str) -> None:
    with pytest.raises(StepFailed, match="is not a number of workers: write one from 1 to 64"):
        starting.read_workers(value)


def test_servers_elsewhere_are_used_where_both_are_named() -> None:
    database, broker = {"DATABASE_URL": "postgres://x@db/x"}, {"REDIS_URL": "redis://broker:6379/1"}

    assert starting.needs_own_servers({})
    assert not starting.needs_own_servers({**database, **broker})
    with pytest.raises(StepFailed, match="DATABASE_URL is set and REDIS_URL is not"):
        starting.needs_own_servers(database)
    with pytest.raises(StepFailed, match="REDIS_URL is set and DATABASE_URL is not"):
        starting.needs_own_servers(broker)
    with pytest.raises(StepFailed, match="several workers cannot share"):
        starting.needs_own_servers({**broker, "DATABASE_URL": "sqlite:///data/studio.sqlite3"})


def test_what_is_not_installed_is_said_with_the_line_that_installs_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(shutil, "which", lambda _name: None)

    with pytest.raises(
        StepFailed, match=r"Redis or Valkey.* is not installed.*apt-get install postgresql redis-server"
    ):
        private.refuse_if_missing()


def test_a_folder_that_the_servers_user_cannot_enter_is_named(tmp_path: Path) -> None:
    if os.geteuid() != 0:
        pytest.skip("only root runs the servers as somebody else")
    closed = tmp_path / "closed"
    closed.mkdir(mode=0o700)

    with pytest.raises(StepFailed, match=r"who cannot enter .*: chmod o\+x"):
        private._own(closed / "postgres", "nobody")
