"""Where the lines, marks and words of a set's curve stand."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from aftercare.pages.curve import LEFT, RIGHT, TALL, WIDTH, Event, Picture, draw

START = date(2027, 5, 12)
CURVE: dict[str, list[float]] = {
    "days": list(range(0, 99, 2)),
    "low": [max(0.0, 1 - day / 40) for day in range(0, 99, 2)],
    "middle": [max(0.0, 1 - day / 50) for day in range(0, 99, 2)],
    "high": [max(0.0, 1 - day / 60) for day in range(0, 99, 2)],
}


def drawn(**asked: Any) -> Picture:
    given: dict[str, Any] = {"reach": 30, "levels": [], "events": [], "earlier": [], "own": [], **asked}
    return draw(CURVE, START, **given)


def points(text: str) -> list[tuple[float, float]]:
    return [(float(x), float(y)) for x, y in (point.split(",") for point in text.split())]


def test_the_line_begins_at_a_whole_set_and_falls_as_the_curve_does() -> None:
    picture = drawn()
    top, bottom = float(picture.top), float(picture.bottom)

    line = points(picture.middle)

    assert line[0] == (LEFT, top)
    assert line[-1] == pytest.approx((RIGHT, top + TALL * 35 / 50))  # 30 days are shown as five weeks
    assert all(before[1] < after[1] for before, after in zip(line, line[1:], strict=False))
    assert bottom - top == TALL


def test_the_band_runs_out_along_its_upper_edge_and_back_along_the_lower() -> None:
    picture = drawn()
    band, line = points(picture.band), points(picture.middle)

    upper, lower = band[: len(line)], band[len(line) :][::-1]

    assert [x for x, _y in upper] == [x for x, _y in line] == [x for x, _y in lower]
    assert all(high[1] <= middle[1] <= low[1] for high, middle, low in zip(upper, line, lower, strict=True))


def test_everything_stays_on_a_telephone_s_width() -> None:
    picture = drawn(events=[Event("today", 3, "today"), Event("booked", 90, "booked")], reach=200)

    xs = [x for x, _y in points(picture.band)] + [float(mark.x) for mark in (*picture.events, *picture.dates)]

    assert min(xs) >= LEFT
    assert max(xs) <= RIGHT < picture.width == WIDTH


@pytest.mark.parametrize("reach", [1, 30, 50, 80, 97, 500])
def test_a_few_dates_stand_below_however_long_it_is(reach: int) -> None:
    dates = drawn(reach=reach).dates

    assert 3 <= len(dates) <= 5
    assert dates[0].on == START
    assert dates[0].anchor == "start"
    assert all((mark.on - START).days % 7 == 0 for mark in dates if mark.on)


def test_words_of_events_stand_in_rows_of_their_own_and_once() -> None:
    events = [Event("today", 10, "today"), Event("booked", 10, "booked"), Event("booked", 20, "booked")]

    marks = drawn(events=events).events

    assert [mark.words for mark in marks] == ["today", "booked", ""]
    assert marks[0].y != marks[1].y == marks[2].y
    assert marks[0].x == marks[1].x != marks[2].x


@pytest.mark.parametrize(("day", "anchor"), [(0, "start"), (15, "middle"), (33, "end")])
def test_words_near_an_edge_turn_inward(day: int, anchor: str) -> None:
    assert drawn(events=[Event("today", day, "today")]).events[0].anchor == anchor


def test_what_lies_beyond_the_days_shown_is_not_drawn() -> None:
    picture = drawn(events=[Event("today", 120, "today")], earlier=[(20, 0.5), (99, 0.1)], own=[(-1, 1.0), (7, 0.9)])

    assert not picture.events
    assert len(picture.earlier) == len(picture.own) == 1


def test_a_level_stands_where_its_share_does() -> None:
    picture = drawn(levels=[(0.6, "fill"), (0.4, "full set")])

    assert [(mark.words, mark.share) for mark in picture.levels] == [("fill", 60), ("full set", 40)]
    assert float(picture.levels[0].y) == pytest.approx(float(picture.top) + 0.4 * TALL)


@pytest.mark.parametrize(("reach", "anchor"), [(30, "start"), (98, "end")])
def test_a_level_is_named_where_the_curve_is_away_from_it(reach: int, anchor: str) -> None:
    picture = drawn(levels=[(0.6, "fill")], reach=reach)

    assert picture.levels[0].anchor == anchor
