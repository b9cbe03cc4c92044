# ruff: noqa: E501  the statements' column lists read better whole
"""A sweep's cost follows what is due, not what exists: 1,000,000 messages of history beside 10,000, in one run.

    python tests/bench/sweep.py [--history 1000000] [--peer 10000] [--due 500]

Prints the median of several sweeps of the same number of due messages over each, and their ratio. Exit 1 above 1.3.
"""

from __future__ import annotations

import argparse
import json
import os
import statistics
import subprocess
import sys
import tempfile
import time
from datetime import UTC, datetime, timedelta
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
MOST_TIMES = 1.3
NOW = datetime(2026, 6, 1, 15, tzinfo=UTC)
EACH = 30  # messages of history a client; the history is cut to a multiple of it
ROUNDS = 7

CLIENTS = """
WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < %(clients)s)
INSERT INTO studio_client (id, studio_id, first_name, last_name, mobile, email, time_zone, language, channel, note,
    guardian_name, guardian_mobile, on_break, earlier_declined, created_at, revision, planned_revision, forecast_revision)
SELECT i, %(studio)s, 'Mia', 'Ortega ' || i, '', 'mia' || i || '@example.com', '', '', '', '', '', '', 0, 0, %(now)s, 1, 1, 1 FROM n
"""
VISITS = """
WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < %(clients)s)
INSERT INTO studio_visit (id, studio_id, client_id, service, service_name, starts_at, minutes, status, room, heard_at,
    heard_as, counted_done, style, lash_map, remover, tape, primer, share_seen, outgrown, mirror_check, test_result, note,
    revision, created_at)
SELECT i, %(studio)s, i, 'fill', '', %(past)s, 75, 'done', '', %(past)s, 'done', 0, '', '', '', '', '', '', '', '', '', '',
    1, %(now)s FROM n
"""
MESSAGES = """
WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < %(messages)s - 1)
INSERT INTO aftercare_message (studio_id, key, edition, client_id, visit_id, occasion, step, kind, language, own_words, rank, state, reason, channel,
    due_at, planned_from, tries, fell_back, rehearsed, address, subject, text, ended_at)
SELECT %(studio)s, 'old:' || i, 1, i / %(each)s + 1, i / %(each)s + 1, 'check', i %% %(each)s + 100, '', '', '', 1, 'delivered', '', 'email',
    %(past)s, %(past)s, 0, 0, 1, 'mia@example.com', '', 'as it was', %(past)s FROM n
"""


def measure(history: int, due: int) -> None:
    """Fill a fresh database with ``history`` messages that have gone, then time sweeps of ``due`` each."""
    import django

    django.setup()
    from django.core.management import call_command
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
    numbers = {"studio": studio.pk, "now": NOW, "past": past, "each": EACH, "messages": history}
    numbers["clients"] = history // EACH
    with connection.cursor() as cursor:
        for statement in (CLIENTS, VISITS, MESSAGES):
            cursor.execute(statement, numbers)
        cursor.execute("ANALYZE")
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
    print(json.dumps({"seconds": statistics.median(times[1:])}))


def run(history: int, due: int) -> float:
    with tempfile.TemporaryDirectory() as folder:
        env = {
            **os.environ,
            "DATA_DIR": folder,
            "DATABASE_URL": f"sqlite:///{folder}/bench.sqlite3",
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


def main(history: int, peer: int, due: int) -> int:
    small, large = run(peer, due), run(history, due)
    print(f"sweep of {due:,} due: {small * 1000:.0f} ms over {peer:,} messages, {large * 1000:.0f} ms over {history:,}")
    print(f"times: {large / small:.2f} (limit {MOST_TIMES})")
    return int(large / small > MOST_TIMES)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--history", type=int, default=1_000_000)
    parser.add_argument("--peer", type=int, default=10_000)
    parser.add_argument("--due", type=int, default=300)
    parser.add_argument("--only", action="store_true", help=argparse.SUPPRESS)
    chosen = parser.parse_args()
    if chosen.only:
        measure(chosen.history, chosen.due)
    else:
        sys.exit(main(chosen.history, chosen.peer, chosen.due))
