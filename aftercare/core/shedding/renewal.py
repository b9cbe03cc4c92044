"""Shedding: how much of a set is left when only natural lashes fall, by the theory of renewal.

Lashes cycle one by one. Seen at any moment, the ages of those on the lid follow the equilibrium law of their cycle, and
a set is put on the ones that are old enough. With ``S`` the survival function of the cycle's length ``X`` and ``a`` the
least age, the share of the set still on after ``t`` days is

    A(t) = E[(X - a - t)+] / E[(X - a)+],   since the integral of S from x to infinity is E[(X - x)+].

Source: the distribution of the residual life in a renewal process (Ross, Stochastic Processes; Tijms, A First Course in
Stochastic Models, ch. 2). Because the ages are in equilibrium whenever they are looked at, a fill that covers every
lash that is old enough starts as a full set does; ``tests`` show it lash by lash.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.special import gammaincc

Floats = NDArray[np.floating[Any]]

LEAST_AGE = 30.0  # days: younger lashes are skipped (common practice, no source)


def excess(x: ArrayLike, mean: ArrayLike, spread: float) -> Floats:
    """Return ``E[(X - x)+]`` in days, for gamma distributed cycles of ``mean`` days and coefficient ``spread``.

    >>> round(float(excess(0, 90, 0.2)), 6)
    90.0
    """
    shape = spread**-2
    at, average = np.asarray(x, float), np.asarray(mean, float)
    scaled = at * shape / average
    return np.asarray(average * gammaincc(shape + 1, scaled) - at * gammaincc(shape, scaled))


def left_by_shedding(days: ArrayLike, cycle: ArrayLike, spread: float, least_age: float = LEAST_AGE) -> Floats:
    """Return the share (0 to 1) of a set still on after ``days``, had no bond failed, for a mean ``cycle`` in days.

    ``spread`` is the coefficient of variation of one person's cycles.

    >>> round(float(left_by_shedding(21, 90, 0.2, least_age=0)), 5)  # all lashes: 1 - t/m while no cycle is that short
    0.76667
    """
    average = np.asarray(cycle, float)
    at = np.asarray(days, float)
    return np.asarray(excess(least_age + at, average, spread) / excess(least_age, average, spread))
