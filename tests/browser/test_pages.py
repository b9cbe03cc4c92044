"""Every page in a real browser: WCAG 2.2 AA by axe-core, nothing cut off, thumbs' room, a quiet console, the print."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from aftercare import ruling, unsubscribing
from aftercare.lines import lines_of
from aftercare.models import Flag, Message
from aftercare.numbers import GROUPS
from studio.models import Reaction, Visit
from tests.browser.conftest import SCHEMES, WIDTHS, Visitor
from tests.cast import Cast
from tests.forecasts import forecast

pytestmark = pytest.mark.browser

THUMB = 44  # CSS px
LISTS = ["/today?artist=all", "/morning?artist=all", "/clients", "/messages", "/phone", "/book", "/settings"]
SETTINGS = ["/settings/live", "/settings/staff", "/settings/staff/new", "/settings/studio", "/settings/closing-days"]
SETTINGS += [
    "/settings/adhesives",
    "/settings/service-names",
    "/settings/calendar",
    "/settings/lines",
    "/settings/forecasts",
    "/settings/lots",
    "/settings/duty",
    "/settings/absences",
    "/settings/timing",
    "/settings/timing/history",
    *(f"/settings/timing/{group.slug}" for group in GROUPS),
    "/today/tell",
]


def pages(cast: Cast) -> list[str]:
    """Return the addresses of every page that has something on it."""
    mia, bea = cast.clients["Mia"], cast.clients["Bea"]
    held = cast.clients["Wilhelmina Konstantinopolitana"]
    Message.objects.filter(handed_over_at__isnull=False).update(rehearsed=True)
    due = Visit.objects.get(client=bea, status=Visit.Status.BOOKED)
    done = Visit.objects.filter(client=mia, status=Visit.Status.DONE).latest("starts_at")
    test = Visit.objects.get(client=bea, service="patch test")
    ruling.change(cast.studio, by=cast.olga, now=cast.now, prepare_days=5, lead_days=9)
    return [
        *LISTS,
        *SETTINGS,
        *(f"/messages?group={group}" for group in ("gone", "trouble", "withheld", "withdrawn")),
        *(f"/clients/{her.pk}" for her in (mia, bea, held)),
        f"/clients/{mia.pk}/edit",
        f"/clients/{mia.pk}/consent",
        f"/clients/{mia.pk}/merge",
        f"/clients/{mia.pk}/visits/new",
        f"/clients/{mia.pk}/reaction",
        "/clients/new",
        "/clients/merged",
        f"/reactions/{Reaction.objects.get(client=held).pk}/release",
        f"/flags/{Flag.objects.get(clients=mia).pk}/close",
        f"/flags/{Flag.objects.get(clients=mia).pk}/answer",
        f"/clients/{mia.pk}/conversation",
        f"/visits/{due.pk}/done",
        f"/visits/{due.pk}/edit",
        f"/visits/{due.pk}/missed",
        f"/visits/{done.pk}/after",
        f"/visits/{test.pk}/test-result",
        f"/phone/{mia.pk}",
        f"/settings/lots/{cast.glue.pk}/wearers",
        f"/settings/lots/{cast.glue.pk}/report",
        "/settings/timing/before?usual=prepare_days",
        "/settings/timing/history/0",
        "/wordings",
        "/wordings/care/any/sms/en",
        "/wordings/care/any/email/es",
        "/wordings/caution/any/sms/en",
        f"/unsubscribe/{unsubscribing.token(lines_of(cast.studio)['email'], 'mia@mail.example')}",
        "/password",
        "/look",
    ]


def cut_off(visitor: Visitor) -> bool:
    """Whether anything stands beside the page, so that one would have to scroll sideways."""
    return bool(visitor.page.evaluate("document.documentElement.scrollWidth > document.documentElement.clientWidth"))


def small_targets(visitor: Visitor) -> list[str]:
    """Return the acts, fields and places of the bar that are lower than a thumb."""
    found: list[str] = visitor.page.evaluate(
        """thumb => [...document.querySelectorAll('.acts a, .acts button, .bar a, .bar summary, .choose a, .turn a,'
             + ' .options label, input:not([type=radio],[type=checkbox],[type=hidden]), select, textarea')]
             .filter(one => one.checkVisibility() && one.getBoundingClientRect().height < thumb)
             .map(one => one.outerHTML.slice(0, 120))""",
        THUMB,
    )
    return found


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", WIDTHS)
def test_every_page_is_whole_and_can_be_used_by_everyone(
    width: int, scheme: str, visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    visitor = visit(width, scheme)
    visitor.sign_in(morning_cast.olga)
    wrong: list[str] = []

    for path in pages(morning_cast):
        visitor.open(path)
        wrong += [f"{path}: {found}" for found in visitor.violations()]
        wrong += [f"{path}: lower than a thumb: {found}" for found in small_targets(visitor)]
        wrong += [f"{path}: cut off at the side"] if cut_off(visitor) else []

    assert wrong == []
    assert visitor.complaints == []


@pytest.mark.parametrize("scheme", SCHEMES)
def test_pages_with_nothing_on_them_are_whole_too(scheme: str, visit: Callable[..., Visitor], empty_cast: Cast) -> None:
    visitor = visit(390, scheme)
    visitor.open("/sign-in")
    assert visitor.violations() == []
    visitor.sign_in(empty_cast.olga)

    for path in [*LISTS, *SETTINGS, "/clients?q=nobody", "/messages?group=trouble"]:
        visitor.open(path)
        assert visitor.violations() == [], path
        assert not cut_off(visitor), path
    assert visitor.complaints == []


@pytest.mark.parametrize("who", ["ada", "dee"])
def test_pages_of_the_other_roles_are_whole_too(who: str, visit: Callable[..., Visitor], morning_cast: Cast) -> None:
    visitor = visit(390, "light")
    visitor.sign_in(getattr(morning_cast, who))

    for path in [
        "/today?artist=all",
        "/morning",
        "/clients",
        "/messages",
        f"/clients/{morning_cast.clients['Mia'].pk}",
    ]:
        visitor.open(path)
        assert visitor.violations() == [], path
        assert not cut_off(visitor), path


@pytest.mark.parametrize("scheme", SCHEMES)
@pytest.mark.parametrize("width", WIDTHS)
def test_what_is_forecast_can_be_read_by_everyone(
    width: int, scheme: str, visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    bea = morning_cast.clients["Bea"]
    for number in range(12):
        her = morning_cast.client(f"Wilhelmina Konstantinopolitana {number}")
        forecast(morning_cast.done(her, morning_cast.at(9, -30)), morning_cast.at(10, -30))
        forecast(morning_cast.done(her, morning_cast.at(9, -9), share_left=5 * number), morning_cast.at(10, -9))
    forecast(morning_cast.done(her, morning_cast.at(8, -1)), morning_cast.at(9, -1), fill_day=7)
    visitor = visit(width, scheme)
    visitor.sign_in(morning_cast.olga)

    for path in (f"/clients/{bea.pk}", "/settings/forecasts", "/morning?artist=all", "/today?artist=all"):
        page = visitor.open(path)
        assert visitor.violations() == [], path
        assert not cut_off(visitor), path
        assert small_targets(visitor) == [], path
        assert small_letters(visitor) == [], path
    assert visitor.complaints == []
    page = visitor.open(f"/clients/{bea.pk}")
    page.get_by_text("The numbers, week by week").click()
    assert page.get_by_role("img", name="How much of the set is left, day by day").is_visible()
    assert page.get_by_role("cell", name="100").first.is_visible()
    assert visitor.violations() == []


def small_letters(visitor: Visitor) -> list[str]:
    """Return the words of drawings that are smaller on this screen than 12 pixels."""
    found: list[str] = visitor.page.evaluate(
        """() => [...document.querySelectorAll('svg text')].filter(one => {
             const svg = one.ownerSVGElement;
             const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
             return parseFloat(getComputedStyle(one).fontSize) * scale < 12;
           }).map(one => one.textContent)"""
    )
    return found


def test_what_must_be_mended_is_announced_and_leads_to_its_field(
    visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    visitor = visit()
    visitor.sign_in(morning_cast.ada)
    due = Visit.objects.get(client=morning_cast.clients["Bea"], status=Visit.Status.BOOKED)
    page = visitor.open(f"/visits/{due.pk}/done")

    page.evaluate("document.querySelector('form.form').noValidate = true")
    page.get_by_role("button", name="Mark done").click()

    assert "To mend:" in page.get_by_role("alert").inner_text()
    assert visitor.violations() == []
    page.get_by_role("alert").get_by_role("link").first.click()
    assert page.evaluate("document.querySelector(':target').getAttribute('name')") == "share"


def test_further_questions_are_asked_only_when_an_answer_calls_for_them(
    visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    visitor = visit()
    visitor.sign_in(morning_cast.ada)
    due = Visit.objects.get(client=morning_cast.clients["Bea"], status=Visit.Status.BOOKED)
    page = visitor.open(f"/visits/{due.pk}/done")
    assert not page.get_by_label("Its lot").is_visible()

    page.get_by_label("another, named below").check()

    assert page.get_by_label("Its lot").is_visible()


@pytest.mark.parametrize("who", ["olga", "ada", "dee"])
def test_the_printed_day_sheet_carries_no_word_on_health(
    who: str, visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    held = morning_cast.clients["Wilhelmina Konstantinopolitana"]
    later = morning_cast.visit(held, morning_cast.at(12, 4))
    morning_cast.plan()
    assert later.messages.filter(reason="on hold").exists()
    visitor = visit(1280, "light")
    visitor.sign_in(getattr(morning_cast, who))
    paper = ""

    for day in (morning_cast.at(12), later.starts_at):
        page = visitor.open(f"/today?artist=all&day={day:%Y-%m-%d}")
        page.emulate_media(media="print")
        paper += page.locator("body").inner_text()

    assert "Rosa Lindqvist" in paper
    assert "instructions not sent" in paper
    assert "Waiver to sign" in paper
    told = r"sensitive|patch|test|react|\bhold|\bheld\b|lens|under 18|guardian|sign reported|itch|\beyes?\b|wrote"
    things = r"remover|bonder|primer|oily|tape"
    assert re.findall(f"{told}|{things}", paper, re.IGNORECASE) == []


def test_the_whole_sheet_can_be_walked_by_keyboard(visit: Callable[..., Visitor], morning_cast: Cast) -> None:
    visitor = visit(1280, "light")
    visitor.sign_in(morning_cast.ada)
    page = visitor.open("/today")

    page.keyboard.press("Tab")
    assert page.locator(":focus").inner_text() == "Skip to the sheet"
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")

    assert page.evaluate("document.querySelector('main').contains(document.activeElement)")
    outline = page.evaluate("getComputedStyle(document.activeElement).outlineWidth")
    assert outline == "3px"
