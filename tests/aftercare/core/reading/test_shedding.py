from __future__ import annotations

import pytest

from aftercare.core.reading import Side, Topic, Urgency, read


@pytest.mark.parametrize(
    "text",
    [
        "half of the top row is gone on one eye",
        "looks like a mouse has been at my eyelid",
        "wee bald bit over the pupil, rest is holding",
        "Me faltan pestañas en los dos ojos",
    ],
)
def test_a_bald_eye_is_no_sign_of_one(text: str) -> None:
    found = read(text)

    assert found.urgency is Urgency.NONE
    assert Topic.RETENTION in found.about


@pytest.mark.parametrize(
    "text",
    [
        "half of the top row is gone and the lid is burning",
        "bald patch on my lid and it is red raw",
        "two of my lashes stuck to the lower lid, cant blink",
        "tengo el párpado pelado y rojo",
    ],
)
def test_a_sign_beside_falling_lashes_stays_one(text: str) -> None:
    assert read(text).urgency in (Urgency.SAME_DAY, Urgency.EMERGENCY)


def test_the_side_is_the_one_that_she_compares() -> None:
    assert read("the left is noticeably sparser than the right").side is Side.LEFT
