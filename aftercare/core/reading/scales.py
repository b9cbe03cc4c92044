"""Answers that are a number, a letter or a time: "6ish" of ten, "A" of a list, "about three days"."""

from __future__ import annotations

import re

from aftercare.core.reading import judging, questions
from aftercare.core.reading.judging import Judged
from aftercare.core.reading.tokens import fold
from aftercare.core.reading.words import asked as asked_words

_SCALE = re.compile(asked_words.SCALE)
_OF_LIKING = re.compile(asked_words.SCALE_OF_LIKING)
_SINCE = re.compile(asked_words.SINCE)
_TIME = re.compile(asked_words.TIME)
_OVER = re.compile(asked_words.SINCE_OVER)
_NUMBER = re.compile(r"(?<![\d.,])(10|\d)(?:\s?(?:ish|/10|/5|out of (?:10|5)))?(?![\d.,])|\b(zero|cero|nil)\b")
_WAS = re.compile(r"\b(?:was|were|era|estaba|fue)\b.*\b(?:now|ahora|hoy|today)\b")
_ITEM = re.compile(r"(?<![\w/])([1-9]|[A-E])(?:\s?[).:=-]|\s(?:for|if|is|means|para|si))?\s+(?=[^\W\d])")
_PICKED = re.compile(r"(?:(?:only|just|number|numbers|the|solo|numero|la|el|and|y|option|opcion)\s)*([1-9a-e])\b")
_NONE = re.compile(r"\b(?:no|none|not|without|fine|comfortable|normal|clear|calm|good|nada|sin|bien|ningun[ao]?)\b")
_LONGEST = 8  # words
_HIGH, _LOW = 0.7, 0.4  # shares of a scale's top


def read(said: str, question: str) -> Judged | None:
    """Return what a number, letter or time means under its question; ``said`` is folded; None where it is none."""
    if not said or len(said.split()) > _LONGEST:
        return None
    asked = fold(question)[0]
    if _SCALE.search(asked):
        return _on_a_scale(said, asked)
    if _SINCE.search(asked) and questions.names_signs(asked):
        return judging.TODAY if _TIME.search(said) and not _OVER.search(said) else None
    return _of_a_list(said, question)


def _on_a_scale(said: str, asked: str) -> Judged | None:
    numbers = [int(one[1]) if one[1] else 0 for one in _NUMBER.finditer(said)]
    if not numbers:
        return None
    if _OF_LIKING.search(asked):
        top = 10 if "10" in asked else 5
        if numbers[-1] >= _HIGH * top:
            return judging.FINE
        return judging.COMPLAINT if numbers[-1] <= _LOW * top else judging.PERSON
    if not questions.names_signs(asked) or re.search(r"\bcomfortable|\bcomod", asked):
        return judging.PERSON
    if len(numbers) > 1 or numbers[-1] == 0 and _WAS.search(said):
        return judging.WATCH if numbers[-1] == 0 else judging.TODAY
    return judging.FINE if numbers[-1] == 0 else judging.TODAY


def _of_a_list(said: str, question: str) -> Judged | None:
    """Return what "only 3" or "B" stands for in a list of signs that puts no questions of their own."""
    labels = list(_ITEM.finditer(question))
    if len(labels) < 2 or question.count("?") > 1:
        return None
    ends = [*(label.start() for label in labels[1:]), len(question)]
    items = {label[1].lower(): fold(question[label.end() : end])[0] for label, end in zip(labels, ends, strict=True)}
    picked, place = [], 0
    said = re.sub(r"(?<=\d)(?:st|nd|rd|th)\b", "", said)
    while place < len(said) and (one := _PICKED.match(said, place)):
        picked.append(one[1])
        place = one.end() + len(said[one.end() :]) - len(said[one.end() :].lstrip(" ,&+"))
    if not picked or place < len(said) or any(one not in items for one in picked):
        return None
    chosen = [items[one] for one in picked]
    if any(questions.names_signs(item) and not _NONE.search(item) for item in chosen):
        return judging.TODAY
    return judging.FINE if all(_NONE.search(item) for item in chosen) and questions.names_signs(question) else None
