"""The outbox says some things to PostgreSQL in other words than to SQLite: its tests hold on both."""

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


def test_what_holds_for_outbox_and_sending_holds_on_postgresql(tmp_path: Path) -> None:
    command = [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", "-p", "no:xdist"]

    with servers.postgres() as url:
        done = subprocess.run(
            [*command, "tests/aftercare/outbox", "tests/aftercare/sending"],
            cwd=ROOT,
            env={**os.environ, "DATABASE_URL": url, "DATA_DIR": str(tmp_path)},
            capture_output=True,
            text=True,
            check=False,
            timeout=600,
        )

    assert done.returncode == 0, done.stdout[-4000:]
