"""Whose a sign is, and whether it is of long ago or only imagined."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import ASK, COMMA, LINE, listed
from aftercare.core.reading.words.tenses import PAST_WORDS, PRESENT_WORDS

_NOW = listed("now today again these time since ahora hoy ahorita contigo still")


def is_another_persons(page: Page, sign: Mark) -> bool:
    sentence = page.sentence[sign.start]
    if page.marks.get("scope:proxy"):
        return False  # her mother writes for her
    nearest: Mark | None = None
    others = page.named("scope:other")
    own = [
        mark
        for mark in page.named("scope:self")
        if not any(one.start < mark.start and mark.end <= one.end for one in others)
    ]
    for mark in sorted((*others, *own), key=lambda one: one.start):
        if page.sentence[mark.start] == sentence and mark.start <= sign.start:
            if mark.start == sign.start and mark.name == "scope:other":
                continue
            if nearest is None or mark.start > nearest.start or mark.end > nearest.end:
                nearest = mark
    if nearest is None or nearest.name == "scope:self":
        return False
    return not any(
        page.sentence[mark.start] == sentence and mark.start < sign.start and mark.end > nearest.start
        for mark in page.named("scope:report")
    )


def is_long_ago(page: Page, sign: Mark) -> bool:
    sentence = page.sentence[sign.start]
    for mark in page.named("scope:past"):
        if page.sentence[mark.start] == sentence:
            low, high = sorted((mark.end, sign.start)) if mark.start < sign.start else (sign.end, mark.start)
            between = {token.word for token in page.tokens[low:high]}
            if mark.start < sign.start:
                if not between & _NOW and "but" not in between and "pero" not in between:
                    return True
            elif high - low <= 10 and not between & (_NOW | {"but", "pero"}):
                return True
        elif page.sentence[mark.start] == sentence - 1 and mark.start < sign.start:
            words = {token.word for token, place in zip(page.tokens, page.sentence, strict=True) if place == sentence}
            if words & PAST_WORDS and not words & PRESENT_WORDS:
                return True
    return False


def is_imagined(page: Page, sign: Mark) -> bool:
    sentence = page.sentence[sign.start]
    for mark in page.named("scope:if", "scope:will"):
        if page.sentence[mark.start] != sentence or mark.start > sign.start:
            continue
        between = page.tokens[mark.end : sign.start]
        if any(token.word in ("but", "pero") for token in between):
            continue
        if page.tokens[mark.start].word == "si" and not _has_consequence(page, sentence):
            continue
        commas = sum(token.kind in (COMMA, LINE) for token in between)
        if mark.name == "scope:if" and commas == 0 or mark.name == "scope:will" and not commas and len(between) <= 8:
            return True
    return False


_CONSEQUENCE = listed("""
    que puedo puede debo deberia entonces hago pasa voy vengo llamo aviso quitan cuanto como regreso
""")


def _has_consequence(page: Page, sentence: int) -> bool:
    """Say whether a Spanish "si" is "if" here: without a consequence or a question it is more likely a "sí"."""
    return any(
        where == sentence and (token.kind == ASK or token.word in _CONSEQUENCE)
        for token, where in zip(page.tokens, page.sentence, strict=True)
    )
