"""Pictures of figures: where marks stand, and that each says its numbers in words too."""

from __future__ import annotations

import pytest

from aftercare.core.rates import Figure
from aftercare.pages.report.pictures import TALL, TOP, over_time, side_by_side


def figure(value: float, cases: int = 20) -> Figure:
    return Figure(value, value - 0.1, value + 0.1, cases, cases)


def test_a_step_without_a_visit_breaks_the_line() -> None:
    steps = [("Jan", figure(0.5), 20), ("Feb", None, 0), ("Mar", figure(0.25, 3), 3)]

    found = over_time("share", "All sets", steps)

    assert found.path.count("M") == 2
    assert [point.y for point in found.points] == [f"{TOP + TALL * 0.5:.1f}", "", f"{TOP + TALL * 0.75:.1f}"]
    assert [point.few for point in found.points] == [False, False, True]
    assert found.said == "Jan: 50 %; Mar: 25 %"


@pytest.mark.parametrize("steps", [1, 3, 13, 40, 400])
def test_dates_and_counts_leave_each_other_room(steps: int) -> None:
    found = over_time("share", "All sets", [("Sep", figure(0.5), 123) for _number in range(steps)])

    for words in ("words", "count"):
        places = [float(point.x) for point in found.points if getattr(point, words)]
        assert all(after - before >= 25 for before, after in zip(places, places[1:], strict=False))


def test_shares_beyond_the_axis_stay_on_it() -> None:
    found = over_time("share", "All sets", [("Jan", Figure(0.98, 0.7, 1.26, 2, 2), 2)])

    assert found.points[0].high == f"{TOP:.1f}"


def test_the_axis_ends_where_the_highest_range_has_room() -> None:
    rows = [("Birch 4", Figure(0.03, 0.01, 0.06, 200, 50), "200 sets")]

    found = side_by_side("reactions", "Per 100", rows, 0.04)

    assert [tick.words for tick in found.ticks] == ["0", "2", "4", "6", "8"]
    assert found.said == "Birch 4, 200 sets: 3.0 %"


def test_a_long_name_leaves_room_for_its_count() -> None:
    rows = [("Wilhelmina Konstantinopolitana Featherstonehaugh, lot 0226", figure(0.5), "20 sets")]

    assert len(side_by_side("lots", "Lots", rows, 1.0).points[0].words) <= 34
