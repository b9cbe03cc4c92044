from __future__ import annotations

import pytest

from aftercare.core.reading import Topic, read


@pytest.mark.parametrize(
    "text",
    [
        "are yours ok with goggles? first appt is the 3rd",
        "my appointment is on Friday. do you take them off for free?",
    ],
)
def test_a_visit_mentioned_beside_a_question_is_no_wish_to_book(text: str) -> None:
    assert read(text).about == (Topic.QUESTION,)


def test_a_wish_to_move_a_visit_beside_a_question_is_one() -> None:
    found = read("are yours ok with goggles? and can we move my appointment to the 5th")

    assert {Topic.QUESTION, Topic.BOOKING} <= set(found.about)


def test_history_told_for_the_form_is_no_praise() -> None:
    assert read("I had a proper asthma attack in '94. Form wanted history, so that's mine").about == (Topic.OTHER,)


def test_could_i_book_is_a_wish_to_book_beside_an_old_story() -> None:
    text = "had bad itching off my old lash tech last summer so could i book a patch test"

    assert Topic.BOOKING in read(text).about


def test_why_alone_asks() -> None:
    assert Topic.QUESTION in read("they go pink around 6pm every day. why?").about


def test_a_sentence_with_a_question_mark_asks_where_nothing_else_is_known_of_it() -> None:
    assert read("¿El cupón vence este mes?").about == (Topic.QUESTION,)


def test_a_message_that_went_astray_makes_no_wrong_person() -> None:
    assert read("haha that was meant for my brother").about == (Topic.OTHER,)
    assert Topic.WRONG_PERSON in read("this must be meant for someone else").about
