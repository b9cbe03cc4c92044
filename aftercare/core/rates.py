"""How often, and how much on average, with an interval that holds when several cases come from one client.

Visits of one client resemble each other, so ten visits of one say less than one visit each of ten. Every interval here
counts clients (*groups*) rather than cases.
"""

from __future__ import annotations

import math
from collections.abc import Hashable, Sequence
from dataclasses import dataclass

import numpy as np
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


@dataclass(frozen=True, slots=True)
class Sums:
    """Cases as a database sums them up: of n cases and the sum s of their values for each group, these sums."""

    groups: int
    cases: int  # of n
    total: float  # of s
    cases_squared: float  # of n²
    both: float  # of n s
    total_squared: float  # of s²

    @classmethod
    def of(cls, values: Sequence[float], groups: Sequence[Hashable]) -> Sums:
        """Sum up cases that are at hand. Raises ValueError without any."""
        if not values:
            raise ValueError("There is no mean of nothing.")
        number = {group: place for place, group in enumerate(dict.fromkeys(groups))}
        places = np.asarray([number[group] for group in groups])
        n = np.bincount(places).astype(np.float64)
        s = np.bincount(places, weights=np.asarray(values, dtype=np.float64))
        return cls(len(n), len(values), float(s.sum()), float(n @ n), float(n @ s), float(s @ s))

    @property
    def value(self) -> float:
        """The mean over all cases."""
        return self.total / self.cases

    @property
    def variance(self) -> float:
        """Of the mean, see `mean`; with the deviation e = s - mean · n of each group."""
        squares = self.total_squared - 2 * self.value * self.both + self.value**2 * self.cases_squared
        if squares <= 1e-12 * self.total_squared:  # nothing but rounding is left
            return 0.0
        return self.groups / (self.groups - 1) * squares / self.cases**2


def mean(values: Sequence[float], groups: Sequence[Hashable], level: float = LEVEL) -> Figure:
    """Return the mean of ``values`` with an interval that allows for likeness within each of the ``groups``.

    With the sum e_g of the deviations in each of G groups, the variance of a mean of n values is
    G/(G-1) · sum(e_g²)/n²; the interval takes the t distribution with G-1 degrees of freedom. With one value a group
    it is the textbook's. Source: Liang and Zeger, Biometrika 1986;73:13; Cameron and Miller, J Human Resources
    2015;50:317. Raises ValueError without values.
    """
    return mean_of(Sums.of(values, groups), level)


def mean_of(sums: Sums, level: float = LEVEL) -> Figure:
    """Return the same of cases that have been summed up."""
    if sums.groups < 2:
        return Figure(sums.value, None, None, sums.cases, sums.groups)
    variance = sums.variance
    half = float(stdtrit(sums.groups - 1, (1 + level) / 2)) * math.sqrt(variance)
    return Figure(sums.value, sums.value - half, sums.value + half, sums.cases, sums.groups, variance)


def rate(hits: Sequence[bool], groups: Sequence[Hashable], level: float = LEVEL) -> Figure:
    """Return how many of the cases are hits, 0 to 1, with Wilson's interval for as many cases as they are worth.

    That number is p(1-p) over the variance that ``mean`` reckons with, and never more than there are. Where all or
    none are hits, that is 0/0, and each group counts as one case. Source: the effective sample size of Korn and
    Graubard, Survey Methodology 1998;24:193, in Wilson's interval as Franco and others have it, J Survey Stat
    Methodol 2019;7:334. Raises ValueError without cases.
    """
    return rate_of(Sums.of([float(hit) for hit in hits], groups), level)


def rate_of(sums: Sums, level: float = LEVEL) -> Figure:
    """Return the same of cases that have been summed up; a hit is 1."""
    value, cases, count = sums.value, sums.cases, sums.groups
    if count < 2:
        return Figure(value, None, None, cases, count)
    variance = sums.variance
    worth = min(cases, value * (1 - value) / variance) if variance > 0 else count if value in (0, 1) else cases
    low, high = wilson(value * worth, worth, level)
    return Figure(value, low, high, cases, count)
