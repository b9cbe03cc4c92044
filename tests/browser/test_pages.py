"""Pages in a real browser: of each role, what is forecast, what must be mended, the print, the keyboard."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from aftercare import bookwork, ruling, unsubscribing
from aftercare.lines import lines_of
from aftercare.models import Flag, Message
from aftercare.numbers import GROUPS
from studio.models import BookFile, Reaction, Visit
from tests.browser.conftest import SCHEMES, WIDTHS, Visitor
from tests.cast import Cast
from tests.forecasts import forecast

pytestmark = pytest.mark.browser

THUMB = 44  # CSS px
LISTS = [
    "/today?artist=all",
    "/morning?artist=all",
    "/clients",
    "/messages",
    "/phone",
    "/book",
    "/settings",
    "/figures",
    "/figures?period=own&from=x&to=",
]
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
    "/settings/letterhead",
    "/settings/questions",
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
        f"/clients/{mia.pk}/answers",
        f"/clients/{mia.pk}/forget",
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
        "/wordings/how_to_stop/any/email/en",
        "/wordings/care/fill.0/sms/en",
        "/wordings/check/any/email/fr",
        "/wordings?language=fr",
        "/wordings/care/any/sms/en/versions",
        "/phone/own",
        f"/unsubscribe/{unsubscribing.token(lines_of(cast.studio)['email'], 'mia@mail.example')}",
        f"/clients/{bea.pk}/merge?other={mia.pk}",
        f"/settings/adhesives/{cast.glue.pk}",
        f"/settings/staff/{cast.ada.pk}",
        f"/settings/staff/{cast.ada.pk}/sign-in",
        f"/book/files/{_file(cast).pk}",
        "/password",
        "/look",
    ]


def _file(cast: Cast) -> BookFile:
    """Return a file that was read and waits for a person's go, with something new, something bad and a new name."""
    data = (
        b"visit,client,first_name,service,starts_at,sms_ok\n"
        b"1,1,Mia,fill,2027-03-09 14:30,perhaps\n"
        b"2,2,Bea,fill,2027-03-09 16:30,yes\n"
        b"3,3,Zoe,glow top-up,2027-03-10 09:00,\n"
    )
    file = BookFile.objects.create(
        studio=cast.studio,
        name="appointment_book_2027_03_exported.csv",
        format="csv",
        data=data,
        uploaded_at=cast.now,
    )
    bookwork.run_waiting(cast.now)
    return file


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

    paths = ["/settings/forecasts", "/morning?artist=all", "/today?artist=all", "/figures?period=year"]
    for path in (f"/clients/{bea.pk}", *paths):
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


LONG = "Maximiliananastasiakonstantinopolitanska"  # as long as a first name may be, and no place to break it


@pytest.mark.parametrize("width", WIDTHS)
def test_names_that_cannot_be_broken_stay_within_what_they_stand_on(
    width: int, visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    mia = morning_cast.clients["Mia"]
    type(mia).objects.filter(pk=mia.pk).update(first_name=LONG, last_name=LONG, email=f"{LONG}@{LONG}.example".lower())
    morning_cast.glue.lot = LONG.upper()
    morning_cast.glue.save()
    for staff in (morning_cast.ada, morning_cast.olga):
        type(staff).objects.filter(pk=staff.pk).update(name=f"{staff.name}{LONG}", is_artist=True)
    flag = Flag.objects.get(clients=mia)
    done = Visit.objects.filter(client=mia, status=Visit.Status.DONE).latest("starts_at")
    visitor = visit(width, "light")
    visitor.sign_in(morning_cast.olga)

    for path in [
        "/today?artist=all",
        "/morning?artist=all",
        "/figures",
        "/password",
        f"/clients/{mia.pk}",
        f"/clients/{mia.pk}/conversation",
        f"/flags/{flag.pk}/answer",
        f"/visits/{done.pk}/done",
    ]:
        visitor.open(path)
        assert not cut_off(visitor), path
        assert sticking_out(visitor) == [], path


def sticking_out(visitor: Visitor) -> list[str]:
    """Return the words of acts, places and choices that are wider than what they stand on."""
    found: list[str] = visitor.page.evaluate(
        """() => [...document.querySelectorAll('.acts a, .acts button, .choose a, .options label')].filter(one => {
             if (!one.checkVisibility()) return false;
             const within = one.getBoundingClientRect();
             return [...one.childNodes].filter(node => node.nodeType === Node.TEXT_NODE).some(node => {
               const range = document.createRange();
               range.selectNodeContents(node);
               const words = range.getBoundingClientRect();
               return words.width && (words.left < within.left - 1 || words.right > within.right + 1);
             });
           }).map(one => one.outerHTML.slice(0, 120))"""
    )
    return found


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


@pytest.mark.parametrize("width", [390, 1280])
def test_a_client_is_found_from_anywhere_by_the_keyboard_alone(
    width: int, visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    visitor = visit(width, "light")
    visitor.sign_in(morning_cast.ada)
    page = visitor.open("/messages")

    page.keyboard.press("/")
    page.keyboard.type("castell")
    page.keyboard.press("Enter")
    page.wait_for_url("**/clients?q=castell")

    assert page.get_by_role("link", name="Bea Castellanos").is_visible()
    page.keyboard.press("/")  # here it leads to the page's own search
    assert page.evaluate("document.activeElement.id") == "q"


def test_a_slash_that_is_written_stays_where_it_is_written(visit: Callable[..., Visitor], morning_cast: Cast) -> None:
    visitor = visit(1280, "light")
    visitor.sign_in(morning_cast.ada)
    page = visitor.open(f"/clients/{morning_cast.clients['Mia'].pk}/reaction")

    page.get_by_label("what was seen or said").fill("")
    page.keyboard.type("left/right")

    assert page.get_by_label("what was seen or said").input_value() == "left/right"


def test_what_was_done_is_undone_by_the_keyboard(visit: Callable[..., Visitor], morning_cast: Cast) -> None:
    visitor = visit(390, "light")
    visitor.sign_in(morning_cast.ada)
    page = visitor.open("/morning")
    page.get_by_role("button", name="I have this").first.click()
    assert visitor.violations() == []

    undo = page.get_by_role("status").get_by_role("button", name="Undo")
    undo.focus()
    page.keyboard.press("Enter")

    page.get_by_text("Given back: it waits for whoever takes it.").wait_for()
    assert not Flag.objects.filter(state=Flag.State.TAKEN).exists()
