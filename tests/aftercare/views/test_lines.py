"""The owner's lines: the price of a text, and how many may leave."""

from __future__ import annotations

import pytest

from aftercare.lines import lines_of
from aftercare.models import Line, Spending
from studio.models import Studio
from tests.letters import make_line
from tests.people import make_staff, make_studio, sign_in

pytestmark = pytest.mark.django_db
PAGE = "/settings/lines"


@pytest.fixture
def studio() -> Studio:
    studio = make_studio()
    make_line(studio)
    return studio


def line(studio: Studio) -> Line:
    return lines_of(studio)["sms"]


def test_the_owner_sets_limits_and_takes_them_away(studio: Studio) -> None:
    browser = sign_in(make_staff(studio, "Ines", is_owner=True))

    browser.post(PAGE, {"price": "", "currency": "", "most_a_day": "200", "most_a_second": "5"})
    assert (line(studio).most_a_day, line(studio).most_a_second) == (200, 5)

    browser.post(PAGE, {"price": "", "currency": "", "most_a_day": "", "most_a_second": ""})
    assert (line(studio).most_a_day, line(studio).most_a_second) == (None, None)


@pytest.mark.parametrize("value", ["0", "-3", "lots", "10000000"])
def test_a_limit_that_is_none_is_refused_and_changes_nothing(studio: Studio, value: str) -> None:
    browser = sign_in(make_staff(studio, "Ines", is_owner=True))

    page = browser.post(PAGE, {"price": "1", "currency": "USD", "most_a_day": value, "most_a_second": ""})

    assert "most_a_day" in page.context["form"].errors
    assert (line(studio).most_a_day, line(studio).price) == (None, None)


def test_she_sees_how_much_of_the_day_is_spent(studio: Studio) -> None:
    Line.objects.filter(pk=line(studio).pk).update(most_a_day=200)
    browser = sign_in(make_staff(studio, "Ines", is_owner=True))
    assert "0 texts of 200 left today" in browser.get(PAGE).content.decode()

    today = browser.get(PAGE).context["request"].now.astimezone(studio.zone).date()
    Spending.objects.create(line=line(studio), day=today, segments=12)

    assert "12 texts of 200 left today" in browser.get(PAGE).content.decode()
