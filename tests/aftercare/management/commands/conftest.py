"""Commands that run on, each a process of its own on a database in the test's folder."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[4]


@pytest.fixture
def environment() -> dict[str, str]:
    """What else the commands find in their environment: a test's own fixture says."""
    return {}


@pytest.fixture
def start(tmp_path: Path, environment: dict[str, str]) -> Iterator[Callable[..., subprocess.Popen[str]]]:
    """Start a command of manage.py on a database of its own; whatever still runs at the end is killed."""
    settings = {"DATA_DIR": str(tmp_path), "DATABASE_URL": f"sqlite:///{tmp_path / 'studio.sqlite3'}", "REDIS_URL": ""}
    started: list[subprocess.Popen[str]] = []

    def run(*command: str) -> subprocess.Popen[str]:
        process = subprocess.Popen(
            [sys.executable, "manage.py", *command],
            cwd=ROOT,
            env={**os.environ, **settings, **environment},
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


@pytest.fixture
def heartbeats(tmp_path: Path) -> Callable[[], set[str]]:
    """Tell which parts have said that they are at work."""

    def read() -> set[str]:
        with closing(sqlite3.connect(tmp_path / "studio.sqlite3", timeout=5)) as connection:
            return {name for (name,) in connection.execute("SELECT name FROM aftercare_heartbeat")}

    return read
