"""The protocol data units of SMPP 3.4 that a client needs, written and read with precompiled structs.

Source: "Short Message Peer to Peer Protocol Specification v3.4", issue 1.2; section numbers are its, from memory.
Why no library: one that is kept (smpplib) reached 28 % of what a carrier's simulator takes, as it builds an object for
each field. Here a unit is a few joined bytes, and many are written and read at once. smpplib judges it in the tests.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from struct import Struct
from typing import Final

# 5.1.2.1
GENERIC_NACK: Final = 0x80000000
SUBMIT_SM: Final = 0x00000004
SUBMIT_SM_RESP: Final = 0x80000004
DELIVER_SM: Final = 0x00000005
DELIVER_SM_RESP: Final = 0x80000005
UNBIND: Final = 0x00000006
UNBIND_RESP: Final = 0x80000006
BIND_TRANSCEIVER: Final = 0x00000009
BIND_TRANSCEIVER_RESP: Final = 0x80000009
ENQUIRE_LINK: Final = 0x00000015
ENQUIRE_LINK_RESP: Final = 0x80000015
RESPONSE: Final = 0x80000000  # the bit that tells an answer

# 5.3.2: the optional parameters that are written or read here.
RECEIPTED_MESSAGE_ID: Final = 0x001E
USER_MESSAGE_REFERENCE: Final = 0x0204
SAR_MSG_REF_NUM: Final = 0x020C
SAR_TOTAL_SEGMENTS: Final = 0x020E
SAR_SEGMENT_SEQNUM: Final = 0x020F
NETWORK_ERROR_CODE: Final = 0x0423
MESSAGE_PAYLOAD: Final = 0x0424
MESSAGE_STATE: Final = 0x0427

# 5.2.12: what kind of message it is, and whether a user data header comes before its text.
KIND: Final = 0x3C
RECEIPT: Final = 0x04
INTERMEDIATE: Final = 0x20  # news on the way
HEADED: Final = 0x40

VERSION: Final = 0x34
LAST_SEQUENCE: Final = 0x7FFFFFFF  # 5.1.4
LONGEST_TEXT: Final = 254  # octets of short_message, 5.2.22
LONGEST_UNIT: Final = 70_000  # octets; a message_payload of 64 KiB and what is around it
# Octets without the NUL at the end, 5.2.1 to 5.2.9 and 5.2.23.
LONGEST: Final[Mapping[str, int]] = {
    "system_id": 15,
    "password": 8,
    "system_type": 12,
    "service_type": 5,
    "address": 20,
    "message_id": 64,
}

_HEAD = Struct(">IIII")
_FIELDS = Struct(">10B")
_OPTION = Struct(">HH")
HEAD_OCTETS: Final = _HEAD.size

Unit = tuple[int, int, int, bytes]  # command, status, sequence number, body
Options = Mapping[int, bytes]


class BadUnit(ValueError):  # noqa: N818  read by people as it stands
    """What came is not SMPP, or what was to be written cannot be; the message says where."""


@dataclass(frozen=True, slots=True)
class Address:
    """A number or name with its type of number and numbering plan (5.2.5, 5.2.6)."""

    ton: int
    npi: int
    text: str


@dataclass(frozen=True, slots=True)
class Message:
    """The body of submit_sm and deliver_sm (4.4.1, 4.6.1), as far as anybody here needs it.

    ``octets`` are those of short_message or, where that is empty, of the option message_payload.
    """

    source: Address
    destination: Address
    esm_class: int
    registered_delivery: int
    data_coding: int
    octets: bytes
    options: Options = field(default_factory=dict)


def write(command: int, sequence: int, body: bytes = b"", status: int = 0) -> bytes:
    """Write one unit."""
    return _HEAD.pack(HEAD_OCTETS + len(body), command, status, sequence) + body


def read(buffer: bytes) -> tuple[list[Unit], bytes]:
    """Read every whole unit in ``buffer``; return them with the rest. Raises BadUnit where no length can be right.

    After that nothing on the connection can be trusted: where the next unit begins is not known.
    """
    units: list[Unit] = []
    place, end = 0, len(buffer)
    while end - place >= HEAD_OCTETS:
        length, command, status, sequence = _HEAD.unpack_from(buffer, place)
        if not HEAD_OCTETS <= length <= LONGEST_UNIT:
            raise BadUnit(f"a unit of {length} octets: the other side does not speak SMPP 3.4")
        if place + length > end:
            break
        units.append((command, status, sequence, buffer[place + HEAD_OCTETS : place + length]))
        place += length
    return units, buffer[place:]


def write_bind(system_id: str, password: str, system_type: str = "") -> bytes:
    """Write the body of bind_transceiver (4.1.5), for any address."""
    names = (("system_id", system_id), ("password", password), ("system_type", system_type))
    return b"".join([*(text(name, value) for name, value in names), bytes([VERSION, 0, 0]), b"\0"])


def write_address(ton: int, npi: int, address: str) -> bytes:
    """Write an address with its type and plan. Raises BadUnit."""
    return bytes((ton, npi)) + text("address", address)


def write_message(
    source: bytes,
    destination: bytes,
    octets: bytes,
    *,
    esm_class: int = 0,
    registered_delivery: int = 0,
    data_coding: int = 0,
    options: bytes = b"",
) -> bytes:
    """Write the body of submit_sm or deliver_sm from addresses that are written already. Raises BadUnit."""
    size = len(octets)
    if size > LONGEST_TEXT:
        raise BadUnit(f"a text of {size} octets; {LONGEST_TEXT} fit into one message")
    # protocol_id, priority; no schedule, no validity; receipts; replace_if_present; data_coding; no text of theirs
    fields = _FIELDS.pack(esm_class, 0, 0, 0, 0, registered_delivery, 0, data_coding, 0, size)
    return b"".join((b"\0", source, destination, fields, octets, options))


def write_option(tag: int, value: bytes) -> bytes:
    """Write one optional parameter (5.3.1)."""
    return _OPTION.pack(tag, len(value)) + value


def read_message(body: bytes) -> Message:
    """Read the body of submit_sm or deliver_sm. Raises BadUnit, which names the field."""
    _, place = _text(body, 0, "service_type")
    source, place = _address(body, place)
    destination, place = _address(body, place)
    try:
        esm_class = body[place]
        place += 3  # protocol_id, priority_flag
        for name in ("schedule_delivery_time", "validity_period"):
            _, place = _text(body, place, name, 16)
        registered_delivery, _, data_coding, _, size = body[place : place + 5]
    except (IndexError, ValueError):
        raise BadUnit(f"it ends after {len(body)} octets, before its text") from None
    place += 5
    octets = body[place : place + size]
    if len(octets) < size:
        raise BadUnit(f"its text should have {size} octets and has {len(octets)}")
    options = read_options(body, place + size)
    return Message(
        source, destination, esm_class, registered_delivery, data_coding, octets or options.get(MESSAGE_PAYLOAD, b""),
        options,
    )  # fmt: skip


def read_options(body: bytes, place: int) -> Options:
    """Read the optional parameters from ``place`` on. Raises BadUnit."""
    found: dict[int, bytes] = {}
    end = len(body)
    while place < end:
        if end - place < _OPTION.size:
            raise BadUnit(f"{end - place} octets after its last optional parameter are too few for another")
        tag, size = _OPTION.unpack_from(body, place)
        place += _OPTION.size
        if place + size > end:
            raise BadUnit(f"the optional parameter {tag:#06x} should have {size} octets and has {end - place}")
        found[tag] = body[place : place + size]
        place += size
    return found


def read_id(body: bytes) -> str:
    """Read message_id, the whole body of submit_sm_resp; '' where there is none, as beside an error (4.4.2)."""
    return _text(body, 0, "message_id")[0] if body else ""


def text(name: str, value: str) -> bytes:
    """Write a text with NUL at its end. Raises BadUnit where it is too long, or not ASCII; never shows a password."""
    shown = "the password" if name == "password" else f"{name} “{value}”"
    if len(value) > LONGEST[name]:
        raise BadUnit(f"{shown} has {len(value)} characters; SMPP 3.4 allows {LONGEST[name]}")
    if not value.isascii() or "\0" in value:
        raise BadUnit(f"{shown} has characters that are not ASCII")
    return value.encode("ascii") + b"\0"


def _text(body: bytes, place: int, name: str, most: int = 0) -> tuple[str, int]:
    end = body.find(0, place)
    if end < 0:
        raise BadUnit(f"{name} does not end")
    if end - place > (most or LONGEST[name]):
        raise BadUnit(f"{name} has {end - place} octets; SMPP 3.4 allows {most or LONGEST[name]}")
    return body[place:end].decode("latin-1"), end + 1


def _address(body: bytes, place: int) -> tuple[Address, int]:
    if place + 2 > len(body):
        raise BadUnit("it ends before its addresses")
    found, end = _text(body, place + 2, "address")
    return Address(body[place], body[place + 1], found), end
