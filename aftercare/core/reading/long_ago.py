"""Whether a sign is of long ago, and how far an old story goes on."""

from __future__ import annotations

import itertools

from aftercare.core.reading.page import EYES, Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import listed
from aftercare.core.reading.words.tenses import PAST_WORDS, PRESENT_WORDS

_NOW = listed("now today again these time since mine ahora hoy ahorita contigo still este estas estos aca aqui sip")
_UP_TO_NOW = listed("has have ive since desde")  # "my eye has felt dusty since Sunday"


def is_long_ago(page: Page, sign: Mark) -> bool:
    """Say whether a sign is told of a time that is over: "my old salon made my eyes itch"."""
    sentence = page.sentence[sign.start]
    if any(mark.start >= sign.end and page.sentence[mark.start] == sentence for mark in page.named("scope:returns")):
        return False  # "went faint after my last set too and it's happening again"
    for mark in page.named("scope:past"):
        if page.sentence[mark.start] == sentence:
            low, high = sorted((mark.end, sign.start)) if mark.start < sign.start else (sign.end, mark.start)
            between = {token.word for token in page.tokens[low:high]}
            if _had_hers_done(page, low, high):
                between.discard("mine")
            if mark.start < sign.start:
                turns = between & {*_NOW, "but", "pero"} or _turns_to_you(page, low, high)
                if not turns:
                    return True
            elif (
                high - low <= 10
                and not _never_then(page, mark)
                and not _turns(page, low, high)
                and not _compares(page, low, high)
            ):
                return True
        elif page.sentence[mark.start] == sentence - 1 and mark.start < sign.start:
            words = page.said(sentence)
            past = words & PAST_WORDS or _tells_of_harm(page, sentence - 1) and _is_told_as_past(page, sentence, words)
            if past and not words & (PRESENT_WORDS | _UP_TO_NOW | _NOW):
                return True
    return False


_LASTED = listed("days weeks week fortnight months month dias semana semanas mes meses nights")

_UNDER_WAY = listed("in on later post after into")  # "three days in, lids swollen"
_ENDED = listed("since grew outgrew years never desde anos entonces nunca")


def _is_told_as_past(page: Page, sentence: int, words: frozenset[str]) -> bool:
    """Hinchada una semana. -- Red lumps, the works. Not had one in ten years."""
    after = page.said(sentence + 1)
    lasted = words & _LASTED and not words & _UNDER_WAY
    return bool(lasted) or bool(after & _ENDED) and not words & EYES


_HARM = listed("hospital urgencias casualty reaction reaccion")


def _tells_of_harm(page: Page, sentence: int) -> bool:
    words = page.said(sentence)
    return bool(words & _HARM) or tells_a_sign(page, sentence)


def tells_a_sign(page: Page, sentence: int) -> bool:
    """Say whether a sentence names any sign, whosever and of whatever time."""
    return any(
        name.startswith("sign:") and page.sentence[mark.start] == sentence
        for name, marks in page.marks.items()
        for mark in marks
    )


_HAD_DONE = listed("did had do got gave glued put")


def _had_hers_done(page: Page, low: int, high: int) -> bool:
    """In 2019 a girl did mine with some cheap glue: her lashes of then, and not her eyes of now."""
    words = [token.word for token in page.tokens[low:high]]
    return any(one in _HAD_DONE and then == "mine" for one, then in itertools.pairwise(words))


def _turns(page: Page, low: int, high: int) -> bool:
    """Say whether between a sign and the past she turns to now; "but that was long before" goes on about the sign."""
    words = [token.word for token in page.tokens[low : high + 1]]
    words = [word for before, word in zip(["", *words], words, strict=False) if word != "time" or before not in _EACH]
    turns = any(word in _BUT and words[place + 1 : place + 2] not in _THAT for place, word in enumerate(words[:-1]))
    return turns or bool(_NOW & set(words[:-1]))


_YOU, _BEFORE_YOU = (
    listed("you yous tu usted"),
    listed("before than until till unlike not like found met to with ante antes"),
)
_IT, _NEVER = listed("it they that this se me"), listed("never didnt wasnt werent hadnt nunca")
_NEXT = 5  # tokens after the past in which it is denied


def _turns_to_you(page: Page, low: int, high: int) -> bool:
    """The other girl did me fine, you left me with swollen lids."""
    words = [token.word for token in page.tokens[low - 1 : high]]
    return any(then in _YOU and first not in _BEFORE_YOU for first, then in itertools.pairwise(words))


def _never_then(page: Page, past: Mark) -> bool:
    """It burns when I blink; at my old place it never did."""
    after = [token.word for token in page.tokens[past.end : past.end + _NEXT]]
    return any(one in _IT and then in _NEVER for one, then in itertools.pairwise(after))


_EACH = listed("every each any")  # "had swollen lids every time at the chain place"
_BUT, _THAT = listed("but pero"), (["that"], ["eso"])
_LIKE, _WHEN = listed("like as same como igual"), listed("when how back cuando")


def _compares(page: Page, low: int, high: int) -> bool:
    """Say whether the past is only what today is compared with: "dry and flaky, like when I had eczema as a child"."""
    words = (token.word for token in page.tokens[low : high + 1])
    return any(first in _LIKE and then in _WHEN for first, then in itertools.pairwise(words))
