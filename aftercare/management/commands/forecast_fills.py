"""`manage.py forecast_fills OBSERVATIONS.csv --out FORECAST.json`: when each client's set will have fallen so far."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

from django.core.management.base import CommandError, CommandParser

from aftercare.core import shedding
from aftercare.core.shedding import Forecast, Forecaster, History, Population
from aftercare.management import files, observations
from aftercare.management.base import PromisingCommand
from aftercare.management.observations import Observations

DEFAULT_LEVELS = ("0.6", "0.4")
CHUNK = 2000  # clients forecast at a time


class Command(PromisingCommand):
    help = (
        "Reads what was seen of lash sets (columns client, set_on, observed_on, fraction_left and, where known, "
        "adhesive_lot) and writes, for each client and level, the days after set_on at which the set that she wears "
        "falls to that level: 10, 50 and 90 % quantiles. A row with observed_on and fraction_left blank is the set "
        "that she now wears; for a client without one it is her next set, put on new. Needs no database."
    )
    requires_system_checks: list[str] = []
    needs_database = False

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("observations", type=Path, metavar="OBSERVATIONS.csv")
        parser.add_argument(
            "--level",
            action="append",
            metavar="SHARE",
            help="a share left, between 0 and 1; several may be asked for; default: 0.6 and 0.4",
        )
        parser.add_argument("--out", type=Path, required=True, metavar="FORECAST.json")
        parser.add_argument(
            "--today",
            metavar="DATE",
            help="what is today: sets are known to be worn still; without it nothing is said of that",
        )

    def handle(self, *args: Any, **options: Any) -> None:
        levels, today = _levels(options["level"] or DEFAULT_LEVELS), _today(options["today"])
        self.stderr.write(f"Reading {options['observations']}")
        found = observations.read(options["observations"], today, self.stderr.write)
        for note in found.notes:
            self.stderr.write(f"note: {note}")
        self.stderr.write(f"Learning from {found.readings:,} readings of {len(found.histories):,} clients")
        population = shedding.fit(found.histories)
        files.write(options["out"], self._forecasts(population, found, levels, today))
        self.stderr.write(f"{len(found.histories):,} clients forecast, written to {options['out']}")

    def _forecasts(
        self, population: Population, found: Observations, levels: dict[str, float], today: date | None
    ) -> Iterator[str]:
        """Give the JSON object piece by piece, so that a long one is never held whole."""
        forecaster, separator = Forecaster(population), "{"
        for start in range(0, len(found.histories), CHUNK):
            some = found.histories[start : start + CHUNK]
            for one in _made(forecaster, some, tuple(levels.values()), today):
                days = {name: _rounded(one.days[level]) for name, level in levels.items()}
                yield f"{separator}\n{json.dumps(one.client)}: {json.dumps(days, allow_nan=False)}"
                separator = ","
            self.stderr.write(f"{start + len(some):,} of {len(found.histories):,} clients forecast")
        yield "{}\n" if separator == "{" else "\n}\n"


def _made(forecaster: Forecaster, some: list[History], levels: tuple[float, ...], today: date | None) -> list[Forecast]:
    population = forecaster.population
    try:
        return shedding.forecast(population, some, levels=levels, today=today, curves=False, forecaster=forecaster)
    except ValueError as problem:  # readings that no set can have
        raise CommandError(f"Nothing was written: {problem}.") from problem


def _rounded(days: shedding.Quantiles) -> list[float]:
    return [round(day, 3) for day in (days.low, days.middle, days.high)]


def _levels(given: list[str] | tuple[str, ...]) -> dict[str, float]:
    """Return each level under the name by which it was asked for."""
    levels: dict[str, float] = {}
    for text in given:
        try:
            level = float(text)
        except ValueError:
            raise CommandError(f"--level: “{text}” is not a number. Write a share such as 0.6.") from None
        if not 0 < level < 1:
            raise CommandError(f"--level: {text} is not between 0 and 1. Write a share such as 0.6 for 60 %.")
        if level in levels.values():
            raise CommandError(f"--level: {text} is asked for twice. Name each level once.")
        levels[text] = level
    return levels


def _today(text: str | None) -> date | None:
    try:
        return observations.day(text) if text is not None else None
    except ValueError as problem:
        raise CommandError(f"--today: {problem}") from None
