"""The pages on who is told and who is away."""

from __future__ import annotations

from datetime import timedelta

from studio.models import Absence, Staff, Studio
from tests.cast import Cast
from tests.pages import SignIn, words


def test_the_owner_chooses_who_is_told(cast: Cast, as_: SignIn) -> None:
    Staff.objects.filter(pk=cast.noor.pk).update(email="noor@mail.example")
    browser = as_(cast.olga)
    form = {"on_duty": "", "third_contact": cast.noor.pk, "done_after_hours": "24"}

    assert "Saved." in words(browser.post("/settings/duty", form, follow=True))
    studio = Studio.objects.get(pk=cast.studio.pk)
    assert (studio.on_duty, studio.third_contact, studio.done_after_hours) == (None, cast.noor, 24)
    assert "third contact: Noor" in words(browser.get("/settings"))


def test_whoever_cannot_be_told_is_pointed_out(cast: Cast, as_: SignIn) -> None:
    Staff.objects.filter(pk=cast.noor.pk).update(email="", mobile="")
    browser = as_(cast.olga)

    assert "Noor cannot be told: no mobile and no e-mail here." in words(browser.get("/settings/duty"))
    refused = words(browser.post("/settings/duty", {"third_contact": cast.noor.pk}))
    assert "Noor has no mobile and no e-mail here" in refused


def test_a_third_contact_of_the_front_desk_is_refused_and_one_that_stands_is_pointed_out(
    cast: Cast, as_: SignIn
) -> None:
    browser = as_(cast.olga)
    refused = words(browser.post("/settings/duty", {"third_contact": cast.dee.pk}))
    assert "Dee is of the front desk alone and could not see what is the matter, nor take it" in refused
    assert "could not help" not in words(browser.get("/settings/duty"))

    Studio.objects.update(third_contact=cast.dee)

    assert "Dee is of the front desk alone and cannot see what is the matter" in words(browser.get("/settings"))
    assert "Dee could not help: she is of the front desk alone" in words(browser.get("/settings/duty"))


def test_an_absence_is_added_and_taken_off(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)
    today = cast.now.astimezone(cast.studio.zone).date()
    form = {"staff": cast.ada.pk, "first_day": today, "last_day": today + timedelta(days=3), "cover": cast.noor.pk}

    assert "Noor covers." in words(browser.post("/settings/absences", form, follow=True))
    assert "1 absence, now or ahead" in words(browser.get("/settings"))
    browser.post(f"/settings/absences/{Absence.objects.get().pk}/remove")
    assert "Nobody is away." in words(browser.get("/settings/absences"))


def test_whoever_covers_has_her_list_and_reads_what_she_needs(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia", "Quist")
    cast.done(mia, cast.at(9, -2))
    flag = cast.wrote(mia, "left lid itchy", cast.at(6), urgency="same_day")
    assert "itchy" not in words(as_(cast.noor).get("/morning"))
    today = cast.now.astimezone(cast.studio.zone).date()
    Absence.objects.create(staff=cast.ada, cover=cast.noor, first_day=today, last_day=today)

    assert "itchy" in words(as_(cast.noor).get("/morning"))
    assert as_(cast.noor).post(f"/flags/{flag.pk}/take").status_code == 302
    assert as_(cast.noor).get(f"/flags/{flag.pk}/close").status_code == 200
    flag.refresh_from_db()
    assert flag.taken_by == cast.noor


def test_only_the_owner_sets_it(cast: Cast, as_: SignIn) -> None:
    for path in ("/settings/duty", "/settings/absences"):
        assert as_(cast.ada).get(path).status_code == 403
