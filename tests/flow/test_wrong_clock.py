"""A worker whose machine has the wrong hour: leases and due moments follow the database's clock.

The worker's clock is libfaketime's (github.com/wolfcw/libfaketime), which moves every clock that a program asks the
system for. On SQLite the machine's clock is the database's, so there is nothing to compare.
"""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Iterator, Mapping
from datetime import UTC, datetime, timedelta
from pathlib import Path

import psycopg
import pytest

from tests import servers, services
from tests.services import ROOT, SLUG

FAKETIME = next(iter(Path("/usr/lib").glob("*/faketime/libfaketime.so.1")), None)

pytestmark = [
    pytest.mark.servers,
    pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed"),
    pytest.mark.skipif(FAKETIME is None, reason="libfaketime is not installed"),
]
# A message that is due in an hour, one that is due now, one whose sender died, and one that another sender has.
SET = """
from datetime import timedelta
from aftercare.models import Message
from studio import clock
now = clock.now()
one, two, three, four = Message.objects.filter(state="planned", due_at__lte=now).order_by("pk")[:4]
claimed = {"state": "claimed", "claimed_at": now}
Message.objects.filter(pk=one.pk).update(due_at=now + timedelta(hours=1), no_later_than=now + timedelta(hours=3))
Message.objects.filter(pk=two.pk).update(due_at=now)
Message.objects.filter(pk=three.pk).update(**claimed, lease_until=now - timedelta(seconds=1))
Message.objects.filter(pk=four.pk).update(**claimed, lease_until=now + timedelta(minutes=30))
print(one.pk, two.pk, three.pk, four.pk)
"""


@pytest.fixture(scope="module")
def postgres() -> Iterator[str]:
    with servers.postgres() as url:
        yield url


def wrong(settings: Mapping[str, str], offset: str, *command: str) -> str:
    """Run a command of the service on a machine whose clock is wrong; return its standard output."""
    off = {**settings, "LD_PRELOAD": str(FAKETIME), "FAKETIME": offset, "FAKETIME_DONT_FAKE_MONOTONIC": "1"}
    done = subprocess.run(
        [sys.executable, *command], cwd=ROOT, env=off, capture_output=True, text=True, timeout=120, check=True
    )
    return done.stdout


@pytest.mark.parametrize("offset", ["+2h", "-2h"])
def test_what_is_due_and_whose_lease_is_over_is_by_the_databases_clock(
    postgres: str, tmp_path: Path, offset: str
) -> None:
    with psycopg.connect(postgres, autocommit=True) as connection:
        connection.execute("DROP DATABASE IF EXISTS studio WITH (FORCE)")
        connection.execute("CREATE DATABASE studio")
    database = postgres.replace("/postgres?", "/studio?")
    with servers.smtp(tmp_path) as mail:
        settings = services.environment(tmp_path, DATABASE_URL=database, EMAIL_URL=mail.url)
        services.make_live_studio(settings, tmp_path, 4)
        later, now, orphan, held = map(int, services.manage(settings, "shell", "-v", "0", "-c", SET).split()[-4:])
        machine = datetime.fromisoformat(
            wrong(settings, offset, "-c", "from datetime import *; print(datetime.now(timezone.utc))").strip()
        )
        off = machine - datetime.now(UTC)
        assert abs(abs(off) - timedelta(hours=2)) < timedelta(minutes=1), "the worker's clock is wrong indeed"

        counts = json.loads(wrong(settings, offset, "manage.py", "send_due", "--studio", SLUG))

        assert counts["handed_over"] == len(mail.accepted) == 2
    with psycopg.connect(database) as connection:
        states: dict[int, str] = dict(connection.execute("SELECT id, state FROM aftercare_message").fetchall())
        written = connection.execute(
            "SELECT max(abs(extract(epoch FROM clock_timestamp() - handed_over_at))) FROM aftercare_message"
        ).fetchone()
    assert [states[pk] for pk in (later, now, orphan, held)] == ["planned", "handed_over", "handed_over", "claimed"]
    assert written is not None
    assert written[0] < 60, "moments on record are the database's, too"
