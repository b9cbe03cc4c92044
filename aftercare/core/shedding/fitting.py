"""From a studio's readings to its population.

The numbers are those of the highest posterior density (empirical Bayes under wide priors), found by steps along the
exact slope; then what each lot and each eye does beside them, from what all other readings of those clients let expect.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

import numpy as np
import scipy  # of which each part is loaded as it is first used

from aftercare.core.shedding import numbers as made
from aftercare.core.shedding.lattice import Lattice
from aftercare.core.shedding.likelihood import (
    Material,
    backward,
    chances,
    emissions,
    forward,
    kernels_of,
    made_ready,
    posterior,
)
from aftercare.core.shedding.numbers import Numbers
from aftercare.core.shedding.population import LOTS_DIFFER, Effect, Population
from aftercare.core.shedding.records import Records, Steps, pack, seen_sets
from aftercare.core.shedding.renewal import Floats
from aftercare.core.shedding.values import History, LashSet

# Clients from whom the numbers are learned, roughly and then finely: more would add next to nothing.
FIRST, SECOND = 150, 1500
FOR_DOUBT, NUDGE = 400, 0.05  # clients who show how sure the numbers are; and how far off they are tried, in prior sds
FOR_EFFECTS = 3000  # clients from whom lots and eyes are learned
ROUGH, FINE = (9, 26), (9, 26)
LOT_SHIFTS = np.arange(-1.05, 1.3, 0.15)
EYE_SHIFTS = np.arange(-0.15, 0.16, 0.03)
BAD_LOTS, BAD_LOT_SD = 0.1, 0.5  # a lot can be bad, as one in ten may be; no source
EYES_DIFFER = 0.04
NEAR, MOST_STEPS = 0.5, 30  # of the slope, in nats a prior standard deviation: nearer makes no difference to a forecast
ENOUGH_OF_AN_EYE = 30  # readings


def fit(histories: Sequence[History]) -> Population:
    """Return the population that these clients' readings show.

    Clients without a reading say nothing. The same histories in the same order give the same population.
    """
    hers = [sets for sets in map(seen_sets, histories) if sets]
    if not hers:
        return Population.prior()
    steps = Steps.of(hers)
    found = replace(
        Population.prior(), steps=steps, clients=len(hers), readings=sum(len(one.seen) for sets in hers for one in sets)
    )
    # Roughly first, from few: what is learned there of the density's shape makes the steps among all few.
    found, shape = _climb(_some(hers, FIRST), found, Lattice(shape=ROUGH), np.eye(len(Numbers._fields)))
    found, shape = _finely(hers, found, shape * min(len(hers), FIRST) / min(len(hers), SECOND))
    with_effects = _with_effects(_some(hers, FOR_EFFECTS), found)
    if _matters(with_effects):  # then the numbers had to explain what was a lot's or an eye's doing
        found, shape = _finely(hers, with_effects, shape)
        with_effects = _with_effects(_some(hers, FOR_EFFECTS), found)
    return _with_doubt(hers, with_effects)


def _some(hers: list[tuple[LashSet, ...]], most: int) -> list[tuple[LashSet, ...]]:
    """Return at most so many of them, evenly spread over the list."""
    if len(hers) <= most:
        return hers
    return [hers[index] for index in np.linspace(0, len(hers) - 1, most).astype(int)]


def ready(records: Records, population: Population, lattice: Lattice) -> Material:
    """Return packed readings made ready with what is known of their lots and of the eyes that made them."""
    shifts = np.array([population.lot(name).mean for name in records.lots])
    bias = np.array([population.bias(name) for name in records.kinds.artist])
    return made_ready(lattice, records, shifts, bias)


def _finely(hers: list[tuple[LashSet, ...]], found: Population, shape: Floats) -> tuple[Population, Floats]:
    return _climb(_some(hers, SECOND), found, made.lattice_around(found.numbers, FINE), shape)


def _climb(
    hers: list[tuple[LashSet, ...]], found: Population, lattice: Lattice, shape: Floats
) -> tuple[Population, Floats]:
    """Go to the numbers of highest density; ``shape`` is the inverse of its curvature, as far as known, in prior sds.

    Returns the population with them, and the shape as it is known now.
    """
    material = ready(pack(hers, found.steps), found, lattice)
    scale, start = np.array(made.BEFORE_SD), np.array(found.numbers)

    def downhill(at: Floats) -> tuple[float, Floats]:
        value, slope = posterior(material, Numbers(*(start + at * scale)))
        return -value, -slope * scale

    options = {"gtol": NEAR, "maxiter": MOST_STEPS, "hess_inv0": (shape + shape.T) / 2}
    end = scipy.optimize.minimize(downhill, np.zeros(len(start)), jac=True, method="BFGS", options=options)
    return replace(found, numbers=Numbers(*(start + end.x * scale).tolist())), end.hess_inv


def _with_effects(hers: list[tuple[LashSet, ...]], found: Population) -> Population:
    records = pack(hers, found.steps)
    material = ready(records, found, made.lattice_around(found.numbers, FINE))
    has_lots = any(records.lots)
    eyes = _eyes(records)
    if not has_lots and len(eyes) < 2:
        return found
    cavity, kind, lot = _cavities(material, found.numbers)
    if has_lots:
        found = replace(found, lots=_lots(material, found, cavity, kind, lot))
    if len(eyes) > 1:
        found = replace(found, artists=_artists(material, found, cavity, kind, eyes))
    return found


def _eyes(records: Records) -> dict[str, int]:
    """Return the artists who have read enough to be told from the others, with how many readings."""
    counts: dict[str, int] = {}
    for kind in records.kind[records.kind >= 0]:
        artist = records.kinds.artist[kind]
        counts[artist] = counts.get(artist, 0) + 1
    return {artist: count for artist, count in counts.items() if artist and count >= ENOUGH_OF_AN_EYE}


def _cavities(material: Material, numbers: Numbers) -> tuple[Floats, Floats, Floats]:
    """Return for each set what all other readings of its client let expect of her, its kind of reading and its lot."""
    found = emissions(material, chances(material, numbers), kernels_of(material, numbers))
    move = made.turns(material.lattice, numbers)
    passed = forward(material, found, made.clients(material.lattice, numbers), move)
    slopes, _by_move = backward(material, found, passed, move)
    counts = [len(one) for one in slopes]
    kind = np.concatenate([material.records.kind[:still, number] for number, still in enumerate(counts)])
    lot = np.concatenate([material.records.lot[:still, number] for number, still in enumerate(counts)])
    return np.concatenate(slopes), kind, lot


def _lots(material: Material, found: Population, cavity: Floats, kind: Floats, lot: Floats) -> dict[str, Effect]:
    """Weigh shifts of the log hazard, lot by lot, by how likely they make its sets' readings."""
    chance = chances(material, found.numbers)
    evidence = np.empty((len(LOT_SHIFTS), len(kind)))
    for number, shift in enumerate(LOT_SHIFTS):
        seen = chance @ made.luck(material.lattice, found.numbers, float(shift)).T
        evidence[number] = np.einsum("nch,nch->n", cavity, seen[kind])
    logs = np.log(np.maximum(evidence, 1e-300))
    return {
        name: _weighed(LOT_SHIFTS, logs[:, lot == number].sum(axis=1), _of_a_lot)
        for number, name in enumerate(material.records.lots)
        if name and (lot == number).any()
    }


def _of_a_lot(shift: Floats) -> Floats:
    usual = (1 - BAD_LOTS) / LOTS_DIFFER * np.exp(-((shift / LOTS_DIFFER) ** 2) / 2)
    return np.asarray(np.log(usual + BAD_LOTS / BAD_LOT_SD * np.exp(-((shift / BAD_LOT_SD) ** 2) / 2)))


def _artists(
    material: Material, found: Population, cavity: Floats, kind: Floats, eyes: dict[str, int]
) -> dict[str, Effect]:
    """Weigh biases, eye by eye; only how eyes differ can be told, so that their mean is none."""
    kernel = made.luck(material.lattice, found.numbers)
    artists = np.array(material.records.kinds.artist, dtype=object)[kind]
    evidence = np.empty((len(EYE_SHIFTS), len(kind)))
    for number, shift in enumerate(EYE_SHIFTS):
        seen = chances(replace(material, bias=np.full_like(material.bias, shift)), found.numbers) @ kernel.T
        evidence[number] = np.einsum("nch,nch->n", cavity, seen[kind])
    logs = np.log(np.maximum(evidence, 1e-300))
    effects = {name: _weighed(EYE_SHIFTS, logs[:, artists == name].sum(axis=1), _of_an_eye) for name in eyes}
    mean = sum(effects[name].mean * count for name, count in eyes.items()) / sum(eyes.values())
    return {name: Effect(one.mean - mean, one.sd) for name, one in effects.items()}


def _of_an_eye(shift: Floats) -> Floats:
    return np.asarray(-((shift / EYES_DIFFER) ** 2) / 2)


def _weighed(at: Floats, logs: Floats, prior: Callable[[Floats], Floats]) -> Effect:
    fine = np.linspace(at[0], at[-1], 471)
    weight = scipy.interpolate.CubicSpline(at, logs)(fine) + prior(fine)
    share = np.exp(weight - weight.max())
    share /= share.sum()
    mean = float(share @ fine)
    return Effect(mean, float(np.sqrt(share @ (fine - mean) ** 2)))


def _matters(found: Population) -> bool:
    return any(abs(one.mean) > 0.1 for one in found.lots.values()) or any(
        abs(one.mean) > 0.01 for one in found.artists.values()
    )


def _with_doubt(hers: list[tuple[LashSet, ...]], found: Population) -> Population:
    """Note how unsure the numbers are: the inverse of the curvature of their density, as if all clients were asked.

    Medians of cycle and hazard hang together (a faster cycle looks like weaker bonds), so that each is as unsure as it
    is with all the others free.
    """
    some = _some(hers, FOR_DOUBT)
    material = ready(pack(some, found.steps), found, made.lattice_around(found.numbers, FINE))
    scale, at = np.array(made.BEFORE_SD), np.array(found.numbers)
    slopes = [posterior(material, found.numbers)[1]]
    slopes += [posterior(material, Numbers(*(at + step * scale)))[1] for step in NUDGE * np.eye(len(at))]
    curvature = -(np.array(slopes[1:]) - slopes[0]) / NUDGE * scale  # in prior sds, so that theirs is 1
    values, vectors = np.linalg.eigh((curvature + curvature.T) / 2 - np.eye(len(at)))
    learned = np.maximum(values, 0) * len(hers) / len(some)
    doubt = (vectors @ np.diag(1 / (1 + learned)) @ vectors.T) * np.outer(scale, scale)
    cycle, hazard, luck = (Numbers._fields.index(name) for name in ("cycle", "hazard", "luck"))
    between = float(doubt[cycle, hazard])
    return replace(
        found,
        unsure=((float(doubt[cycle, cycle]), between), (between, float(doubt[hazard, hazard]))),
        luck_unsure=float(np.sqrt(doubt[luck, luck])),
    )
