"""`manage.py read_replies IN.jsonl --out OUT.jsonl`: what the software takes each reply to say."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

from django.core.management.base import CommandParser

from aftercare.core import reading
from aftercare.management import jsonlines
from aftercare.management.base import PromisingCommand

_EVERY = 5_000


class Command(PromisingCommand):
    help = (
        'Reads {"id", "text"} a line and writes {"id", "urgency", "about", "signs", "negated", "side", "unread", '
        '"why"} a line. Each finding of why has its text and where it stands; unread means that a person must read it. '
        "Needs no database."
    )
    requires_system_checks: list[str] = []
    needs_database = False

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("texts", type=Path, metavar="IN.jsonl")
        parser.add_argument("--out", type=Path, required=True, metavar="OUT.jsonl")

    def handle(self, *args: Any, texts: Path, out: Path, **options: Any) -> None:
        self.stderr.write(f"Reading {texts}")
        rows = jsonlines.read_texts(texts)
        jsonlines.write(out, self._read(rows))
        self.stderr.write(f"{len(rows)} replies read, written to {out}")

    def _read(self, rows: list[jsonlines.Text]) -> Iterator[dict[str, Any]]:
        for done, row in enumerate(rows, start=1):
            found = reading.read(row.text)
            yield {
                "id": row.id,
                "urgency": found.urgency,
                "about": list(found.about),
                "signs": list(found.signs),
                "negated": list(found.negated),
                "side": found.side,
                "unread": found.unread,
                "why": [
                    {"finding": one.finding, "text": one.text, "start": one.start, "end": one.end} for one in found.why
                ],
            }
            if done % _EVERY == 0:
                self.stderr.write(f"{done} of {len(rows)} replies read")
