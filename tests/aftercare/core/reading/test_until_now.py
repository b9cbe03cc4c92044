"""A denial that held until now."""

from __future__ import annotations

import pytest

from aftercare.core.reading import Urgency, read


@pytest.mark.parametrize(
    ("text", "urgency"),
    [
        ("never went red before but today it has", Urgency.SAME_DAY),
        ("never itched before until today", Urgency.SAME_DAY),
        ("it wasn't sore till today", Urgency.SAME_DAY),
        ("never went red, never itched", Urgency.NONE),
    ],
)
def test_it_is_denied_of_before_alone(text: str, urgency: Urgency) -> None:
    assert read(text).urgency is urgency
