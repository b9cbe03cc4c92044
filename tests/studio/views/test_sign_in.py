"""Signing in, out, and one's password."""

from __future__ import annotations

import re

from django.test import Client as Browser

from studio.views.sign_in import FAILURES, FAILURES_OF_A_PLACE
from tests.cast import PASSWORD, Cast
from tests.pages import SignIn, words


def sign_in(browser: Browser, email: str, password: str, **more: str) -> str:
    response = browser.post("/sign-in", {"username": email, "password": password}, **more)  # type: ignore[arg-type]
    return "in" if response.status_code == 302 else words(response)


def test_the_right_password_opens_today_s_sheet(cast: Cast) -> None:
    response = Browser().post("/sign-in", {"username": "ada@wrenfield.example", "password": PASSWORD}, follow=True)

    assert response.redirect_chain[-1][0] == "/today"


def test_capitals_in_the_address_do_not_matter(cast: Cast) -> None:
    assert sign_in(Browser(), " Ada@Wrenfield.example ", PASSWORD) == "in"


def test_a_wrong_password_and_an_unknown_address_are_told_in_the_same_words(cast: Cast) -> None:
    wrong = sign_in(Browser(), "ada@wrenfield.example", "wrong")
    unknown = sign_in(Browser(), "nobody@wrenfield.example", "wrong")

    assert "do not go together" in wrong
    assert wrong.replace("ada@", "x@") == unknown.replace("nobody@", "x@")


def test_after_ten_failures_even_the_right_password_waits(cast: Cast) -> None:
    browser = Browser()
    for _ in range(FAILURES):
        sign_in(browser, "ada@wrenfield.example", "wrong")

    said = sign_in(browser, "ADA@wrenfield.example", PASSWORD)

    assert "There were 10 failed tries with this e-mail from here. Wait 15 minutes" in said


def test_failures_elsewhere_and_with_other_addresses_lock_nobody_out(cast: Cast) -> None:
    for _ in range(FAILURES):
        sign_in(Browser(), "ada@wrenfield.example", "wrong", REMOTE_ADDR="192.0.2.7")
        sign_in(Browser(), "noor@wrenfield.example", "wrong")

    assert sign_in(Browser(), "ada@wrenfield.example", PASSWORD) == "in"


def test_one_password_tried_on_many_addresses_from_one_place_waits_too(cast: Cast) -> None:
    for number in range(FAILURES_OF_A_PLACE):
        sign_in(Browser(), f"somebody{number}@wrenfield.example", "summer2027")

    said = sign_in(Browser(), "ada@wrenfield.example", PASSWORD)

    assert "There were 100 failed tries from here. Wait 15 minutes, then try again." in said
    assert sign_in(Browser(), "ada@wrenfield.example", PASSWORD, REMOTE_ADDR="192.0.2.7") == "in"


def test_a_studio_behind_one_address_may_mistype_and_whoever_is_in_does_not_begin_the_count_anew(cast: Cast) -> None:
    for number in range(FAILURES_OF_A_PLACE - 1):
        sign_in(Browser(), f"somebody{number}@wrenfield.example", "wrong")
    assert sign_in(Browser(), "ada@wrenfield.example", PASSWORD) == "in"

    sign_in(Browser(), "noor@wrenfield.example", "wrong")

    assert "from here" in sign_in(Browser(), "noor@wrenfield.example", PASSWORD)


def test_nine_failures_are_forgotten_once_one_is_in(cast: Cast) -> None:
    browser = Browser()
    for _ in range(FAILURES - 1):
        sign_in(browser, "ada@wrenfield.example", "wrong")
    assert sign_in(Browser(), "ada@wrenfield.example", PASSWORD) == "in"

    for _ in range(FAILURES - 1):
        sign_in(browser, "ada@wrenfield.example", "wrong")

    assert sign_in(Browser(), "ada@wrenfield.example", PASSWORD) == "in"


def test_signing_out_takes_a_post(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.ada)

    assert browser.get("/sign-out").status_code == 405
    assert browser.post("/sign-out").status_code == 302
    assert browser.get("/today").headers["Location"].startswith("/sign-in")


def test_a_page_asked_for_is_shown_after_signing_in_but_no_foreign_one(cast: Cast) -> None:
    said = {"username": "ada@wrenfield.example", "password": PASSWORD}

    ours = Browser().post("/sign-in", {**said, "next": "/morning"})
    foreign = Browser().post("/sign-in", {**said, "next": "https://elsewhere.example/"})

    assert ours.headers["Location"] == "/morning"
    assert foreign.headers["Location"] == "/"


def test_choosing_a_password_ends_the_one_time_one(cast: Cast, as_: SignIn) -> None:
    browser, user = as_(cast.ada), cast.ada.user
    assert user is not None
    user.one_time_password = True
    user.save()

    new = "quite another password"
    browser.post("/password", {"old_password": PASSWORD, "new_password1": new, "new_password2": new})

    user.refresh_from_db()
    assert not user.one_time_password
    assert browser.get("/today").status_code == 200
    assert sign_in(Browser(), user.email, new) == "in"


def test_whoever_has_a_one_time_password_is_told_why_and_goes_on_to_her_day(cast: Cast, as_: SignIn) -> None:
    browser, user = as_(cast.ada), cast.ada.user
    assert user is not None
    user.one_time_password = True
    user.save()
    new = {"new_password1": "quite another password", "new_password2": "quite another password"}

    asked = words(browser.get("/today", follow=True))
    refused = words(browser.post("/password", {"old_password": "x", **new}))
    chosen = browser.post("/password", {"old_password": PASSWORD, **new})

    for page in (asked, refused):
        assert "Choose one of your own now; every other page opens after that." in page
        assert "Back" not in page
    assert chosen.headers["Location"] == "/"
    assert "Your password is changed." in words(browser.get("/", follow=True))
    assert "Back" in words(browser.get("/password"))


def test_a_page_that_is_not_there_says_so_and_leads_back(cast: Cast, as_: SignIn) -> None:
    response = as_(cast.ada).get("/nothing-here")

    assert response.status_code == 404
    assert "There is no such page here" in words(response)
    assert 'href="/"' in response.content.decode()


def test_a_client_whose_link_was_cut_short_reads_what_not_to_wait_for(cast: Cast) -> None:
    page = words(Browser().get("/v/"))

    assert "do not wait for a link: see a doctor or an eye doctor today" in page
    assert "rinse first" in page


def test_pages_allow_no_script_and_no_style_but_our_own_files(cast: Cast, as_: SignIn) -> None:
    response = as_(cast.ada).get("/today")

    policy = response.headers["Content-Security-Policy"]
    assert "default-src 'none'" in policy
    assert "style-src 'self'" in policy
    assert "<style" not in response.content.decode()
    assert re.findall(r"<script(?! src=\"/static/)", response.content.decode()) == []
    assert " style=" not in response.content.decode()
