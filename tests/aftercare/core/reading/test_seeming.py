from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Urgency, read


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("can't see my knitting for dabbing", (Sign.WATERING,)),
        ("it's like a splinter in my lid", (Sign.POKING,)),
        ("eyelids came up red last nite", (Sign.REDNESS,)),
        ("left eye's a shade pinker than the right", (Sign.REDNESS,)),
    ],
)
def test_what_only_seems_to_be_another_sign_is_left_out(text: str, signs: tuple[Sign, ...]) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.SAME_DAY, signs)


@pytest.mark.parametrize("text", ["I can't see my phone properly, it's all blurred", "there's a splinter in my eye"])
def test_what_looks_alike_and_is_an_alarm_stays_one(text: str) -> None:
    assert read(text).urgency is Urgency.EMERGENCY


def test_a_hangover_is_no_light_that_hurts() -> None:
    assert read("blinds down and shades on, massive hangover lol").urgency is Urgency.NONE
    assert read("blinds down and shades on, my eyes can't take the light").urgency is not Urgency.NONE


def test_nobody_is_looked_for_where_there_are_no_issues() -> None:
    assert read("They're not watering, no issues here").about == ("fine",)
