"""One click out of e-mails. Outside facts: RFC 8058, 3.2 and 8 (what mail hosts post, and that they follow nothing)."""

from __future__ import annotations

import pytest
from django.test import Client as Browser

from aftercare import stops, unsubscribing
from aftercare.lines import lines_of
from aftercare.models import Line, Stop
from tests.cast import Cast
from tests.pages import words

ZOE = "zoe@mail.example"
PAIR = {"List-Unsubscribe": "One-Click"}


@pytest.fixture
def line(cast: Cast) -> Line:
    return lines_of(cast.studio)["email"]


def link(line: Line, address: str = ZOE) -> str:
    return f"/unsubscribe/{unsubscribing.token(line, address)}"


@pytest.mark.parametrize(
    "body",
    [
        {"data": PAIR},  # multipart/form-data
        {"data": "List-Unsubscribe=One-Click", "content_type": "application/x-www-form-urlencoded"},
        {"data": b"", "content_type": "text/plain"},
    ],
    ids=["form-data", "urlencoded", "empty"],
)
def test_a_mail_hosts_post_ends_it_without_cookie_sign_in_or_redirect(line: Line, body: dict[str, object]) -> None:
    response = Browser(enforce_csrf_checks=True).post(link(line), **body)  # type: ignore[arg-type]

    assert response.status_code == 200
    assert not response.cookies
    assert stops.is_unsubscribed(line, ZOE)
    assert Stop.objects.get().words == stops.UNSUBSCRIBED


@pytest.mark.parametrize("method", ["get", "head"])
def test_whoever_only_looks_changes_nothing(line: Line, method: str) -> None:
    response = getattr(Browser(), method)(link(line))

    assert response.status_code == 200
    assert not Stop.objects.exists()
    assert "no-store" in response.headers["Cache-Control"]


def test_the_page_has_a_button_that_ends_it(cast: Cast, line: Line) -> None:
    browser = Browser()
    asked = browser.get(link(line))
    done = browser.post(link(line))

    assert b'<form method="post"' in asked.content
    assert f"No more e-mails from {cast.studio.name} to {ZOE}?" in words(asked)
    assert f"{cast.studio.name} sends no more e-mails to {ZOE}." in words(done)
    assert "call" in words(done)  # who is in pain must not wait for our e-mail
    assert 'href="tel:+12125550199"' in done.text
    assert b"<form" not in done.content


def test_a_second_click_is_answered_as_the_first_was(line: Line) -> None:
    browser = Browser()

    assert words(browser.post(link(line))) == words(browser.post(link(line))) == words(browser.get(link(line)))
    assert Stop.objects.count() == 1


def test_her_texts_go_on(cast: Cast, line: Line) -> None:
    zoe = cast.client("Zoe", email="Zoe@Mail.example")

    Browser().post(link(line))

    assert list(stops.standing(zoe)) == ["email"]


def test_it_speaks_her_language(cast: Cast, line: Line) -> None:
    cast.client("Zoe", email=ZOE, language="es")

    page = Browser().get(link(line))

    assert "No quiero más correos" in words(page)
    assert b'<html lang="es">' in page.content


@pytest.mark.parametrize("method", ["get", "post"])
def test_a_link_that_is_not_whole_ends_nothing_and_says_what_to_do(line: Line, method: str) -> None:
    response = getattr(Browser(), method)(link(line)[:-3])

    assert response.status_code == 404
    assert "STOP" in words(response)
    assert not Stop.objects.exists()


def test_other_methods_are_refused(line: Line) -> None:
    assert Browser().delete(link(line)).status_code == 405
