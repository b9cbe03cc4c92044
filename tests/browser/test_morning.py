"""The morning list with ten varied matters, as an artist sees it on her phone at seven; closing one by keyboard."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from aftercare import receiving, triage
from aftercare.lines import lines_of
from aftercare.models import Flag, Message, Stop
from studio.models import Reaction
from tests.aftercare.test_pictures import photo
from tests.browser.conftest import SCHEMES, Visitor
from tests.browser.test_pages import cut_off, small_targets
from tests.cast import Cast

pytestmark = pytest.mark.browser

WROTE = [
    ("Imani", "woke up and cant open my right eye, its swollen and theres gunk"),
    ("Wilhelmina Konstantinopolitana", "left lid is kinda puffy n itchy since last nite but love them!!"),
    ("Zoe", "pls take me off this, and my lids are sore"),
    ("Odile", "one of the lashes keeps poking me in the corner"),  # two have this number
    ("Thandiwe", "mắt tôi hơi đỏ"),
    ("Tova", "hmm not sure how to put it"),
    ("Maren", "was a bit pink around the edges last night but its gone now"),
    ("Keiko", "half of the right side has come off after two days"),
    ("Bea", "can I wear mascara with these?"),
    ("Grace", "thank you, love them!"),
    ("Priya", "could we move Friday to the week after?"),
]


@pytest.fixture
def morning(empty_cast: Cast) -> Cast:
    """Ten matters and a wish, each from what a client wrote."""
    cast, line = empty_cast, lines_of(empty_cast.studio)["sms"]
    for place, (name, text) in enumerate(WROTE):
        her = cast.client(name, "Featherstonehaugh-Asante" if place == 1 else "Quist")
        cast.done(her, cast.at(10, -2))
        cast.visit(her, cast.at(16, 0 if name == "Bea" else 9))
        if name == "Odile":
            cast.done(cast.client("Paloma", "Weiss", mobile=her.mobile), cast.at(11, -2))
        files = [("eye.jpg", photo((900, 600)))] if name == "Tova" else []
        at = cast.at(5 + place / 10)
        triage.read(receiving.receive(line, her.mobile, text, received_at=at, files=files).pk, at)
    Message.objects.filter(occasion="answer").update(state="delivered", handed_over_at=cast.at(6.5), text="Words.")
    return cast


@pytest.mark.parametrize("scheme", SCHEMES)
def test_ten_varied_matters_are_whole_on_a_phone(scheme: str, visit: Callable[..., Visitor], morning: Cast) -> None:
    assert Flag.objects.count() == 10
    assert Stop.objects.count() == 1
    visitor = visit(390, scheme)
    visitor.sign_in(morning.olga)

    page = visitor.open("/morning?artist=all")

    assert visitor.violations() == []
    assert small_targets(visitor) == []
    assert not cut_off(visitor)
    headings = page.locator("h2").all_inner_texts()
    assert headings == [
        "Act now",
        "See today",
        "Open, and she comes in today",
        "Not understood: read and decide",
        "Also open",
        "For the front desk",
    ]
    assert page.locator("mark").first.inner_text() == "cant open my right eye"
    image = page.locator("img.photo")
    image.scroll_into_view_if_needed()
    assert image.evaluate("one => one.decode().then(() => one.naturalWidth)") == 900
    assert visitor.complaints == []


def test_a_matter_is_closed_by_the_keyboard_alone(visit: Callable[..., Visitor], morning: Cast) -> None:
    visitor = visit(390, "light")
    visitor.sign_in(morning.ada)
    flag = Flag.objects.get(clients=morning.clients["Imani"])
    page = visitor.open(f"/flags/{flag.pk}/close")
    assert not page.get_by_label("Try again", exact=True).is_visible()  # asked only of her who could not be reached

    page.get_by_label("advised to see a doctor or an eye doctor").focus()
    page.keyboard.press("Space")
    page.keyboard.press("Tab")
    page.keyboard.type("She is on her way to an eye doctor.")
    page.keyboard.press("Tab")  # "Put it on her record" is ticked
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    page.wait_for_url("**/morning")

    assert "she is on hold until someone releases her" in page.locator(".notes").inner_text()
    assert Reaction.objects.get().words.endswith("She is on her way to an eye doctor.")
    assert visitor.violations() == []
