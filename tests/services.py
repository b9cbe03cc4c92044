"""The whole service in a folder of its own: its environment, its commands, and a book whose messages are due now."""

from __future__ import annotations

import csv
import os
import subprocess
import sys
from collections.abc import Mapping
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

ROOT = Path(__file__).resolve().parent.parent
SLUG = "birch"
# One of these has a late morning or an early afternoon at any hour of the day.
ZONES = (
    *("Pacific/Auckland", "Asia/Tokyo", "Asia/Kolkata", "Europe/Athens", "Europe/London"),
    *("America/Sao_Paulo", "America/Chicago", "Pacific/Honolulu"),
)


def zone_at_work(now: datetime) -> str:
    """Return a time zone in which it is between 10:00 and 17:00: messages may leave for some hours to come."""
    return next(zone for zone in ZONES if 10 <= now.astimezone(ZoneInfo(zone)).hour < 17)


def environment(data: Path, **more: str) -> dict[str, str]:
    """Return the environment of a service that lives in the folder ``data`` and knows nothing of this machine's."""
    kept = {name: value for name, value in os.environ.items() if name in ("PATH", "HOME", "LANG", "TMPDIR")}
    return {**kept, "DATA_DIR": str(data), "PYTHONUNBUFFERED": "1", **more}


def manage(settings: Mapping[str, str], *command: str) -> str:
    """Run one command of the service; return its standard output."""
    done = subprocess.run(
        [sys.executable, "manage.py", *command], cwd=ROOT, env=settings, capture_output=True, text=True, timeout=300
    )
    if done.returncode:
        raise RuntimeError(f"manage.py {' '.join(command)}: {done.stdout[-2000:]}{done.stderr[-2000:]}")
    return done.stdout


def write_book(file: Path, visits: int, now: datetime, zone: str) -> None:
    """Write a book of ``visits`` clients with e-mail: every other is done (care is due), the rest booked (prepare)."""
    done = (now - timedelta(hours=3)).astimezone(ZoneInfo(zone))
    booked = (now + timedelta(days=2)).astimezone(ZoneInfo(zone))
    with file.open("w", encoding="utf-8", newline="") as stream:
        writer = csv.writer(stream)
        writer.writerow(
            ["visit", "client", "first_name", "email", "service", "artist", "starts_at", "minutes", "status"]
        )
        for number in range(visits):
            is_done = number % 2 == 0
            start = (done if is_done else booked).replace(microsecond=0, second=0).isoformat()
            service, status = ("fill", "done") if is_done else ("removal", "booked")
            address = f"mia{number}@mail.example"
            writer.writerow([f"V{number}", f"C{number}", "Mia", address, service, "Ada", start, 45, status])


def make_live_studio(settings: Mapping[str, str], folder: Path, visits: int) -> None:
    """Make the database and a live studio all of whose ``visits`` have one message due now."""
    now = datetime.now(UTC)
    zone = zone_at_work(now)
    book = folder / "book.csv"
    write_book(book, visits, now, zone)
    manage(settings, "migrate", "--verbosity=0")
    create = ("--create", "--time-zone", zone, "--region", "US")
    manage(settings, "import_book", str(book), "--studio", SLUG, *create)
    manage(settings, "go_live", "--studio", SLUG)
