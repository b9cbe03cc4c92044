"""What is told of somebody else and goes on in the next sentences: "my mate got glue in her hair. Acetone, tears"."""

from __future__ import annotations

from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import ASK, listed
from aftercare.core.reading.whose import is_written_for_her, persons, tells_a_sign

_HERE = listed("""
    i im ive my me mine myself now today tonight both left right but anyway still though we our too also same this me mi
    mis yo tengo estoy ahora hoy pero tambien sigo traigo mios you your
""")
_STORY = 2  # sentences for which what is told of somebody goes on
_TROUBLE = listed("glue adhesive wasp bee pegamento")


def is_told_on(page: Page, sign: Mark) -> bool:
    """My mate got glue on her curtains. Acetone, scissors, tears: what is told of another goes on, nothing of her."""
    last = page.sentence[sign.start]
    if sign.name.endswith("!") or is_written_for_her(page) or _said(page, last) & (_HERE | EYES):
        return False
    for where in range(last - 1, max(-1, last - 1 - _STORY), -1):
        said = _said(page, where)
        named = [mark for mark in persons(page) if page.sentence[mark.start] == where and not _is_a_look(page, mark)]
        if named:
            owned = said & (_HERE - _RELATED)
            told = any(page.sentence[mark.start] == where for mark in page.named("scope:report"))
            asked = any(
                token.kind == ASK and place == where for token, place in zip(page.tokens, page.sentence, strict=True)
            )
            return not (owned or told or asked) and (bool(said & _TROUBLE) or tells_a_sign(page, where))
        if said & (_HERE - {"you", "your"}):
            return False
    return False


_RELATED = listed("my mi mis our")


def _said(page: Page, sentence: int) -> set[str]:
    return {token.word for token, where in zip(page.tokens, page.sentence, strict=True) if where == sentence}


def _is_a_look(page: Page, mark: Mark) -> bool:
    """Rabbit eyes. Red."""
    return mark.end < len(page.tokens) and page.tokens[mark.end].word in EYES
