from __future__ import annotations

import pytest

from aftercare.core.reading import Urgency, read


@pytest.mark.parametrize(
    "text",
    [
        "en 2018 me dio una reacción. Hinchada una semana. nunca más",
        "when I was nine I swelled up like a balloon from a wasp sting. eyes shut for two days. never since",
        "in 2019 a girl did mine with some cheap glue and I couldn't open my eyes for two days",
        "As a teenager I had a terrible reaction. Big red lumps, hot compresses, the works. Not had one in ten years",
        "Hace diez años me pusieron unas y acabé en urgencias. Ojos cerrados tres días. Contigo nada de eso",
    ],
)
def test_an_old_story_goes_on(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.NONE, ())


@pytest.mark.parametrize(
    "text",
    [
        "when I was nine my eyes swelled up. Now my left lid is puffy again",
        "in 2019 a girl did mine and I couldn't open my eyes. Today my right eye is red",
        "Used to have eczema as a kid. Lids flaking again this week",
        "Last time was fine. Sore for two days",
        "I had a reaction last year. Three days in, lids puffy",
        "En 2019 me ardieron. Hoy me arde el izquierdo",
    ],
)
def test_what_comes_after_an_old_story_is_of_now(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY
