"""The picture of forecasts against what was seen: how many visits lie where, and the line on which they should.

All coordinates are text, since templates would write numbers in the reader's own way.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from aftercare.figures import Case
from aftercare.pages.curve import LEFT, RIGHT, WIDTH

TOP, SIDE = 26, RIGHT - LEFT
HEIGHT = TOP + SIDE + 44
CELLS = 20  # along each side: five points a cell, as artists read in steps of five or ten
LARGEST = SIDE / CELLS / 2


@dataclass(frozen=True, slots=True)
class Spot:
    """Visits that fall on one place; the area says how many."""

    x: str
    y: str
    r: str


@dataclass(frozen=True, slots=True)
class Tick:
    """A line of the grid, on both axes."""

    share: int
    x: str
    y: str


@dataclass(frozen=True, slots=True)
class Scatter:
    """Everything that is drawn."""

    spots: Sequence[Spot]
    ticks: Sequence[Tick]
    width: int = WIDTH
    height: int = HEIGHT
    left: str = str(LEFT)
    right: str = str(RIGHT)
    top: str = str(TOP)
    bottom: str = str(TOP + SIDE)


def scatter(cases: Iterable[Case]) -> Scatter:
    """Draw the cases: across what was forecast, upward what was seen."""
    places = Counter((round(case.expected * CELLS), round(case.seen * CELLS)) for case in cases)
    most = max(places.values(), default=1)
    spots = [Spot(_x(x / CELLS), _y(y / CELLS), _radius(count / most)) for (x, y), count in sorted(places.items())]
    return Scatter(spots, [Tick(25 * part, _x(part / 4), _y(part / 4)) for part in range(5)])


def _x(share: float) -> str:
    return f"{LEFT + SIDE * share:.1f}"


def _y(share: float) -> str:
    return f"{TOP + SIDE * (1 - share):.1f}"


def _radius(part: float) -> str:
    return f"{max(1.5, LARGEST * math.sqrt(part)):.1f}"
