"""What an SMS text costs: its alphabet, its units, its segments, and the characters that made it dear.

Source: 3GPP TS 23.038 6.2.1 (the default alphabet) and 6.2.1.1 (its extension table), 3GPP TS 23.040 9.2.3.24.1 (the
header of a concatenated message, 8-bit reference: 6 of 140 octets). The alphabet's bytes come from the gsm0338 package.
The national language tables of 23.038 are left out: no carrier may be relied on to honor them.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from functools import lru_cache
from typing import Final, Literal, NamedTuple

from gsm0338 import Codec

Encoding = Literal["gsm7", "ucs2"]

# Septets of GSM-7, UTF-16 units of UCS-2: in a text of one segment, and in each segment of a longer one.
SINGLE: Final[dict[Encoding, int]] = {"gsm7": 160, "ucs2": 70}
PART: Final[dict[Encoding, int]] = {"gsm7": 153, "ucs2": 67}

_ESCAPE = 0x1B
_EXTENDED = (0x0A, 0x14, 0x28, 0x29, 0x2F, 0x3C, 0x3D, 0x3E, 0x40, 0x65)
_codec = Codec()

# Escape itself is no character: a phone would read it together with the letter after it, so that "ESC e" shows "€".
BASIC: Final[str] = "".join(_codec.decode(bytes([code]))[0] for code in range(128) if code != _ESCAPE)
EXTENSION: Final[str] = "".join(_codec.decode(bytes([_ESCAPE, code]))[0] for code in _EXTENDED)
_ALPHABET = frozenset(BASIC + EXTENSION)
_EXTENSION_CHARACTER = re.compile(f"[{re.escape(EXTENSION)}]")

# A letter with the marks that follow it is one character to its reader ("n" and U+0303 are an ñ, which costs nothing).
_FOREIGN = re.compile(f".[\u0300-\u036f]+|[^{re.escape(BASIC + EXTENSION)}]", re.DOTALL)

# Signs of typesetting, and letters that no accent can be taken from. Fractions, currencies and symbols are left alone:
# their nearest spelling says something else ("2½" would become "21/2").
_TYPED: Final[dict[str, str]] = {
    **dict.fromkeys("‘’‚‛′`´ʼ‹›", "'"),
    **dict.fromkeys("“”„‟″«»", '"'),
    **dict.fromkeys("‐‑‒–—―−•‣·", "-"),
    **dict.fromkeys(("\t", "\u00a0", *map(chr, range(0x2000, 0x200B)), "\u202f", "\u205f", "\u3000"), " "),
    **dict.fromkeys("\x0b\x85\u2028\u2029", "\n"),
    # Invisible: soft hyphen, zero-width spaces and joiners, direction marks, byte order mark.
    **dict.fromkeys("\u00ad\u200b\u200c\u200d\u200e\u200f\u2060\ufeff", ""),
    "…": "...",
    "×": "x",
    "ﬁ": "fi",
    "ﬂ": "fl",
    "Œ": "OE",
    "œ": "oe",
    "ẞ": "SS",
    "Ł": "L",
    "ł": "l",
    "Đ": "D",
    "đ": "d",
    "ı": "i",
}


class Dear(NamedTuple):
    """One character (with the marks that belong to it) that is not in GSM-7, and its place in the text from 0.

    `cheaper` is the GSM-7 spelling that would do as well ("" for an invisible character), or None where there is none.
    """

    character: str
    place: int
    cheaper: str | None


@dataclass(frozen=True, slots=True)
class Measure:
    """What a text costs as an SMS.

    `units` are septets (an extension character counts two) or UTF-16 units; `segments` is what a carrier bills, at
    least 1. `dear` names what forced UCS-2, and is empty for a GSM-7 text.
    """

    encoding: Encoding
    units: int
    segments: int
    dear: tuple[Dear, ...]


def measure(text: str) -> Measure:
    """Measure any text. An empty one is a message all the same: GSM-7, 0 units, 1 segment."""
    if _ALPHABET.issuperset(text):
        units = len(text) + len(_EXTENSION_CHARACTER.findall(text))
        # Where every character is one septet none can straddle a border, and dividing is exact.
        plain = units == len(text) > SINGLE["gsm7"]
        return Measure("gsm7", units, -(-units // PART["gsm7"]) if plain else len(_split_septets(text)), ())
    dear = tuple(
        Dear(found[0], found.start(), _spelling(found[0]))
        for found in _FOREIGN.finditer(text)
        if not _ALPHABET.issuperset(found[0])
    )
    return Measure("ucs2", len(_utf16(text)) // 2, len(_split_utf16(text)), dear)


def split(text: str) -> tuple[str, ...]:
    """Cut a text into the segments that leave; joined they are the text again.

    Neither the two septets of an extension character nor the two halves of a surrogate pair are parted, so a text can
    take more segments than its units divided by the size of one. A lone surrogate is kept as it is.
    """
    if _ALPHABET.issuperset(text):
        return _split_septets(text)
    return _split_utf16(text)


def room(text: str, most: int) -> int:
    """Return how many units more fit into `most` segments; below 0: how many are too many.

    >>> room("x" * 304, 2), room("x" * 310, 2), room("x" * 150, 1)
    (2, -4, 10)
    """
    encoding, parts = measure(text).encoding, split(text)
    if most == 1:
        return SINGLE[encoding] - _units(text, encoding)
    if len(parts) > most:
        return -_units("".join(parts[most:]), encoding)
    return PART[encoding] * (most - len(parts) + 1) - _units(parts[-1], encoding)


def _units(text: str, encoding: Encoding) -> int:
    return len(text) + len(_EXTENSION_CHARACTER.findall(text)) if encoding == "gsm7" else len(_utf16(text)) // 2


def cheaper(text: str) -> str:
    """Spell a text in GSM-7 where only typesetting and accents stand in the way: "…" as "...", "á" as "a".

    Returned unchanged where it costs nothing as it is, and where it would still be UCS-2 afterwards.
    """
    if _ALPHABET.issuperset(text):
        return text
    spelled = _FOREIGN.sub(_respell, text)
    return spelled if _ALPHABET.issuperset(spelled) else text


def plainest(text: str) -> str:
    """Spell a text in GSM-7 whatever it takes: what no spelling stands for is left out, with the spaces around it."""
    spelled = cheaper(text)
    if _ALPHABET.issuperset(spelled):
        return spelled
    bare = _FOREIGN.sub(lambda found: _spelling(found[0]) or "", spelled)
    return re.sub(r" {2,}", " ", re.sub(r" +(?=[\n.,;:!?]|$)", "", bare))


def _split_septets(text: str) -> tuple[str, ...]:
    extended = [place.start() for place in _EXTENSION_CHARACTER.finditer(text)]
    if len(text) + len(extended) <= SINGLE["gsm7"]:
        return (text,)
    parts, start, room = [], 0, PART["gsm7"]
    for place, character in enumerate(text):
        cost = 2 if character in EXTENSION else 1
        if cost > room:
            parts.append(text[start:place])
            start, room = place, PART["gsm7"]
        room -= cost
    return (*parts, text[start:])


def _split_utf16(text: str) -> tuple[str, ...]:
    octets = _utf16(text)
    if len(octets) <= 2 * SINGLE["ucs2"]:
        return (text,)
    parts, start = [], 0
    while start < len(octets):
        end = start + 2 * PART["ucs2"]
        if _inside_a_pair(octets, end):
            end -= 2
        parts.append(octets[start:end].decode("utf-16-be", "surrogatepass"))
        start = end
    return tuple(parts)


def _inside_a_pair(octets: bytes, place: int) -> bool:
    """Tell whether cutting before the octet at `place` would part a high surrogate (D8-DB) from its low one (DC-DF)."""
    return place < len(octets) and 0xDC <= octets[place] <= 0xDF and 0xD8 <= octets[place - 2] <= 0xDB


def _utf16(text: str) -> bytes:
    return text.encode("utf-16-be", "surrogatepass")


@lru_cache(maxsize=4096)
def _spelling(character: str) -> str | None:
    """Give the GSM-7 spelling of one character with its marks, or None."""
    composed = unicodedata.normalize("NFC", character)
    if _ALPHABET.issuperset(composed):
        return composed
    if character in _TYPED:
        return _TYPED[character]
    bare = "".join(part for part in unicodedata.normalize("NFD", composed) if not unicodedata.combining(part))
    return bare if bare and _ALPHABET.issuperset(bare) else _TYPED.get(bare)


def _respell(found: re.Match[str]) -> str:
    spelling = _spelling(found[0])
    return found[0] if spelling is None else spelling
