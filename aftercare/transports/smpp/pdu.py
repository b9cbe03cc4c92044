"""The protocol data units of SMPP 3.4 that a client needs, written and read with precompiled structs.

Source: "Short Message Peer to Peer Protocol Specification v3.4", issue 1.2; section numbers are its, from memory.
Why no library: one that is kept (smpplib) reached 28 % of what a carrier's simulator takes, as it builds an object for
each field. Here a unit is a few joined bytes, and many are written and read at once. smpplib judges it in the tests.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from struct import Struct
from typing import Final, NamedTuple

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
# Octets without the NUL at the end, 5.2.1 to 5.2.8.
LONGEST: Final[Mapping[str, int]] = {"system_id": 15, "password": 8, "system_type": 12, "address": 20}

_HEAD = Struct(">IIII")
_FIELDS = Struct(">10B")
_OPTION = Struct(">HH")
# service_type; source and destination: type, plan, address; esm_class, protocol, priority; two times; what comes before
# the text, its size the last. Read in one go, as every receipt has all of it.
_MESSAGE = re.compile(
    rb"[^\0]{0,5}\0(..[^\0]{0,20})\0(..[^\0]{0,20})\0(.)..[^\0]{0,16}\0[^\0]{0,16}\0(.{5})", re.DOTALL
)
HEAD_OCTETS: Final = _HEAD.size

Unit = tuple[int, int, int, bytes]  # command, status, sequence number, body
Options = Mapping[int, bytes]


class BadUnit(ValueError):  # read by people as it stands
    """What came is not SMPP, or what was to be written cannot be; the message says where."""


class Address(NamedTuple):
    """A number or name with its type of number and numbering plan (5.2.5, 5.2.6)."""

    ton: int
    npi: int
    text: str


class Message(NamedTuple):
    """The body of submit_sm and deliver_sm (4.4.1, 4.6.1), as far as anybody here needs it.

    ``octets`` are those of short_message or, where that is empty, of the option message_payload.
    """

    source: Address
    destination: Address
    esm_class: int
    registered_delivery: int
    data_coding: int
    octets: bytes
    options: Options


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
    """Read the body of submit_sm or deliver_sm. Raises BadUnit."""
    found = _MESSAGE.match(body)
    if found is None:
        raise BadUnit(f"its {len(body)} octets end before the text, or an address or a time among them is too long")
    source, destination = _address(found[1]), _address(found[2])
    registered_delivery, _, data_coding, _, size = found[4]
    place = found.end()
    octets = body[place : place + size]
    if len(octets) < size:
        raise BadUnit(f"its text should have {size} octets and has {len(octets)}")
    options = read_options(body, place + size)
    octets = octets or options.get(MESSAGE_PAYLOAD, b"")
    return Message(source, destination, found[3][0], registered_delivery, data_coding, octets, options)


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
    return body.partition(b"\0")[0].decode("latin-1")


def text(name: str, value: str) -> bytes:
    """Write a text with NUL at its end. Raises BadUnit where it is too long, or not ASCII; never shows a password."""
    if len(value) <= LONGEST[name] and value.isascii() and "\0" not in value:
        return value.encode("ascii") + b"\0"
    shown = "the password" if name == "password" else f"{name} “{value}”"
    if len(value) > LONGEST[name]:
        raise BadUnit(f"{shown} has {len(value)} characters; SMPP 3.4 allows {LONGEST[name]}")
    raise BadUnit(f"{shown} has characters that are not ASCII")


def _address(octets: bytes) -> Address:
    return Address(octets[0], octets[1], octets[2:].decode("latin-1"))
