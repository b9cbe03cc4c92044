from __future__ import annotations

import pytest

from aftercare.core.reading import Topic, Urgency, read
from aftercare.core.reading.reader import unexplained


@pytest.mark.parametrize(
    "text",
    [
        "so the thing is my lids have a fat swollen itch burn look to them, i reckon",
        "I keep wanting to take a fork to my eyelids. a FORK",
        "bags under my eyes you could carry shopping in since the appt",
    ],
)
def test_what_the_rules_do_not_know_goes_to_a_person(text: str) -> None:
    found = read(text)

    assert found.unread or found.urgency is not Urgency.NONE


def test_words_of_an_emergency_that_no_rule_knows_are_one() -> None:
    found = read("Unbearable. I've been pacing the floor since two with my hand over my eye.")

    assert (found.urgency, found.about) == (Urgency.EMERGENCY, (Topic.IRRITATION,))


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("no redness, love them", "no , love them"),
        ("my sister had hives once", "my sister had  once"),
        ("my left lid is itchy", "my left lid is itchy"),
    ],
)
def test_it_looks_at_what_the_rules_leave_unexplained(text: str, left: str) -> None:
    assert unexplained(text)[0] == left
    assert " ".join(unexplained(text)[1]) == " ".join(left.replace(",", " ,").split())


def test_plain_denials_do_not_go_to_a_person() -> None:
    assert not read("no pain, no itching, no swelling, all good").unread


@pytest.mark.parametrize(
    "text",
    ["ngl i feel faint every time i look, gorgeous", "they look so good it should be a crime, blinded. love love love"],
)
def test_mere_praise_is_no_emergency(text: str) -> None:
    assert read(text).urgency is not Urgency.EMERGENCY


def test_praise_does_not_hide_a_sign() -> None:
    found = read("obsessed, best lashes ever, thank you so much!! only my throat feels tight since I got home")

    assert found.urgency is Urgency.EMERGENCY


def test_what_was_years_ago_is_no_emergency_to_the_second_opinion() -> None:
    assert read("had a bad time with eyelash glue back in 2015").urgency is Urgency.NONE


def test_praise_does_not_hide_a_stop() -> None:
    assert Topic.STOP in read("gorgeous, blinded the whole party, stunning! now please stop texting me").about


def test_what_blinking_clears_is_no_emergency() -> None:
    found = read("Kind of a fog over my sight when I am reading but a few blinks and it's crisp again. Dry too")

    assert found.urgency is Urgency.SAME_DAY


def test_small_talk_is_for_nobody_to_read_twice_unless_it_may_be_of_her_eye() -> None:
    assert not read("kettle's on").unread
    assert read("kettle's on, my eye itches").urgency is Urgency.SAME_DAY
