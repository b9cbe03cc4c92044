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
    if (lessened := _LESSENED.fullmatch(word)) and (plain := lessened[1] + lessened[2]) in lexicon.MENDED:
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
    slips = 1 if len(word) < LONG else 2
    found = process.extractOne(word, _TARGETS, scorer=OSA.distance, score_cutoff=slips)
    if found is None or found[0][0] != word[0]:
        return word
    target = str(found[0])
    if len(word) <= SHORT and len(target) == len(word) and sorted(target) != sorted(word):
        return word  # one letter for another makes too many words of a short one: "burh"
    return target
