"""Books as files, and the command that brings them in."""

from __future__ import annotations

import json
from dataclasses import dataclass
from io import StringIO
from pathlib import Path
from typing import Any

from django.core.management import call_command

NOW = "2027-03-09T15:00:00Z"
GOOD = {
    "visit": "V1",
    "client": "C1",
    "first_name": "Mia",
    "last_name": "Ortega",
    "mobile": "(212) 555-0123",
    "email": "mia@example.com",
    "time_zone": "",
    "language": "",
    "sms_ok": "yes",
    "sensitive": "",
    "service": "fill",
    "starts_at": "2027-03-12T14:30",
    "minutes": "75",
    "status": "booked",
    "share_left": "",
}
EVENT = {
    "UID": "one@studio.example",
    "DTSTAMP": "20270301T120000Z",
    "DTSTART;TZID=America/New_York": "20270312T143000",
    "DURATION": "PT75M",
    "SUMMARY": "Fill - Mia Ortega",
    "DESCRIPTION": "Mobile: (212) 555-0123\\nSMS ok: yes",
}


@dataclass(frozen=True)
class Ended:
    code: int
    result: dict[str, Any]
    said: str  # on standard error

    @property
    def bad(self) -> list[tuple[int, str]]:
        return [(row["row"], row["field"]) for row in self.result["bad_rows"]]

    @property
    def visits(self) -> dict[str, int]:
        """How many visits are new, changed, the same, gone; those of which there is none are left out."""
        return {name: number for name, number in self.result["visits"].items() if number}


def run(file: Path | str, *args: str, studio: str = "birch", now: str = NOW) -> Ended:
    """Run the command as from a shell; the last line of its standard output is read as JSON."""
    out, err = StringIO(), StringIO()
    code = 0
    try:
        call_command("import_book", str(file), f"--studio={studio}", f"--now={now}", *args, stdout=out, stderr=err)
    except SystemExit as ended:
        code = int(ended.code or 0)
    return Ended(code, json.loads(out.getvalue().strip().splitlines()[-1]), err.getvalue())


def csv_of(folder: Path, *rows: dict[str, str], name: str = "book.csv") -> Path:
    file = folder / name
    columns = list({**GOOD, **{name: "" for row in rows for name in row}})
    whole = [{**GOOD, **row} for row in rows]
    lines = [",".join(columns), *(",".join(row.get(name, "") for name in columns) for row in whole)]
    file.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return file


def ics_of(folder: Path, *events: dict[str, str | None], name: str = "week.ics") -> Path:
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Birch//Book//EN"]
    for event in events:
        stated = {name: value for name, value in {**EVENT, **event}.items() if value is not None}
        lines += ["BEGIN:VEVENT", *(f"{name}:{value}" for name, value in stated.items()), "END:VEVENT"]
    file = folder / name
    file.write_bytes("\r\n".join([*lines, "END:VCALENDAR", ""]).encode())
    return file
