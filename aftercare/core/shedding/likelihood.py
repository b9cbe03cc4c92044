"""How likely a studio's readings are under given numbers of its population, and how that changes with each of them.

A client is a node of the lattice. From set to set her bonds keep their hazard or, with a small chance, take a turn for
good; each set has its own luck, a normal step in the log hazard, and each lot of adhesive its own factor. Her sets are
a hidden Markov chain, so one pass forward over them gives the likelihood, and one backward its exact slope (Fisher's
identity; for the passes Rabiner, Proc. IEEE 1989;77:257).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial

import numpy as np
from scipy.sparse import csr_matrix

from aftercare.core.shedding import numbers as made
from aftercare.core.shedding.lattice import Lattice
from aftercare.core.shedding.numbers import Numbers
from aftercare.core.shedding.records import Ints, Records
from aftercare.core.shedding.renewal import Floats

NUDGE = 1e-4
PASSING = np.float32  # of passes: half the time and memory; logs are summed in full
OF_CLIENTS = ("cycle", "cycle_sd", "hazard", "hazard_sd")
OF_TURNS = ("turn", "turn_by", "turn_worse")


@dataclass(frozen=True, slots=True)
class Material:
    """Readings on a lattice, made ready once for many passes."""

    lattice: Lattice
    records: Records
    days: Ints  # the different days after which anything was read, and for each kind of reading its place among them
    place: Ints
    held: Floats  # (days, hazards)
    bias: Floats  # (kinds,): of the eye that made it
    emission: Ints  # (clients, sets): which of ``rows``, -1 none
    rows: Ints  # (rows, 2): kind of reading, class of lot
    shifts: Floats  # (classes,): what a lot of this class adds to the log hazard

    def left(self, spread: float) -> Floats:
        """Return what is left at each node when a reading of each kind is made: (kinds, cycles, hazards)."""
        kept = self.lattice.kept(self.days, spread)
        return np.asarray(kept[self.place][:, :, None] * self.held[self.place][:, None, :])

    def still(self, number: int) -> int:
        """Return how many clients have more than ``number`` sets: they stand first."""
        return int(np.count_nonzero(self.records.count > number))


def made_ready(lattice: Lattice, records: Records, shifts: Floats, bias: Floats) -> Material:
    """Return readings made ready; ``shifts`` has one number for each lot, ``bias`` one for each kind of reading."""
    different, classes = np.unique(np.round(shifts, 2), return_inverse=True)
    there = records.kind >= 0
    pairs = np.stack([records.kind[there], classes.reshape(-1)[records.lot[there]]], axis=1)
    rows, which = np.unique(pairs, axis=0, return_inverse=True)
    emission = np.full(records.kind.shape, -1)
    emission[there] = which.reshape(-1)
    days, place = np.unique(records.kinds.day, return_inverse=True)
    return Material(lattice, records, days, place.reshape(-1), lattice.held(days), bias, emission, rows, different)


def chances(material: Material, numbers: Numbers) -> Floats:
    """Return how likely each kind of reading is, for a set of exactly that hazard: (kinds, cycles, hazards)."""
    kinds = material.records.kinds
    left = material.left(made.spread(numbers))
    return made.eye(numbers).chance(left, kinds.share, kinds.step, material.bias)


def emissions(material: Material, chance: Floats, kernels: list[Floats]) -> Floats:
    """Return how likely each row's reading is for a client at each node, the luck of the set averaged over.

    (rows, cycles, hazards), from ``chance`` (kinds, cycles, hazards) and a kernel for each class of lot.
    """
    if len(kernels) == 1:
        return np.asarray(chance[material.rows[:, 0]] @ kernels[0].T)
    found = np.empty((len(material.rows), *material.lattice.shape))
    for number, kernel in enumerate(kernels):
        mine = material.rows[:, 1] == number
        found[mine] = chance[material.rows[mine, 0]] @ kernel.T
    return found


def kernels_of(material: Material, numbers: Numbers) -> list[Floats]:
    """Return the luck of one set for each class of lot: as many arrays (hazards, hazards), from hers to the set's."""
    return [made.luck(material.lattice, numbers, float(shift)) for shift in material.shifts]


@dataclass(frozen=True, slots=True)
class Passed:
    """A pass forward. Lists have one entry a set, of the clients who have one: clients stand in one order throughout.

    ``before`` is what was known of them before the set, ``during`` with its reading; ``after`` what is known of each
    client for her next set: all (clients, cycles, hazards), each client's sum 1. ``scale`` is how likely each reading
    was.
    """

    before: list[Floats]
    during: list[Floats]
    scale: list[Floats]
    after: Floats

    @property
    def log_likelihood(self) -> float:
        """The log of how likely all readings are together."""
        return float(sum(np.log(one.astype(float)).sum() for one in self.scale))


def forward(material: Material, found: Floats, start: Floats, move: Floats) -> Passed:
    """Go through every client's sets, oldest first."""
    known = np.repeat(start[None].astype(PASSING), len(material.records.count), axis=0)
    found, move = found.astype(PASSING), move.astype(PASSING)
    passed = Passed([], [], [], known)
    for number in range(material.emission.shape[1]):
        still = material.still(number)
        before = known[:still].copy()
        during = before * found[material.emission[:still, number]]
        scale = during.sum(axis=(1, 2))
        during /= scale[:, None, None]
        known[:still] = during @ move
        passed.before.append(before)
        passed.during.append(during)
        passed.scale.append(scale)
    return passed


def backward(material: Material, found: Floats, passed: Passed, move: Floats) -> tuple[list[Floats], Floats]:
    """Return the slopes of the log likelihood: by what was found at each set, and by the chances to move.

    One array (clients, cycles, hazards) a set, of the clients who have one; and (hazards, hazards).
    """
    slopes: list[Floats] = [np.zeros(0)] * len(passed.scale)
    found, move, by_move = found.astype(PASSING), move.astype(PASSING), np.zeros_like(move)
    later = np.ones((len(material.records.count), *material.lattice.shape), PASSING)
    for number in reversed(range(len(passed.scale))):
        still = material.still(number)
        weighted = later[:still] / passed.scale[number][:, None, None]
        slopes[number] = passed.before[number] * weighted
        if number:
            seen = weighted * found[material.emission[:still, number]]
            hazards = seen.shape[2]
            by_move += passed.during[number - 1][:still].reshape(-1, hazards).T @ seen.reshape(-1, hazards)
            later[:still] = seen @ move.T
    return slopes, by_move


def posterior(material: Material, numbers: Numbers) -> tuple[float, Floats]:
    """Return the log of the posterior density of ``numbers`` (but for a constant) and its slope by each of them."""
    lattice = material.lattice
    start, move = made.clients(lattice, numbers), made.turns(lattice, numbers)
    kernels, chance = kernels_of(material, numbers), chances(material, numbers)
    found = emissions(material, chance, kernels)
    passed = forward(material, found, start, move)
    slopes, by_move = backward(material, found, passed, move)
    by_rows = _by_rows(material, slopes)
    by_start = (slopes[0] * found[material.emission[: len(slopes[0]), 0]]).sum(axis=0) / np.maximum(start, 1e-300)
    by_chance, by_luck = _by_kernels(material, numbers, by_rows, chance, kernels)
    slope = {
        **_by_table(by_start, partial(made.clients, lattice), numbers, OF_CLIENTS),
        **_by_readings(material, numbers, by_chance),
        "luck": by_luck,
        **_by_table(by_move, partial(made.turns, lattice), numbers, OF_TURNS),
    }
    density, by_density = made.density(numbers)
    return passed.log_likelihood + density, np.array(Numbers(**slope)) + by_density


def _by_kernels(
    material: Material, numbers: Numbers, by_rows: Floats, chance: Floats, kernels: list[Floats]
) -> tuple[Floats, float]:
    """Carry the slope by what was found back to the chances of readings, and to the luck of sets."""
    by_chance, by_luck = np.zeros_like(chance), 0.0
    hazards = material.lattice.shape[1]
    for number, kernel in enumerate(kernels):
        mine = material.rows[:, 1] == number
        kinds = material.rows[mine, 0]
        by_chance[kinds] += by_rows[mine] @ kernel  # a kind of reading stands once in each class
        by_kernel = by_rows[mine].reshape(-1, hazards).T @ chance[kinds].reshape(-1, hazards)
        table = partial(made.luck, material.lattice, shift=float(material.shifts[number]))
        by_luck += _by_table(by_kernel, table, numbers, ("luck",))["luck"]
    return by_chance, by_luck


def _by_rows(material: Material, slopes: list[Floats]) -> Floats:
    """Return the slope of the log likelihood by each row of what can be found: sums over all sets that found it."""
    flat = np.concatenate([one.reshape(len(one), -1) for one in slopes])
    which = np.concatenate([material.emission[: len(one), number] for number, one in enumerate(slopes)])
    gather = csr_matrix((np.ones(len(which)), (which, np.arange(len(which)))), shape=(len(material.rows), len(which)))
    return np.asarray(gather.astype(PASSING) @ flat).astype(float).reshape(-1, *material.lattice.shape)


def _by_readings(material: Material, numbers: Numbers, by_chance: Floats) -> dict[str, float]:
    kinds, eye, spread = material.records.kinds, made.eye(numbers), made.spread(numbers)
    left = material.left(spread)
    slopes = eye.slopes(left, kinds.share, kinds.step, material.bias)
    kept = [material.lattice.kept(material.days, float(spread * np.exp(sign * NUDGE))) for sign in (1, -1)]
    by_kept = (by_chance * slopes.left * material.held[material.place][:, None, :]).sum(axis=2)
    return {
        "eye": float((by_chance * slopes.error).sum()),
        "wrong": float((by_chance * slopes.wrong).sum()),
        "spread": float((by_kept * ((kept[0] - kept[1]) / (2 * NUDGE))[material.place]).sum()),
    }


def _by_table(
    by: Floats, table: Callable[[Numbers], Floats], numbers: Numbers, names: Sequence[str]
) -> dict[str, float]:
    """Carry the slope by a small table back to the numbers that make it: central differences of the table."""
    slope: dict[str, float] = {}
    for name in names:
        at = getattr(numbers, name)
        more, less = (table(numbers._replace(**{name: at + sign * NUDGE})) for sign in (1, -1))
        slope[name] = float((by * (more - less)).sum() / (2 * NUDGE))
    return slope
