"""The owner's numbers in a real browser: a change by the keyboard alone, what is wrong, and telling those booked."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from aftercare import ruling
from aftercare.core.occasions import Occasion
from aftercare.models import Message
from tests.browser.conftest import SCHEMES, WIDTHS, Visitor
from tests.browser.test_pages import cut_off, small_targets
from tests.cast import Cast
from tests.forecasts import forecast

pytestmark = pytest.mark.browser


@pytest.fixture
def book(morning_cast: Cast) -> Cast:
    """Twelve more with long names, each with a set on and the next one booked."""
    for number in range(12):
        her = morning_cast.client(f"Wilhelmina Konstantinopolitana {number}", "Featherstonehaugh-Asante-Hohenzollern")
        forecast(morning_cast.done(her, morning_cast.at(9, -12)), morning_cast.at(10, -12))
        morning_cast.visit(her, morning_cast.at(9, 6))
    morning_cast.plan()
    return morning_cast


def test_a_number_is_changed_by_the_keyboard_alone(visit: Callable[..., Visitor], book: Cast) -> None:
    visitor = visit(1280, "light")
    visitor.sign_in(book.olga)
    page = visitor.open("/settings/timing")

    def tab_to(words: str) -> None:
        for _ in range(60):
            page.keyboard.press("Tab")
            if (
                page.evaluate("(document.activeElement.labels?.[0] ?? document.activeElement).textContent.trim()")
                == words
            ):
                return
        raise AssertionError(f"no way by Tab to {words}")

    tab_to("Change: Before a visit")
    page.keyboard.press("Enter")
    page.wait_for_url("**/settings/timing/before")
    tab_to("First instructions")
    page.keyboard.press("Control+a")
    page.keyboard.type("2")
    page.keyboard.press("Enter")
    page.get_by_role("heading", name="What this changes").wait_for()
    assert "3 days becomes 2 days" in page.locator("#moves").inner_text()
    assert "12 move" in page.locator("#moves").inner_text()
    assert visitor.violations() == []
    tab_to("Save it")
    page.keyboard.press("Enter")
    page.wait_for_url("**/settings/timing")

    assert "Saved." in page.locator(".notes").inner_text()
    assert ruling.values_of(book.studio) == {"prepare_days": 2}
    assert visitor.complaints == []


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", WIDTHS)
def test_what_moves_and_what_is_wrong_can_be_read_by_everyone(
    width: int, scheme: str, visit: Callable[..., Visitor], book: Cast
) -> None:
    visitor = visit(width, scheme)
    visitor.sign_in(book.olga)
    page = visitor.open("/settings/timing/before")
    page.get_by_label("First instructions", exact=True).fill("2")
    page.get_by_role("button", name="See what moves").click()
    page.get_by_text("more", exact=False).first.click()
    assert visitor.violations() == []
    assert small_targets(visitor) == []
    assert not cut_off(visitor)

    page.get_by_label("First instructions", exact=True).fill("1")
    page.get_by_role("button", name="Look again").click()

    assert "To mend:" in page.get_by_role("alert").inner_text()
    page.get_by_role("alert").get_by_role("link").first.click()
    assert page.evaluate("document.querySelector(':target').getAttribute('name')") == "evening_days"
    assert visitor.violations() == []
    assert not cut_off(visitor)
    assert visitor.complaints == []


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", WIDTHS)
def test_those_booked_are_told_from_the_day_sheet(
    width: int, scheme: str, visit: Callable[..., Visitor], book: Cast
) -> None:
    visitor = visit(width, scheme)
    visitor.sign_in(book.dee)
    page = visitor.open("/today?artist=all")
    page.get_by_role("link", name="Tell these clients something").click()
    page.get_by_label("Your own words").fill("Ada has an eye infection, come later.")
    page.get_by_role("button", name="See how it arrives").click()
    assert "is never said" in page.get_by_role("alert").inner_text()
    assert visitor.violations() == []
    page.get_by_label("Your own words").fill("All is an hour late today, please come an hour later.")
    page.get_by_role("button", name="See how it arrives").click()
    assert visitor.violations() == []
    assert small_targets(visitor) == []
    assert not cut_off(visitor)

    page.get_by_role("button", name="Tell ").click()
    page.wait_for_url("**/today?*")

    assert "told" in page.locator(".notes").inner_text()
    assert Message.objects.filter(occasion=Occasion.NOTICE).count() >= 4
    assert visitor.violations() == []
    assert not cut_off(visitor)
    assert visitor.complaints == []
