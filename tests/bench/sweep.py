"""A sweep's cost follows what is due, not what exists: 1,000,000 messages of history beside 10,000, in one run.

    python tests/bench/sweep.py [--history 1000000] [--peer 10000] [--due 300] [--postgres]

On SQLite, or with --postgres on a PostgreSQL of its own, where 10,000,000 take some minutes and 8 GB.

Prints the quickest of several sweeps of the same number of due messages over each, as whatever else runs on a machine
only slows, and their ratio. Exit 1 above 1.3.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import tempfile
import time
from contextlib import ExitStack
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from django.db.models import Model

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))
MOST_TIMES = 1.3
NOW = datetime(2026, 6, 1, 15, tzinfo=UTC)
EACH = 30  # messages of history a client; the history is cut to a multiple of it
ROUNDS = 7

NUMBERS = {
    "sqlite": "WITH RECURSIVE n(i) AS (SELECT {first} UNION ALL SELECT i + 1 FROM n WHERE i < {last}) ",
    "postgresql": "WITH n(i) AS (SELECT * FROM generate_series({first}, {last})) ",
}


def fill(model: type[Model], first: int, last: int, written: dict[str, str], **values: object) -> None:
    """Insert a row for each number ``i`` from ``first`` to ``last``, within the database.

    ``written`` are columns as SQL; all others have ``values`` or their fields' defaults.
    """
    from django.db import connection

    fields: list[Any] = list(model._meta.concrete_fields)
    made = {field.attname: values.get(field.attname, field.get_default()) for field in fields}
    plain = [field for field in fields if field.attname not in written and made[field.attname] is not None]
    names = [*written, *(field.column for field in plain)]
    selected = [*written.values(), *(["%s"] * len(plain))]
    numbers = NUMBERS[connection.vendor].format(first=first, last=last)
    statement = f"{numbers}INSERT INTO {model._meta.db_table} ({', '.join(names)}) SELECT {', '.join(selected)} FROM n"
    with connection.cursor() as cursor:
        cursor.execute(statement, [field.get_db_prep_save(made[field.attname], connection) for field in plain])


def measure(history: int, due: int) -> None:
    """Fill a fresh database with ``history`` messages that have gone, then time sweeps of ``due`` each."""
    import django

    django.setup()
    from django.core.management import call_command
    from django.core.management.color import no_style
    from django.db import connection

    from aftercare import planning, tasks
    from aftercare.lines import lines_of
    from aftercare.models import Message
    from studio.models import Client, Studio, Visit

    call_command("migrate", verbosity=0)
    studio = Studio.objects.create(slug="bench", name="Bench", time_zone="UTC", region="US")
    lines_of(studio)
    past = NOW - timedelta(days=200)
    history -= history % EACH
    of, clients = {"studio_id": studio.pk}, history // EACH
    planned = {"revision": 1, "planned_revision": 1, "forecast_revision": 1}
    email = "'mia' || i || '@example.com'"
    fill(Client, 1, clients, {"id": "i", "email": email}, **of, **planned, first_name="Mia", created_at=NOW)
    done = {"service": "fill", "starts_at": past, "minutes": 75, "status": "done", "heard_at": past, "heard_as": "done"}
    fill(Visit, 1, clients, {"id": "i", "client_id": "i"}, **of, **done, created_at=NOW)
    hers = f"i / {EACH} + 1"
    about = {"key": "'old:' || i", "client_id": hers, "visit_id": hers, "step": f"i %% {EACH} + 100"}
    gone = {"occasion": "check", "rank": 1, "state": "delivered", "channel": "email", "due_at": past, "ended_at": past}
    fill(Message, 0, history - 1, about, **of, **gone, planned_from=past, rehearsed=True, text="as it was")
    is_postgres = connection.vendor == "postgresql"
    with connection.cursor() as cursor:
        for statement in connection.ops.sequence_reset_sql(no_style(), [Client, Visit]):
            cursor.execute(statement)
        cursor.execute("VACUUM ANALYZE" if is_postgres else "ANALYZE")
        if is_postgres:
            cursor.execute("CHECKPOINT")  # what the filling left to write must not fall into a sweep
    if Message.objects.count() != history:
        sys.exit("the history was not written")
    times = []
    for number in range(ROUNDS):
        ids = list(Client.objects.order_by("pk").values_list("pk", flat=True)[:due])
        start = NOW + timedelta(days=3 + number, hours=-2)
        Visit.objects.bulk_create(
            Visit(studio=studio, client_id=pk, service="fill", starts_at=start, minutes=75, heard_at=NOW) for pk in ids
        )
        at = NOW + timedelta(days=number)
        planning.plan_clients(ids, at - timedelta(hours=8))
        begun = time.perf_counter()
        counts = tasks.send_due(now=at)
        times.append(time.perf_counter() - begun)
        if counts["handed_over"] != due:
            sys.exit(f"{counts} instead of {due} handed over")
    print(json.dumps({"seconds": min(times[1:])}))


def run(history: int, due: int, *, on_postgres: bool) -> float:
    from tests import servers

    with ExitStack() as stack:
        folder = stack.enter_context(tempfile.TemporaryDirectory())
        url = stack.enter_context(servers.postgres()) if on_postgres else f"sqlite:///{folder}/bench.sqlite3"
        env = {
            **os.environ,
            "DATA_DIR": folder,
            "DATABASE_URL": url,
            "DJANGO_SETTINGS_MODULE": "studio.settings",
            "PYTHONPATH": str(ROOT),
            "LOG_LEVEL": "ERROR",
        }
        done = subprocess.run(
            [sys.executable, __file__, "--only", "--history", str(history), "--due", str(due)],
            env=env,
            cwd=ROOT,
            text=True,
            stdout=subprocess.PIPE,
            check=True,
        )
        return float(json.loads(done.stdout.strip().splitlines()[-1])["seconds"])


def main(history: int, peer: int, due: int, *, on_postgres: bool) -> int:
    small, large = run(peer, due, on_postgres=on_postgres), run(history, due, on_postgres=on_postgres)
    print(f"sweep of {due:,} due: {small * 1000:.0f} ms over {peer:,} messages, {large * 1000:.0f} ms over {history:,}")
    print(f"times: {large / small:.2f} (limit {MOST_TIMES})")
    return int(large / small > MOST_TIMES)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--history", type=int, default=1_000_000)
    parser.add_argument("--peer", type=int, default=10_000)
    parser.add_argument("--due", type=int, default=300)
    parser.add_argument("--postgres", action="store_true")
    parser.add_argument("--only", action="store_true", help=argparse.SUPPRESS)
    chosen = parser.parse_args()
    if chosen.only:
        measure(chosen.history, chosen.due)
    else:
        sys.exit(main(chosen.history, chosen.peer, chosen.due, on_postgres=chosen.postgres))
