"""A sign of somebody else, and whether she says to have it too."""

from __future__ import annotations

import pytest

from aftercare.core.reading import Urgency, read


@pytest.mark.parametrize(
    ("text", "urgency"),
    [
        ("my cat has pink eye and now i do", Urgency.SAME_DAY),
        ("our cat has a runny eye and so do i", Urgency.SAME_DAY),
        ("my sister had swollen lids, me too", Urgency.SAME_DAY),
        ("my sister had swollen lids, now mine are fine", Urgency.NONE),
        ("my sister swears hers burned and i have an appointment now", Urgency.NONE),
    ],
)
def test_she_has_it_too(text: str, urgency: Urgency) -> None:
    assert read(text).urgency is urgency
