"""Shares seen, held against what had been forecast of them."""

from __future__ import annotations

from datetime import timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from aftercare import figures
from aftercare.figures import Case
from studio.models import Service, Visit
from tests.cast import Cast, make
from tests.forecasts import forecast


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def cases(cast: Cast) -> list[Case]:
    return figures.cases(cast.studio, None, cast.now)[0]


def case(client: int = 1, **fields: Any) -> Case:
    usual: dict[str, Any] = {"expected": 0.6, "low": 0.5, "high": 0.7, "usual": 0.5, "seen": 0.6}
    return Case(**{"client": client, "reader": "Ada", "adhesive": "Birch 4", "readings": 3, **usual, **fields})


def test_a_share_is_held_against_the_forecast_in_force_just_before(cast: Cast) -> None:
    """The set is likely to be at 0.6 on its 18th day; one calendar for all has it there on the 20th."""
    her = cast.client("Mia")
    visit = cast.done(her, cast.at(9, -20))
    forecast(visit, cast.at(9, -19), fill_day=25)
    forecast(visit, cast.at(9, -5), fill_day=18)
    forecast(visit, cast.at(10, -2), fill_day=10)  # made when she had been seen
    cast.done(her, cast.at(10, -2), share_left=55, artist=cast.noor)

    [found] = cases(cast)

    assert (found.client, found.reader, found.adhesive, found.readings) == (her.pk, "Noor", "Birch 4, lot 0226", 3)
    assert (found.seen, found.expected) == pytest.approx((0.55, 0.6))
    assert found.usual == pytest.approx(0.6 ** (18 / 20))
    assert found.low == pytest.approx(0.6 ** (1 / 0.8) - 0.05, abs=1e-3)
    assert found.high == pytest.approx(0.6 ** (1 / 1.25) + 0.05, abs=1e-3)


def test_the_adhesive_is_that_of_the_set_that_was_seen(cast: Cast) -> None:
    her = cast.client("Mia")
    forecast(cast.done(her, cast.at(9, -20), adhesive=None), cast.at(9, -19))
    cast.done(her, cast.at(10, -2), share_left=55)

    assert [found.adhesive for found in cases(cast)] == [""]


def test_what_nothing_was_forecast_of_is_counted_and_not_scored(cast: Cast) -> None:
    her = cast.client("Mia")
    visit = cast.done(her, cast.at(9, -40), share_left=50)
    forecast(visit, cast.at(11, -20))  # too late for what was seen at ten
    cast.done(her, cast.at(10, -20), share_left=55)

    assert figures.cases(cast.studio, None, cast.now) == ([], 2)


def test_a_share_after_a_removal_is_of_no_set_here(cast: Cast) -> None:
    her = cast.client("Mia")
    forecast(cast.done(her, cast.at(9, -30)), cast.at(9, -29))
    cast.done(her, cast.at(9, -20), Service.REMOVAL)
    cast.done(her, cast.at(9, -2), share_left=5)

    assert cases(cast) == []


@pytest.mark.parametrize("removal_first", [True, False])
def test_a_removal_marked_at_the_same_moment_as_a_new_set_came_before_it(removal_first: bool, cast: Cast) -> None:
    her, at = cast.client("Mia"), cast.at(9, -20)
    for service in sorted((Service.REMOVAL, Service.FULL_SET), reverse=removal_first):
        visit = cast.done(her, at, service)
        if service == Service.FULL_SET:
            forecast(visit, at + timedelta(hours=3))
    cast.done(her, cast.at(9, -2), share_left=55)

    assert [found.seen for found in cases(cast)] == [0.55]


def test_beyond_a_curve_s_days_nothing_is_scored(cast: Cast) -> None:
    her = cast.client("Mia")
    forecast(cast.done(her, cast.at(9, -110)), cast.at(9, -109))
    cast.done(her, cast.at(9, -2), share_left=5)

    assert cases(cast) == []


def test_booked_and_missed_visits_and_other_services_are_no_readings(cast: Cast) -> None:
    her = cast.client("Mia")
    forecast(cast.done(her, cast.at(9, -30)), cast.at(9, -29))
    cast.visit(her, cast.at(9, -9), share_left=50, status=Visit.Status.MISSED)
    cast.done(her, cast.at(9, -8), Service.TOUCH_UP, share_left=50)

    assert figures.cases(cast.studio, None, cast.now) == ([], 0)


def test_a_period_takes_its_own_visits_and_no_other_studio_s(cast: Cast) -> None:
    for studio in (cast, make("larkhill", "Larkhill Lashes")):
        her = studio.client("Mia")
        for days in (60, 40, 20):
            forecast(studio.done(her, studio.at(9, -days), share_left=60), studio.at(11, -days))

    assert len(cases(cast)) == 2
    found, seen = figures.cases(cast.studio, cast.now - timedelta(days=30), cast.now)
    assert (len(found), seen) == (1, 1)


def test_days_count_on_her_own_calendar(cast: Cast) -> None:
    ahead = "Etc/GMT-14" if cast.studio.time_zone != "Etc/GMT-14" else "Etc/GMT+12"
    her = cast.client("Mia", time_zone=ahead)
    first = cast.done(her, cast.at(1, -20))
    forecast(first, cast.at(2, -20))
    second = cast.done(her, cast.at(23, -2), share_left=55)
    days = (
        second.starts_at.astimezone(ZoneInfo(ahead)).date() - first.starts_at.astimezone(ZoneInfo(ahead)).date()
    ).days

    [found] = cases(cast)

    assert found.expected == pytest.approx(0.6 ** (days / 18), abs=1e-3)


def test_many_visits_cost_no_more_queries_than_one(cast: Cast, django_assert_num_queries: Any) -> None:
    for number in range(30):
        her = cast.client(f"Client{number}")
        for days in (60, 40, 20):
            forecast(cast.done(her, cast.at(9, -days), share_left=60), cast.at(11, -days))

    with django_assert_num_queries(2):
        assert len(cases(cast)) == 60


def test_errors_are_the_distance_and_bias_has_its_sign() -> None:
    score = figures.score([case(1, seen=0.7), case(2, seen=0.55), case(3, seen=0.8)])

    assert score is not None
    assert (score.visits, score.clients) == (3, 3)
    assert score.error.value == pytest.approx((0.1 + 0.05 + 0.2) / 3)
    assert score.usual_error.value == pytest.approx((0.2 + 0.05 + 0.3) / 3)
    assert score.gain.value == pytest.approx((0.1 + 0.0 + 0.1) / 3)
    assert score.bias.value == pytest.approx((0.1 - 0.05 + 0.2) / 3)
    assert score.covered.value == pytest.approx(2 / 3)  # the ends of a band are within it


@pytest.mark.parametrize(("visits", "says"), [(9, False), (10, True)])
def test_under_ten_visits_say_nothing(visits: int, says: bool) -> None:
    score = figures.score([case(number) for number in range(visits)])

    assert score is not None
    assert score.says_something is says


def test_nothing_has_no_score() -> None:
    assert figures.score([]) is None
    assert figures.by([], lambda one: one.reader) == []


def test_kinds_come_with_the_most_visits_first() -> None:
    some = [case(reader="Noor"), case(reader="Ada"), case(reader="Ada"), case(reader="Bo")]

    found = figures.by(some, lambda one: one.reader)

    assert [(name, score.visits) for name, score in found] == [("Ada", 2), ("Bo", 1), ("Noor", 1)]
