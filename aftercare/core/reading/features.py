"""What the second opinion looks at: pieces of her words, and what the rules make of them, hashed into numbers."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache
from zlib import crc32

from aftercare.core.reading.findings import Findings
from aftercare.core.reading.page import Page
from aftercare.core.reading.tokens import fold
from aftercare.core.reading.values import Reading

SIZE = 1 << 17  # features; a power of two, so that a mask takes the remainder
_MASK = SIZE - 1
_WORD = re.compile(r"[^\W_]+(?:'[^\W_]+)*|[^\w\s]")
_PIECES = (3, 4, 5)
_LONGEST = 1_500  # characters; what is longer tells no more


def of_words(text: str) -> list[int]:
    """Return the numbers of a text's words, their pieces, and the twos and threes that stand together; each once."""
    words = _WORD.findall(fold(text[:_LONGEST])[0])
    found: set[int] = set()
    one = two = ""
    for word in words:
        found |= _of_word(word)
        found.add(_number(f"{two} {word}"))
        found.add(_number(f"{one} {two} {word}"))
        one, two = two, word
    return sorted(found)


def of_rules(page: Page, found: Findings, reading: Reading) -> list[int]:
    """Return the numbers of what the rules read: urgency, topics, how each sign stands, and the words around signs.

    There a sign is only "a sign": what is learned of "no itching" then holds for each.
    """
    names = {f"urgency:{reading.urgency}", *(f"about:{topic}" for topic in reading.about)}
    for how in ("current", "near", "over", "denied"):
        for mark in getattr(found, how):
            names |= {how, f"{how}:{mark.name}", f"any:{mark.name}"}
    names |= {f"mark:{name}" for name, marks in page.marks.items() if marks}
    names |= set(_around_signs(page))
    return sorted({_number(name) for name in names})


def _around_signs(page: Page) -> Iterator[str]:
    ends = {
        mark.start: (mark.end, "SIGN!" if name.endswith("!") else "SIGN")
        for name, marks in page.marks.items()
        if name.startswith("sign:")
        for mark in marks
    }
    words: list[str] = []
    place = 0
    while place < len(page.tokens):
        end, word = ends.get(place, (place + 1, page.tokens[place].word))
        words.append(word)
        place = max(place + 1, end)
    for last in range(1, len(words)):
        for first in (last - 1, last - 2):
            near = words[max(first, 0) : last + 1]
            if first >= 0 and any(word.startswith("SIGN") for word in near):
                yield "near:" + " ".join(near)


@lru_cache(maxsize=20_000)
def _of_word(word: str) -> frozenset[int]:
    framed = f"<{word.replace(chr(39), '')}>"
    pieces = [framed[start : start + size] for size in _PIECES for start in range(len(framed) - size + 1)]
    return frozenset(_number(piece) for piece in ("=" + framed, *pieces))


def _number(name: str) -> int:
    return crc32(name.encode()) & _MASK
