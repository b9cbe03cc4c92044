"""Where the service speaks SQL of its own, its tests hold on PostgreSQL as they do on SQLite."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests import servers

ROOT = Path(__file__).resolve().parents[2]
PARTS = {
    "counted": (
        "tests/aftercare/figures",
        "tests/aftercare/views/test_figures.py",
        "tests/aftercare/pages/test_paging.py",
    ),
    "promised": ("tests/aftercare/outbox", "tests/studio/test_postgres.py"),
    "sent": ("tests/aftercare/sending", "tests/aftercare/test_tasks.py"),
    "planned": ("tests/aftercare/planning", "tests/aftercare/facts"),
    "imported": (
        "tests/aftercare/test_imports.py",
        "tests/studio/book/test_importing.py",
        "tests/flow/test_book_to_phone.py",
    ),
    "heard": (
        "tests/aftercare/test_receiving.py",
        "tests/aftercare/test_hearing.py",
        "tests/aftercare/test_receivers.py",
        "tests/aftercare/test_webhooks.py",
        "tests/aftercare/test_triage.py",
    ),
}

pytestmark = [
    pytest.mark.servers,
    pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed"),
]


@pytest.mark.parametrize("parts", PARTS)
def test_what_holds_on_one_database_holds_on_the_other(parts: str, tmp_path: Path) -> None:
    command = [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", "-p", "no:xdist", "-m", "not servers"]
    command.append("--no-migrations")  # the migrations are run there by every test that starts the service

    with servers.postgres() as url:
        done = subprocess.run(
            [*command, *PARTS[parts]],
            cwd=ROOT,
            env={**os.environ, "DATABASE_URL": url, "DATA_DIR": str(tmp_path)},
            capture_output=True,
            text=True,
            timeout=600,
            check=False,
        )

    assert done.returncode == 0, done.stdout[-4000:]
    assert " passed" in done.stdout
