"""Sources: 3GPP TS 23.040 9.2.3.24.1 (headers of parts), 3GPP TS 23.038 4 and 6.2.1 (codings, alphabet)."""

from __future__ import annotations

import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core import segments
from aftercare.transports.smpp import pdu, texts
from aftercare.transports.smpp.pdu import Address, BadUnit, Message
from aftercare.transports.smpp.texts import Piece

HER, STUDIO = Address(1, 1, "15550100100"), Address(1, 1, "15550109999")
ANY_TEXT = st.one_of(
    st.text(st.sampled_from(segments.BASIC + segments.EXTENSION), max_size=500),
    st.text(st.sampled_from("aé€ğ😀👁"), max_size=300),
)


def message(octets: bytes, *, coding: int = 0, headed: bool = False, options: pdu.Options | None = None) -> Message:
    return Message(HER, STUDIO, pdu.HEADED if headed else 0, 0, coding, octets, options or {})


@given(text=ANY_TEXT, reference=st.integers(0, 70_000), seed=st.integers())
def test_what_is_cut_is_joined_again_in_any_order(text: str, reference: int, seed: int) -> None:
    coding, parts = texts.parts_of(text, reference)
    pieces = [texts.piece_of(message(part, coding=coding, headed=len(parts) > 1)) for part in parts]

    random.Random(seed).shuffle(pieces)

    assert texts.text_of(pieces, len(parts)) == text
    assert len(parts) == segments.measure(text).segments
    assert {(piece.total, piece.reference) for piece in pieces} == {
        (len(parts), reference & 0xFF if len(parts) > 1 else 0)
    }


@given(text=ANY_TEXT)
def test_no_part_is_longer_than_a_telephone_takes(text: str) -> None:
    coding, parts = texts.parts_of(text, 0)

    for part in parts:
        body = part[6:] if len(parts) > 1 else part
        assert len(body) <= {(0, False): 160, (0, True): 153, (8, False): 140, (8, True): 134}[coding, len(parts) > 1]


def test_the_header_is_the_standards() -> None:
    _, parts = texts.parts_of("a" * 161, 0x1FE)

    assert [part[:6] for part in parts] == [bytes([5, 0, 3, 0xFE, 2, 1]), bytes([5, 0, 3, 0xFE, 2, 2])]


def test_an_escape_is_an_octet_of_its_own() -> None:
    assert texts.parts_of("€@[", 0) == (0, [b"\x1be\x00\x1b<"])


def test_more_parts_than_can_be_numbered_are_refused() -> None:
    with pytest.raises(BadUnit, match="256 parts"):
        texts.parts_of("a" * (255 * 153 + 1), 0)


@pytest.mark.parametrize(
    ("coding", "octets", "text"),
    [
        (0, b"\x00 \x1be \x1b<hi\x1b>", "@ € [hi]"),
        (0, b"a\x1bzb", "azb"),  # an escape before what the table lacks: 23.038, 6.2.1.1
        (0, b"\x80", "\x80"),
        (1, b"hello", "hello"),
        (3, b"caf\xe9", "café"),
        (8, "ça va 👁".encode("utf-16-be"), "ça va 👁"),
        (8, b"\x00a\xd8\x3d", "a\ufffd"),
        (0xF0, b"\x00", "@"),  # to be shown at once, the default alphabet
        (0x18, "é".encode("utf-16-be"), "é"),  # to be shown at once, UCS-2
        (4, b"\xe9", "é"),
    ],
)
def test_a_text_is_read_by_its_coding(coding: int, octets: bytes, text: str) -> None:
    assert texts.decoded(octets, coding) == text


def test_others_cut_through_an_escape_and_a_surrogate_pair() -> None:
    cut_escape = [Piece(1, 2, 1, 0, b"it is 5\x1b"), Piece(1, 2, 2, 0, b"e now")]
    eye = "👁".encode("utf-16-be")
    cut_pair = [Piece(1, 2, 2, 8, eye[2:]), Piece(1, 2, 1, 8, eye[:2])]

    assert texts.text_of(cut_escape, 2) == "it is 5€ now"
    assert texts.text_of(cut_pair, 2) == "👁"


def test_parts_may_have_codings_of_their_own() -> None:
    assert texts.text_of([Piece(1, 2, 1, 0, b"my eye "), Piece(1, 2, 2, 8, "👁".encode("utf-16-be"))], 2) == "my eye 👁"


def test_a_gap_stands_for_what_has_not_come() -> None:
    pieces = [Piece(1, 5, 2, 0, b"my eye"), Piece(1, 5, 5, 0, b"swollen")]

    assert texts.text_of(pieces, 5) == " […] my eye […] swollen"


@pytest.mark.parametrize(
    ("octets", "options", "expected"),
    [
        (b"\x05\x00\x03\x07\x02\x01hi", {}, (7, 2, 1, b"hi")),
        (b"\x06\x08\x04\x01\x07\x02\x02hi", {}, (0x107, 2, 2, b"hi")),
        (b"\x0b\x05\x04\x00\x00\x00\x00\x00\x03\x07\x03\x02hi", {}, (7, 3, 2, b"hi")),  # behind another element
        (b"\x03\x01\x01\x00hi", {}, (0, 1, 1, b"hi")),
        (b"\x05\x00\x03\x07\x02\x03hi", {}, (0, 1, 1, b"hi")),  # the third of two
        (b"\x05\x00\x03\x07\x00\x00hi", {}, (0, 1, 1, b"hi")),
    ],
)
def test_a_header_tells_which_part_it_is(
    octets: bytes, options: pdu.Options, expected: tuple[int, int, int, bytes]
) -> None:
    piece = texts.piece_of(message(octets, headed=True, options=options))

    assert (piece.reference, piece.total, piece.number, piece.octets) == expected


def test_options_tell_it_as_well() -> None:
    options = {pdu.SAR_MSG_REF_NUM: b"\x01\x07", pdu.SAR_TOTAL_SEGMENTS: b"\x02", pdu.SAR_SEGMENT_SEQNUM: b"\x02"}

    piece = texts.piece_of(message(b"hi", options=options))

    assert (piece.reference, piece.total, piece.number) == (0x107, 2, 2)


@given(octets=st.binary(max_size=40), coding=st.integers(0, 255))
def test_any_octets_can_be_read(octets: bytes, coding: int) -> None:
    piece = texts.piece_of(message(octets, coding=coding, headed=True))

    assert isinstance(texts.text_of([piece], 1), str)
