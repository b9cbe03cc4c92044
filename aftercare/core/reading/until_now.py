"""A denial that held until now: "it wasn't sore till today", "never went red before but today it has"."""

from __future__ import annotations

import itertools

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, listed

_UNTIL = listed("until till til hasta")
_LATELY = listed("now today tonight just last this yesterday hoy ahora your you i yours")
_SHORTLY = 6  # tokens


def began_lately(page: Page, sign: Mark) -> bool:
    """It wasn't sore till today; no itch until last night."""
    after = [token.word for token in page.tokens[sign.end : sign.end + _SHORTLY] if token.kind == WORD]
    return any(first in _UNTIL and then in _LATELY for first, then in itertools.pairwise(after))


_NOW, _THERE = listed("now today tonight ahora hoy"), listed("it they there mine both theres i")
_IS = listed("is are do does have has did hay am theres")
_BEHIND = 10  # words


def is_turned_round(page: Page, sign: Mark) -> bool:
    """They didn't hurt at first but now they do; never went red but today it has; wasn't red when I left, is now."""
    first, last = sign.end, min(len(page.tokens), sign.end + _BEHIND)
    for place in range(first + 1, last):
        ends = place + 1 == len(page.tokens) or page.tokens[place + 1].kind != WORD
        if page.sentence[place] - page.sentence[sign.start] > 1 or not ends:
            continue
        before = [token.word for token in page.tokens[max(first, place - 2) : place]]
        word = page.tokens[place].word
        if word in _NOW and before[-1:] and before[-1] in _IS:
            return True
        if word in _IS and len(before) > 1 and before[0] in _NOW and before[1] in _THERE:
            return True
    return False
