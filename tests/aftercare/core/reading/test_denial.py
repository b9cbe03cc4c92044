"""Denial. The sentences marked NegEx are after the examples of Chapman and others 2001 (J Biomed Inform 34:301) and of
ConText (Harkema and others 2009), from memory, with the findings of an eye in place of theirs."""

from __future__ import annotations

import pytest

from aftercare.core import reading

NEGEX = [
    # text, told, denied
    ("The patient denies pain.", [], ["pain"]),
    ("Patient denies any swelling but complains of itching.", ["itching"], ["swelling"]),
    ("No redness, swelling or discharge.", [], ["redness", "swelling", "discharge"]),
    ("I am without pain.", [], ["pain"]),
    ("There is no evidence of swelling.", [], ["swelling"]),
    ("Negative for discharge.", [], ["discharge"]),
    ("Pain free.", [], ["pain"]),
    ("Not only redness, also pain.", ["redness", "pain"], []),
    ("No increase in swelling; redness is worse.", ["redness"], ["swelling"]),
    ("Denies itching, burning, or discharge.", [], ["itching", "burning", "discharge"]),
    ("She denies any fever, chills or vision change.", [], ["vision"]),
    ("There is no change in vision.", [], ["vision"]),
    ("The patient denies chest pain but has shortness of breath.", ["breathing"], []),
    ("Patient is without redness but reports itching.", ["itching"], ["redness"]),
    ("No history of eye pain.", [], ["pain"]),
    ("Absence of swelling.", [], ["swelling"]),
    ("Eyes: no discharge, no redness, no swelling.", [], ["discharge", "redness", "swelling"]),
    # Triggers that follow what they deny, and one that only looks like a denial (pseudo-negation).
    ("Redness was not seen.", [], ["redness"]),
    ("Swelling is absent.", [], ["swelling"]),
    ("No significant change in the swelling.", ["swelling"], []),
    # ConText: history, condition, another person.
    ("Patient had pain last year.", [], []),
    ("She was told to return if she has pain.", [], []),
    ("Her mother has swelling.", [], []),
]


@pytest.mark.parametrize(("text", "told", "denied"), NEGEX)
def test_the_sentences_of_negex_are_read(text: str, told: list[str], denied: list[str]) -> None:
    found = reading.read(text)

    assert (sorted(found.signs), sorted(found.negated)) == (sorted(told), sorted(denied))


@pytest.mark.parametrize(
    ("text", "told", "denied"),
    [
        ("not red, swollen or sore", [], ["redness", "swelling", "pain"]),
        ("not red, its swollen", ["swelling"], ["redness"]),
        ("no pain just itchy", ["itching"], ["pain"]),
        ("itching? no. redness? a bit", ["redness"], ["itching"]),
        ("it doesn't hurt unless i touch it", ["pain"], []),
        ("No, my eye is red", ["redness"], []),
        ("it hurts and nothing helps", ["pain"], []),
        ("it wont stop itching", ["itching"], []),
        ("not like it isnt itchy", ["itching"], []),
        ("i cant say ive noticed any swelling", [], ["swelling"]),
        ("picazón no, rojo sí", ["redness"], ["itching"]),
        ("ni me pican ni me arden", [], ["itching", "burning"]),
        ("no me deja de picar", ["itching"], []),
        ("the light isn't bothering me", [], ["light"]),
        ("i dont feel good my chest is so heavy", ["breathing"], []),
        ("cant say its not itchy", ["itching"], []),
        ("not gonna lie they itch", ["itching"], []),
        ("i never slept in them, gritty since friday", ["gritty"], []),
        ("haven't had any bother, redness or itching", [], ["redness", "itching"]),
        ("itchy eyes? nope", [], ["itching"]),
        ("no burning, not so much as an itch", [], ["burning", "itching"]),
        ("no redness, lip is swollen", ["swelling"], ["redness"]),
        ("comezón cero, ardor cero, lágrimas todo el día", ["watering"], ["burning", "itching"]),
        ("no me salieron ronchas en el cuerpo", [], ["hives"]),
        ("no veo borroso ni doble", [], ["vision"]),
        ("no veo, todo borroso", ["vision"], []),
        ("no me falta el aire", [], ["breathing"]),
        ("de eso no me quejo y con estas me pica", ["itching"], []),
        ("my sister's lids went red, mine didn't", [], ["redness"]),
        ("pouting without trying, lip is up", ["swelling"], []),
    ],
)
def test_a_denial_reaches_what_it_is_about_and_no_more(text: str, told: list[str], denied: list[str]) -> None:
    found = reading.read(text)

    assert (sorted(found.signs), sorted(found.negated)) == (sorted(told), sorted(denied))


def test_what_is_only_denied_is_fine() -> None:
    found = reading.read("no redness at all")

    assert (found.urgency, found.about) == (reading.Urgency.NONE, (reading.Topic.FINE,))


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("I know I said no itching yesterday. I spoke too soon", ["itching"]),
        ("they weren't sore till today", ["pain"]),
        ("no itch until last night", ["itching"]),
        ("It doesn't not itch", ["itching"]),
        ("rojo no tengo, picazón sí", ["itching"]),
        ("I couldn't say they aren't itching", ["itching"]),
        ("I would never claim there's no redness", ["redness"]),
        ("picar no me pica. arder sí", ["burning"]),
        ("Dijiste que ya no dolía. Va el cuarto día y duele", ["pain"]),
    ],
)
def test_a_denial_that_is_taken_back_or_ended_is_none(text: str, told: list[str]) -> None:
    found = reading.read(text)

    assert sorted(found.signs) == told
    assert found.urgency is reading.Urgency.SAME_DAY


@pytest.mark.parametrize(
    ("text", "told", "denied"),
    [
        ("pican, arder no arden", ["itching"], ["burning"]),
        ("me duelen, colorados no se ven", ["pain"], ["redness"]),
        ("párpados rojos, hinchazón ninguna", ["redness"], ["swelling"]),
        ("tengo el ojo rosado, nada borroso", ["redness"], ["vision"]),
        ("picarme? para nada", [], ["itching"]),
        ("left lid itches, can't see any bumps", ["itching"], ["rash"]),
        ("sore and streamy, itch isn't part of it", ["pain", "watering"], ["itching"]),
    ],
)
def test_a_denial_behind_the_sign(text: str, told: list[str], denied: list[str]) -> None:
    found = reading.read(text)

    assert ([str(sign) for sign in found.signs], [str(sign) for sign in found.negated]) == (told, denied)


def test_what_is_denied_before_an_and_is_not_what_comes_after_it() -> None:
    found = reading.read("todavía no seca y arde un montón")

    assert (found.signs, found.negated) == ((reading.Sign.BURNING,), ())


def test_nothing_of_that_kind_is_no_wrong_number() -> None:
    found = reading.read("aint never been no swelling round here")

    assert found.about == (reading.Topic.FINE,)


@pytest.mark.parametrize(
    ("text", "told", "denied"),
    [
        ("I have not got my glasses she says hello I have an itch in the left one", ["itching"], []),
        ("no swelling I have a bit of redness", ["redness"], ["swelling"]),
        ("not that I have any itching", [], ["itching"]),
        ("they never went red", [], ["redness"]),
        ("it never went red but it is now", ["redness"], []),
        ("they were not itchy but they are today", ["itching"], []),
        ("Never had an itch in my life until your glue", ["itching"], []),
    ],
)
def test_a_denial_ends_where_a_new_sentence_begins_and_where_it_is_taken_back(
    text: str, told: list[str], denied: list[str]
) -> None:
    found = reading.read(text)
    assert (list(found.signs), list(found.negated)) == (told, denied)
