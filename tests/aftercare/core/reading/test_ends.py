from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Urgency, read


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("bit photophobic today, sclera white as snow", (Sign.LIGHT,)),
        ("itchy all day, the whites are white as anything", (Sign.ITCHING,)),
        ("the right keeps watering on its own", (Sign.WATERING,)),
    ],
)
def test_white_ends_red_alone(text: str, signs: tuple[Sign, ...]) -> None:
    found = read(text)

    assert (found.urgency, found.signs) == (Urgency.SAME_DAY, signs)


def test_white_ends_red() -> None:
    found = read("were red on Sunday, white as snow now")

    assert (found.urgency, found.signs) == (Urgency.WATCH, ())
