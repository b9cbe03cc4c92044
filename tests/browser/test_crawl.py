"""Every page of the staff's, full and empty, in both languages, light and dark, on a phone, a tablet and a desk.

Outside facts: WCAG 2.2 AA by axe-core; its 1.4.10 (reflow): no scrolling sideways. There are twelve ways to see a page:
each is seen twice, in either language and either mode once, and its width goes round.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator

import pytest
from django.test import Client as Browser
from django.urls import URLPattern, URLResolver, get_resolver, resolve, reverse

from studio.models import Staff
from tests.browser.conftest import SCHEMES, Visitor
from tests.browser.test_pages import LISTS, SETTINGS, cut_off, pages, small_targets
from tests.cast import Cast

pytestmark = pytest.mark.browser

SIZES = {390: 844, 820: 1180, 1280: 900}
EMPTY = [
    *LISTS,
    *SETTINGS,
    "/clients?q=nobody",
    "/messages?group=trouble",
    "/clients/new",
    "/clients/merged",
    "/password",
]


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_page_is_whole_and_can_be_used_by_everyone(
    language: str, visit: Callable[..., Visitor], morning_cast: Cast
) -> None:
    assert wrong_with(pages(morning_cast), language, visit, morning_cast) == []


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_page_with_nothing_on_it_is_whole_too(language: str, visit: Callable[..., Visitor], empty_cast: Cast) -> None:
    assert wrong_with(EMPTY, language, visit, empty_cast) == []


def wrong_with(paths: Iterable[str], language: str, visit: Callable[..., Visitor], cast: Cast) -> list[str]:
    """Walk the pages as the owner, one mode after the other, one width after the other; return all that is wrong."""
    Staff.objects.filter(pk=cast.olga.pk).update(language=language)
    windows = [visit(390, scheme) for scheme in SCHEMES]
    wrong: list[str] = []
    for window in windows:
        window.sign_in(cast.olga)
    for place, path in enumerate(paths):
        window = windows[(place + (language == "es")) % len(windows)]  # each page in both modes, one a language
        window.open(path)
        assert window.page.locator(f"html[lang={language}]").count() or path.startswith("/unsubscribe"), path
        shown = list(SIZES)[(place + 2 * (language == "es")) % len(SIZES)]
        for width in dict.fromkeys((390, shown)):
            window.page.set_viewport_size({"width": width, "height": SIZES[width]})
            wrong += [f"{path} at {width}: cut off at the side"] if cut_off(window) else []
        wrong += [f"{path} at {shown}: {found}" for found in window.violations()]
        wrong += [f"{path} at {shown}: lower than a thumb: {found}" for found in small_targets(window)]
    return wrong + [complaint for window in windows for complaint in window.complaints]


# Addresses that are no page for people, or not the staff's: what they say is tested beside their code.
# Hers are walked in test_hers.py and test_consultation.py.
HERS = {"consultation", "consultation_anew", "her_calendar", "her_photo", "her_record", "her_record_file", "her_visit"}
NOT_FOR_STAFF = HERS | {"attachment", "figures_csv", "healthz", "home", "hook", "sign_in", "wording_new"}


def test_no_page_is_left_out(morning_cast: Cast) -> None:
    """A new page goes into the lists of test_pages.py."""
    browser = Browser()
    assert morning_cast.olga.user
    browser.force_login(morning_cast.olga.user)
    crawled = {resolve(path.partition("?")[0]).url_name for path in pages(morning_cast)}

    left_out = {
        name
        for name, path in routes(get_resolver().url_patterns)
        if name not in crawled | NOT_FOR_STAFF and browser.get(path).status_code != 405
    }

    assert left_out == set()


def routes(patterns: Iterable[URLPattern | URLResolver]) -> Iterator[tuple[str, str]]:
    """Return each route that has a name, with an address of it."""
    for pattern in patterns:
        if isinstance(pattern, URLResolver):
            yield from routes(pattern.url_patterns)
        elif pattern.name:
            kinds = pattern.pattern.converters
            yield pattern.name, reverse(pattern.name, kwargs=dict.fromkeys(kinds, "1"))
