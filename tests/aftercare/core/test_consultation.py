"""The questions before a visit. What is asked is common practice of the trade, no source; what wants a look errs on the
side of looking. Signs of an eye that is not well: NHS, "Red eye" (reviewed 21 March 2022), and the American Academy of
Ophthalmology on extensions, as the answers to replies go by them."""

from __future__ import annotations

import pytest

from aftercare.core import consultation
from aftercare.core.consultation import (
    CAN_BE_OFF,
    INFECTION,
    LENSES,
    NO,
    NOW,
    QUESTIONS,
    SIGNS,
    UNKNOWN,
    YES,
    Answer,
)
from aftercare.core.reading import Urgency
from aftercare.core.ticks import Ticked, reading_of

URGENT = (Urgency.EMERGENCY, Urgency.SAME_DAY)


def test_a_question_on_safety_is_asked_whatever_is_switched_off() -> None:
    asked = {question.key for question in consultation.asked([question.key for question in QUESTIONS])}

    assert {NOW, INFECTION, "surgery", "reactions", "acrylate", "latex", "tape", "asthma", "fits"} <= asked
    assert not asked & set(CAN_BE_OFF)
    assert len(consultation.asked([])) == len(QUESTIONS)


@pytest.mark.parametrize("said", [YES, UNKNOWN])
@pytest.mark.parametrize("key", [question.key for question in QUESTIONS if question.look])
def test_any_answer_but_no_wants_a_look(key: str, said: str) -> None:
    assert consultation.to_look_at({key: Answer(said)}) == [key]
    assert consultation.to_look_at({key: Answer(NO)}) == []


def test_a_no_with_words_beside_it_wants_a_look_and_lenses_alone_do_not() -> None:
    assert consultation.to_look_at({"latex": Answer(NO, "only the gloves, once")}) == ["latex"]
    assert consultation.to_look_at({LENSES: Answer(YES)}) == []


def test_what_was_kept_reads_as_it_was_answered() -> None:
    answers = {NOW: Answer(YES, "since Monday", ("redness",)), "latex": Answer(NO)}

    assert consultation.read_kept(consultation.kept(answers)) == answers


def test_a_change_is_another_answer_other_words_or_a_yes_to_a_question_that_is_new() -> None:
    before = {"latex": Answer(NO), "tape": Answer(YES, "blisters"), "fits": Answer(NO), NOW: Answer(YES)}
    after = {
        "latex": Answer(YES),
        "tape": Answer(YES, "a rash"),
        "fits": Answer(NO),
        "asthma": Answer(YES),
        "serum": Answer(NO),
    }

    assert consultation.changed(before, after) == ["latex", "tape", "asthma"]  # eyes now are asked anew each time


@pytest.mark.parametrize("sign", SIGNS)
def test_every_sign_that_can_be_ticked_is_read_as_urgent(sign: str) -> None:
    found = reading_of(Ticked(consultation.ticks({NOW: Answer(YES, signs=(sign,))})))

    assert found.urgency in URGENT
    assert found.signs == (sign,)


@pytest.mark.parametrize("said", [YES, UNKNOWN])
@pytest.mark.parametrize("key", [NOW, INFECTION])
def test_an_eye_that_may_not_be_well_is_read_as_urgent_without_a_sign(key: str, said: str) -> None:
    assert reading_of(Ticked(consultation.ticks({key: Answer(said)}))).urgency in URGENT


def test_who_ticks_nothing_tells_nothing() -> None:
    answers = {NOW: Answer(NO), INFECTION: Answer(NO), "reactions": Answer(YES, "swollen shut in 2019")}

    assert not consultation.ticks(answers)
    assert not list(consultation.own_words(answers, ""))


def test_urgent_words_go_along_where_an_eye_is_not_well_and_those_to_other_questions_do_not() -> None:
    answers = {NOW: Answer(YES), LENSES: Answer(YES, "dailies"), "reactions": Answer(YES, "my lids swelled shut")}

    assert list(consultation.own_words(answers, "light hurts my left eye")) == ["light hurts my left eye"]
    assert list(consultation.own_words(answers, "I am a bit nervous")) == []


def test_who_says_that_her_eyes_are_well_is_asked_about_words_that_read_otherwise() -> None:
    answers = {NOW: Answer(NO, "my left eye is red"), INFECTION: Answer(NO)}

    assert consultation.reads_urgent(["my left eye is red", "dailies", ""]) == ["my left eye is red"]
    assert list(consultation.own_words(answers, "my lids are thin and dry")) == []
