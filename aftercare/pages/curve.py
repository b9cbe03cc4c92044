"""The picture of a set's curve: where on the sheet each line, mark and word of it stands.

Drawn for a telephone: 360 units wide, so that on one a unit is about a pixel and its words stay readable. All
coordinates are text, since templates would write numbers in the reader's own way.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from aftercare.core.expected import Kept, share_on
from aftercare.core.shedding import Quantiles

WIDTH, LEFT, RIGHT = 360, 40, 352
TALL, ROW, FOOT = 190, 17, 22  # of the plot, of each row of words above it, of the dates below
SHORTEST = 28  # days shown at least
DATES = 5  # words on the axis at most
EDGE = 44  # nearer to a side than this, a word begins or ends at its mark


@dataclass(frozen=True, slots=True)
class Mark:
    """A word with its place; ``until`` is where a line from it ends, ``anchor`` the side on which it hangs."""

    x: str
    y: str
    words: str = ""
    share: int | None = None
    on: date | None = None
    until: str = ""
    anchor: str = "middle"
    kind: str = ""


@dataclass(frozen=True, slots=True)
class Event:
    """A day to be marked on the curve: its ``kind`` chooses the line, its ``words`` are written at the first."""

    kind: str
    day: int
    words: str


@dataclass(frozen=True, slots=True)
class Picture:
    """Everything that is drawn."""

    width: int
    height: int
    left: str
    right: str
    top: str
    bottom: str
    band: str
    middle: str
    shares: Sequence[Mark]
    dates: Sequence[Mark]
    levels: Sequence[Mark]
    events: Sequence[Mark]
    earlier: Sequence[Mark]
    own: Sequence[Mark]


@dataclass(frozen=True, slots=True)
class _Frame:
    days: int
    top: int

    def x(self, day: float) -> float:
        return LEFT + (RIGHT - LEFT) * day / self.days

    def y(self, share: float) -> float:
        return self.top + TALL * (1 - share)

    def point(self, day: float, share: float) -> str:
        return f"{self.x(day):.1f},{self.y(share):.1f}"

    def mark(self, day: float, share: float) -> Mark:
        return Mark(f"{self.x(day):.1f}", f"{self.y(share):.1f}")


def draw(
    curve: Kept,
    start: date,
    *,
    reach: float,
    levels: Iterable[tuple[float, str]],
    events: Sequence[Event],
    earlier: Iterable[tuple[int, float]],
    own: Iterable[tuple[int, float]],
) -> Picture:
    """Draw a curve from ``start`` on for about ``reach`` days and as far as its events lie.

    ``levels`` are shares with their words; ``earlier`` and ``own`` are readings, as days after the set and shares.
    """
    last = int(curve["days"][-1])
    wanted = max([SHORTEST, reach, *(event.day + 2 for event in events)])
    days = min(last, 7 * -(-int(wanted) // 7))
    shown = [event for event in events if 0 <= event.day <= days]
    rows = list(dict.fromkeys(event.kind for event in shown))
    frame = _Frame(days, ROW * len(rows) + 10)
    on_curve = [day for day in curve["days"] if day < days] + [days]
    shares = [(day, share) for day in on_curve if (share := share_on(curve, day))]
    high = [frame.point(day, share.high) for day, share in shares]
    low = [frame.point(day, share.low) for day, share in shares]
    return Picture(
        width=WIDTH,
        height=frame.top + TALL + FOOT,
        left=str(LEFT),
        right=str(RIGHT),
        top=str(frame.top),
        bottom=str(frame.top + TALL),
        band=" ".join([*high, *reversed(low)]),
        middle=" ".join(frame.point(day, share.middle) for day, share in shares),
        shares=[Mark(str(LEFT - 6), f"{frame.y(part / 2):.1f}", share=50 * part, anchor="end") for part in range(3)],
        dates=_dates(frame, start),
        levels=[_level(frame, share, words, shares) for share, words in levels],
        events=_events(frame, shown, rows),
        earlier=[frame.mark(day, share) for day, share in earlier if 0 <= day <= days],
        own=[frame.mark(day, share) for day, share in own if 0 <= day <= days],
    )


def _level(frame: _Frame, share: float, words: str, shares: Sequence[tuple[float, Quantiles]]) -> Mark:
    """Name a level at the side on which the curve is away from it."""
    crossed = next((day for day, found in shares if found.middle <= share), frame.days)
    left = crossed > frame.days / 2
    x, anchor = (LEFT + 4, "start") if left else (RIGHT, "end")
    return Mark(str(x), f"{frame.y(share):.1f}", words, round(100 * share), anchor=anchor)


def _dates(frame: _Frame, start: date) -> list[Mark]:
    """Return the days named below: the first, and every so many weeks one."""
    step = 7 * -(-frame.days // (7 * (DATES - 1)))
    below = frame.top + TALL
    return [
        Mark(
            f"{frame.x(day):.1f}",
            str(below + 18),
            on=start + timedelta(days=day),
            until=str(below + 4),
            anchor=_anchor(frame.x(day)),
        )
        for day in range(0, frame.days + 1, step)
    ]


def _events(frame: _Frame, events: Iterable[Event], rows: list[str]) -> list[Mark]:
    """Give each kind a row of its own above the plot, so that no word stands on another."""
    named: set[str] = set()
    marks = []
    for event in events:
        x = frame.x(event.day)
        y = ROW * rows.index(event.kind) + 13
        words = "" if event.kind in named else event.words
        marks.append(Mark(f"{x:.1f}", str(y), words, until=str(y + 4), anchor=_anchor(x), kind=event.kind))
        named.add(event.kind)
    return marks


def _anchor(x: float) -> str:
    return "start" if x < LEFT + EDGE else "end" if x > RIGHT - EDGE else "middle"
