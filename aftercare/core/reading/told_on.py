"""What is told of somebody else and goes on in the next sentences: "my mate got glue in her hair. Acetone, tears"."""

from __future__ import annotations

from aftercare.core.reading.long_ago import tells_a_sign
from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.proxies import is_written_for_her
from aftercare.core.reading.tokens import listed
from aftercare.core.reading.whose import persons

_HERE = listed("""
    i im ive my me mine myself now today tonight both left right but anyway still though we our too also same this me mi
    mis yo tengo estoy ahora hoy pero tambien sigo traigo mios you your conmigo
""")
_OWNED = listed("i im ive me mine myself also too same yo tengo estoy sigo traigo mios tambien")
_STORY = 2  # sentences for which what is told of somebody goes on
_TROUBLE = listed("glue adhesive wasp bee pegamento")
_THIRD = listed("he hes she shes he's she's her his their him hers theirs ella")  # "they" may be her lids


def is_told_on(page: Page, sign: Mark) -> bool:
    """My mate got glue on her curtains. Acetone, scissors, tears: what is told of another goes on, nothing of her.

    An alarm, or a word of eyes, is somebody else's only where the sentence, or the next one, says whose.
    """
    last = page.sentence[sign.start]
    said = page.said(last)
    if is_written_for_her(page) or said & _HERE:
        return False
    grave = sign.name.endswith("!") or bool(said & EYES)
    if grave and not (said & _THIRD or _opens_with(page, last + 1, _THIRD)):
        return False
    for where in range(last - 1, max(-1, last - 1 - _STORY), -1):
        before = page.said(where)
        if any(page.sentence[mark.start] == where and not _is_a_look(page, mark) for mark in persons(page)):
            if grave and before & MAY_BE_CLIENTS and not _is_of_the_past(page, where):
                return False
            told = any(page.sentence[mark.start] == where for mark in page.named("scope:report"))
            asked = where in page.asked()
            return not (before & _OWNED or told or asked) and (bool(before & _TROUBLE) or tells_a_sign(page, where))
        if before & (_HERE - {"you", "your"}):
            return False
    return False


# Whoever writes of these may write for a client.
MAY_BE_CLIENTS = listed("""
    wife missus girlfriend gf daughter sister mum mom mam mother niece fiancee esposa mujer novia hija hermana
    mama sobrina
""")


def _is_of_the_past(page: Page, sentence: int) -> bool:
    return any(page.sentence[mark.start] == sentence for mark in page.named("scope:past"))


def _opens_with(page: Page, sentence: int, words: frozenset[str]) -> bool:
    return (
        next((token.word for token, where in zip(page.tokens, page.sentence, strict=True) if where == sentence), "")
        in words
    )


def _is_a_look(page: Page, mark: Mark) -> bool:
    """Rabbit eyes. Red."""
    return mark.end < len(page.tokens) and page.tokens[mark.end].word in EYES
