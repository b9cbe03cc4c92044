"""The word that the lexicon has for what she typed: chat spelling, drawn-out letters, slips of the keys.

A corrector with a dictionary of the language turned "swolen" into "stolen"; this one knows only the words that tell
of eyes and of stopping, and leaves alone whatever is a word of its own (`words.lookalikes`).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from rapidfuzz import process
from rapidfuzz.distance import OSA

from aftercare.core.reading import lexicon
from aftercare.core.reading.tokens import listed, shortened
from aftercare.core.reading.words.chat import CHAT
from aftercare.core.reading.words.lookalikes import LOOKALIKES

SHORTEST, SHORT, LONG, LONGEST = 4, 5, 8, 24
_CONTRACTED = listed("it that there what he she who how where here let")
# Endings of Spanish: rojitos, rarisimas, rojillos; hinchao and colorao in the Caribbean; "me pican" in one word.
_SIZED = re.compile(r"([a-z]{3,}?)(?:c?it|isim)([oa]s?)")
_LESSENED = re.compile(r"([a-z]{3,})ill([oa]s?)")
_WORN = re.compile(r"([a-z]{3,})a(os?)")
_JOINED = re.compile(r"me([a-z]{4,})")
_SOUNDS = {"h": "", "qu": "k", "v": "b", "ll": "y", "z": "s", "ce": "se", "ci": "si", "c": "k", "ge": "je", "gi": "ji"}
_TARGETS = sorted(word for word in lexicon.MENDED if len(word) >= SHORTEST)
_ROWS = ("qwertyuiop", "asdfghjkl", "zxcvbnm")
_AS_NEAR = 4  # targets


def _neighbours() -> dict[str, str]:
    """Return the keys around each one on the keyboard that English and Spanish are typed on."""
    found = {}
    for height, row in enumerate(_ROWS):
        for place, key in enumerate(row):
            above = _ROWS[height - 1][place : place + 2] if height else ""
            below = _ROWS[height + 1][max(0, place - 1) : place + 1] if height + 1 < len(_ROWS) else ""
            found[key] = row[max(0, place - 1) : place] + row[place + 1 : place + 2] + above + below
    return found


def _threes(word: str) -> set[str]:
    return {word[place : place + 3] for place in range(len(word) - 2)}


def _letters(word: str) -> str:
    """Return the same for words of the same letters that begin and end alike."""
    return word[0] + "".join(sorted(word[1:-1])) + word[-1]


_KEYS = _neighbours()
_SEEN_THREES = frozenset(three for word in LOOKALIKES | lexicon.WORDS for three in _threes(word))
_SHUFFLED = {_letters(word): word for word in _TARGETS if len(word) > SHORTEST and word.isalpha()}


@lru_cache(maxsize=50_000)
def known(written: str) -> str:
    """Return the lexicon's word for a folded one, or the word itself without its apostrophes."""
    if written.endswith("'s") and (owner := written[:-2]) not in _CONTRACTED and owner in lexicon.WORDS:
        return owner  # her eye's red, my sister's eyes
    word = written.replace("'", "")
    if word in CHAT:
        return CHAT[word]
    if word in lexicon.WORDS or not word.isalpha():
        return word
    once, twice = shortened(word)
    for short in (once, twice):
        if short != word and (short in CHAT or short in lexicon.WORDS):
            return CHAT.get(short, short)
    if once.endswith("in") and once + "g" in lexicon.WORDS:
        return once + "g"
    for plain in _plain(once):
        if plain in lexicon.WORDS:
            return plain
    return _mended(once)


def _plain(word: str) -> Iterator[str]:
    """What a word may be that is grown, worn, joined or spelled by its sound: the lexicon has it, or has not."""
    if sized := _SIZED.fullmatch(word):
        yield sized[1] + sized[2]
    if (
        word not in LOOKALIKES
        and (lessened := _LESSENED.fullmatch(word))
        and (plain := lessened[1] + lessened[2]) in lexicon.MENDED
    ):
        yield plain  # rojillos; but a "mesilla" is no table
    if worn := _WORN.fullmatch(word):
        yield f"{worn[1]}ad{worn[2]}"
    if (joined := _JOINED.fullmatch(word)) and joined[1] in lexicon.MENDED and word not in LOOKALIKES:
        yield joined[1]  # mepican
    if len(word) >= SHORT and word not in LOOKALIKES and (heard := _HEARD.get(_sound(word))):
        yield heard  # inchados, pikan, yorando


def _sound(word: str) -> str:
    """How a word of Spanish sounds, roughly: h is mute, b and v, ll and y, s and z are one."""
    for letters, sound in _SOUNDS.items():
        word = word.replace(letters, sound)
    return word


_HEARD = {_sound(word): word for word in sorted(lexicon.HEARD) if len(word) >= SHORTEST}


def _mended(word: str) -> str:
    if not SHORTEST <= len(word) <= LONGEST or word in LOOKALIKES or not word.isascii():
        return word
    if (target := shuffled(word)) is not None:
        return target
    slips = 1 if len(word) < LONG else 2
    found = process.extract(word, _TARGETS, scorer=OSA.distance, score_cutoff=slips, limit=_AS_NEAR)
    for near, distance, _ in found:
        target = str(near)
        if target[0] != word[0] or distance > found[0][1]:
            continue
        # Of a short word, one letter for another makes too many words ("burh"), but not the next key where no word
        # has such letters ("itvhy", and not "hice").
        if len(word) > SHORT or len(target) != len(word) or sorted(target) == sorted(word):
            return target
        if _is_next_key(word, target) and not _threes(word) <= _SEEN_THREES:
            return target
    return word


def shuffled(word: str) -> str | None:
    """Return the word of the lexicon that has the same letters and ends: "ichty"."""
    return _SHUFFLED.get(_letters(word)) if len(word) > SHORTEST else None


def _is_next_key(word: str, target: str) -> bool:
    """Say whether the letters that differ lie side by side on the keyboard."""
    return all(one == other or other in _KEYS.get(one, "") for one, other in zip(word, target, strict=True))
