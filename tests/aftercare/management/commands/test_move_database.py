"""Moving a stopped service from SQLite to PostgreSQL: everything arrives as it was, and is sent once."""

from __future__ import annotations

import json
import sqlite3
import subprocess
import sys
from collections import Counter
from collections.abc import Iterator, Mapping
from contextlib import closing, contextmanager
from datetime import UTC, date, datetime, time, timedelta, timezone
from decimal import Decimal
from pathlib import Path
from typing import Any

import psycopg
import pytest

from aftercare import moving
from tests import servers, services
from tests.services import ROOT, SLUG

MESSAGES = 16
SENT = MESSAGES - 3  # one is handing over, one unsure, and of one client a flag is open
# What a service has after a while: every state, a reply with a picture, a flag, a stop, letters and numbers that are
# awkward elsewhere.
LIVED = """
from datetime import timedelta
from decimal import Decimal
from aftercare.lines import lines_of
from aftercare.models import *
from studio import clock
from studio.models import *
studio = Studio.objects.get()
line = lines_of(studio)["email"]
Line.objects.filter(pk=line.pk).update(price=Decimal("0.00790"), currency="USD", options={"big": 1e16, "none": None})
ids = list(Message.objects.filter(state="planned", occasion="prepare").order_by("pk").values_list("pk", flat=True))
now = clock.now()
for pk, state, reason in ((ids[0], "handing_over", ""), (ids[1], "unsure", "The line dropped.")):
    Message.objects.filter(pk=pk).update(state=state, reason=reason, claimed_at=now, handing_over_at=now, line=line,
        address="x@mail.example", lease_until=now + timedelta(days=1))
    Attempt.objects.create(message_id=pk, number=1, line=line, provider="email", reference=f"ref{pk}",
        started_at=now.replace(microsecond=123456), outcome=state if state == "unsure" else "")
her = Client.objects.order_by("pk").last()
flag = Flag.objects.create(studio=studio, urgency="same_day", opened_at=now, urgent_since=now)
flag.clients.add(her)
reply = Reply.objects.create(studio=studio, line=line, from_address=her.email, provider_ref="r1", received_at=now,
    text="mi ojo \\0 est\\u00e1 rojo \\U0001f441", reading={"b": [1, 0.1, {"z": None}], "a": "\\0"}, client=her,
    flag=flag, read_at=now)
Attachment.objects.create(reply=reply, kind="image/png", content=bytes(range(256)), size=256)
Stop.objects.create(line=line, address="zoe@mail.example", at=now)
User.objects.create_user("ada@care.example", "a-long-password")
"""


@pytest.fixture(scope="module")
def postgres() -> Iterator[str]:
    with servers.postgres() as url:
        yield url


@pytest.fixture
def target(postgres: str) -> str:
    with psycopg.connect(postgres, autocommit=True) as connection:
        connection.execute("DROP DATABASE IF EXISTS studio WITH (FORCE)")
        connection.execute("CREATE DATABASE studio")
    return postgres.replace("/postgres?", "/studio?")


def refused(settings: Mapping[str, str], *command: str) -> str:
    done = subprocess.run(
        [sys.executable, "manage.py", *command], cwd=ROOT, env=settings, capture_output=True, text=True, timeout=120
    )
    assert done.returncode == 1, done.stdout + done.stderr
    return done.stderr


def listed(settings: Mapping[str, str], now: datetime) -> list[dict[str, Any]]:
    lines = services.manage(settings, "list_messages", "--studio", SLUG, "--now", now.isoformat(), "--json")
    return [json.loads(line) for line in lines.splitlines()]


@contextmanager
def opened(database: Path) -> Iterator[sqlite3.Connection]:
    with closing(sqlite3.connect(database)) as connection:
        connection.execute("SELECT count(*) FROM aftercare_message").fetchone()
        yield connection


@pytest.mark.servers
@pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed")
def test_a_service_moves_with_all_that_it_has_and_sends_each_message_once(target: str, tmp_path: Path) -> None:
    data = tmp_path / "data"
    data.mkdir()
    now = datetime.now(UTC)
    with servers.smtp(tmp_path) as mail:
        old = services.environment(data, EMAIL_URL=mail.url)
        new = services.environment(data, EMAIL_URL=mail.url, DATABASE_URL=target)
        services.make_live_studio(old, tmp_path, MESSAGES)
        services.manage(old, "shell", "-c", LIVED)
        before = listed(old, now)
        with opened(data / "studio.sqlite3"):
            assert "Another process has the database open" in refused(old, "move_database", "--to", target)

        said = services.manage(old, "move_database", "--to", target)

        assert "DATABASE_URL=" in said
        assert "DIFFERS" not in said
        table = {line.split()[0]: line.split()[1:] for line in said.splitlines() if len(line.split()) == 5}
        assert table["aftercare_message"][0] == table["aftercare_message"][1] == str(len(before))
        assert all(row[0] == row[1] and row[2] == row[3] for name, row in table.items() if name != "table")
        assert listed(new, now) == before
        for command in (["send_due", "--studio", SLUG], ["run_engine"], ["migrate"]):
            assert "lives there: set DATABASE_URL to that one" in refused(old, *command)
        assert mail.accepted == []

        services.manage(new, "send_due", "--studio", SLUG)
        services.manage(new, "send_due", "--studio", SLUG)

    assert len(mail.accepted) == len(set(mail.accepted)) == SENT
    with psycopg.connect(target) as connection:
        states: Counter[str] = Counter(
            dict(connection.execute("SELECT state, count(*) FROM aftercare_message GROUP BY state").fetchall())
        )
        said_by_her = connection.execute("SELECT text, reading FROM aftercare_reply").fetchone()
        picture = connection.execute("SELECT content FROM aftercare_attachment").fetchone()
        price = connection.execute("SELECT price FROM aftercare_line WHERE channel = 'email'").fetchone()
        started = connection.execute(
            "SELECT max(extract(microseconds FROM started_at)) FROM aftercare_attempt WHERE reference LIKE 'ref%'"
        ).fetchone()
        attempts = connection.execute("SELECT count(*), count(DISTINCT id) FROM aftercare_attempt").fetchone()
    assert (states["handing_over"], states["unsure"], states["handed_over"]) == (1, 1, SENT)
    assert said_by_her == ("mi ojo \ufffd está rojo 👁", {"a": "\ufffd", "b": [1, 0.1, {"z": None}]})
    assert picture == (bytes(range(256)),)
    assert price == (Decimal("0.0079"),)
    assert started is not None
    assert int(started[0]) % 1_000_000 == 123456
    assert attempts == (SENT + 2, SENT + 2), "new rows have numbers above those that came along"


@pytest.mark.servers
@pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed")
def test_what_cannot_be_moved_leaves_both_sides_as_they_were(target: str, tmp_path: Path) -> None:
    settings = services.environment(tmp_path)
    services.manage(settings, "migrate", "--verbosity=0")
    broken = "INSERT INTO aftercare_wish (studio_id, reply_id, kind, at) VALUES (1, 1, 'move', '2027-03-01')"
    with closing(sqlite3.connect(tmp_path / "studio.sqlite3")) as connection:
        connection.execute(broken)  # as foreign keys are not looked at here: PostgreSQL does
        connection.commit()

    assert "Nothing was moved, and both databases are as they were" in refused(
        settings, "move_database", "--to", target
    )

    with closing(sqlite3.connect(tmp_path / "studio.sqlite3")) as connection:
        assert connection.execute("SELECT count(*) FROM aftercare_heartbeat").fetchone() == (0,)
        connection.execute("DELETE FROM aftercare_wish")
        connection.commit()
    with psycopg.connect(target) as other:
        assert other.execute("SELECT count(*) FROM aftercare_wish").fetchone() == (0,)
        other.execute("INSERT INTO aftercare_heartbeat (name, at, note) VALUES ('sweep', now(), '{}')")
    assert "is not empty (aftercare_heartbeat have rows)" in refused(settings, "move_database", "--to", target)


@pytest.mark.servers
@pytest.mark.skipif(not servers.has_postgres(), reason="PostgreSQL is not installed")
def test_a_move_that_was_killed_keeps_the_service_still_until_it_is_ended_or_given_up(
    target: str, tmp_path: Path
) -> None:
    settings = services.environment(tmp_path)
    services.manage(settings, "migrate", "--verbosity=0")
    begun = "from aftercare import moved; from studio import clock; moved.mark('there', clock.now(), done=False)"
    services.manage(settings, "shell", "-c", begun)
    assert "has not ended: run manage.py move_database again" in refused(settings, "run_engine")

    services.manage(settings, "move_database", "--give-up")
    services.manage(settings, "migrate", "--verbosity=0")
    services.manage(settings, "shell", "-c", begun)
    services.manage(settings, "move_database", "--to", target)

    assert "was moved to" in refused(settings, "run_engine")


@pytest.mark.parametrize(
    ("here", "there"),
    [
        (Decimal("0.00790"), Decimal("0.0079")),
        ({"n": 1e16, "a": [1.0, -0.5]}, {"a": [1, -0.5], "n": 10**16}),
        (memoryview(b"\x00\xff"), b"\x00\xff"),
        (datetime(2027, 3, 1, 9, 0, 0, 5, tzinfo=UTC), datetime(2027, 3, 1, 9, 0, 0, 5, tzinfo=timezone(timedelta(0)))),
    ],
)
def test_one_value_has_one_form_whatever_database_it_came_from(here: Any, there: Any) -> None:
    assert moving._plain(here) == moving._plain(there)


@pytest.mark.parametrize(
    ("one", "other"),
    [
        (True, 1),
        (None, ""),
        ("1", 1),
        ([1, [2]], [1, 2]),
        ({"a": 1}, ["a", 1]),
        (time(9), date(2027, 3, 1)),
        (0.1, 0.2),
    ],
)
def test_different_values_stay_different(one: Any, other: Any) -> None:
    assert moving._plain(one) != moving._plain(other)
