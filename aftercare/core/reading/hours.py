"""A sentence that is nothing but a time names one for a visit: "Another day?", "Thursday. Ten.", "¿El lunes?"."""

from __future__ import annotations

from aftercare.core.reading import lexicon
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, listed

_TIMES = listed("""
    monday tuesday wednesday thursday friday saturday sunday mon sat sun mondays tuesdays wednesdays thursdays fridays
    saturdays sundays tomorrow noon fortnight lunchtime weekend payday january february march april june july august
    september october november december lunes martes miercoles jueves viernes sabado domingo manana quincena
""")
_SPANS = listed("week month day hour time semana mes dia rato hora")
_OTHER = listed("next another other different half following after else otro otra proxima proximo siguiente media")
_BESIDE = _OTHER | listed("""
    the a an at on in for or and then instead please pls maybe god willing later earlier morning afternoon evening early
    late am pm one two three four five six seven eight nine ten eleven twelve thirty fifteen first last some what about
    how sorry that ok okay yes no till until s el la los las un una o y por favor porfa mejor para pa que tal en de
    quiza
""")
_LONGEST = 6  # words


def alone(page: Page, *, asked_only: bool) -> Mark | None:
    """Return a sentence of a time alone; where she tells of her eyes it has to ask, as "Since when? Tuesday." does not.

    "Two days" and "the next day" are no times of a visit.
    """
    asked = page.asked()
    for where in dict.fromkeys(page.sentence):
        if asked_only and where not in asked:
            continue
        places = [
            place
            for place, (token, at) in enumerate(zip(page.tokens, page.sentence, strict=True))
            if at == where and token.kind == WORD
        ]
        words = [page.tokens[place].word for place in places]
        if 0 < len(words) <= _LONGEST and _is_a_time(words):
            return Mark("topic:booking", places[0], places[-1] + 1)
    return None


def _is_a_time(words: list[str]) -> bool:
    named = [word in _TIMES or bool({"<clock>", "<nth>"} & set(lexicon.ENGLISH.classes_of(word))) for word in words]
    spans = [word in _SPANS for word in words]
    if not all(
        one or span or word in _BESIDE or word.isdigit() for word, one, span in zip(words, named, spans, strict=True)
    ):
        return False
    if any(named):
        return True
    return any(spans) and bool(_OTHER & set(words)) and words[-2:] != ["next", "day"]
