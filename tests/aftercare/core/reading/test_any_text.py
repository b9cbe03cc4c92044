"""Whatever is written can be read, and is never lost."""

from __future__ import annotations

import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aftercare.core.reading import Urgency, read

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
