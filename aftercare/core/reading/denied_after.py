"""Denial that stands behind what it denies: "Redness? No.", "picazón no", "hinchazón ninguna"."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import ASK, COMMA, LINE, STOP, WORD, listed

EYE_WORDS = listed("eyes eye lids lid ojos ojo")
SAYS_NO = listed("no none nope nah nada zero 0 never nil negative ninguna ninguno neither n nothing")


def is_denied_after(page: Page, sign: Mark) -> bool:
    """Say whether the words right behind a sign deny it."""
    return _answered_no(page, sign) or _no_after(page, sign)


def _answered_no(page: Page, sign: Mark) -> bool:
    """Redness? No. Swelling - none. Itch free."""
    tokens = page.tokens
    place = sign.end
    if place < len(tokens) and tokens[place].word in ("free", "cero"):
        return True
    if place + 1 < len(tokens) and tokens[place].word in EYE_WORDS and tokens[place + 1].kind == ASK:
        place += 1  # "swollen eyes? nah"
    marks = 0
    said = 0
    while (
        place < len(tokens)
        and marks < 2
        and tokens[place].kind in (COMMA, ASK, STOP, LINE)
        and tokens[place].word in ":?-=–—("
    ):
        marks += 1
        place += 1
    if tokens[place - 1].word in "?:=" and marks or marks and tokens[place - 1].word in "-–—(":
        while (
            place < len(tokens)
            and said < 2
            and tokens[place].word in ("also", "again", "big", "hard", "tambien", "a", "para")
        ):
            place += 1
            said += 1
        return place < len(tokens) and tokens[place].word in SAYS_NO
    return False


_NONE, _CLITICS = listed("ninguna ninguno"), listed("me se les le los las")
_SHOWS = listed("ve ven veo vi noto notan salio salieron sale salen hay siento ha han")


def _no_after(page: Page, sign: Mark) -> bool:
    """Picazón no; rojo no está; redness was not seen."""
    tokens = page.tokens
    place = sign.end
    before = tokens[sign.start - 1].word if sign.start else ""
    if before == "nada" or place < len(tokens) and tokens[place].word in _NONE:
        return True  # "nada borroso", "hinchazón ninguna"
    if page.covers("scope:unseen", place) and not page.covers("scope:unseen", place - 1):
        return True
    if place >= len(tokens) or tokens[place].word not in ("no", "tampoco", "nope"):
        return False
    if place + 1 == len(tokens) or tokens[place + 1].kind != WORD:
        return True
    named, denied = tokens[sign.end - 1].word, tokens[place + 1].word
    if named.endswith(("ar", "er")) and (denied in ("me", "se") or denied[:2] == named[:2]):
        return True  # "arder no me arden", "arder no arden"
    if denied in _CLITICS and place + 2 < len(tokens) and tokens[place + 2].word in _SHOWS:
        return True  # "colorados no se ven"
    return denied in ("esta", "estan", "hay", "tengo", "but", "pero", "is", "ist")
