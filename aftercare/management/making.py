"""A studio that is made from the command line, with its time zone and its country."""

from __future__ import annotations

from argparse import ArgumentParser
from typing import Any

from django.core.exceptions import ValidationError
from django.core.management.base import CommandError

from aftercare.lines import lines_of
from aftercare.management.arguments import studio_named
from studio.models import Studio


class Refused(Exception):
    """An argument that cannot be used."""

    def __init__(self, field: str, problem: str) -> None:
        super().__init__(problem)
        self.field = field
        self.problem = problem


def add_creating(parser: ArgumentParser) -> None:
    """Add the options that make a studio where there is none of the name."""
    parser.add_argument("--create", action="store_true", help="make the studio if it is not there")
    parser.add_argument("--time-zone", help="with --create: its IANA time zone, such as America/New_York")
    parser.add_argument("--region", help="with --create: its country, two letters, such as US")


def studio_of(options: dict[str, Any]) -> tuple[Studio, bool]:
    """Return the studio, and whether it was made just now; raise Refused where it is not there and cannot be made."""
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
    return _make(options), True


def _make(options: dict[str, Any]) -> Studio:
    slug = options["studio"]
    name = slug.replace("-", " ").replace("_", " ").title()
    studio = Studio(slug=slug, name=name, time_zone=options["time_zone"], region=options["region"].upper())
    try:
        studio.full_clean()
    except ValidationError as error:
        field, problems = next(iter(error.message_dict.items()))
        option = {"slug": "studio", "name": "studio"}.get(field, field)
        raise Refused(option, f"--{option.replace('_', '-')}: {' '.join(problems)}") from error
    studio.save()
    lines_of(studio)
    return studio
