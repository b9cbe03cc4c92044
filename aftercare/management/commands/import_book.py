"""`import_book FILE --studio SLUG`: the appointment book comes in."""

from __future__ import annotations

import json
import sys
from argparse import ArgumentParser
from datetime import datetime
from pathlib import Path
from typing import Any

from django.core.management.base import CommandError

from aftercare import imports
from aftercare.management.arguments import add_now, add_studio, moment
from aftercare.management.base import PromisingCommand
from aftercare.management.making import Refused, add_creating, studio_of
from aftercare.models import Line
from studio import clock
from studio.book.importing import Overtaken
from studio.models import Studio


class Command(PromisingCommand):
    help = (
        "Read an appointment book (CSV or iCalendar), write what it changed and plan the messages. "
        "The last line of standard output is one JSON object. A file with a bad row changes nothing."
    )

    def add_arguments(self, parser: ArgumentParser) -> None:
        parser.add_argument("file", help="the book, as CSV or iCalendar")
        add_studio(parser)
        parser.add_argument("--format", choices=["csv", "ics"], help="default: by what the file holds, and its name")
        parser.add_argument("--dry-run", action="store_true", help="say what would change; change nothing")
        parser.add_argument("--skip-bad", action="store_true", help="import the good rows, list the bad, exit 0")
        add_now(parser)
        add_creating(parser)

    def promised(self, problem: str) -> str:
        return _json(_nothing(Refused("arguments", problem)))

    def handle(self, *args: Any, **options: Any) -> None:
        try:
            result = self._import(options)
        except Refused as refused:
            self.stderr.write(refused.problem)
            self.stdout.write(_json(_nothing(refused)))
            sys.exit(1)
        self._say(result)
        self.stdout.write(_json(result.contract()))
        if result.bad and not options["skip_bad"]:
            self.stderr.write("Nothing was changed. Mend these rows, or import the others with --skip-bad.")
            sys.exit(1)

    def _say(self, result: imports.Result) -> None:
        for note in result.notes:
            self.stderr.write(f"note: {note}")
        for visit in result.gone:
            self.stderr.write(f"no longer in the book: {_words(visit)}")
        if more := result.visits["gone"] - len(result.gone):
            self.stderr.write(f"no longer in the book: {more:,} more")
        for visit in result.to_cancel:
            self.stderr.write(f"off, by the book: {_words(visit)}")
        for row in result.bad:
            self.stderr.write(f"row {row.row}, {row.field}: {row.problem}")

    def _import(self, options: dict[str, Any]) -> imports.Result:
        now = _now(options)
        data, format = _file(options)
        studio, made = studio_of(options)
        self._last: tuple[str, int] = ("", -1)
        taken = False
        try:
            book = imports.read(studio, data, format, now, self._progress)
            result = imports.run(
                studio, book, now, skip_bad=options["skip_bad"], dry_run=options["dry_run"], progress=self._progress
            )
            taken = result.written and not result.bad
        except Overtaken as error:
            raise Refused("file", str(error)) from error
        finally:
            # A dry run, a book that is refused: no studio is left behind. One without a row is no fault.
            if made and not taken and not studio.clients.exists():
                _unmake(studio)
        return result

    def _progress(self, what: str, done: int, total: int) -> None:
        """Say each new thing at once, and how far it is every tenth of the way."""
        tenth = done * 10 // total if total else -1
        if (what, tenth) != self._last:
            self._last = (what, tenth)
            self.stderr.write(f"{what}: {done:,} of {total:,}" if total else what)


def _json(promised: dict[str, Any]) -> str:
    return json.dumps(promised)


def _nothing(refused: Refused) -> dict[str, Any]:
    """The promised object where nothing was read."""
    none = {"new": 0, "changed": 0, "same": 0}
    return {
        "visits": {**none, "gone": 0},
        "clients": none,
        "messages": {"planned": 0, "withheld": 0, "withdrawn": 0},
        "bad_rows": [{"row": 0, "field": refused.field, "problem": refused.problem}],
    }


def _words(visit: dict[str, str]) -> str:
    return f"visit {visit['visit']}, {visit['client']}, {visit['starts_at']}"


def _now(options: dict[str, Any]) -> datetime:
    try:
        return moment(options["now"]) or clock.now()
    except CommandError as error:
        raise Refused("now", str(error)) from error


def _file(options: dict[str, Any]) -> tuple[bytes, str]:
    path = Path(options["file"])
    try:
        data = path.read_bytes()
    except OSError as error:
        problem = f"“{path}” cannot be read ({error.strerror}). Name a file that is there and readable."
        raise Refused("file", problem) from error
    return data, options["format"] or ("ics" if _looks_like_a_calendar(path, data) else "csv")


def _looks_like_a_calendar(path: Path, data: bytes) -> bool:
    start = data[:100].lstrip(b"\xef\xbb\xbf \r\n").upper()
    return path.suffix.lower() in (".ics", ".ical") or start.startswith(b"BEGIN:VCALENDAR")


def _unmake(studio: Studio) -> None:
    Line.objects.filter(studio=studio).delete()
    studio.delete()
