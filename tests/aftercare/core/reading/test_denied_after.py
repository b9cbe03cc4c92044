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
    ("text", "denied"),
    [
        ("Red they are not!", Sign.REDNESS),
        ("it isnt that they hurt, they dont, theyre just so uneven", Sign.PAIN),
        ("It's not as though I wouldn't tell you if they itched, and they don't", Sign.ITCHING),
    ],
)
def test_a_sign_may_be_taken_back(text: str, denied: Sign) -> None:
    found = read(text)

    assert (found.urgency, found.negated) == (Urgency.NONE, (denied,))


def test_what_is_affirmed_behind_is_not_denied_before() -> None:
    found = read("swollen it isn't, itchy it certainly is")

    assert (found.signs, found.negated) == ((Sign.ITCHING,), (Sign.SWELLING,))


def test_another_verb_behind_denies_nothing() -> None:
    assert read("they itch, they don't stop").signs == (Sign.ITCHING,)


@pytest.mark.parametrize(
    "text",
    [
        "the redness you asked about: none",
        "The stinging you mentioned never came",
        "I'd send you a pic of the red but there isn't any",
        "Itch? not a smidge",
    ],
)
def test_what_was_asked_about_is_denied_behind_the_asking(text: str) -> None:
    found = read(text)

    assert found.urgency is Urgency.NONE
    assert found.negated


@pytest.mark.parametrize("text", ["pain? not a lot but some", "my lids are red but there isn't any swelling"])
def test_what_is_denied_in_part_is_a_sign(text: str) -> None:
    assert read(text).urgency is Urgency.SAME_DAY


def test_what_is_denied_may_be_that_it_went() -> None:
    assert read("el susto ya se me pasó, la irritación no").urgency is Urgency.SAME_DAY
    assert read("the redness is gone but not the itch").signs == (Sign.ITCHING,)
    assert read("el rojo se fue, y picazón no hay").urgency is Urgency.WATCH


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
