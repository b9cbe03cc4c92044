"""A wording changed by the keyboard alone, with its preview as she types; without scripts; letters on a small phone."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, Dialog, Page

from aftercare import letterhead, versions
from aftercare.core.segments import measure
from aftercare.models import Wording
from aftercare.versions import Slot
from aftercare.wording import Words
from tests.aftercare.test_letterhead import picture
from tests.browser.conftest import SCHEMES, STANDARD, WIDTHS, Visitor
from tests.browser.test_pages import cut_off, small_targets
from tests.cast import Cast

pytestmark = pytest.mark.browser

CARE = "/wordings/care/any/sms/en"


def tab_to(page: Page, selector: str, most: int = 60) -> None:
    """Press Tab until the focus is on what is looked for."""
    for _step in range(most):
        if page.evaluate("selector => document.activeElement?.matches(selector)", selector):
            return
        page.keyboard.press("Tab")
    raise AssertionError(f"{most} tabs do not lead to {selector}")


def test_a_wording_is_changed_by_the_keyboard_alone(visit: Callable[..., Visitor], morning_cast: Cast) -> None:
    visitor = visit(1280, "light")
    visitor.sign_in(morning_cast.olga)
    page = visitor.open("/wordings?language=en&occasion=care")

    tab_to(page, f"a[href='{CARE}']")
    page.keyboard.press("Enter")
    page.wait_for_url(f"**{CARE}")
    tab_to(page, "textarea")
    page.keyboard.press("Control+Home")
    page.keyboard.type("Ask for ")
    tab_to(page, ".chips button:nth-child(2)")
    assert page.evaluate("document.activeElement.textContent") == "her artist"
    page.keyboard.press("Enter")
    page.keyboard.type(" \u2026 it is normal.")
    page.get_by_text("\u201cnormal\u201d is never said.").wait_for()
    assert "To mend:" in page.locator(".wrong").inner_text()
    for _letter in "it is normal.":
        page.keyboard.press("Backspace")
    page.get_by_text("Ask for Marguerite-Anne ...").wait_for()
    assert "To mend:" not in page.locator("#preview").inner_text()
    assert visitor.violations() == []
    tab_to(page, "[name=save]")
    page.keyboard.press("Enter")
    page.get_by_text("Saved. It is in force").wait_for()

    row = Wording.objects.get()
    assert row.body.startswith("Ask for {{ artist }} \u2026 {% if artist %}")
    assert row.by == morning_cast.olga
    tab_to(page, f"a[href='{CARE}/versions']")
    page.keyboard.press("Enter")
    page.wait_for_url("**/versions")
    assert "Ask for {{ artist }}" in page.locator(".said ins").inner_text()
    assert visitor.complaints == []


def test_whoever_leaves_an_unsaved_wording_is_asked_and_nobody_else_is(
    visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    visitor = visit()
    visitor.sign_in(morning_cast.olga)
    page, asked = visitor.open(CARE), list[str]()

    def stay(dialog: Dialog) -> None:
        asked.append(dialog.type)
        dialog.dismiss()

    page.on("dialog", stay)
    text = page.get_by_label("Text", exact=True)

    text.press("Control+End")
    text.type(" Thank you.")
    page.get_by_role("link", name="All wordings").click()
    assert (asked, text.input_value().endswith("Thank you.")) == (["beforeunload"], True)
    page.get_by_role("button", name="Preview and check").click()  # a look keeps what is typed, and asks nothing
    page.wait_for_load_state()
    assert len(asked) == 1
    page.get_by_role("link", name="All wordings").click()
    assert len(asked) == 2
    page.get_by_role("button", name="Save as a new version").click()
    page.get_by_text("Saved. It is in force").wait_for()
    page.wait_for_load_state("networkidle")
    page.get_by_role("link", name="All wordings").click()
    page.wait_for_url("**/wordings?*")

    assert len(asked) == 2
    assert visitor.complaints == []


def test_a_refused_save_lists_what_is_wrong_once_and_keeps_the_list_up_to_date(
    visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    visitor = visit()
    visitor.sign_in(morning_cast.olga)
    page = visitor.open(CARE)
    text = page.get_by_label("Text", exact=True)

    text.fill("{{ studio }} {{ horoscope }} {{ caution }} {{ how_to_stop }}")
    page.get_by_role("button", name="Save as a new version").click()
    page.locator("#refused").wait_for()
    page.wait_for_timeout(900)  # the preview of a page that is shown again
    assert page.get_by_text("There is no field").count() == 1
    page.locator("#refused a mark").click()
    chosen = "one => one.value.slice(one.selectionStart, one.selectionEnd)"
    assert text.evaluate(chosen) == "{{ horoscope }}"
    text.fill("{{ studio }} {{ caution }} {{ how_to_stop }}")
    page.locator("#refused").wait_for(state="detached")

    assert visitor.complaints == []


def test_a_dear_character_is_marked_where_it_stands_and_goes_with_one_click(
    visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    visitor = visit()
    visitor.sign_in(morning_cast.olga)
    page = visitor.open(CARE)

    page.get_by_label("Text").press("Control+End")
    page.get_by_label("Text").type(" \U0001f33f")
    page.get_by_text("special ones among them").wait_for()
    assert page.locator(".bubble mark").inner_text() == "\U0001f33f"
    page.get_by_role("button", name="Spell it the cheapest way").click()
    page.get_by_text("all of them plain ones").wait_for()
    page.wait_for_load_state("networkidle")  # the preview is asked for once more when the page stands

    assert measure(page.get_by_label("Text").input_value()).encoding == "gsm7"
    assert not Wording.objects.exists()
    assert visitor.complaints == []


def test_without_scripts_the_buttons_do_it(
    chromium: Browser, visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    visitor = visit()
    visitor.sign_in(morning_cast.olga)
    context = chromium.new_context(
        java_script_enabled=False,
        storage_state=visitor.page.context.storage_state(),
        viewport={"width": 390, "height": 844},
    )
    page = context.new_page()
    page.goto(f"{visitor.address}{CARE}")

    page.get_by_text("What each field says here").click()
    assert page.get_by_text("{{ artist }}", exact=True).is_visible()
    page.get_by_label("Text").fill("{{ studio }}: no picking. {{ caution }} {{ how_to_stop }}")
    page.get_by_label("Another client").fill("bea")
    page.get_by_label("Another client").press("Enter")  # looks, and never saves
    assert page.get_by_label("Shown for").input_value() == str(morning_cast.clients["Bea"].pk)
    assert not Wording.objects.exists()
    page.get_by_role("button", name="Preview and check").click()
    assert "no picking." in page.locator(".bubble").inner_text()
    page.get_by_role("button", name="Save as a new version").click()

    assert "Saved." in page.get_by_role("status").first.inner_text()
    context.close()
    assert Wording.objects.count() == 1


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", WIDTHS)
def test_an_editor_full_of_matters_is_whole(
    width: int, scheme: str, visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    slot = Slot("caution", "", 0, "email", "en")
    today = morning_cast.now.astimezone(morning_cast.studio.zone).date()
    versions.save(
        morning_cast.studio,
        slot,
        Words("", "Rinse. Call {{ emergency_call }}. Get {{ emergency_care }}."),
        by=morning_cast.olga,
        now=morning_cast.now,
        seen=0,
        addition="x" * 200,
        professional=versions.Seen("Dr Wilhelmina Konstantinopolitana Featherstonehaugh-Asante", today),
    )
    letterhead.save_logo(morning_cast.studio, picture("JPEG", (900, 200)), by=morning_cast.olga, now=morning_cast.now)
    visitor = visit(width, scheme)
    visitor.sign_in(morning_cast.olga)

    for path in ("/wordings/caution/any/email/en", "/wordings/caution/any/email/en/versions", "/settings/letterhead"):
        page = visitor.open(path)
        for more in page.locator("details.more > summary").all():
            more.click()
        assert visitor.violations() == [], path
        assert not cut_off(visitor), path
        assert small_targets(visitor) == [], path
    page = visitor.open("/wordings/care/any/sms/en")
    page.get_by_label("Text").fill("{{ studio }} {{ horoscope }} all is safe " + "y" * 300)
    page.locator(".wrong").wait_for()
    assert visitor.violations() == []
    assert not cut_off(visitor)
    assert visitor.complaints == []


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", [320, 1280])
def test_a_letter_can_be_read_by_everyone(
    width: int, scheme: str, chromium: Browser, transactional_db: None, morning_cast: Cast
) -> None:
    """WCAG 2.2, 1.4.10: at 320 CSS pixels nothing is cut off; and axe finds nothing, in light and dark."""
    letterhead.save_logo(morning_cast.studio, picture("PNG", (900, 200)), by=morning_cast.olga, now=morning_cast.now)
    first = Slot("care", "", 0, "email", "en").first()
    words = Words(first.subject, first.body.replace("{{ caution }}", "Rinse first."), "en", caution="Rinse first.")
    head = letterhead.of(morning_cast.studio)
    html = letterhead.lay_out(words, morning_cast.studio, head, logo=letterhead.as_data(head)).html
    context = chromium.new_context(viewport={"width": width, "height": 700}, color_scheme=scheme)  # type: ignore[arg-type]  # one of SCHEMES
    page = context.new_page()

    page.set_content(html)

    assert Axe().run(page, options=STANDARD).response["violations"] == []
    assert page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth")
    paper = page.evaluate("getComputedStyle(document.body).backgroundColor")
    assert paper == ("rgb(250, 248, 244)" if scheme == "light" else "rgb(23, 22, 20)")
    context.close()
