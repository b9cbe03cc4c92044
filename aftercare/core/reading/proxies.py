"""Who writes for the client: "Tamsin's mum here", "my daughter had her lashes done with you"."""

from __future__ import annotations

import itertools

from aftercare.core.reading import lexicon
from aftercare.core.reading.page import Page
from aftercare.core.reading.tokens import WORD, Token, listed

_RELATIVES = listed("""
    mum mam mom mother mummy mammy dad father daddy daughter son husband hubby wife sister brother partner aunt aunty
    auntie gran nan granny boyfriend girlfriend bf gf fiance fiancee carer flatmate housemate roommate sis fella missus
""")
_CHILDREN = listed("""
    daughter girl lass child niece hija nina hijita sobrina chamaca nieta granddaughter peque wife missus
    fiancee esposa novia
""")
_WHOEVER = listed(
    "girlfriend gf friend mate bestie sister mum mom mam mother hermana amiga prima mama cousin"
)  # of an alarm
_WITH_YOU = {(word, you) for word in ("with", "by") for you in ("you", "ye", "yous", "u", "yall", "yas")}
_WITH_YOU |= {
    (your, place)
    for your in ("your", "ur")
    for place in (
        *("place", "salon", "studio", "parlour", "shop", "chair", "glue"),
        *("removal", "fill", "infill", "set", "lift", "tint", "appointment", "treatment"),
    )
}
_DONE = listed("""
    lift lashes lash appointment removal infill tint treatment set fill extensions done visit pestanas cita
    pusieron pusiste puso hizo hicieron hiciste atendieron atendiste atendio fue estuvo vino
""")
_HAD_THEM = {f"{had} {what} done" for had in ("had", "has", "got") for what in ("them", "these", "those", "it")}
_ELSEWHERE = listed("elsewhere another other different else last ago years never")
_OPENING = 9  # tokens within which somebody who writes for a client says who she is


def is_written_for_her(page: Page) -> bool:
    """Say whether somebody writes for the client: Tamsin's mum here; my daughter had her lashes done with you."""
    if "for_her" not in page.known:
        page.known["for_her"] = _is_written_for_her(page)
    return page.known["for_her"]


def _is_written_for_her(page: Page) -> bool:
    tokens = page.tokens
    if page.marks.get("scope:proxy"):
        return True
    if len(tokens) > 2 and tokens[0].word in _RELATIVES and tokens[1].word == "of":
        return True
    for place, token in enumerate(tokens[:_OPENING]):
        if token.word in _RELATIVES and place and _is_a_name(tokens, place):
            return True
    words = [token.word for token in tokens]
    clients = _CHILDREN | (_WHOEVER if is_grave(page) else frozenset())
    if not any(word in clients and place and words[place - 1] in ("my", "mi") for place, word in enumerate(words)):
        return False
    said = set(words)
    if _DONE & said and (said & {"contigo", "ustedes"} or any(pair in _WITH_YOU for pair in itertools.pairwise(words))):
        return True
    had_them = _HAD_THEM & {" ".join(words[place : place + 3]) for place in range(len(words))}
    return bool(had_them) and not _ELSEWHERE & said


_NO_NAMES = listed("""
    its it's that's he's she's there's here's what's today's friend's sister's mum's mom's brother's boss's husband's
    who's
""")
_SAYS_WHO = listed("its is this")
_BEFORE_A_NAME = listed("its is this hi hello hey from")


def _is_a_name(tokens: list[Token], place: int) -> bool:
    """Say whether what stands before "mum" is a name that opens the reply: "Ada's mum here", "hi its Adas mum"."""
    written = tokens[place - 1].written
    before = tokens[place - 2] if place > 1 else None
    opens = before is None or before.kind != WORD or before.word in _BEFORE_A_NAME
    if written.endswith("'s"):
        return opens and written not in _NO_NAMES
    plain = len(written) > len("his") and written.endswith("s") and written not in lexicon.WORDS
    return plain and opens and before is not None and before.word in _SAYS_WHO


def is_grave(page: Page) -> bool:
    """Say whether an alarm is spoken of."""
    return any(name.startswith("sign:") and name.endswith("!") for name in page.marks)
