"""The outside judge of what is on the wire is smpplib 2.2.4, which reads what we write, and writes what we read."""

from __future__ import annotations

import logging
from contextlib import suppress
from typing import Any

import pytest
import smpplib.client
import smpplib.consts
import smpplib.smpp
from hypothesis import given
from hypothesis import strategies as st

from aftercare.transports.smpp import pdu
from aftercare.transports.smpp.pdu import Address, BadUnit

ADDRESSES = st.text("0123456789", min_size=1, max_size=20)
CLIENT = smpplib.client.Client("127.0.0.1", 1, allow_unknown_opt_params=True)
logging.getLogger("smpplib").setLevel(logging.ERROR)


def judged(octets: bytes) -> Any:
    return smpplib.smpp.parse_pdu(octets, client=CLIENT, allow_unknown_opt_params=True)


def theirs(command: str, **fields: Any) -> bytes:
    made = smpplib.smpp.make_pdu(command, client=CLIENT, **fields)
    return bytes(made.generate())


def test_a_bind_is_read_as_it_was_meant() -> None:
    read = judged(pdu.write(pdu.BIND_TRANSCEIVER, 7, pdu.write_bind("studio", "s3cret", "sms")))

    assert (read.command, read.sequence) == ("bind_transceiver", 7)
    assert (read.system_id, read.password, read.system_type) == (b"studio", b"s3cret", b"sms")
    assert read.interface_version == 0x34


@given(octets=st.binary(max_size=254), source=ADDRESSES, destination=ADDRESSES, number=st.integers(0, 0xFFFF))
def test_a_text_is_read_as_it_was_meant(octets: bytes, source: str, destination: str, number: int) -> None:
    body = pdu.write_message(
        pdu.write_address(1, 1, source),
        pdu.write_address(2, 8, destination),
        octets,
        esm_class=pdu.HEADED,
        registered_delivery=1,
        data_coding=8,
        options=pdu.write_option(pdu.USER_MESSAGE_REFERENCE, number.to_bytes(2, "big")),
    )

    read = judged(pdu.write(pdu.SUBMIT_SM, 9, body))

    assert (read.command, read.sequence, read.status) == ("submit_sm", 9, 0)
    assert (read.source_addr, read.source_addr_ton, read.source_addr_npi) == (source.encode(), 1, 1)
    assert (read.destination_addr, read.dest_addr_ton, read.dest_addr_npi) == (destination.encode(), 2, 8)
    assert (read.short_message or b"") == octets
    assert (read.esm_class, read.registered_delivery, read.data_coding) == (0x40, 1, 8)
    assert read.user_message_reference == number


@given(
    octets=st.binary(min_size=1, max_size=254), source=ADDRESSES, number=st.text("0123456789abcdefABCDEF", min_size=1)
)
def test_what_others_deliver_is_read_as_they_meant(octets: bytes, source: str, number: str) -> None:
    written = theirs(
        "deliver_sm",
        source_addr_ton=1,
        source_addr_npi=1,
        source_addr=source,
        dest_addr_ton=3,
        dest_addr_npi=0,
        destination_addr="60777",
        esm_class=4,
        data_coding=3,
        short_message=octets,
        receipted_message_id=number[:60],
        message_state=2,
    )

    [(command, status, _, body)], rest = pdu.read(written)
    message = pdu.read_message(body)

    assert (command, status, rest) == (pdu.DELIVER_SM, 0, b"")
    assert (message.source, message.destination) == (Address(1, 1, source), Address(3, 0, "60777"))
    assert (message.esm_class, message.data_coding, message.octets) == (4, 3, octets)
    assert message.options[pdu.RECEIPTED_MESSAGE_ID].rstrip(b"\0") == number[:60].encode()
    assert message.options[pdu.MESSAGE_STATE] == b"\x02"


@pytest.mark.parametrize(
    ("command", "name"),
    [
        (pdu.ENQUIRE_LINK, "enquire_link"),
        (pdu.ENQUIRE_LINK_RESP, "enquire_link_resp"),
        (pdu.UNBIND, "unbind"),
        (pdu.UNBIND_RESP, "unbind_resp"),
        (pdu.GENERIC_NACK, "generic_nack"),
    ],
)
def test_what_has_no_body_is_read_as_it_was_meant(command: int, name: str) -> None:
    read = judged(pdu.write(command, 3))

    assert (read.command, read.sequence) == (name, 3)


def test_the_number_of_a_text_is_read() -> None:
    [(command, _, sequence, body)], _ = pdu.read(theirs("submit_sm_resp", message_id="1A2B", sequence=5))

    assert (command, pdu.read_id(body)) == (pdu.SUBMIT_SM_RESP, "1A2B")
    assert pdu.read_id(b"") == ""
    assert sequence


@given(sizes=st.lists(st.integers(0, 300), max_size=6), cut=st.integers(0, 2000))
def test_units_are_found_wherever_the_stream_is_cut(sizes: list[int], cut: int) -> None:
    stream = b"".join(pdu.write(pdu.DELIVER_SM, place, b"x" * size) for place, size in enumerate(sizes))

    first, rest = pdu.read(stream[:cut])
    second, rest = pdu.read(rest + stream[cut:])

    assert [(unit[2], len(unit[3])) for unit in first + second] == list(enumerate(sizes))
    assert rest == b""


@pytest.mark.parametrize("length", [0, 15, 70_001, 0x48545450])
def test_what_is_not_smpp_is_said_so(length: int) -> None:
    with pytest.raises(BadUnit, match="does not speak SMPP"):
        pdu.read(length.to_bytes(4, "big") + b"P/1.1 400 Bad Request")


WHOLE = pdu.write_message(
    pdu.write_address(1, 1, "15550100100"), pdu.write_address(1, 1, "15550109999"), b"hello",
    options=pdu.write_option(pdu.MESSAGE_STATE, b"\x02"),
)  # fmt: skip


def test_a_message_cut_short_anywhere_is_said_so() -> None:
    for size in range(len(WHOLE)):
        if size == len(WHOLE) - 5:  # all but its options: whole
            continue
        with pytest.raises(BadUnit, match=r"\w+ \w+"):
            pdu.read_message(WHOLE[:size])


@given(body=st.binary(max_size=120))
def test_any_octets_are_a_message_or_a_bad_unit(body: bytes) -> None:
    with suppress(BadUnit):  # any other error fails
        assert len(pdu.read_message(body).octets) <= len(body)


def test_a_long_text_comes_in_an_option() -> None:
    written = theirs("deliver_sm", source_addr="1", destination_addr="2", short_message=b"", message_payload=b"x" * 900)

    [(_, _, _, body)], _ = pdu.read(written)

    assert pdu.read_message(body).octets == b"x" * 900


@pytest.mark.parametrize(
    ("write", "said"),
    [
        (lambda: pdu.write_bind("x" * 16, "p"), "system_id .* has 16 characters; SMPP 3.4 allows 15"),
        (lambda: pdu.write_bind("x", "s3cret789"), "the password has 9 characters; SMPP 3.4 allows 8"),
        (lambda: pdu.write_bind("x", "p", "y" * 13), "system_type"),
        (lambda: pdu.write_address(1, 1, "1" * 21), "address .* has 21 characters"),
        (lambda: pdu.write_address(5, 0, "Lidé"), "not ASCII"),
        (lambda: pdu.write_message(b"", b"", b"x" * 255), "255 octets; 254 fit"),
    ],
)
def test_what_cannot_be_written_is_said_so(write: Any, said: str) -> None:
    with pytest.raises(BadUnit, match=said) as refused:
        write()
    assert "s3cret" not in str(refused.value)
