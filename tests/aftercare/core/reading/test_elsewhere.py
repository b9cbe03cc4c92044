from __future__ import annotations

from aftercare.core.reading import Sign, Urgency, read


def test_legs_that_shake_after_sport_are_no_faint() -> None:
    text = "Hice la clase de spinning. Me tiemblan las piernas pero las pestañas ni se despeinaron"

    assert read(text).urgency is Urgency.NONE


def test_legs_that_shake_without_it_are_one() -> None:
    assert read("me puso el pegamento y me tiemblan las piernas, me mareo").urgency is Urgency.EMERGENCY


def test_a_face_after_the_dentist_is_no_reaction() -> None:
    assert read("had a tooth out, face like a football, can we push to friday").urgency is Urgency.NONE


def test_one_without_it_is() -> None:
    assert read("face like a football since you did my lashes").urgency is Urgency.EMERGENCY


def test_her_hands_are_a_part_of_what_she_does_to_her_eyes() -> None:
    assert read("sitting on my hands so I don't scratch").signs == (Sign.ITCHING,)


def test_hands_that_itch_are_no_eyes() -> None:
    assert read("my hands are so itchy from the new soap").urgency is Urgency.NONE


def test_tears_that_run_down_her_cheeks_come_from_her_eyes() -> None:
    assert read("doesnt hurt but the tears keep running down my cheeks").urgency is Urgency.SAME_DAY


def test_a_cry_about_money_is_no_pain() -> None:
    assert not read("tax bill. ouch. drop me from full set to a fill?").signs
    assert Sign.PAIN in read("ouch. my lid").signs


def test_a_thing_hurts_but_not_within_it() -> None:
    assert read("el precio duele").urgency is Urgency.NONE
    assert read("en el coche arde").urgency is Urgency.SAME_DAY
