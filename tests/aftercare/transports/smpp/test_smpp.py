"""The road against an SMS centre that is independent of it (tests/smsc), over a real connection."""

from __future__ import annotations

import socket
import time
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing, ReceiptNote, ReplyNote, Transport
from aftercare.transports.smpp import Smpp, pdu
from tests.aftercare.transports.contract import Addresses, FailureContract, TransportContract
from tests.servers import free_port
from tests.smsc import Smsc, has_tls, smsc

pytestmark = pytest.mark.servers

HER, GONE, BUSY, STUDIO = "+15550100100", "+15550100101", "+15550100102", "+15550109999"
INVALID_NUMBER, QUEUE_FULL = 0x0B, 0x14

# What carriers' clients get wrong: septets and units at every border, pairs that must not be parted, foreign signs.
AWKWARD = (
    "a" * 152 + "€",
    "€" * 81,
    "a" * 160,
    "a" * 161,
    "a" * 306,
    "a" * 307,
    "ж" * 70,
    "ж" * 71,
    "ж" * 134,
    "ж" * 135,
    "x" * 66 + "👁" + "y" * 10,
    "§ and ` and \\ ^ {[~]} |",
    "an escape \x1b e",
    "",
)


@dataclass
class Inbox:
    """Keeps what comes in, and fails as often as it is told."""

    receipts: list[ReceiptNote] = field(default_factory=list)
    replies: list[ReplyNote] = field(default_factory=list)
    failures: int = 0

    def __call__(self, receipts: Sequence[ReceiptNote], replies: Sequence[ReplyNote]) -> None:
        if self.failures:
            self.failures -= 1
            raise OSError("the database is away")
        self.receipts += receipts
        self.replies += replies


@pytest.fixture(scope="module")
def running() -> Iterator[Smsc]:
    with smsc() as running:
        yield running


@pytest.fixture
def centre(running: Smsc) -> Smsc:
    running.reset()
    return running


@pytest.fixture
def inbox() -> Inbox:
    return Inbox()


@pytest.fixture
def make(centre: Smsc, inbox: Inbox) -> Iterator[Callable[..., Smpp]]:
    made: list[Smpp] = []

    def road(**options: Any) -> Smpp:
        made.append(Smpp(**{"bind": "alpha", "inbox": inbox, **centre.address, **options}))
        return made[-1]

    yield road
    for one in made:
        one.close()


@pytest.fixture
def road(make: Callable[..., Smpp]) -> Smpp:
    return make()


def texts(*words: str, address: str = HER) -> list[Outgoing]:
    return [
        Outgoing(reference=f"ref-{number}", channel="sms", address=address, sender=STUDIO, text=text)
        for number, text in enumerate(words)
    ]


def turn_until(road: Smpp, condition: Callable[[], object], seconds: float = 4.0) -> list[Outcome]:
    heard: list[Outcome] = []
    until = time.monotonic() + seconds
    while not condition():
        assert time.monotonic() < until, "it did not happen in time"
        heard += road.collect(0.02)
    return heard


def hand_over(road: Smpp, batch: Sequence[Outgoing]) -> dict[str, Outcome]:
    outcomes = list(road.send(batch))
    assert len(outcomes) == len(batch)
    return {outcome.reference: outcome for outcome in outcomes}


class TestSmpp(TransportContract, FailureContract):
    @pytest.fixture
    def transport(self, centre: Smsc, road: Smpp) -> Transport:
        centre.set(statuses={GONE[1:]: INVALID_NUMBER, BUSY[1:]: QUEUE_FULL})
        return road

    @pytest.fixture
    def addresses(self) -> Addresses:
        return Addresses(good=HER, refused=GONE, busy=BUSY)


def test_awkward_texts_arrive_as_they_were_written(centre: Smsc, road: Smpp) -> None:
    outcomes = hand_over(road, texts(*AWKWARD))

    taken = centre.counts
    assert {outcome.event for outcome in outcomes.values()} == {Event.TAKEN}
    assert sorted(one.text for one in taken.texts) == sorted(AWKWARD)
    assert all(one.well_formed for one in taken.texts)
    assert taken.unfinished == 0
    # Parts by 3GPP TS 23.040 9.2.3.24.1: 160/153 septets, 70/67 units, no pair cut.
    assert {one.text: one.parts for one in taken.texts} == dict(
        zip(AWKWARD, (1, 2, 1, 2, 2, 3, 1, 2, 2, 3, 2, 1, 1, 1), strict=True)
    )


@pytest.mark.parametrize(
    ("sender", "kind"), [("+15550109999", (1, 1)), ("LashRoom", (5, 0)), ("60777", (3, 0)), ("", (0, 0))]
)
def test_a_sender_shows_what_it_is(sender: str, kind: tuple[int, int], centre: Smsc, road: Smpp) -> None:
    hand_over(road, [Outgoing(reference="r", channel="sms", address=HER, sender=sender, text="hello")])

    [taken] = centre.counts.texts
    assert (taken.source, taken.source_kind) == (sender.lstrip("+"), kind)
    assert (taken.destination, taken.destination_kind) == (HER[1:], (1, 1))


def test_a_carrier_may_want_other_types_of_number(centre: Smsc, make: Callable[..., Smpp]) -> None:
    hand_over(make(source_ton=0, source_npi=8, dest_ton=2), texts("hello"))

    [taken] = centre.counts.texts
    assert (taken.source_kind, taken.destination_kind) == ((0, 8), (2, 1))


@pytest.mark.parametrize(
    ("address", "sender", "said"),
    [("mia@example.org", STUDIO, "“mia@example.org” is not a number"), (HER, "The Lash Room", "“The Lash Room”")],
)
def test_what_cannot_be_written_is_refused_at_once(address: str, sender: str, said: str, road: Smpp) -> None:
    [outcome] = road.submit([Outgoing(reference="r", channel="sms", address=address, sender=sender, text="hi")])

    assert outcome.event is Event.REFUSED
    assert said in outcome.problem


def test_receipts_are_stored_and_then_acknowledged(centre: Smsc, road: Smpp, inbox: Inbox) -> None:
    outcomes = hand_over(road, texts("one", "two", "x" * 200))
    turn_until(road, lambda: len(inbox.receipts) == 4)

    ends = {note.reference: note for note in inbox.receipts if note.event is Event.DELIVERED}
    assert {reference: note.provider_ref for reference, note in ends.items()} == {
        reference: outcome.provider_ref for reference, outcome in outcomes.items()
    }
    turn_until(road, lambda: not centre.counts.unacknowledged)
    assert {status for _, status in centre.counts.answers} == {0}


@pytest.mark.parametrize("form", ["text", "options"])
@pytest.mark.parametrize("ids", ["hex", "decimal"])
def test_receipts_find_their_text_whatever_they_look_like(
    form: str, ids: str, centre: Smsc, road: Smpp, inbox: Inbox
) -> None:
    centre.set(receipt_form=form, ids=ids, receipt_shuffle=True, receipt_twice=True, receipt_foreign=True)
    outcomes = hand_over(road, texts(*"abcde"))
    turn_until(road, lambda: len(inbox.receipts) == 15)

    known = [note for note in inbox.receipts if note.reference]
    assert sorted(note.reference for note in known) == sorted([*outcomes] * 2)
    assert all(note.provider_ref == outcomes[note.reference].provider_ref for note in known)


def test_a_receipt_before_its_answer_names_the_number_that_the_answer_will(
    centre: Smsc, road: Smpp, inbox: Inbox
) -> None:
    centre.set(receipt_early=True, latency=50)
    road.submit(texts("hello"))
    turn_until(road, lambda: inbox.receipts)

    [outcome] = road.collect(1.0)
    assert [note.provider_ref for note in inbox.receipts] == [outcome.provider_ref]


def test_without_receipts_none_is_asked_for(centre: Smsc, make: Callable[..., Smpp], inbox: Inbox) -> None:
    road = make(receipts=False)
    hand_over(road, texts("hello"))
    road.collect(0.1)

    assert centre.counts.receipts == 0
    assert road.receipt_wait == 0


def test_a_failure_is_reported_in_a_sentence(centre: Smsc, road: Smpp, inbox: Inbox) -> None:
    centre.set(receipt_state={HER[1:]: "UNDELIV"})
    hand_over(road, texts("hello"))
    turn_until(road, lambda: inbox.receipts)

    [note] = inbox.receipts
    assert (note.event, note.word) == (Event.FAILED, "UNDELIV")
    assert note.problem == (
        "The text to +15550100100 did not arrive: it cannot be delivered to this number (the carrier's error 042)."
    )


def test_what_a_client_writes_comes_in(centre: Smsc, road: Smpp, inbox: Inbox) -> None:
    road.collect(0.0)
    centre.inject(HER, STUDIO, b"my eye is red", b"not at all")
    centre.inject(HER, STUDIO, "muy rojo 👁".encode("utf-16-be"), coding=8)
    turn_until(road, lambda: len(inbox.replies) == 3)

    assert [reply.text for reply in inbox.replies] == ["my eye is red", "not at all", "muy rojo 👁"]
    assert {(reply.from_address, reply.to_address) for reply in inbox.replies} == {(HER, STUDIO)}


def parts_of(*words: bytes, reference: int = 7) -> list[bytes]:
    return [bytes([5, 0, 3, reference, len(words), place]) + word for place, word in enumerate(words, start=1)]


def test_a_long_text_comes_in_whole_and_is_acknowledged_then(centre: Smsc, road: Smpp, inbox: Inbox) -> None:
    first, second, third = parts_of(b"my left ", b"eye is ", b"swollen")
    road.collect(0.0)
    centre.inject(HER, STUDIO, third, first, third, esm_class=pdu.HEADED)
    road.collect(0.1)
    assert (inbox.replies, centre.counts.answers) == ([], [])

    centre.inject(HER, STUDIO, second, esm_class=pdu.HEADED)
    turn_until(road, lambda: inbox.replies)

    assert [reply.text for reply in inbox.replies] == ["my left eye is swollen"]
    turn_until(road, lambda: len(centre.counts.answers) == 4)
    assert {status for _, status in centre.counts.answers} == {0}


def test_a_text_of_which_a_part_is_lost_comes_in_as_it_is(
    centre: Smsc, make: Callable[..., Smpp], inbox: Inbox
) -> None:
    road = make(join_seconds=0.2)
    _, second, third = parts_of(b"my left ", b"eye is ", b"swollen")
    road.collect(0.0)
    centre.inject(HER, STUDIO, second, third, esm_class=pdu.HEADED)
    turn_until(road, lambda: inbox.replies)

    assert [reply.text for reply in inbox.replies] == [" […] eye is swollen"]
    turn_until(road, lambda: not centre.counts.unacknowledged)


def test_what_could_not_be_stored_is_asked_for_again(centre: Smsc, road: Smpp, inbox: Inbox) -> None:
    road.collect(0.0)
    inbox.failures = 1
    [first] = centre.inject(HER, STUDIO, b"my eye is red")
    turn_until(road, lambda: centre.counts.answers)
    assert list(centre.counts.answers) == [(first, 0x64)]  # ESME_RX_T_APPN, 5.1.3
    assert inbox.replies == []

    centre.inject(HER, STUDIO, b"my eye is red")
    turn_until(road, lambda: inbox.replies)
    assert [reply.text for reply in inbox.replies] == ["my eye is red"]


def test_outcomes_are_told_though_nothing_that_comes_in_can_be_stored(centre: Smsc, road: Smpp, inbox: Inbox) -> None:
    inbox.failures = 1000
    outcomes = hand_over(road, texts("one", "two"))

    assert {outcome.event for outcome in outcomes.values()} == {Event.TAKEN}


def test_a_throttled_carrier_gets_less_and_takes_all(centre: Smsc, make: Callable[..., Smpp]) -> None:
    centre.set(throttle=50, receipts=False)
    road = make(receipts=False)
    waiting = {one.reference: one for one in texts(*(f"text {number}" for number in range(120)))}
    began = time.monotonic()
    asked = 0
    while waiting:
        batch = list(waiting.values())[: road.window]
        asked += len(batch)
        for outcome in road.send(batch):
            if outcome.event is Event.TAKEN:
                del waiting[outcome.reference]
            else:
                assert (outcome.event, outcome.retry_after) == (Event.NOT_TAKEN, 2.0)
        assert time.monotonic() - began < 15

    assert centre.counts.units == 120
    assert centre.counts.throttled < 120  # it does not knock again and again
    assert time.monotonic() - began > 1


def test_a_long_text_is_finished_though_the_carrier_asks_for_patience(centre: Smsc, make: Callable[..., Smpp]) -> None:
    centre.set(throttle=2)
    [outcome] = hand_over(make(), texts("x" * 400)).values()

    assert outcome.event is Event.TAKEN
    assert [one.text for one in centre.counts.texts] == ["x" * 400]


def test_a_long_text_is_not_waited_for_twice_as_long_as_it_may_take(centre: Smsc, make: Callable[..., Smpp]) -> None:
    """Its lease would be over by then: what is still on its way would be sent once more."""
    centre.set(statuses={HER[1:]: QUEUE_FULL})
    road = make(patience=2)
    began = time.monotonic()
    road.submit(texts("x" * 400))
    road.collect(1.2)
    centre.set(statuses={}, mute=10)
    while not road.collect(0.05):
        assert time.monotonic() - began < 3


def test_the_rate_that_was_agreed_is_kept(centre: Smsc, make: Callable[..., Smpp]) -> None:
    road = make(rate=50.0, receipts=False)
    began = time.monotonic()
    hand_over(road, texts(*(f"text {number}" for number in range(50))))

    assert 0.8 < time.monotonic() - began < 3


def test_no_more_than_the_window_is_unanswered(centre: Smsc, make: Callable[..., Smpp]) -> None:
    centre.set(latency=100, receipts=False)
    road = make(window=3)
    road.submit(texts("a", "b", "x" * 400))
    road.collect(0.02)

    assert centre.counts.units == 3
    assert road.unanswered == 5
    turn_until(road, lambda: road.unanswered == 0)
    assert centre.counts.units == 5


def test_what_was_not_answered_when_the_line_dropped_is_lost(centre: Smsc, road: Smpp) -> None:
    hand_over(road, texts("before"))
    centre.set(drop=1)
    outcomes = hand_over(road, texts("one", "two"))

    assert {outcome.event for outcome in outcomes.values()} == {Event.LOST}
    assert "nobody knows whether the text to +15550100100 left." in outcomes["ref-0"].problem
    turn_until(road, lambda: road.is_up)
    assert hand_over(road, texts("after"))["ref-0"].event is Event.TAKEN


def test_what_had_not_left_when_the_line_dropped_can_go_again(centre: Smsc, make: Callable[..., Smpp]) -> None:
    road = make(window=1)
    hand_over(road, texts("before"))
    centre.set(drop=1)
    outcomes = hand_over(road, texts("one", "two"))

    assert [outcomes["ref-0"].event, outcomes["ref-1"].event] == [Event.LOST, Event.NOT_TAKEN]


def test_what_is_never_answered_is_lost_in_time_and_its_receipt_still_finds_it(
    centre: Smsc, make: Callable[..., Smpp], inbox: Inbox
) -> None:
    road = make(patience=1)
    centre.set(mute=1, receipt_delay=1300, receipt_id=False)
    began = time.monotonic()
    [outcome] = hand_over(road, texts("hello")).values()

    assert outcome.event is Event.LOST
    assert 0.9 < time.monotonic() - began < 2.5
    turn_until(road, lambda: inbox.receipts)
    assert [(note.reference, note.event) for note in inbox.receipts] == [("ref-0", Event.DELIVERED)]


def test_an_answer_after_the_patience_is_no_second_outcome(
    centre: Smsc, make: Callable[..., Smpp], inbox: Inbox
) -> None:
    road = make(patience=1)
    centre.set(latency=1300)
    [outcome] = hand_over(road, texts("hello")).values()
    assert outcome.event is Event.LOST

    assert turn_until(road, lambda: inbox.receipts) == []
    assert [note.reference for note in inbox.receipts] == ["ref-0"]


def test_a_carrier_that_is_gone_for_a_while_is_found_again() -> None:
    port = free_port()
    road: Smpp | None = None
    try:
        with smsc(port=port) as centre:
            road = Smpp(bind="alpha", receipts=False, **centre.address)
            hand_over(road, texts("before"))
        [outcome] = hand_over(road, texts("meanwhile")).values()
        assert outcome.event in (Event.LOST, Event.NOT_TAKEN)
        [outcome] = hand_over(road, texts("meanwhile")).values()
        assert outcome.event is Event.NOT_TAKEN
        assert outcome.problem.endswith(".")
        assert outcome.retry_after
        turn_until(road, lambda: "Connection refused" in road.trouble)
        with smsc(port=port) as centre:
            turn_until(road, lambda: road.is_up, 8.0)
            assert hand_over(road, texts("after"))["ref-0"].event is Event.TAKEN
            assert centre.counts.units == 1
    finally:
        if road is not None:
            road.close()


def test_a_wrong_password_is_said_and_not_tried_again_at_once(centre: Smsc, make: Callable[..., Smpp]) -> None:
    road = make(password="wrong")
    [outcome] = hand_over(road, texts("hello")).values()

    assert outcome.event is Event.NOT_TAKEN
    assert "does not let studio in: the password is wrong." in outcome.problem
    assert (outcome.retry_after or 0) > 20


def test_a_silent_carrier_is_asked_and_left_when_it_does_not_answer(
    centre: Smsc, make: Callable[..., Smpp], monkeypatch: pytest.MonkeyPatch
) -> None:
    road = make(idle=0.1)
    turn_until(road, lambda: centre.counts.enquired >= 2)
    assert road.is_up

    monkeypatch.setattr("aftercare.transports.smpp._ANSWER_SECONDS", 0.3)
    other = make(idle=0.1)
    other.collect(0.0)
    centre.set(deaf=True)
    turn_until(other, lambda: "it has not answered for" in other.trouble)


def test_it_answers_whoever_asks_whether_it_is_there(centre: Smsc, road: Smpp) -> None:
    road.collect(0.0)
    centre.ask()
    road.collect(0.1)

    assert road.is_up
    assert hand_over(road, texts("hello"))["ref-0"].event is Event.TAKEN


def test_a_carrier_may_end_the_session(centre: Smsc, road: Smpp) -> None:
    road.collect(0.0)
    centre.unbind()
    turn_until(road, lambda: "it ended the session" in road.trouble)

    turn_until(road, lambda: road.is_up)


def test_it_takes_its_leave(centre: Smsc, road: Smpp) -> None:
    hand_over(road, texts("hello"))
    road.close()

    assert (centre.counts.unbound, centre.counts.sessions) == (1, 0)


def test_what_is_no_smpp_ends_the_connection(centre: Smsc, road: Smpp) -> None:
    road.collect(0.0)
    centre.write(b"HTTP/1.1 400 Bad Request\r\n\r\n")
    turn_until(road, lambda: "does not speak SMPP 3.4" in road.trouble)


def test_a_unit_that_cannot_be_read_hurts_no_other(
    centre: Smsc, road: Smpp, inbox: Inbox, caplog: pytest.LogCaptureFixture
) -> None:
    road.collect(0.0)
    centre.write(pdu.write(pdu.DELIVER_SM, 77, b"\0\1\1nonsense"))
    centre.inject(HER, STUDIO, b"my eye is red")
    turn_until(road, lambda: len(centre.counts.answers) == 2)

    assert dict(centre.counts.answers)[77] == 0x64
    assert [reply.text for reply in inbox.replies] == ["my eye is red"]
    assert "6e6f6e73656e7365" in caplog.text  # kept where it can be read


@pytest.fixture
def besides() -> Iterator[tuple[socket.socket, socket.socket]]:
    """Something else that may come, and where it comes from."""
    here, there = socket.socketpair()
    with here, there:
        yield here, there


def test_it_listens_no_longer_than_until_something_else_comes(
    road: Smpp, besides: tuple[socket.socket, socket.socket]
) -> None:
    here, there = besides
    road.collect(0.0)
    began = time.monotonic()

    assert road.collect(0.2, [here.fileno()]) == []
    assert time.monotonic() - began >= 0.2
    there.send(b"!")
    assert road.collect(60.0, [here.fileno()]) == []

    assert time.monotonic() - began < 30


def test_what_the_carrier_says_is_heard_beside_something_else(
    road: Smpp, besides: tuple[socket.socket, socket.socket]
) -> None:
    road.submit(texts("hello"))

    [outcome] = road.collect(60.0, [besides[0].fileno()])

    assert outcome.event is Event.TAKEN


@pytest.mark.skipif(not has_tls(), reason="needs openssl")
def test_under_tls_the_certificate_must_be_trusted(
    tmp_path: Path, inbox: Inbox, besides: tuple[socket.socket, socket.socket]
) -> None:
    with smsc(tls_in=tmp_path) as centre:
        trusting = Smpp(bind="alpha", inbox=inbox, **centre.address)
        wary = Smpp(bind="beta", inbox=inbox, **{**centre.address, "ca_file": ""})
        try:
            assert hand_over(trusting, texts("x" * 300))["ref-0"].event is Event.TAKEN
            turn_until(trusting, lambda: len(inbox.receipts) == 2)
            trusting.submit(texts("hello"))
            [again] = trusting.collect(60.0, [besides[0].fileno()])
            [outcome] = hand_over(wary, texts("hello")).values()
        finally:
            trusting.close()
            wary.close()

    assert again.event is Event.TAKEN
    assert outcome.event is Event.NOT_TAKEN
    assert "its certificate is not trusted" in outcome.problem
