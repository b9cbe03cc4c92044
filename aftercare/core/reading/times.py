"""Time: over, nearly over, back again."""

from __future__ import annotations

from aftercare.core.reading import ends
from aftercare.core.reading.one_end import is_joined_to, is_named_last, leaves_some
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.returning import came_back
from aftercare.core.reading.standing import Standing
from aftercare.core.reading.tokens import ASK, COMMA, STOP, WORD, listed
from aftercare.core.reading.words.tenses import PAST_WORDS, PRESENT_WORDS


def by_time(page: Page, sign: Mark, signs: list[Mark]) -> Standing:
    """Return whether a sign is current, nearly over or over, as the words about time have it; ``signs`` are all."""
    if _was_the_first(page, sign):
        return Standing.OVER
    over = _resolution(page, sign, signs, "scope:over")
    near = _resolution(page, sign, signs, "scope:near")
    if over is not None and not came_back(page, sign, over):
        nearly = (mark for mark in page.named("scope:near") if mark.start <= over.start < mark.end + 2)
        if any(_hedges(page, mark) for mark in nearly) or leaves_some(page, over):
            return Standing.NEARLY_OVER
        return Standing.OVER
    if near is not None and not came_back(page, sign, near, and_still=False):
        return Standing.NEARLY_OVER
    return Standing.CURRENT


def _was_the_first(page: Page, sign: Mark) -> bool:
    """Gone from sore to itchy."""
    before = page.tokens[sign.start - 1].word if sign.start else ""
    after = page.tokens[sign.end].word if sign.end < len(page.tokens) else ""
    return (before, after) == ("from", "to")


_FORETOLD = listed("said mentioned warned expected leaflet told avisaste aviso dijiste dijo advirtio advertiste")
_MILD = listed("""
    bit little tiny slight slightly mild mildly faint touch trace minor hint barely hardly less settling pinkish
    trifle wee smidge tad leve leves poco poquito tantito ligero ligera apenas
""")


def _is_foretold(page: Page, mark: Mark) -> bool:
    return any(token.word in _FORETOLD for token in page.tokens[mark.start : mark.end])


def _too_long(page: Page, sign: Mark) -> bool:
    """You said it might sting a bit, but three days?"""
    return any(page.sentence[mark.start] == page.sentence[sign.start] for mark in page.named("scope:toolong"))


def _is_mild(page: Page, sign: Mark) -> bool:
    sentence = page.sentence[sign.start]
    return bool(_MILD & page.said(sentence))


_PAST_SIGNS = listed("""
    itched burned burnt stung watered teared ached throbbed puffed flared poked lloraban lloraron picaba picaban
    ran wept leaked streamed swelled swole reddened flaked crusted hurt
    ardia ardian dolia dolian molesto molestaba enrojecieron enrojecio hincharon irritaron lloraba
""")
_DAYS = listed("""
    monday tuesday wednesday thursday friday saturday sunday lunes martes miercoles jueves viernes sabado
    domingo 1st day
""")
_ON_A_DAY = _DAYS | listed("yesterday first night ayer primer primera anoche principio")


_HEDGES = listed("almost nearly mostly basically practically pretty casi most just only but")  # "all but gone"


def _hedges(page: Page, mark: Mark) -> bool:
    return any(token.word in _HEDGES for token in page.tokens[mark.start : mark.end])


def is_told_in_past(page: Page, sign: Mark) -> bool:
    """Say whether the clause of the sign, or what leads to it in the sentence, is told in the past."""
    sentence = page.sentence[sign.start]
    place = sign.end - 1
    while place >= 0 and page.sentence[place] == sentence:
        word = page.tokens[place].word
        if word in PRESENT_WORDS and place < sign.start:
            return False
        if word in PAST_WORDS or place >= sign.start and word in _PAST_SIGNS:
            return True
        place -= 1
    span = page.span(sentence)
    around = page.tokens[max(span.start, sign.start - 6) : min(span.stop, sign.end + 6)]
    if not any(token.word in _ON_A_DAY for token in around):
        return False
    return not _goes_on_since(page, sentence)


_NOW_WORDS = PRESENT_WORDS | listed("isnt arent dont doesnt aint none nothing nomore anymore tonight currently ni")


def is_told_of_now(page: Page, sign: Mark) -> bool:
    """Say whether the clause of a denied sign is of today: "isn't itchy now", "no itch today"."""
    first = page.clause[sign.start]
    words = {token.word for token, clause in zip(page.tokens, page.clause, strict=True) if clause == first}
    return bool(words & _NOW_WORDS) or not words & PAST_WORDS and not is_told_in_past(page, sign)


_NOTHING = listed("nothing none fine good gone ok okay normal clear better ever nada bien")


def _goes_on_since(page: Page, sentence: int) -> bool:
    """Say whether it began and goes on: "since yesterday", and not "nothing since"."""
    return any(
        page.tokens[place].word in ("since", "desde") and not (place and page.tokens[place - 1].word in _NOTHING)
        for place in page.span(sentence)
    )


def _resolution(page: Page, sign: Mark, signs: list[Mark], name: str) -> Mark | None:
    for mark in page.named(name):
        if not ends.may_end(page, mark, sign) or name == "scope:over" and ends.is_no_end(page, mark):
            continue
        if (
            name == "scope:near"
            and _is_foretold(page, mark)
            and not (_is_mild(page, sign) and not _too_long(page, sign))
        ):
            continue  # "itching pretty bad, and I did wash them like you said"
        if mark.start <= sign.start < mark.end and mark.end - mark.start > sign.end - sign.start:
            return mark
        if sign.name == "sign:unwell" and sign.start <= mark.start and mark.end <= sign.end:
            return mark  # "right eye settled itself overnight"
        if (mark.start, mark.end) == (sign.start, sign.end):
            return mark  # "deshinchó"
        if name == "scope:near" and sign.name == "sign:light" and sign.start < mark.start < sign.end:
            return mark  # "light is barely a bother"
        if mark.end <= sign.start:
            if _leads(page, mark, sign):
                return mark
        elif mark.start >= sign.end and _follows(page, mark, sign, signs):
            return mark
    return None


_TOLD_OF_BEFORE = listed("was were era eran fue")
_LEADING_OVER = listed("""
    stopped settled calmed cleared curo curaron borro borraron quitaron fueron bajaron calmo calmaron alivio aliviaron
    deshincho desinflamo seco secaron paro pararon cedio acabo acabaron dejo dejaron
""")
_NOT_SO_MUCH, _OF_IT = listed("tanto tanta tantos tantas much"), listed("de del")


def _leads(page: Page, mark: Mark, sign: Mark) -> bool:
    """Hardly red; almost no itching; stopped burning; going down, the swelling."""
    if page.sentence[mark.start] != page.sentence[sign.start]:
        return False
    between = page.tokens[mark.end : sign.start]
    if between and between[0].kind == COMMA and page.tokens[mark.end - 1].word in _NOT_SO_MUCH:
        return False  # "the right lid not so much, it is swollen"
    if is_named_last(page, mark, sign):
        return True
    if len(between) > 4:
        return False
    if mark.name == "scope:over" and between and all(token.word in _OF_IT for token in between):
        return True  # "amanecí bien del picor"
    if mark.name == "scope:over" and any(token.word in _TOLD_OF_BEFORE for token in between):
        return True  # "all calmed down, was only red for the evening"
    if any(
        token.word in ("but", "pero", "still", "except", "and", "y") or token.kind in (STOP, ASK) for token in between
    ):
        return False
    if mark.name == "scope:over":
        words = {token.word for token in page.tokens[mark.start : mark.end]}
        return bool(
            words
            & (_LEADING_OVER | {"longer", "paso", "quito", "fue", "bajo", "no", "only", "just", "desaparecio", "solo"})
        ) and not any(token.kind == COMMA for token in between)
    return not any(token.kind == COMMA for token in between) or len(between) <= 2


def _follows(page: Page, mark: Mark, sign: Mark, signs: list[Mark]) -> bool:
    """The redness is gone; was pink last night, gone now; itched a bit. All good today."""
    clause = page.clause[mark.start]
    if clause == page.clause[sign.start]:
        return True
    between = [
        other
        for other in signs
        if other.start >= sign.end and other.end <= mark.start and page.clause[other.start] == clause
    ]
    if between:
        return page.sentence[mark.start] == page.sentence[sign.start] and is_joined_to(page, sign, between)
    strong = not _is_vague(page, mark)
    if page.sentence[mark.start] == page.sentence[sign.start]:
        return strong or is_told_in_past(page, sign)
    if page.sentence[mark.start] - page.sentence[sign.start] > 2:
        return False
    return is_told_in_past(page, sign) or strong and mark.name == "scope:over" and _is_about_it(page, mark)


_THATS_ALL = listed("and n thats that all it was")


def _is_vague(page: Page, mark: Mark) -> bool:
    """Say whether a resolution could be about anything: "good today", "less"."""
    words = {token.word for token in page.tokens[mark.start : mark.end]}
    if words <= _THATS_ALL:
        return True
    if mark.name == "scope:near" and (mark.end - mark.start > 2 or words & _MUCH and _is_a_clause(page, mark)):
        return False
    return bool(
        words & {"good", "less", "not", "menos", "today", "hoy", "expected", "bien", "perfect", "great", "mejor"}
    )


_MUCH = listed("mucho bastante much way loads heaps far lots")
_LEADS_IN = listed("but pero y and its it theyre ya hoy now today already though aunque ahora")


def _is_a_clause(page: Page, mark: Mark) -> bool:
    """Still a bit red but much better: nothing else is better than it was."""
    clause = page.clause[mark.start]
    return all(
        mark.start <= place < mark.end or token.kind != WORD or token.word in _LEADS_IN
        for place, (token, where) in enumerate(zip(page.tokens, page.clause, strict=True))
        if where == clause
    )


def _is_about_it(page: Page, mark: Mark) -> bool:
    before = [token.word for token in page.tokens[max(0, mark.start - 4) : mark.end]]
    sentence = page.sentence[mark.start]
    alone = sum(
        token.kind == WORD and where == sentence for token, where in zip(page.tokens, page.sentence, strict=True)
    )
    if alone == mark.end - mark.start:
        return True  # "that crusty thing? Cleared."
    return (
        bool({"it", "its", "they", "theyre", "all", "that", "se", "ya", "everything", "todo"} & set(before))
        or mark.start == 0
    )
