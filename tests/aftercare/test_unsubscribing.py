"""Outside facts: RFC 8058, 3.1 and 8 (the two headers, as its examples have them); RFC 5322, 2.1.1 (lines of 998)."""

from __future__ import annotations

from typing import Any

import pytest
from django.core import signing

from aftercare import unsubscribing
from tests.letters import make_line
from tests.people import make_studio

pytestmark = pytest.mark.django_db
LONGEST = f"{'m' * 64}@{'.'.join(['d' * 60] * 3)}.example"  # RFC 5321, 4.5.3.1: 64 octets before the @, 255 after it


def test_the_headers_are_those_of_one_click(settings: Any) -> None:
    settings.PUBLIC_URL = "https://aftercare.example"

    found = unsubscribing.headers(make_line(make_studio(), "email"), "mia@mail.example")

    assert found["List-Unsubscribe"].startswith("<https://aftercare.example/unsubscribe/")
    assert found["List-Unsubscribe"].endswith(">")
    assert found["List-Unsubscribe-Post"] == "List-Unsubscribe=One-Click"


def test_one_click_is_not_promised_without_https(settings: Any) -> None:
    settings.PUBLIC_URL = "http://127.0.0.1:8000"

    found = unsubscribing.headers(make_line(make_studio(), "email"), "mia@mail.example")

    assert list(found) == ["List-Unsubscribe"]


def test_even_the_longest_address_makes_a_line_that_mail_can_carry(settings: Any) -> None:
    settings.PUBLIC_URL = "https://aftercare.example"

    found = unsubscribing.headers(make_line(make_studio(), "email"), LONGEST)

    assert len(f"List-Unsubscribe: {found['List-Unsubscribe']}") <= 998


def test_a_token_says_whom_it_stands_for_and_on_which_line() -> None:
    line = make_line(make_studio(), "email")

    assert unsubscribing.read(unsubscribing.token(line, "Zoë+Lash@Mail.example")) == (line, "zoë+lash@mail.example")


def test_a_token_that_was_changed_stands_for_nobody() -> None:
    token = unsubscribing.token(make_line(make_studio(), "email"), "mia@mail.example")
    other = unsubscribing.token(make_line(make_studio("elm"), "email"), "zoe@mail.example")
    swapped = f"{other.partition('.')[0]}.{token.partition('.')[2]}"

    for bad in (token[:-1], token[1:], swapped, "", ".", "ü", "a" * 5000):
        assert unsubscribing.read(bad) is None, bad


def test_what_was_signed_for_another_purpose_opens_nothing() -> None:
    line = make_line(make_studio(), "email")
    value = [line.pk, "mia@mail.example"]

    assert unsubscribing.read(signing.Signer(salt="another", sep=".").sign_object(value)) is None


def test_a_token_of_a_line_that_is_gone_stands_for_nobody() -> None:
    line = make_line(make_studio(), "email")
    token = unsubscribing.token(line, "mia@mail.example")
    line.delete()

    assert unsubscribing.read(token) is None
