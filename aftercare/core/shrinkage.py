"""Drawing the figures of small groups towards the whole: what looks far off on few cases is mostly chance.

Empirical Bayes: how much groups really differ is learned from all of them together.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import scipy  # of which each part is loaded as it is first used
from scipy.special import betaln

FEWEST = 4  # groups: of fewer nothing can be learned of how much they differ
MOST = 200  # steps of the iteration


def shrink_means(values: Sequence[float], variances: Sequence[float]) -> list[float]:
    """Return each group's mean drawn towards the mean of all, the more the less sure it is.

    ``variances`` are those of the means. With B = (k-3)/(k-1) · V/(V+A) each is (1-B) x + B m, where A, the variance
    between groups, solves A = sum W (k/(k-1) (x-m)² - V) / sum W with W = 1/(V+A). With equal variances that is the
    estimator of James and Stein as Efron and Morris (JASA 1975;70:311) use it. Source: Morris, JASA 1983;78:47.
    Raises ValueError with fewer than four groups or a variance that is not above 0.
    """
    means, own = np.asarray(values, float), np.asarray(variances, float)
    count = len(means)
    if count < FEWEST or len(own) != count or not (own > 0).all():
        raise ValueError(f"To draw means together takes {FEWEST} or more, each with a variance above 0.")
    between = 0.0
    middle = float(means.mean())
    for _step in range(MOST):
        weight = 1 / (own + between)
        middle = float(weight @ means / weight.sum())
        spread = count / (count - 1) * (means - middle) ** 2 - own
        former, between = between, max(0.0, float(weight @ spread / weight.sum()))
        if abs(between - former) <= 1e-12 * (1 + between):
            break
    factor = (count - 3) / (count - 1) * own / (own + between)
    return [float(value) for value in (1 - factor) * means + factor * middle]


@dataclass(frozen=True, slots=True)
class BetaBinomial:
    """Rates that differ from group to group by a beta law with these two shapes."""

    alpha: float
    beta: float

    @classmethod
    def fit(cls, hits: Sequence[int], cases: Sequence[int]) -> BetaBinomial:
        """Return the law under which these counts are likeliest, by marginal maximum likelihood.

        Source: Gelman and others, Bayesian Data Analysis, ch. 5. Raises ValueError with fewer than four groups, or
        where the hits are fewer than none or more than the cases.
        """
        found, asked = np.asarray(hits, float), np.asarray(cases, float)
        if len(found) < FEWEST or len(found) != len(asked) or (found < 0).any() or (found > asked).any():
            raise ValueError(f"To draw rates together takes {FEWEST} groups or more, none with more hits than cases.")

        def unlikely(at: np.ndarray) -> float:
            alpha, beta = np.exp(at)
            return -float((betaln(alpha + found, beta + asked - found) - betaln(alpha, beta)).sum())

        rate = np.clip(found.sum() / asked.sum(), 0.01, 0.99)
        start = np.log([10 * rate, 10 * (1 - rate)])
        # Groups no more unlike than chance makes them drive both shapes off: so far is far enough.
        end = scipy.optimize.minimize(
            unlikely, start, method="L-BFGS-B", bounds=[(-7, 12)] * 2, options={"ftol": 1e-14, "gtol": 1e-9}
        )
        return cls(*np.exp(end.x).tolist())

    def rate(self, hits: int, cases: int) -> float:
        """Return a group's rate, drawn towards those of all: the mean of its posterior."""
        return (self.alpha + hits) / (self.alpha + self.beta + cases)
