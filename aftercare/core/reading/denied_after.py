"""Denial that stands behind what it denies: "Redness? No.", "hinchazón ninguna", "sore? me? not at all"."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import ASK, COMMA, LINE, STOP, WORD, Token, listed

EYE_WORDS = listed("eyes eye lids lid ojos ojo")
SAYS_NO = listed("no none nope nah nada zero 0 never nil negative ninguna ninguno neither n nothing")
_WHO = listed("me moi mine yo us")
_AT_ALL = listed("in at remotely even once anymore any me mine here")
_ONLY_MY_EGO = (
    listed("only just except bar solo"),
    listed("my me mi"),
    listed("ego pride head wallet purse heart confidence bank feet orgullo cartera bolsillo corazon"),
)
_NO_AFTER = listed("no tampoco nope nah nay nil")


def is_denied_after(page: Page, sign: Mark) -> bool:
    """Say whether the words right behind a sign deny it."""
    return _answered_no(page, sign) or _no_after(page, sign) or _all_no(page, sign) or _is_not_found(page, sign)


_SEEKS = listed("""
    looked look looking checked checking searched searching hunted hunting complain waiting waited watching watched
    busque buscando buscaba revise revisando espere esperaba
""")
_SOUGHT = 6  # words from the seeking to the sign, and from there to what was found


def _is_not_found(page: Page, sign: Mark) -> bool:
    """I looked for redness, and frankly there's none; busqué hinchazón y no hay."""
    where = page.sentence[sign.start]
    before = {token.word for token in page.tokens[max(0, sign.start - _SOUGHT) : sign.start]}
    return bool(_SEEKS & before) and any(
        page.sentence[mark.start] == where and 0 <= mark.start - sign.end <= _SOUGHT
        for mark in page.named("scope:foundnone")
    )


_ALL, _NO_TO_ALL = listed("all each both todo todas todos"), SAYS_NO | listed("absent")


def _all_no(page: Page, sign: Mark) -> bool:
    """(Itchy, puffy, red) all nope: after nothing but other signs, all are denied."""
    tokens = page.tokens
    if not any(token.word in _ALL for token in tokens[sign.end :]):
        return False
    listed_signs = {
        place
        for name, marks in page.marks.items()
        if name.startswith("sign:")
        for mark in marks
        for place in range(mark.start, mark.end)
    }
    place = sign.end
    while place < len(tokens) and (
        place in listed_signs or tokens[place].kind == COMMA or tokens[place].word in _LISTS
    ):
        place += 1
    if place + 1 >= len(tokens) or tokens[place].word not in _ALL or tokens[place + 1].word not in _NO_TO_ALL:
        return False
    return place + 2 == len(tokens) or tokens[place + 2].kind != WORD


_LISTS = listed("and or nor y o ni")


def _answered_no(page: Page, sign: Mark) -> bool:
    """Redness? No. Swelling - none. Itch free."""
    tokens = page.tokens
    place = sign.end
    if place < len(tokens) and tokens[place].word in ("free", "cero"):
        return True
    if place + 1 < len(tokens) and tokens[place].word in EYE_WORDS and tokens[place + 1].kind == ASK:
        place += 1  # "swollen eyes? nah"
    if place + 2 < len(tokens) and tokens[place].kind == ASK and tokens[place + 1].word in _WHO:
        place += 2 if tokens[place + 2].kind == ASK else 0  # "sore? me? not in the slightest"
    if [token.word for token in tokens[place : place + 2]] == [",", "then"]:
        return place + 2 < len(tokens) and tokens[place + 2].word in SAYS_NO  # "if you mean swelling, then no"
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
        if place >= len(tokens):
            return False
        return tokens[place].word in SAYS_NO or _is_not_at_all(tokens, place) or _is_of_pride(tokens, place)
    return False


def _is_of_pride(tokens: list[Token], place: int) -> bool:
    """Swelling? Only my ego."""
    following = tokens[place : place + len(_ONLY_MY_EGO)]
    if len(following) < len(_ONLY_MY_EGO):
        return False
    return all(token.word in words for token, words in zip(following, _ONLY_MY_EGO, strict=True))


def _is_not_at_all(tokens: list[Token], place: int) -> bool:
    """Redness? Not in the slightest. -- "Redness? Not half" is another matter."""
    return tokens[place].word == "not" and place + 1 < len(tokens) and tokens[place + 1].word in _AT_ALL


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
    if place >= len(tokens) or tokens[place].word not in _NO_AFTER:
        return False
    if place + 1 == len(tokens) or tokens[place + 1].kind != WORD:
        return True
    named, denied = tokens[sign.end - 1].word, tokens[place + 1].word
    if named.endswith(("ar", "er")) and (denied in ("me", "se") or denied[:2] == named[:2]):
        return True  # "arder no me arden", "arder no arden"
    if denied in _CLITICS and place + 2 < len(tokens) and tokens[place + 2].word in _SHOWS:
        return True  # "colorados no se ven"
    return denied in ("esta", "estan", "hay", "tengo", "but", "pero", "is", "ist")
