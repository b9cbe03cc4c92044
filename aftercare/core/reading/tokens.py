"""A reply in words: folded to plain letters, each token with its span in the original text."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

WORD, COMMA, STOP, ASK, LINE, PICTURE = "word", "comma", "stop", "ask", "line", "picture"

_APOSTROPHES = dict.fromkeys("’‘`´ʼ＇", "'")
_STROKED = {"đ": "d", "Đ": "d", "ł": "l", "Ł": "l", "ø": "o", "Ø": "o", "ı": "i", "œ": "oe", "Œ": "oe", "æ": "ae"}
_PUNCTUATION = {
    **dict.fromkeys(',:;()[]{}/|"“”«»–—~*_•·、，：，', COMMA),
    **dict.fromkeys(".!…¡。！;；", STOP),
    **dict.fromkeys("?¿？", ASK),
}
_STROKE_WORDS = r"w/(?:o(?!\w))?|b/c(?!\w)"  # without, with, because
_PIECE = re.compile(_STROKE_WORDS + r"|\d+(?:[.,:/]\d+)*(?:%|[^\W\d_]+)?|[^\W\d_]+(?:'[^\W\d_]+)*'?\d*|\n|[^\w\s]|_")
_DICTATED = {"comma": (",", COMMA), "coma": (",", COMMA)}  # a telephone that writes down what it hears
CONTRACTIONS = {
    "can": "cant",
    "could": "couldnt",
    "will": "wont",
    "would": "wouldnt",
    "do": "dont",
    "does": "doesnt",
    "did": "didnt",
}
_RUN = re.compile(r"(.)\1{2,}")


def listed(text: str) -> frozenset[str]:
    """Return the words of a list that is written as one text."""
    return frozenset(text.split())


@dataclass(slots=True)
class Token:
    """One word, picture or mark. ``start`` and ``end`` count characters of the original text."""

    word: str
    kind: str
    start: int
    end: int
    written: str = ""


@lru_cache(maxsize=20_000)
def _folded(character: str) -> str:
    """Return the plain letters of one character: no case, no marks, no width, no invisible ones."""
    if character in _APOSTROPHES:
        return "'"
    if character == "\r":
        return "\n"
    if character in _STROKED:
        return _STROKED[character]
    category = unicodedata.category(character)
    if category in ("Cf", "Mn", "Me", "Sk", "Cs", "Co", "Cn"):
        return ""
    if category == "Cc":
        return character if character in "\n\t" else " "
    plain = unicodedata.normalize("NFKD", character).casefold()
    return "".join(one for one in plain if unicodedata.category(one) not in ("Mn", "Me", "Cf"))


def fold(text: str) -> tuple[str, list[int]]:
    """Return the folded text, and for each of its characters the place of the original one."""
    if text.isascii() and text.isprintable():
        return text.lower(), list(range(len(text)))
    pieces: list[str] = []
    places: list[int] = []
    for place, character in enumerate(text):
        plain = _folded(character)
        pieces.append(plain)
        places.extend([place] * len(plain))
    return "".join(pieces), places


def tokenize(text: str, known: Callable[[str], str]) -> list[Token]:
    """Return the tokens of ``text``; ``known`` turns a folded word into the one that the lexicon has for it."""
    folded, places = fold(text)
    tokens: list[Token] = []
    for piece in _PIECE.finditer(folded):
        written = piece.group()
        start, end = places[piece.start()], places[piece.end() - 1] + 1
        first = written[0]
        if first.isalnum():
            if written == "si" and text[start:end].lower() != "si":
                written = "sip"  # sí is yes, si is if
            word, kind = _DICTATED.get(written) or (known(written), WORD)
            if word == "not" and tokens and (short := CONTRACTIONS.get(tokens[-1].word)):
                tokens[-1].word, tokens[-1].end = short, end  # "can NOT" is "can't"
                continue
            tokens.append(Token("cant" if word == "cannot" else word, kind, start, end, written))
        elif first == "-" and _joins(folded, piece.start()):
            continue  # eye-watering is two words
        elif first == "\n":
            tokens.append(Token(first, LINE, start, end, written))
        elif first in _PUNCTUATION:
            tokens.append(Token(first, _PUNCTUATION[first], start, end))
        elif first in "-+=<>#@&%$€£^\\'":
            tokens.append(Token(first, WORD if first in "+&<>=#$€£" else COMMA, start, end, written))
        else:
            tokens.append(Token(first, PICTURE, start, end))
    return tokens


def _joins(folded: str, place: int) -> bool:
    return 0 < place < len(folded) - 1 and folded[place - 1].isalnum() and folded[place + 1].isalnum()


def shortened(word: str) -> tuple[str, str]:
    """Return a word whose letters are drawn out with each run as one letter, and as two: "sooo", "itchyyy"."""
    return _RUN.sub(r"\1", word), _RUN.sub(r"\1\1", word)
