"""The owner's page on how good the forecasts were."""

from __future__ import annotations

from typing import Any

import pytest

from tests.cast import Cast
from tests.forecasts import forecast
from tests.pages import SignIn, words

PAGE = "/settings/forecasts"


def seen(cast: Cast, clients: int, share: int = 60, usual: float = 30) -> None:
    """Have so many clients seen on the 18th day, on which each set was forecast to be at 60 %."""
    for number in range(clients):
        her = cast.client(f"Client{number}")
        forecast(cast.done(her, cast.at(9, -38)), cast.at(10, -38), usual=usual)
        cast.done(her, cast.at(9, -20), share_left=share)


def test_the_figures_stand_with_the_visits_behind_them(cast: Cast, as_: SignIn) -> None:
    seen(cast, 12, share=65)

    page = words(as_(cast.olga).get(PAGE))

    assert "12 visits · 12 clients" in page
    assert "Off by, on average 5.0 points (5.0 to 5.0)" in page
    assert "One calendar for all 8.6 points (8.6 to 8.6)" in page  # 0.6 ** (18 / 30) is 0.736
    assert "her own forecast was nearer by 3.6 points" in page
    assert "In the 80 % band 100 % (76 to 100)" in page  # Wilson's interval of 12 in 12
    assert "Seen less forecast +5.0 points" in page
    assert "Ada 12 12 clients" in page
    assert "Birch 4, lot 0226 12 12 clients" in page


def test_where_the_calendar_was_nearer_the_page_says_so(cast: Cast, as_: SignIn) -> None:
    seen(cast, 12, share=75)

    assert "her own forecast was no nearer: -13.6 points" in words(as_(cast.olga).get(PAGE))


def test_where_they_are_alike_it_says_that_nobody_can_tell(cast: Cast, as_: SignIn) -> None:
    seen(cast, 12, usual=18)

    assert "not enough visits to say which is nearer" in words(as_(cast.olga).get(PAGE))


def test_few_visits_say_nothing_and_are_shown_all_the_same(cast: Cast, as_: SignIn) -> None:
    seen(cast, 9)

    page = words(as_(cast.olga).get(PAGE))

    assert "Too few to say. 9 visits so far" in page
    assert "Off by, on average" not in page
    assert "60 to 70 on average 60 9 60" in page
    assert "too few to say" in page


def test_an_empty_page_says_what_to_do_next(cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).get(PAGE))

    assert "Nothing to compare yet. Write down the share left" in page
    assert "Forecast and seen" not in page


def test_shares_of_which_nothing_was_forecast_are_counted(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -38))
    cast.done(her, cast.at(9, -20), share_left=60)

    assert "1 more share was seen of a set that nothing had been forecast of." in words(as_(cast.olga).get(PAGE))


@pytest.mark.parametrize(
    ("query", "shown"), [("", "A year"), ("?period=quarter", "Three months"), ("?period=x", "A year")]
)
def test_the_period_can_be_chosen(query: str, shown: str, cast: Cast, as_: SignIn) -> None:
    page = as_(cast.olga).get(f"{PAGE}{query}").content.decode()

    assert f'aria-current="true">{shown}</a>' in page


def test_the_settings_lead_to_it(cast: Cast, as_: SignIn) -> None:
    assert f'href="{PAGE}"' in as_(cast.olga).get("/settings").content.decode()


def test_many_visits_cost_no_more_queries(cast: Cast, as_: SignIn, django_assert_max_num_queries: Any) -> None:
    seen(cast, 40)
    browser = as_(cast.olga)

    with django_assert_max_num_queries(6):
        assert "40 visits" in words(browser.get(PAGE))
