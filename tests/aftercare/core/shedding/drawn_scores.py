"""How near forecasts come to the truth of clients drawn."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from aftercare.core.shedding import Forecaster, History, LashSet, Population, forecast
from aftercare.core.shedding.renewal import Floats
from tests.aftercare.core.shedding.drawn import Drawn


@dataclass(frozen=True)
class Scored:
    """Days until a level, forecast and true: mean absolute error, share within the 80 % band, its mean width."""

    error: float
    covered: float
    width: float


def scored(
    population: Population, drawn: Drawn, level: float, truth: float | None = None, hers: list[History] | None = None
) -> Scored:
    """Score the days to ``level`` against those on which the set truly falls to ``truth`` (by default the same)."""
    made = forecast(population, hers or drawn.histories, levels=(level,), curves=False)
    days = [one.days[level] for one in made]
    low, middle, high = np.array([(one.low, one.middle, one.high) for one in days]).T
    true = drawn.days_to(level if truth is None else truth)
    return Scored(
        float(np.abs(middle - true).mean()), float(((low <= true) & (true <= high)).mean()), float((high - low).mean())
    )


def ranks(forecaster: Forecaster, drawn: Drawn, level: float, weights: Floats) -> Floats:
    """Return for each client how much of her forecast lies below the true days to ``level``: 0 to 1."""
    days = forecaster.days_to(level)
    order = np.argsort(days)
    total = np.cumsum(weights[:, order], axis=1)
    below = (total - weights[:, order] / 2) / total[:, -1:]
    pairs = zip(drawn.days_to(level), below, strict=True)
    return np.array([np.interp(true, days[order], row, left=0, right=1) for true, row in pairs])


def nobody_says_who(hers: list[History]) -> list[History]:
    return [replace(one, past=tuple(map(_anonymous, one.past))) for one in hers]


def nobody_says_which_lot(hers: list[History]) -> list[History]:
    return [
        replace(
            one,
            past=tuple(replace(past, lot="") for past in one.past),
            worn=replace(one.worn, lot="") if one.worn is not None else None,
        )
        for one in hers
    ]


def _anonymous(one: LashSet) -> LashSet:
    return replace(one, seen=tuple(replace(seen, artist="") for seen in one.seen))
