"""What to expect when she comes in: the share left on a day, and whether the booked minutes look right for it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from aftercare.core.shedding import Quantiles

Kept = Mapping[str, Sequence[float]]  # a shedding.Curve as it is kept: a list of numbers for each of its fields


def share_on(curve: Kept, day: float) -> Quantiles | None:
    """Return the share left ``day`` days after the set was put on, with its band; None outside the curve's days."""
    return _between(curve, day, "low", "high")


def reading_on(curve: Kept, day: float) -> Quantiles | None:
    """Return the same with the band of what an artist would write down, with her eye's error and her steps."""
    return _between(curve, day, "read_low", "read_high")


def value_on(days: Sequence[float], values: Sequence[float], day: float) -> float:
    """Return the value on ``day``, along the straight line between the days beside it."""
    return float(np.interp(day, days, values))


def _between(curve: Kept, day: float, low: str, high: str) -> Quantiles | None:
    days = curve["days"]
    if not days or not days[0] <= day <= days[-1]:
        return None
    return Quantiles(*(value_on(days, curve[name], day) for name in (low, "middle", high)))


@dataclass(frozen=True, slots=True)
class Advice:
    """What the owner's numbers say of a booked fill."""

    more_minutes: int = 0  # than are booked
    over_longest: bool = False  # longer after the last set than a fill is offered
    may_need_new_set: bool = False


def advise(
    share: float, days: int, minutes: int, *, tiers: Sequence[tuple[float, int]], longest_days: int, new_set: float
) -> Advice:
    """Judge a fill of ``minutes``, booked ``days`` after the last set, of which ``share`` will be left.

    ``tiers`` are pairs of a share and the minutes for a fill with at least so much left, largest share first; below
    the last of them its minutes count. ``new_set`` is the share under which only a new set may help.

    >>> advise(0.42, 24, 75, tiers=((0.6, 60), (0.45, 75), (0, 95)), longest_days=35, new_set=0.4)
    Advice(more_minutes=20, over_longest=False, may_need_new_set=False)
    """
    if not tiers:
        return Advice(0, days > longest_days, share < new_set)
    needed = next((long for least, long in tiers if share >= least), tiers[-1][1])
    return Advice(max(0, needed - minutes), days > longest_days, share < new_set)
