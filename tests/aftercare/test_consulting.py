"""Keeping what a client answers before a visit. What the law asks of health answers is from memory: GDPR, article
9(2)(a) (explicit consent), 7(3) (taken back as easily as given), 5(1)(c) (no more than is needed)."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest
from django.core.exceptions import ValidationError

from aftercare import consulting
from aftercare.consulting import Sent
from aftercare.core.consultation import LENSES, NO, NOW, YES, Answer
from aftercare.models import Consultation
from studio.models import Client, Visit
from tests.people import NOW as MOMENT
from tests.people import make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db

ANSWERS = {NOW: Answer(NO), LENSES: Answer(YES, "dailies"), "latex": Answer(YES, "gloves")}


@pytest.fixture
def visit() -> Visit:
    return make_visit(make_client(make_studio()))


def sent(once: str = "a" * 24, **fields: Any) -> Sent:
    facts = {"language": "en", "agreed": True, "agreed_words": "You may keep them.", "answers": ANSWERS}
    return Sent(once=once, **{**facts, **fields})


def send(visit: Visit, once: str = "a" * 24, **fields: Any) -> Consultation:
    return consulting.submit(visit=visit, client=visit.client, sent=sent(once, **fields), now=MOMENT)[0]


def hers(visit: Visit) -> Client:
    return Client.objects.get(pk=visit.client_id)


def test_what_she_answers_is_kept_with_the_version_of_the_questions_and_the_words_that_she_agreed_to(
    visit: Visit,
) -> None:
    row = send(visit, more="My lids are thin.", style="natural")

    assert consulting.answers_of(row) == ANSWERS
    assert (row.questions, row.form, row.agreed_words) == (1, 0, "You may keep them.")
    assert (row.more, row.style, row.to_look_at) == ("My lids are thin.", "natural", 2)


def test_without_her_yes_nothing_about_her_health_is_kept_but_that_she_said_no(visit: Visit) -> None:
    row = send(visit, agreed=False, more="I had a stye.", style="natural", signed_name="Mia Okafor")

    row.refresh_from_db()
    assert (row.agreed, row.answers, row.more, row.to_look_at, row.agreed_words) == (False, {}, "", 0, "")
    assert (row.style, row.signed_name) == ("natural", "Mia Okafor")  # not about her health
    assert hers(visit).wears_lenses is None


def test_a_page_that_is_sent_twice_is_kept_once(visit: Visit) -> None:
    first = send(visit)

    again, is_new = consulting.submit(
        visit=visit, client=visit.client, sent=sent(answers={"latex": Answer(NO)}), now=MOMENT
    )

    assert (again, is_new) == (first, False)
    assert consulting.answers_of(Consultation.objects.get()) == ANSWERS


def test_what_she_answers_later_is_a_row_of_its_own(visit: Visit) -> None:
    send(visit)
    later = send(visit, "b" * 24, answers={**ANSWERS, "latex": Answer(NO)})

    assert Consultation.objects.count() == 2
    assert later.changes == 1
    assert consulting.last_kept(visit.client) == later


def test_nothing_has_changed_keeps_what_she_said_before_with_how_her_eyes_are_now(visit: Visit) -> None:
    send(visit)
    later = send(visit, "b" * 24, answers={NOW: Answer(YES, signs=("redness",))}, nothing_changed=True)

    assert later.nothing_changed
    assert consulting.answers_of(later) == {**ANSWERS, NOW: Answer(YES, signs=("redness",))}
    assert later.changes == 0


def test_nobody_fills_the_table_by_a_link(visit: Visit) -> None:
    for number in range(consulting.MOST_A_VISIT):
        send(visit, f"{number:024}")

    with pytest.raises(ValidationError, match="tell the studio"):
        send(visit, "z" * 24)


def test_her_card_follows_in_what_it_keeps_already_and_she_is_planned_anew(visit: Visit) -> None:
    before = hers(visit).revision

    send(
        visit,
        signed_name="Paloma Weiss",
        under_18=True,
        guardian_name="Paloma Weiss",
        guardian_mobile="+12125550119",
        guardian_agreed=True,
    )

    her = hers(visit)
    today = MOMENT.astimezone(her.studio.zone).date()
    assert her.wears_lenses is True
    assert her.waiver_signed_on == today
    assert (her.under_18, her.guardian_name, her.guardian_mobile) == (True, "Paloma Weiss", "+12125550119")
    assert her.guardian_agreed_on == today
    assert her.revision > before


def test_no_answer_makes_her_sensitive(visit: Visit) -> None:
    send(visit, answers={"reactions": Answer(YES, "very sensitive to glue"), "latex": Answer(YES)})

    assert hers(visit).sensitive is None


def test_a_tick_does_not_make_someone_of_age_who_is_on_record_as_under_18(visit: Visit) -> None:
    Client.objects.update(under_18=True)
    visit.client.refresh_from_db()

    send(visit, under_18=False)

    assert hers(visit).under_18 is True


def test_a_guardian_who_has_not_agreed_is_no_agreement(visit: Visit) -> None:
    send(visit, under_18=True, guardian_name="Paloma Weiss", guardian_mobile="+12125550119")

    assert hers(visit).guardian_agreed_on is None


def test_what_the_records_refuse_keeps_nothing(visit: Visit) -> None:
    with pytest.raises(ValidationError):
        send(visit, under_18=True, guardian_name="Paloma Weiss", guardian_mobile="12")

    assert not Consultation.objects.exists()


def test_taking_it_back_deletes_her_answers_from_every_time_and_says_when(visit: Visit) -> None:
    send(visit, more="thin lids", signed_name="Mia Okafor")
    send(visit, "b" * 24, more="still")

    assert consulting.withdraw(client=visit.client, now=MOMENT + timedelta(hours=1)) == 2

    for row in Consultation.objects.all():
        assert (row.answers, row.more, row.to_look_at, row.changes) == ({}, "", 0, 0)
        assert (row.agreed, row.withdrawn_at) == (True, MOMENT + timedelta(hours=1))
        assert (row.set_lenses, row.wore_lenses) == (None, None)
    assert Consultation.objects.exclude(signed_name="").exists()  # what she signed stays
    assert consulting.last_kept(visit.client) is None
    assert consulting.withdraw(client=visit.client, now=MOMENT + timedelta(hours=2)) == 0


def test_taking_it_back_undoes_what_her_answer_made_her_card_say_of_lenses(visit: Visit) -> None:
    send(visit)
    send(visit, "b" * 24, answers={**ANSWERS, LENSES: Answer(NO)})

    consulting.withdraw(client=visit.client, now=MOMENT)

    assert hers(visit).wears_lenses is None


def test_what_a_person_wrote_on_her_card_since_stays_when_she_takes_it_back(visit: Visit) -> None:
    send(visit)
    Client.objects.update(wears_lenses=False)

    consulting.withdraw(client=visit.client, now=MOMENT)

    assert hers(visit).wears_lenses is False


def test_a_signature_keeps_the_very_words_that_were_signed(visit: Visit) -> None:
    olga = make_staff(visit.studio, "Olga", is_owner=True)
    own = {"en": "I keep my eyes closed.", "es": ""}
    form = consulting.save_form(studio=visit.studio, off=[], waiver=own, by=olga, now=MOMENT, seen=0)
    row = send(visit, signed_name="Mia Okafor")
    consulting.save_form(studio=visit.studio, off=[], waiver={"en": "Other words."}, by=olga, now=MOMENT, seen=1)

    row.refresh_from_db()
    assert (row.waiver, row.form, row.signed_name) == ("I keep my eyes closed.", form.version, "Mia Okafor")


def test_whoever_signed_other_words_by_the_form_signs_anew_and_whoever_signed_on_paper_does_not(visit: Visit) -> None:
    olga = make_staff(visit.studio, "Olga", is_owner=True)
    send(visit, signed_name="Mia Okafor")
    on_paper = make_client(visit.studio, "Zoe", waiver_signed_on=MOMENT.date())
    assert not consulting.is_to_sign(hers(visit), consulting.form_of(visit.studio), "en")

    consulting.save_form(studio=visit.studio, off=["serum"], waiver={}, by=olga, now=MOMENT, seen=0)
    assert not consulting.is_to_sign(hers(visit), consulting.form_of(visit.studio), "en")  # the words are the same

    consulting.save_form(studio=visit.studio, off=[], waiver={"en": "Other words."}, by=olga, now=MOMENT, seen=1)
    form = consulting.form_of(visit.studio)
    assert consulting.is_to_sign(hers(visit), form, "en")
    assert not consulting.is_to_sign(on_paper, form, "en")


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_first_waiver_names_what_can_happen_and_promises_nothing(language: str) -> None:
    words = consulting.first_waiver(language)

    assert "patch test cannot rule" in words or "prueba de parche no lo descarta" in words
    assert "not a doctor" in words or "no es médica" in words
    assert "takes away rights" in words or "me quita los derechos" in words


def test_a_question_on_safety_cannot_be_switched_off(visit: Visit) -> None:
    olga = make_staff(visit.studio, "Olga", is_owner=True)

    with pytest.raises(ValidationError, match="always asked"):
        consulting.save_form(studio=visit.studio, off=["reactions"], waiver={}, by=olga, now=MOMENT, seen=0)

    assert consulting.form_of(visit.studio).version == 0


def test_a_form_that_someone_saved_meanwhile_is_not_overwritten(visit: Visit) -> None:
    olga = make_staff(visit.studio, "Olga", is_owner=True)
    consulting.save_form(studio=visit.studio, off=["serum"], waiver={}, by=olga, now=MOMENT, seen=0)

    with pytest.raises(ValidationError, match="meanwhile"):
        consulting.save_form(studio=visit.studio, off=[], waiver={}, by=olga, now=MOMENT, seen=0)

    assert consulting.form_of(visit.studio).off == ["serum"]


def test_an_endless_waiver_is_refused_with_its_length(visit: Visit) -> None:
    olga = make_staff(visit.studio, "Olga", is_owner=True)

    with pytest.raises(ValidationError, match="6001"):
        consulting.save_form(studio=visit.studio, off=[], waiver={"es": "x" * 6001}, by=olga, now=MOMENT, seen=0)
