"""The day sheet as each role sees it."""

from __future__ import annotations

import re
from datetime import timedelta
from typing import Any

import pytest

from aftercare.core.ticks import Tick, Ticked
from studio.models import Service
from tests.cast import Cast, full_morning, make
from tests.forecasts import forecast
from tests.pages import SignIn, words

HEALTH = re.compile(
    r"sensitive|lenses|patch test (missing|\d)|no sign|cream remover|bonder|stronger primer"
    r"|on hold|reaction|itchy|shorter",
    re.IGNORECASE,
)


def line(page: str, name: str) -> str:
    """Return what stands between a client's name and the next line's hour."""
    return re.split(r"\d+:\d\d (?:am|pm) \d+ min", page[page.index(name) :])[0]


def test_a_line_says_everything_in_the_order_of_the_sheet(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.ada).get("/today"))

    rosa = page[page.index("9:00 am") : page.index("11:00 am")]
    order = ["9:00 am", "180 min", "room 2", "Rosa Lindqvist", "new", "Full set, classic", "patch test missing"]
    order += ["Wears lenses", "Set out:", "cream remover", "Waiver to sign", "instructions"]
    assert [rosa.index(word) for word in order] == sorted(rosa.index(word) for word in order)


def test_what_she_only_ticked_on_her_own_page_stands_on_her_line_too(morning_cast: Cast, as_: SignIn) -> None:
    bea = morning_cast.clients["Bea"]
    ticked = Ticked(ticks=frozenset({Tick.SIGHT, Tick.PAIN}))
    bea.replies.update(text="", ticked=ticked.to_keep())
    browser = as_(morning_cast.ada)

    hers = line(words(browser.get("/today")), "Bea Castellanos")
    conversation = words(browser.get(f"/clients/{bea.pk}/conversation"))

    assert "She ticked: My sight has changed, Pain" in hers
    assert "My sight has changed, Pain" in conversation
    assert "(no words)" not in conversation


def test_a_picture_without_a_word_leaves_no_empty_quotation_on_the_sheet(morning_cast: Cast, as_: SignIn) -> None:
    morning_cast.clients["Bea"].replies.update(text="")

    assert "(no words)" in line(words(as_(morning_cast.ada).get("/today")), "Bea Castellanos")


def test_a_regular_s_line_tells_of_her_last_set_and_of_what_she_wrote(morning_cast: Cast, as_: SignIn) -> None:
    bea = line(words(as_(morning_cast.ada).get("/today")), "Bea Castellanos")

    assert "Last set 23 days ago" in bea
    assert "C 0.07, 9 to 12 · Birch 4, lot 0226 · 45 % was left then" in bea
    assert "no sign reported" in bea
    assert "Left unhappy" in bea
    assert "instructions delivered" in bea
    assert "could we go a bit shorter on the inner corners?" in bea


def test_one_on_hold_is_to_be_decided_before_anything_else(morning_cast: Cast, as_: SignIn) -> None:
    held = line(words(as_(morning_cast.ada).get("/today")), "Featherstonehaugh")

    assert "On hold: decide and call." in held
    assert held.index("Decide") < held.index("Done")
    assert "guardian’s consent missing" in held


def test_an_artist_sees_her_own_visits_unless_she_asks_for_all(morning_cast: Cast, as_: SignIn) -> None:
    browser = as_(morning_cast.noor)

    own, everybody = words(browser.get("/today")), words(browser.get("/today?artist=all"))

    assert "Zoe Abara" in own
    assert "Rosa Lindqvist" not in own
    assert "Rosa Lindqvist" in everybody


def test_an_artist_reads_no_health_note_of_a_colleague_s_client(morning_cast: Cast, as_: SignIn) -> None:
    page = words(as_(morning_cast.noor).get("/today?artist=all"))

    assert not HEALTH.findall(line(page, "Rosa Lindqvist"))
    assert not HEALTH.findall(line(page, "Bea Castellanos"))
    assert "Ask Ada before this visit." in line(page, "Featherstonehaugh")


def test_the_front_desk_sees_no_word_on_health_and_no_way_to_mark_done(morning_cast: Cast, as_: SignIn) -> None:
    page = as_(morning_cast.dee).get("/today")

    assert not HEALTH.findall(words(page))
    assert "/done" not in page.content.decode()
    assert "/missed" in page.content.decode()


def test_another_day_is_a_step_away_and_an_unreadable_one_is_said(cast: Cast, as_: SignIn) -> None:
    tomorrow = cast.at(12, 1)
    cast.visit(cast.client("Mia"), tomorrow)
    browser, day = as_(cast.ada), tomorrow.date()

    assert f"?day={day.isoformat()}" in browser.get("/today").content.decode()
    assert "Mia" in words(browser.get(f"/today?day={day.isoformat()}"))
    assert "“soon” is no date, so this is today." in words(browser.get("/today?day=soon"))
    assert "There is no sheet for the year 9999" in words(browser.get("/today?day=9999-12-31"))


def test_an_empty_day_says_what_to_do_next(cast: Cast, as_: SignIn) -> None:
    assert "No visits stand in the book for this day." in words(as_(cast.ada).get("/today"))
    assert "Bring the book in" in words(as_(cast.olga).get("/today"))


def test_what_the_book_calls_a_service_is_shown_and_cannot_be_markup(cast: Cast, as_: SignIn) -> None:
    cast.visit(cast.client("<b>Mia</b>"), cast.at(12), service_name="<i>Russian volume</i>", style="<u>wispy</u>")

    page = as_(cast.ada).get("/today").content.decode()

    assert "&lt;i&gt;Russian volume&lt;/i&gt;" in page
    assert "<b>Mia</b>" not in page
    assert "<u>wispy" not in page


@pytest.mark.parametrize("who", ["olga", "ada", "dee"])
def test_a_full_day_costs_no_more_queries_than_a_short_one(
    who: str, cast: Cast, as_: SignIn, django_assert_max_num_queries: Any
) -> None:
    full_morning(cast)
    for number in range(12):
        her = cast.client(f"Client{number}", sensitive=bool(number % 2))
        cast.done(her, cast.at(9, -20))
        cast.visit(her, cast.at(8) + timedelta(minutes=45 * number), Service.FULL_SET)
    browser = as_(getattr(cast, who))

    with django_assert_max_num_queries(15):
        page = browser.get("/today?artist=all")

    assert words(page).count("Client") >= 12


def test_a_studio_abroad_counts_twenty_four_hours(db: None, as_: SignIn) -> None:
    cast = make("soho", "Soho Lashes")
    cast.studio.region = "GB"
    cast.studio.save()
    cast.visit(cast.client("Mia"), cast.at(14.5))

    assert "14:30" in words(as_(cast.ada).get("/today"))


@pytest.mark.parametrize(
    ("days", "minutes", "said"),
    [
        (26, 75, "Expect about 48 % left (40 to 55) · the booked minutes look right"),
        (26, 60, "Expect about 48 % left (40 to 55) · allow 15 minutes more"),
        (34, 75, "Expect about 38 % left (30 to 46) · may need a new set; decide on seeing it · allow 20 minutes more"),
        (
            36,
            75,
            "Expect about 36 % left (28 to 44) · over 35 days since the last set: a fill is not offered by your rule",
        ),
    ],
)
def test_the_line_says_what_to_expect_and_whether_the_minutes_look_right(
    days: int, minutes: int, said: str, cast: Cast, as_: SignIn
) -> None:
    """At the fill level, 0.6, on the 18th day: 0.6 ** (days / 18)."""
    her = cast.client("Mia")
    forecast(cast.done(her, cast.at(9, -days)), cast.at(10, -days))
    cast.visit(her, cast.at(12), minutes=minutes)

    assert f"{said} Waiver" in words(as_(cast.ada).get("/today"))


def test_without_a_forecast_the_line_expects_nothing(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia")
    cast.done(her, cast.at(9, -20))
    cast.visit(her, cast.at(12))

    assert "Expect about" not in words(as_(cast.ada).get("/today"))


def test_a_closing_day_and_whoever_is_away_stand_on_that_days_sheet_and_with_their_visits_in_the_settings(
    cast: Cast, as_: SignIn
) -> None:
    for hour in (10, 12):
        cast.visit(cast.client(f"Mia{hour}"), cast.at(hour, 3))
    cast.visit(cast.client("Zoe"), cast.at(12, 3), artist=cast.noor)
    day = cast.at(10, 3).astimezone(cast.studio.zone).date()
    browser = as_(cast.olga)

    closed = words(browser.post("/settings/closing-days", {"date": day, "name": "Painters"}, follow=True))
    form = {"staff": cast.ada.pk, "first_day": day, "last_day": day + timedelta(days=1), "cover": cast.noor.pk}
    away = browser.post("/settings/absences", form, follow=True)

    assert "Added. 3 visits are booked then." in closed
    assert "Added. 2 visits are booked then." in words(away)
    assert f"/today/tell?day={day}&amp;artist={cast.ada.pk}" in away.content.decode()
    said = words(browser.get(f"/today?day={day}"))
    assert "The studio is closed this day: Painters." in said
    assert "Ada is away. Noor covers." in said
    assert "is closed this day" not in words(browser.get("/today"))
    assert "is away" not in words(browser.get("/today"))


@pytest.mark.parametrize("who", ["olga", "ada", "dee"])
def test_an_artist_who_is_no_number_is_nobody(who: str, morning_cast: Cast, as_: SignIn) -> None:
    browser = as_(getattr(morning_cast, who))

    assert browser.get("/today", {"artist": "²"}).status_code == 200
    assert browser.get("/today/tell", {"artist": "²"}).status_code == 404
