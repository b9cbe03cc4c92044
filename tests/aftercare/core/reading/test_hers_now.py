"""What looks denied, imagined, over or somebody else's, and is hers now; and its harmless neighbours."""

from __future__ import annotations

import pytest

from aftercare.core.reading import Sign, Topic, Urgency, read
from aftercare.core.reading.spelling import known


@pytest.mark.parametrize(
    ("hers", "harmless"),
    [
        ("should my lid be folding over like this?", "should my eyes swell, who do i ring?"),
        ("does the burning end eventually", "does the swelling normally go down for people?"),
        ("if u text me once more while my lids are peeling i will scream", "if u text me once more i will scream"),
        ("its usually my cat with the runny eyes, now its me", "my cat had runny eyes and now shes fine"),
        ("wouldnt wish this itch on my ex", "wouldnt wish a bad lash tech on anyone, glad i found you"),
        ("shame man its a bit sore by the lid", "my man had sore eyes at the wedding"),
        ("shes a bit puffy, my eyelid i mean", "my sister, shes a bit puffy"),
        ("tengo el brillo en cero y aun asi me molesta la luz", "cero molestias y la luz no me molesta"),
        ("el derecho sigue rojo y ya van 3 dias", "no le deseo a nadie mi cama, las pestañas divinas"),
        ("bright light hurts my eyes, had to turn my screen down", "turned the music down, lovely evening"),
    ],
)
def test_a_sign_of_hers_and_what_only_sounds_like_it(hers: str, harmless: str) -> None:
    assert read(hers).urgency in (Urgency.SAME_DAY, Urgency.EMERGENCY)
    assert read(harmless).urgency is Urgency.NONE


def test_words_with_a_subject_of_their_own_are_not_denied_with_what_stands_before() -> None:
    found = read("no its not itchy and its not red its my breathing")

    assert (found.signs, found.negated) == ((Sign.BREATHING,), (Sign.REDNESS, Sign.ITCHING))


def test_glue_that_did_not_get_in_is_denied() -> None:
    assert read("no me entró pegamento, todo bien").urgency is Urgency.NONE
    assert read("no, me entró pegamento en el ojo").urgency is Urgency.EMERGENCY


def test_breath_that_does_not_come_well_since_is_not_well_since() -> None:
    assert read("cant breathe good since this morning").urgency is Urgency.EMERGENCY


def test_blinking_that_has_to_be_done_again_is_of_today() -> None:
    found = read("I get a filmy patch now and then, blink blink, gone, back to 20/20.")

    assert (found.urgency, found.signs) == (Urgency.SAME_DAY, (Sign.VISION,))


def test_what_is_set_against_praise_is_no_praise() -> None:
    found = read("Thank you, they are lovely, only one hair pricks me at the corner")

    assert (found.urgency, found.about) == (Urgency.SAME_DAY, (Topic.IRRITATION, Topic.FINE))


def test_what_is_back_again_in_another_language_is_not_over() -> None:
    assert read("Es war weg, jetzt juckt es wieder").urgency is Urgency.SAME_DAY
    assert read("Es hat gejuckt, jetzt ist alles wieder gut").urgency is Urgency.WATCH


@pytest.mark.parametrize(
    ("written", "meant"),
    [("itvhy", "itchy"), ("eyws", "eyes"), ("ichty", "itchy"), ("hice", "hice"), ("tasty", "tasty"), ("fave", "fave")],
)
def test_a_key_beside_the_right_one_is_a_slip_where_no_word_has_such_letters(written: str, meant: str) -> None:
    assert known(written) == meant
