"""Pictures of figures: a share over time, and figures side by side, each with the range that it lies in.

Drawn for a telephone, as the curve of a set is: 360 units wide. Position says what a figure is and the words beside it
say it again, so color tells nothing. All coordinates are text, since templates would write numbers in the reader's way.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from django.utils.formats import number_format
from django.utils.text import Truncator

from aftercare.core.rates import Figure
from aftercare.pages.curve import LEFT, RIGHT, WIDTH

FEW = 10  # cases; fewer say hardly anything

TOP, TALL, FOOT = 12, 150, 44  # of a line over time: above the plot, its height, the dates and counts below it
MOST_WORDS = 7  # dates along the axis
ROW, EDGE = 44, 26  # of figures side by side: a row's height, and the axis below them
LONGEST = 34  # letters of a name, beside its count
SHORTEST = 25  # units between two counts that can be read


@dataclass(frozen=True, slots=True)
class Point:
    """One figure with its range; ``words`` is its date or name, ``count`` what stands behind it."""

    x: str
    y: str
    low: str
    high: str
    words: str
    count: str
    few: bool = False


@dataclass(frozen=True, slots=True)
class Tick:
    """A line of the grid with its number."""

    at: str
    words: str


@dataclass(frozen=True, slots=True)
class Picture:
    """Everything that is drawn."""

    key: str
    title: str
    said: str  # in words, for whoever does not see it
    points: Sequence[Point]
    ticks: Sequence[Tick]
    path: str
    height: str
    bottom: str
    width: str = str(WIDTH)
    left: str = str(LEFT)
    right: str = str(RIGHT)
    top: str = str(TOP)

    @property
    def is_line(self) -> bool:
        """Whether it shows one figure over time."""
        return bool(self.path)


def over_time(key: str, title: str, steps: Sequence[tuple[str, Figure | None, int]]) -> Picture:
    """Draw shares step by step: a step's date, its figure (None: nothing was seen) and how many stand behind it."""
    wide = (RIGHT - LEFT) / max(1, len(steps))
    every = max(1, -(-len(steps) // MOST_WORDS))
    counted = math.ceil(SHORTEST / wide)
    points: list[Point] = []
    path, drawing = [], False
    for number, (words, figure, count) in enumerate(steps):
        x = LEFT + wide * (number + 0.5)
        named = words if number % every == 0 else ""
        if figure is None:
            points.append(Point(_at(x), "", "", "", named, ""))
            drawing = False
            continue
        said = str(count) if number % counted == 0 else ""
        points.append(Point(_at(x), _up(figure.value), *_range(figure, _up), named, said, count < FEW))
        path.append(f"{'L' if drawing else 'M'}{_at(x)} {_up(figure.value)}")
        drawing = True
    ticks = [Tick(_up(part / 4), str(25 * part)) for part in range(5)]
    known = [(words, figure) for words, figure, _count in steps if figure is not None]
    return Picture(key, title, _told(known), points, ticks, " ".join(path), str(TOP + TALL + FOOT), str(TOP + TALL))


def side_by_side(key: str, title: str, rows: Sequence[tuple[str, Figure, str]], most: float) -> Picture:
    """Draw a row for each figure: its name, itself and how many stand behind it. The axis ends at ``most`` or later."""
    end = _round_up(max([most, *(figure.high or figure.value for _name, figure, _words in rows)]))
    start = 12  # names stand above their rows, so that the axis has the whole width

    def across(value: float) -> str:
        return _at(start + (RIGHT - start) * min(1.0, max(0.0, value) / end))

    points = [
        Point(
            across(figure.value),
            str(ROW * number + 32),
            *_range(figure, across),
            Truncator(name).chars(LONGEST),
            words,
            figure.cases < FEW,
        )
        for number, (name, figure, words) in enumerate(rows)
    ]
    ticks = [Tick(across(end * part / 4), _short(100 * end * part / 4)) for part in range(5)]
    bottom = ROW * len(rows) + 4
    said = _told([(f"{name}, {words}", figure) for name, figure, words in rows], 1)
    return Picture(key, title, said, points, ticks, "", str(bottom + EDGE), str(bottom), left=str(start), top="0")


def _told(figures: Sequence[tuple[str, Figure]], digits: int = 0) -> str:
    return "; ".join(f"{words}: {number_format(round(100 * one.value, digits), digits)} %" for words, one in figures)


def _range(figure: Figure, place: Callable[[float], str]) -> tuple[str, str]:
    if figure.low is None or figure.high is None:
        return "", ""
    return place(figure.low), place(figure.high)


def _up(share: float) -> str:
    return _at(TOP + TALL * (1 - min(1.0, max(0.0, share))))


def _at(place: float) -> str:
    return f"{place:.1f}"


def _short(value: float) -> str:
    return f"{value:.1f}".rstrip("0").rstrip(".")


def _round_up(value: float) -> float:
    """Return the end of an axis whose quarters are numbers that can be read: 4, 8, 20, 40, 100 of a hundred."""
    return next((end for end in (0.04, 0.08, 0.2, 0.4) if value <= end), 1.0)
