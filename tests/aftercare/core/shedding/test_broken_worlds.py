"""Worlds that the model knows nothing of: forecasts get worse gently, and their bands say so.

Errors are of the median days, beside those in the undisturbed world; the limits are what was found, and a little more.
"""

from __future__ import annotations

from functools import cache

import pytest

from aftercare.core.shedding import Population, fit
from tests.aftercare.core.shedding.drawn import Drawn, World, draw
from tests.aftercare.core.shedding.drawn_scores import Scored, scored

UNDISTURBED = World()
MILD, STRONG = World(season=0.2), World(season=0.4)
QUARTERS = World(step=0.25)
ONE_OF_FOUR = World(eyes=(("", 0.08), ("", 0.0), ("", 0.0), ("", 0.0)))  # nobody says who read
ALL_HIGH = World(eyes=(("", 0.08),))


@cache
def learned(world: World) -> tuple[Drawn, Population]:
    hers = draw(world, 400, 1)
    return hers, fit(hers.histories)


def found(world: World, level: float, truth: float | None = None) -> Scored:
    hers, population = learned(world)
    return scored(population, hers, level, truth)


@pytest.mark.parametrize(
    ("world", "level", "worse", "wider", "covered"),
    [
        # Lashes shed 1.5 times as fast in October as in April.
        pytest.param(MILD, 0.6, 1.25, 1.05, 0.72, id="mild seasons"),
        pytest.param(MILD, 0.4, 1.35, 1.05, 0.70, id="mild seasons, far ahead"),
        # 2.3 times: on the scalp the autumn's shedding more than doubled (Randall and Ebling, Br J Dermatol
        # 1991;124:146, as quoted elsewhere); no data of lashes were found.
        pytest.param(STRONG, 0.6, 1.6, 1.3, 0.72, id="seasons as on the scalp"),
        pytest.param(STRONG, 0.4, 1.8, 1.3, 0.68, id="seasons as on the scalp, far ahead"),
        pytest.param(QUARTERS, 0.6, 1.25, 1.1, 0.75, id="read in quarters"),
        pytest.param(QUARTERS, 0.4, 1.25, 1.1, 0.75, id="read in quarters, far ahead"),
        pytest.param(ONE_OF_FOUR, 0.6, 1.2, 1.0, 0.70, id="one eye of four reads eight points high"),
        pytest.param(ONE_OF_FOUR, 0.4, 1.2, 1.0, 0.70, id="one eye of four reads eight points high, far ahead"),
    ],
)
def test_what_is_not_in_the_model_makes_forecasts_worse_gently_and_their_bands_wider(
    world: World, level: float, worse: float, wider: float, covered: float
) -> None:
    undisturbed, disturbed = found(UNDISTURBED, level), found(world, level)

    assert disturbed.error < worse * undisturbed.error
    assert disturbed.width > wider * undisturbed.width
    assert disturbed.covered > covered


@pytest.mark.parametrize("level", [0.6, 0.4])
def test_a_studio_that_learns_is_nearer_than_one_that_trusts_numbers_without_the_season(level: float) -> None:
    hers, _population = learned(STRONG)

    trusting = scored(UNDISTURBED.known, hers, level)

    assert found(STRONG, level).error < trusting.error
    assert found(STRONG, level).covered > trusting.covered


@pytest.mark.parametrize("level", [0.6, 0.4])
def test_eyes_that_all_read_high_forecast_what_these_eyes_will_call_the_level(level: float) -> None:
    """That all of them are off cannot be told from readings: the true level is missed by what they are off, and a set
    that such a studio calls 60 % full is forecast as well as any other."""
    undisturbed, as_read, truly = (
        found(UNDISTURBED, level),
        found(ALL_HIGH, level, level - 0.08),
        found(ALL_HIGH, level),
    )

    assert as_read.error < 1.3 * undisturbed.error
    assert as_read.covered > 0.72
    assert truly.error > 1.5 * as_read.error


def test_readings_in_quarters_are_known_for_what_they_are() -> None:
    _hers, population = learned(QUARTERS)

    assert population.steps.studio == 0.25
    assert population.numbers.eye == pytest.approx(UNDISTURBED.numbers.eye, abs=0.25)
