"""What a quoted text asks: about signs, about her being well, her liking, a visit; in one question or in several."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import Enum, auto
from functools import lru_cache

from aftercare.core.reading.tokens import fold
from aftercare.core.reading.words import asked as asked_words


class Asks(Enum):
    """What "yes" means to a question."""

    SIGNS = auto()  # yes: a sign
    ALARMS = auto()  # yes: an emergency, and nothing milder
    WELL = auto()  # yes: all is well
    GONE = auto()  # yes: a sign is over
    EITHER = auto()  # "fine, or sore?": yes and no say nothing
    STATE = auto()  # "how are your eyes?"
    LIKING = auto()
    VISIT = auto()
    RETENTION = auto()
    MESSAGES = auto()  # "would you like our messages?": no is a stop
    WARNING = auto()  # asks nothing, and tells of signs: "if you notice swelling, call us"
    NOTHING = auto()


@dataclass(frozen=True, slots=True)
class Item:
    """One question: the number or letter before it, or "", and what it asks."""

    label: str
    asks: Asks


_OF_THE_FACE = re.compile(asked_words.TROUBLE + r"|\b(?:swell\w*|swollen|hinch\w*|tingl\w*)")
_SIGNS = re.compile(asked_words.SIGNS)
_ALARMS = re.compile(asked_words.ALARMS)
_WELL = re.compile(asked_words.WELL)
_FREE = re.compile(asked_words.FREE)
_GONE = re.compile(asked_words.GONE)
_STILL = re.compile(asked_words.STILL)
_STATE = re.compile(asked_words.STATE)
_VISIT = re.compile(asked_words.VISIT)
_WISHED = re.compile(asked_words.WISHED)
_LIKING = re.compile(asked_words.LIKING)
_RETENTION = re.compile(asked_words.RETENTION)
_HOLDING = re.compile(asked_words.HOLDING)
_MESSAGES = re.compile(asked_words.MESSAGES)
_IF = re.compile(asked_words.IF)
_OR = re.compile(asked_words.OR)
_FACE = re.compile(asked_words.FACE)
_TROUBLE = re.compile(asked_words.TROUBLE)
_SENTENCE = re.compile(asked_words.SENTENCE)
_QUESTION = re.compile(asked_words.QUESTION)
_CHOICE = re.compile(asked_words.CHOICE)
_LABEL = re.compile(asked_words.LABEL, re.MULTILINE)
_QUOTE = re.compile(asked_words.QUOTE, re.MULTILINE)
_HEAD = re.compile(asked_words.HEAD, re.MULTILINE)


@lru_cache(maxsize=256)
def asked(quoted: str) -> tuple[Item, ...]:
    """Return what a quoted text asks, in its order; a studio quotes the same few texts again and again."""
    text = _HEAD.sub("\n", _QUOTE.sub("", fold(quoted)[0]))
    parts = _numbered(text)
    if len(parts) > 1:
        return tuple(Item(label, _kind(part, numbered=True)) for label, part in parts)
    found = [Item("", _kind(one.group(), numbered=False)) for one in _SENTENCE.finditer(_unwrapped(text))]
    return tuple(item for item in found if item.asks is not Asks.NOTHING)


def choices(quoted: str) -> dict[str, str]:
    """Return what each number stands for: "reply 1 for no trouble, 2 for redness"."""
    return dict(_CHOICE.findall(fold(quoted)[0]))


def names_signs(text: str) -> bool:
    """Say whether a text speaks of signs."""
    return _SIGNS.search(fold(text)[0]) is not None


def _unwrapped(text: str) -> str:
    """Return the text without the breaks that a mail program puts within a sentence."""
    return re.sub(r"(?<=[a-z,])\n(?=[a-z])", " ", text)


def _name(label: re.Match[str]) -> str:
    return next(group for group in label.groups() if group)


def _numbered(text: str) -> list[tuple[str, str]]:
    """Return the numbered or lettered parts: ("1", "any redness?")."""
    labels = list(_LABEL.finditer(text))
    while labels and (_name(labels[0])) not in ("1", "a"):
        labels.pop(0)
    ends = [*(label.start() for label in labels[1:]), len(text)][: len(labels)]
    parts: list[tuple[str, str]] = []
    for label, end in zip(labels, ends, strict=True):
        name = _name(label)
        wanted = chr(ord(parts[-1][0]) + 1) if parts else name
        if name == wanted:
            parts.append((name, text[label.end() : end]))
        elif parts:
            parts[-1] = (parts[-1][0], parts[-1][1] + text[label.start() : end])
    return parts


def _kind(sentence: str, *, numbered: bool) -> Asks:
    sentence = sentence.strip()
    if not sentence:
        return Asks.NOTHING
    asks = numbered or sentence.endswith("?") or bool(_QUESTION.match(sentence))
    warns = _IF.search(sentence) is not None
    if warns and not sentence.endswith("?") or not asks:
        return _told(sentence)
    if _LIKING.search(sentence) or _HOLDING.search(sentence):
        return Asks.LIKING
    if _SIGNS.search(sentence) or _ALARMS.search(sentence):
        return _of_signs(sentence)
    if _MESSAGES.search(sentence):
        return Asks.MESSAGES
    if _RETENTION.search(sentence):
        return Asks.RETENTION
    if _WELL.search(sentence):
        return Asks.WELL
    if _VISIT.search(sentence) and not _STATE.search(sentence):
        return Asks.VISIT
    if _GONE.search(sentence):
        return Asks.SIGNS if _STILL.search(sentence) else Asks.GONE
    if _STATE.search(sentence):
        return Asks.STATE
    if _STILL.search(sentence):
        return Asks.SIGNS  # "last week they itched. Are they still?"
    return Asks.VISIT if _VISIT.search(sentence) or _WISHED.match(sentence) else Asks.NOTHING


def _of_signs(sentence: str) -> Asks:
    if _FREE.search(sentence):
        return Asks.WELL
    if _WELL.search(sentence):
        return Asks.EITHER if _OR.search(sentence) else Asks.WELL
    if _GONE.search(sentence) and not _STILL.search(sentence):
        return Asks.GONE
    if not _ALARMS.search(sentence):
        return Asks.SIGNS
    trouble = _OF_THE_FACE if _FACE.search(sentence) else _TROUBLE
    return Asks.SIGNS if _SIGNS.search(trouble.sub(" ", sentence)) else Asks.ALARMS


def _told(sentence: str) -> Asks:
    """Return what a sentence is that puts no question: "please tell us if you have itching" is nearly one."""
    if _SIGNS.search(sentence):
        return Asks.WARNING
    return Asks.VISIT if _VISIT.search(sentence) else Asks.NOTHING
