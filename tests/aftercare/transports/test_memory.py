from __future__ import annotations

import json

import pytest

from aftercare.core.delivery import Event
from aftercare.transports import memory
from aftercare.transports.base import Callback, Forged, Transport
from tests.aftercare.transports.contract import (
    Addresses,
    CallbackContract,
    Calls,
    FailureContract,
    TransportContract,
    hand_over,
    outgoing,
)

GOOD, GONE, BUSY, LOST = "+15550100100", "+15550100101", "+15550100102", "+15550100103"


@pytest.fixture
def transport() -> memory.Memory:
    return memory.Memory(secret="between us", refuse=[GONE], busy=[BUSY], lose=[LOST], retry_after=90, window=2)


def call(transport: memory.Memory, *rows: dict[str, str]) -> Callback:
    body = json.dumps(rows).encode()
    return Callback(url="https://studio.example/back", headers={"x-signature": transport.sign(body)}, body=body)


class TestMemory(TransportContract, FailureContract, CallbackContract):
    @pytest.fixture
    def transport(self, transport: memory.Memory) -> Transport:
        return transport

    @pytest.fixture
    def addresses(self) -> Addresses:
        return Addresses(good=GOOD, refused=GONE, busy=BUSY)

    @pytest.fixture
    def calls(self, transport: memory.Memory) -> Calls:
        body = b"no json"
        return Calls(
            delivered=call(transport, {"provider_ref": "7", "word": "delivered", "at": "2027-03-01T10:00:00+00:00"}),
            failed=call(transport, {"provider_ref": "8", "word": "bounced"}),
            unknown=call(transport, {"provider_ref": "7", "word": "pondered"}),
            reply=call(transport, {"provider_ref": "9", "from": GOOD, "text": "all fine"}),
            broken=Callback(url="", headers={"x-signature": transport.sign(body)}, body=body),
        )


def test_it_keeps_what_was_handed_over(transport: memory.Memory) -> None:
    memory.taken.clear()

    batch = outgoing(transport, [GOOD, GONE, BUSY])
    hand_over(transport, batch)

    assert memory.taken == batch[:1]


def test_a_lost_one_may_have_arrived_all_the_same(transport: memory.Memory) -> None:
    memory.taken.clear()

    [outcome] = hand_over(transport, outgoing(transport, [LOST]))

    assert outcome.event is Event.LOST
    assert len(memory.taken) == 1


def test_the_provider_can_ask_for_a_longer_wait(transport: memory.Memory) -> None:
    [outcome] = hand_over(transport, outgoing(transport, [BUSY]))

    assert outcome.retry_after == 90


def test_without_a_secret_every_callback_is_refused() -> None:
    transport = memory.Memory()

    with pytest.raises(Forged):
        transport.verify(Callback(url="", headers={"x-signature": transport.sign(b"[]")}, body=b"[]"))
