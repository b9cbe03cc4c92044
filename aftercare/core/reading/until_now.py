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


_FROM_NOW, _BUT = listed("now today tonight this time before hoy ahora"), listed("but until till pero")
_IT, _IS_NOW = listed("it they they're theyre its"), listed("has have is are does do did")


def is_now(page: Page, sign: Mark) -> bool:
    """Never went red before but today it has."""
    words = [token.word for token in page.tokens[sign.end : sign.end + 6] if token.kind == WORD]
    left = [word for word in words if word not in _FROM_NOW]
    return len(left) < len(words) and len(left) > 2 and left[0] in _BUT and left[1] in _IT and left[2] in _IS_NOW
