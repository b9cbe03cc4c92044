"""The questions before a visit in a real browser: a phone without JavaScript, at twice the zoom, axe, both modes."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser

from aftercare import consulting, links
from aftercare.core.consultation import NO, NOW, YES, Answer
from aftercare.links import Purpose
from aftercare.models import Consultation, Flag
from studio.models import Client, Visit
from tests.browser.conftest import SCHEMES, WIDTHS, Visitor
from tests.browser.test_pages import cut_off, small_targets
from tests.cast import Cast

pytestmark = pytest.mark.browser

ANSWERS = {
    NOW: Answer(NO),
    "latex": Answer(NO),
    "tape": Answer(YES, "blistered under blue tape " * 8),
    "fits": Answer(YES),
}


@pytest.fixture
def visit_of_mia(empty_cast: Cast) -> Visit:
    her = empty_cast.client("Wilhelmina Konstantinopolitana", "Featherstonehaugh-Asante-Hohenzollern")
    return empty_cast.visit(her, empty_cast.at(10, 3))


def link(visit: Visit) -> str:
    return f"/c/{links.token(Purpose.CONSULTATION, visit)}"


def answer(cast: Cast, visit: Visit, once: str, **more: Answer) -> None:
    sent = consulting.Sent(
        once=once, language="en", agreed=True, answers={**ANSWERS, **more}, more="Thin lids.", signed_name="W. K."
    )
    consulting.submit(visit=visit, client=visit.client, sent=sent, now=cast.now)


@pytest.fixture
def phone(chromium: Browser, live_server: Any) -> Iterator[Visitor]:
    """A phone whose browser runs no scripts."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, java_script_enabled=False)
    yield Visitor(context.new_page(), live_server.url)
    context.close()


def test_she_answers_on_a_phone_without_javascript(phone: Visitor, visit_of_mia: Visit) -> None:
    page = phone.open(link(visit_of_mia))
    page.get_by_label("yes, keep them for my visits").check()
    for asked in page.locator(".ask").all():
        asked.get_by_label("no", exact=True).check()
    page.get_by_role("group", name="Is anything wrong with your eyes today?").get_by_label("yes", exact=True).check()
    page.get_by_label("it hurts").check()
    page.get_by_role("group", name="Are you under 18?").get_by_label("no", exact=True).check()
    page.get_by_role("button", name="Send my answers").click()

    assert "A person will call you by" in page.content()
    assert "see a doctor or an eye doctor today" in page.content()
    assert Consultation.objects.get().agreed
    assert Flag.objects.get().urgency == "same_day"


def test_what_is_to_be_mended_is_named_and_what_she_typed_stands(phone: Visitor, visit_of_mia: Visit) -> None:
    page = phone.open(link(visit_of_mia))
    page.get_by_label("The look you wish").fill("natural")
    page.get_by_role("button", name="Send my answers").click()

    assert page.get_by_text("Not sent yet. To mend:").is_visible()
    assert page.get_by_label("The look you wish").input_value() == "natural"
    assert not Consultation.objects.exists()


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", [*WIDTHS, 195])  # 195 px: a phone at twice the zoom (WCAG 2.2, 1.4.4)
def test_every_state_of_the_page_is_whole_and_can_be_used_by_everyone(
    width: int, scheme: str, visit: Callable[..., Visitor], visit_of_mia: Visit, empty_cast: Cast
) -> None:
    visitor = visit(width, scheme)
    wrong: list[str] = []

    def look(what: str) -> None:
        wrong.extend(f"{what}: {found}" for found in visitor.violations())
        wrong.extend(f"{what}: lower than a thumb: {found}" for found in small_targets(visitor))
        wrong.extend([f"{what}: cut off at the side"] if cut_off(visitor) else [])

    page = visitor.open(link(visit_of_mia))
    look("first")
    page.get_by_role("group", name="Is anything wrong with your eyes today?").get_by_label("yes", exact=True).check()
    page.get_by_role("group", name="Are you under 18?").get_by_label("yes", exact=True).check()
    assert page.get_by_label("Parent’s or guardian’s name").is_visible()
    look("with what a yes asks for")
    page.get_by_role("button", name="Send my answers").click()
    look("to be mended")
    answer(empty_cast, visit_of_mia, "a" * 24)
    visitor.open(f"/q/{links.token(Purpose.ANEW, visit_of_mia)}")
    look("later, from the page of her visit")
    page = visitor.open(link(visit_of_mia))
    look("later")
    page.get_by_label("yes, keep them for my visits").check()
    for asked in page.locator(".ask").all():
        asked.get_by_label("yes", exact=True).check()
    page.get_by_role("group", name="Are you under 18?").get_by_label("no", exact=True).check()
    page.get_by_role("button", name="Nothing else has changed: send").click()
    look("sent")
    visitor.open(f"{link(visit_of_mia)}?change=1")
    look("changing")
    page.get_by_text("Take back your agreement").click()
    page.get_by_role("button", name="Delete my health answers").click()
    look("taken back")
    Visit.objects.update(status=Visit.Status.CANCELLED)
    visitor.open(link(visit_of_mia))
    look("cancelled")

    assert wrong == []
    assert visitor.complaints == []


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", WIDTHS)
def test_the_pages_for_staff_are_whole(
    width: int, scheme: str, visit: Callable[..., Visitor], visit_of_mia: Visit, empty_cast: Cast
) -> None:
    answer(empty_cast, visit_of_mia, "a" * 24)
    answer(empty_cast, visit_of_mia, "b" * 24, tape=Answer(NO), fits=Answer(NO), latex=Answer(YES))
    Client.objects.update(sensitive=None)
    visitor = visit(width, scheme)
    visitor.sign_in(empty_cast.olga)

    for path in (
        f"/clients/{visit_of_mia.client_id}/answers",
        f"/clients/{visit_of_mia.client_id}",
        "/settings/questions",
    ):
        visitor.open(path)
        assert visitor.violations() == [], path
        assert small_targets(visitor) == [], path
        assert not cut_off(visitor), path
