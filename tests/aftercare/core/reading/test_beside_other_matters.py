"""Signs among other matters: what belongs to them, and what does not."""

from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Topic, Urgency, read


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        (
            "My lid has swollen up like a bun, it's shut tight and I can't see out of it.",
            (Sign.SWELLING, Sign.SEALED_EYE),
        ),
        ("Headlights are torture, I screw my eyes shut.", (Sign.LIGHT,)),
        ("En los párpados me han salido unos granitos.", (Sign.RASH,)),
        ("Rash on the lid came up this morning.", (Sign.RASH,)),
    ],
)
def test_what_follows_from_a_sign_is_no_sign_of_its_own(text: str, signs: tuple[Sign, ...]) -> None:
    assert set(read(text).signs) == set(signs)


@pytest.mark.parametrize(
    "text",
    [
        "I fell off my bike and my knee is swollen and throbbing.",
        "Not fainted, unless you count swooning at myself in the lift.",
    ],
)
def test_what_is_of_a_knee_or_a_joke_is_no_sign(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.NONE, ())


def test_what_has_not_returned_is_over_and_sight_that_has_not_is_not() -> None:
    assert read("The crusty bits haven't returned since I washed them.").urgency is Urgency.WATCH
    assert read("My sight went dim and hasn't returned.").urgency is Urgency.EMERGENCY


def test_still_doing_it_does_not_say_that_blinking_fails() -> None:
    assert read("It goes misty and clears the moment I blink, still doing it now.").urgency is Urgency.SAME_DAY
    assert read("It's misty and I blink and it's still misty.").urgency is Urgency.EMERGENCY


def test_a_visit_is_heard_beside_an_alarm() -> None:
    text = "Loving the brown ones. Put me in for the 3rd please. Everything out of my left eye is double."

    found = read(text)

    assert found.urgency is Urgency.EMERGENCY
    assert Topic.BOOKING in found.about


@pytest.mark.parametrize(
    ("text", "asks"),
    [
        ("My lids are puffy. How's the baby, sleeping yet?", False),
        ("My lids are puffy. Did your fella get that job?", False),
        ("My lids are puffy. Should I take them off?", True),
    ],
)
def test_small_talk_asks_for_nothing(text: str, *, asks: bool) -> None:
    assert (Topic.QUESTION in read(text).about) is asks
