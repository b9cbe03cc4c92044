"""What comes in is stored many at once and answered after. Source: SMPP 3.4, 4.6 (deliver_sm and its answer)."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import pytest

from aftercare.transports.base import ReceiptNote, ReplyNote
from aftercare.transports.smpp import intake, pdu, statuses
from aftercare.transports.smpp.intake import Intake
from aftercare.transports.smpp.receipts import Recent

HER, STUDIO = pdu.write_address(1, 1, "15550100100"), pdu.write_address(1, 1, "15550109999")


@dataclass
class Kept:
    """An inbox: what it was given, call by call."""

    receipts: list[list[str]] = field(default_factory=list)
    replies: list[list[str]] = field(default_factory=list)
    is_full: bool = False

    def __call__(self, receipts: Sequence[ReceiptNote], replies: Sequence[ReplyNote]) -> None:
        if self.is_full:
            raise OSError("no space left")
        self.receipts.append([one.provider_ref for one in receipts])
        self.replies.append([one.text for one in replies])


@pytest.fixture
def kept() -> Kept:
    return Kept()


@pytest.fixture
def taking(kept: Kept) -> Intake:
    return Intake("smpp:a", kept, Recent(), 30.0)


def receipt(number: int) -> tuple[int, bytes]:
    """A receipt, under a sequence number of the same digits."""
    options = pdu.write_option(pdu.RECEIPTED_MESSAGE_ID, f"{number}\0".encode())
    options += pdu.write_option(pdu.MESSAGE_STATE, b"\x02")
    return number, pdu.write_message(HER, STUDIO, b"", esm_class=pdu.RECEIPT, options=options)


def reply(number: int, words: str) -> tuple[int, bytes]:
    return number, pdu.write_message(HER, STUDIO, words.encode())


def answered(octets: bytes, status: int = statuses.OK) -> list[int]:
    """The sequence numbers that are answered with this status, which all are."""
    units, rest = pdu.read(octets)
    assert not rest
    assert {(command, said) for command, said, _, _ in units} <= {(pdu.DELIVER_SM_RESP, status)}
    return [sequence for _, _, sequence, _ in units]


def test_a_receipt_waits_for_more_and_is_answered_once_all_are_stored(taking: Intake, kept: Kept) -> None:
    assert answered(taking.take([receipt(1), receipt(2)], 0.0)) == []
    assert answered(taking.take([receipt(3)], intake.QUIET)) == []
    assert kept.receipts == []

    assert taking.next_due == 2 * intake.QUIET
    assert answered(taking.take([], taking.next_due)) == [1, 2, 3]

    assert kept.receipts == [["1", "2", "3"]]
    assert answered(taking.take([], 100.0)) == []
    assert len(kept.receipts) == 1


def test_none_waits_long_though_more_and_more_come(taking: Intake, kept: Kept) -> None:
    moment, number, answers = 0.0, 0, b""
    while not answers:
        moment, number = moment + intake.QUIET / 2, number + 1
        answers = taking.take([receipt(number)], moment)

    waited = moment - intake.QUIET / 2  # which is when the first came
    assert intake.LONGEST <= waited <= intake.LONGEST + intake.QUIET
    assert answered(answers) == list(range(1, number + 1))
    assert kept.receipts == [[str(one) for one in range(1, number + 1)]]


def test_so_many_wait_for_no_more(taking: Intake, kept: Kept) -> None:
    assert answered(taking.take([receipt(one) for one in range(intake.MOST - 1)], 10.0)) == []

    assert len(answered(taking.take([receipt(intake.MOST)], 10.0))) == intake.MOST
    assert len(kept.receipts[0]) == intake.MOST


def test_what_a_client_writes_is_stored_at_once_and_receipts_with_it(taking: Intake, kept: Kept) -> None:
    taking.take([receipt(1)], 10.0)

    assert answered(taking.take([reply(2, "my eye burns")], 10.0)) == [1, 2]
    assert (kept.receipts, kept.replies) == ([["1"]], [["my eye burns"]])


def test_what_cannot_be_stored_is_asked_for_again(taking: Intake, kept: Kept) -> None:
    kept.is_full = True
    taking.take([receipt(1), receipt(2)], 10.0)
    assert answered(taking.take([], 11.0), statuses.ASK_AGAIN) == [1, 2]

    kept.is_full = False
    taking.take([receipt(1), receipt(2)], 12.0)
    assert answered(taking.take([], 13.0)) == [1, 2]
    assert kept.receipts == [["1", "2"]]


def test_receipts_that_wait_as_the_line_drops_are_stored_and_answered_on_no_other_line(
    taking: Intake, kept: Kept
) -> None:
    taking.take([receipt(1)], 10.0)

    taking.forget()

    assert kept.receipts == [["1"]]
    assert answered(taking.take([receipt(7)], 11.0)) == []
    assert answered(taking.take([], 12.0)) == [7]


def test_nothing_waits_where_nothing_came(taking: Intake, kept: Kept) -> None:
    assert taking.take([], 10.0) == b""
    assert taking.next_due == float("inf")
    assert taking.store() == b""
    assert kept.receipts == []
