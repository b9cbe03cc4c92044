from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Topic, Urgency, read


@pytest.mark.parametrize(
    ("text", "sign"),
    [
        ("my daughter's lids puffed up on Sunday, mine are doing the same today", Sign.SWELLING),
        (
            "Mum says an itchy palm means money. What does an itchy eyelid mean? Mine has been at it since Monday",
            Sign.ITCHING,
        ),
        ("the kids had pink eyes and so do I", Sign.REDNESS),
        ("A mi hermana le ardían los ojos y ahora a mí también", Sign.BURNING),
    ],
)
def test_what_another_has_is_hers_where_she_says_that_she_has_it_too(text: str, sign: Sign) -> None:
    found = read(text)

    assert found.urgency is not Urgency.NONE
    assert sign in found.signs


@pytest.mark.parametrize(
    "text",
    [
        "My mam said her eyes are streaming just from the price haha",
        "Childminder rang, she's got sticky eyes so no childcare",
        "a wasp stung the postman on the eyelid",
        "puppy has red swollen eyes, vet says allergy",
        "his eyes puff up with pollen, mine never do",
        "Hope your stye clears up soon hun",
        "dad scratched his cornea gardening so I need to move Friday",
        "I've done my ankle in on a kerb, swollen like a melon. Have to cancel",
        "se le inflamó el ojo a mi compañera",
    ],
)
def test_what_is_told_of_others_and_of_other_parts_is_no_sign_of_hers(text: str) -> None:
    assert read(text).urgency is Urgency.NONE


@pytest.mark.parametrize(
    "text",
    [
        "My daughter says her eyes are burning since you did her lashes",
        "mi hija se desmayó y tiene los párpados hinchados, ella fue ayer con ustedes",
        "my friend says one of my eyes is redder than the other",
        "he says his eyes are fine but mine sting",
        "my nose is runny and my eyes itch like mad",
        "the girl next to me poked me in the eye and it is sore",
        "wouldn't wish this itch on my ex",
        "mi perro está bien, la del ojo rojo soy yo",
        "me duele la espalda y también el ojo derecho",
        "my girlfriend can't open her eye after your removal",
    ],
)
def test_what_may_be_the_clients_stays_so(text: str) -> None:
    found = read(text)

    assert found.urgency is not Urgency.NONE or found.unread


@pytest.mark.parametrize(
    "text", ["Sciatica. Next week?", "Piles. Can't sit. Thursday after 5?", "¿El martes por la tarde?"]
)
def test_a_day_that_is_asked_for_is_a_visit(text: str) -> None:
    assert read(text).about == (Topic.BOOKING,)


def test_a_list_may_be_denied_as_a_whole_behind_it() -> None:
    found = read("(itchy, puffy, red) all nope")

    assert found.urgency is Urgency.NONE
    assert set(found.negated) == {Sign.ITCHING, Sign.SWELLING, Sign.REDNESS}


def test_less_that_is_wished_for_is_there() -> None:
    assert read("wouldn't say no to less stinging").urgency is Urgency.SAME_DAY


def test_a_day_after_which_nothing_was_left_is_an_end() -> None:
    assert read("itched like hell saturday, sunday nothing").urgency is Urgency.WATCH


def test_thanks_for_a_sign_are_no_praise() -> None:
    assert read("Thank you so much for the complimentary redness. I ordered the lashes only.").signs == (Sign.REDNESS,)


def test_what_is_supposed_after_a_pause_is_imagined() -> None:
    assert read("Suppose, purely suppose, my lids puffed up. Would I ring you?").urgency is Urgency.NONE
