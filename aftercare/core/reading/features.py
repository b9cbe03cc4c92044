"""What the second opinion looks at: pieces of the folded words, hashed into numbered features."""

from __future__ import annotations

import re
from functools import lru_cache
from zlib import crc32

from aftercare.core.reading.tokens import fold

SIZE = 1 << 14  # features; a power of two, so that a mask takes the remainder
_MASK = SIZE - 1
_WORD = re.compile(r"[^\W_]+(?:'[^\W_]+)*|[^\w\s]")
_PIECES = (3, 4, 5)
_LONGEST = 1_500  # characters; what is longer tells no more


def of(text: str) -> list[int]:
    """Return the numbers of the features of a text, each once, in order."""
    found: set[int] = set()
    before = ""
    for word in _WORD.findall(fold(text[:_LONGEST])[0]):
        found |= _of_word(word)
        found.add(crc32(f"{before} {word}".encode()) & _MASK)
        before = word
    return sorted(found)


@lru_cache(maxsize=20_000)
def _of_word(word: str) -> frozenset[int]:
    framed = f"<{word.replace(chr(39), '')}>"
    pieces = [framed[start : start + size] for size in _PIECES for start in range(len(framed) - size + 1)]
    return frozenset(crc32(piece.encode()) & _MASK for piece in ("=" + framed, *pieces))
