"""One client's forecast: what must hold of any."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aftercare.core.shedding import Forecaster, History, LashSet, Seen, fit, forecast
from aftercare.core.shedding.population import Effect
from tests.aftercare.core.shedding.drawn import USUAL, World, draw
from tests.aftercare.core.shedding.one_client import DAY, FORECASTER, KNOWN, Read, history, of

READS = st.tuples(st.integers(10, 35), st.integers(0, 20).map(lambda step: step / 20))
LIKELY = st.tuples(st.integers(14, 28), st.integers(6, 16).map(lambda step: step / 20))


@settings(max_examples=25, deadline=None)
@given(past=st.lists(READS, max_size=6), seen=st.none() | READS, worn_for=st.integers(0, 60))
def test_a_curve_falls_inside_its_band_whatever_was_read(past: list[Read], seen: Read | None, worn_for: int) -> None:
    found = of(history(*past, worn=(seen,) if seen else ()), worn_for=worn_for)

    early, late = found.days[0.6], found.days[0.4]
    for days in (early, late):
        assert 0 < days.low < days.middle < days.high
    assert early.low < late.low
    assert early.middle < late.middle
    assert early.high < late.high
    curve, loss = found.curve, found.loss
    assert curve is not None
    assert loss is not None
    for line in (curve.low, curve.middle, curve.high):
        assert line[0] == 1
        assert min(line) >= 0
        assert max(np.diff(line)) <= 0
    for low, middle, high, read_low, read_high in zip(
        curve.low, curve.middle, curve.high, curve.read_low, curve.read_high, strict=True
    ):
        assert 0 <= read_low <= low <= middle <= high <= read_high <= 1
    for part in (loss.shed, loss.bonds):
        assert 0 <= part.low <= part.middle <= part.high <= 1


@settings(max_examples=25, deadline=None)
@given(past=st.lists(READS, min_size=1, max_size=4), which=st.integers(0, 3))
def test_the_middle_of_the_curve_meets_each_level_on_its_day(past: list[Read], which: int) -> None:
    found = of(history(*past))
    curve = found.curve
    assert curve is not None
    level = (0.6, 0.4)[which % 2]

    day = found.days[level].middle

    if day < curve.days[-1]:
        assert float(np.interp(day, curve.days, curve.middle)) == pytest.approx(level, abs=0.012)


@settings(max_examples=25, deadline=None)
@given(past=st.lists(LIKELY, max_size=3), day=st.integers(14, 28), worn=st.booleans())
def test_less_seen_never_gives_a_later_day(past: list[Read], day: int, worn: bool) -> None:
    """Where nothing is taken for a slip or a turn, and what was read can all be true."""
    days = []
    for share in np.arange(0.3, 0.81, 0.05):
        last = (day, round(float(share), 2))
        hers = history(*past, worn=(last,)) if worn else history(*past, last)
        days.append(forecast(SURE, [hers], curves=False, forecaster=SURE_FORECASTER)[0].days[0.4].middle)

    assert min(np.diff(days)) > -1e-6


SURE = replace(KNOWN, numbers=USUAL._replace(wrong=-60.0, turn=-60.0))
SURE_FORECASTER = Forecaster(SURE)


# What is known of the worn set.


def test_what_was_seen_of_the_worn_set_narrows_its_forecast() -> None:
    before, after = of(history((21, 0.6), (21, 0.6))), of(history((21, 0.6), (21, 0.6), worn=((14, 0.6),)))

    assert after.days[0.4].middle < before.days[0.4].middle
    assert after.days[0.4].high - after.days[0.4].low < before.days[0.4].high - before.days[0.4].low


@pytest.mark.parametrize("worn_for", [25, 40, 60])
def test_a_set_still_worn_is_not_forecast_as_if_new(worn_for: int) -> None:
    new, still = of(history((20, 0.2))), of(history((20, 0.2)), worn_for=worn_for)

    assert still.days[0.4].middle > new.days[0.4].middle
    assert still.days[0.4].low >= new.days[0.4].low
    assert still.curve is not None
    assert new.curve is not None
    assert still.curve.high[worn_for // 2] > new.curve.high[worn_for // 2]


def test_a_set_put_on_today_and_one_of_which_nothing_is_said_are_alike() -> None:
    assert of(history((20, 0.5)), worn_for=0) == of(history((20, 0.5)))


def test_a_bad_lot_moves_the_forecast_of_a_set_that_is_on() -> None:
    population = replace(KNOWN, lots={"bad": Effect(0.6, 0.05), "good": Effect(-0.2, 0.05)})

    bad, usual, good = (of(history((21, 0.6), lot=lot), population).days[0.6] for lot in ("bad", "", "good"))

    assert bad.middle < usual.middle - 3
    assert good.middle > usual.middle


def test_a_lot_that_is_new_to_the_studio_is_a_little_less_sure() -> None:
    known, new = of(history((21, 0.6), lot="")).days[0.6], of(history((21, 0.6), lot="new")).days[0.6]

    assert new.high - new.low > known.high - known.low


def test_an_eye_that_reads_high_is_read_lower() -> None:
    population = replace(KNOWN, artists={"Ada": Effect(0.08, 0.01)})
    read = LashSet(DAY, "", (Seen(DAY + timedelta(21), 0.6, "Ada"),))
    hers = History("Mia", (read,), LashSet(DAY + timedelta(21)))

    assert of(hers, population).days[0.4].middle < of(hers).days[0.4].middle - 1


def test_a_set_that_has_ended_unseen_says_nothing() -> None:
    unseen = LashSet(DAY - timedelta(30), "lot 7")
    hers = history((21, 0.6))

    assert of(replace(hers, past=(unseen, *hers.past))) == of(hers)


# Causes.


def test_causes_are_not_told_apart_where_nothing_was_read() -> None:
    found = of(history()).loss

    assert found is not None
    assert not found.told_apart


def test_causes_are_told_apart_by_a_client_who_hardly_loses_a_bond() -> None:
    """Half of a population with long cycles and bonds of all kinds: what stays on for weeks can only be shed."""
    numbers = USUAL._replace(cycle=float(np.log(220)), cycle_sd=-2.0, hazard_sd=0.2, luck=-2.5, eye=-4.0)
    population = replace(KNOWN, numbers=numbers)

    found = of(history(*[(28, 0.85)] * 8), population).loss

    assert found is not None
    assert found.told_apart
    assert found.bonds.middle < found.shed.middle


def test_both_causes_together_are_what_is_lost() -> None:
    node = np.zeros((1, FORECASTER.left.shape[1]))
    node[0, 300] = 1.0  # one kind of client, known for sure

    loss = FORECASTER.loss(node[0], 20)

    left = float(FORECASTER.left[10, 300])
    assert loss.shed.middle + loss.bonds.middle == pytest.approx(1 - left, abs=1e-3)
    assert loss.day == 20


# What goes in and what comes out.


def test_nobody_has_no_forecast() -> None:
    assert forecast(KNOWN, []) == []


def test_a_client_without_a_worn_set_gets_that_of_her_next() -> None:
    hers = history((21, 0.6))

    assert forecast(KNOWN, [replace(hers, worn=None)]) == forecast(KNOWN, [hers])


def test_a_client_of_whom_nothing_is_known_is_the_usual_one() -> None:
    [usual] = forecast(KNOWN, [History("")])
    truth = draw(World(), 10_000, 4)
    worn = np.array([len(one.past) == 0 for one in truth.histories])
    middle = float(np.median(truth.days_to(0.6)[worn]))

    assert usual.readings == 0
    assert usual.days[0.6].middle == pytest.approx(middle, rel=0.04)


def test_a_forecast_counts_the_readings_that_it_rests_on() -> None:
    assert of(history((21, 0.6), (21, 0.5), worn=((7, 0.9), (14, 0.7)))).readings == 4


def test_curves_are_left_out_where_nobody_asks_for_them() -> None:
    [found] = forecast(KNOWN, [history()], levels=(0.5,), curves=False)

    assert (found.curve, found.loss, list(found.days)) == (None, None, [0.5])


def test_each_client_keeps_her_place_and_her_forecast_in_any_company() -> None:
    hers = draw(World(), 40, 9).histories
    together = forecast(KNOWN, hers, curves=False)
    backwards = forecast(KNOWN, hers[::-1], curves=False)[::-1]

    assert [one.client for one in together] == [one.client for one in hers]
    for one, other in zip(together, backwards, strict=True):
        assert one.days[0.6].middle == pytest.approx(other.days[0.6].middle, rel=1e-4)
    alone = forecast(KNOWN, [hers[7]], curves=False)[0]
    assert together[7].days[0.4].middle == pytest.approx(alone.days[0.4].middle, rel=1e-4)


def test_the_same_readings_give_the_same_forecast() -> None:
    hers = draw(World(), 60, 2).histories

    assert forecast(fit(hers), hers) == forecast(fit(hers), hers)


def test_a_reading_that_cannot_be_is_refused_by_its_day() -> None:
    with pytest.raises(ValueError, match="2027-01-04"):
        forecast(SURE_TO_THE_POINT, [history(worn=((20, 1.0), (21, 0.5), (22, 0.0)))])


SURE_TO_THE_POINT = replace(KNOWN, numbers=USUAL._replace(wrong=-400.0, eye=-9.0))
