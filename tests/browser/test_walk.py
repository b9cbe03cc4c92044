"""The main job in a real browser: from the book to the client's phone, and her answer to the morning list."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from aftercare import demo, tasks
from aftercare.models import Message, Reply
from studio import clock
from studio.models import Staff, Visit
from tests import cast as casting
from tests.browser.conftest import SCHEMES, WIDTHS, Visitor

pytestmark = pytest.mark.browser

PICTURES = Path(__file__).parent / "pictures"
HEADER = "visit,client,first_name,last_name,mobile,email,time_zone,sms_ok,service,artist,starts_at,minutes,status\n"


def stands(visitor: Visitor, what: str) -> None:
    """The page as it stands suits everybody, and the browser has nothing to complain of."""
    assert visitor.violations() == [], what
    assert visitor.complaints == [], what


def tap(page: Page, name: str) -> None:
    page.get_by_role("button", name=name, exact=True).click()


@pytest.mark.django_db(transaction=True)
@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", WIDTHS)
def test_from_the_book_to_her_phone_and_back(
    visit: Callable[..., Visitor], tmp_path: Path, width: int, scheme: str
) -> None:
    cast = casting.make()
    visitor = visit(width, scheme)
    page = visitor.page

    visitor.sign_in(cast.olga)
    stands(visitor, "the empty day sheet")
    _bring_in(visitor, _book(tmp_path, cast))
    _mark_done(visitor)

    # Aftercare goes half an hour after the visit was marked done, and not before eight.
    assert tasks.send_due(studio_id=cast.studio.pk, now=cast.at(9))["handed_over"] >= 1
    _answer_on_her_phone(visitor)

    visitor.open("/morning?artist=all")
    expect(page.get_by_role("heading", name="See today")).to_be_visible()
    expect(page.get_by_text("left lid is kinda puffy")).to_be_visible()
    stands(visitor, "the morning list")
    assert Reply.objects.get().flag is not None


def _book(folder: Path, cast: casting.Cast) -> Path:
    ended = cast.at(5).astimezone(cast.studio.zone)  # it is between seven and eight there, and she has just left
    her = f"C1,Rosa,Lindqvist,(212) 555-0101,rosa@example.com,{cast.studio.time_zone},yes"
    row = f"V1,{her},full set,Ada,{ended:%Y-%m-%dT%H:%M},90,booked\n"
    file = folder / "week.csv"
    file.write_text(HEADER + row, encoding="utf-8")
    return file


def _bring_in(visitor: Visitor, book: Path) -> None:
    page = visitor.open("/book")
    page.locator("input[type=file]").set_input_files(str(book))
    tap(page, "Read it")
    stands(visitor, "a file being read")
    assert not Visit.objects.exists()

    assert tasks.run_imports() == 1
    page.reload()
    expect(page.get_by_text("Nothing is written yet")).to_be_visible()
    stands(visitor, "the preview")
    assert not Visit.objects.exists()
    tap(page, "Write it")

    assert tasks.run_imports() == 1
    page.reload()
    expect(page.get_by_text("Written.")).to_be_visible()
    assert Visit.objects.get().client.name == "Rosa Lindqvist"


def _mark_done(visitor: Visitor) -> None:
    page = visitor.open("/today?artist=all")
    expect(page.get_by_role("link", name="Rosa Lindqvist", exact=True)).to_be_visible()
    stands(visitor, "the day sheet")
    page.get_by_role("link", name="Done").first.click()
    stands(visitor, "marking a visit done")
    page.get_by_text("not known", exact=True).first.click()
    page.get_by_text("happy", exact=True).first.click()
    tap(page, "Mark done")
    expect(page.get_by_text("aftercare").first).to_be_visible()
    stands(visitor, "what goes out after the visit")
    assert Visit.objects.get().status == Visit.Status.DONE


def _answer_on_her_phone(visitor: Visitor) -> None:
    page = visitor.open("/phone")
    page.get_by_role("link", name="Rosa Lindqvist", exact=True).click()
    care = Message.objects.get(occasion="care")
    assert care.state == "handed_over"
    expect(page.get_by_text(care.text[:40])).to_be_visible()
    stands(visitor, "her phone")
    page.get_by_label("Her answer").fill("Love them!! only my left lid is kinda puffy since last nite")
    tap(page, "Send")
    expect(page.get_by_text("left lid is kinda puffy")).to_be_visible()


@pytest.mark.django_db(transaction=True)
def test_the_demo_studio_shows_what_the_readme_shows(visit: Callable[..., Visitor], tmp_path: Path) -> None:
    """Also takes the README's two pictures; `KEEP_PICTURES=1` puts them where the README looks for them."""
    demo.make(clock.now(), lambda: casting.PASSWORD, lambda _text: None)
    tasks.send_due()
    folder = PICTURES if os.environ.get("KEEP_PICTURES") else tmp_path
    visitor = visit(390, "light")
    visitor.sign_in(Staff.objects.get(name="Ines Halloran"))

    page = visitor.open("/morning?artist=all")
    expect(page.get_by_text("cant open my right eye")).to_be_visible()
    stands(visitor, "the demo's morning list")
    page.screenshot(path=folder / "morning-list.png", clip={"x": 0, "y": 0, "width": 390, "height": 844})

    page = visitor.open("/phone")
    page.get_by_role("link", name="Wilhelmina", exact=False).first.click()
    expect(page.get_by_text("puffy n itchy")).to_be_visible()
    page.screenshot(path=folder / "phone.png", full_page=True)

    assert (folder / "morning-list.png").stat().st_size > 10_000
    assert (folder / "phone.png").stat().st_size > 10_000
