from __future__ import annotations

from collections.abc import Iterator, Sequence

import pytest
from django.db import OperationalError

from aftercare.core.delivery import Event
from aftercare.models import Line, RoadHealth
from aftercare.sending.health import FAILING, Health
from aftercare.sending.roads import Road, Roads
from aftercare.transports.base import Outcome, Outgoing, Transport, TransportError
from aftercare.transports.console import Console
from aftercare.transports.memory import Memory
from aftercare.transports.phone import Phone
from tests.letters import MEMORY

pytestmark = pytest.mark.django_db
BATCH = [Outgoing(reference=name, channel="sms", address=name, text="hi") for name in "abc"]


class Odd(Transport):
    """Does what it is told to, and not what the contract says."""

    name = "odd"
    channels = frozenset({"sms"})

    def __init__(self, *outcomes: Outcome, error: Exception | None = None) -> None:
        self.outcomes, self.error = outcomes, error

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        yield from self.outcomes
        if self.error:
            raise self.error


def events(road: Road) -> list[Event]:
    return [outcome.event for outcome in road.send(BATCH)]


def outcome(reference: str, event: Event = Event.TAKEN) -> Outcome:
    return Outcome(reference=reference, event=event)


def test_outcomes_come_back_in_the_order_of_the_messages() -> None:
    assert events(Road(Odd(outcome("c", Event.REFUSED), outcome("a"), outcome("b")))) == [
        Event.TAKEN,
        Event.TAKEN,
        Event.REFUSED,
    ]


def test_a_message_without_an_outcome_is_lost() -> None:
    assert events(Road(Odd(outcome("a")))) == [Event.TAKEN, Event.LOST, Event.LOST]


def test_a_second_outcome_of_one_message_and_one_of_a_stranger_are_nothing() -> None:
    road = Road(Odd(outcome("a"), outcome("a", Event.REFUSED), outcome("z"), outcome("b"), outcome("c")))

    assert events(road) == [Event.TAKEN] * 3


def test_what_is_no_outcome_is_none() -> None:
    assert events(Road(Odd(outcome("a", Event.DELIVERED), outcome("b"), outcome("c"))))[0] is Event.LOST


def test_a_transport_that_says_so_has_taken_nothing_more() -> None:
    passing = Road(Odd(outcome("a"), error=TransportError("Away.")))
    for_good = Road(Odd(outcome("a"), error=TransportError("Never.", permanent=True)))

    assert events(passing) == [Event.TAKEN, Event.NOT_TAKEN, Event.NOT_TAKEN]
    assert [one.problem for one in for_good.send(BATCH)] == ["", "Never.", "Never."]


def test_a_defect_leaves_the_rest_lost_and_goes_no_further() -> None:
    assert events(Road(Odd(outcome("a"), error=ZeroDivisionError("a defect")))) == [Event.TAKEN, Event.LOST, Event.LOST]


def test_a_road_rests_after_failing_again_and_again_and_not_before() -> None:
    road = Road(Odd(error=TransportError("Away.")))
    for _ in range(FAILING - 1):
        road.send(BATCH)
    assert not road.rests
    road.send(BATCH)
    assert road.rests


def test_one_message_that_was_taken_is_a_road_that_works() -> None:
    road = Road(Odd(error=TransportError("Away.")), Health(failed=FAILING - 1))
    road.transport = Odd(outcome("a"), error=TransportError("Away."))

    road.send(BATCH)

    assert road.health.failed == 0


@pytest.fixture
def line() -> Line:
    return Line(channel="sms", transport=MEMORY, options={"refuse": ["+12125550101"]})


def test_a_line_takes_its_own_transport_with_its_options(line: Line) -> None:
    with Roads() as roads:
        transport = roads.of(line, rehearsed=False).transport

        assert isinstance(transport, Memory)
        assert transport.fate == {"+12125550101": Event.REFUSED}


def test_a_line_without_one_takes_that_of_the_settings(line: Line) -> None:
    line.transport, line.options = "", {}
    with Roads() as roads:
        assert isinstance(roads.of(line, rehearsed=False).transport, Console)


def test_in_rehearsal_every_line_ends_at_the_pretend_phone(line: Line) -> None:
    with Roads() as roads:
        for channel in ("sms", "email"):
            line.channel = channel
            assert isinstance(roads.of(line, rehearsed=True).transport, Phone)


def test_lines_alike_share_a_road_and_others_do_not(line: Line) -> None:
    alike = Line(channel="sms", transport=MEMORY, options={"refuse": ["+12125550101"]})
    other = Line(channel="sms", transport=MEMORY, options={"refuse": []})
    with Roads() as roads:
        assert roads.of(line, rehearsed=False) is roads.of(alike, rehearsed=False)
        assert roads.of(line, rehearsed=False) is not roads.of(other, rehearsed=False)


def test_what_was_opened_is_closed_at_the_end(line: Line) -> None:
    class Closing(Odd):
        closed = False

        def close(self) -> None:
            self.closed = True

    closing = Closing()
    with Roads() as roads:
        roads.of(line, rehearsed=False).transport = closing

    assert closing.closed


def test_a_database_that_is_away_takes_no_outcome_along(monkeypatch: pytest.MonkeyPatch) -> None:
    """How a road fares is worth less than what became of the messages: these were heard once."""

    def away(*_: object, **__: object) -> None:
        raise OperationalError("away")

    monkeypatch.setattr(RoadHealth.objects, "update_or_create", away)
    works = Road(Odd(*map(outcome, "abc")), Health("carrier", failed=1))
    fails = Road(Odd(error=TransportError("Away.")), Health("carrier"))

    assert events(works) == [Event.TAKEN] * 3
    assert events(fails) == [Event.NOT_TAKEN] * 3
