"""A client's own pages in a real browser: without JavaScript, by everyone, on a phone at twice the size, and light."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, Response, expect

from aftercare import links
from aftercare.links import Purpose
from aftercare.models import Flag, Reply, Wish
from studio.models import Visit
from tests.aftercare.test_pictures import photo
from tests.browser.conftest import SCHEMES, WIDTHS, Visitor
from tests.cast import Cast

pytestmark = pytest.mark.browser

THUMB = 44  # CSS px: WCAG 2.2, 2.5.5 (AAA); AA asks for 24
MOST_BYTES = 60_000


def pages(cast: Cast) -> list[str]:
    """Return the addresses of her pages: a visit ahead, one that is done, one of somebody on hold, and her record."""
    bea, mia = cast.clients["Bea"], cast.clients["Mia"]
    held = cast.clients["Wilhelmina Konstantinopolitana"]
    visits = [
        cast.visit(bea, cast.at(10, 5)),
        Visit.objects.filter(client=mia, status="done").latest("starts_at"),
        cast.visit(held, cast.at(10, 5)),
        cast.visit(mia, cast.at(12, -1), status="cancelled"),
    ]
    return [*(way(visit) for visit in visits), f"/d/{links.token(Purpose.DATA, mia)}"]


def way(visit: Visit) -> str:
    return f"/v/{links.token(Purpose.VISIT, visit)}"


def unfold(page: Page) -> None:
    page.evaluate("document.querySelectorAll('details').forEach(one => one.open = true)")


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", WIDTHS)
def test_her_pages_can_be_used_by_everyone(
    width: int, scheme: str, visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    visitor = visit(width, scheme)
    wrong: list[str] = []

    for path in pages(morning_cast):
        visitor.open(path)
        unfold(visitor.page)
        wrong += [f"{path}: {found}" for found in visitor.violations()]
        wrong += [f"{path}: lower than a thumb: {found}" for found in low(visitor.page)]
        wrong += [f"{path}: cut off at the side"] if is_cut_off(visitor.page) else []

    assert wrong == []
    assert visitor.complaints == []


def low(page: Page) -> list[str]:
    found: list[str] = page.evaluate(
        """thumb => [...document.querySelectorAll('button, summary, .tick, .acts a, nav a, textarea, input[type=file]')]
             .filter(one => one.checkVisibility() && one.getBoundingClientRect().height < thumb)
             .map(one => one.outerHTML.slice(0, 120))""",
        THUMB,
    )
    return found


def is_cut_off(page: Page) -> bool:
    return bool(page.evaluate("document.documentElement.scrollWidth > document.documentElement.clientWidth"))


def test_at_twice_the_size_nothing_is_cut_off(visit: Callable[..., Visitor], morning_cast: Cast) -> None:
    # WCAG 2.2, 1.4.4 and 1.4.10: a page of 390 px at 200 % is one of 195 px.
    visitor = visit(195)

    for path in pages(morning_cast):
        visitor.open(path)
        unfold(visitor.page)
        assert not is_cut_off(visitor.page), path


def weighed(visitor: Visitor, path: str) -> dict[str, int]:
    """Open a page and return the bytes of all that came with it."""
    loaded: list[Response] = []

    def note(response: Response) -> None:
        loaded.append(response)

    visitor.page.on("response", note)
    visitor.open(path)
    visitor.page.wait_for_load_state("networkidle")
    return {response.url: len(response.body()) for response in loaded}


def test_a_first_load_stays_under_sixty_kilobytes(visit: Callable[..., Visitor], morning_cast: Cast) -> None:
    for path in pages(morning_cast):
        weights = weighed(visit(390), path)

        print(f"/{path.split('/')[1]}: {sum(weights.values()) / 1000:.1f} kB in {len(weights)} files")
        assert sum(weights.values()) < MOST_BYTES, weights
        assert not [url for url in weights if url.endswith(".js")]


@pytest.fixture
def plain(chromium: Browser, live_server: Any) -> Any:
    """A telephone's browser that runs no JavaScript."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, java_script_enabled=False)
    page = context.new_page()
    page.set_default_timeout(20_000)
    yield page
    context.close()


def test_an_eye_in_trouble_is_told_with_a_photo_and_answered_without_javascript(
    plain: Page, live_server: Any, morning_cast: Cast, tmp_path: Path
) -> None:
    done = Visit.objects.filter(client=morning_cast.clients["Mia"], status="done").latest("starts_at")
    picture = tmp_path / "eye.jpg"
    picture.write_bytes(photo())
    plain.goto(f"{live_server.url}{way(done)}")

    plain.get_by_label("An eye will not open").check()
    plain.get_by_label("Right", exact=True).check()
    plain.get_by_label("In your own words").fill("since I woke up")
    plain.get_by_label("Photos").set_input_files(picture)
    plain.get_by_role("button", name="Send", exact=True).click()

    expect(plain.get_by_text("Do not force the eye open: no pulling, remover, oil or acetone.")).to_be_visible()
    expect(plain.get_by_role("link", name="Call 911").first).to_be_visible()
    reply = Reply.objects.exclude(ticked={}).get()
    assert (reply.text, reply.reading["side"], reply.attachments.count()) == ("since I woke up", "right", 1)
    assert Flag.objects.get(replies=reply).urgency == "emergency"


def test_another_day_is_asked_for_without_javascript(plain: Page, live_server: Any, morning_cast: Cast) -> None:
    ahead = morning_cast.visit(morning_cast.clients["Bea"], morning_cast.at(10, 5))
    plain.goto(f"{live_server.url}{way(ahead)}")

    plain.locator("summary", has_text="Ask for another day").click()
    plain.get_by_label("Mornings").check()
    plain.get_by_role("button", name="Ask for another day").click()

    expect(plain.get_by_text("Until you hear from them, the visit stays as it is.")).to_be_visible()
    assert Wish.objects.filter(kind="move").get().reply.ticked["suits"] == ["mornings"]


@pytest.mark.parametrize(
    ("language", "question", "hours", "done"),
    [
        ("en", "When may we write to you?", "in the evening, from 5:00 pm", "Changed."),
        ("es", "¿Cuándo te podemos escribir?", "al final del día, desde las 5:00 pm", "Cambiado."),
    ],
)
def test_hours_are_chosen_without_javascript(
    language: str, question: str, hours: str, done: str, plain: Page, live_server: Any, morning_cast: Cast
) -> None:
    bea = morning_cast.clients["Bea"]
    plain.goto(f"{live_server.url}{way(morning_cast.visit(bea, morning_cast.at(10, 5)))}?lang={language}")
    plain.get_by_text(question).click()
    plain.get_by_label(hours).check()
    plain.locator("button[value=hours]").click()

    expect(plain.get_by_role("status")).to_contain_text(done)
    plain.get_by_text(question).click()
    expect(plain.get_by_label(hours)).to_be_checked()
    bea.refresh_from_db()
    assert bea.wished_hours == "evening"


def test_another_language_is_one_tap_away(plain: Page, live_server: Any, morning_cast: Cast) -> None:
    done = Visit.objects.filter(client=morning_cast.clients["Mia"], status="done").latest("starts_at")
    plain.goto(f"{live_server.url}{way(done)}")

    plain.get_by_role("link", name="Español").click()

    expect(plain.locator("html")).to_have_attribute("lang", "es")
    expect(plain.get_by_text("enjuaga 20 min").first).to_be_visible()
