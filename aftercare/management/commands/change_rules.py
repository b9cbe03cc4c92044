"""`change_rules --studio SLUG [--set NAME=VALUE …] [--dry-run]`: the owner's numbers, and what a change moves."""

from __future__ import annotations

import json
from argparse import ArgumentParser
from collections.abc import Iterable
from typing import Any

from django.core.exceptions import ValidationError
from django.core.management.base import CommandError

from aftercare import facts, ruling, upkeep
from aftercare.core import limits
from aftercare.management.arguments import add_now, add_studio, moment, studio_named
from aftercare.management.base import PromisingCommand
from aftercare.planning.ahead import Kind
from studio import clock

USUAL = "usual"


class Command(PromisingCommand):
    help = "Show a studio's numbers as one JSON object; change some, and count which messages of two weeks that moves."

    def add_arguments(self, parser: ArgumentParser) -> None:
        add_studio(parser)
        add_now(parser)
        parser.add_argument(
            "--set",
            action="append",
            default=[],
            metavar="NAME=VALUE",
            help=f"a number and its value as JSON, such as prepare_days=4 or hours=[540,1200]; “{USUAL}” takes it back",
        )
        parser.add_argument("--dry-run", action="store_true", help="count what would move and change nothing")

    def promised(self, problem: str) -> str:
        return "{}"

    def handle(self, *args: Any, **options: Any) -> None:
        studio, now = studio_named(options["studio"]), moment(options["now"]) or clock.now()
        asked = dict(_read(options["set"], facts.defaults(studio.region)))
        version = ruling.version_of(studio)
        values = ruling.changed(ruling.values_of(studio), studio.region, asked)
        try:
            rules = ruling.read(values, studio, now)
        except facts.BadRule as error:
            raise CommandError(str(error)) from error
        moves = upkeep.preview(studio, rules, now) if asked else None
        if asked and not options["dry_run"]:
            try:
                version = ruling.put(studio, values, by=None, now=now, seen=version).version
            except ValidationError as error:
                raise CommandError("\n".join(error.messages)) from error
            upkeep.catch_up(now, studio=studio)
            self.stderr.write(f"{studio.name}: version {version} of the rules is in force.")
        found = {
            "version": version,
            "numbers": {**facts.defaults(studio.region), **values},
            "changed": sorted(values),
            "moves": {kind.value: moves.counts[kind.value] if moves else 0 for kind in Kind},
        }
        self.stdout.write(json.dumps(found))


def _read(pairs: Iterable[str], usual: dict[str, object]) -> Iterable[tuple[str, object]]:
    for pair in pairs:
        name, equals, text = pair.partition("=")
        if name not in limits.NUMBERS or not equals:
            raise CommandError(
                f"--set: there is no number “{name}”. Write NAME=VALUE; known: {', '.join(limits.NUMBERS)}."
            )
        try:
            yield name, usual[name] if text == USUAL else json.loads(text)
        except ValueError as error:
            raise CommandError(
                f"--set: the value “{text}” of {name} is not JSON ({error}). Write a number, true, false or a list."
            ) from error
