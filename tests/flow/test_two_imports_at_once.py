"""Several imports of one book at the same moment, each in a process of its own, as two people or a page would start."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

from django.conf import settings

NOW = "2027-03-01T15:00:00Z"
ROWS = 300
CLIENTS = 60


def manage(database: Path, *args: str) -> subprocess.Popen[str]:
    env = {**os.environ, "DATABASE_URL": f"sqlite:///{database}"}
    command = [sys.executable, "manage.py", *args]
    return subprocess.Popen(
        command, cwd=settings.BASE_DIR, env=env, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    )


def finished(process: subprocess.Popen[str]) -> str:
    out, err = process.communicate(timeout=120)
    assert process.returncode == 0, err
    return out


def book(file: Path, visits: int) -> Path:
    rows = ["visit,client,first_name,email,service,starts_at,minutes"]
    for number in range(visits):
        client = number % CLIENTS
        day = 5 + number // CLIENTS * 5
        rows.append(f"V{number:03},C{client},Mia,mia{client}@example.com,lift,2027-03-{day:02}T10:00,60")
    file.write_text("\n".join(rows) + "\n", encoding="utf-8")
    return file


def test_every_visit_and_message_comes_in_once_and_each_import_ends_well(tmp_path: Path) -> None:
    database = tmp_path / "birch.sqlite3"
    file = book(tmp_path / "book.csv", ROWS)
    finished(manage(database, "migrate", "--verbosity=0"))
    create = ("--studio=birch", f"--now={NOW}", "--create", "--time-zone=America/New_York", "--region=US")
    finished(manage(database, "import_book", str(book(tmp_path / "first.csv", 1)), *create))

    together = [manage(database, "import_book", str(file), "--studio=birch", f"--now={NOW}") for _ in range(3)]
    results = [json.loads(finished(process).splitlines()[-1]) for process in together]

    assert all(result["bad_rows"] == [] for result in results)
    listed = finished(manage(database, "list_messages", "--studio=birch", f"--now={NOW}", "--json")).splitlines()
    slots = [(row["visit"], row["occasion"], row["step"], row["edition"]) for row in map(json.loads, listed)]
    assert len(slots) == len(set(slots)) == ROWS
    again = json.loads(finished(manage(database, "import_book", str(file), "--studio=birch", f"--now={NOW}")))
    assert again["visits"] == {"new": 0, "changed": 0, "same": ROWS, "gone": 0}
    assert again["clients"] == {"new": 0, "changed": 0, "same": CLIENTS}
    assert again["messages"] == {"planned": 0, "withheld": 0, "withdrawn": 0}
