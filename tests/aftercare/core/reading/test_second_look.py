from __future__ import annotations

import pytest

from aftercare.core.reading import Topic, Urgency, read
from aftercare.core.reading.reader import by_rules
from aftercare.core.reading.second import TOPICS, URGENCIES, Opinion
from aftercare.core.reading.second_look import look_again


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
    "text",
    ["take me off this list please xx", "thanks but no more of these messages for me, they drive me up the wall"],
)
def test_a_wish_for_an_end_of_messages_is_obeyed(text: str) -> None:
    assert Topic.STOP in read(text).about


def test_what_the_rules_take_for_an_emergency_stays_one_whatever_the_model_makes_of_it() -> None:
    laid = by_rules("I cant open my left eye since this morning")
    assert laid is not None
    calm = Opinion({**dict.fromkeys(URGENCIES, 0.0), Urgency.NONE: 1.0}, dict.fromkeys(TOPICS, 0.0))

    assert look_again(laid.reading, calm, laid.page, explained=False).urgency is Urgency.EMERGENCY


def test_a_sign_that_the_model_does_not_believe_in_goes_to_a_person() -> None:
    laid = by_rules("my left lid is itchy")
    assert laid is not None
    calm = Opinion({**dict.fromkeys(URGENCIES, 0.0), Urgency.NONE: 1.0}, dict.fromkeys(TOPICS, 0.0))

    assert look_again(laid.reading, calm, laid.page, explained=False).unread


def test_replies_that_the_rules_settle_alone_are_not_looked_at_again() -> None:
    assert by_rules("STOP") is None
    assert by_rules("Мой глаз опух") is None


def test_plain_denials_do_not_go_to_a_person() -> None:
    assert not read("no pain, no itching, no swelling, all good").unread
