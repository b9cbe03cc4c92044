"""A sign of somebody else that she says to have too: "my cat has pink eye and now I do", "me too"."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, listed

_SOON = 8  # tokens
_I_DO, _TOO = listed("do have am got"), listed("too also now aswell")
_SO_DO = {("so", "do"), ("so", "am"), ("so", "have"), ("so", "are"), ("so", "is"), ("so", "does"), ("so", "has")}
_SHE_TOO = {("me", "too"), ("mine", "too"), ("me", "also"), ("same", "here"), ("i", "do"), ("i", "am"), ("i", "have")}
_GOES_ON = listed("eye eyes lid lids and but eyelid now")


def has_it_too(page: Page, sign: Mark) -> bool:
    """Say whether what is told of another is hers too, in words of its own or right behind the sign."""
    where = page.sentence[sign.start]
    if any(page.sentence[mark.start] == where for mark in page.named("scope:minefine")):
        return False  # "her lids were swollen, now mine are fine"
    return _is_told(page, sign) or _follows(page, sign)


def _is_told(page: Page, sign: Mark) -> bool:
    """My daughter's lids puffed up on Sunday, mine are doing the same."""
    asked = page.asked()
    return any(
        (mark.start >= sign.end or page.tokens[mark.start].word == "caught")
        and 0 <= page.sentence[mark.start] - page.sentence[sign.start] <= 1
        and page.sentence[mark.start] not in asked
        for mark in page.named("scope:metoo")
    )


def _follows(page: Page, sign: Mark) -> bool:
    """My cat has pink eye and now I do; her eye is red, mine too; so do I."""
    place = sign.end
    while place < len(page.tokens) and (page.tokens[place].kind != WORD or page.tokens[place].word in _GOES_ON):
        if page.sentence[place] != page.sentence[sign.start]:
            return False
        place += 1
    words = [token.word for token in page.tokens[sign.end : sign.end + _SOON] if token.kind == WORD]
    threes = zip(words, words[1:], words[2:], strict=False)
    if any(who == "i" and does in _I_DO and too in _TOO for who, does, too in threes):
        return True  # "and I think I do too"
    said = tuple(token.word for token in page.tokens[place : place + 2])
    ends = place + 2 >= len(page.tokens) or page.tokens[place + 2].kind != WORD
    return said in _SO_DO or said in _SHE_TOO and ends
