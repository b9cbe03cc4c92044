"""What the card says of the set that she has on."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest

from aftercare import facts
from aftercare.core.delivery import State
from aftercare.facts import ClientBook
from aftercare.pages import herset
from aftercare.pages.herset import HerSet, Percent, Seen
from studio.models import Client, Service, Visit
from tests.cast import Cast, make
from tests.forecasts import forecast


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def book_of(cast: Cast, her: Client) -> ClientBook:
    return facts.load([her.pk], cast.now)[her.pk]


def worn_for(cast: Cast, days: int, **fields: Any) -> HerSet:
    """Mia's set was put on so many days ago, and is likely to need a fill on its 18th day."""
    visit = cast.done(cast.client("Mia"), cast.at(9, -days))
    forecast(visit, cast.at(10, -days), **fields)
    found = herset.her_set(book_of(cast, visit.client))
    assert found is not None
    return found


def day(cast: Cast, days: int) -> date:
    return cast.at(9, days).astimezone(cast.studio.zone).date()


def test_nothing_is_said_where_no_set_is_on(cast: Cast) -> None:
    mia, zoe = cast.client("Mia"), cast.client("Zoe")
    cast.visit(mia, cast.at(12, 3))
    cast.done(zoe, cast.at(9, -20))
    cast.done(zoe, cast.at(9, -2), Service.REMOVAL)

    assert herset.her_set(book_of(cast, mia)) is None
    assert herset.her_set(book_of(cast, zoe)) is None


def test_a_set_that_is_long_gone_is_no_set(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -121))

    assert herset.her_set(book_of(cast, her)) is None


def test_a_set_that_nothing_is_forecast_of_yet_is_named_all_the_same(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -40))
    forecast(Visit.objects.get(), cast.at(9, -39))
    newest = cast.done(her, cast.at(9, -1))

    found = herset.her_set(book_of(cast, her))

    assert found == HerSet(newest)


def test_the_newest_forecast_is_the_one_that_counts(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -5))
    forecast(visit, cast.at(9, -4), fill_day=30)
    newest = forecast(visit, cast.at(9, -3), fill_day=14)
    forecast(visit, cast.at(9, -5), fill_day=20)

    found = herset.her_set(book_of(cast, visit.client))

    assert found is not None
    assert found.forecast == newest


def test_today_s_share_has_its_band(cast: Cast) -> None:
    """0.6 on the 18th day at one rate: 0.6 ** (9 / 18) on the 9th, and with 0.8 and 1.25 of the days."""
    assert worn_for(cast, 9).today == Percent(73, 77, 82)


@pytest.mark.parametrize(
    ("days", "phase"),
    [
        (2, "Put on not long ago"),
        (9, "About half-way to a fill"),
        (15, "Soon ready for a fill"),
        (18, "Ready for a fill"),
        (33, "She may need a new set"),
    ],
)
def test_how_far_on_she_is_is_said_in_words(days: int, phase: str, cast: Cast) -> None:
    assert worn_for(cast, days).phase == phase


def test_the_days_count_from_her_own_date(cast: Cast) -> None:
    found = worn_for(cast, 9)

    assert found.fill is not None
    assert found.full_set is not None
    assert (found.fill.low, found.fill.middle, found.fill.high) == (day(cast, 5), day(cast, 9), day(cast, 13))
    assert not found.fill.is_past
    assert found.full_set.middle == day(cast, 23)  # 18 days times ln 0.4 / ln 0.6 is 32.3


def test_a_day_that_is_over_is_said_to_be(cast: Cast) -> None:
    found = worn_for(cast, 20)

    assert found.fill is not None
    assert found.full_set is not None
    assert (found.fill.is_past, found.full_set.is_past) == (True, False)


def test_what_is_gone_is_split_by_cause(cast: Cast) -> None:
    split = worn_for(cast, 9).split

    assert split is not None
    assert (split.gone, split.shed, split.bonds) == (40, Percent(20, 25, 31), Percent(9, 15, 20))
    assert split.when == day(cast, 9)


def test_without_a_split_none_is_shown(cast: Cast) -> None:
    assert worn_for(cast, 9, loss={}).split is None


def test_the_table_has_a_row_a_week_from_a_whole_set_on(cast: Cast) -> None:
    rows = worn_for(cast, 9).rows

    assert rows[0] == herset.Row(day(cast, -9), Percent(100, 100, 100))
    assert [(row.on - rows[0].on).days for row in rows] == list(range(0, 99, 7))


def test_readings_belong_to_the_set_that_was_seen(cast: Cast) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -60), Service.FULL_SET, share_left=10)  # of a set from elsewhere
    cast.done(her, cast.at(9, -40), share_left=55)
    cast.done(her, cast.at(9, -20), Service.REMOVAL, share_left=35)
    cast.done(her, cast.at(9, -15), Service.FULL_SET, share_left=5)  # nothing of hers was on
    cast.done(her, cast.at(9, -8), Service.TOUCH_UP, share_left=80)

    assert herset.readings(book_of(cast, her)) == [
        Seen(20, 0.55, of_worn=False),
        Seen(20, 0.35, of_worn=False),
        Seen(7, 0.8, of_worn=True),
    ]


def test_the_picture_marks_today_what_is_booked_and_the_reminder(cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -9))
    forecast(visit, cast.at(10, -9))
    cast.visit(visit.client, cast.at(12, 11))
    cast.visit(visit.client, cast.at(12, 12), status=Visit.Status.CANCELLED)
    cast.gone(visit.client, visit, "fill_due", cast.at(10, 2), state=State.PLANNED, handed_over_at=None, ended_at=None)

    found = herset.her_set(book_of(cast, visit.client))

    assert found is not None
    assert found.picture is not None
    assert [mark.kind for mark in found.picture.events] == ["today", "reminder", "booked"]
    today, reminder, booked = (float(mark.x) for mark in found.picture.events)
    assert (reminder - today) / (booked - today) == pytest.approx(2 / 11, abs=0.01)


@pytest.mark.parametrize(("state", "shown"), [(State.DELIVERED, True), (State.WITHHELD, False)])
def test_a_reminder_that_went_is_marked_and_one_withheld_is_not(state: State, shown: bool, cast: Cast) -> None:
    visit = cast.done(cast.client("Mia"), cast.at(9, -15))
    forecast(visit, cast.at(10, -15))
    cast.gone(visit.client, visit, "fill_due", cast.at(10, -2), state=state)

    found = herset.her_set(book_of(cast, visit.client))

    assert found is not None
    assert found.picture is not None
    assert ("reminder" in [mark.kind for mark in found.picture.events]) is shown


def test_her_own_zone_says_which_day_it_is(cast: Cast) -> None:
    """A visit at 9 in the studio is on the day after for a client whose clock is 17 hours ahead of it, or so."""
    ahead = "Etc/GMT-14" if cast.studio.time_zone != "Etc/GMT-14" else "Etc/GMT+12"
    visit = cast.done(cast.client("Mia", time_zone=ahead), cast.at(9, -9))
    forecast(visit, cast.at(10, -9))
    book = book_of(cast, visit.client)

    found = herset.her_set(book)

    assert found is not None
    assert found.rows[0].on == visit.starts_at.astimezone(book.facts.zone).date()
    assert found.fill is not None
    assert found.fill.middle == found.rows[0].on + timedelta(days=18)
