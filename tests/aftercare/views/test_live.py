"""Going live, and back."""

from __future__ import annotations

from tests.cast import Cast, full_morning
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
