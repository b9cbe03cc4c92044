"""Whether a sign that was over, or nearly, is back: "gone but back again", and not "nobody rang me back"."""

from __future__ import annotations

import itertools

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import listed

_WAS = listed("was were had theyd itd")


def _is_conditional(page: Page, mark: Mark) -> bool:
    """I will tell you if it comes back."""
    return any(token.word in ("if", "si", "unless") for token in page.tokens[max(0, mark.start - 4) : mark.start])


def _asks_leave(page: Page, mark: Mark) -> bool:
    """Nearly gone, can I wear mascara again?"""
    words = [page.tokens[place].word for place in range(mark.start) if page.clause[place] == page.clause[mark.start]]
    return any(pair in _MAY_I for pair in itertools.pairwise(words))


_MAY_I = {(may, who) for may in ("can", "may", "should", "could") for who in ("i", "we")} | {("puedo", "volver")}
_CALLS = listed("""
    rang ring call called phone phoned text texted message messaged write wrote reply replied hear heard take took
""")
_THERE = 4  # tokens
_PLACES, _HER_OWN = listed("in at to home with"), listed("my the both left right full it them")


def _is_back_somewhere(page: Page, mark: Mark) -> bool:
    """She is back in college; back to work on Monday."""
    after = [token.word for token in page.tokens[mark.end : mark.end + 2]]
    before = [token.word for token in page.tokens[max(0, mark.start - _THERE) : mark.start]]
    if _CALLS & set(before[-2:]) or before[-3:-1] == ["take", "it"]:
        return True  # "nobody rang me back", "I take it all back"
    if before[-1:] == ["and"] and "to" in before:
        return True  # "been to work and back all week"
    return bool(after) and after[0] in _PLACES and not set(after[1:]) & _HER_OWN


def _is_again_since(page: Page, sign: Mark, mark: Mark, resolution: Mark) -> bool:
    """Itchy again, was fine all weekend."""
    if not sign.end <= mark.start < resolution.start or page.clause[mark.start] != page.clause[sign.start]:
        return False
    told = {token.word for token in page.tokens[max(0, resolution.start - 1) : resolution.start + 1]}
    return page.tokens[mark.start].word in ("again", "back") and bool(told & _WAS)


_MISTAKE = listed("lied wrong soon jinxed words mentira miento equivoque pronto tiempo")


def _is_own_mistake(page: Page, mark: Mark) -> bool:
    return bool(_MISTAKE & {token.word for token in page.tokens[mark.start : mark.end]})


_AGAIN = listed("otra vez de nuevo again")  # "white again": as it was before


def came_back(page: Page, sign: Mark, resolution: Mark, *, and_still: bool = True) -> bool:
    """Still red; gone but back again."""
    if any(mark.start >= resolution.end and _is_own_mistake(page, mark) for mark in page.named("scope:wrong")):
        return True  # "it stopped. I lied, it's back"
    for mark in page.named("scope:worse"):
        words = {token.word for token in page.tokens[mark.start : mark.end]}
        before = page.tokens[mark.start - 1].word if mark.start else ""
        lead = {token.word for token in page.tokens[max(0, mark.start - 3) : mark.start]}
        if (
            words & {"now", "new", "wont", "ahora", "hoy"}
            or before in ("was", "were", "era", "estaba")
            or "worse" in words
            and lead & {"was", "were", "era", "estaba"}
            or _is_conditional(page, mark)
            or _asks_leave(page, mark)
            or mark.start == resolution.end
            and words <= _AGAIN
        ):
            continue
        if mark.start < sign.start and page.clause[mark.start] == page.clause[sign.start]:
            if words & {"still", "sigue", "siguen", "todavia", "aun"} and and_still:
                return True
        elif _is_again_since(page, sign, mark, resolution):
            return True
        elif mark.start >= resolution.end and page.sentence[mark.start] - page.sentence[resolution.start] <= 1:
            if words & {"back", "returned"} and (
                page.covers("scope:over", mark.start) or _is_back_somewhere(page, mark)
            ):
                continue
            if words & {"again", "started", "starting", "keep", "keeps", "every", "de"} and page.covers(
                "scope:over", mark.start
            ):
                continue
            if words & {
                "back",
                "returned",
                "again",
                "worse",
                "comes",
                "coming",
                "came",
                "volvio",
                "regreso",
                "nuevo",
                "otra",
                "peor",
                "va",
            }:
                return True
    return False
