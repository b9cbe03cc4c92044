"""What a client answered, for those who treat her; what the front desk sees of it; the owner's own form."""

from __future__ import annotations

from typing import Any

import pytest

from aftercare import consulting, facts, links, texts
from aftercare.core.consultation import NO, NOW, UNKNOWN, YES, Answer
from aftercare.links import Purpose
from aftercare.models import Consultation, QuestionForm
from studio.models import Client, Visit
from tests.cast import Cast
from tests.pages import SignIn, words

ANSWERS = {NOW: Answer(NO), "latex": Answer(NO), "tape": Answer(YES, "blue tape"), "fits": Answer(UNKNOWN)}
TELLING = ("blue tape", "tape or plaster", "to look at", "latex", "changed since")


@pytest.fixture
def visit(cast: Cast) -> Visit:
    return cast.visit(cast.client("Mia", "Okafor"), cast.at(10))


def answer(visit: Visit, once: str = "a" * 24, **fields: Any) -> Consultation:
    facts = {"language": "en", "agreed": True, "answers": ANSWERS}
    now = visit.starts_at.replace(minute=0)
    sent = consulting.Sent(once=once, **{**facts, **fields})
    return consulting.submit(visit=visit, client=visit.client, sent=sent, now=now)[0]


def test_her_artist_reads_what_she_answered_what_wants_a_look_first(cast: Cast, visit: Visit, as_: SignIn) -> None:
    answer(visit, more="Thin lids", style="natural")

    said = words(as_(cast.ada).get(f"/clients/{visit.client_id}/answers"))

    assert "Tape or plaster allergy yes ▸ look at this “blue tape”" in said
    assert "does not know ▸ look at this; her doctor’s word first" in said
    assert said.index("Tape or plaster") < said.index("Latex allergy")
    assert "Thin lids" in said
    assert "The look she wishes: natural" in said
    assert "It decides nothing" in said


def test_what_changed_stands_beside_what_she_said_last_time(cast: Cast, visit: Visit, as_: SignIn) -> None:
    answer(visit)
    answer(visit, "b" * 24, answers={**ANSWERS, "latex": Answer(YES), "tape": Answer(NO)})

    said = words(as_(cast.olga).get(f"/clients/{visit.client_id}/answers"))

    assert "Changed. Last time: yes (blue tape)" in said
    assert "Changed. Last time: no" in said
    assert "Before that" in said


@pytest.mark.parametrize("who", ["noor", "dee"])
def test_who_does_not_treat_her_reads_none_of_it(cast: Cast, visit: Visit, as_: SignIn, who: str) -> None:
    answer(visit)
    browser = as_(getattr(cast, who))

    assert browser.get(f"/clients/{visit.client_id}/answers").status_code == 403
    assert browser.post(f"/clients/{visit.client_id}/sensitive").status_code == 403
    assert Client.objects.get(pk=visit.client_id).sensitive is None


def test_the_front_desk_sees_that_it_is_filled_in_and_no_word_of_it(cast: Cast, visit: Visit, as_: SignIn) -> None:
    answer(visit)
    answer(visit, "b" * 24, answers={**ANSWERS, "latex": Answer(YES)})
    browser = as_(cast.dee)

    for path in ("/today", f"/clients/{visit.client_id}"):
        page = browser.get(path).content.decode()
        assert "questions answered" in page.lower()
        assert not [word for word in TELLING if word in page.lower()]
        assert "/c/" not in page


def test_the_day_sheet_says_how_the_questions_stand(cast: Cast, visit: Visit, as_: SignIn) -> None:
    browser = as_(cast.ada)
    assert "questions not answered yet" in words(browser.get("/today"))

    answer(visit)
    said = words(browser.get("/today"))
    assert "questions answered" in said
    assert "2 answers to look at" in said

    answer(visit, "b" * 24, agreed=False)
    assert "lets no health answers be kept: ask her in person" in words(browser.get("/today"))

    consulting.withdraw(client=visit.client, now=cast.now)
    Consultation.objects.filter(agreed=False).delete()
    assert "took her health answers back: ask her in person" in words(browser.get("/today"))


def test_what_is_to_look_at_never_goes_on_paper(cast: Cast, visit: Visit, as_: SignIn) -> None:
    answer(visit)

    page = as_(cast.ada).get("/today").content.decode()

    line = next(line for line in page.splitlines() if "answers to look at" in line)
    assert 'class="facts health"' in line


def test_a_person_marks_her_as_sensitive_and_the_plan_follows(cast: Cast, visit: Visit, as_: SignIn) -> None:
    answer(visit)
    browser = as_(cast.ada)
    assert "Mark her as sensitive" in words(browser.get(f"/clients/{visit.client_id}/answers"))

    browser.post(f"/clients/{visit.client_id}/sensitive")

    her = Client.objects.get(pk=visit.client_id)
    assert her.sensitive is True
    assert her.planned_revision == her.revision


def test_her_link_is_there_to_be_copied_by_those_who_may_read_what_it_opens(
    cast: Cast, visit: Visit, as_: SignIn
) -> None:
    ahead = cast.visit(visit.client, cast.at(10, 3))

    page = as_(cast.ada).get(f"/clients/{visit.client_id}/answers").content.decode()

    assert f"/c/{links.token(Purpose.CONSULTATION, ahead)}" in page


def test_a_message_shows_its_link_to_those_alone_who_may_read_what_it_opens(
    cast: Cast, visit: Visit, as_: SignIn
) -> None:
    address = links.address(Purpose.CONSULTATION, visit)
    cast.gone(visit.client, visit, "prepare", cast.at(6), text=f"Please answer: {address} Bare lashes.")

    seen = {who: as_(getattr(cast, who)).get("/messages?group=gone").content.decode() for who in ("ada", "dee")}

    assert address in seen["ada"]
    assert address not in seen["dee"]
    assert "/c/… Bare lashes." in seen["dee"]


def test_another_studios_client_is_not_found(cast: Cast, strangers: Cast, visit: Visit, as_: SignIn) -> None:
    assert as_(strangers.olga).get(f"/clients/{visit.client_id}/answers").status_code == 404


def test_the_owner_says_what_is_asked_and_what_is_signed(cast: Cast, as_: SignIn) -> None:
    browser = as_(cast.olga)
    page = browser.get("/settings/questions")
    assert "questions on safety are always asked" in words(page)
    first = consulting.first_waiver("es")
    form = {"asked": ["pregnancy", "lie_flat"], "waiver_en": "I keep\r\nstill.", "waiver_es": first, "seen": "0"}

    browser.post("/settings/questions", form)

    saved = QuestionForm.objects.get()
    assert (saved.off, saved.waiver, saved.by) == (
        ["lash_loss", "retinoids", "serum"],
        {"en": "I keep\nstill."},
        cast.olga,
    )
    assert consulting.waiver_of(saved, "es") == first
    assert "version 1" in words(browser.get("/settings/questions"))
    assert "meanwhile" in words(browser.post("/settings/questions", form))
    assert QuestionForm.objects.count() == 1


def test_the_instructions_carry_her_link_until_she_has_answered(cast: Cast) -> None:
    visit = cast.visit(cast.client("Zoe"), cast.at(10, 3))
    cast.plan()
    message = visit.messages.get(occasion="prepare", step=0)
    address = links.address(Purpose.CONSULTATION, visit)

    def text() -> str:
        book = facts.load([visit.client_id], cast.now)[visit.client_id]
        return texts.for_message(message, book, cast.now).body

    assert address in text()
    links.revoke(visit.client, why="asked", now=cast.now)
    assert address not in text()
    assert links.address(Purpose.CONSULTATION, visit) in text()
    answer(visit)
    assert "/c/" not in text()
