"""What the second opinion looks at: pieces of the folded words, and the classes of words, as numbered features."""

from __future__ import annotations

import itertools
import re
from collections.abc import Iterable
from functools import lru_cache
from zlib import crc32

from aftercare.core.reading import lexicon
from aftercare.core.reading.tokens import fold
from aftercare.core.reading.values import Reading

SIZE = 1 << 16  # features; a power of two, so that a mask takes the remainder
_MASK = SIZE - 1
_WORD = re.compile(r"[^\W_]+(?:'[^\W_]+)*|[^\w\s]")
_PIECES = (3, 4, 5)
_LONGEST = 1_500  # characters; what is longer tells no more
_MOST = 300  # tokens, likewise


def of(text: str, words: Iterable[str] = ()) -> tuple[list[int], list[int]]:
    """Return the features of a text, and those of its ``words`` as the lexicon spells them; each once, in order."""
    found: set[int] = set()
    one = two = ""
    for word in words:
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
    return frozenset(_number(piece) for piece in ("=" + framed, *pieces))


def _number(name: str) -> int:
    return crc32(name.encode()) & _MASK
