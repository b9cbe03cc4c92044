from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Urgency, read


@pytest.mark.parametrize(
    ("text", "denied"),
    [
        ("Sore? Me? Not in the slightest.", Sign.PAIN),
        ("swelling? only my ego", Sign.SWELLING),
        ("If you mean redness, then no", Sign.REDNESS),
        ("itchy nah", Sign.ITCHING),
        ("picazón no", Sign.ITCHING),
    ],
)
def test_a_denial_may_follow_its_sign(text: str, denied: Sign) -> None:
    found = read(text)

    assert (found.urgency, found.negated) == (Urgency.NONE, (denied,))


@pytest.mark.parametrize("text", ["Sore? Me? Yes.", "swelling? only my left eye", "Red? Not half", "itchy now"])
def test_what_follows_may_be_no_denial(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY


def test_what_is_denied_may_be_that_it_went() -> None:
    assert read("el susto ya se me pasó, la irritación no").urgency is Urgency.SAME_DAY
    assert read("el rojo se fue, y picazón no hay").urgency is Urgency.WATCH
