"""`add_owner`: how the first person gets into a studio of one's own."""

from __future__ import annotations

from io import StringIO

import pytest
from django.core.management import CommandError, call_command
from django.test import Client as Browser

from studio.models import Staff, Studio, User
from tests.pages import quick_sign_in, quiet_static, words
from tests.people import make_staff, make_studio

__all__ = ["quick_sign_in", "quiet_static"]

pytestmark = pytest.mark.django_db

NEW = "a-password-of-her-own-77"
MADE = ("--create", "--time-zone=America/New_York", "--region=US")


def add_owner(*more: str, studio: str = "birch", name: str = "Olga", email: str = "olga@mail.example") -> str:
    """Return the one-time password that it printed."""
    out = StringIO()
    call_command("add_owner", f"--studio={studio}", f"--name={name}", f"--email={email}", *more, stdout=out)
    address, password = out.getvalue().split()
    assert address == email.strip().lower()
    return password


def signed_in(email: str, password: str) -> Browser:
    browser = Browser()
    browser.post("/sign-in", {"username": email, "password": password})
    return browser


def test_a_new_service_is_entered_by_its_first_owner_with_a_password_of_her_own() -> None:
    once = add_owner(*MADE)
    browser = signed_in("olga@mail.example", once)
    assert browser.get("/settings/staff").url == "/password"  # type: ignore[attr-defined]  # it sends her there

    browser.post("/password", {"old_password": once, "new_password1": NEW, "new_password2": NEW})

    assert "Olga" in words(browser.get("/settings/staff"))
    studio = Studio.objects.get(slug="birch")
    assert studio.in_rehearsal
    assert sorted(studio.lines.values_list("channel", flat=True)) == ["email", "sms"]


def test_an_artist_of_the_book_becomes_owner_and_stays_what_she_is() -> None:
    studio = make_studio()
    olga = make_staff(studio, "Olga", is_artist=True, email="told@mail.example")

    add_owner(studio=studio.slug, name="olga")

    olga.refresh_from_db()
    assert (olga.is_owner, olga.is_artist, olga.email) == (True, True, "told@mail.example")
    assert olga.user is not None
    assert Staff.objects.count() == 1


def test_called_again_it_gives_a_new_password_and_the_old_one_is_over() -> None:
    first, second = add_owner(*MADE), add_owner()

    assert "_auth_user_id" not in signed_in("olga@mail.example", first).session
    assert "_auth_user_id" in signed_in("olga@mail.example", second).session
    assert User.objects.count() == 1


@pytest.mark.parametrize(
    ("more", "email", "complaint"),
    [
        ((), "olga@mail.example", "there is no studio “birch”"),
        (("--create",), "olga@mail.example", "--create needs --time-zone and --region"),
        (("--create", "--time-zone=Mars/Base", "--region=US"), "olga@mail.example", "--time-zone"),
        (MADE, "olga at home", "e-mail address"),
    ],
)
def test_what_cannot_be_used_is_said_and_makes_nothing(more: tuple[str, ...], email: str, complaint: str) -> None:
    with pytest.raises(CommandError, match=complaint):
        add_owner(*more, email=email)

    assert (Studio.objects.count(), Staff.objects.count(), User.objects.count()) == (0, 0, 0)
