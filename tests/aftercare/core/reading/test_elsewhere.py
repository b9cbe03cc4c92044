from __future__ import annotations

from aftercare.core.reading import Urgency, read


def test_legs_that_shake_after_sport_are_no_faint() -> None:
    text = "Hice la clase de spinning. Me tiemblan las piernas pero las pestañas ni se despeinaron"

    assert read(text).urgency is Urgency.NONE


def test_legs_that_shake_without_it_are_one() -> None:
    assert read("me puso el pegamento y me tiemblan las piernas, me mareo").urgency is Urgency.EMERGENCY


def test_a_thing_hurts_but_not_within_it() -> None:
    assert read("el precio duele").urgency is Urgency.NONE
    assert read("en el coche arde").urgency is Urgency.SAME_DAY
