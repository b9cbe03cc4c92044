"""Marking visits, in few taps and without presets where an eye must look."""

from __future__ import annotations

from decimal import Decimal

import pytest

from aftercare.models import Message
from studio.models import Adhesive, Service, Visit
from tests.cast import Cast, make
from tests.pages import SignIn, words


@pytest.fixture
def fill(cast: Cast) -> Visit:
    """Mia's fill this morning, after a set of three weeks ago."""
    mia = cast.client("Mia")
    cast.done(mia, cast.at(9, -21), style="hybrid", lash_map="C 0.07", note="left eye waters")
    return cast.visit(mia, cast.at(5))


def taps(**changed: str) -> dict[str, str]:
    return {"share": "40", "outgrown": "some", "mirror_check": "happy", "adhesive": "not known", **changed}


def test_a_few_taps_mark_it_done(cast: Cast, fill: Visit, as_: SignIn) -> None:
    response = as_(cast.ada).post(f"/visits/{fill.pk}/done", taps(adhesive=str(cast.glue.pk)))

    assert response.headers["Location"] == f"/visits/{fill.pk}/after"
    fill.refresh_from_db()
    assert fill.status == Visit.Status.DONE
    assert (fill.share_left, fill.share_seen, fill.outgrown, fill.mirror_check) == (
        Decimal(40),
        "seen",
        "some",
        "happy",
    )
    assert fill.adhesive == cast.glue


def test_the_page_after_it_says_what_goes_to_her_and_when(cast: Cast, fill: Visit, as_: SignIn) -> None:
    page = words(as_(cast.ada).post(f"/visits/{fill.pk}/done", taps(), follow=True))

    assert "Aftercare, by text: planned" in page
    assert "30 minutes after the visit" in page
    assert "How are your eyes, by text: planned" in page
    assert Message.objects.filter(visit=fill, state="planned").count() == 2


def test_nothing_that_an_eye_must_see_is_preset(cast: Cast, fill: Visit, as_: SignIn) -> None:
    page = as_(cast.ada).get(f"/visits/{fill.pk}/done").content.decode()

    assert "checked" not in page
    assert 'value="hybrid"' in page
    assert 'value="C 0.07"' in page


def test_share_left_must_be_answered_and_not_looked_is_an_answer(cast: Cast, fill: Visit, as_: SignIn) -> None:
    browser = as_(cast.ada)

    refused = words(browser.post(f"/visits/{fill.pk}/done", taps(share="")))
    browser.post(f"/visits/{fill.pk}/done", taps(share="not looked"))

    assert "Tap what was left when she came in, or “not looked”." in refused
    fill.refresh_from_db()
    assert (fill.share_left, fill.share_seen) == (None, "not looked")


@pytest.mark.parametrize(("share", "exact", "left"), [("another", "42.5", "42.5"), ("0", "", "0"), ("60", "12", "60")])
def test_the_tap_counts_and_another_number_where_it_is_tapped(
    share: str, exact: str, left: str, cast: Cast, fill: Visit, as_: SignIn
) -> None:
    as_(cast.ada).post(f"/visits/{fill.pk}/done", taps(share=share, share_exact=exact))

    fill.refresh_from_db()
    assert fill.share_left == Decimal(left)


@pytest.mark.parametrize("exact", ["", "101", "-1", "about half"])
def test_a_number_that_is_none_changes_nothing(exact: str, cast: Cast, fill: Visit, as_: SignIn) -> None:
    page = as_(cast.ada).post(f"/visits/{fill.pk}/done", taps(share="another", share_exact=exact))

    assert page.status_code == 200
    assert "Not saved yet." in words(page)
    fill.refresh_from_db()
    assert fill.status == Visit.Status.BOOKED


def test_an_adhesive_that_is_not_listed_is_named_once(cast: Cast, fill: Visit, as_: SignIn) -> None:
    browser, named = as_(cast.ada), taps(adhesive="new", new_product="Alder 2", new_lot="77")

    browser.post(f"/visits/{fill.pk}/done", named)
    browser.post(f"/visits/{fill.pk}/done", named)

    fill.refresh_from_db()
    assert str(fill.adhesive) == "Alder 2, lot 77"
    assert Adhesive.objects.filter(product="Alder 2").count() == 1


def test_a_new_adhesive_is_not_kept_if_the_mark_is_refused(cast: Cast, as_: SignIn) -> None:
    ahead = cast.visit(cast.client("Mia"), cast.at(9, 3))

    page = as_(cast.ada).post(f"/visits/{ahead.pk}/done", taps(adhesive="new", new_product="Alder 2"))

    assert "This visit is on a day still ahead" in words(page)
    assert not Adhesive.objects.filter(product="Alder 2").exists()


def test_an_adhesive_of_another_studio_cannot_be_chosen(cast: Cast, fill: Visit, as_: SignIn) -> None:
    other = make("larkhill", "Larkhill Lashes").glue

    as_(cast.ada).post(f"/visits/{fill.pk}/done", taps(adhesive=str(other.pk)))

    fill.refresh_from_db()
    assert fill.adhesive is None
    assert fill.status == Visit.Status.BOOKED


@pytest.mark.parametrize(
    ("service", "asked", "not_asked"),
    [
        (Service.FULL_SET, {"adhesive", "mirror_check", "lash_map"}, {"share", "outgrown"}),
        (Service.REMOVAL, {"remover", "mirror_check"}, {"share", "adhesive", "lash_map"}),
        (Service.PATCH_TEST, {"adhesive"}, {"share", "mirror_check", "lash_map"}),
        (Service.CONSULTATION, {"note"}, {"share", "adhesive", "mirror_check"}),
    ],
)
def test_only_what_belongs_to_the_service_is_asked(
    service: str, asked: set[str], not_asked: set[str], cast: Cast, as_: SignIn
) -> None:
    visit = cast.visit(cast.client("Mia"), cast.at(5), service)

    page = as_(cast.ada).get(f"/visits/{visit.pk}/done").content.decode()

    assert all(f'name="{name}"' in page for name in asked)
    assert not any(f'name="{name}"' in page for name in not_asked)


def test_a_colleague_neither_reads_nor_writes_over_the_note(cast: Cast, fill: Visit, as_: SignIn) -> None:
    fill.note = "right lid was red"
    fill.save()
    browser = as_(cast.noor)

    page = browser.get(f"/visits/{fill.pk}/done").content.decode()
    browser.post(f"/visits/{fill.pk}/done", taps(note="overwritten"))

    assert "right lid was red" not in page
    fill.refresh_from_db()
    assert fill.status == Visit.Status.DONE
    assert fill.note == "right lid was red"


def test_a_missed_visit_is_asked_once_more_and_what_was_planned_is_withdrawn(
    cast: Cast, fill: Visit, as_: SignIn
) -> None:
    tomorrow = cast.visit(fill.client, cast.at(5.5))
    browser = as_(cast.dee)
    assert "She did not come." in words(browser.get(f"/visits/{tomorrow.pk}/missed"))

    page = words(browser.post(f"/visits/{tomorrow.pk}/missed", follow=True))

    tomorrow.refresh_from_db()
    assert tomorrow.status == Visit.Status.MISSED
    assert "Mia: marked as missed." in page
    assert not Message.objects.filter(visit=tomorrow, state="planned").exists()


def test_a_mark_can_be_taken_back(cast: Cast, fill: Visit, as_: SignIn) -> None:
    browser = as_(cast.ada)
    browser.post(f"/visits/{fill.pk}/done", taps())

    browser.post(f"/visits/{fill.pk}/unmark")

    fill.refresh_from_db()
    assert fill.status == Visit.Status.BOOKED
    assert not Message.objects.filter(visit=fill, state="planned").exists()
