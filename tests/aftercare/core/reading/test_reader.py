from __future__ import annotations

import pytest

from aftercare.core.reading import Side, Sign, Topic, Urgency, read


@pytest.mark.parametrize(
    "text",
    [
        # Each kind of emergency (after NHS red-eye advice, reviewed 2022-03-21).
        "i cant breathe properly",
        "trouble swallowing since the appointment",
        "my chest feels tight",
        "my tongue is tingling",
        "my lips are swelling up",
        "whole face swollen",
        "nearly fainted just now",
        "hives all over my body",
        "I can't see out of my left eye",
        "seeing double",
        "flashing lights in my right eye",
        "my vision is blurry",
        "the pain is unbearable",
        "glue went in my eye",
        "remover got in my eye",
        "my eye is glued shut",
        "my eye wont open",
        "the tweezers poked my eye",
        "one pupil is bigger than the other",
        "the white of my eye is dark red",
        "my eye is bulging",
        "it hurts when i move my eye",
        "i have a fever and the lid is swollen",
        "my eye is red and light hurts",
        "red eye, bad headache and i feel sick",
        "no puedo respirar",
        "no puedo abrir el ojo",
        "me cayó pegamento en el ojo",
        "tengo la cara hinchada",
        "veo doble",
        "ronchas por todo el cuerpo",
    ],
)
def test_an_emergency_is_read_as_one(text: str) -> None:
    assert read(text).urgency is Urgency.EMERGENCY


@pytest.mark.parametrize(
    "text",
    [
        "these lashes are killing it",
        "eye-watering price lol",
        "I'm dying they are so pretty",
        "takes my breath away",
        "itching to show them off",
        "rash decision but no regrets",
        "sore from laughing",
        "my wallet hurts",
        "spots open on friday?",
        "the red lipstick goes so well with them",
        "me muero de lo lindas que quedaron",
        "blinded the entire class with these",
        "my nose is running and my head is pounding but lashes are perfect",
        "brows came out reddish, not happy",
        "sobbed at the christening, streaming, and they held",
        "how long before the visit do I stop my allergy tablets",
    ],
)
def test_a_figure_of_speech_is_no_sign(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.NONE, ())


@pytest.mark.parametrize(
    ("text", "sign"),
    [
        ("swolen", Sign.SWELLING),
        ("so ITCHYYYY", Sign.ITCHING),
        ("eyes r wattering", Sign.WATERING),
        ("burnin", Sign.BURNING),
        ("ｒｅｄ eyes", Sign.REDNESS),
        ("hinchadito", Sign.SWELLING),
        ("mis lids están red", Sign.REDNESS),
        ("👁️🔥😖", Sign.BURNING),
    ],
)
def test_spellings_are_mended(text: str, sign: Sign) -> None:
    assert sign in read(text).signs


@pytest.mark.parametrize(
    "text", ["dwelling on it", "it was a witch costume", "the spelling", "i switched shampoo", "se han quedado así"]
)
def test_real_words_are_left_alone(text: str) -> None:
    assert read(text).signs == ()


def test_each_finding_is_a_span_of_the_reply() -> None:
    text = "Hi! 💕 Left lid’s ÍTCHY… no redness\u200b though, love them!"

    found = read(text)

    assert {one.finding for one in found.why} >= {"itching", "no redness", "left", "fine"}
    assert all(one.text == text[one.start : one.end] for one in found.why)
    assert next(one.text for one in found.why if one.finding == "itching") == "ÍTCHY"


@pytest.mark.parametrize(
    ("text", "side"),
    [
        ("left lid itchy", Side.LEFT),
        ("it is the right one", Side.RIGHT),
        ("both eyes red", Side.BOTH),
        ("los dos ojos rojos", Side.BOTH),
        ("el ojo izq me arde", Side.LEFT),
        ("itchy right now", None),
        ("i left my phone and my eyes are red", None),
        ("right as rain", None),
        ("two lashes left", None),
    ],
)
def test_the_side_needs_a_word_for_it(text: str, side: Side | None) -> None:
    assert read(text).side is side


@pytest.mark.parametrize(
    ("text", "about"),
    [
        ("Love them!! only my left lid is itchy", {Topic.FINE, Topic.IRRITATION}),
        ("half of them fell out already", {Topic.RETENTION}),
        ("can i move my fill to friday?", {Topic.BOOKING}),
        ("when can i wash them?", {Topic.QUESTION}),
        ("not what i asked for, spider legs", {Topic.COMPLAINT}),
        ("wrong number", {Topic.WRONG_PERSON}),
        ("puedo cambiar mi cita para el lunes?", {Topic.BOOKING}),
        ("se me caen muchas", {Topic.RETENTION}),
        ("HELP", {Topic.HELP}),
        ("START", {Topic.START}),
    ],
)
def test_topics_are_read(text: str, about: set[Topic]) -> None:
    assert set(read(text).about) == about


@pytest.mark.parametrize(
    ("text", "urgency", "signs"),
    [
        ("lashes stuck together with yellow goo when i wake", "same_day", {"discharge"}),
        ("amanecí con los ojos pegados de lagañas", "same_day", {"discharge"}),
        ("lids stuck with goo, cant open", "emergency", {"discharge", "sealed_eye"}),
        ("my eyes are lovely but the link wont open", "none", set()),
        ("my left eye is red and it hurts", "same_day", {"redness", "pain"}),
    ],
)
def test_goo_is_no_eye_that_will_not_open_and_one_that_will_not_is(text: str, urgency: str, signs: set[str]) -> None:
    found = read(text)

    assert (found.urgency, set(found.signs)) == (urgency, signs)
