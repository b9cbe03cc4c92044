from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Urgency, read


@pytest.mark.parametrize(
    "text",
    [
        "my colleague had a stye last week. Swollen, crusty, the lot. She's fine",
        "my mate shaz got lash glue on her CURTAINS once. not from you, home kit. acetone, scissors, tears, the works",
        "mi prima se hinchó con otra. Roja, llorosa, un desastre",
        "Sorry for the late reply, my son had an allergic reaction to nuts. Hives all over, the works. He's home now",
    ],
)
def test_what_is_told_of_another_goes_on(text: str) -> None:
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
        "mi vecina tuvo reacción. A mí me pican desde ayer",
        "my toddler poked me in the eye, it's red now",
    ],
)
def test_her_own_sign_after_it_is_current(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY


@pytest.mark.parametrize(
    "text",
    [
        "My auntie had an allergy to the glue. Lips tingling and throat tight",
        "my mate got glue in hers once. Lids sealed shut, they won't open",
        "My wife is reacting it seems. Lids up like balloons. She can't open them, they are sealed",
        "My daughter had a reaction. Couldn't open her eyes this morning. She's 16",
    ],
)
def test_an_alarm_after_it_is_hers_or_a_clients(text: str) -> None:
    assert read(text).urgency is not Urgency.NONE


def test_what_is_denied_after_it_is_denied_of_her() -> None:
    found = read("My friend had terrible redness with hers. No swelling, no itch here")

    assert (found.urgency, found.negated) == (Urgency.NONE, (Sign.SWELLING, Sign.ITCHING))
