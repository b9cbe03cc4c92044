"""`manage.py read_replies IN.jsonl --out OUT.jsonl`: what the software takes each reply to say."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from aftercare.core import reading
from aftercare.management.base import TextsCommand


class Command(TextsCommand):
    help = (
        'Reads {"id", "text"} a line and writes {"id", "urgency", "about", "signs", "negated", "side", "unread", '
        '"why"} a line. Each finding of why has its text and where it stands; unread means that a person must read it. '
        "Needs no database."
    )
    what, done = "replies", "read"

    def look_at(self, text: str) -> dict[str, Any]:
        found = reading.read(text)
        return {
            "urgency": found.urgency,
            "about": list(found.about),
            "signs": list(found.signs),
            "negated": list(found.negated),
            "side": found.side,
            "unread": found.unread,
            "why": [asdict(one) for one in found.why],
        }
