"""How long something took, where some of it is still waited for: quantiles of waits, with intervals.

A wait that is not over counts for as long as it has lasted: it is neither left out nor taken for the end.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy.special import ndtri

from aftercare.core.rates import LEVEL


@dataclass(frozen=True, slots=True)
class Wait:
    """The time within which a share of the waits were over. ``value`` None: so many are not over yet.

    ``low`` None: nothing can be said; ``high`` None: there is no upper end to it.
    """

    value: float | None
    low: float | None
    high: float | None
    waits: int
    standing: int  # of them not over yet


def within(waits: Sequence[float], over: Sequence[bool], share: float, level: float = LEVEL) -> Wait:
    """Return the time within which ``share`` (0 to 1, both left out) of the waits were over, by Kaplan and Meier.

    The value is the first time by which no more than 1 - share are left: of two waits the shorter one is that within
    which half were over. The interval holds the times that a test on the log(-log) scale does not refuse, with
    Greenwood's variance. Source: Kaplan and Meier, JASA 1958;53:457; Brookmeyer and Crowley, Biometrics 1982;38:29.
    Raises ValueError without waits.

    >>> within([1, 2, 3, 4, 5], [True, True, True, True, False], 0.5).value
    3.0
    """
    if not waits:
        raise ValueError("Nothing was waited for.")
    times, done = np.asarray(waits, dtype=np.float64), np.asarray(over, dtype=bool)
    ends = np.unique(times[done])
    ended = np.array([(times[done] == end).sum() for end in ends], dtype=np.float64)
    at_risk = np.array([(times >= end).sum() for end in ends], dtype=np.float64)
    left = np.cumprod(1 - ended / at_risk)
    reached = np.flatnonzero(left <= 1 - share + 1e-12)
    low, high = _interval(ends, ended, at_risk, left, share, level)
    return Wait(float(ends[reached[0]]) if len(reached) else None, low, high, len(times), int((~done).sum()))


def _interval(
    ends: np.ndarray, ended: np.ndarray, at_risk: np.ndarray, left: np.ndarray, share: float, level: float
) -> tuple[float | None, float | None]:
    some = (left > 0) & (left < 1)
    if not some.any():
        return None, None
    with np.errstate(divide="ignore", invalid="ignore"):
        spread = np.cumsum(ended / (at_risk * (at_risk - ended)))  # of log S, Greenwood's
        logs = np.log(left)
        score = (np.log(-logs) - math.log(-math.log(1 - share))) / (np.sqrt(spread) / -logs)
    kept = np.flatnonzero(some & (np.abs(score) <= ndtri((1 + level) / 2)))
    if not len(kept):
        return None, None
    last = kept[-1] + 1
    return float(ends[kept[0]]), float(ends[last]) if last < len(ends) else None
