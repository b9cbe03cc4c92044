from __future__ import annotations

import os
import signal
import sqlite3
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[4]
pytestmark = pytest.mark.servers


@pytest.fixture
def start(tmp_path: Path) -> Iterator[Callable[..., subprocess.Popen[str]]]:
    """Start a command of manage.py on a database of its own; whatever still runs at the end is killed."""
    settings = {"DATA_DIR": str(tmp_path), "DATABASE_URL": f"sqlite:///{tmp_path / 'studio.sqlite3'}", "REDIS_URL": ""}
    started: list[subprocess.Popen[str]] = []

    def run(*command: str) -> subprocess.Popen[str]:
        process = subprocess.Popen(
            [sys.executable, "manage.py", *command],
            cwd=ROOT,
            env={**os.environ, **settings},
            stdout=subprocess.DEVNULL,
            stderr=subprocess.PIPE,
            text=True,
        )
        started.append(process)
        return process

    yield run
    for process in started:
        process.kill()
        process.communicate(timeout=10)


def heartbeats(file: Path) -> set[str]:
    with closing(sqlite3.connect(file, timeout=5)) as connection:
        return {name for (name,) in connection.execute("SELECT name FROM aftercare_heartbeat")}


def test_it_looks_at_what_is_due_refuses_a_second_and_stops_soon(
    tmp_path: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    database = tmp_path / "studio.sqlite3"
    migrated = start("migrate", "--verbosity=0")
    assert migrated.wait(120) == 0, migrated.stderr and migrated.stderr.read()

    running = start("run_engine")
    until = time.monotonic() + 30
    while "sweep" not in heartbeats(database) and time.monotonic() < until and running.poll() is None:
        time.sleep(0.1)
    second = start("run_engine")
    _, refusal = second.communicate(timeout=30)
    running.send_signal(signal.SIGTERM)
    began = time.monotonic()
    _, said = running.communicate(timeout=20)

    assert "sweep" in heartbeats(database), said
    assert second.returncode == 1
    assert f"Another loop (process {running.pid}) already looks at this database" in refusal
    assert running.returncode == 0, said
    assert time.monotonic() - began < 2
    assert "The engine has stopped." in said
    assert "Traceback" not in said
