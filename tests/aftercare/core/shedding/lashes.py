"""Lashes one by one: follicles that cycle, each in its own time."""

from __future__ import annotations

import numpy as np


def grown(chance: np.random.Generator, lashes: int, cycle: float, spread: float) -> tuple[np.ndarray, np.ndarray]:
    """Return ages and whole lengths of cycles met at one moment in equilibrium: the longer is met more often."""
    shape = spread**-2
    length = chance.gamma(shape + 1, cycle / shape, lashes)  # biased by length
    return chance.uniform(0, 1, lashes) * length, length


def passed(
    chance: np.random.Generator, age: np.ndarray, length: np.ndarray, days: float, cycle: float, spread: float
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Let days pass: return ages, lengths, and which follicles have shed their lash and grown another."""
    age, shed, shape = age + days, np.zeros(len(age), bool), spread**-2
    length = length.copy()
    while (over := age >= length).any():
        age[over] -= length[over]
        length[over] = chance.gamma(shape, cycle / shape, int(over.sum()))
        shed |= over
    return age, length, shed
