"""Forecasts against what was seen, as spots."""

from __future__ import annotations

import pytest

from aftercare.figures import Case
from aftercare.pages.curve import LEFT, RIGHT
from aftercare.pages.scatter import LARGEST, scatter


def case(expected: float, seen: float) -> Case:
    return Case(1, "Ada", "", 0, seen, expected, 0.0, 1.0, 0.5)


def test_visits_on_one_place_are_one_spot_whose_area_says_how_many() -> None:
    picture = scatter([case(0.61, 0.6)] * 4 + [case(0.31, 0.4)])

    assert [float(spot.r) for spot in picture.spots] == [pytest.approx(LARGEST / 2, abs=0.1), LARGEST]


def test_forecasts_run_across_and_what_was_seen_upward() -> None:
    picture = scatter([case(0, 1), case(1, 0)])

    first, second = picture.spots
    assert (first.x, first.y) == (f"{LEFT:.1f}", f"{float(picture.top):.1f}")
    assert (second.x, second.y) == (f"{RIGHT:.1f}", f"{float(picture.bottom):.1f}")


def test_a_lone_visit_among_many_can_still_be_seen() -> None:
    picture = scatter([case(0.6, 0.6)] * 1000 + [case(0.2, 0.2)])

    assert min(float(spot.r) for spot in picture.spots) == 1.5


def test_nothing_is_an_empty_grid() -> None:
    picture = scatter([])

    assert not picture.spots
    assert [tick.share for tick in picture.ticks] == [0, 25, 50, 75, 100]
