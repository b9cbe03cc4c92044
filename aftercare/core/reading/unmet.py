"""What was feared and did not come: "figured I'd be bloodshot, turns out nope" denies the redness."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import ASK, listed

_FEARED = listed("""
    thought expected expecting expectin figured reckoned convinced sure certain swore sworn dreaded dreading bracing
    braced scared afraid worried nervous terrified feared waiting ready armed prepared assumed guessed warned told
    imagined presumed positive betting banking heard horror pense crei pensaba temia miedo
""")
_NEXT = 2  # sentences


def did_not_come(page: Page, sign: Mark) -> bool:
    """Say whether an imagined sign was feared, and the same sentence or one soon after says that it did not come."""
    where = page.sentence[sign.start]
    feared = any(
        page.sentence[mark.start] == where
        and mark.start <= sign.start
        and _FEARED & {token.word for token in page.tokens[mark.start : mark.end]}
        for mark in page.named("scope:will")
    )
    if not feared or _asks(page, where):
        return False
    later = ((page.sentence[mark.start], mark) for mark in page.named("scope:unmet") if mark.start >= sign.end)
    return any(sentence - where <= _NEXT and not _asks(page, sentence) for sentence, _ in later)


def _asks(page: Page, sentence: int) -> bool:
    return any(token.kind == ASK and where == sentence for token, where in zip(page.tokens, page.sentence, strict=True))
