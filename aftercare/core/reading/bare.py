"""Replies that mean nothing by themselves: a bare yes, no or number, a photo, pictures alone."""

from __future__ import annotations

import re
from dataclasses import replace

from aftercare.core.reading import pictures
from aftercare.core.reading.language import Told
from aftercare.core.reading.tokens import WORD, Token, listed
from aftercare.core.reading.values import Finding, Reading, Sign, Topic, Urgency
from aftercare.core.reading.words import english_commands, spanish_topics


def _words(name: str) -> frozenset[str]:
    text = english_commands.COMMANDS[name] + "," + spanish_topics.TOPICS[name]
    return frozenset(" ".join(phrase.split()) for phrase in text.split(",") if phrase.strip())


_YES, _NO, _POLITE, _PHOTO = (_words(name) for name in ("yes", "no", "please", "photo"))
_ASKS_SIGNS = re.compile(
    r"redness|swell|itch|burn|sting|pain|hurt|sore|discharge|irritat|reaction|water|tearing|crust|blur|puff|poking|"
    r"discomfort|uncomfort|tender|gritty|(?:any|some) (?:problems?|trouble|issues?)|bother|symptom|"
    r"rojez|enrojec|hinch|pic(?:or|az)|comez|ardor|dolor|molestia|lagrimeo",
    re.IGNORECASE,
)
_ASKS_VISIT = re.compile(
    r"\bbook|\bslot\b|appointment|\bconfirm|in-?fill|\bfill\b|come in|\bcita\b|agend|relleno", re.IGNORECASE
)
_ASKS_LIKING = re.compile(
    r"happy with|(?:like|love|pleased with|enjoying|feel about) (?:your|how|the)|satisfied|content[ao]", re.IGNORECASE
)
_CHOICE = re.compile(r"\b(\d)\s*(?:for|if|means|=|-|:|para|si)\s*([^,.;\n]+)", re.IGNORECASE)
_NONE_OF_IT = re.compile(
    r"\b(?:no|none|not|without|fine|good|well|perfect|happy|nada|sin|bien|ningun[ao]?)\b", re.IGNORECASE
)
_NUMBER = re.compile(r"\d+(?:[.,/]\d+)?(?: \d+)*")
_LONGEST = 6


def read(tokens: list[Token], question: str, told: Told) -> Reading | None:
    """Return the reading of a reply that has no words of its own to read, or None."""
    words = [token.word for token in tokens if token.kind == WORD]
    if not words:
        return _without_words(tokens)
    if len(words) > _LONGEST:
        return None
    said = " ".join(words)
    core = " ".join(word for word in words if word not in _POLITE or word in _YES or word in _NO)
    if _NUMBER.fullmatch(core) and core not in ("10/10", "100", "11/10", "100/10", "5/5"):
        if (chosen := dict(_CHOICE.findall(question)).get(core)) is not None:
            return _chosen(tokens, chosen, told)
        return _simple(tokens, Topic.OTHER, told, unread=True)
    if core in _NO or said in _NO:
        if _ASKS_SIGNS.search(question):
            return _simple(tokens, Topic.FINE, told)
        if (about := _asked_about(question, yes=False)) is not None:
            return _simple(tokens, about, told)
        return _simple(tokens, Topic.OTHER, told, unread=True)
    if core in _YES or said in _YES:
        if _ASKS_SIGNS.search(question):
            return _simple(tokens, Topic.IRRITATION, told, Urgency.SAME_DAY)
        if (about := _asked_about(question, yes=True)) is not None:
            return _simple(tokens, about, told)
        return _simple(tokens, Topic.OTHER, told, unread=True)
    if (
        words[0] in _PHOTO
        and len(words) <= 3
        or len(words) <= 3
        and words[-1] in ("photo", "image", "attachment", "foto")
    ):
        return _simple(tokens, Topic.OTHER, told, unread=True)
    if len(said) == 1:
        return _simple(tokens, Topic.OTHER, told, unread=True)
    return None


def _chosen(tokens: list[Token], chosen: str, told: Told) -> Reading:
    """Return what the number stands for in the question: "2 for some redness"."""
    if _NONE_OF_IT.search(chosen):
        return _simple(tokens, Topic.FINE, told)
    if _ASKS_SIGNS.search(chosen):
        return _simple(tokens, Topic.IRRITATION, told, Urgency.SAME_DAY)
    return _simple(tokens, Topic.OTHER, told, unread=True)


def _asked_about(question: str, *, yes: bool) -> Topic | None:
    """Return what a bare answer is about where the quoted question leaves no doubt."""
    if _ASKS_LIKING.search(question):
        return Topic.FINE if yes else Topic.COMPLAINT
    return Topic.BOOKING if _ASKS_VISIT.search(question) else None


_SAYS_YES = listed("yes yeah yep yup si sip affirmative affirmativo yess ja oui sim")
_SAYS_NO = listed("no nope nah none nothing neither not nada ninguna ninguno nein non nao")
_NUMBERED = re.compile(
    r"(?:^|\D)[1-9]\s*[).:-]?\s*(?:yes|yeah|yep|si|sí)\b|\b(?:yes|yeah|sí|si)\b.{0,12}\b(?:number|question|numero|last|second)\b",
    re.IGNORECASE,
)


def answered(tokens: list[Token], question: str, reading: Reading, *, over: bool) -> Reading | None:
    """Return the reading of words that answer a quoted question, or several numbered ones, without naming a sign."""
    if reading.urgency is not Urgency.NONE or reading.negated or Topic.STOP in reading.about:
        return None
    words = [token.word for token in tokens if token.kind == WORD]
    text = " ".join(words)
    asks = bool(_ASKS_SIGNS.search(question))
    yes = any(word in _SAYS_YES for word in words[:8]) if len(words) <= 14 else words[0] in _SAYS_YES
    if (
        _NUMBERED.search(text)
        and any(word in _SAYS_YES for word in words)
        and (asks or any(word.isdigit() for word in words))
    ):
        return _simple_like(reading, over)
    if asks and yes and Topic.FINE not in reading.about and Topic.BOOKING not in reading.about:
        return _simple_like(reading, over)
    if asks and words[0] in _SAYS_NO and len(words) <= _LONGEST and reading.about == (Topic.OTHER,):
        return replace(reading, about=(Topic.FINE,), unread=False)
    if asks and over and reading.about == (Topic.OTHER,):
        return _simple_like(reading, over)  # "day one only, it has passed"
    if asks and "affirmative" in words:
        return _simple_like(reading, over)
    return None


def _simple_like(reading: Reading, over: bool) -> Reading:
    about = tuple(
        topic for topic in Topic if topic is Topic.IRRITATION or topic in reading.about and topic is Topic.QUESTION
    )
    return Reading(
        Urgency.WATCH if over else Urgency.SAME_DAY, about, (), (), reading.side, reading.language, False, reading.why
    )


def _without_words(tokens: list[Token]) -> Reading:
    shown = pictures.signs_of(tokens)
    if shown:
        found = {sign for sign, _ in shown}
        why = tuple(Finding(str(sign), token.word, token.start, token.end) for sign, token in shown)
        signs = tuple(sign for sign in Sign if sign in found)
        return Reading(Urgency.SAME_DAY, (Topic.IRRITATION,), signs, (), None, "und", False, why)
    if pictures.is_praise(tokens):
        return Reading(Urgency.NONE, (Topic.FINE,), (), (), None, "und", False, ())
    return Reading(Urgency.NONE, (Topic.OTHER,), (), (), None, "und", True, ())


def _simple(
    tokens: list[Token], topic: Topic, told: Told, urgency: Urgency = Urgency.NONE, *, unread: bool = False
) -> Reading:
    return Reading(urgency, (topic,), (), (), None, told.code, unread, ())
