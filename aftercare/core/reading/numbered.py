"""Answers to several questions at once: "1 no, 2 no, 3 yes", "yes to the second, no to the rest", "no no yes"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from aftercare.core.reading.answers import Says, marks_in, phrases_in, said_by
from aftercare.core.reading.questions import Item
from aftercare.core.reading.tokens import COMMA, STOP, WORD, Token, listed
from aftercare.core.reading.words.answers import LABELS, ORDERED

REST = 0
LAST = -1
_ORDER = {word: int(number) for word, _, number in (pair.partition("=") for pair in ORDERED.split())}
_BEFORE = frozenset(LABELS["number"].replace(",", " ").split())
_NOT_ORDER = listed("""
    day night evening hour morning week time days nights hours few couple weekend month year dia noche semana vez hora
    dias horas noches semanas mes tarde
""")
_JOINED = re.compile(r"(?:q|p)?([1-9])([a-z]*)")
_SEVERAL = re.compile(r"[1-9](?:[,/.:&+][1-9])+")
_ONES = re.compile(r"(?:yes|yep|yeah|y|no|nope|nah|n|si|sip|and|or|y)")
_EXCEPT = listed("except apart other bar save aside besides but excepto menos salvo")
_HIGHEST = 9
_LONGEST = 4  # digits, zeros ahead among them: Python refuses to make a number of thousands


@dataclass(frozen=True, slots=True)
class _Label:
    """The number of a question, and its tokens from ``start`` up to ``end``."""

    number: int
    start: int
    end: int


def answers(tokens: Sequence[Token], items: Sequence[Item]) -> dict[int, Says] | None:
    """Return the answer to each question by its number; None where she does not answer by numbers."""
    spread = _spread(tokens)
    labels = _labels(spread, items)
    if not labels:
        return one_by_one(spread, items)
    segments = _segments(spread, labels)
    if (excepted := _excepted(segments)) is not None:
        return {
            **dict.fromkeys(range(1, len(items) + 1), Says.NO),
            **dict.fromkeys((label.number for label in labels), excepted),
        }
    said = [_said(segment) for segment in segments]
    if any(one is None and words for one, words in zip(said, map(_has_words, segments), strict=True)):
        return None
    if not items and not any(said):
        return None  # "1, 2"
    return _told(labels, said, len(items))


def _told(labels: list[_Label], said: list[Says | None], count: int) -> dict[int, Says]:
    """Return what is said of each number; ``said`` has what stands before the first label, and after each."""
    leads = said[0] is not None and said[-1] is None
    found: dict[int, Says] = {}
    for place, label in enumerate(labels):
        before = next((one for one in reversed(said[: place + 1]) if one is not None), None)
        after = next((one for one in said[place + 1 :] if one is not None), None)
        first, then = (before, after) if leads else (after, before)
        answer = first or then or Says.YES  # "just 2"
        found[label.number if label.number != LAST else max(count, 1)] = answer
    rest = found.pop(REST, None)
    for number in range(1, count + 1):
        if rest is not None:
            found.setdefault(number, rest)
    if rest is not None and not count:
        found[REST] = rest
    return found


def _excepted(segments: list[list[Token]]) -> Says | None:
    """No except 2; none apart from the last: what is left out of a no is a yes."""
    before, after = segments[0], [token for segment in segments[1:] for token in segment if _has_words([token])]
    words = [token for token in before if token.kind == WORD]
    place = next((k for k, token in enumerate(words) if token.word in _EXCEPT), 0)
    if not place or after or _said(words[:place]) is not Says.NO:
        return None
    return Says.YES


def _said(segment: list[Token]) -> Says | None:
    marks = phrases_in(segment)
    return said_by(segment, marks) if marks else None


def _has_words(segment: list[Token]) -> bool:
    return any(
        token.kind == WORD
        and token.word not in _BEFORE
        and token.written not in ("and", "or", "is", "are", "y", "only", "just", "solo")
        for token in segment
    )


def _spread(tokens: Sequence[Token]) -> list[Token]:
    """Return the tokens with "2yes", "q2" and "1,2" as numbers and words apart."""
    found: list[Token] = []
    for token in tokens:
        if _SEVERAL.fullmatch(token.word):
            found += [replace(token, word=one) for one in token.word if one.isdigit()]
        elif token.kind == WORD and (joined := _JOINED.fullmatch(token.word)) and (joined[2] or len(token.word) > 1):
            if joined[2] in ("st", "nd", "rd", "th", "am", "pm", "x"):
                found.append(token)
                continue
            found.append(replace(token, word=joined[1]))
            if joined[2]:
                found.append(replace(token, word=joined[2], written=joined[2]))
        else:
            found.append(token)
    return found


def _labels(tokens: list[Token], items: Sequence[Item]) -> list[_Label]:
    letters = bool(items) and items[0].label.isalpha()
    marks = [mark for mark in marks_in(tokens) if mark.end - mark.start > 1 or mark.name == "label"]
    rest = {mark.start: mark for mark in marks if mark.name == "label"}
    inside = {place for mark in marks if mark.name != "label" for place in range(mark.start, mark.end)}
    found: list[_Label] = []
    place = 0
    while place < len(tokens):
        number = _number(tokens, place, letters=letters, ordered=len(items) > 1)
        if place in rest:
            end = rest[place].end
            found.append(_Label(REST, place, end))
            place = end
            continue
        if number is None or place in inside:
            place += 1
            continue
        start = place
        while start and tokens[start - 1].word in _BEFORE and (not found or start > found[-1].end):
            start -= 1
        end = place + 1
        while end < len(tokens) and tokens[end].word in ("one", "question", "pregunta", ")", ".", ":", "-", "="):
            end += 1
        found.append(_Label(number, start, end))
        place = end
    if found and all(label.number == REST for label in found):
        return []
    if len(found) == 1 and not items and not _is_named(tokens, found[0]):
        return []
    return found


def _is_named(tokens: list[Token], label: _Label) -> bool:
    """Say whether it is called a question: "number 3 is a yes", "Q2 yes", "2) sí"."""
    words = {token.word for token in tokens[label.start : label.end]}
    return bool(words & {"number", "question", "pregunta", "numero", ")", ":", "."}) or tokens[
        label.end - 1
    ].written.startswith(("q", "p"))


def _number(tokens: list[Token], place: int, *, letters: bool, ordered: bool) -> int | None:
    token = tokens[place]
    following = tokens[place + 1] if place + 1 < len(tokens) else None
    if token.kind != WORD:
        return None
    if token.word.isdigit() and len(token.word) <= _LONGEST and 1 <= int(token.word) <= _HIGHEST:
        return int(token.word)
    if letters and len(token.written) == 1 and "a" <= token.written <= "f":
        if following is None or following.kind in (COMMA, STOP) or token.written not in "a":
            return ord(token.written) - ord("a") + 1
        return None
    if token.word in _ORDER and ordered and (following is None or following.word not in _NOT_ORDER):
        return _ORDER[token.word]
    return None


def _segments(tokens: list[Token], labels: list[_Label]) -> list[list[Token]]:
    starts = [0, *(label.end for label in labels)]
    ends = [*(label.start for label in labels), len(tokens)]
    return [tokens[start:end] for start, end in zip(starts, ends, strict=True)]


def one_by_one(tokens: Sequence[Token], items: Sequence[Item]) -> dict[int, Says] | None:
    """Return "no no yes", "n, n, y" and "nope yes and nope" by the order of the questions."""
    words = [token for token in tokens if token.kind == WORD and token.written not in ("and", "or")]
    if len(words) > len(items):
        words = [token for token in words if token.written != "y"]  # "no, no y sí"
    if len(items) < 2 or len(words) != len(items) or not all(_ONES.fullmatch(token.written) for token in words):
        return None
    said = [Says.YES if token.written[0] in "ys" else Says.NO for token in words]
    return dict(enumerate(said, start=1))
