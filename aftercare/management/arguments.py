"""Arguments that several commands share, and their complaints."""

from __future__ import annotations

from argparse import ArgumentParser
from datetime import UTC, datetime

from django.core.management.base import CommandError

from studio.models import Studio

YEARS = range(1990, 2201)


def add_studio(parser: ArgumentParser) -> None:
    """Add the option that names the studio."""
    parser.add_argument("--studio", required=True, metavar="SLUG", help="the studio's short name")


def add_now(parser: ArgumentParser) -> None:
    """Add the option that stands in for the clock."""
    parser.add_argument(
        "--now", metavar="ISO", help="the present moment, ISO 8601 with offset or Z; default: the clock"
    )


def studio_named(slug: str) -> Studio:
    """Return the studio; raise CommandError with the names that there are."""
    found = Studio.objects.filter(slug=slug).first()
    if found is None:
        known = ", ".join(Studio.objects.values_list("slug", flat=True)[:10]) or "none yet"
        raise CommandError(f"--studio: there is no studio “{slug}”. Known here: {known}.")
    return found


def moment(text: str | None) -> datetime | None:
    """Return the moment that ``text`` states, in UTC and whole seconds; None for None.

    Raises CommandError where it is no ISO 8601 moment or has no offset.
    """
    if text is None:
        return None
    try:
        found = datetime.fromisoformat(text)
    except ValueError:
        raise CommandError(f"--now: “{text}” is not a moment. Write it like 2026-03-09T14:00:00Z.") from None
    if found.tzinfo is None:
        raise CommandError(f"--now: “{text}” does not say its offset. Add Z for UTC, or one such as -05:00.")
    if found.year not in YEARS:
        raise CommandError(f"--now: “{text}” is not between the years 1990 and 2200. Write the year in full.")
    return found.astimezone(UTC).replace(microsecond=0)
