from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Urgency, read


@pytest.mark.parametrize(
    "text",
    [
        "I'm a nurse on an eye ward. Red eyes, sticky eyes, all day long",
        "I do stage makeup for the zombie walk, so all week it's swollen lids in latex, crusty bits",
        "I teach first aid, so all day it's burns, blisters and swollen eyes",
        "I dreamt you glued my eyes to the chair. Woke up laughing so hard the dog barked",
        "Thinking of the tint too. I saw a vid where it dripped in a girl's eye and she was screaming",
        "Trabajo en urgencias de oftalmología, así que ojos rojos veo cuarenta al día",
        "En la peli que vi anoche a la villana le echan pegamento en los párpados",
    ],
)
def test_work_among_eyes_films_and_dreams_are_stories(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.NONE, ())


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("I'm a nurse on an eye ward. Anyway my own left lid is puffy now", (Sign.SWELLING,)),
        ("I'm a nurse on an eye ward and I woke up with red eyes", (Sign.REDNESS,)),
        ("I work in an optician's and my eye is red", (Sign.REDNESS,)),
        ("I do stage makeup for a living. My eyes are itchy since Tuesday", (Sign.ITCHING,)),
        ("I dreamt about lashes and woke up with a swollen lid", (Sign.SWELLING,)),
        ("saw a tiktok about reactions and I think that's me, lids like balloons", (Sign.SWELLING,)),
        ("Trabajo en urgencias y tengo el ojo rojo", (Sign.REDNESS,)),
        ("Soñé con pestañas y amanecí con el ojo hinchado", (Sign.SWELLING,)),
    ],
)
def test_her_own_sign_told_after_a_story_is_current(text: str, signs: tuple[Sign, ...]) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.SAME_DAY, signs)


def test_an_alarm_in_a_sentence_after_a_story_is_hers() -> None:
    assert read("Saw a video about reactions. Throat closing, lips tingling").urgency is Urgency.EMERGENCY


@pytest.mark.parametrize(
    "text",
    [
        "The film had me sobbing, the one with the dog. Two hours of tears and popcorn",
        "Chopping shallots for forty people, tears everywhere, lashes perfect",
        "Lloré en la boda como magdalena y ni se movieron",
    ],
)
def test_tears_of_a_film_or_an_onion_are_no_sign(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.NONE, ())


@pytest.mark.parametrize(
    "text",
    [
        "Went to a wedding Saturday. My eyes have been watering nonstop ever since",
        "onion eyes. stinging and tears all day",
        "Like I'd been chopping onions, tears all day",
        "everyone at work thinks I cried at a film. I just leak",
        "fui a una boda y desde entonces me lloran los ojos",
    ],
)
def test_eyes_that_water_by_themselves_are_one(text: str) -> None:
    found = read(text)

    assert found.urgency is Urgency.SAME_DAY
    assert Sign.WATERING in found.signs
