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


@pytest.mark.parametrize(
    "text",
    ["I looked for redness, and frankly there's none", "I searched for redness and there isn't any"],
)
def test_what_is_looked_for_and_not_found_is_denied(text: str) -> None:
    found = read(text)

    assert (found.urgency, found.negated) == (Urgency.NONE, (Sign.REDNESS,))


def test_what_is_looked_for_and_found_is_not() -> None:
    assert read("I looked for the itchy spot and found it, red and sore").urgency is Urgency.SAME_DAY


def test_what_was_never_there_until_this_set_is_there() -> None:
    assert read("never had red eyes in my life until this set").signs == (Sign.REDNESS,)


@pytest.mark.parametrize(
    "text",
    [
        "I know you said it might sting a bit but three days?",
        "if it wasn't for the stinging I'd be over the moon",
        "I'd love them more if they didn't sting",
        "hardly a day without stinging",
    ],
)
def test_what_is_foretold_wished_away_or_missed_is_there(text: str) -> None:
    assert (read(text).urgency, read(text).signs) == (Urgency.SAME_DAY, (Sign.BURNING,))
