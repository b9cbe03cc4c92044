"""Going live, and back."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal
from typing import Any

import pytest

from aftercare.lines import lines_of, save
from aftercare.models import Line, Message
from studio.models import Consent
from tests.cast import Cast, full_morning
from tests.forecasts import forecast
from tests.pages import SignIn, words


def test_it_counts_what_would_leave_within_two_days(cast: Cast, as_: SignIn) -> None:
    cast.done(cast.client("Mia"), cast.at(5))
    cast.visit(cast.client("Zoe"), cast.at(12, 30))
    cast.plan()

    page = words(as_(cast.olga).get("/settings/live"))

    assert "Aftercare 1 0 1" in page
    assert "Go live: " in page
    assert "Instructions" not in page


def test_what_it_counts_is_told_by_channel_with_its_cost_and_each_of_them_is_listed(cast: Cast, as_: SignIn) -> None:
    for number in range(3):
        cast.done(cast.client(f"Mia{number}"), cast.at(5))
    cast.done(cast.client("Zoe", texts=False, email="zoe@mail.example"), cast.at(5))
    cast.visit(cast.client("Ida"), cast.at(12, 30))
    cast.plan()
    save(lines_of(cast.studio)["sms"], Decimal("0.01"), "USD")
    browser = as_(cast.olga)

    page = browser.get("/settings/live")
    found = page.context["found"]
    listed = browser.get("/messages?hours=48")

    assert found.total == Message.objects.filter(state="planned", due_at__lte=cast.now + timedelta(hours=48)).count()
    assert (found.sms, found.email) == (found.total - found.email, found.email)
    assert found.email > 0
    assert f"In all {found.sms} {found.email} {found.total}" in words(page)
    assert f"charged as about {2 * found.sms}, ${found.sms * 2 / 100:.2f}" in words(page)  # none left yet: two each
    assert 'href="/messages?hours=48"' in page.content.decode()
    assert f"{found.total} messages leave within 48 hours." in words(listed)
    assert len(listed.context["lines"]) == found.total
    assert "Ida" not in words(listed)
    assert browser.get("/messages?hours=x").status_code == browser.get("/messages?hours=999999999").status_code == 200


def test_one_button_goes_live_and_one_holds_everything_again(cast: Cast, as_: SignIn, settings: Any) -> None:
    Line.objects.create(studio=cast.studio, channel="sms", transport="aftercare.transports.twilio.Twilio")
    settings.EMAIL_BACKEND = "django.core.mail.backends.smtp.EmailBackend"
    browser = as_(cast.olga)
    assert "Rehearsal:" in browser.get("/today").content.decode()

    live = words(browser.post("/settings/live", {"answer": "live"}, follow=True))
    cast.studio.refresh_from_db()
    assert not cast.studio.in_rehearsal
    assert "Live. What falls due from now on reaches your clients." in live
    assert "reach nobody" not in live
    assert "Rehearsal:" not in browser.get("/today").content.decode()

    back = words(browser.post("/settings/live", {"answer": "back"}, follow=True))
    cast.studio.refresh_from_db()
    assert cast.studio.in_rehearsal
    assert "In rehearsal again." in back


@pytest.mark.parametrize(
    ("sms", "backend", "told", "said"),
    [
        ("console.Console", "smtp", "Texts reach nobody, live or not.", "what is marked below reaches nobody yet"),
        ("twilio.Twilio", "console", "E-mails reach nobody, live or not.", "what is marked below reaches nobody yet"),
        ("console.Console", "console", "Texts and e-mails reach nobody, live or not.", "nothing reaches anybody yet"),
    ],
)
def test_it_does_not_say_that_clients_are_reached_where_no_provider_is_set_up(
    sms: str, backend: str, told: str, said: str, cast: Cast, as_: SignIn, settings: Any
) -> None:
    Line.objects.create(studio=cast.studio, channel="sms", transport=f"aftercare.transports.{sms}")
    settings.EMAIL_BACKEND = f"django.core.mail.backends.{backend}.EmailBackend"
    browser = as_(cast.olga)

    before = words(browser.get("/settings/live"))
    live = words(browser.post("/settings/live", {"answer": "live"}, follow=True))

    assert told in before
    assert told in live
    assert said in live
    assert "reaches your clients" not in live


def test_once_live_the_morning_list_and_the_lines_say_so_until_a_provider_is_set_up(
    cast: Cast, as_: SignIn, settings: Any
) -> None:
    line = Line.objects.create(studio=cast.studio, channel="sms", transport="aftercare.transports.console.Console")
    settings.EMAIL_BACKEND = "django.core.mail.backends.smtp.EmailBackend"
    told, owner = "Texts reach nobody, live or not.", as_(cast.olga)

    assert told not in words(owner.get("/morning"))  # in rehearsal nobody is reached anyway
    owner.post("/settings/live", {"answer": "live"})
    assert told in words(owner.get("/morning"))
    assert told in words(owner.get("/settings/lines"))
    hers = as_(cast.ada).get("/morning")
    assert told in words(hers)
    assert "/settings/lines" not in hers.text  # which is the owner's
    Line.objects.filter(pk=line.pk).update(transport="aftercare.transports.twilio.Twilio")
    assert told not in words(as_(cast.olga).get("/morning"))


def test_with_nothing_due_it_says_what_to_do_first(cast: Cast, as_: SignIn) -> None:
    page = words(as_(cast.olga).get("/settings/live"))

    assert "Bring the appointment book in first" in page
    assert "0 messages" not in page


def test_looking_decides_nothing(cast: Cast, as_: SignIn) -> None:
    full_morning(cast)
    browser = as_(cast.olga)

    browser.get("/settings/live?answer=live")

    assert browser.post("/settings/live", {"answer": "perhaps"}).status_code == 400
    cast.studio.refresh_from_db()
    assert cast.studio.in_rehearsal


def test_only_the_owner_goes_live(cast: Cast, as_: SignIn) -> None:
    for staff in (cast.ada, cast.dee):
        assert as_(staff).post("/settings/live", {"answer": "live"}).status_code == 403
    cast.studio.refresh_from_db()
    assert cast.studio.in_rehearsal


def first_import(cast: Cast) -> None:
    """Twelve clients whose fill was to be asked for some days before the book first came in."""
    cast.studio.first_import_at = cast.now
    cast.studio.save()
    for number in range(12):
        her = cast.client(f"Mia {number}")
        Consent.objects.create(
            client=her, channel="sms", purpose="reminders", given=True, at=cast.now, how="on paper", by=cast.dee
        )
        done = cast.done(her, cast.at(10, -20))
        forecast(done, cast.now, fill_day=19, full_set_low=30, full_set_day=40)
    cast.plan()


def test_reminders_of_the_first_import_wait_for_one_button_and_another_holds_them_again(
    cast: Cast, as_: SignIn
) -> None:
    first_import(cast)
    browser = as_(cast.olga)
    page = words(browser.get("/settings/live"))
    assert "12 reminders were overdue when your book first came in." in page
    assert "Let them go, 10 a day" in page

    page = words(browser.post("/settings/live/first-reminders", {"answer": "go"}, follow=True))
    assert "12 reminders are let go." in page
    assert "12 are let go and have not left yet" in page
    assert "Let them go" not in page
    assert Message.objects.filter(occasion="fill_due", state="planned").count() == 12

    page = words(browser.post("/settings/live/first-reminders", {"answer": "hold"}, follow=True))
    assert "12 reminders wait again." in page
    assert set(Message.objects.filter(occasion="fill_due").values_list("reason", flat=True)) == {
        "waiting for the owner's go"
    }


def test_without_such_reminders_nothing_is_said_of_them(cast: Cast, as_: SignIn) -> None:
    assert "first import" not in words(as_(cast.olga).get("/settings/live"))


def test_only_the_owner_lets_reminders_go_and_only_by_an_answer(cast: Cast, as_: SignIn) -> None:
    first_import(cast)
    for staff in (cast.ada, cast.dee):
        assert as_(staff).post("/settings/live/first-reminders", {"answer": "go"}).status_code == 403
    browser = as_(cast.olga)
    assert browser.get("/settings/live/first-reminders").status_code == 405
    assert browser.post("/settings/live/first-reminders", {"answer": "perhaps"}).status_code == 400

    assert not Message.objects.exclude(go_from=None).exists()
