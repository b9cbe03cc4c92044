"""Importing and planning 10,000 rows on SQLite, beside a bare csv read and bulk_create of the same rows.

    python tests/bench/importing.py [--rows 10000]

Both run in one go on fresh databases, so what is printed is a ratio. Meanwhile another process opens a page and stores
an incoming reply, again and again; the longest of these waits is printed too. Exit 1 where a limit is not kept.
"""

from __future__ import annotations

import argparse
import csv
import json
import os
import random
import subprocess
import sys
import tempfile
import time
from datetime import UTC, datetime, timedelta
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
MOST_TIMES, MOST_WAIT = 12.0, 2.0
NOW = datetime(2026, 6, 1, 12, tzinfo=UTC)
SERVICES = [("full set", 180), ("fill", 75), ("fill", 75), ("fill", 75), ("patch test", 15), ("removal", 45)]


def write_book(file: Path, rows: int) -> None:
    """A made-up book: four visits a client, a third of them ahead, numbers of the range for fiction."""
    pick = random.Random(3)
    with file.open("w", newline="", encoding="utf-8") as out:
        writer = csv.writer(out)
        writer.writerow(
            [
                "visit",
                "client",
                "first_name",
                "last_name",
                "mobile",
                "email",
                "sms_ok",
                "service",
                "artist",
                "starts_at",
                "minutes",
                "status",
            ]
        )
        for number in range(rows):
            client = number // 4
            ahead = number % 3 == 0
            start = NOW + timedelta(
                days=pick.randrange(1, 40) if ahead else -pick.randrange(2, 300), minutes=15 * pick.randrange(40)
            )
            service, minutes = pick.choice(SERVICES)
            writer.writerow(
                [
                    f"V{number}",
                    f"C{client}",
                    "Mia",
                    f"Ortega {client}",
                    f"+1 {200 + client % 700} 555 {100 + client % 100:04}",
                    f"mia{client}@example.com",
                    "yes" if client % 5 else "",
                    service,
                    f"Artist {client % 7}",
                    f"{start:%Y-%m-%dT%H:%M:%SZ}",
                    minutes,
                    "booked" if ahead else "done",
                ]
            )


def in_django(folder: Path, name: str, what: str, *args: str) -> subprocess.Popen[str]:
    """Run one of the parts below in a process of its own, on the database ``name`` in ``folder``."""
    env = {
        **os.environ,
        "DATA_DIR": str(folder),
        "DATABASE_URL": f"sqlite:///{folder / name}",
        "DJANGO_SETTINGS_MODULE": "studio.settings",
        "PYTHONPATH": str(ROOT),
        "LOG_LEVEL": "ERROR",
        "ALLOWED_HOSTS": "testserver",
    }
    return subprocess.Popen(
        [sys.executable, __file__, "--part", what, *args], env=env, cwd=ROOT, text=True, stdout=subprocess.PIPE
    )


def answer(process: subprocess.Popen[str]) -> dict[str, float]:
    out, _ = process.communicate()
    if process.returncode:
        sys.exit(f"a part of the bench failed: {process.args}")
    return dict(json.loads(out.strip().splitlines()[-1]))


def part_ours(file: str) -> dict[str, float]:
    """Read, compare, write, forecast and plan; then keep the rows that were made for the peer."""
    from django.core import serializers

    from aftercare import imports
    from aftercare.models import Forecast, Message
    from studio.models import Client, Staff, Studio, Visit

    studio = Studio.objects.get()
    started = time.perf_counter()
    book = imports.read(studio, Path(file).read_bytes(), "csv", NOW)
    result = imports.run(studio, book, NOW)
    seconds = time.perf_counter() - started
    if not result.written or result.bad:
        sys.exit(f"the book was refused: {result.bad[:3]}")
    for model in (Staff, Client, Visit, Forecast, Message):
        rows = serializers.serialize("python", model.objects.all())
        (Path(file).parent / f"{model.__name__}.json").write_text(json.dumps(rows, default=str))
    return {"seconds": seconds, "visits": Visit.objects.count(), "messages": Message.objects.count()}


def part_bare(file: str) -> dict[str, float]:
    """A bare csv read, and bulk_create of the same client, visit, forecast and message rows."""
    from django.core import serializers

    from studio.models import Staff, Studio

    studio = Studio.objects.get()
    artists = json.loads((Path(file).parent / "Staff.json").read_text())
    Staff.objects.bulk_create(Staff(pk=one["pk"], studio=studio, name=one["fields"]["name"]) for one in artists)
    made = []
    for name in ("Client", "Visit", "Forecast", "Message"):
        rows = json.loads((Path(file).parent / f"{name}.json").read_text())
        made.append([one.object for one in serializers.deserialize("python", rows)])
    started = time.perf_counter()
    with Path(file).open(newline="", encoding="utf-8") as read:
        rows = list(csv.DictReader(read))
    for objects in made:
        type(objects[0]).objects.bulk_create(objects, batch_size=1000)
    return {"seconds": time.perf_counter() - started, "rows": len(rows)}


def part_probe(stop: str) -> dict[str, float]:
    """Open a page and store a reply, again and again until the file ``stop`` is there; return the longest waits."""
    from django.test import Client as Browser

    from aftercare import receiving
    from aftercare.lines import lines_of
    from studio.models import Staff, Studio, User

    studio = Studio.objects.get()
    user = User.objects.create_user("ada@example.com", "correct horse 9 staple", name="Ada")
    Staff.objects.create(studio=studio, user=user, name="Ada", is_owner=True, is_artist=True)
    browser = Browser()
    browser.force_login(user)
    line = lines_of(studio)["sms"]
    waits: dict[str, list[float]] = {"page": [], "reply": []}
    Path(stop + ".ready").touch()
    while not Path(stop).exists():
        begun = time.perf_counter()
        if browser.get("/morning").status_code != 200:
            sys.exit("the page was not there")
        waits["page"].append(time.perf_counter() - begun)
        begun = time.perf_counter()
        receiving.receive(line, "+12125550101", "GOOD", provider_ref=f"probe-{time.time_ns()}", received_at=NOW)
        waits["reply"].append(time.perf_counter() - begun)
        time.sleep(0.02)
    return {"page": max(waits["page"]), "reply": max(waits["reply"]), "times": len(waits["page"])}


def main(rows: int) -> int:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        file = folder / "book.csv"
        write_book(file, rows)
        for database in ("ours.sqlite3", "bare.sqlite3"):
            answer(in_django(folder, database, "prepare"))
        stop = str(folder / "stop")
        probe = in_django(folder, "ours.sqlite3", "probe", stop)
        while not Path(stop + ".ready").exists():
            time.sleep(0.05)
        ours = answer(in_django(folder, "ours.sqlite3", "ours", str(file)))
        Path(stop).touch()
        waits = answer(probe)
        bare = answer(in_django(folder, "bare.sqlite3", "bare", str(file)))
    times = ours["seconds"] / bare["seconds"]
    print(f"rows {rows:,}: visits {ours['visits']:,.0f}, messages {ours['messages']:,.0f}")
    print(f"import and plan {ours['seconds']:.2f} s, bare csv and bulk_create {bare['seconds']:.2f} s")
    print(f"times the bare peer: {times:.1f} (limit {MOST_TIMES})")
    print(
        f"longest wait meanwhile ({waits['times']:.0f} each): page {waits['page']:.2f} s, reply {waits['reply']:.2f} s"
        f" (limit {MOST_WAIT} s)"
    )
    return int(times > MOST_TIMES or max(waits["page"], waits["reply"]) > MOST_WAIT)


def prepare() -> dict[str, float]:
    from django.core.management import call_command

    from aftercare.lines import lines_of
    from studio.models import Studio

    call_command("migrate", verbosity=0)
    lines_of(Studio.objects.create(slug="bench", name="Bench", time_zone="America/New_York", region="US"))
    return {}


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--rows", type=int, default=10_000)
    parser.add_argument("--part", nargs="+", help=argparse.SUPPRESS)
    chosen = parser.parse_args()
    if not chosen.part:
        sys.exit(main(chosen.rows))
    import django

    django.setup()
    parts = {"ours": part_ours, "bare": part_bare, "probe": part_probe}
    what, *rest = chosen.part
    print(json.dumps(parts[what](*rest) if rest else prepare()))
