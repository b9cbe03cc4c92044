"""What the second opinion looks at: pieces of the folded words, and the classes of words, as numbered features."""

from __future__ import annotations

import itertools
import re
from collections.abc import Iterable
from functools import lru_cache
from zlib import crc32

from aftercare.core.reading import lexicon
from aftercare.core.reading.tokens import fold

SIZE = 1 << 16  # features; a power of two, so that a mask takes the remainder
_MASK = SIZE - 1
_WORD = re.compile(r"[^\W_]+(?:'[^\W_]+)*|[^\w\s]")
_PIECES = (3, 4, 5)
_LONGEST = 1_500  # characters; what is longer tells no more
_MOST = 300  # tokens, likewise


def of(text: str, words: Iterable[str] = ()) -> tuple[list[int], list[int]]:
    """Return the features of a text, and those of its ``words`` as the lexicon spells them; each once, in order."""
    found: set[int] = set()
    before = ""
    for word in _WORD.findall(fold(text[:_LONGEST])[0]):
        found |= _of_word(word)
        found.add(crc32(f"{before} {word}".encode()) & _MASK)
        before = word
    return sorted(found), _of_kinds([_kinds(word) for word in itertools.islice(words, _MOST)])


def _of_kinds(kinds: list[tuple[str, ...]]) -> list[int]:
    """Number each kind of word, and each two that stand together: "<cannot> <air>"."""
    found: set[int] = set()
    for here in kinds:
        found.update(_number(kind) for kind in here)
    for here, after in itertools.pairwise(kinds):
        found.update(_pair(first, then) for first in here for then in after)
    return sorted(found)


@lru_cache(maxsize=20_000)
def _kinds(word: str) -> tuple[str, ...]:
    """Return the classes that a word belongs to, or the word where it belongs to none."""
    english, spanish = lexicon.ENGLISH.classes_of(word), lexicon.SPANISH.classes_of(word)
    return (*english, *(f"es{one}" for one in spanish)) or (word,)


@lru_cache(maxsize=20_000)
def _number(kind: str) -> int:
    return crc32(f"kind {kind}".encode()) & _MASK


@lru_cache(maxsize=200_000)
def _pair(first: str, then: str) -> int:
    return crc32(f"kinds {first} {then}".encode()) & _MASK


@lru_cache(maxsize=20_000)
def _of_word(word: str) -> frozenset[int]:
    framed = f"<{word.replace(chr(39), '')}>"
    pieces = [framed[start : start + size] for size in _PIECES for start in range(len(framed) - size + 1)]
    return frozenset(crc32(piece.encode()) & _MASK for piece in ("=" + framed, *pieces))
