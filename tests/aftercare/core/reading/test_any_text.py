"""Whatever is written can be read, and is never lost."""

from __future__ import annotations

import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aftercare.core.reading import Side, Sign, Topic, Urgency, read

ODD = [
    "",
    " \n\t",
    "\x00",
    "\ud83d",
    "\u202emy eye is red\u202c",
    "‏العين حمراء‏",
    "😭" * 5_000,
    "a\u0300" * 3_000,
    ">" * 2_000,
    "-" * 2_000,
    "no " * 2_000,
    "my eye " * 1_000,
    "not red, " * 600,
    "\r\n" * 3_000,
    "1" * 5_000,
    "%s{}${x}'\"\\",
]


@pytest.mark.parametrize("text", ODD, ids=range(len(ODD)))
def test_odd_text_is_read(text: str) -> None:
    found = read(text)

    assert all(one.text == text[one.start : one.end] for one in found.why)


def test_a_very_long_reply_is_read_soon_and_goes_to_a_person() -> None:
    began = time.perf_counter()

    found = read("my eye is red and it itches and i love them. " * 2_300)

    assert time.perf_counter() - began < 2
    assert (found.urgency, found.unread) == (Urgency.SAME_DAY, True)


def test_a_reply_of_nothing_but_little_words_is_read_soon() -> None:
    began = time.perf_counter()

    found = read("my eye is swollen shut. " + "a " * 3_500)

    assert time.perf_counter() - began < 2
    assert (found.urgency, found.unread) == (Urgency.EMERGENCY, True)


@pytest.mark.parametrize(
    "text", ["red " * 1_500, "red, " * 1_200, "no redness and no red. " * 300, "ojo rojo " * 700], ids=range(4)
)
def test_a_reply_of_nothing_but_signs_is_read_soon(text: str) -> None:
    read("warm")
    began = time.process_time()

    read(text)

    assert time.process_time() - began < 1.5


CHAT = "I went to the shop and then my mother came by for tea, we talked about the garden. "


@pytest.mark.parametrize("before", [0, 30, 600])
@pytest.mark.parametrize("after", [0, 30, 600])
def test_an_emergency_is_found_wherever_it_stands_in_a_long_letter(before: int, after: int) -> None:
    found = read(CHAT * before + "My left eye is swollen shut and I cannot see. " + CHAT * after)

    assert found.urgency is Urgency.EMERGENCY
    assert found.unread is (before + after > 30)


@pytest.mark.parametrize("before", range(20, 60, 3))
def test_no_alarm_is_cut_in_two_where_a_long_letter_is(before: int) -> None:
    found = read("we went out " * before * 5 + "my eye is swollen shut " + "we went out " * 300)

    assert (found.urgency, found.unread) == (Urgency.EMERGENCY, True)


def test_an_emergency_behind_letters_that_nothing_parts_is_found() -> None:
    found = read("x" * 50_000 + " my eye is swollen shut " + "y" * 50_000)

    assert (found.urgency, found.unread) == (Urgency.EMERGENCY, True)


def test_of_a_long_letter_the_beginning_and_the_end_are_read_and_its_words_are_its_own() -> None:
    text = "My left lid itches. " + CHAT * 60 + "No redness at all, and please stop texting me."

    found = read(text)

    assert found.urgency is Urgency.SAME_DAY
    assert (found.signs, found.negated, found.side) == ((Sign.ITCHING,), (Sign.REDNESS,), Side.LEFT)
    assert {Topic.IRRITATION, Topic.STOP} <= set(found.about)
    assert found.unread
    assert all(one.text == text[one.start : one.end] for one in found.why)


def test_praise_in_a_long_letter_does_not_stand_beside_what_is_wrong_in_it() -> None:
    assert Topic.FINE not in read("All is well, they look great! " + CHAT * 60 + "My eye is swollen.").about


def test_a_letter_that_is_not_long_needs_no_person_for_its_length() -> None:
    assert not read("They look great, no redness at all, thank you so much! " * 10).unread


def test_a_number_of_thousands_of_digits_hides_no_emergency() -> None:
    assert read("my eye is swollen shut, 1) " + "0" * 4_500).urgency is Urgency.EMERGENCY


@settings(max_examples=150, deadline=None)
@given(st.text(max_size=200))
def test_no_text_raises_and_spans_are_its_own(text: str) -> None:
    assert all(one.text == text[one.start : one.end] for one in read(text).why)


WORDS = (
    *("my", "left", "eye", "is", "not", "red", "or", "swollen", "but", "itchy", "no", "it", "hurts", "since"),
    *("yesterday", "gone", "now", "stop", "!", "?", ",", "\n", "if", "was", "😭", "ojo", "rojo", "ya"),
)


@settings(max_examples=150, deadline=None)
@given(st.lists(st.sampled_from(WORDS), max_size=30))
def test_a_sign_is_never_both_told_and_denied(words: list[str]) -> None:
    found = read(" ".join(words))

    assert not set(found.signs) & set(found.negated)
    assert found.about
    assert not found.signs or found.urgency is not Urgency.NONE
