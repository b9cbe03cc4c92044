"""The daily pages beside a long history: 100,000 clients, 1,000,000 visits, 5,000,000 messages, against 1,000 clients.

    python tests/bench/pages.py [--clients 100000] [--peer 1000] [--visits 10] [--messages 5] [--rounds 15] [--plans]

Fills two databases of a private PostgreSQL by SQL, one of each size, and opens each page of both in turn, as the people
of the studio do. What is open is the same in both (visits of a day, matters, what failed): the question is what the
records behind it cost. Prints queries, medians and their ratios; exit 1 above 15 queries, or where a daily page takes
more than twice as long as in the small studio. The figures follow their period and have no such limit: their time is
printed beside. ``--visits`` are those of a client, ``--messages`` those of a visit; ``--plans`` prints slow statements.
"""

from __future__ import annotations

import argparse
import contextlib
import json
import os
import statistics
import subprocess
import sys
import tempfile
import time
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
MOST_TIMES, MOST_QUERIES = 2.0, 15
YEARS = 10
A_DAY = 24  # visits of each of the days about today
OPEN = 30  # matters; and as many messages that did not arrive
WARM = 3
SLOW = 0.05  # seconds, of a statement that --plans prints

DAILY = {
    "morning list, artist": ("ada", "/morning"),
    "morning list, owner": ("olga", "/morning?artist=all"),
    "morning list, front desk": ("dee", "/morning"),
    "day sheet, artist": ("ada", "/today"),
    "day sheet, all": ("olga", "/today?artist=all"),
    "client card": ("olga", "/clients/{client}"),
    "client card, artist": ("ada", "/clients/{client}"),
    "messages": ("olga", "/messages"),
    "messages, gone": ("olga", "/messages?group=gone"),
    "messages, gone, later page": ("olga", "/messages?group=gone&{later}"),
    "messages, gone, of one kind": ("olga", "/messages?group=gone&occasion=full_set_due"),
    "messages, gone, checks, artist": ("ada", "/messages?group=gone&occasion=check"),
    "messages, in trouble": ("olga", "/messages?group=trouble"),
    "messages, withheld": ("olga", "/messages?group=withheld"),
    "messages, withdrawn": ("olga", "/messages?group=withdrawn"),
}
BESIDE = {
    "clients": ("olga", "/clients"),
    "clients, found by name": ("olga", "/clients?q=quist 7"),
    "clients, found by digits": ("olga", "/clients?q=0107"),
    "figures, a month": ("olga", "/figures?period=month"),
    "figures, three months": ("olga", "/figures?period=quarter"),
    "figures, a year": ("olga", "/figures?period=year"),
    "figures, a year, artist": ("ada", "/figures?period=year"),
}


class Filling:
    """Rows by the hundred thousand: a column that is not given gets its field's default."""

    def __init__(self, cursor: Any, now: datetime) -> None:
        self.cursor = cursor
        self.now = now

    def fill(self, model: Any, source: str, /, **given: str) -> None:
        """Insert a row for each of ``source`` (SQL after FROM), with the given expressions; %% stands for a percent."""
        from django.db import connection

        names, expressions, values = [], [], []
        for field in model._meta.concrete_fields:
            if field.name in given:
                expressions.append(given[field.name])
            elif field.primary_key:
                continue
            else:
                at_birth = getattr(field, "auto_now_add", False)
                expressions.append("%s")
                default = self.now if at_birth else field.get_default()
                values.append(field.get_db_prep_save(default, connection))
            names.append(field.column)
        self.cursor.execute(
            f"INSERT INTO {model._meta.db_table} ({', '.join(names)}) SELECT {', '.join(expressions)} FROM {source}",
            values,
        )


def populate(clients: int, visits: int, messages: int) -> dict[str, Any]:
    """Fill the database; return the studio's people and what to open."""
    from django.core.management import call_command
    from django.db import connection

    from aftercare.lines import lines_of
    from aftercare.models import Flag, Forecast, Message, Reply
    from studio.models import Adhesive, Client, Consent, Reaction, Visit, VisitRef
    from tests import cast as casting
    from tests.forecasts import forecast

    call_command("migrate", verbosity=0)
    cast = casting.make(now=datetime.now(UTC).replace(microsecond=0))
    lines = lines_of(cast.studio)
    lots = [Adhesive.objects.create(studio=cast.studio, product="Birch 4", lot=f"{number:04}") for number in range(40)]
    now = f"TIMESTAMPTZ '{cast.now.isoformat()}'"
    studio = str(cast.studio.pk)
    artist = f"CASE WHEN c %% 2 = 0 THEN {cast.ada.pk} ELSE {cast.noor.pk} END"
    minutes = YEARS * 365 * 24 * 60
    done, gone = clients * visits, clients * visits * messages
    with connection.cursor() as cursor:
        cursor.execute(
            "SET session_replication_role = replica"
        )  # foreign keys are not looked up: all of them are right
        put = Filling(cursor, cast.now).fill
        indexes = _without_indexes(cursor, [Client, Consent, Visit, VisitRef, Message, Reply, Forecast])
        put(
            Client,
            f"generate_series(1, {clients}) c",
            id="c",
            studio=studio,
            first_name="'Mia' || (c %% 997)",
            last_name="'Quist ' || c",
            mobile="'+1212555' || lpad((c %% 10000)::text, 4, '0')",
            email="'mia' || c || '@mail.example'",
            planned_revision="1",
            forecast_revision="1",
        )
        kinds = "(VALUES ('sms', 'visits'), ('sms', 'reminders'), ('email', 'visits'), ('email', 'reminders')) k(ch, p)"
        put(
            Consent,
            f"generate_series(1, {clients}) c, {kinds}",
            client="c",
            channel="ch",
            purpose="p",
            given="true",
            at=f"{now} - interval '{YEARS} years'",
            how="'on paper'",
        )
        # Each client's sets lie three weeks apart, her last one anywhere in the years behind.
        last = f"{now} - interval '5 days' - interval '1 minute' * ((c::bigint * 7919) %% {minutes})"
        start = f"{last} - interval '21 days' * ({visits} - 1 - v)"
        put(
            Visit,
            f"generate_series(1, {clients}) c, generate_series(0, {visits - 1}) v",
            id=f"(c - 1) * {visits} + v + 1",
            studio=studio,
            client="c",
            artist=artist,
            service="CASE WHEN v = 0 THEN 'full set' ELSE 'fill' END",
            starts_at=start,
            heard_at=f"{start} - interval '10 days'",
            minutes="75",
            status="'done'",
            adhesive=f"{lots[0].pk} + (c + v) %% {len(lots)}",
            share_left="CASE WHEN v > 0 THEN 5 * (8 + (c * 31 + v * 17) %% 9) END",
            share_seen="'seen'",
            mirror_check="'happy'",
        )
        put(
            VisitRef,
            f"generate_series(1, {done}) v",
            studio=studio,
            source="'csv'",
            reference="'v' || v",
            visit="v",
            said="'{}'",
        )
        her = cast.client("Model", id=clients + 1)
        one = forecast(cast.done(her, cast.at(9, -9), id=done + 1), cast.at(10, -9))
        occasions = "(ARRAY['prepare', 'care', 'check', 'check', 'fill_due', 'full_set_due'])"
        failed = "m %% 500 = 3"
        state = (
            f"CASE WHEN {failed} THEN 'undelivered' WHEN m %% 50 = 0 THEN 'withheld' WHEN m %% 50 = 1 THEN 'withdrawn'"
            " WHEN m %% 50 = 2 THEN 'handed_over' ELSE 'delivered' END"
        )
        reason = (
            f"CASE WHEN {failed} THEN 'The number does not take texts.' WHEN m %% 50 = 0 THEN 'on hold'"
            " WHEN m %% 50 = 1 THEN 'the visit was cancelled' ELSE '' END"
        )
        visit = f"(m / {messages}) + 1"
        at = "v.starts_at + interval '1 day' * (m %% 6 * 4)"
        put(
            Message,
            f"generate_series(0, {gone - 1}) m JOIN studio_visit v ON v.id = {visit}",
            id="m + 1",
            studio=studio,
            key="'old:' || m",
            client="v.client_id",
            visit="v.id",
            occasion=f"{occasions}[m %% {messages} %% 6 + 1]",
            state=state,
            reason=reason,
            channel="'sms'",
            line=str(lines["sms"].pk),
            address="'+12125550107'",
            text="'Wrenfield Lash Room: words as they went, of about the length that they have.'",
            due_at=at,
            aim_at=at,
            planned_from="v.heard_at",
            handed_over_at=at,
            ended_at=at,
            seen_to_at=f"CASE WHEN {failed} THEN {now} END",
            segments="1",
            # Of the set that she wears, the reminder follows a forecast.
            forecast=f"CASE WHEN v.id %% {visits} = 0 AND m %% {messages} = 4 THEN {one.pk} + v.client_id END",
        )
        put(
            Message,
            f"generate_series(1, {clients}) c",
            id=f"{gone} + c",
            studio=studio,
            key="'due:' || c",
            client="c",
            visit=f"c * {visits}",
            occasion="'full_set_due'",
            channel="'sms'",
            due_at=f"{now} + interval '1 hour' * (c %% 700 + 2)",
            aim_at=f"{now} + interval '1 hour' * (c %% 700 + 2)",
            planned_from=now,
        )
        every = 100
        wrote = f"(SELECT starts_at + interval '2 days' FROM studio_visit WHERE id = r * {every})"
        put(
            Flag,
            f"generate_series(1, {done // every}) r",
            id="r",
            studio=studio,
            urgency="(ARRAY['emergency', 'same_day', 'watch', 'none'])[r %% 4 + 1]",
            state="'closed'",
            opened_at=wrote,
            urgent_since=wrote,
            taken_at=f"{wrote} + interval '1 minute' * (r %% 240)",
            closed_at=f"{wrote} + interval '1 day'",
            outcome="'answered'",
        )
        cursor.execute(
            f"INSERT INTO {Flag.clients.through._meta.db_table} (flag_id, client_id)"
            f" SELECT r, (r * {every} - 1) / {visits} + 1 FROM generate_series(1, {done // every}) r"
        )
        put(
            Reply,
            f"generate_series(1, {done // every}) r JOIN studio_visit v ON v.id = r * {every}",
            studio=studio,
            line=str(lines["sms"].pk),
            from_address="'+12125550107'",
            provider_ref="'old-' || r",
            received_at="v.starts_at + interval '2 days'",
            text="'thank you, all fine'",
            client="v.client_id",
            flag="r",
            read_at="v.starts_at + interval '2 days'",
        )
        put(
            Reaction,
            f"generate_series(1, {done // 200}) r JOIN studio_visit v ON v.id = r * 200",
            client="v.client_id",
            visit="v.id",
            at="v.starts_at + interval '2 days'",
            words="'itchy lids'",
            released_at="v.starts_at + interval '9 days'",
        )
        fields = {field.name: field.column for field in Forecast._meta.concrete_fields if not field.primary_key}
        put(
            Forecast,
            f"generate_series(1, {clients}) c, {Forecast._meta.db_table} f WHERE f.id = {one.pk}",
            **{
                **{name: f"f.{column}" for name, column in fields.items()},
                "client": "c",
                "visit": f"c * {visits}",
                "made_at": f"(SELECT starts_at FROM studio_visit WHERE id = c * {visits})",
                "id": f"{one.pk} + c",
            },
        )
        for definition in indexes:
            cursor.execute(definition)
        for model in (Client, Consent, Visit, VisitRef, Message, Flag, Reply, Reaction, Forecast):
            name = model._meta.db_table
            cursor.execute(f"SELECT setval(pg_get_serial_sequence('{name}', 'id'), (SELECT max(id) FROM {name}))")
        cursor.execute("SET session_replication_role = origin")
    _today(cast, clients, visits)
    with connection.cursor() as cursor:
        cursor.execute("VACUUM ANALYZE")
    return {"cast": cast, "client": clients // 2}


def _without_indexes(cursor: Any, models: list[Any]) -> list[str]:
    """Drop what no constraint needs, so that filling takes minutes; return how each is made again."""
    tables = tuple(model._meta.db_table for model in models)
    cursor.execute(
        "SELECT indexname, indexdef FROM pg_indexes WHERE tablename = ANY(%s)"
        " AND indexname NOT IN (SELECT conname FROM pg_constraint)",
        [list(tables)],
    )
    found = cursor.fetchall()
    for name, _definition in found:
        cursor.execute(f'DROP INDEX "{name}"')
    return [definition for _name, definition in found]


def _today(cast: Any, clients: int, visits: int) -> None:
    """Add what is open, the same in every studio: visits of a few days, matters, messages that did not arrive."""
    from aftercare.models import Message
    from studio.models import Client

    step = clients // (4 * A_DAY + 2 * OPEN) or 1
    people = iter(Client.objects.filter(pk__in=range(1, clients, step)).order_by("pk"))
    for day in range(4):
        for number in range(A_DAY):
            artist = cast.ada if number % 2 else cast.noor
            cast.visit(next(people), cast.at(8 + number / 2, day), artist=artist)
    for number in range(OPEN):
        her = next(people)
        cast.wrote(her, "one of them pokes me", cast.at(6, -number % 5), urgency="watch" if number % 3 else "same_day")
    for _number in range(OPEN):
        her = next(people)
        message = Message.objects.filter(client=her, occasion="care").last()
        Message.objects.filter(pk=message.pk).update(state="undelivered", seen_to_at=None, reason="No such number.")


def measure(options: argparse.Namespace, clients: int) -> None:
    """Fill one database, open each page some times, and print what it took as JSON."""
    import django

    django.setup()
    from django.conf import settings
    from django.core.management import call_command
    from django.db import connection, reset_queries
    from django.test import Client as Browser
    from django.test.utils import CaptureQueriesContext

    settings.ALLOWED_HOSTS = ["*"]
    call_command("collectstatic", "--noinput", verbosity=0)
    begun = time.perf_counter()
    made = populate(clients, options.visits, options.messages)
    print(f"{clients:,} clients: filled in {time.perf_counter() - begun:.0f} s", file=sys.stderr)
    browsers = {}
    for who in ("ada", "olga", "dee"):
        browsers[who] = Browser()
        browsers[who].force_login(getattr(made["cast"], who).user)
    later = _later(browsers["olga"])
    print(json.dumps("filled"), flush=True)
    for line in sys.stdin:
        counted, name = json.loads(line)
        who, path = {**DAILY, **BESIDE}[name]
        address = path.format(client=made["client"], later=later)
        with CaptureQueriesContext(connection) if counted else contextlib.nullcontext() as queries:
            at = time.perf_counter()
            answer = browsers[who].get(address)
            took = time.perf_counter() - at
        if answer.status_code != 200:
            sys.exit(f"{address}: {answer.status_code}")
        for query in queries.captured_queries if counted and options.plans else ():
            if float(query["time"]) >= SLOW:
                print(f"\n{name}: {query['time']} s\n{query['sql'][:3000]}", file=sys.stderr)
        print(json.dumps(len(queries) if counted else took), flush=True)
        reset_queries()


def _later(browser: Any) -> str:
    """Return the query of a page far down the list of what has gone, by following its links."""
    import re

    query = "page=2"
    for _number in range(20):
        page = browser.get(f"/messages?group=gone&{query}").content.decode()
        link = re.search(r'rel="next" href="\?([^"]+)"', page)
        if link is None:
            break
        query = "&".join(part for part in link[1].replace("&amp;", "&").split("&") if not part.startswith("group="))
    return query


class Studio:
    """A process that holds one of the studios and opens its pages when it is told to."""

    def __init__(self, options: argparse.Namespace, clients: int, url: str, folder: str) -> None:
        env = {
            **os.environ,
            "DATA_DIR": folder,
            "DATABASE_URL": url,
            "DJANGO_SETTINGS_MODULE": "studio.settings",
            "PYTHONPATH": str(ROOT),
            "LOG_LEVEL": "ERROR",
        }
        command = [sys.executable, __file__, "--only", str(clients), "--visits", str(options.visits)]
        command += ["--messages", str(options.messages), *(["--plans"] if options.plans else [])]
        pipes = {"stdin": subprocess.PIPE, "stdout": subprocess.PIPE}
        self.process = subprocess.Popen(command, env=env, cwd=ROOT, text=True, **pipes)
        self.hear()

    def hear(self) -> Any:
        line = self.process.stdout.readline()
        return json.loads(line) if line else sys.exit("the studio's process has ended")

    def open(self, name: str, *, counted: bool = False) -> float:
        """Open a page; return the seconds it took, or how many queries."""
        self.process.stdin.write(json.dumps([counted, name]) + "\n")
        self.process.stdin.flush()
        return float(self.hear())


def times(small: Studio, large: Studio, name: str, rounds: int) -> tuple[list[float], list[float]]:
    """Open a page of both studios in turn, so that whatever else the machine does slows both alike."""
    found: tuple[list[float], list[float]] = ([], [])
    for number in range(WARM + rounds):
        for studio, own in zip((small, large), found, strict=True):
            took = studio.open(name)
            if number >= WARM:
                own.append(took)
    return found


def main(options: argparse.Namespace) -> int:
    sys.path.insert(0, str(ROOT))
    from tests.servers import postgres

    with postgres() as url:
        import psycopg

        with psycopg.connect(url.replace("postgres://", "postgresql://", 1), autocommit=True) as connection:
            # Only this bench's data is at stake: it is thrown away whatever happens.
            for setting in ("fsync = off", "max_wal_size = '4GB'", "maintenance_work_mem = '512MB'"):
                connection.execute(f"ALTER SYSTEM SET {setting}")
            connection.execute("SELECT pg_reload_conf()")
            for size in (options.peer, options.clients):
                connection.execute(f"CREATE DATABASE of_{size}")
        wrong = 0
        with contextlib.ExitStack() as stack:
            studios = []
            for size in (options.peer, options.clients):
                folder = stack.enter_context(tempfile.TemporaryDirectory())
                studios.append(Studio(options, size, url.replace("/postgres?", f"/of_{size}?"), folder))
                stack.callback(studios[-1].process.wait)
                stack.callback(studios[-1].process.stdin.close)
            small, large = studios
            print(f"{'':32} {'queries':>7} {options.peer:>10,} {options.clients:>10,} {'times':>7}")
            for name in (*DAILY, *BESIDE):
                both = times(small, large, name, options.rounds if name in DAILY else min(3, options.rounds))
                medians = [statistics.median(one) for one in both]
                queries = int(max(studio.open(name, counted=True) for studio in studios))
                ratio = medians[1] / medians[0]
                bad = queries > MOST_QUERIES or (name in DAILY and ratio > MOST_TIMES)
                wrong += bad
                said = " ".join(f"{1000 * one:8.1f}ms" for one in medians)
                print(f"{name:32} {queries:7} {said} {ratio:7.2f}{'  too much' if bad else ''}", flush=True)
    print(f"limits: {MOST_QUERIES} queries, and {MOST_TIMES} times for the daily pages (down to “{list(DAILY)[-1]}”)")
    return int(wrong > 0)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--clients", type=int, default=100_000)
    parser.add_argument("--peer", type=int, default=1_000)
    parser.add_argument("--visits", type=int, default=10)
    parser.add_argument("--messages", type=int, default=5)
    parser.add_argument("--rounds", type=int, default=15)
    parser.add_argument("--plans", action="store_true")
    parser.add_argument("--only", type=int, help=argparse.SUPPRESS)
    chosen = parser.parse_args()
    if chosen.only:
        measure(chosen, chosen.only)
    else:
        sys.exit(main(chosen))
