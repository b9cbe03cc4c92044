"""Sources: 3GPP TS 23.038 6.2.1 and 6.2.1.1 (alphabet), 3GPP TS 23.040 9.2.3.24.1 (160/153 septets, 70/67 units,
nothing parted at a border). The counts of the table below are worked out by hand from these. The outside judge is
smsutil 1.1.3, whose import registers a codec of its own, so no module of the project may import it.
"""

from __future__ import annotations

import json
import unicodedata

import pytest
import smsutil
from hypothesis import given
from hypothesis import strategies as st

from aftercare.core import segments

# TS 23.038 6.2.1 in code order from 0x00 to 0x7F, less 0x1B (escape); position 0x09 is the capital Ç.
STANDARD_BASIC = (
    "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?"
    "¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà"
)
# TS 23.038 6.2.1.1.
STANDARD_EXTENSION = "\f^{}\\[~]|€"

# Escape is text to smsutil and nothing to the standard; everything else the two must agree on.
ANY_CHARACTER = st.characters(exclude_characters="\x1b")
GSM_TEXT = st.text(st.sampled_from(STANDARD_BASIC + STANDARD_EXTENSION), max_size=700)
ASTRAL_TEXT = st.text(st.sampled_from("aé€ğ’年😀👁🇪"), min_size=1, max_size=300)
ANY_TEXT = st.one_of(GSM_TEXT, ASTRAL_TEXT, st.text(ANY_CHARACTER, max_size=300)).filter(bool)


def counts(text: str) -> tuple[str, int, int]:
    measured = segments.measure(text)
    return measured.encoding, measured.units, measured.segments


def test_the_alphabet_is_the_standards() -> None:
    assert segments.BASIC == STANDARD_BASIC
    assert segments.EXTENSION == STANDARD_EXTENSION


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("a" * 160, ("gsm7", 160, 1)),
        ("a" * 161, ("gsm7", 161, 2)),
        ("a" * 306, ("gsm7", 306, 2)),
        ("a" * 307, ("gsm7", 307, 3)),
        ("a" * 459, ("gsm7", 459, 3)),
        ("a" * 460, ("gsm7", 460, 4)),
        ("€" * 80, ("gsm7", 160, 1)),
        ("€" * 81, ("gsm7", 162, 2)),
        ("a" * 159 + "€", ("gsm7", 161, 2)),
        ("a" * 152 + "€" + "a" * 152, ("gsm7", 306, 3)),
        ("a" * 159 + "’", ("ucs2", 160, 3)),
        ("ж" * 70, ("ucs2", 70, 1)),
        ("ж" * 71, ("ucs2", 71, 2)),
        ("ж" * 134, ("ucs2", 134, 2)),
        ("ж" * 135, ("ucs2", 135, 3)),
        ("ж" * 201, ("ucs2", 201, 3)),
        ("😀" * 35, ("ucs2", 70, 1)),
        ("😀" * 36, ("ucs2", 72, 2)),
        ("😀" * 66, ("ucs2", 132, 2)),
        ("😀" * 67, ("ucs2", 134, 3)),
    ],
)
def test_a_text_at_the_border_is_counted_as_the_standard_counts_it(text: str, expected: tuple[str, int, int]) -> None:
    assert counts(text) == expected


@pytest.mark.parametrize(
    "character", ["ç", "á", "í", "ó", "ú", "`", "\t", "’", "–", "…", "ğ", "\xa0", "\u202f", "\x1b"]
)
def test_one_character_outside_the_alphabet_moves_a_text_to_ucs2(character: str) -> None:
    assert segments.measure("Hi" + character).encoding == "ucs2"


@pytest.mark.parametrize("character", ["Ç", "é", "ñ", "ü", "à", "¡", "¿", "§", "\n", "\r", "Ñ", "É"])
def test_a_letter_of_the_alphabet_costs_one_septet(character: str) -> None:
    assert counts(character * 160) == ("gsm7", 160, 1)


@pytest.mark.parametrize("character", list(STANDARD_EXTENSION))
def test_an_extension_character_costs_two_septets(character: str) -> None:
    assert counts(character) == ("gsm7", 2, 1)


def test_an_empty_text_is_one_message_of_no_units() -> None:
    assert counts("") == ("gsm7", 0, 1)
    assert segments.split("") == ("",)


@given(ANY_TEXT)
def test_it_agrees_with_an_outside_splitter(text: str) -> None:
    theirs = smsutil.split(text)

    encoding = "gsm7" if theirs.encoding == "gsm0338" else "ucs2"
    units = theirs.total_bytes if encoding == "gsm7" else theirs.total_bytes // 2
    assert counts(text) == (encoding, units, len(theirs.parts))
    assert segments.split(text) == tuple(part.content for part in theirs.parts)


@given(st.one_of(GSM_TEXT, ASTRAL_TEXT, st.text(max_size=300)))
def test_the_segments_join_to_the_text_and_each_of_them_fits(text: str) -> None:
    parts = segments.split(text)
    whole = segments.measure(text)

    assert "".join(parts) == text
    assert len(parts) == whole.segments
    if len(parts) > 1:
        most = segments.PART[whole.encoding]
        # A part of a UCS-2 text may be plain letters; it travels as UCS-2 all the same.
        units = [len(part.encode("utf-16-be")) // 2 for part in parts]
        sizes = [segments.measure(part).units for part in parts] if whole.encoding == "gsm7" else units
        assert max(sizes) <= most


@given(st.text(st.characters(categories=["Cs", "So", "Ll"]), max_size=200))
def test_lone_surrogates_are_counted_and_kept(text: str) -> None:
    octets = text.encode("utf-16-be", "surrogatepass")

    parts = segments.split(text)
    measured = segments.measure(text)

    assert "".join(parts).encode("utf-16-be", "surrogatepass") == octets
    assert len(parts) == measured.segments
    if measured.encoding == "ucs2":
        assert measured.units == len(octets) // 2


def test_two_halves_given_apart_are_not_parted_at_a_border() -> None:
    text = json.loads('"\\ud83d"') + "\ude00"

    assert counts(text * 67) == ("ucs2", 134, 3)
    assert segments.split(text * 67) == ("😀" * 33, "😀" * 33, "😀")


def test_it_names_what_made_a_text_dear_and_what_would_be_cheaper() -> None:
    measured = segments.measure("See you at 10 – María’s chair 😀")

    assert measured.dear == (("–", 14, "-"), ("í", 19, "i"), ("’", 21, "'"), ("😀", 30, None))


def test_a_cheap_text_has_nothing_dear_in_it() -> None:
    assert segments.measure("Señora, ¿10:00 o 11:00? {€5}").dear == ()


def test_a_letter_with_its_mark_apart_is_one_dear_character() -> None:
    apart = unicodedata.normalize("NFD", "año")

    assert segments.measure(apart).dear == (("n\u0303", 1, "ñ"),)
    assert segments.cheaper(apart) == "año"


@pytest.mark.parametrize(
    ("text", "spelled"),
    [
        ("“It’s today” — come bare-faced…", '"It\'s today" - come bare-faced...'),
        ("10:00\u202fAM,\u00a0please", "10:00 AM, please"),
        ("María, aquí: ¡mañana! Ángel Óscar Úrsula Íñigo", "Maria, aqui: ¡mañana! Angel Oscar Ursula Iñigo"),
        ("garçon âgée, façade, forêt, naïve", "garcon agée, facade, foret, naive"),
        ("Ça va, Çelik", "Ça va, Çelik"),
        ("zero\u200bwidth\ufeff", "zerowidth"),
        ("a\tb", "a b"),
        ("Łódź œuvre", "Lodz oeuvre"),
    ],
)
def test_typesetting_and_accents_are_spelled_in_the_cheap_alphabet(text: str, spelled: str) -> None:
    assert segments.cheaper(text) == spelled
    assert segments.measure(spelled).encoding == "gsm7"


@pytest.mark.parametrize("text", ["It’s 😀", "María, до завтра", "2½ hours", "\x1b’", "", "plain"])
def test_a_text_that_would_stay_dear_or_is_cheap_is_left_as_it_is(text: str) -> None:
    assert segments.cheaper(text) == text


@given(st.text(max_size=200))
def test_the_cheaper_spelling_never_costs_more_and_is_final(text: str) -> None:
    spelled = segments.cheaper(text)

    assert segments.cheaper(spelled) == spelled
    assert segments.measure(spelled).segments <= segments.measure(text).segments
    assert spelled == text or segments.measure(spelled).encoding == "gsm7"


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("No rubbing 🌿", "No rubbing"),
        ("“No” rubbing… 🌿, please", '"No" rubbing..., please'),
        ("Até já", "Até ja"),
        ("GSM already: é ñ €", "GSM already: é ñ €"),
        ("中文", ""),
    ],
)
def test_the_plainest_spelling_leaves_out_what_cannot_be_spelled(text: str, plain: str) -> None:
    assert segments.plainest(text) == plain
    assert segments.measure(segments.plainest(text)).encoding == "gsm7"


@given(ANY_TEXT, st.integers(1, 5))
def test_a_text_fits_where_its_room_is_not_below_nothing(text: str, most: int) -> None:
    assert (segments.room(text, most) >= 0) == (segments.measure(text).segments <= most)


@given(st.text("ab", max_size=700))
def test_as_many_letters_fit_as_are_said_to_be_left(text: str) -> None:
    most = segments.measure(text).segments
    left = segments.room(text, most)

    assert segments.measure(text + "a" * left).segments == most
    assert segments.measure(text + "a" * (left + 1)).segments == most + 1
