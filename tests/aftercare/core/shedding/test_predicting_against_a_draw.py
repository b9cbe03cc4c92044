"""One client's forecast, against many drawn from the model, each weighed by how likely she makes what was read."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.special import ndtr

from aftercare.core.shedding import History
from aftercare.core.shedding import numbers as made
from aftercare.core.shedding.numbers import TURN_SD, logistic
from aftercare.core.shedding.population import Effect
from aftercare.core.shedding.renewal import Floats
from tests.aftercare.core.shedding.drawn import USUAL, World, called_worn
from tests.aftercare.core.shedding.one_client import history, of


def drawn(hers: History, worn_for: int, shift: float, world: World) -> tuple[Floats, Floats, Floats]:
    """Return cycles and hazards of the worn set of many clients drawn from the model, and how likely each is."""
    chance, many, numbers = np.random.default_rng(11), 150_000, world.numbers
    zero, weight = np.zeros(many), np.ones(many)
    cycle = np.exp(numbers.cycle + np.exp(numbers.cycle_sd) * chance.standard_normal(many))
    own = numbers.hazard + np.exp(numbers.hazard_sd) * chance.standard_normal(many)

    def likely(days: int, share: float, hazard: Floats) -> Floats:
        left = world.left(np.full(many, float(days)), cycle, hazard, zero)
        eye = made.eye(numbers)
        high = np.inf if share > 0.99 else share + 0.025
        low = -np.inf if share < 0.01 else share - 0.025
        return np.asarray(
            (1 - eye.wrong) * (ndtr((high - left) / eye.error) - ndtr((low - left) / eye.error)) + eye.wrong / 21
        )

    for one in hers.past:
        luck = np.exp(numbers.luck) * chance.standard_normal(many)
        weight *= likely((one.seen[0].on - one.on).days, one.seen[0].share, np.exp(own + luck))
        worse = np.where(chance.random(many) < logistic(numbers.turn_worse), 1, -1)
        turn = worse * np.exp(numbers.turn_by) + TURN_SD * chance.standard_normal(many)
        own = own + np.where(chance.random(many) < logistic(numbers.turn), turn, 0)
    hazard = np.exp(own + shift + np.exp(numbers.luck) * chance.standard_normal(many))
    assert hers.worn is not None
    for seen in hers.worn.seen:
        weight *= likely((seen.on - hers.worn.on).days, seen.share, hazard)
    if worn_for:
        weight *= called_worn(world.left(np.full(many, float(worn_for)), cycle, hazard, zero))
    return cycle, hazard, weight


@pytest.mark.parametrize(
    ("hers", "worn_for", "shift"),
    [
        (history(), 0, 0.0),
        (history((21, 0.55)), 0, 0.0),
        (history((21, 0.7), (18, 0.75), (25, 0.65), (21, 0.7)), 0, 0.0),
        (history((21, 0.6), (21, 0.65), (21, 0.3), (20, 0.35)), 0, 0.0),  # turned, it seems
        (history((21, 0.6), (21, 0.05), (21, 0.6)), 0, 0.0),  # one reading plainly wrong
        (history((21, 0.6), (21, 0.65), worn=((10, 0.7),)), 0, 0.0),
        (history((21, 0.6)), 40, 0.0),
        (history((21, 0.6), (21, 0.65), lot="bad"), 0, 0.6),
    ],
)
def test_quantiles_are_those_of_a_draw_from_the_model(hers: History, worn_for: int, shift: float) -> None:
    world = World(USUAL._replace(turn=-1.0))  # many turn, or else too few of those drawn would be like her
    cycle, hazard, weight = drawn(hers, worn_for, shift, world)
    weight /= weight.sum()
    error = 3 * float(np.sqrt((weight**2).sum()))  # of a draw whose members do not count alike

    def near(chance: float) -> float:
        return 0.025 + error * float(np.sqrt(chance * (1 - chance)))  # 2.5 points: the lattice is coarse

    found = of(hers, replace(world.known, lots={"bad": Effect(shift, 0.0)}), worn_for)

    for level in (0.6, 0.4):
        mine = found.days[level]
        for day, chance in ((mine.low, 0.1), (mine.middle, 0.5), (mine.high, 0.9)):
            below = world.left(np.full(len(weight), day), cycle, hazard, np.zeros(len(weight))) <= level
            assert float(weight[below].sum()) == pytest.approx(chance, abs=near(chance))
    assert found.curve is not None
    at = found.curve.days.index(20)
    left = world.left(np.full(len(weight), 20.0), cycle, hazard, np.zeros(len(weight)))
    shares = (found.curve.low[at], found.curve.middle[at], found.curve.high[at])
    for share, chance in zip(shares, (0.1, 0.5, 0.9), strict=True):
        assert float(weight[left <= share].sum()) == pytest.approx(chance, abs=near(chance))


def test_the_loss_by_cause_is_that_of_a_draw_from_the_model() -> None:
    hers, world = history((21, 0.55), (20, 0.5)), World()
    cycle, hazard, weight = drawn(hers, 0, 0.0, world)
    found = of(hers).loss
    assert found is not None

    some = np.random.default_rng(1).choice(len(weight), 4_000, p=weight / weight.sum())
    at = np.linspace(0, found.day, 121)[:, None]
    left = world.left(at, cycle[some], hazard[some], np.zeros(len(some)))
    bonds = np.trapezoid(hazard[some] * left, at, axis=0)  # of what is left, the hazard takes its part
    shed = 1 - left[-1] - bonds

    for mine, true in ((found.shed, shed), (found.bonds, bonds)):
        assert [mine.low, mine.middle, mine.high] == pytest.approx(np.quantile(true, [0.1, 0.5, 0.9]), abs=0.01)
