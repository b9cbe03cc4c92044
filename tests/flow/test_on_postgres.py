"""Where the service speaks SQL of its own, its tests hold on PostgreSQL as they do on SQLite."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests import servers

ROOT = Path(__file__).resolve().parents[2]
COUNTED = (
    "tests/aftercare/figures",
    "tests/aftercare/views/test_figures.py",
    "tests/aftercare/pages/test_paging.py",
)
SENT = ("tests/aftercare/outbox", "tests/aftercare/sending", "tests/studio/test_postgres.py")

pytestmark = [
    pytest.mark.servers,
    pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed"),
]


@pytest.mark.parametrize("parts", [COUNTED, SENT], ids=["counted", "sent"])
def test_what_holds_on_one_database_holds_on_the_other(parts: tuple[str, ...], tmp_path: Path) -> None:
    command = [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", "-p", "no:xdist"]

    with servers.postgres() as url:
        done = subprocess.run(
            [*command, *parts],
            cwd=ROOT,
            env={**os.environ, "DATABASE_URL": url, "DATA_DIR": str(tmp_path)},
            capture_output=True,
            text=True,
            timeout=600,
            check=False,
        )

    assert done.returncode == 0, done.stdout[-4000:]
    assert " passed" in done.stdout
