"""`manage.py measure_sms IN.jsonl --out OUT.jsonl`: what each text would cost as an SMS."""

from __future__ import annotations

from typing import Any

from aftercare.core import segments
from aftercare.management.base import TextsCommand


class Command(TextsCommand):
    help = (
        'Reads {"id", "text"} a line and writes {"id", "encoding", "units", "segments"} a line: the alphabet that '
        "a text needs, its length in it, and the SMS that a carrier bills. Needs no database."
    )
    done = "measured"

    def look_at(self, text: str) -> dict[str, Any]:
        measured = segments.measure(text)
        return {"encoding": measured.encoding, "units": measured.units, "segments": measured.segments}
