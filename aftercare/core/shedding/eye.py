"""How an artist's reading comes about: an eye with an error, a step in which it writes, now and then plainly wrong."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
from scipy.special import ndtr

from aftercare.core.shedding.renewal import Floats

STEPS = (0.25, 0.1, 0.05)  # in which eyes read; finer ones are taken as FINEST
FINEST = 0.025
ON_STEP = 0.95  # of one's readings must lie on a step for it to be hers
ENOUGH = 12  # readings, to tell a person's step from the studio's


def step_of(shares: Iterable[float], default: float = FINEST) -> float:
    """Return the widest step on which nearly all of these shares lie; ``default`` where they are too few to tell.

    >>> step_of([0.4, 0.55, 0.6, 0.75] * 5)
    0.05
    """
    values = np.asarray(list(shares), float)
    if values.size < ENOUGH:
        return default
    for step in STEPS:
        if np.mean(np.abs(values / step - np.round(values / step)) < 1e-6) >= ON_STEP:
            return step
    return FINEST


class Slopes(NamedTuple):
    """How the chance of a reading changes: with the log of the eye's error, the log odds of wrong, and what is left."""

    error: Floats
    wrong: Floats
    left: Floats


@dataclass(frozen=True, slots=True)
class Eye:
    """The error of the eye (a standard deviation, in shares) and the share of readings that are plainly wrong.

    A reading is what is left, plus the eye's bias and a normal error, written down in a step; nothing is written below
    0 or above 1. One that is plainly wrong is any step, all alike.
    """

    error: float
    wrong: float

    def chance(self, left: Floats, share: Floats, step: Floats, bias: Floats) -> Floats:
        """Return the chance of writing down each ``share`` (in its ``step``) where ``left`` is true.

        The first axis of ``left`` goes with the three others, which have one number for each reading.
        """
        low, high = self._bounds(left, share, step, bias)
        right = ndtr(high) - ndtr(low)
        return np.asarray((1 - self.wrong) * right + self.wrong * _column(step / (1 + step), left))

    def slopes(self, left: Floats, share: Floats, step: Floats, bias: Floats) -> Slopes:
        """Return how ``chance`` changes with each of the eye's numbers, and with what is left."""
        low, high = self._bounds(left, share, step, bias)
        right = ndtr(high) - ndtr(low)
        at_low, at_high = _bell(low), _bell(high)
        odds = self.wrong * (1 - self.wrong)
        with np.errstate(invalid="ignore"):  # an open end, infinity times 0, does not change
            by_error = np.nan_to_num(low * at_low) - np.nan_to_num(high * at_high)
        return Slopes(
            np.asarray((1 - self.wrong) * by_error),
            np.asarray(odds * (_column(step / (1 + step), left) - right)),
            np.asarray((1 - self.wrong) * (at_low - at_high) / self.error),
        )

    def _bounds(self, left: Floats, share: Floats, step: Floats, bias: Floats) -> tuple[Floats, Floats]:
        """Return between which errors of the eye each share is written down."""
        written = np.round(share / step) * step
        low = np.where(written <= step / 4, -np.inf, written - step / 2)
        high = np.where(written >= 1 - step / 4, np.inf, written + step / 2)
        seen = left + _column(bias, left)
        return (_column(low, left) - seen) / self.error, (_column(high, left) - seen) / self.error


def _column(values: Floats, like: Floats) -> Floats:
    return values.reshape(-1, *(1,) * (like.ndim - 1))


def _bell(at: Floats) -> Floats:
    return np.asarray(np.exp(-(at**2) / 2) / np.sqrt(2 * np.pi))
