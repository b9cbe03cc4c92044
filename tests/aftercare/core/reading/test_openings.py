from __future__ import annotations

import pytest

from aftercare.core.reading import Topic, read


@pytest.mark.parametrize(
    "text",
    [
        "does the glue have latex in it",
        "is the building wheelchair friendly",
        "would salt water be bad for them",
        "I've a nickel allergy. do you use steel tweezers",
        "how soon can I get them wet",
    ],
)
def test_a_question_needs_no_mark(text: str) -> None:
    assert Topic.QUESTION in read(text).about


@pytest.mark.parametrize(
    "text", ["are itchy this morning", "can see fine", "will see you then", "how they are holding up is a miracle"]
)
def test_a_sentence_without_its_subject_asks_nothing(text: str) -> None:
    assert Topic.QUESTION not in read(text).about


def test_a_cure_named_with_a_mark_is_asked_for() -> None:
    assert Topic.QUESTION in read("the left lid is puffy. antihistamine or just wait?").about


def test_what_is_asked_is_no_praise() -> None:
    assert read("is it fine to use a lash serum at the same time?").about == (Topic.QUESTION,)
