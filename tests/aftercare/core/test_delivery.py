"""The table of states, the turns and the waits. Source: the project's own design."""

from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core import delivery
from aftercare.core.delivery import GONE, OPEN, Event, NoSuchStep, State, advance
from aftercare.core.timing import SAFETY, Occasion

RESTING = {State.DELIVERED, State.UNDELIVERED, State.WITHHELD, State.WITHDRAWN, State.UNSURE, State.HANDED_OVER}


def test_a_message_goes_from_planned_to_delivered() -> None:
    state = State.PLANNED
    for event in (Event.CLAIM, Event.JOURNAL, Event.TAKEN, Event.DELIVERED):
        state = advance(state, event)

    assert state is State.DELIVERED


def test_nothing_is_handed_over_without_having_been_journaled() -> None:
    into = {state for state in State if Event.JOURNAL in delivery.NEXT[state]}

    assert into == {State.CLAIMED}
    assert delivery.sources(Event.JOURNAL) == {State.CLAIMED: State.HANDING_OVER}


def test_a_lease_that_ends_sends_only_what_had_not_begun_to_leave() -> None:
    assert advance(State.CLAIMED, Event.LEASE_OVER) is State.PLANNED
    assert advance(State.HANDING_OVER, Event.LEASE_OVER) is State.UNSURE


def test_what_has_arrived_has_arrived() -> None:
    for event in (Event.TAKEN, Event.LOST, Event.FAILED, Event.DELIVERED, Event.LEASE_OVER):
        assert advance(State.DELIVERED, event) is State.DELIVERED


def test_what_has_gone_is_never_claimed_planned_or_withdrawn() -> None:
    for state in GONE:
        for event in (Event.CLAIM, Event.PLAN, Event.WITHHOLD, Event.WITHDRAW):
            with pytest.raises(NoSuchStep):
                advance(state, event)


def test_late_good_news_of_an_earlier_try_stops_the_next() -> None:
    for state in OPEN:
        assert advance(state, Event.TAKEN) is State.HANDED_OVER
        assert advance(state, Event.DELIVERED) is State.DELIVERED


def test_every_state_is_left_or_is_a_rest() -> None:
    for state in set(State) - RESTING:
        assert any(after is not state for after in delivery.NEXT[state].values())


def test_the_sources_of_an_event_are_the_edges_of_the_table() -> None:
    for event in Event:
        for before, after in delivery.sources(event).items():
            assert advance(before, event) is after
            assert before is not after


def test_answers_and_pages_go_before_aftercare_and_that_before_the_rest() -> None:
    assert delivery.rank(Occasion.ANSWER) == delivery.rank(Occasion.ALERT) == 0
    assert {delivery.rank(one) for one in SAFETY} == {0, 1}
    assert delivery.rank(Occasion.PREPARE) == delivery.rank(Occasion.FILL_DUE) == 2
    assert {delivery.rank(one) for one in Occasion} == set(delivery.RANKS)


@given(st.integers(1, 10_000), st.floats(0, 1), st.booleans(), st.none() | st.floats(0, 1e9))
def test_waits_lie_between_seconds_and_a_day(tries: int, luck: float, urgent: bool, asked: float | None) -> None:
    waits = delivery.wait(tries, luck, urgent=urgent, asked=asked)

    assert timedelta(seconds=16) <= waits <= timedelta(days=1)
    assert waits.microseconds == 0


@given(st.integers(1, 50), st.floats(0, 1))
def test_waits_grow_and_spread_by_a_fifth(tries: int, luck: float) -> None:
    middle = delivery.wait(tries, 0.5)

    assert delivery.wait(tries + 1, 0.5) >= middle
    assert 0.8 * middle <= delivery.wait(tries, luck) <= 1.2 * middle + timedelta(seconds=1)


def test_what_is_urgent_waits_minutes_at_most() -> None:
    assert delivery.wait(30, 0.5, urgent=True) == timedelta(minutes=5)
    assert delivery.wait(30, 0.5) == timedelta(hours=1)


def test_a_provider_that_asks_for_a_longer_wait_gets_it_up_to_a_day() -> None:
    assert delivery.wait(1, 0.5, asked=600) == timedelta(minutes=10)
    assert delivery.wait(1, 0.5, asked=1) == timedelta(seconds=20)
    assert delivery.wait(1, 0.5, asked=1e9) == timedelta(days=1)


def test_an_unknown_step_names_both_ends() -> None:
    with pytest.raises(NoSuchStep, match="delivered cannot be claim"):
        advance(State.DELIVERED, Event.CLAIM)
