"""In which language a reply is written: English, Spanish, both, or another that a person must read."""

from __future__ import annotations

import re
from collections import defaultdict
from dataclasses import dataclass

from aftercare.core.reading import foreign, lexicon
from aftercare.core.reading.tokens import WORD, Token
from aftercare.core.reading.words import others
from aftercare.core.reading.words.common import ENGLISH, SPANISH

_SCRIPTS = {code: re.compile(f"[{letters}]") for code, letters in others.SCRIPTS.items()}
_COMMON = {code: frozenset(words.split()) for code, words in others.COMMON.items()}
_LANGUAGES = {
    word: tuple(code for code, common in _COMMON.items() if word in common)
    for word in frozenset().union(*_COMMON.values())
}
_MARKED = {code: frozenset(letters) for code, letters in others.LETTERS.items()}


_FEW = 4  # words: "ok ahi estare"


@dataclass(frozen=True, slots=True)
class Told:
    """``code`` is "en", "es", another code, or "und"; ``english`` and ``spanish``: which scope words count."""

    code: str
    english: bool
    spanish: bool
    foreign: bool


def tell(tokens: list[Token], text: str) -> Told:
    """Return the language of ``tokens``, of which ``text`` is the written form."""
    words = [token.written.replace("'", "") for token in tokens if token.kind == WORD and token.written[0].isalpha()]
    if not words:
        return Told("und", True, True, False)
    if not text.isascii() and (script := _script_of(text, words)):
        return Told(script, True, True, True)
    english = sum(word in ENGLISH for word in words)
    spanish = sum(word in SPANISH for word in words)
    best, code = _other_language(words, text)
    if best > max(english, spanish) and not _raises_alarm(tokens):
        return Told(code, True, True, True)
    if english and spanish and min(english, spanish) * 4 >= max(english, spanish):
        return Told("en" if english >= spanish else "es", True, True, False)
    if spanish > english:
        return Told("es", False, True, False)
    if english:
        return Told("en", True, len(words) <= _FEW, False)
    if not any(len(word) > 2 and word in lexicon.WORDS for word in words) and foreign.has_alarm(text):
        return Told("und", True, True, True)
    return Told("en", True, True, False)


_KNOWN = lexicon.WORDS | ENGLISH | SPANISH
_STRANGE, _SOME = 0.4, 4  # share of the words, and of how many it says something


def is_strange(tokens: list[Token]) -> bool:
    """Say whether too many words are in no list for anybody to tell what is said: a language that is not known here."""
    words = [token.word for token in tokens if token.kind == WORD and token.word[0].isalpha()]
    return len(words) >= _SOME and sum(word not in _KNOWN for word in words) >= _STRANGE * len(words)


_PLAIN_ALARM = 3  # words: shorter ones are words of other languages too


def _raises_alarm(tokens: list[Token]) -> bool:
    """Say whether English tells of danger in words that few common ones give away: "mi tongue a swell up"."""
    marks = lexicon.ENGLISH.find(tokens)
    return any(
        mark.name.startswith("sign:") and mark.name.endswith("!") and mark.end - mark.start >= _PLAIN_ALARM
        for mark in marks
    )


def _script_of(text: str, words: list[str]) -> str:
    letters = sum(len(word) for word in words)
    for code, pattern in _SCRIPTS.items():
        count = len(pattern.findall(text))
        if count >= 2 and count * 3 >= letters or count and count * 2 >= letters:
            return "ja" if code == "zh" and _SCRIPTS["ja"].search(text) else code
    return ""


def _score(one: tuple[float, str]) -> float:
    return one[0]


def _other_language(words: list[str], text: str) -> tuple[float, str]:
    """Return the likeliest other language with its score: its common words, and the letters that Spanish has not."""
    scores: dict[str, float] = defaultdict(float)
    for word in words:
        for name in _LANGUAGES.get(word, ()):
            scores[name] += 1
    if not text.isascii():
        letters = set(text.lower())
        for name, marked in _MARKED.items():
            if letters & marked:
                scores[name] += 1.5
    # Of equal ones the first that is listed.
    best, code = max(((scores[name], name) for name in _COMMON if name in scores), key=_score, default=(0.0, ""))
    enough = best >= 2 or best >= 1 and len(words) <= 2
    return (best, code) if enough else (0.0, "")
