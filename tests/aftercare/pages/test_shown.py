"""Messages as pages show them."""

from __future__ import annotations

import pytest

from aftercare.core.delivery import State
from aftercare.core.timing import Occasion, Rules
from aftercare.models import Message
from aftercare.pages import shown
from tests.cast import Cast, make


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def test_every_occasion_and_state_has_words() -> None:
    assert set(shown.OCCASIONS) == {str(occasion) for occasion in Occasion}
    assert set(shown.STATES) == {str(state) for state in State}


@pytest.mark.parametrize("occasion", sorted(shown.TELLING))
def test_what_tells_of_health_is_a_message_and_no_more_to_others(occasion: str, cast: Cast) -> None:
    her = cast.client("Mia")
    message = cast.gone(her, None, occasion, cast.at(6), text="How are your eyes?", subject="Your eyes")

    (line,) = shown.show([message], Rules(), set())

    assert (line.what, line.text, line.subject, line.why) == ("message", "", "", "")
    assert shown.show([message], Rules(), {her.pk})[0].text == "How are your eyes?"


def test_a_hold_is_a_person_s_decision_to_others(cast: Cast) -> None:
    her = cast.client("Mia")
    message = cast.gone(her, None, Occasion.PREPARE, cast.at(6), state=State.WITHHELD, reason="on hold")

    assert shown.show([message], Rules(), set())[0].why == "a person decides first"
    assert shown.show([message], Rules(), {her.pk})[0].why == "on hold"


@pytest.mark.parametrize(
    ("state", "at"),
    [
        (State.PLANNED, "due"),
        (State.CLAIMED, "due"),
        (State.HANDED_OVER, "handed over"),
        (State.DELIVERED, "handed over"),
        (State.UNDELIVERED, "handed over"),
        (State.WITHHELD, "due"),
    ],
)
def test_the_moment_shown_is_the_one_that_counts_now(state: State, at: str, cast: Cast) -> None:
    moments = {"due": cast.at(9), "handed over": cast.at(10), "ended": cast.at(11)}
    message = Message(
        occasion=Occasion.CARE,
        state=state,
        due_at=moments["due"],
        handed_over_at=moments["handed over"],
        ended_at=moments["ended"],
    )

    assert shown.show([message], Rules(), set())[0].at == moments[at]


def test_a_message_that_was_refused_at_once_shows_when_it_ended(cast: Cast) -> None:
    message = Message(occasion=Occasion.CARE, state=State.UNDELIVERED, due_at=cast.at(9), ended_at=cast.at(10))

    assert shown.show([message], Rules(), set())[0].at == cast.at(10)


def test_what_was_rehearsed_is_not_said_to_wait_for_a_receipt(cast: Cast) -> None:
    message = Message(occasion=Occasion.CARE, state=State.HANDED_OVER, rehearsed=True)

    assert shown.show([message], Rules(), set())[0].stands == "on the pretend phone"
