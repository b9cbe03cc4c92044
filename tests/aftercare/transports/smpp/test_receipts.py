"""Sources: SMPP 3.4, 5.2.28 (message_state) and appendix B (the receipt's text)."""

from __future__ import annotations

import pytest

from aftercare.core.delivery import Event
from aftercare.transports.base import ReceiptNote
from aftercare.transports.smpp import pdu, receipts
from aftercare.transports.smpp.pdu import Address, Message
from aftercare.transports.smpp.receipts import Recent, Sent

HER, STUDIO = "+15550100100", Address(1, 1, "15550109999")


def text_of(number: str, state: str) -> bytes:
    said = (
        f"id:{number} sub:001 dlvrd:001 submit date:2611281200 done date:2611281201 stat:{state} err:042 text:hi id:9"
    )
    return said.encode()


def receipt(octets: bytes = b"", *, kind: int = pdu.RECEIPT, address: str = HER, **options: bytes) -> Message:
    tags = {"number": pdu.RECEIPTED_MESSAGE_ID, "state": pdu.MESSAGE_STATE, "ours": pdu.USER_MESSAGE_REFERENCE,
            "error": pdu.NETWORK_ERROR_CODE}  # fmt: skip
    source = Address(1, 1, address.lstrip("+"))
    return Message(source, STUDIO, kind, 0, 0, octets, {tags[name]: value for name, value in options.items()})


def note(message: Message, recent: Recent | None = None) -> ReceiptNote:
    return receipts.note_of(message, recent or Recent())


@pytest.mark.parametrize(
    ("state", "word", "event"),
    [
        (1, "ENROUTE", None),
        (2, "DELIVRD", Event.DELIVERED),
        (3, "EXPIRED", Event.FAILED),
        (4, "DELETED", Event.FAILED),
        (5, "UNDELIV", Event.FAILED),
        (6, "ACCEPTD", None),
        (7, "UNKNOWN", None),
        (8, "REJECTD", Event.FAILED),
    ],
)
def test_options_and_text_say_the_same(state: int, word: str, event: Event | None) -> None:
    by_options = note(receipt(number=b"77\0", state=bytes([state])))
    by_text = note(receipt(text_of("77", word)))

    assert (by_options.provider_ref, by_options.word, by_options.event) == ("77", word, event)
    assert (by_text.provider_ref, by_text.word, by_text.event) == ("77", word, event)
    assert bool(by_text.problem) == (event is Event.FAILED)


def test_options_count_more_than_the_text() -> None:
    said = note(receipt(text_of("88", "UNDELIV"), number=b"77\0", state=b"\x02"))

    assert (said.provider_ref, said.word) == ("77", "DELIVRD")


def test_a_failure_is_said_in_a_sentence() -> None:
    assert note(receipt(text_of("7", "EXPIRED"))).problem == (
        "The text to +15550100100 did not arrive: her phone was off or out of reach for too long "
        "(the carrier's error 042)."
    )
    # 5.3.2.31: the kind of network (3: GSM), then its error.
    assert "(the carrier's error 27)" in note(receipt(number=b"7", state=b"\x05", error=b"\x03\x00\x1b")).problem


@pytest.mark.parametrize("octets", [b"", b"stat:WHATEVER", b"\xff\xfe", b"id: stat:"])
def test_a_word_that_nobody_knows_is_no_news(octets: bytes) -> None:
    assert note(receipt(octets)).event is None


def test_news_on_the_way_is_no_end() -> None:
    message = receipt(text_of("7", "DELIVRD"), kind=pdu.INTERMEDIATE)

    assert receipts.is_receipt(message)
    assert note(message).event is None
    assert not receipts.is_receipt(receipt(b"hello", kind=0))


@pytest.mark.parametrize(
    ("given", "reported"),
    [("77", "77"), ("4D", "77"), ("4d", "77"), ("0000004D", "77"), ("77", "4D"), ("0000000077", "4d"), ("abc", "abc")],
)
def test_a_number_is_found_in_hexadecimal_and_in_decimal(given: str, reported: str) -> None:
    recent = Recent()
    recent.add(given, Sent("ref-1", HER, provider_ref=given))

    said = note(receipt(text_of(reported, "DELIVRD")), recent)

    assert (said.provider_ref, said.reference) == (given, "ref-1")


def test_another_spelling_counts_only_for_a_text_to_the_same_number() -> None:
    recent = Recent()
    recent.add("4D", Sent("ref-1", HER, provider_ref="4D"))

    said = note(receipt(text_of("77", "DELIVRD"), address="+15550100199"), recent)

    assert (said.provider_ref, said.reference) == ("77", "")


def test_a_spelling_once_seen_holds_for_texts_that_are_forgotten() -> None:
    recent = Recent()
    recent.add("4D", Sent("ref-1", HER, provider_ref="4D"))
    note(receipt(text_of("77", "DELIVRD")), recent)

    assert note(receipt(text_of("171", "DELIVRD"), address="+15550100199"), recent).provider_ref == "AB"


def test_a_long_text_is_delivered_once_all_its_parts_are() -> None:
    recent = Recent()
    sent = Sent("ref-1", HER, parts=3, provider_ref="12")
    for part in ("10", "11", "12"):
        recent.add(part, sent)

    heard = [note(receipt(text_of(part, "DELIVRD")), recent) for part in ("12", "10", "10", "11")]

    assert [one.event for one in heard] == [None, None, None, Event.DELIVERED]
    assert heard[-1].provider_ref == "12"
    # What is stored once for a number and a word must not hide the news that counts.
    assert (heard[-1].provider_ref, heard[-1].word) not in {(one.provider_ref, one.word) for one in heard[:-1]}


def test_a_long_text_fails_with_any_of_its_parts() -> None:
    recent = Recent()
    sent = Sent("ref-1", HER, parts=2, provider_ref="11")
    for part in ("10", "11"):
        recent.add(part, sent)

    said = note(receipt(text_of("10", "UNDELIV")), recent)

    assert (said.event, said.provider_ref, said.reference) == (Event.FAILED, "11", "ref-1")


def test_a_receipt_without_a_number_is_nobodys_though_a_carrier_gave_none() -> None:
    recent = Recent()
    recent.add("", Sent("ours", HER))

    assert note(receipt(b"stat:UNDELIV err:042"), recent).reference == ""


def test_a_text_whose_answer_was_not_heard_is_found_by_our_number() -> None:
    recent = Recent()
    recent.lose(0x1234, Sent("ref-1", HER))

    found = note(receipt(text_of("7", "DELIVRD"), ours=b"\x12\x34"), recent)
    other = note(receipt(text_of("7", "DELIVRD"), ours=b"\x12\x34", address="+15550100199"), recent)

    assert (found.reference, other.reference) == ("ref-1", "")


def test_the_oldest_are_forgotten_and_the_newest_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(receipts, "_KEPT", 3)
    recent = Recent()
    for number in range(7):
        recent.add(str(number), Sent(f"ref-{number}", HER))

    found = [note(receipt(text_of(str(number), "DELIVRD")), recent).reference for number in range(7)]

    assert found == ["", "", "", "ref-3", "ref-4", "ref-5", "ref-6"]
