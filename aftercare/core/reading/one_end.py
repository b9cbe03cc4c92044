"""Ends of a sign in other orders: the sign named last, one end for two signs, a little of it left."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import ASK, COMMA, STOP, WORD, listed

_THE = listed("that the this my all those la el lo esa ese esta mi")
_A_BIT_OF = _THE | listed("teeny tiny just only bit wee little slight a some of small faint")


def is_named_last(page: Page, mark: Mark, sign: Mark) -> bool:
    """Sorted itself out, the puffiness; just about gone, a teeny bit of grit left: no other sign is before."""
    between = page.tokens[mark.end : sign.start]
    if not 0 < len(between) <= 6 or between[0].kind != COMMA or any(token.kind != WORD for token in between[1:]):
        return False
    after = page.tokens[sign.end : sign.end + 1]
    words = {token.word for token in between[1:]}
    left = mark.name == "scope:near" and words <= _A_BIT_OF
    if not (left or words and words <= _THE and (not after or after[0].kind in (STOP, ASK))):
        return False
    sentence = page.sentence[mark.start]
    return not any(
        other.start < mark.start and page.sentence[other.start] == sentence
        for name, marks in page.marks.items()
        if name.startswith("sign:")
        for other in marks
    )


_ALIKE = listed("and n y the my all any some of bit that la el los mi")
_NAMING = listed("the both my that all some any la el lo mi")


def is_joined_to(page: Page, sign: Mark, others: list[Mark]) -> bool:
    """Both the pink and the puffiness nearly cleared: one end for two."""
    before = page.tokens[sign.start - 1].word if sign.start else ""
    between = {token.word for token in page.tokens[sign.end : others[0].start]}
    return before in _NAMING and bool(between & {"and", "y"}) and between <= _ALIKE


_LEFT = listed("left remaining remains queda quedan")


def leaves_some(page: Page, over: Mark) -> bool:
    """Gone down loads since yesterday, only a tiny bit left."""
    return any(
        mark.start >= over.end
        and page.sentence[mark.start] == page.sentence[over.start]
        and any(token.word in _LEFT for token in page.tokens[mark.start : mark.end])
        for mark in page.named("scope:near")
    )
