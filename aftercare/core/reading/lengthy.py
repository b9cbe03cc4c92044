"""A reply several times as long as anybody writes about an eye: read in pieces, and always for a person as well.

Rules that look from each sign over the whole page take time by the square of its length; over pieces, by the length.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace

from aftercare.core.reading import foreign, language, lexicon
from aftercare.core.reading.spelling import known
from aftercare.core.reading.tokens import listed, tokenize
from aftercare.core.reading.values import Finding, Reading, Side, Sign, Topic, Urgency

MOST = 700  # words and marks: about 600 words; the longest of 15,000 replies that people wrote has 117
LONGEST = 6_000  # characters, where nothing parts them into words
_PIECE = 250  # words and marks
_AGAIN = 60  # of them that the next piece has, too: no phrase is cut in two, and what leads to it is seen
_WHOLLY = 4  # pieces from the beginning, and as many from the end; between them, those that may hold an emergency
_LETTERS = 2_000  # characters of a piece that nothing parts
# Each of these can be an emergency by itself, or is a part of one; "red" is, where light hurts, and that stands here.
_OF_ALARMS = listed("""
    sign:hives sign:blood sign:glue_in_eye sign:vision sign:pain sign:agony sign:light sign:headache sign:sickly
    sign:fever
""")
_PART = re.compile(r"\w+(?:['’]\w+)*|[^\w\s]")
_ENDS = frozenset(".!?…\n")
_BESIDE_ALARM = (Topic.FINE, Topic.OTHER)
Piece = tuple[int, int]


def is_lengthy(text: str) -> bool:
    """Say whether a text is longer than what is read as one."""
    return len(text) > LONGEST or sum(1 for _ in _PART.finditer(text)) > MOST


def read(answer: str, read_piece: Callable[[str], Reading]) -> Reading:
    """Return one reading of all pieces, for a person to look at."""
    pieces = list(_pieces(answer))
    readings = []
    for number, (start, end) in enumerate(pieces):
        piece = answer[start:end]
        if _WHOLLY <= number < len(pieces) - _WHOLLY and not _may_alarm(piece):
            continue
        readings.append(shifted(read_piece(piece), start))
    return _joined(readings)


def shifted(reading: Reading, start: int) -> Reading:
    """Return the reading with its spans counted in the whole text."""
    if not start:
        return reading
    return replace(
        reading, why=tuple(replace(one, start=one.start + start, end=one.end + start) for one in reading.why)
    )


def _pieces(answer: str) -> Iterator[Piece]:
    """Cut at the end of a sentence where there is one soon enough; each piece begins within the one before it."""
    places = [place for part in _PART.finditer(answer) for place in range(part.start(), part.end(), _LETTERS)]
    first = 0
    while True:
        last = first + _PIECE
        if last >= len(places):
            yield (places[first] if places else 0), len(answer)
            return
        last = _at_an_end(answer, places, last, last - _AGAIN // 2)
        yield places[first], places[last]
        first = _at_an_end(answer, places, last - _AGAIN // 2, last - _AGAIN)


def _at_an_end(answer: str, places: list[int], latest: int, earliest: int) -> int:
    """Return the last part from ``earliest`` to ``latest`` before which a sentence ends, else ``latest``."""
    for number in range(latest, earliest, -1):
        if _ENDS & set(answer[places[number - 1] : places[number]][:_LETTERS]):
            return number
    return latest


def _may_alarm(piece: str) -> bool:
    tokens = tokenize(piece, known)
    names = {mark.name for tree in (lexicon.ENGLISH, lexicon.SPANISH) for mark in tree.find(tokens)}
    if any(name in _OF_ALARMS or name.startswith("sign:") and name.endswith("!") for name in names):
        return True
    strange = language.tell(tokens, piece).foreign or language.is_strange(tokens)
    return strange and foreign.read(piece, "und").urgency is Urgency.EMERGENCY


def _joined(readings: list[Reading]) -> Reading:
    signs = {sign for reading in readings for sign in reading.signs}
    negated = {sign for reading in readings for sign in reading.negated} - signs
    return Reading(
        urgency=next(urgency for urgency in Urgency if any(reading.urgency is urgency for reading in readings)),
        about=_about({topic for reading in readings for topic in reading.about}),
        signs=tuple(sign for sign in Sign if sign in signs),
        negated=tuple(sign for sign in Sign if sign in negated),
        side=_side({reading.side for reading in readings if reading.side is not None}),
        language=next((reading.language for reading in readings if reading.language != "und"), "und"),
        unread=True,
        why=_why(finding for reading in readings for finding in reading.why),
    )


def _about(topics: set[Topic]) -> tuple[Topic, ...]:
    """Praise on one page of a letter does not stand beside what is wrong on another."""
    if Topic.IRRITATION in topics:
        topics = topics.difference(_BESIDE_ALARM)
    elif len(topics) > 1:
        topics = topics - {Topic.OTHER}
    return tuple(topic for topic in Topic if topic in topics)


def _side(sides: set[Side]) -> Side | None:
    return sides.pop() if len(sides) == 1 else Side.BOTH if sides else None


def _why(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    return tuple(sorted(set(findings), key=lambda one: (one.start, one.end, one.finding)))
