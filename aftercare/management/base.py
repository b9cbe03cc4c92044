"""What the commands share that others rely on: how they end, and what they print where nothing could be done."""

from __future__ import annotations

import sys
from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.db import connection
from django.db.migrations.executor import MigrationExecutor


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
            if self.needs_database and getattr(self, "_called_from_command_line", False):
                _check_tables()
            return super().execute(*args, **options)
        except CommandError as error:
            self._print_promised(error)
            raise

    def _print_promised(self, error: CommandError) -> None:
        if text := self.promised(str(error)):
            self.stdout.write(text)


def _check_tables() -> None:
    executor = MigrationExecutor(connection)
    if executor.migration_plan(executor.loader.graph.leaf_nodes()):
        raise CommandError("The database is not set up yet, or not up to date: run “python manage.py migrate” first.")
