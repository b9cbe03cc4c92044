"""How a road fares is known to every process; turns are taken from one row."""

from __future__ import annotations

import time
from datetime import datetime, timedelta

import pytest
from django.db import OperationalError

from aftercare.core.delivery import Event
from aftercare.models import RoadHealth
from aftercare.sending import health
from aftercare.sending.health import FAILING, Health
from aftercare.transports.base import Outcome
from studio import clock

pytestmark = pytest.mark.django_db
AWAY = [Outcome(reference="a", event=Event.NOT_TAKEN, problem="The carrier does not answer.")]
TAKEN = [Outcome(reference="a", event=Event.TAKEN)]


def failing(times: int) -> Health:
    found = Health.of("pipe:main")
    for _ in range(times):
        found.note(AWAY)
    return found


def test_one_process_learns_from_another_that_a_road_rests() -> None:
    failing(FAILING - 1)
    assert not Health.of("pipe:main").rests
    failing(1)

    other = Health.of("pipe:main")

    assert other.rests
    assert RoadHealth.objects.get().problem == "The carrier does not answer."


def test_it_is_tried_again_after_its_rest_and_rests_longer_if_that_fails() -> None:
    first = failing(FAILING).rests_until
    assert first is not None
    RoadHealth.objects.update(rests_until=clock.now())
    assert not Health.of("pipe:main").rests

    second = failing(1)

    assert second.rests
    assert second.rests_until is not None
    assert second.rests_until - clock.now() > timedelta(seconds=40)  # twice 30 s, less a fifth


def test_a_rest_is_never_longer_than_five_minutes() -> None:
    until = failing(FAILING + 30).rests_until

    assert until is not None
    assert until - clock.now() <= health.LONGEST_REST * 1.2


def test_a_window_that_is_heard_of_in_pieces_makes_its_own_rest_no_longer() -> None:
    left_at = time.monotonic()
    found = Health.of("pipe:main")
    for _ in range(FAILING + 20):
        found.note(AWAY, left_at)

    assert found.failed == FAILING
    assert found.rests_until is not None
    assert found.rests_until - clock.now() <= health.SHORTEST_REST * 1.2

    found.note(AWAY, time.monotonic())  # one that left for all that

    assert found.rests_until - clock.now() > timedelta(seconds=40)


def test_one_that_takes_again_is_forgotten_to_have_failed() -> None:
    found = failing(FAILING)

    found.note(TAKEN)

    again = Health.of("pipe:main")
    assert (again.failed, again.failing_since, again.rests) == (0, None, False)


def test_what_works_writes_nothing() -> None:
    Health.of("pipe:main").note(TAKEN)

    assert not RoadHealth.objects.exists()


def test_it_is_known_since_when_it_has_been_away() -> None:
    failing(FAILING)
    began = clock.now() - timedelta(minutes=40)
    RoadHealth.objects.update(failing_since=began)

    assert Health.of("pipe:main").away_since(clock.now() - health.DETOUR_AFTER)
    assert not Health.of("pipe:main").away_since(began)


def test_turns_follow_one_another_whoever_takes_them() -> None:
    assert health.turn("line:1", 10, 2) == timedelta()
    assert timedelta(seconds=4) <= health.turn("line:1", 10, 2) <= timedelta(seconds=5)
    assert timedelta(seconds=9) <= health.turn("line:1", 1, 2) <= timedelta(seconds=10)
    assert health.turn("line:2", 1, 2) == timedelta()


def test_one_that_takes_what_it_is_given_and_never_answers_rests_too() -> None:
    """Else all that is due would be lost by it, window after window, and what is not safety's never sent again."""
    lost = [Outcome(reference="a", event=Event.LOST, problem="No answer in time.")]
    found = Health.of("pipe:main")

    for _ in range(FAILING):
        found.note(lost)

    assert found.rests


def test_a_turn_that_is_not_waited_for_is_not_taken() -> None:
    """Else each look at what is put off would put off everything further, and nothing would ever leave."""
    soon = timedelta(seconds=2)
    health.turn("line:1", 10, 1)

    waits = [health.turn("line:1", 1, 1, within=soon) for _ in range(50)]

    assert max(waits) <= timedelta(seconds=10)


def test_a_database_that_cannot_even_tell_the_time_takes_no_outcome_with_it(monkeypatch: pytest.MonkeyPatch) -> None:
    def fail() -> datetime:
        raise OperationalError("the connection is closed")

    found = failing(1)
    monkeypatch.setattr(clock, "now", fail)

    found.note(AWAY)  # whoever sends goes on to write down what became of the messages
