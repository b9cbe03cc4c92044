"""From readings to the studio: its numbers, lots and eyes, found again in clients drawn from known ones."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from functools import cache

import numpy as np
import pytest

from aftercare.core.shedding import History, Population, Seen, fit
from aftercare.core.shedding import fitting as module
from aftercare.core.shedding.numbers import BEFORE_SD
from tests.aftercare.core.shedding.drawn import USUAL, Drawn, World, draw
from tests.aftercare.core.shedding.drawn_scores import nobody_says_which_lot, nobody_says_who, scored

CLIENTS = 400
LOTS = World(lots=(1.8, 1.0, 1.0, 1.0, 1.0))
EYES = World(eyes=(("Ada", 0.08), ("Noor", 0.0), ("Ben", 0.0), ("Cleo", 0.0)))


@cache
def drawn(world: World) -> Drawn:
    return draw(world, CLIENTS, 1)


@cache
def fitted(world: World) -> Population:
    return fit(drawn(world).histories)


@cache
def blind_to_eyes() -> tuple[list[History], Population]:
    hers = nobody_says_who(drawn(EYES).histories)
    return hers, fit(hers)


# The studio's own numbers.


def test_the_medians_are_found_within_what_is_said_of_them() -> None:
    found = fitted(World())

    error = np.sqrt(np.diag(found.covariance))
    assert abs(found.numbers.cycle - USUAL.cycle) < 3 * error[0]
    assert abs(found.numbers.hazard - USUAL.hazard) < 3 * error[1]
    assert error[0] < BEFORE_SD.cycle / 3
    assert error[1] < BEFORE_SD.hazard / 3
    # A faster cycle looks like weaker bonds: what is unsure of the one is unsure of the other.
    assert found.covariance[0, 1] / error.prod() > 0.5


@pytest.mark.parametrize(
    ("name", "within"),
    [("cycle_sd", 0.3), ("hazard_sd", 0.25), ("luck", 0.3), ("eye", 0.1), ("wrong", 0.6), ("turn", 1.0)],
)
def test_spreads_and_eyes_are_found(name: str, within: float) -> None:
    assert getattr(fitted(World()).numbers, name) == pytest.approx(getattr(USUAL, name), abs=within)


def test_an_eye_twice_as_poor_is_told_from_a_good_one() -> None:
    world = World(USUAL._replace(eye=float(np.log(0.1))))

    assert fitted(world).numbers.eye == pytest.approx(np.log(0.1), abs=0.15)


@pytest.mark.parametrize("step", [0.1, 0.05])
def test_the_studio_s_step_is_found(step: float) -> None:
    assert fitted(World(step=step)).steps.studio == step


def test_what_was_read_is_counted() -> None:
    found, hers = fitted(World()), drawn(World()).histories

    assert found.readings == sum(len(one.past) for one in hers)
    assert found.clients == sum(bool(one.past) for one in hers)


def test_forecasts_from_what_was_found_are_all_but_as_near_as_from_the_truth() -> None:
    hers = drawn(World())

    found, best = (scored(population, hers, 0.4) for population in (fitted(World()), hers.world.known))

    assert found.error < 1.03 * best.error
    assert found.covered == pytest.approx(best.covered, abs=0.05)


def test_more_readings_make_the_studio_s_numbers_surer() -> None:
    few = fit(drawn(World()).histories[:40])

    assert (np.diag(fitted(World()).covariance) < np.diag(few.covariance)).all()
    assert (np.diag(few.covariance) < np.diag(Population.prior().covariance)).all()


# Nothing, and little.


@pytest.mark.parametrize(
    "hers", [[], [History("Mia")], [replace(one, past=()) for one in drawn(World()).histories[:5]]]
)
def test_who_was_never_read_says_nothing(hers: list[History]) -> None:
    assert fit(hers) == Population.prior()


def test_one_reading_moves_what_is_believed_a_little() -> None:
    prior = Population.prior()
    [one] = [one for one in drawn(World()).histories if len(one.past) == 1][:1]
    day = one.past[0].on

    def with_share(share: float) -> Population:
        read = replace(one.past[0], seen=(Seen(day + timedelta(14), share),))
        return fit([replace(one, past=(read,))])

    worse, better = with_share(0.2), with_share(0.9)

    assert worse.numbers.hazard > prior.numbers.hazard > better.numbers.hazard
    for found in (worse, better):
        assert abs(found.numbers.hazard - prior.numbers.hazard) < BEFORE_SD.hazard
        assert (found.clients, found.readings) == (1, 1)


def test_a_studio_of_thirty_is_forecast_nearly_as_by_one_who_knows_its_numbers() -> None:
    ours, best, covered = [], [], []
    for seed in range(5):
        small = draw(World(), 30, 100 + seed)
        mine = scored(fit(small.histories), small, 0.6)
        ours.append(mine.error)
        covered.append(mine.covered)
        best.append(scored(small.world.known, small, 0.6).error)

    assert np.mean(ours) < 1.12 * np.mean(best)
    assert 0.75 < np.mean(covered) < 0.95


# Lots and eyes.


def test_one_bad_lot_of_five_is_found() -> None:
    found = fitted(LOTS).lots

    assert set(found) == {f"lot {number}" for number in range(5)}
    others = float(np.mean([found[f"lot {number}"].mean for number in range(1, 5)]))
    assert found["lot 0"].mean - others == pytest.approx(np.log(1.8), abs=0.1)
    for number in range(1, 5):
        assert found[f"lot {number}"].mean == pytest.approx(others, abs=0.1)


def test_knowing_the_lots_brings_forecasts_nearer() -> None:
    hers = drawn(LOTS)
    blind = nobody_says_which_lot(hers.histories)

    seeing, unseeing = scored(fitted(LOTS), hers, 0.6), scored(fit(blind), hers, 0.6, hers=blind)

    assert seeing.error < 0.93 * unseeing.error


def test_lots_that_are_all_alike_are_found_alike() -> None:
    found = fitted(World(lots=(1.0, 1.0, 1.0, 1.0))).lots

    assert max(abs(one.mean) for one in found.values()) < 0.08


def test_one_artist_of_four_who_reads_high_is_found() -> None:
    found = fitted(EYES).artists

    others = [found[name].mean for name in ("Noor", "Ben", "Cleo")]
    assert found["Ada"].mean - float(np.mean(others)) == pytest.approx(0.08, abs=0.02)
    assert np.ptp(others) < 0.02
    # Only how they differ can be told, so that they are none on the whole.
    assert found["Ada"].mean + sum(others) == pytest.approx(0, abs=0.01)


@pytest.mark.parametrize("level", [0.6, 0.4])
def test_knowing_who_read_brings_forecasts_nearer(level: float) -> None:
    hers = drawn(EYES)
    blind, population = blind_to_eyes()

    seeing, unseeing = scored(fitted(EYES), hers, level), scored(population, hers, level, hers=blind)

    assert seeing.error < 0.995 * unseeing.error


def test_who_has_read_too_little_is_not_judged() -> None:
    world = World(eyes=(("Ada", 0.0), ("Noor", 0.1)))
    few = draw(world, 10, 3).histories

    counts = [
        sum(seen.artist == name for one in few for past in one.past for seen in past.seen) for name in ("Ada", "Noor")
    ]
    assert max(counts) < module.ENOUGH_OF_AN_EYE
    assert not fit(few).artists
