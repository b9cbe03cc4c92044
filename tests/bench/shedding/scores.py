"""How good a forecast was, once the truth is known: scores that an honest forecaster cannot better by saying otherwise.

Source: Gneiting and Raftery, JASA 2007;102:359. All are in the unit of what is forecast; lower is better.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from aftercare.core.shedding.renewal import Floats


def crps(values: ArrayLike, weights: ArrayLike, truth: float) -> float:
    """Return the continuous ranked probability score of a forecast that puts ``weights`` on ``values``.

    It is the integral of (F(x) - 1{x >= truth})² dx, which for weights w of sum 1 is E|X - truth| - E|X - X'| / 2.

    >>> round(crps([1, 2, 3], [1, 1, 1], 2), 6)
    0.222222
    """
    order = np.argsort(values)
    at, weight = np.asarray(values, float)[order], np.asarray(weights, float)[order]
    weight = weight / weight.sum()
    below = np.cumsum(weight)[:-1]
    apart = float((np.diff(at) * below * (1 - below)).sum())  # half of E|X - X'|
    return float(weight @ np.abs(at - truth)) - apart


def interval_score(low: ArrayLike, high: ArrayLike, truth: ArrayLike, missed: float = 0.2) -> Floats:
    """Return the score of central intervals that are to miss the truth in ``missed`` of all cases (0.2: 80 % bands).

    It is the width, and for each case outside 2/``missed`` times by how much.

    >>> float(interval_score(14, 28, 31, missed=0.1))
    74.0
    """
    below, above = np.maximum(np.subtract(low, truth), 0), np.maximum(np.subtract(truth, high), 0)
    return np.asarray(np.subtract(high, low) + 2 / missed * (below + above))


def coverage(low: ArrayLike, high: ArrayLike, truth: ArrayLike) -> float:
    """Return how often (0 to 1) the truth lay within, both ends included."""
    return float(np.mean((np.asarray(truth) >= np.asarray(low)) & (np.asarray(truth) <= np.asarray(high))))
