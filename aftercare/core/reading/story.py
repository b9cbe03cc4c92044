"""What is told as a story over sentences: her work among eyes, a film, a dream; and where she turns to herself again.

"I'm a nurse on an eye ward. Red eyes, sticky eyes all day. Anyway my own left lid is puffy": the last is no story.
"""

from __future__ import annotations

import itertools
import re

from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import listed

_HEADS = ("scope:work", "scope:tale", "scope:dream")
_GOES_ON = 2  # sentences after the one in which a story opens
_HER_OWN = listed("my me mi mis both own")
_OWNS = 4  # "my poor left lid"
_OF_HERS = EYES | listed("left right own upper lower one izquierdo derecho lashline waterline")
_TURNS = listed("""
    mine anyway anyways today now but however though still since currently tonight mio mios ahora hoy pero sigo siguen
    aunque lately tengo traigo amaneci siento desperte
""")
_AND, _I = listed("and n y"), listed("i im ive my mine")
_I_HAVE = {("i", "have"), ("ive", "got"), ("i", "got"), ("i", "woke"), ("thats", "me")}
_WAKES = listed("woke wake awake desperte amaneci")
_IS = listed("is are am its theyre hurts burns itches stings esta estan")


def in_story(page: Page, sign: Mark) -> bool:
    """Say whether a sign is told within a story that opened before it, and not of herself after it."""
    for mark in page.named(*_HEADS):
        if mark.start > sign.start:
            continue
        first, last = page.sentence[mark.start], page.sentence[sign.start]
        if last - first > (0 if sign.name.endswith("!") else _GOES_ON):
            continue  # an alarm further on is hers unless it is said not to be
        if mark.name == "scope:dream":
            if first == last and not _turns(page, mark.end, sign.end, _TURNS | _WAKES | _IS):
                return True
        elif mark.name == "scope:tale" and first < last and _speaks_of_eyes(page, last):
            continue  # watched a film last night. Eyes so red
        elif not _is_of_herself(page, mark.end, _end(page, last)):
            return True
    return False


def sentences(page: Page) -> set[int]:
    """Return the sentences in which a story opens and that tell nothing of her own eyes."""
    heads = {page.sentence[mark.start]: mark for mark in page.named("scope:work", "scope:tale")}
    return {where for where, mark in heads.items() if not _is_of_herself(page, mark.end, _end(page, where))}


def _end(page: Page, sentence: int) -> int:
    return max(place for place, where in enumerate(page.sentence) if where == sentence) + 1


def _speaks_of_eyes(page: Page, sentence: int) -> bool:
    return bool(EYES & page.said(sentence))


def _turns(page: Page, first: int, end: int, words: frozenset[str]) -> bool:
    return any(token.word in words for token in page.tokens[first:end])


_SEES = listed("saw see sees seen seeing patient patients vi veo vemos paciente pacientes")
_TODAY = listed("today hoy tonight")


def _is_of_herself(page: Page, first: int, end: int) -> bool:
    """Say whether she turns to now, or to her own eyes, anywhere between; "saw three styes today" is her work."""
    said = [token.word for token in page.tokens[first:end]]
    if _SEES & set(said):
        said = [word for word in said if word not in _TODAY]
    own = any(one in _HER_OWN and _OF_HERS & set(said[place + 1 : place + _OWNS]) for place, one in enumerate(said))
    own = own or any(one in _AND and then in _I or (one, then) in _I_HAVE for one, then in itertools.pairwise(said))
    return own or bool((_TURNS | _WAKES) & set(said))


_WEEPING = listed("sign:watering sign:agony")
_WEPT = re.compile("tear|cry|cri|weep|wept|sob|bawl|blub|llor|lagrim|waterworks|fountain")  # and nothing that leaks
_GOES_ON_WEEPING = listed(
    "still since keeps keep wont cant constantly constant nonstop both left right light sun hurts"
)


def is_moved(page: Page, sign: Mark, signs: list[Mark]) -> bool:
    """Say whether tears are those of a film, a wedding or an onion: in its sentence or beside, and no word of eyes.

    Where she tells another sign beside them, or only compares, they are her eyes'.
    """
    if sign.name not in _WEEPING or not any(_WEPT.match(token.word) for token in page.tokens[sign.start : sign.end]):
        return False
    where = page.sentence[sign.start]
    if any(page.sentence[other.start] == where and other.name not in _WEEPING for other in signs):
        return False
    moving = (mark for mark in page.named("scope:moving") if abs(page.sentence[mark.start] - where) <= 1)
    if all(_is_compared(page, mark, signs) for mark in moving):
        return False
    return not page.said(where) & (EYES | _GOES_ON_WEEPING)


_LIKE = listed("like as if though si id vibes eyes")


def _is_compared(page: Page, mark: Mark, signs: list[Mark]) -> bool:
    """Like I'd been chopping onions; onion eyes; llora como si viera una novela."""
    if any(one.start <= mark.start < one.end for one in signs):
        return True
    near = page.tokens[max(0, mark.start - 5) : mark.end + 1]
    return any(token.word in _LIKE for token in near)
