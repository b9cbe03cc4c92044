"""The outbox writes many rows by statements of its own for each database: on PostgreSQL all of its tests hold, too."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests import servers

ROOT = Path(__file__).resolve().parents[2]

pytestmark = [
    pytest.mark.servers,
    pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed"),
]


def test_messages_are_promised_claimed_handed_over_and_reported_alike_on_postgresql(tmp_path: Path) -> None:
    command = [
        sys.executable,
        "-m",
        "pytest",
        "-q",
        "-p",
        "no:cacheprovider",
        "-p",
        "no:xdist",
        "tests/aftercare/outbox",
    ]

    with servers.postgres() as url:
        done = subprocess.run(
            command,
            cwd=ROOT,
            env={**os.environ, "DATABASE_URL": url, "DATA_DIR": str(tmp_path)},
            capture_output=True,
            text=True,
            timeout=600,
            check=False,
        )

    assert done.returncode == 0, done.stdout[-4000:]
    assert " passed" in done.stdout
