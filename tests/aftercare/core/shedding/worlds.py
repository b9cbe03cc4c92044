"""Small worlds for tests: drawn from a population's own numbers, or breaking its assumptions."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta

import numpy as np

from aftercare.core.shedding import History, LashSet, Population, Seen
from aftercare.core.shedding.numbers import BEFORE
from aftercare.core.shedding.records import Steps
from aftercare.core.shedding.renewal import left_by_shedding

BEGIN = date(2026, 1, 5)
# A studio that is known: log odds and logarithms, see numbers.py.
KNOWN = Population(
    BEFORE._replace(cycle=4.55, cycle_sd=-1.6, hazard=-4.4, hazard_sd=-0.7, spread=-1.6, luck=-1.4, turn=-20.0),
    ((1e-8, 0.0), (0.0, 1e-8)),
    luck_unsure=0.0,
    steps=Steps(0.05, {}),
)


@dataclass(frozen=True, slots=True)
class Truth:
    """What nobody sees: her mean cycle, and the hazard of the set that she wears."""

    cycle: float
    hazard: float

    def left(self, days: float) -> float:
        spread = float(np.exp(KNOWN.numbers.spread))
        return float(left_by_shedding(days, self.cycle, spread)) * float(np.exp(-self.hazard * days))

    def days_to(self, level: float) -> float:
        low, high = 0.0, 1000.0
        for _halving in range(50):
            middle = (low + high) / 2
            low, high = (middle, high) if self.left(middle) > level else (low, middle)
        return low


def draw(
    clients: int,
    seed: int,
    *,
    seen: int = 6,
    read: Callable[[float, np.random.Generator, str], float] | None = None,
    season: float = 0.0,
    lots: int = 0,
    bad_lot: float = 1.0,
    artists: int = 0,
) -> tuple[list[History], list[Truth]]:
    """Return clients with up to ``seen`` sets read, and the truth of the set that each wears.

    ``read`` turns a true share into what is written down; ``season`` swings every hazard over the year by so much.
    """
    chance, numbers = np.random.default_rng(seed), KNOWN.numbers
    spread = float(np.exp(numbers.spread))
    histories, truths = [], []
    for number in range(clients):
        cycle = float(np.exp(numbers.cycle + np.exp(numbers.cycle_sd) * chance.standard_normal()))
        own = float(np.exp(numbers.hazard + np.exp(numbers.hazard_sd) * chance.standard_normal()))
        day, past, artist = BEGIN + timedelta(int(chance.integers(0, 300))), [], f"Artist {number % (artists or 1)}"
        for _set in range(int(chance.integers(0, seen + 1)) + 1):
            lot = int(chance.integers(0, lots)) if lots else -1
            hazard = own * float(np.exp(np.exp(numbers.luck) * chance.standard_normal()))
            hazard *= (bad_lot if lot == 0 else 1.0) * (1 + season * np.sin(2 * np.pi * day.timetuple().tm_yday / 365))
            days = int(chance.integers(13, 32))
            left = float(left_by_shedding(days, cycle, spread)) * float(np.exp(-hazard * days))
            share = (read or by_eye)(left, chance, artist)
            name = f"lot {lot}" if lots else ""
            past.append(LashSet(day, name, (Seen(day + timedelta(days), share, artist if artists else ""),)))
            day += timedelta(days)
        worn = LashSet(past[-1].on, past[-1].lot)
        histories.append(History(str(number), tuple(past[:-1]), worn))
        truths.append(Truth(cycle, float(hazard)))
    return histories, truths


def by_eye(left: float, chance: np.random.Generator, _artist: str, step: float = 0.05) -> float:
    """Read as the known studio's eyes do."""
    wrong = chance.random() < 1 / (1 + np.exp(-KNOWN.numbers.wrong))
    seen = chance.random() if wrong else left + np.exp(KNOWN.numbers.eye) * chance.standard_normal()
    return float(np.clip(round(float(seen) / step) * step, 0, 1))
