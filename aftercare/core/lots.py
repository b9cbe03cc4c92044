"""Is a lot's rate of reported reactions worse than the studio's own? Counts in, figures out.

A reported reaction follows a set; no figure here says what brought it about. Two questions are kept apart: how large a
lot's ratio is (``GammaPoisson``: drawn towards all lots, since what sets few sets apart is mostly chance), and whether
it is worse than chance (``evidence``: one that may be looked at after every visit). ``FourFold`` holds the usual
figures of a single look, for readers who expect them.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import scipy  # of which each part is loaded as it is first used
from scipy.special import digamma, gammainc, gammaincinv, gammaln, ndtri

from aftercare.core.shrinkage import FEWEST

FEWEST_REACTIONS = 5  # in all lots together; of fewer nothing can be learned of how much lots differ
LEAST = 3  # reactions after a lot, below which nothing is made of it: Evans and others ask for 3, too
RATIOS = (1.5, 2.0, 3.0, 5.0, 8.0)  # how many times as often as elsewhere a lot worth finding is followed by one
LEVEL = 0.95  # of the intervals


@dataclass(frozen=True, slots=True)
class FourFold:
    """Sets with (``a``) and without (``b``) a reaction after one lot, and the same of all others (``c``, ``d``)."""

    a: int
    b: int
    c: int
    d: int

    def __post_init__(self) -> None:
        if min(self.a, self.b, self.c, self.d) < 0:
            raise ValueError(f"There can be no count below 0 among {self.a}, {self.b}, {self.c}, {self.d}.")

    @property
    def rate_ratio(self) -> float | None:
        """[a/(a+b)] / [c/(c+d)], the form of Evans and others' PRR (Pharmacoepidemiol Drug Saf 2001;10:483).

        With sets as denominators it is a ratio of true rates. None where a part of it is nothing.
        """
        if not (self.a + self.b and self.c):
            return None
        return self.a / (self.a + self.b) / (self.c / (self.c + self.d))

    @property
    def rate_ratio_interval(self) -> tuple[float, float] | None:
        """Its interval on the logarithm's scale (Katz and others, Biometrics 1978;34:469); None without reactions."""
        ratio = self.rate_ratio
        if not ratio:
            return None
        spread = math.sqrt(1 / self.a - 1 / (self.a + self.b) + 1 / self.c - 1 / (self.c + self.d))
        reach = math.exp(float(ndtri((1 + LEVEL) / 2)) * spread)
        return ratio / reach, ratio * reach

    def chi_square(self, *, yates: bool) -> float | None:
        """Pearson's, one degree of freedom, with or without Yates' correction; None where a margin is empty."""
        margins = (self.a + self.b) * (self.c + self.d) * (self.a + self.c) * (self.b + self.d)
        if not margins:
            return None
        total = self.a + self.b + self.c + self.d
        apart = abs(self.a * self.d - self.b * self.c)
        return total * max(0.0, apart - (total / 2 if yates else 0.0)) ** 2 / margins

    @property
    def fisher(self) -> float:
        """Fisher's exact p, one-sided: so many reactions after this lot, or more, with all margins as they are."""
        lot, others, hits = self.a + self.b, self.c + self.d, self.a + self.c
        counts = np.arange(self.a, min(lot, hits) + 1)
        logs = _choose(lot, counts) + _choose(others, hits - counts) - _choose(lot + others, np.asarray(hits))
        return min(1.0, float(np.exp(logs).sum()))


def _choose(total: int, some: np.ndarray) -> np.ndarray:
    logs: np.ndarray = gammaln(total + 1) - gammaln(some + 1) - gammaln(total - some + 1)
    return logs


def evidence(hits: int, sets: int, other_hits: int, other_sets: int) -> float:
    """Return how many times likelier the split of the reactions is if this lot is worse than if it is like the rest.

    Given how many reactions there were in all, those after a lot like the rest are binomial with its share of the
    sets; the likelihood ratio against "worse" is averaged over RATIOS. Of a lot like the rest it is 1 on average
    whatever the studio's rate, and it ever reaches 1/p with a chance of at most p, however often it is looked at
    (Ville's inequality; Robbins, Ann Math Stat 1970;41:1397, for mixtures of likelihood ratios: from memory). So a
    level put on it holds for a lot's whole life. That takes reactions to fall on sets as a Poisson process does, each
    client once a lot; the tests draw such studios. Raises ValueError for counts that cannot be.
    """
    if not (0 <= hits <= sets and 0 <= other_hits <= other_sets):
        raise ValueError(f"There can be no {hits} of {sets} and {other_hits} of {other_sets}.")
    if not sets:
        return 1.0
    ratios = np.asarray(RATIOS)
    shift = np.log(sets + other_sets) - np.log(other_sets + ratios * sets)
    return float(np.exp(hits * np.log(ratios) + (hits + other_hits) * shift).mean())


def is_worse(hits: int, sets: int, other_hits: int, other_sets: int, chance: float) -> bool:
    """Whether to look at a lot. ``chance``: how likely a lot like the rest may be ever to be marked, 0 to 1."""
    return hits >= LEAST and evidence(hits, sets, other_hits, other_sets) >= 1 / chance


@dataclass(frozen=True, slots=True)
class Gamma:
    """One gamma law of ratios with its weight in a mixture."""

    shape: float
    rate: float
    weight: float = 1.0


@dataclass(frozen=True, slots=True)
class GammaPoisson:
    """Ratios of observed to expected that differ from lot to lot by a mixture of gamma laws (weights sum to 1)."""

    laws: tuple[Gamma, ...]

    @classmethod
    def fit(cls, hits: Sequence[int], expected: Sequence[float]) -> GammaPoisson:
        """Return the single gamma law under which these counts are likeliest, by marginal maximum likelihood.

        Counts are Poisson with ratio times ``expected``. One law and not the two of DuMouchel: a studio's few lots
        cannot tell two apart. Raises ValueError with fewer than four lots or five reactions.
        """
        found, due = np.asarray(hits, float), np.asarray(expected, float)
        if len(found) < FEWEST or len(due) != len(found) or (found < 0).any() or found.sum() < FEWEST_REACTIONS:
            raise ValueError(f"To draw lots together takes {FEWEST} of them and {FEWEST_REACTIONS} reactions.")
        if not (due > 0).all():
            raise ValueError("Each lot must have something to expect: leave out those without a set.")

        def unlikely(at: np.ndarray) -> float:
            shape, rate = np.exp(at)
            own = gammaln(shape + found) - gammaln(shape) + shape * np.log(rate) - (shape + found) * np.log(rate + due)
            return -float(own.sum())

        start = np.log([2.0, 2.0 * due.sum() / found.sum()])
        # Lots no more unlike than chance makes them drive both numbers off: so far is far enough.
        end = scipy.optimize.minimize(
            unlikely, start, method="L-BFGS-B", bounds=[(-4, 9)] * 2, options={"ftol": 1e-14, "gtol": 1e-9}
        )
        return cls((Gamma(*np.exp(end.x).tolist()),))

    def after(self, hits: int, expected: float) -> GammaPoisson:
        """Return the law of one lot's ratio once its count is known.

        Source: DuMouchel, Am Stat 1999;53:177. A law's new weight is in proportion to how likely it made the count.
        """
        logs = [
            math.log(law.weight)
            + gammaln(law.shape + hits)
            - gammaln(law.shape)
            + law.shape * math.log(law.rate / (law.rate + expected))
            - hits * math.log(law.rate + expected)
            for law in self.laws
        ]
        weights = np.exp(np.asarray(logs) - max(logs))
        weights = weights / weights.sum()
        return GammaPoisson(
            tuple(
                Gamma(law.shape + hits, law.rate + expected, float(weight))
                for law, weight in zip(self.laws, weights, strict=True)
            )
        )

    @property
    def middle(self) -> float:
        """The geometric mean: DuMouchel's EBGM, of a law that knows its count."""
        return math.exp(sum(law.weight * float(digamma(law.shape) - math.log(law.rate)) for law in self.laws))

    def quantile(self, share: float) -> float:
        """Return the ratio below which ``share`` (0 to 1, both left out) of the law lies: 0.05 gives EB05."""
        ends = [float(gammaincinv(law.shape, share)) / law.rate for law in self.laws]
        low, high = min(ends), max(ends)
        return float(scipy.optimize.brentq(lambda x: self._below(x) - share, low, high)) if high > low else low

    def _below(self, ratio: float) -> float:
        return sum(law.weight * float(gammainc(law.shape, law.rate * ratio)) for law in self.laws)
