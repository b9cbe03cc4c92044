"""One client of a studio whose numbers are known, and her forecast."""

from __future__ import annotations

from datetime import date, timedelta

from aftercare.core.shedding import Forecast, Forecaster, History, LashSet, Population, Seen, forecast
from tests.aftercare.core.shedding.drawn import World

DAY = date(2027, 1, 4)
KNOWN = World().known
FORECASTER = Forecaster(KNOWN)
Read = tuple[int, float]  # days, share


def history(*past: Read, worn: tuple[Read, ...] = (), lot: str = "") -> History:
    """One set after the other, each with the share read at its end; then the worn one, with what was seen of it."""
    day, sets = DAY, []
    for days, share in past:
        sets.append(LashSet(day, "", (Seen(day + timedelta(days), share),)))
        day += timedelta(days)
    seen = tuple(Seen(day + timedelta(days), share) for days, share in worn)
    return History("Mia", tuple(sets), LashSet(day, lot, seen))


def of(hers: History, population: Population = KNOWN, worn_for: int | None = None) -> Forecast:
    assert hers.worn is not None
    today = None if worn_for is None else hers.worn.on + timedelta(worn_for)
    again = FORECASTER if population is KNOWN else None
    return forecast(population, [hers], today=today, forecaster=again)[0]
