"""What any transport must do. Inherit the parts that hold for it; define ``transport``, ``addresses`` and ``calls``.

``TransportContract`` holds for all, ``FailureContract`` for those that can fail, ``CallbackContract`` for those that
hear back.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import pytest

from aftercare.core.delivery import Event
from aftercare.transports.base import OUTCOMES, Callback, Forged, Outcome, Outgoing, Transport, TransportError


@dataclass(frozen=True)
class Addresses:
    """Addresses that this transport takes, refuses for good, and puts off."""

    good: str
    refused: str = ""
    busy: str = ""


@dataclass(frozen=True)
class Calls:
    """Signed callbacks: one that tells of a delivery, one of a failure, one in a word that we do not know."""

    delivered: Callback
    failed: Callback
    unknown: Callback
    reply: Callback
    broken: Callback


class TransportContract:
    @pytest.fixture
    def transport(self) -> Transport:
        raise NotImplementedError

    @pytest.fixture
    def addresses(self) -> Addresses:
        raise NotImplementedError

    def test_it_says_what_it_is(self, transport: Transport) -> None:
        assert transport.name
        assert len(transport.name) <= 40
        assert transport.channels <= {"sms", "email"}
        assert transport.window >= 1
        assert transport.patience >= 1

    def test_every_outgoing_message_gets_exactly_one_outcome(self, transport: Transport, addresses: Addresses) -> None:
        batch = outgoing(transport, [addresses.good] * 3)

        outcomes = hand_over(transport, batch)

        assert sorted(outcome.reference for outcome in outcomes) == sorted(one.reference for one in batch)
        assert {outcome.event for outcome in outcomes} == {Event.TAKEN}

    def test_it_goes_on_after_it_was_closed(self, transport: Transport, addresses: Addresses) -> None:
        hand_over(transport, outgoing(transport, [addresses.good]))
        transport.close()
        transport.close()

        [outcome] = hand_over(transport, outgoing(transport, [addresses.good]))

        assert outcome.event is Event.TAKEN


class FailureContract:
    @pytest.fixture
    def transport(self) -> Transport:
        raise NotImplementedError

    @pytest.fixture
    def addresses(self) -> Addresses:
        raise NotImplementedError

    def test_a_bad_address_does_not_hurt_the_others(self, transport: Transport, addresses: Addresses) -> None:
        batch = outgoing(transport, [addresses.good, addresses.refused, addresses.good])

        outcomes = by_reference(hand_over(transport, batch))

        assert [outcomes[one.reference].event for one in batch] == [Event.TAKEN, Event.REFUSED, Event.TAKEN]

    def test_permanent_and_passing_failures_are_told_apart(self, transport: Transport, addresses: Addresses) -> None:
        batch = outgoing(transport, [addresses.refused, addresses.busy])

        outcomes = by_reference(hand_over(transport, batch))

        assert [outcomes[one.reference].event for one in batch] == [Event.REFUSED, Event.NOT_TAKEN]

    def test_a_failure_comes_with_a_sentence_for_the_artist(self, transport: Transport, addresses: Addresses) -> None:
        for outcome in hand_over(transport, outgoing(transport, [addresses.refused, addresses.busy])):
            assert outcome.problem.endswith(".")
            assert len(outcome.problem) <= 400


class CallbackContract:
    """For those that a provider calls back."""

    @pytest.fixture
    def transport(self) -> Transport:
        raise NotImplementedError

    @pytest.fixture
    def calls(self) -> Calls:
        raise NotImplementedError

    def test_a_signed_callback_is_taken(self, transport: Transport, calls: Calls) -> None:
        for call in (calls.delivered, calls.failed, calls.unknown, calls.reply):
            transport.verify(call)

    def test_a_forged_callback_is_refused(self, transport: Transport, calls: Calls) -> None:
        for forged in (replace(calls.delivered, headers={}), replace(calls.delivered, body=calls.failed.body)):
            with pytest.raises(Forged):
                transport.verify(forged)

    def test_receipts_say_what_became_of_it(self, transport: Transport, calls: Calls) -> None:
        assert [note.event for note in transport.parse_receipts(calls.delivered)] == [Event.DELIVERED]
        assert [note.event for note in transport.parse_receipts(calls.failed)] == [Event.FAILED]

    def test_an_unknown_word_is_no_news(self, transport: Transport, calls: Calls) -> None:
        [note] = transport.parse_receipts(calls.unknown)

        assert note.event is None
        assert note.word

    def test_the_same_receipt_twice_is_one(self, transport: Transport, calls: Calls) -> None:
        def identity(call: Callback) -> list[tuple[str, str]]:
            return [(note.provider_ref, note.word) for note in transport.parse_receipts(call)]

        assert identity(calls.delivered) == identity(calls.delivered)
        assert identity(calls.delivered) != identity(calls.failed)

    def test_a_reply_keeps_its_words_and_where_it_came_from(self, transport: Transport, calls: Calls) -> None:
        [note] = transport.parse_replies(calls.reply)

        assert note.text
        assert note.from_address
        assert note.provider_ref
        assert not transport.parse_receipts(calls.reply)

    def test_what_cannot_be_read_is_said_in_a_sentence(self, transport: Transport, calls: Calls) -> None:
        with pytest.raises(TransportError, match=r"^The callback "):
            transport.parse_receipts(calls.broken)


def outgoing(transport: Transport, addresses: Sequence[str]) -> list[Outgoing]:
    channel = sorted(transport.channels)[0]
    return [
        Outgoing(
            reference=f"ref-{number}-{abs(hash(address)) % 1000}",
            channel=channel,
            address=address,
            sender="studio@example.org" if channel == "email" else "",
            sender_name="Wrenfield Lash Room",
            subject="Your visit on Tuesday",
            text="Hello Mia, please come with bare, clean lashes.\nAda",
        )
        for number, address in enumerate(addresses)
    ]


def hand_over(transport: Transport, batch: Sequence[Outgoing]) -> list[Outcome]:
    """Hand over as the sender does: window by window."""
    outcomes: list[Outcome] = []
    for start in range(0, len(batch), transport.window):
        outcomes.extend(transport.send(batch[start : start + transport.window]))
    assert {outcome.event for outcome in outcomes} <= OUTCOMES
    return outcomes


def by_reference(outcomes: Sequence[Outcome]) -> dict[str, Outcome]:
    return {outcome.reference: outcome for outcome in outcomes}
