"""From a text to the octets of its parts, and back.

Parts carry a user data header with an 8-bit reference (3GPP TS 23.040, 9.2.3.24.1). GSM-7 travels unpacked, one octet a
septet, under data_coding 0, the carrier's default alphabet; UCS-2 under 8 (SMPP 3.4, 5.2.19, from memory).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import groupby
from typing import Final

from gsm0338 import Codec

from aftercare.core import segments
from aftercare.transports.smpp import pdu

GSM, LATIN_1, UCS_2 = 0, 3, 8  # 1 is ASCII, which Latin-1 holds
MOST_PARTS: Final = 255

_ESCAPE = 0x1B
_codec = Codec()


class _Table(dict[int, str]):
    """Characters by the octets of their septets. What has none becomes what Latin-1 has none for either."""

    def __missing__(self, code: int) -> str:
        return "\uffff"


_OCTETS: Final = _Table(
    (ord(character), _codec.encode(character)[0].decode("latin-1")) for character in segments.BASIC + segments.EXTENSION
)
_CHARACTERS: Final = {octets: chr(code) for code, octets in _OCTETS.items()}

_IS_CONCATENATED = (0x00, 0x08)  # elements of the header: with a reference of one octet, of two
GAP = " […] "  # stands for parts that have not come


@dataclass(frozen=True, slots=True)
class Piece:
    """One part of an incoming text: ``number`` (from 1) of ``total`` under a reference; (0, 1, 1) is a whole text."""

    reference: int
    total: int
    number: int
    data_coding: int
    octets: bytes


def parts_of(text: str, reference: int) -> tuple[int, list[bytes]]:
    """Return data_coding and the octets of each part, with its header where there are several.

    ``reference`` tells the parts of one long text from those of another; its lowest 8 bits are used. Raises
    pdu.BadUnit for a text of more than 255 parts.
    """
    whole = _gsm(text)
    if whole is not None and len(whole) <= segments.SINGLE["gsm7"]:
        return GSM, [whole]
    split = segments.split(text)
    octets = [part.encode("utf-16-be", "surrogatepass") if whole is None else _septets(part) for part in split]
    total = len(octets)
    if total > MOST_PARTS:
        raise pdu.BadUnit(f"a text of {total} parts; {MOST_PARTS} can be joined by a phone")
    if total > 1:
        heads = (bytes((5, 0, 3, reference & 0xFF, total, number)) for number in range(1, total + 1))
        octets = [head + part for head, part in zip(heads, octets, strict=True)]
    return UCS_2 if whole is None else GSM, octets


def piece_of(message: pdu.Message) -> Piece:
    """Return what of a text an incoming message holds, by its header, else by its sar_ options (5.3.2.22 to 24)."""
    octets = message.octets
    if message.esm_class & pdu.HEADED and octets and len(octets) > octets[0]:
        head, octets = octets[1 : octets[0] + 1], octets[octets[0] + 1 :]
        reference, total, number = _concatenation(head)
    else:
        reference, total, number = _sar(message.options)
    if not 1 <= number <= total:
        reference, total, number = 0, 1, 1
    return Piece(reference, total, number, message.data_coding, octets)


def text_of(pieces: Iterable[Piece], total: int) -> str:
    """Join the pieces of one text; a gap stands for those that are missing.

    Octets are joined before they are read, as others do cut through an escape or a surrogate pair.
    """
    there = {piece.number: piece for piece in pieces}
    found: list[str] = []
    in_order = (there.get(number) for number in range(1, total + 1))
    for data_coding, run in groupby(in_order, lambda piece: piece.data_coding if piece else None):
        octets = b"".join(piece.octets for piece in run if piece)
        found.append(GAP if data_coding is None else decoded(octets, data_coding))
    return "".join(found)


def decoded(octets: bytes, data_coding: int) -> str:
    """Read octets by their data_coding, message classes included (3GPP TS 23.038, 4); what is foreign as Latin-1."""
    kind = _coding(data_coding)
    if kind == UCS_2:
        return octets.decode("utf-16-be", "replace")
    if kind == GSM:
        return _from_gsm(octets)
    return octets.decode("latin-1")


def _gsm(text: str) -> bytes | None:
    try:
        return _septets(text)
    except UnicodeEncodeError:
        return None


def _septets(text: str) -> bytes:
    return text.translate(_OCTETS).encode("latin-1")


def _from_gsm(octets: bytes) -> str:
    """Read unpacked septets; an escape before what the extension table lacks shows the basic letter (23.038, 6.2.1)."""
    found: list[str] = []
    escaped = False
    for code in octets:
        if code == _ESCAPE and not escaped:
            escaped = True
            continue
        one = chr(code)
        found.append((escaped and _CHARACTERS.get(chr(_ESCAPE) + one)) or _CHARACTERS.get(one, one))
        escaped = False
    return "".join(found)


def _coding(data_coding: int) -> int:
    """Tell the alphabet of a coding group with a message class (23.038, 4: 0001xxxx and 1111xxxx)."""
    alphabet = data_coding & 0x0C
    if data_coding & 0xF0 == 0x10:
        return {0x00: GSM, 0x08: UCS_2}.get(alphabet, LATIN_1)
    if data_coding & 0xF0 == 0xF0:
        return LATIN_1 if alphabet & 0x04 else GSM
    return data_coding


def _concatenation(head: bytes) -> tuple[int, int, int]:
    place = 0
    while place + 2 <= len(head):
        element, size = head[place], head[place + 1]
        value = head[place + 2 : place + 2 + size]
        if element in _IS_CONCATENATED and size == (3 if element == 0 else 4) == len(value):
            return int.from_bytes(value[:-2], "big"), value[-2], value[-1]
        place += 2 + size
    return 0, 1, 1


def _sar(options: Mapping[int, bytes]) -> tuple[int, int, int]:
    wanted = (pdu.SAR_MSG_REF_NUM, pdu.SAR_TOTAL_SEGMENTS, pdu.SAR_SEGMENT_SEQNUM)
    if not all(tag in options for tag in wanted):
        return 0, 1, 1
    reference, total, number = (int.from_bytes(options[tag], "big") for tag in wanted)
    return reference, total, number
