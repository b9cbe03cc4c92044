from __future__ import annotations

import pytest

from aftercare.core.reading import Topic, read


@pytest.mark.parametrize(
    "text",
    [
        "Kid's nativity clashes. Another day?",
        "Yes. Wednesday. Ten. Thank you.",
        "Both eyes keep streaming so I'll leave it. Thursday?",
        "Se inundó todo. ¿El lunes?",
    ],
)
def test_a_sentence_of_a_time_alone_names_one_for_a_visit(text: str) -> None:
    assert Topic.BOOKING in read(text).about


@pytest.mark.parametrize("text", ["they have been red since I left you. Tuesday.", "bit sore. Two days."])
def test_beside_a_sign_a_date_is_that_of_the_sign(text: str) -> None:
    assert read(text).about == (Topic.IRRITATION,)


def test_a_date_is_no_answer_to_a_question_about_her_eyes() -> None:
    found = read("the 2nd and the 4th\n\n> 1 itchy 2 flaky 3 tender 4 teary")

    assert found.unread or Topic.IRRITATION in found.about
