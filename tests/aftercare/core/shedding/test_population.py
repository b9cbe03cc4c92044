"""A population: what it says of lots and eyes, and its way through JSON."""

from __future__ import annotations

import json
from dataclasses import replace

import numpy as np
import pytest

from aftercare.core.shedding import Population, forecast
from aftercare.core.shedding.population import LOTS_DIFFER, Effect
from aftercare.core.shedding.records import Steps
from tests.aftercare.core.shedding.drawn import USUAL, World, draw

KNOWN = replace(
    World().known,
    unsure=((0.01, 0.004), (0.004, 0.02)),
    luck_unsure=0.3,
    lots={"lot 0": Effect(0.5, 0.1)},
    artists={"Ada": Effect(0.06, 0.01)},
    steps=Steps(0.05, {"Ada": 0.1}),
    clients=12,
    readings=40,
)


def test_it_is_the_same_after_its_way_through_json() -> None:
    again = Population.from_dict(json.loads(json.dumps(KNOWN.to_dict())))

    assert again == KNOWN
    hers = draw(World(lots=(1.0, 1.0), eyes=(("Ada", 0.0), ("", 0.0))), 20, 1).histories
    assert forecast(again, hers) == forecast(KNOWN, hers)


@pytest.mark.parametrize("missing", ["numbers", "unsure", "luck_unsure", "lots", "artists", "steps"])
def test_what_it_did_not_write_is_refused(missing: str) -> None:
    written = KNOWN.to_dict()
    del written[missing]

    with pytest.raises(KeyError, match=missing):
        Population.from_dict(written)


def test_numbers_of_another_model_are_refused() -> None:
    written = KNOWN.to_dict()
    written["numbers"]["season"] = 0.1

    with pytest.raises(TypeError, match="season"):
        Population.from_dict(written)


def test_of_a_lot_that_nobody_has_seen_yet_little_is_known_and_of_none_noted_nothing() -> None:
    assert KNOWN.lot("lot 0") == Effect(0.5, 0.1)
    assert KNOWN.lot("lot 9") == Effect(0.0, LOTS_DIFFER)
    assert KNOWN.lot("") == Effect(0.0, 0.0)


def test_an_eye_that_is_not_known_reads_as_the_others_do() -> None:
    assert (KNOWN.bias("Ada"), KNOWN.bias("Noor")) == (0.06, 0.0)


def test_the_spread_of_luck_is_the_root_of_its_mean_square() -> None:
    # E[exp(2 X)] of a normal X is exp(2 mean + 2 variance): the mean square of a lognormal.
    drawn = np.exp(USUAL.luck + 0.3 * np.random.default_rng(1).standard_normal(400_000))

    assert np.exp(KNOWN.luck.luck) == pytest.approx(float(np.sqrt((drawn**2).mean())), rel=3e-3)
