"""What goes into a forecast and what comes out of it. Days count from the day a set was put on; shares run 0 to 1."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date

# Nothing of a set is left after so many days, whatever was written then: every lash that carried an extension has
# been shed by then. Lash cycles of up to some five months are published, of which an extension is on for a part.
LONGEST_WORN = 120


@dataclass(frozen=True, slots=True)
class Seen:
    """One reading: how much of a set an artist saw still on, on which day."""

    on: date
    share: float  # 0 to 1
    artist: str = ""  # who read it; '' is unknown


@dataclass(frozen=True, slots=True)
class LashSet:
    """One set (a full set or a fill): the day it was put on, the lot of its adhesive, and what was seen of it since."""

    on: date
    lot: str = ""
    seen: tuple[Seen, ...] = ()


@dataclass(frozen=True, slots=True)
class History:
    """One client's sets, oldest first; ``worn`` is the one that she has on now, with what was seen of it so far."""

    client: str
    past: tuple[LashSet, ...] = ()
    worn: LashSet | None = None


@dataclass(frozen=True, slots=True)
class Quantiles:
    """The 10, 50 and 90 % quantiles of what is forecast."""

    low: float
    middle: float
    high: float


@dataclass(frozen=True, slots=True)
class Curve:
    """What will be left of the set, day by day: each field has one number for each of ``days``.

    ``low``, ``middle`` and ``high`` are quantiles of the true share; ``read_low`` and ``read_high`` those of what an
    artist would write down, with the error of the eye and the step in which she reads.
    """

    days: tuple[int, ...]
    low: tuple[float, ...]
    middle: tuple[float, ...]
    high: tuple[float, ...]
    read_low: tuple[float, ...]
    read_high: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class Loss:
    """The share of the set expected to be gone by ``day``, by cause. ``told_apart``: the readings can tell the two."""

    day: float
    shed: Quantiles  # went with its natural lash
    bonds: Quantiles  # came off a lash that is still there
    told_apart: bool


@dataclass(frozen=True, slots=True)
class Forecast:
    """What is known today of the set that a client wears."""

    client: str
    days: dict[float, Quantiles] = field(default_factory=dict)  # by level: days until the set has fallen to it
    curve: Curve | None = None
    loss: Loss | None = None
    readings: int = 0  # of hers that it rests on
