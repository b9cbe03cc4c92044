"""Find in a text what is never said to a client."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from aftercare.core.forbidden import PHRASES, SHORTENERS, Unless

_REACH = 160  # letters before a phrase in which an excuse may stand
_CONDITIONAL = re.compile(r"\b(?:if|when|si|cuando)\b")


@dataclass(frozen=True, slots=True)
class Finding:
    """One phrase found: the indexes of its beginning and end in the text, the words, why not, and the cure."""

    start: int
    end: int
    words: str
    why: str
    cure: str


def find(text: str, occasion: str = "", seams: Sequence[int] = ()) -> Iterator[Finding]:
    """Find what is never said in a text for the occasion (none named: what is said nowhere).

    ``seams`` are indexes in the text that no excuse may reach across: where a wording's ``if`` begins or ends, the
    "not" before "normal" may be gone when it is sent.
    """
    folded = _fold(text)
    for phrase in PHRASES:
        if phrase.occasions and occasion not in phrase.occasions:
            continue
        for match in phrase.pattern.finditer(folded.letters):
            if not _excused(phrase.unless, folded, match.start(), seams):
                start, end = folded.places[match.start()], folded.places[match.end() - 1] + 1
                yield Finding(start, end, text[start:end], phrase.why, phrase.cure)


def find_shorteners(text: str) -> Iterator[Finding]:
    """Find links to link shorteners, which carriers block and readers cannot judge."""
    for match in SHORTENERS.finditer(text):
        yield Finding(
            match.start(),
            match.end(),
            match[0],
            "Carriers block links that hide where they lead.",
            "Write the whole address of your own page.",
        )


@dataclass(frozen=True, slots=True)
class _Folded:
    """A text small, without accents, invisible characters and runs of space; each letter's index in the text; and the
    indexes in ``letters`` where a new line began."""

    letters: str
    places: list[int]
    lines: list[int]


def _excused(unless: Unless, folded: _Folded, start: int, seams: Sequence[int]) -> bool:
    sentence = max(0, *(folded.letters.rfind(mark, 0, start) + 1 for mark in ".!?;:"))
    sentence = max(sentence, start - _REACH, *(line for line in folded.lines if line <= start))
    excuse = unless.value.search(folded.letters, sentence, start)
    if excuse is None:
        return False
    if unless is Unless.NO_BEFORE and _CONDITIONAL.search(folded.letters, sentence, excuse.start()):
        return False
    return not any(folded.places[excuse.start()] < seam <= folded.places[start] for seam in seams)


def _fold(text: str) -> _Folded:
    letters: list[str] = []
    places: list[int] = []
    lines: list[int] = []
    for index, character in enumerate(text):
        for letter in unicodedata.normalize("NFKD", character).lower():
            if letter.isspace():
                if letter == "\n":
                    lines.append(len(letters) + (not letters or letters[-1] != " "))
                if letters and letters[-1] == " ":
                    continue
                letter = " "
            elif letter in "\u2019\u2018\u02bc`":
                letter = "'"
            elif unicodedata.combining(letter) or unicodedata.category(letter) == "Cf":
                continue
            letters.append(letter)
            places.append(index)
    return _Folded("".join(letters), places, lines)
