"""`manage.py measure_sms IN.jsonl --out OUT.jsonl`: what each text would cost as an SMS."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

from django.core.management.base import CommandParser

from aftercare.core import segments
from aftercare.management import jsonlines
from aftercare.management.base import PromisingCommand

_EVERY = 10_000


class Command(PromisingCommand):
    help = (
        'Reads {"id", "text"} a line and writes {"id", "encoding", "units", "segments"} a line: the alphabet that '
        "a text needs, its length in it, and the SMS that a carrier bills. Needs no database."
    )
    requires_system_checks: list[str] = []
    needs_database = False

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("texts", type=Path, metavar="IN.jsonl")
        parser.add_argument("--out", type=Path, required=True, metavar="OUT.jsonl")

    def handle(self, *args: Any, texts: Path, out: Path, **options: Any) -> None:
        self.stderr.write(f"Reading {texts}")
        rows = jsonlines.read_texts(texts)
        jsonlines.write(out, self._measured(rows))
        self.stderr.write(f"{len(rows)} texts measured, written to {out}")

    def _measured(self, rows: list[jsonlines.Text]) -> Iterator[dict[str, Any]]:
        for done, row in enumerate(rows, start=1):
            measured = segments.measure(row.text)
            yield {
                "id": row.id,
                "encoding": measured.encoding,
                "units": measured.units,
                "segments": measured.segments,
            }
            if done % _EVERY == 0:
                self.stderr.write(f"{done} of {len(rows)} texts measured")
