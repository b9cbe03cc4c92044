"""What was typed on a page that could not be taken any more comes back; what another site sent does not."""

from __future__ import annotations

import re
from typing import Any

import pytest
from django.contrib.sessions.models import Session
from django.test import Client as Browser

from tests.cast import PASSWORD, Cast
from tests.pages import SignIn, words

OURS = {"HTTP_ORIGIN": "http://testserver"}
WORDS = "She says that the left lid is calm again since Tuesday."


def fields(response: Any) -> dict[str, str]:
    """Return what the page's last form would post."""
    form = response.content.decode().rpartition("<form")[2]
    return dict(re.findall(r'<input type="hidden" name="(\w+)" value="([^"]*)"', form))


def sent_too_late(cast: Cast, as_: SignIn) -> tuple[Browser, Any]:
    """Have Ada send a form after her sign-in was over."""
    mia = cast.client("Mia", "Quist")
    cast.done(mia, cast.at(10, -2))
    browser = as_(cast.ada)
    Session.objects.all().delete()
    return browser, browser.post(f"/clients/{mia.pk}/reaction", {"words": WORDS, "visit": ""}, **OURS)  # type: ignore[arg-type]


def test_a_form_sent_without_a_sign_in_is_sent_after_it(cast: Cast, as_: SignIn) -> None:
    browser, asked = sent_too_late(cast, as_)
    assert asked.status_code == 403
    assert "What you typed is kept" in words(asked)

    back = browser.post(
        "/sign-in", {"username": "ada@wrenfield.example", "password": PASSWORD, "kept": fields(asked)["kept"]}
    )

    assert WORDS in words(back)
    assert "no-store" in back.headers["Cache-Control"]
    mia = cast.clients["Mia"]
    assert f'action="/clients/{mia.pk}/reaction"' in back.content.decode()
    sent = browser.post(f"/clients/{mia.pk}/reaction", fields(back), **OURS)  # type: ignore[arg-type]
    assert sent.status_code == 302
    assert mia.reactions.get().words == WORDS


def test_a_wrong_password_in_between_loses_nothing(cast: Cast, as_: SignIn) -> None:
    browser, asked = sent_too_late(cast, as_)

    again = browser.post(
        "/sign-in", {"username": "ada@wrenfield.example", "password": "x", "kept": fields(asked)["kept"]}
    )

    assert fields(again)["kept"] == fields(asked)["kept"]


def test_a_form_whose_proof_is_out_of_date_is_shown_once_more(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia", "Quist")
    browser = Browser(enforce_csrf_checks=True)
    assert cast.olga.user
    browser.force_login(cast.olga.user)

    kept = browser.post(f"/clients/{mia.pk}/stop", {"channel": "sms", "words": WORDS}, **OURS)  # type: ignore[arg-type]

    assert kept.status_code == 403
    assert WORDS in words(kept)
    proof = fields(kept)
    assert proof["channel"] == "sms"
    assert browser.post(f"/clients/{mia.pk}/stop", proof, **OURS).status_code == 302  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "headers",
    [{}, {"HTTP_ORIGIN": "https://elsewhere.example"}, {"HTTP_ORIGIN": "null"}],
    ids=["none", "other", "null"],
)
def test_what_did_not_come_from_a_page_of_ours_is_not_offered(headers: dict[str, str], cast: Cast) -> None:
    browser = Browser(enforce_csrf_checks=True)
    assert cast.olga.user
    browser.force_login(cast.olga.user)

    response = browser.post("/settings/closing-days", {"date": "2027-12-25"}, **headers)  # type: ignore[arg-type]

    assert response.status_code == 403
    assert b"<form" not in response.content
    assert "Nothing was changed" in words(response)


def test_a_password_is_never_kept(cast: Cast) -> None:
    browser = Browser(enforce_csrf_checks=True)

    at_the_door = browser.post("/sign-in", {"username": "ada@wrenfield.example", "password": PASSWORD}, **OURS)  # type: ignore[arg-type]
    elsewhere = browser.post("/settings/staff/new", {"name": "Ivy", "new_password": PASSWORD}, **OURS)  # type: ignore[arg-type]

    assert PASSWORD not in at_the_door.content.decode()
    assert PASSWORD not in elsewhere.content.decode()


def test_what_was_not_signed_by_us_is_not_handed_back(cast: Cast) -> None:
    response = Browser().post(
        "/sign-in", {"username": "ada@wrenfield.example", "password": PASSWORD, "kept": "WyIvc3RvcCIsW10sZmFsc2Vd"}
    )

    assert response.status_code == 302
