from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Urgency, read


@pytest.mark.parametrize(
    ("text", "denied"),
    [
        ("figured I'd be bloodshot by now, turns out nope", Sign.REDNESS),
        ("My mum swore they'd itch all week. They don't!", Sign.ITCHING),
        ("I was certain of a rash. There isn't one", Sign.RASH),
        ("I'd heard it would burn like mad, but nope", Sign.BURNING),
        ("pensaba que me iban a arder, pero nada", Sign.BURNING),
    ],
)
def test_what_was_feared_and_did_not_come_is_denied(text: str, denied: Sign) -> None:
    found = read(text)

    assert found.urgency is Urgency.NONE
    assert denied in found.negated


@pytest.mark.parametrize(
    "text",
    [
        "thought they'd itch. they didn't until today, now they itch",
        "you warned me it would itch and it's itching badly",
        "was told it would hurt but no one said it would swell like this",
        "I was certain of a reaction and here it is, my lids are swollen",
    ],
)
def test_what_was_feared_and_came_is_a_sign(text: str) -> None:
    assert read(text).urgency is not Urgency.NONE


def test_what_may_come_is_neither_there_nor_denied() -> None:
    found = read("I thought it would sting, does it?")

    assert (found.urgency, found.negated) == (Urgency.NONE, ())


@pytest.mark.parametrize(
    "text", ["People told me it burns, it didn't", "it burns, they said. it didn't", "me dijeron que arde, y no"]
)
def test_what_others_said_and_is_not_so_is_denied(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.negated) == (Urgency.NONE, (Sign.BURNING,))


@pytest.mark.parametrize(
    "text",
    [
        "They told me it would sting. It hasn't stopped",
        "my husband says it looks red. it hasn't gone down",
        "me dijeron que arde, y no para de arder",
        "mum asked whether my lids were swollen. They're not going down, they are like balloons",
    ],
)
def test_what_others_said_and_stays_is_a_sign(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY


def test_what_others_asked_and_is_not_so_is_denied() -> None:
    found = read("Mum phoned to ask whether my eyes were swollen yet. They're not, and they don't hurt either")

    assert (found.urgency, found.negated) == (Urgency.NONE, (Sign.SWELLING, Sign.PAIN))


@pytest.mark.parametrize("text", ["was scared I'd swell up and I have", "you said it might sting and it did"])
def test_what_was_feared_and_came_true_is_told(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY


@pytest.mark.parametrize(
    "text",
    [
        "normally my eyes stream and this time they haven't",
        "they always go red with lashes but not this time",
        "siempre me pican y esta vez no",
    ],
)
def test_what_always_came_and_did_not_is_denied(text: str) -> None:
    found = read(text)

    assert found.urgency is Urgency.NONE
    assert found.negated


def test_what_always_came_and_came_again_is_a_sign() -> None:
    assert read("normally they itch and now they burn as well").urgency is Urgency.SAME_DAY
