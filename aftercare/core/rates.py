"""How often, and how much on average, with an interval that holds when several cases come from one client.

Visits of one client resemble each other, so ten visits of one say less than one visit each of ten. Every interval here
counts clients (*groups*) rather than cases.
"""

from __future__ import annotations

import math
from collections.abc import Hashable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtri, stdtrit

LEVEL = 0.95  # of the intervals


@dataclass(frozen=True, slots=True)
class Figure:
    """An average with its interval, and what stands behind it. Without two groups there is no interval (None)."""

    value: float
    low: float | None
    high: float | None
    cases: int
    groups: int
    variance: float | None = None  # of the value, where it is a mean


def wilson(hits: float, cases: float, level: float = LEVEL) -> tuple[float, float]:
    """Return the score interval of a rate of ``hits`` among ``cases``; neither has to be whole.

    Source: Wilson, JASA 1927;22:209; method 3 of Newcombe, Stat Med 1998;17:857. Raises ValueError without cases, or
    where the hits are fewer than none or more than the cases.
    """
    if not 0 <= hits <= cases or cases <= 0:
        raise ValueError(f"There can be no {hits} hits among {cases} cases.")
    z2 = float(ndtri((1 + level) / 2)) ** 2
    middle = (hits + z2 / 2) / (cases + z2)
    half = math.sqrt(z2 * (hits * (cases - hits) / cases + z2 / 4)) / (cases + z2)
    return max(0.0, middle - half), min(1.0, middle + half)


def mean(values: Sequence[float], groups: Sequence[Hashable], level: float = LEVEL) -> Figure:
    """Return the mean of ``values`` with an interval that allows for likeness within each of the ``groups``.

    With the sum e_g of the deviations in each of G groups, the variance of a mean of n values is
    G/(G-1) · sum(e_g²)/n²; the interval takes the t distribution with G-1 degrees of freedom. With one value a group
    it is the textbook's. Source: Liang and Zeger, Biometrika 1986;73:13; Cameron and Miller, J Human Resources
    2015;50:317. Raises ValueError without values.
    """
    data, sums = _by_group(values, groups)
    value, count = float(data.mean()), len(sums)
    if count < 2:
        return Figure(value, None, None, len(data), count)
    variance = _variance(len(data), sums)
    half = float(stdtrit(count - 1, (1 + level) / 2)) * math.sqrt(variance)
    return Figure(value, value - half, value + half, len(data), count, variance)


def rate(hits: Sequence[bool], groups: Sequence[Hashable], level: float = LEVEL) -> Figure:
    """Return how many of the cases are hits, 0 to 1, with Wilson's interval for as many cases as they are worth.

    That number is p(1-p) over the variance that ``mean`` reckons with, and never more than there are. Where all or
    none are hits, that is 0/0, and each group counts as one case. Source: the effective sample size of Korn and
    Graubard, Survey Methodology 1998;24:193, in Wilson's interval as Franco and others have it, J Survey Stat
    Methodol 2019;7:334. Raises ValueError without cases.
    """
    data, sums = _by_group([float(hit) for hit in hits], groups)
    value, cases, count = float(data.mean()), len(data), len(sums)
    if count < 2:
        return Figure(value, None, None, cases, count)
    variance = _variance(cases, sums)
    worth = min(cases, value * (1 - value) / variance) if variance > 0 else count if value in (0, 1) else cases
    low, high = wilson(value * worth, worth, level)
    return Figure(value, low, high, cases, count)


def _by_group(values: Sequence[float], groups: Sequence[Hashable]) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Return the values, and of each group the sum of their deviations from the mean."""
    if not values:
        raise ValueError("There is no mean of nothing.")
    data = np.asarray(values, dtype=np.float64)
    number = {group: place for place, group in enumerate(dict.fromkeys(groups))}
    places = [number[group] for group in groups]
    sums = np.zeros(len(number))
    np.add.at(sums, places, data - data.mean())
    return data, sums


def _variance(cases: int, sums: NDArray[np.float64]) -> float:
    count = len(sums)
    return count / (count - 1) * float(sums @ sums) / cases**2
