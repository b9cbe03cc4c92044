"""Wordings that no list holds word for word: a part of her with what it does, what she can no longer do, likenesses.

The kinds are those by which replies are labelled; the sentences are ours.
"""

from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Urgency, read


@pytest.mark.parametrize(
    ("text", "sign"),
    [
        ("feels like a fist round my throat", Sign.BREATHING),
        ("even sips of water wont go down", Sign.BREATHING),
        ("my chest feels like someone is sitting on it", Sign.BREATHING),
        ("lips look like two hot dogs", Sign.SWELLING),
        ("woke up and my face is like a football", Sign.SWELLING),
        ("I can no longer read the bus numbers with that eye", Sign.VISION),
        ("lost the bottom half of my vision", Sign.VISION),
        ("the telly has two of everything", Sign.VISION),
        ("paracetamol and codeine not touching the pain", Sign.PAIN),
        ("the adhesive went right in", Sign.GLUE_IN_EYE),
        ("the stuff you take them off with ran into my eye", Sign.GLUE_IN_EYE),
        ("i cant prise my lids apart", Sign.SEALED_EYE),
        ("top and bottom lashes are fused", Sign.SEALED_EYE),
        ("welts popping up from my scalp to my ankles", Sign.HIVES),
        ("world keeps tilting", Sign.FAINT),
        ("me está costando jalar aire y me chifla el pecho", Sign.BREATHING),
        ("mi cara parece un globo", Sign.SWELLING),
        ("se me fue acetona al ojo", Sign.GLUE_IN_EYE),
        ("se me pegaron las pestañas de arriba con las de abajo y no abro", Sign.SEALED_EYE),
    ],
)
def test_an_emergency_put_together_from_its_parts_is_read(text: str, sign: Sign) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.EMERGENCY, (sign,))


@pytest.mark.parametrize(
    ("text", "sign"),
    [
        ("my eyelids are like two sausages", Sign.SWELLING),
        ("my eyes look like ive been on the weed all week", Sign.REDNESS),
        ("feels like someone rubbed chilli in them", Sign.BURNING),
        ("a lash is pointing inwards and scraping my lid", Sign.POKING),
        ("had to wear sunglasses in the office", Sign.LIGHT),
        ("i cannot quit digging at my lash line w my knuckles", Sign.ITCHING),
        ("feels like theres grit under the lid", Sign.GRITTY),
        ("mi ojo parece pelota", Sign.SWELLING),
        ("siento como tierra en los ojos", Sign.GRITTY),
    ],
)
def test_a_likeness_is_read_as_its_sign(text: str, sign: Sign) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.SAME_DAY, (sign,))


@pytest.mark.parametrize(
    "text",
    [
        "my car wont open lol gonna be late",
        "the app is blurry on my phone",
        "dont want to see you blind anyone haha",
        "my neck hurts from lying there",
        "the price made my eyes water tho haha",
        "vision sharp as a tack",
    ],
)
def test_the_same_parts_of_other_things_are_no_sign(text: str) -> None:
    assert read(text).urgency is Urgency.NONE


def test_a_filler_within_a_phrase_changes_nothing() -> None:
    assert read("my eye is glued shut").signs == read("my eye is literally so glued shut").signs == (Sign.SEALED_EYE,)


def test_a_phrase_does_not_reach_into_the_next_clause() -> None:
    found = read("my eye is pink and i can have the curtains open")

    assert found.signs == (Sign.REDNESS,)


def test_rinsing_water_is_no_watering_eye() -> None:
    assert read("rinsed my eye under cold water and it is still red").signs == (Sign.REDNESS,)
    assert Sign.WATERING in read("my eyes water").signs


def test_lips_and_eyes_that_swell_together_are_of_the_face() -> None:
    assert read("my lips and my eyes are swollen").urgency is Urgency.EMERGENCY
    assert read("my lips are fine and my eyes are swollen").urgency is Urgency.SAME_DAY


def test_without_may_be_written_with_a_stroke() -> None:
    assert read("three days in w/o redness or itching").signs == ()


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("the lid is coming up in spots", (Sign.RASH,)),
        ("I can feel bristles on both lids whenever I shut them", (Sign.POKING,)),
        ("haze over things till I flutter my eyes, then it's sharp", (Sign.VISION,)),
        ("Left's a bit teary, no sting. Best lashes ever!", (Sign.WATERING,)),
    ],
)
def test_signs_of_today_that_look_like_more_or_less(text: str, signs: tuple[Sign, ...]) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.SAME_DAY, signs)
