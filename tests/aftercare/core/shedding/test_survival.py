"""Sets as a survival analysis sees them: lash by lash, by statsmodels.

Our readings are of whole sets, so the product itself fits no lash lifetimes. Drawn lash by lash they show whether the
curve and the hazard mean what they say. The library is first held against published tables.
"""

from __future__ import annotations

from datetime import date, timedelta

import numpy as np
import pytest
from scipy import optimize
from statsmodels.discrete.discrete_model import Poisson
from statsmodels.duration.survfunc import SurvfuncRight, survdiff

from aftercare.core.shedding import LashSet, Seen
from aftercare.core.shedding import numbers as made
from aftercare.core.shedding.likelihood import made_ready, posterior
from aftercare.core.shedding.records import Steps, pack
from aftercare.core.shedding.renewal import LEAST_AGE, Floats, left_by_shedding
from tests.aftercare.core.shedding.drawn import USUAL
from tests.aftercare.core.shedding.lashes import grown

CYCLE, SPREAD, HAZARD = 95.0, 0.2, 0.012

# Freireich and others, Blood 1963;21:699: weeks in remission, 6-MP (from memory) and placebo; + is still in remission.
SIX_MP = [
    "6",
    "6",
    "6",
    "6+",
    "7",
    "9+",
    "10",
    "10+",
    "11+",
    "13",
    "16",
    "17+",
    "19+",
    "20+",
    "22",
    "23",
    "25+",
    "32+",
    "32+",
    "34+",
    "35+",
]
PLACEBO = [
    "1",
    "1",
    "2",
    "2",
    "3",
    "4",
    "4",
    "5",
    "5",
    "8",
    "8",
    "8",
    "8",
    "11",
    "11",
    "12",
    "12",
    "15",
    "17",
    "22",
    "23",
]
# Bewick, Cheek, Ball, Crit Care 2004;8:389, Table 2, treatment 2: days. Errors are Greenwood's, computed.
BEWICK = ["1", "1", "4", "5", "6+", "9", "9+", "22"]


def lives(given: list[str]) -> tuple[Floats, Floats]:
    return np.array([float(one.rstrip("+")) for one in given]), np.array([float(one[-1] != "+") for one in given])


def curve(given: list[str]) -> dict[float, tuple[float, ...]]:
    """Return by time: at risk, events, survival, its error."""
    found = SurvfuncRight(*lives(given))
    columns = (found.n_risk, found.n_events, found.surv_prob, found.surv_prob_se)
    return dict(zip(found.surv_times.tolist(), zip(*(one.tolist() for one in columns), strict=True), strict=True))


def test_the_library_gives_the_published_table_of_bewick() -> None:
    found = curve(BEWICK)

    published = {1: (8, 2, 0.75), 4: (6, 1, 0.625), 5: (5, 1, 0.5), 9: (3, 1, 0.333), 22: (1, 1, 0.0)}
    assert {time: row[:3] for time, row in found.items()} == {
        time: pytest.approx(row, abs=5e-4) for time, row in published.items()
    }
    assert [found[time][3] for time in (1, 4, 5, 9)] == pytest.approx([0.1531, 0.1712, 0.1768, 0.18], abs=5e-5)


def test_the_library_gives_the_remission_times_of_freireich() -> None:
    found = curve(SIX_MP)

    computed = {
        6: (21, 3, 0.8571, 0.0764),
        7: (17, 1, 0.8067, 0.0869),
        10: (15, 1, 0.7529, 0.0963),
        13: (12, 1, 0.6902, 0.1068),
        16: (11, 1, 0.6275, 0.1141),
        22: (7, 1, 0.5378, 0.1282),
        23: (6, 1, 0.4482, 0.1346),
    }
    assert {time: found[time] for time in computed} == {
        time: pytest.approx(row, abs=5e-5) for time, row in computed.items()
    }
    assert curve(PLACEBO)[8][2:] == pytest.approx((0.381, 0.106), abs=5e-4)  # a published lecture's
    assert SurvfuncRight(*lives(SIX_MP)).quantile(0.5) == 23
    assert SurvfuncRight(*lives(PLACEBO)).quantile(0.5) == 8
    (times, events), (more, all_events) = lives(SIX_MP), lives(PLACEBO)
    chi2, chance = survdiff(np.append(times, more), np.append(events, all_events), np.repeat([0, 1], 21))
    assert (chi2, chance) == pytest.approx((16.793, 4.17e-5), rel=1e-3)  # textbooks print 16.79, from memory


def lost(lashes: int, seed: int, hazard: float = HAZARD) -> tuple[Floats, Floats]:
    """Return after how many days each lash of a full set is shed, and each bond fails."""
    chance = np.random.default_rng(seed)
    age, length = grown(chance, 3 * lashes, CYCLE, SPREAD)
    old = age > LEAST_AGE
    return (length - age)[old][:lashes], chance.exponential(1 / hazard, lashes)


def test_the_lifetimes_of_lashes_lie_on_the_curve_even_where_sets_are_taken_off_early() -> None:
    shed, failed = lost(20_000, 1)
    life, taken_off = np.minimum(shed, failed), np.random.default_rng(2).uniform(5, 60, 20_000)

    found = SurvfuncRight(np.minimum(life, taken_off), (life <= taken_off).astype(float))

    for day in (7, 14, 21, 28, 40):
        at = np.searchsorted(found.surv_times, day, side="right") - 1
        left = float(left_by_shedding(day, CYCLE, SPREAD)) * np.exp(-HAZARD * day)
        assert abs(found.surv_prob[at] - left) < 4 * found.surv_prob_se[at], day


def test_the_hazard_of_bonds_is_that_of_an_exponential_fit_to_each_lash() -> None:
    """Where only a share of each set is read, of clients all alike, against one who sees which bonds fail and when."""
    clients, lashes = 400, 100
    shed, failed = lost(clients * lashes, 3)
    days = np.repeat(np.random.default_rng(4).integers(13, 32, clients), lashes)
    seen = np.minimum(np.minimum(shed, failed), days)
    of_bonds = (failed <= np.minimum(shed, days)).astype(float)
    fit = Poisson(of_bonds, np.ones(len(seen)), exposure=seen).fit(disp=False)

    left = (np.minimum(shed, failed) > days).reshape(clients, lashes).mean(axis=1)
    first = date(2027, 1, 4)
    sets = [
        (LashSet(first, "", (Seen(first + timedelta(int(day)), float(share)),)),)
        for day, share in zip(days[::lashes], left, strict=True)
    ]
    # All alike; what the eye errs is here the chance of 100 lashes: sqrt(0.55 * 0.45 / 100).
    alike = USUAL._replace(cycle_sd=-5.0, hazard_sd=-5.0, luck=-5.0, eye=float(np.log(0.05)), wrong=-12.0, turn=-12.0)
    lattice = made.lattice_around(alike, (5, 201))
    records = pack(sets, Steps(0.025, {}))
    material = made_ready(lattice, records, np.zeros(len(records.lots)), np.zeros(len(records.kinds.day)))
    found = optimize.minimize_scalar(
        lambda at: -posterior(material, alike._replace(hazard=at))[0], bounds=(-5.5, -3.5), method="bounded"
    )

    assert float(np.exp(fit.params[0])) == pytest.approx(HAZARD, rel=0.03)
    assert float(np.exp(found.x)) == pytest.approx(float(np.exp(fit.params[0])), rel=0.05)
