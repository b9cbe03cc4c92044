"""Whether a sign is only imagined: what would be, what was expected, what might come."""

from __future__ import annotations

import itertools

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import COMMA, LINE, Token, listed

_TO_COME = listed("ill will would should call let tell ring book")
_MIGHT = listed("would will could might can normal usual do does")


def _is_asked_about(page: Page, sentence: int) -> bool:
    """Would watery eyes be normal? Haven't had mine done yet."""
    return sentence in page.asked() and bool(_MIGHT & page.said(sentence))


def _happens_in_light(page: Page, sentence: int) -> bool:
    """If I go outside the sun hurts them: so it is whenever she does. If light hurts, I'll call: so it is not yet."""
    if _is_asked_about(page, sentence):
        return False
    return not page.said(sentence) & _TO_COME and any(
        page.sentence[mark.start] == sentence for mark in page.named("sign:light")
    )


# "could you take them off, because they burn": what comes after is no longer imagined.
_TURNS = listed("but pero because porque pues")


_AND, _THIS_IS = (
    listed("and n so y"),
    listed("its theyre im ive now my still ahora estan me sigo sigue siguen ando traigo tengo"),
)


def _turns_to_now(between: list[Token]) -> bool:
    """You warned me it would itch and it's itching badly."""
    pairs = itertools.pairwise(token.word for token in between)
    return any(first in _AND and then in _THIS_IS for first, then in pairs)


_FEARED = listed("thought scared afraid worried nervous terrified expected expecting feared convinced dreading")
_ADDING = listed("all so really very with a big and or like proper totally completely just even")


def _only_adds(between: list[Token]) -> bool:
    """Say whether after a comma the same is told on: "thought I'd look like a clown, all blotchy"."""
    comma = next(place for place, token in enumerate(between) if token.kind in (COMMA, LINE))
    return all(token.word in _ADDING for token in between[comma + 1 :])


_SUPPOSES = listed("suppose supposing hypothetically theoretically theory hypothetical imagine say")


def is_imagined(page: Page, sign: Mark) -> bool:
    sentence = page.sentence[sign.start]
    if page.marks.get("scope:before") and _is_asked_about(page, sentence):
        return True
    if sentence in page.asked() and any(
        page.sentence[one.start] == sentence + 1 for one in page.named("scope:minefine")
    ):
        return True  # "is it normal for lids to swell? mine are fine"
    for mark in page.named("scope:if", "scope:will"):
        if page.sentence[mark.start] != sentence or mark.start > sign.start:
            continue
        if mark.name == "scope:if" and _happens_in_light(page, sentence):
            continue
        between = page.tokens[mark.end : sign.start]
        if any(token.word in _TURNS for token in between):
            continue
        if mark.name == "scope:will" and _turns_to_now(between):
            continue
        if page.tokens[mark.start].word == "si" and not _has_consequence(page, sentence):
            continue
        if between and between[0].kind == COMMA and page.tokens[mark.end - 1].word in _SUPPOSES:
            between = between[1:]  # "purely suppose, my lids puffed up"
        commas = sum(token.kind in (COMMA, LINE) for token in between)
        if commas == 1 and page.tokens[mark.start].word in _FEARED and _only_adds(between):
            return True
        if mark.name == "scope:if" and commas == 0 or mark.name == "scope:will" and not commas and len(between) <= 8:
            return True
    return False


_CONSEQUENCE = listed("""
    que puedo puede debo deberia entonces hago pasa voy vengo llamo aviso quitan cuanto como regreso
""")


def _has_consequence(page: Page, sentence: int) -> bool:
    """Say whether a Spanish "si" is "if" here: without a consequence or a question it is more likely a "sí"."""
    return sentence in page.asked() or bool(_CONSEQUENCE & page.said(sentence))
