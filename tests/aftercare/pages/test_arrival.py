"""What to expect of a booked set when she comes in."""

from __future__ import annotations

import pytest

from aftercare import facts
from aftercare.core.expected import Advice
from aftercare.models import RuleSet
from aftercare.pages import arrival
from aftercare.pages.arrival import Arrival
from aftercare.pages.herset import Percent
from studio.models import Client, Service, Visit
from tests.cast import Cast, make
from tests.forecasts import forecast


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


@pytest.fixture
def mia(cast: Cast) -> Client:
    """Put on 20 days ago; likely to be at the fill level on the 18th day."""
    visit = cast.done(cast.client("Mia"), cast.at(9, -20))
    forecast(visit, cast.at(10, -20))
    return visit.client


def expected(cast: Cast, visit: Visit) -> Arrival | None:
    book = facts.load([visit.client_id], cast.now)[visit.client_id]
    return arrival.arrival(book.visits[visit.pk], book, arrival.forecasts([book]))


def test_the_share_is_that_of_the_day_on_which_she_comes(cast: Cast, mia: Client) -> None:
    found = expected(cast, cast.visit(mia, cast.at(14, 12), minutes=95))

    assert found == Arrival(Percent(32, 40, 48), Advice(), 35)  # 0.6 ** (32 / 18) is 0.403


def test_minutes_that_are_too_few_are_said(cast: Cast, mia: Client) -> None:
    found = expected(cast, cast.visit(mia, cast.at(14, 10)))

    assert found is not None
    assert found.advice == Advice(more_minutes=20)


def test_under_the_full_set_level_she_may_need_a_new_set(cast: Cast, mia: Client) -> None:
    found = expected(cast, cast.visit(mia, cast.at(14, 15), minutes=120))

    assert found is not None
    assert found.advice == Advice(may_need_new_set=True)


def test_the_owner_s_own_numbers_count(cast: Cast, mia: Client) -> None:
    RuleSet.objects.create(
        studio=cast.studio,
        version=1,
        at=cast.now,
        values={"longest_fill_days": 29, "fill_minutes": [[0.5, 60], [0.0, 130]]},
    )

    found = expected(cast, cast.visit(mia, cast.at(14, 10)))

    assert found is not None
    assert found.advice == Advice(more_minutes=55, over_longest=True)
    assert found.longest_days == 29


def test_of_a_full_set_the_minutes_are_not_judged(cast: Cast, mia: Client) -> None:
    found = expected(cast, cast.visit(mia, cast.at(14, 10), Service.FULL_SET))

    assert found is not None
    assert found.advice is None


def test_after_another_set_nobody_knows_yet(cast: Cast, mia: Client) -> None:
    first, second = cast.visit(mia, cast.at(14, 5)), cast.visit(mia, cast.at(14, 26))

    assert expected(cast, first) is not None
    assert expected(cast, second) is None


def test_nor_after_a_removal_that_is_booked_or_a_set_that_nobody_marked(cast: Cast, mia: Client) -> None:
    later = cast.visit(mia, cast.at(14, 10))
    between = cast.visit(mia, cast.at(10, 2), Service.REMOVAL)
    assert expected(cast, later) is None

    between.delete()
    cast.visit(mia, cast.at(10, -1))

    assert expected(cast, later) is None


def test_a_touch_up_in_between_changes_nothing(cast: Cast, mia: Client) -> None:
    later = cast.visit(mia, cast.at(14, 10))
    before = expected(cast, later)
    assert before is not None

    cast.visit(mia, cast.at(10, 2), Service.TOUCH_UP)

    assert expected(cast, later) == before


@pytest.mark.parametrize("status", [Visit.Status.DONE, Visit.Status.MISSED])
def test_a_visit_that_is_over_expects_nothing(status: str, cast: Cast, mia: Client) -> None:
    assert expected(cast, cast.visit(mia, cast.at(6), status=status)) is None


def test_visits_that_are_no_set_expect_nothing(cast: Cast, mia: Client) -> None:
    assert expected(cast, cast.visit(mia, cast.at(14, 10), Service.LIFT)) is None


def test_without_a_forecast_or_beyond_its_days_nothing_is_said(cast: Cast, mia: Client) -> None:
    assert expected(cast, cast.visit(mia, cast.at(14, 90))) is None

    zoe = cast.client("Zoe")
    cast.done(zoe, cast.at(9, -20))
    assert expected(cast, cast.visit(zoe, cast.at(14, 10))) is None
    assert expected(cast, cast.visit(cast.client("Ann"), cast.at(14, 10))) is None
