from __future__ import annotations

import signal
import subprocess
import time
from collections.abc import Callable
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[4]
pytestmark = pytest.mark.servers


def test_it_looks_at_what_is_due_refuses_a_second_and_stops_soon(
    start: Callable[..., subprocess.Popen[str]], heartbeats: Callable[[], set[str]]
) -> None:
    migrated = start("migrate", "--verbosity=0")
    assert migrated.wait(120) == 0, migrated.stderr and migrated.stderr.read()

    running = start("run_engine")
    until = time.monotonic() + 30
    while "sweep" not in heartbeats() and time.monotonic() < until and running.poll() is None:
        time.sleep(0.1)
    second = start("run_engine")
    _, refusal = second.communicate(timeout=30)
    running.send_signal(signal.SIGTERM)
    began = time.monotonic()
    _, said = running.communicate(timeout=20)

    assert "sweep" in heartbeats(), said
    assert second.returncode == 1
    assert f"Another loop (process {running.pid}) already looks at this database" in refusal
    assert running.returncode == 0, said
    assert time.monotonic() - began < 10  # long before a supervisor loses patience
    assert "The engine has stopped." in said
    assert "Traceback" not in said
