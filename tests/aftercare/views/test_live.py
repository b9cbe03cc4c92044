"""Going live, and back."""

from __future__ import annotations

from aftercare.models import Message
from studio.models import Consent
from tests.cast import Cast, full_morning
from tests.forecasts import forecast
from tests.pages import SignIn, words


def test_it_counts_what_would_leave_within_two_days(cast: Cast, as_: SignIn) -> None:
    cast.done(cast.client("Mia"), cast.at(5))
    cast.visit(cast.client("Zoe"), cast.at(12, 30))
    cast.plan()

    page = words(as_(cast.olga).get("/settings/live"))

    assert "Aftercare 1" in page
    assert "Go live: " in page
    assert "Instructions" not in page


def test_one_button_goes_live_and_one_holds_everything_again(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)
    assert "Rehearsal:" in browser.get("/today").content.decode()

    live = words(browser.post("/settings/live", {"answer": "live"}, follow=True))
    cast.studio.refresh_from_db()
    assert not cast.studio.in_rehearsal
    assert "Live. What falls due from now on reaches your clients." in live
    assert "Rehearsal:" not in browser.get("/today").content.decode()

    back = words(browser.post("/settings/live", {"answer": "back"}, follow=True))
    cast.studio.refresh_from_db()
    assert cast.studio.in_rehearsal
    assert "In rehearsal again." in back


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
