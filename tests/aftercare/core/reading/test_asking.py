from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Topic, read


def test_what_she_answers_herself_is_no_question() -> None:
    found = read("Do they burn? No. Are they red? Also no. Best set ever")

    assert Topic.QUESTION not in found.about
    assert set(found.negated) == {Sign.REDNESS, Sign.BURNING}


@pytest.mark.parametrize(
    "text", ["Do they burn? Mine itch. Is that ok?", "Can I swim in them? No rush with the answer"]
)
def test_what_waits_for_an_answer_is_one(text: str) -> None:
    assert Topic.QUESTION in read(text).about


def test_a_turn_of_speech_is_no_question() -> None:
    assert Topic.QUESTION not in read("They are stunning! What can I say, you are a genius").about


@pytest.mark.parametrize("text", ["no me gustan, ¿hay garantía?", "Me las dejaste torcidas. ¿Eso qué es?"])
def test_what_stands_between_spanish_marks_asks(text: str) -> None:
    assert Topic.QUESTION in read(text).about


@pytest.mark.parametrize(
    "text", ["me muero por un retoque, ¿el jueves?", "¿Picazón? Ninguna", "Quedaron lindas. ¿Y tú cómo sigues?"]
)
def test_an_hour_what_she_was_asked_and_her_manners_do_not(text: str) -> None:
    assert Topic.QUESTION not in read(text).about


def test_a_question_beside_a_stop_is_kept() -> None:
    found = read("No me manden más mensajes. ¿Qué me pongo en los párpados que se me están pelando?")

    assert {Topic.STOP, Topic.QUESTION, Topic.IRRITATION} <= set(found.about)
