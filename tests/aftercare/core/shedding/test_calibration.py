"""Simulation-based calibration: in the model's own worlds, the truth lies anywhere in its forecast equally often.

Source of the method: Talts, Betancourt, Simpson, Vehtari and Gelman, arXiv:1804.06788; from memory.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import numpy as np
import pytest
from scipy import stats

from aftercare.core.shedding import Forecaster, History, Seen, fit, forecast
from aftercare.core.shedding.numbers import BEFORE, BEFORE_SD, Numbers
from aftercare.core.shedding.renewal import Floats
from tests.aftercare.core.shedding.drawn import USUAL, World, called_worn, draw, written
from tests.aftercare.core.shedding.drawn_scores import ranks

BINS = 10
TODAY = date(2030, 1, 1)


def even(found: Floats) -> float:
    """Return how likely ranks as uneven as these are, were they even: a chi-square test on ten bins."""
    counts, _edges = np.histogram(found, BINS, (0, 1))
    return float(stats.chisquare(counts).pvalue)


@pytest.mark.parametrize("level", [0.6, 0.4])
@pytest.mark.parametrize(
    "numbers",
    [
        USUAL,
        USUAL._replace(turn=-1.5, turn_worse=1.5),
        USUAL._replace(cycle=5.2, hazard=-5.2, luck=-0.7, eye=-2.6, wrong=-2.4),
    ],
    ids=["usual", "many turn", "long cycles, unruly sets, poor eyes"],
)
def test_the_truth_lies_anywhere_in_its_forecast_equally_often(numbers: Numbers, level: float) -> None:
    drawn = draw(World(numbers), 2_000, 1)
    forecaster = Forecaster(drawn.world.known)

    assert even(ranks(forecaster, drawn, level, forecaster.weights(drawn.histories, None))) > 1e-3


def test_so_it_does_when_the_worn_set_was_seen_and_is_still_worn() -> None:
    drawn = draw(World(), 3_000, 2)
    forecaster, chance = Forecaster(drawn.world.known), np.random.default_rng(3)
    seen, worn = drawn.left(10), drawn.left(20)
    shares, _artist = written(drawn.world, seen, chance)
    still = chance.random(len(worn)) < called_worn(worn)

    hers = [_now(one, float(share)) for one, share in zip(drawn.histories, shares, strict=True)]
    weights = forecaster.weights(hers, TODAY)

    assert even(ranks(forecaster, drawn, 0.4, weights)[still]) > 1e-3


def _now(hers: History, share: float) -> History:
    """Her set was put on twenty days before TODAY and seen after ten."""
    assert hers.worn is not None
    on = TODAY - timedelta(20)
    return replace(hers, worn=replace(hers.worn, on=on, seen=(Seen(on + timedelta(10), round(share, 2)),)))


@pytest.mark.parametrize("step", [0.05, 0.1])
def test_the_band_of_what_is_written_down_holds_eighty_in_a_hundred_readings(step: float) -> None:
    drawn = draw(World(step=step), 1_000, 4)
    curves = [one.curve for one in forecast(drawn.world.known, drawn.histories) if one.curve is not None]

    for number, day in enumerate((10, 20, 30)):
        shares, _artist = written(drawn.world, drawn.left(day), np.random.default_rng(number))
        at = curves[0].days.index(day)
        low, high = np.array([(one.read_low[at], one.read_high[at]) for one in curves]).T
        assert float(((low <= shares) & (shares <= high)).mean()) == pytest.approx(0.8, abs=0.035), day


def test_a_forecaster_too_sure_of_himself_is_found_out() -> None:
    drawn = draw(World(), 2_000, 1)
    too_sure = Forecaster(replace(drawn.world.known, numbers=USUAL._replace(luck=-2.3, eye=-3.6)))

    assert even(ranks(too_sure, drawn, 0.6, too_sure.weights(drawn.histories, None))) < 1e-6


def test_studios_of_thirty_clients_drawn_from_what_is_believed_are_forecast_with_honest_bands() -> None:
    """The population is learned from the thirty themselves. Clients of one studio are alike, so no chi-square here."""
    chance, found = np.random.default_rng(5), []
    for number in range(20):
        numbers = Numbers(*(np.array(BEFORE) + np.array(BEFORE_SD) * chance.standard_normal(len(BEFORE))))
        drawn = draw(World(numbers), 30, 1000 + number)
        forecaster = Forecaster(fit(drawn.histories))
        found.append(ranks(forecaster, drawn, 0.4, forecaster.weights(drawn.histories, None)))

    covered = float(np.mean([((one > 0.1) & (one < 0.9)).mean() for one in found]))
    counts, _edges = np.histogram(np.concatenate(found), 5, (0, 1))
    assert covered == pytest.approx(0.8, abs=0.05)
    assert counts / counts.sum() == pytest.approx(np.full(5, 0.2), abs=0.06)
