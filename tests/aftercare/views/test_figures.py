"""The page of figures: whose they are, what stands behind each, and what it never says."""

from __future__ import annotations

import re
from datetime import timedelta
from decimal import Decimal
from typing import Any

import pytest

from aftercare.lines import lines_of, save
from aftercare.models import Flag
from studio.models import Adhesive, Reaction, Service
from tests.cast import Cast
from tests.forecasts import forecast
from tests.pages import SignIn, words

PAGE = "/figures?period=year"


def fill(cast: Cast, clients: int) -> Cast:
    """Have so many clients come for two fills each, some of them with a reaction, a reply and a forecast."""
    for number in range(clients):
        her = cast.client(f"Person{number}", "Quist")
        artist = cast.ada if number % 2 else cast.noor
        first = cast.done(her, cast.at(9, -45), Service.FULL_SET, artist=artist)
        forecast(first, cast.at(10, -45))
        last = cast.done(her, cast.at(9, -25), artist=artist, share_left=60)
        cast.gone(her, last, "care", cast.at(12, -25), segments=2)
        cast.gone(her, first, "fill_due", cast.at(12, -35), forecast=first.forecasts.first(), aim_at=cast.at(12, -35))
        if number < 3:
            Reaction.objects.create(client=her, visit=last, at=cast.at(9, -23), words="itchy lids")
            flag = cast.wrote(her, "itchy lids", cast.at(9, -23), urgency="same_day")
            Flag.objects.filter(pk=flag.pk).update(taken_at=cast.at(10, -23), taken_by=artist)
    return cast


def test_each_figure_stands_with_what_is_behind_it(cast: Cast, as_: SignIn) -> None:
    page = words(as_(fill(cast, 12).olga).get(PAGE))

    assert "after a reminder 12 12 100 % 12 of 12 76 to 100" in page  # Wilson's interval of 12 in 12
    assert "Ada few 6 6 60 % 60 to 60 20.0" in page
    assert "Birch 4, lot 0226 12 12 60 % 60 to 60 20.0" in page
    assert "all 24 3 12.5" in page
    assert "to be seen the same day few 3 0 1.0 h" in page
    assert "delivered 24 0 0 24 24" in page  # a segment each of two, none noted of the others
    assert "by text 24 12 0 % 0 of 24 0 to 24" in page
    assert "shares seen 12 12" in page


def test_texts_cost_what_the_owner_says_a_text_costs(cast: Cast, as_: SignIn) -> None:
    fill(cast, 12)
    line = lines_of(cast.studio)["sms"]
    save(line, Decimal("0.0125"), "USD")
    browser = as_(cast.olga)

    assert "delivered 24 0 0 24 24 $0.30" in words(browser.get(PAGE))
    sheet = browser.get("/figures/messages/states.csv?period=year").content.decode("utf-8-sig").splitlines()
    assert "At today’s price (USD)" in sheet[0]
    assert "delivered,24,0,0,24,24,0.3," in sheet[1]


def test_the_few_that_matter_stand_on_top_with_their_counts(cast: Cast, as_: SignIn) -> None:
    page = as_(fill(cast, 12).olga).get(PAGE)

    assert [(line.key, line.words) for line in page.context["summary"]] == [
        ("fills", "after a reminder: 12 of 12"),
        ("reactions", "3 after 24 sets"),
        ("answers", "to be seen the same day: half of them within 1.0 h"),
        ("messages", "24 in all, 0 not delivered"),
    ]
    assert page.content.decode().index('href="#reactions"') < page.content.decode().index('id="fills"')


def test_a_spreadsheet_says_in_its_name_and_its_heads_what_it_holds(cast: Cast, as_: SignIn) -> None:
    answer = as_(fill(cast, 4).olga).get("/figures/fills/ways.csv?period=year")

    name = "wrenfield-fills-booked-within-the-forecast-window-after-a-reminder-and-without-fills-within-the-window-"
    assert f'filename="{name}' in answer["Content-Disposition"]
    heads = answer.content.decode("utf-8-sig").splitlines()[0]
    assert (
        '"Came, or is booked, within the window, how many","Came, or is booked, within the window, of how many"'
        in heads
    )


def test_the_page_says_that_reminders_were_not_drawn_by_lot(cast: Cast, as_: SignIn) -> None:
    page = words(as_(fill(cast, 3).olga).get(PAGE))

    assert "Nobody drew lots here." in page
    assert "does not say what reminders do" in page


def test_nothing_says_what_brought_anything_about_or_that_all_is_well(cast: Cast, as_: SignIn) -> None:
    page = words(as_(fill(cast, 12).olga).get(PAGE))

    assert (
        re.findall(r"\bcaus|\ballerg|\bsafe\b|\bpassed\b|\bnormal\b|\bthanks to\b|\beffect", page, re.IGNORECASE) == []
    )


def test_an_artist_sees_her_own_alone_whatever_she_asks_for(cast: Cast, as_: SignIn) -> None:
    fill(cast, 4)

    for asked in ("", f"&artist={cast.noor.pk}", "&artist=all"):
        page = words(as_(cast.ada).get(f"{PAGE}{asked}"))
        assert "Ada · " in page
        assert "Noor" not in page
        assert "after a reminder few 2 2" in page
        assert "By who put the set on" not in page


def test_an_artist_gets_her_own_alone_as_a_spreadsheet_too(cast: Cast, as_: SignIn) -> None:
    fill(cast, 4)

    text = as_(cast.ada).get(f"/figures/fills/ways.csv?period=year&artist={cast.noor.pk}").content.decode()

    assert "after a reminder,2,2,2,2,100" in text
    assert ",Ada," in text
    assert as_(cast.ada).get("/figures/fills/artists.csv?period=year").status_code == 404


@pytest.mark.parametrize("path", [PAGE, "/figures/fills/ways.csv"])
def test_the_front_desk_has_no_figures(path: str, cast: Cast, as_: SignIn) -> None:
    assert as_(cast.dee).get(path).status_code == 403
    assert b"/figures" not in as_(cast.dee).get("/clients").content


def test_an_owner_chooses_an_artist(cast: Cast, as_: SignIn) -> None:
    fill(cast, 5)

    page = words(as_(cast.olga).get(f"{PAGE}&artist={cast.noor.pk}"))

    assert "Noor · " in page
    assert "after a reminder few 3 3" in page


def test_no_studio_sees_anothers(cast: Cast, strangers: Cast, as_: SignIn) -> None:
    fill(strangers, 12)

    page = words(as_(cast.olga).get(f"{PAGE}&artist={strangers.ada.pk}"))

    assert "whole studio · " in page
    assert page.count("Nothing in this period.") == 6


def test_an_empty_studio_says_what_to_do_next(cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).get("/figures"))

    assert "Write down the share left each time you mark a set done." in page


def test_a_wrong_day_is_said_with_its_cure(cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).get("/figures?period=own&from=yesterday&to=2027-01-01"))

    assert "Not this period: From: “yesterday” is no date." in page


def test_every_table_comes_as_a_spreadsheet_that_nothing_calculates(cast: Cast, as_: SignIn) -> None:
    cast.ada.name = "=HYPERLINK(1)"
    cast.ada.save()
    Adhesive.objects.filter(pk=cast.glue.pk).update(product="+Birch", lot="-1")
    browser = as_(fill(cast, 12).olga)
    links = re.findall(r'href="(/figures/[^"]+\.csv\?period=year)"', browser.get(PAGE).content.decode())

    assert len(links) > 15
    for link in links:
        answer = browser.get(link)
        text = answer.content.decode("utf-8")
        assert answer["Content-Type"] == "text/csv; charset=utf-8"
        assert re.search(r'filename="[\w.-]+\.csv"', answer["Content-Disposition"])
        assert text.startswith("\ufeff")
        assert cast.studio.time_zone in text
        assert re.findall(r'(?:^|,|\r\n)"?[=+\-@]', text) == [], link


@pytest.mark.parametrize("path", ["/figures/nothing/ways.csv", "/figures/fills/nothing.csv"])
def test_a_table_that_is_not_there_is_not_found(path: str, cast: Cast, as_: SignIn) -> None:
    assert as_(cast.olga).get(path).status_code == 404


def test_more_clients_cost_no_more_queries(cast: Cast, as_: SignIn, django_assert_max_num_queries: Any) -> None:
    browser = as_(fill(cast, 30).olga)

    with django_assert_max_num_queries(16):
        browser.get(PAGE)


def test_a_reason_tells_no_number(cast: Cast, as_: SignIn) -> None:
    her = cast.client("Mia")
    for number, address in enumerate(("+12125550107", "+12125550144")):
        visit = cast.done(her, cast.at(9, -20 - number))
        reason = f"The carrier refused {address}: not a mobile."
        cast.gone(her, visit, "care", visit.end + timedelta(hours=1), state="undelivered", reason=reason)

    page = words(as_(cast.olga).get(PAGE))

    assert "The carrier refused …: not a mobile. 2" in page
    assert "+1212" not in page
