from __future__ import annotations

import pytest

from aftercare.core.reading import Urgency, read


@pytest.mark.parametrize(
    "text",
    [
        "my colleague had a stye last week. Swollen, crusty, the lot. She's fine",
        "my mate shaz got lash glue on her CURTAINS once. not from you, home kit. acetone, scissors, tears, the works",
        "mi prima se hinchó con otra. Roja, llorosa, un desastre",
        "en 2018 me dio una reacción. Hinchada una semana. nunca más",
        "when I was nine I swelled up like a balloon from a wasp sting. eyes shut for two days. never since",
        "in 2019 a girl did mine with some cheap glue and I couldn't open my eyes for two days",
    ],
)
def test_what_is_told_of_another_or_of_years_ago_goes_on(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.NONE, ())


@pytest.mark.parametrize(
    "text",
    [
        "my colleague had a stye last week. Swollen, crusty, the lot. Anyway my own left lid is puffy now",
        "my mate got glue in her hair once. Mine are itchy too",
        "my friend loves hers. Red and itchy since last night",
        "My boss noticed first. Both lids swollen and red",
        "Rabbit eyes. Red",
        "when I was nine my eyes swelled up. Now my left lid is puffy again",
        "in 2019 a girl did mine and I couldn't open my eyes. Today my right eye is red",
        "mi vecina tuvo reacción. A mí me pican desde ayer",
        "my toddler poked me in the eye, it's red now",
    ],
)
def test_her_own_sign_after_it_is_current(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY


def test_an_alarm_after_it_is_hers() -> None:
    assert read("My auntie had an allergy to the glue. Lips tingling and throat tight").urgency is Urgency.EMERGENCY
