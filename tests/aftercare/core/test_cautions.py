"""What other words for a caution leave out."""

from __future__ import annotations

import pytest

from aftercare.core.cautions import left_out
from aftercare.core.wordcheck import Draft, blocks_saving, check
from aftercare.versions import Slot, slots

CAUTIONS = [slot for slot in slots() if slot.occasion == "caution"]


@pytest.mark.parametrize("slot", CAUTIONS)
def test_every_first_caution_says_something_to_do_and_leaves_nothing_of_itself_out(slot: Slot) -> None:
    body = slot.first().body

    assert left_out(body, body) == ()
    assert len(left_out(body, "")) >= 2


@pytest.mark.parametrize("slot", CAUTIONS)
def test_both_languages_say_to_do_the_same(slot: Slot) -> None:
    other = Slot(slot.occasion, slot.kind, slot.step, slot.channel, "es" if slot.language == "en" else "en")

    assert left_out(slot.first().body, "") == left_out(other.first().body, "")


def test_what_is_gone_is_named() -> None:
    first = "Rinse for 20 min. See a doctor. Call {{ emergency_call }}. Do not drive."

    assert left_out(first, "Rinse for 20 min. Call {{ emergency_call }}.") == ("seeing a doctor", "not to drive")


def test_leaving_out_is_warned_of_but_the_emergency_number_stays() -> None:
    first = "Rinse. See a doctor. Call {{ emergency_call }}."

    warned = check(Draft("caution", "", "sms", "", "Rinse. Call {{ emergency_call }}.", first=first))
    refused = check(Draft("caution", "", "sms", "", "Rinse. See a doctor.", first=first))

    assert [(problem.warning, "seeing a doctor" in problem.what) for problem in warned] == [(True, True)]
    assert blocks_saving(refused)


@pytest.mark.parametrize(
    "hidden",
    ["{% comment %}See a doctor.{% endcomment %}", "{% if poison_line %}See a doctor.{% endif %}"],
)
def test_what_a_caution_says_to_nobody_or_not_to_everybody_is_left_out(hidden: str) -> None:
    first = (
        "Rinse. See a doctor. Call {{ emergency_call }}.{% if poison_line %} Poison line {{ poison_line }}.{% endif %}"
    )
    kept = "Rinse. Call {{ emergency_call }}.{% if poison_line %} Or {{ poison_line }}.{% endif %}"

    [problem] = check(Draft("caution", "", "email", "", f"{kept} {hidden}", first=first))

    assert problem.what == "The caution no longer says: seeing a doctor."
    assert check(Draft("caution", "", "email", "", first, first=first)) == ()


def test_a_caution_tells_nobody_that_all_is_well() -> None:
    problems = check(Draft("caution", "", "sms", "", "It is safe. Call {{ emergency_call }}.", first="Rinse."))

    assert blocks_saving(problems)
