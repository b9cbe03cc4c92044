"""One client's forecast, against a draw from the model, and what must hold of any."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.special import ndtr

from aftercare.core.shedding import Forecast, Forecaster, History, LashSet, Population, Seen, fit, forecast
from aftercare.core.shedding import numbers as made
from aftercare.core.shedding.numbers import TURN_SD, logistic
from aftercare.core.shedding.population import Effect
from aftercare.core.shedding.renewal import Floats
from tests.aftercare.core.shedding.drawn import USUAL, World, called_worn, draw

DAY = date(2027, 1, 4)
KNOWN = World().known
FORECASTER = Forecaster(KNOWN)
Read = tuple[int, float]  # days, share


def history(*past: Read, worn: tuple[Read, ...] = (), lot: str = "") -> History:
    """One set after the other, each with the share read at its end; then the worn one, with what was seen of it."""
    day, sets = DAY, []
    for days, share in past:
        sets.append(LashSet(day, "", (Seen(day + timedelta(days), share),)))
        day += timedelta(days)
    seen = tuple(Seen(day + timedelta(days), share) for days, share in worn)
    return History("Mia", tuple(sets), LashSet(day, lot, seen))


def of(hers: History, population: Population = KNOWN, worn_for: int | None = None) -> Forecast:
    assert hers.worn is not None
    today = None if worn_for is None else hers.worn.on + timedelta(worn_for)
    again = FORECASTER if population is KNOWN else None
    return forecast(population, [hers], today=today, forecaster=again)[0]


# Against a draw from the model.


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


# What must hold of any forecast.

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
