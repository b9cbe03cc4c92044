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
