"""What the commands share that others rely on: how they end, and what they print where nothing could be done."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.db import DatabaseError, OperationalError, connection
from django.db.migrations.executor import MigrationExecutor

from aftercare.management import jsonlines


class PromisingCommand(BaseCommand):
    """A command that ends with 1 on any bad input, wrong arguments among it, and then too prints what it promised."""

    needs_database = True

    def promised(self, problem: str) -> str:
        """Return what goes to standard output where nothing could be done."""
        return ""

    def create_parser(self, prog_name: str, subcommand: str, **kwargs: Any) -> CommandParser:
        parser = super().create_parser(prog_name, subcommand, **kwargs)
        parser.called_from_command_line = (
            False  # its complaint becomes a CommandError, which ends with 1 and not with 2
        )
        return parser

    def run_from_argv(self, argv: list[str]) -> None:
        try:
            super().run_from_argv(argv)
        except CommandError as error:  # of the parser: those of the command itself do not come this far
            self._print_promised(error)
            self.stderr.write(str(error))
            sys.exit(1)

    def execute(self, *args: Any, **options: Any) -> str | None:
        try:
            return self._execute(*args, **options)
        except CommandError as error:
            self._print_promised(error)
            raise

    def _execute(self, *args: Any, **options: Any) -> str | None:
        if not (self.needs_database and getattr(self, "_called_from_command_line", False)):
            return super().execute(*args, **options)
        _check_tables()
        try:
            return super().execute(*args, **options)
        except OperationalError as error:  # gone, full, or held by another program for too long
            raise CommandError(
                f"The database did not go on ({_on_one_line(error)}): check that it runs, that its disk has room and "
                "that no other program holds it, then run this again. What was finished by then is kept."
            ) from error

    def _print_promised(self, error: CommandError) -> None:
        if text := self.promised(str(error)):
            self.stdout.write(text)


class TextsCommand(PromisingCommand):
    """A command that looks at each text of a file of JSON lines and writes a line for each. Needs no database."""

    requires_system_checks: list[str] = []
    needs_database = False
    what = "texts"  # they are called, as in "12 texts measured"
    done = "looked at"
    every = 5_000  # texts between two words on how far it is

    def look_at(self, text: str) -> dict[str, Any]:
        """Return what is written of a text, beside its id."""
        raise NotImplementedError

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("texts", type=Path, metavar="IN.jsonl")
        parser.add_argument("--out", type=Path, required=True, metavar="OUT.jsonl")

    def handle(self, *args: Any, texts: Path, out: Path, **options: Any) -> None:
        self.stderr.write(f"Reading {texts}")
        rows = jsonlines.read_texts(texts)
        jsonlines.write(out, self._looked_at(rows))
        self.stderr.write(f"{len(rows)} {self.what} {self.done}, written to {out}")

    def _looked_at(self, rows: list[jsonlines.Text]) -> Iterator[dict[str, Any]]:
        for number, row in enumerate(rows, start=1):
            yield {"id": row.id, **self.look_at(row.text)}
            if number % self.every == 0:
                self.stderr.write(f"{number} of {len(rows)} {self.what} {self.done}")


def _check_tables() -> None:
    try:
        executor = MigrationExecutor(connection)
    except DatabaseError as error:
        raise CommandError(
            f"The database cannot be used ({_on_one_line(error)}): check DATABASE_URL, "
            "and that its server or file is there."
        ) from error
    if executor.migration_plan(executor.loader.graph.leaf_nodes()):
        raise CommandError("The database is not set up yet, or not up to date: run “python manage.py migrate” first.")


def _on_one_line(error: DatabaseError) -> str:
    return " ".join(str(error).split())
