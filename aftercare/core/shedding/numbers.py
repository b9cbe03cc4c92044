"""The numbers of a population, what is believed of them before a studio has shown anything, and what they make."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from aftercare.core.shedding.eye import Eye
from aftercare.core.shedding.lattice import FAR, Lattice
from aftercare.core.shedding.renewal import Floats

TURN_SD = 0.2  # how much the size of a turn differs, in the log: turns are told from luck by being large and for good


class Numbers(NamedTuple):
    """The numbers of a population, each on a scale without limits: a logarithm, or the log of the odds (``odds``)."""

    cycle: float  # log of the median mean cycle, days
    cycle_sd: float  # log of the spread between clients, in log days
    hazard: float  # log of the median bond hazard, a day
    hazard_sd: float  # log of the spread between clients, in log hazard
    spread: float  # log of the coefficient of variation of one client's cycles
    luck: float  # log of the spread from set to set, in log hazard
    eye: float  # log of the error of the eye, shares
    wrong: float  # log odds that a reading is plainly wrong
    turn: float  # log odds that a client turns for good between two sets
    turn_by: float  # log of how much her log hazard then changes
    turn_worse: float  # log odds that it changes for the worse


# Wide. Mean cycle: published ones run from 90 days to 11 months, of few people each. Spread of one person's cycles:
# 34 +- 9 and 90 +- 5 days are printed, of follicles. The others are common practice of the trade, no source: a set
# wants a fill after two to three weeks, eyes read to five or ten points, and bonds may hold half or twice as long.
BEFORE = Numbers(4.85, -1.6, -4.5, -0.7, -1.8, -1.4, -3.0, -3.5, -4.2, -0.4, 0.5)
BEFORE_SD = Numbers(0.35, 0.3, 0.7, 0.3, 0.3, 0.4, 0.4, 1.0, 1.2, 0.3, 1.0)


def density(numbers: Numbers) -> tuple[float, Floats]:
    """Return the log of how likely ``numbers`` are beforehand (but for a constant), and its slope by each: (11,)."""
    far = (np.array(numbers) - np.array(BEFORE)) / np.array(BEFORE_SD)
    return -float((far**2).sum()) / 2, np.asarray(-far / np.array(BEFORE_SD))


def logistic(odds: float) -> float:
    """Return the chance that has these log odds.

    >>> logistic(0)
    0.5
    """
    return float(1 / (1 + np.exp(-odds)))


def spread(numbers: Numbers) -> float:
    """Return the coefficient of variation of one client's cycles."""
    return float(np.exp(numbers.spread))


def eye(numbers: Numbers) -> Eye:
    """Return the error of the eye, in shares, and how often a reading is plainly wrong."""
    return Eye(float(np.exp(numbers.eye)), logistic(numbers.wrong))


def clients(lattice: Lattice, numbers: Numbers, unsure: Floats | None = None) -> Floats:
    """Return the share of clients at each node, (cycles, hazards), sum 1: a normal law in the two logarithms.

    ``unsure`` (2, 2) is the covariance of what is known of the two medians.
    """
    covariance = np.diag([np.exp(2 * numbers.cycle_sd), np.exp(2 * numbers.hazard_sd)])
    sharp = np.linalg.inv(covariance if unsure is None else covariance + unsure)
    x, y = lattice.log_cycles[:, None] - numbers.cycle, lattice.log_hazards[None, :] - numbers.hazard
    weight = -(sharp[0, 0] * x**2 + 2 * sharp[0, 1] * x * y + sharp[1, 1] * y**2) / 2
    share = np.exp(np.maximum(weight - weight.max(), -(FAR**2) / 2))
    return np.asarray(share / share.sum())


def turns(lattice: Lattice, numbers: Numbers) -> Floats:
    """Return the chance of each log hazard at the next set, a column, given that at this one, a row: rows sum to 1."""
    chance, worse, by = logistic(numbers.turn), logistic(numbers.turn_worse), float(np.exp(numbers.turn_by))
    moved = worse * lattice.moves(by, TURN_SD) + (1 - worse) * lattice.moves(-by, TURN_SD)
    return np.asarray((1 - chance) * np.eye(len(moved)) + chance * moved)


def luck(lattice: Lattice, numbers: Numbers, shift: float = 0.0, unsure: float = 0.0) -> Floats:
    """Return the chance of each log hazard of one set, given the client's: luck, and the factor of its lot.

    A row is hers, a column the set's: (hazards, hazards), rows sum to 1. ``shift`` is what the lot adds to the log
    hazard, ``unsure`` the standard deviation of what is known of it.
    """
    return lattice.moves(shift, float(np.hypot(np.exp(numbers.luck), unsure)))


def lattice_around(numbers: Numbers, shape: tuple[int, int], unsure: Floats | None = None) -> Lattice:
    """Return a lattice of ``shape`` that holds nearly all clients and sets of such a population."""
    more = np.zeros(2) if unsure is None else np.diag(unsure)
    cycle_sd = float(np.sqrt(np.exp(2 * max(numbers.cycle_sd, -2.0)) + more[0]))
    hazard_sd = float(np.sqrt(np.exp(2 * max(numbers.hazard_sd, -1.5)) + np.exp(2 * numbers.luck) + more[1]))
    turned = min(1.0, 40 * logistic(numbers.turn)) * float(np.exp(numbers.turn_by))
    worse, better = turned * logistic(numbers.turn_worse), turned * (1 - logistic(numbers.turn_worse))
    return Lattice(
        shortest=max(35.0, float(np.exp(numbers.cycle - 3.2 * cycle_sd))),
        longest=float(np.exp(numbers.cycle + 3.2 * cycle_sd)),
        slowest=float(np.exp(numbers.hazard - 3.4 * hazard_sd - better)),
        fastest=float(np.exp(numbers.hazard + 3.4 * hazard_sd + worse)),
        shape=shape,
    )
