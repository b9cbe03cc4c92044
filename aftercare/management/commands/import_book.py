"""`import_book FILE --studio SLUG`: the appointment book comes in."""

from __future__ import annotations

import json
import sys
from argparse import ArgumentParser
from pathlib import Path
from typing import Any

from django.core.exceptions import ValidationError
from django.core.management.base import BaseCommand, CommandError

from aftercare import imports
from aftercare.lines import lines_of
from aftercare.management.arguments import add_now, add_studio, moment, studio_named
from aftercare.models import Line
from studio import clock
from studio.models import Studio


class Command(BaseCommand):
    help = (
        "Read an appointment book (CSV or iCalendar), write what it changed and plan the messages. "
        "The last line of standard output is one JSON object. A file with a bad row changes nothing."
    )

    def add_arguments(self, parser: ArgumentParser) -> None:
        parser.add_argument("file", help="the book, as CSV or iCalendar")
        add_studio(parser)
        parser.add_argument("--format", choices=["csv", "ics"], help="default: by the file's name")
        parser.add_argument("--dry-run", action="store_true", help="say what would change; change nothing")
        parser.add_argument("--skip-bad", action="store_true", help="import the good rows, list the bad, exit 0")
        add_now(parser)
        parser.add_argument("--create", action="store_true", help="make the studio if it is not there")
        parser.add_argument("--time-zone", help="with --create: its IANA time zone, such as America/New_York")
        parser.add_argument("--region", help="with --create: its country, two letters, such as US")

    def handle(self, *args: Any, **options: Any) -> None:
        try:
            result = self._import(options)
        except Refused as refused:
            self.stderr.write(refused.problem)
            self.stdout.write(json.dumps(_nothing(refused), ensure_ascii=False))
            sys.exit(1)
        for note in result.notes:
            self.stderr.write(f"note: {note}")
        for ref in result.gone:
            self.stderr.write(f"no longer in the book: visit {ref['visit']}, {ref['client']}, {ref['starts_at']}")
        for row in result.bad:
            self.stderr.write(f"row {row.row}, {row.field}: {row.problem}")
        self.stdout.write(json.dumps(result.contract(), ensure_ascii=False))
        if result.bad and not options["skip_bad"]:
            self.stderr.write("Nothing was changed. Mend these rows, or import the others with --skip-bad.")
            sys.exit(1)

    def _import(self, options: dict[str, Any]) -> imports.Result:
        try:
            now = moment(options["now"]) or clock.now()
        except CommandError as error:
            raise Refused("now", str(error)) from error
        data, format = _file(options)
        studio, made = _studio(options)
        self._last: tuple[str, int] = ("", -1)
        book = imports.read(studio, data, format, now, self._progress)
        result = imports.run(
            studio, book, now, skip_bad=options["skip_bad"], dry_run=options["dry_run"], progress=self._progress
        )
        if made and not result.written:  # a dry run, or a book that is refused, leaves no studio behind either
            Line.objects.filter(studio=studio).delete()
            studio.delete()
        return result

    def _progress(self, what: str, done: int, total: int) -> None:
        """Say each new thing at once, and how far it is every tenth of the way."""
        tenth = done * 10 // total if total else -1
        if (what, tenth) != self._last:
            self._last = (what, tenth)
            self.stderr.write(f"{what}: {done:,} of {total:,}" if total else what)


class Refused(Exception):
    """An argument that cannot be used."""

    def __init__(self, field: str, problem: str) -> None:
        super().__init__(problem)
        self.field = field
        self.problem = problem


def _nothing(refused: Refused) -> dict[str, Any]:
    """The promised JSON where nothing was read."""
    none = {"new": 0, "changed": 0, "same": 0}
    return {
        "visits": {**none, "gone": 0},
        "clients": none,
        "messages": {"planned": 0, "withheld": 0, "withdrawn": 0},
        "bad_rows": [{"row": 0, "field": refused.field, "problem": refused.problem}],
    }


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


def _studio(options: dict[str, Any]) -> tuple[Studio, bool]:
    """Return the studio, and whether it was made just now."""
    found = Studio.objects.filter(slug=options["studio"]).first()
    if found is not None:
        return found, False
    if not options["create"]:
        try:
            return studio_named(options["studio"]), False
        except CommandError as error:
            raise Refused("studio", f"{error} Add --create with --time-zone and --region to make it.") from error
    if not options["time_zone"] or not options["region"]:
        problem = "--create needs --time-zone and --region, such as --time-zone America/New_York --region US."
        raise Refused("studio", problem)
    slug = options["studio"]
    studio = Studio(
        slug=slug,
        name=slug.replace("-", " ").replace("_", " ").title(),
        time_zone=options["time_zone"],
        region=options["region"].upper(),
    )
    try:
        studio.full_clean()
    except ValidationError as error:
        name, problems = next(iter(error.message_dict.items()))
        raise Refused(name, f"--create: {name}: {' '.join(problems)}") from error
    studio.save()
    lines_of(studio)
    return studio, True
