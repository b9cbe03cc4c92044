"""Denial that stands behind what it denies: "Redness? No.", "hinchazón ninguna", "sore? me? not at all"."""

from __future__ import annotations

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import ASK, COMMA, LINE, STOP, WORD, Token, listed

EYE_WORDS = listed("eyes eye lids lid ojos ojo")
SAYS_NO = listed("no none nope nah nada zero 0 never nil negative ninguna ninguno neither n nothing")
_WHO = listed("me moi mine yo us")
_AT_ALL = listed("in at remotely even once anymore any me mine here")
_ONLY_MY_EGO = (
    listed("only just except bar solo"),
    listed("my me mi"),
    listed("ego pride head wallet purse heart confidence bank feet orgullo cartera bolsillo corazon"),
)
_OF_DENIED = listed("esta estan hay tengo estoy ando traigo son but pero is ist")
_NO_AFTER = listed("no tampoco nope nah nay nil")


def is_denied_after(page: Page, sign: Mark) -> bool:
    """Say whether the words right behind a sign deny it."""
    ways = (_answered_no, _no_after, _taken_back, _there_is_none, _all_no, _is_not_found)
    return any(denies(page, sign) for denies in ways)


_THEY = listed("they it theyre its that those these we")
_ARE_NOT = listed("isnt arent aint dont doesnt didnt havent hasnt wasnt werent wont")
_ARE = listed("are is were was do does did have has")
_WELL = listed("most certainly really definitely simply just absolutely sure both")
_AND = listed("and because cause as but")


def is_affirmed_after(page: Page, sign: Mark) -> bool:
    """Swollen it isn't, itchy it certainly is."""
    said = _said_of_it(page, sign.end)
    return bool(said) and said[0] in _THEY and said[1:] in [[one] for one in _ARE]


def _taken_back(page: Page, sign: Mark) -> bool:
    """Red they are not; it isn't that they hurt, they don't; if they itched, and they don't."""
    tokens = page.tokens
    place = sign.end
    if place < len(tokens) and tokens[place].kind == COMMA:
        place += 1
    if place < len(tokens) and tokens[place].word in _AND:
        place += 1
    said = _said_of_it(page, place)
    if not said or said[0] not in _THEY:
        return False
    return (
        said[1:] in [[no] for no in _ARE_NOT]
        or len(said) == len(_THEY_ARE_NOT)
        and said[1] in _ARE
        and said[2] == "not"
    )


_THEY_ARE_NOT = ("they", "are", "not")


def _said_of_it(page: Page, place: int) -> list[str]:
    """Return the words up to the end of what is said there, without those that only strengthen."""
    said: list[str] = []
    while place < len(page.tokens) and len(said) <= len(_THEY_ARE_NOT):
        token = page.tokens[place]
        if token.kind != WORD or said and token.word in (*_AND, "though"):
            break
        if token.word not in _WELL:
            said.append(token.word)
        place += 1
    return said


_THERE, _NONE_THERE = listed("theres there theyre hay"), listed("isnt arent wasnt werent none aint no")


def _there_is_none(page: Page, sign: Mark) -> bool:
    """I'd send a picture of the red, but there isn't any. -- Redness, but there isn't any swelling: red she is."""
    if sign.name not in _SEEN:
        return False  # "as if there were a speck, and there isn't any": the feeling stays
    for mark in page.named("scope:unmet"):
        words = {token.word for token in page.tokens[mark.start : mark.end]}
        after = page.tokens[mark.end] if mark.end < len(page.tokens) else None
        if (
            0 < mark.start - sign.end <= _THERE_REACH
            and page.sentence[mark.start] == page.sentence[sign.start]
            and words & _THERE
            and words & _NONE_THERE
            and (after is None or after.kind != WORD)
            and not _another_between(page, sign, mark)
        ):
            return True
    return False


_SEEN = listed("sign:redness sign:swelling sign:itching sign:burning sign:pain sign:watering sign:discharge sign:rash")
_THERE_REACH = 6  # tokens


def _another_between(page: Page, sign: Mark, none: Mark) -> bool:
    found = (one for name, marks in page.marks.items() if name.startswith("sign:") for one in marks)
    return any(sign.end <= one.start < none.start and one.name != sign.name for one in found)


_SEEKS = listed("""
    looked look looking checked checking searched searching hunted hunting complain waiting waited watching watched
    busque buscando buscaba revise revisando espere esperaba
""")
_SOUGHT = 6  # words from the seeking to the sign, and from there to what was found


def _is_not_found(page: Page, sign: Mark) -> bool:
    """I looked for redness, and frankly there's none; busqué hinchazón y no hay."""
    where = page.sentence[sign.start]
    before = {token.word for token in page.tokens[max(0, sign.start - _SOUGHT) : sign.start]}
    return bool(_SEEKS & before) and any(
        page.sentence[mark.start] == where and 0 <= mark.start - sign.end <= _SOUGHT
        for mark in page.named("scope:foundnone")
    )


_ALL, _NO_TO_ALL = listed("all each both todo todas todos"), SAYS_NO | listed("absent")


def _all_no(page: Page, sign: Mark) -> bool:
    """(Itchy, puffy, red) all nope: after nothing but other signs, all are denied."""
    tokens = page.tokens
    if not any(token.word in _ALL for token in tokens[sign.end :]):
        return False
    listed_signs = {
        place
        for name, marks in page.marks.items()
        if name.startswith("sign:")
        for mark in marks
        for place in range(mark.start, mark.end)
    }
    place = sign.end
    while place < len(tokens) and (
        place in listed_signs or tokens[place].kind == COMMA or tokens[place].word in _LISTS
    ):
        place += 1
    if place + 1 >= len(tokens) or tokens[place].word not in _ALL or tokens[place + 1].word not in _NO_TO_ALL:
        return False
    return place + 2 == len(tokens) or tokens[place + 2].kind != WORD


_LISTS = listed("and or nor y o ni")


def _answered_no(page: Page, sign: Mark) -> bool:
    """Redness? No. Swelling - none. Itch free."""
    tokens = page.tokens
    place = _past_asking(tokens, sign.end)
    if place < len(tokens) and tokens[place].word in ("free", "cero"):
        return True
    if place + 1 < len(tokens) and tokens[place].word in EYE_WORDS and tokens[place + 1].kind == ASK:
        place += 1  # "swollen eyes? nah"
    if place + 2 < len(tokens) and tokens[place].kind == ASK and tokens[place + 1].word in _WHO:
        place += 2 if tokens[place + 2].kind == ASK else 0  # "sore? me? not in the slightest"
    if [token.word for token in tokens[place : place + 2]] == [",", "then"]:
        return place + 2 < len(tokens) and tokens[place + 2].word in SAYS_NO  # "if you mean swelling, then no"
    marks = 0
    said = 0
    while (
        place < len(tokens)
        and marks < 2
        and tokens[place].kind in (COMMA, ASK, STOP, LINE)
        and tokens[place].word in ":?-=–—("
    ):
        marks += 1
        place += 1
    if tokens[place - 1].word in "?:=" and marks or marks and tokens[place - 1].word in "-–—(":
        while (
            place < len(tokens)
            and said < 2
            and tokens[place].word in ("also", "again", "big", "hard", "tambien", "a", "para")
        ):
            place += 1
            said += 1
        if place >= len(tokens):
            return False
        return tokens[place].word in SAYS_NO or _is_not_at_all(tokens, place) or _is_of_pride(tokens, place)
    return False


_ASKING = listed("""
    you u ye that which asked ask mentioned mention warned warn said told tell were was are asking talking worried about
    of me us i on to talk speak always expect expected get expecting going would might i'd id everyone everybody people
    they had described
    que me preguntaste preguntas preguntaba preguntabas dijiste decias mencionaste avisaste advertiste comentaste por
""")
_ASKED = listed("""
    asked mentioned warned said told asking talking talk mention expected expecting expect described get had
    preguntaste preguntas preguntabas dijiste decias mencionaste avisaste advertiste comentaste
""")
_ASKING_WORDS = 8


def _past_asking(tokens: list[Token], place: int) -> int:
    """Return where "the redness you asked about: none" goes on after who spoke of it."""
    last = place
    while last < len(tokens) and last - place < _ASKING_WORDS and tokens[last].word in _ASKING:
        last += 1
    return last if _ASKED & {token.word for token in tokens[place:last]} else place


def _is_of_pride(tokens: list[Token], place: int) -> bool:
    """Swelling? Only my ego."""
    following = tokens[place : place + len(_ONLY_MY_EGO)]
    if len(following) < len(_ONLY_MY_EGO):
        return False
    return all(token.word in words for token, words in zip(following, _ONLY_MY_EGO, strict=True))


def _is_not_at_all(tokens: list[Token], place: int) -> bool:
    """Redness? Not in the slightest; not a smidge. -- "Redness? Not half" is another matter."""
    if tokens[place].word != "not" or place + 1 >= len(tokens):
        return False
    following = [token.word for token in tokens[place + 1 : place + 4]]
    return following[0] in _AT_ALL or following[0] in _ONE and bool(_SCRAP & set(following[1:]))


_ONE = listed("a an one the")
_SCRAP = listed("""
    smidge smidgen bit jot scrap drop hint trace touch whit sausage peep dot twinge tingle flicker speck ounce tad iota
    shred whisper dicky single bean crumb spot sniff whiff tickle chance hope thing slightest faintest
""")


_NONE, _CLITICS = listed("ninguna ninguno"), listed("me se les le los las")
_SHOWS = listed("ve ven veo vi noto notan salio salieron sale salen hay siento ha han")


def _is_not_gone(page: Page, sign: Mark) -> bool:
    """El susto ya se me pasó, la irritación no: what is denied is that it went."""
    return any(
        page.sentence[mark.start] == page.sentence[sign.start]
        and mark.end <= sign.start
        and page.clause[mark.start] != page.clause[sign.start]
        and not SAYS_NO & {token.word for token in page.tokens[mark.start : mark.end]}
        and page.clause[sign.start] - page.clause[mark.start] == 1
        for mark in page.named("scope:over")
    )


def _no_after(page: Page, sign: Mark) -> bool:
    """Picazón no; rojo no está; redness was not seen."""
    tokens = page.tokens
    place = _past_asking(tokens, sign.end)
    if sign.end < place < len(tokens) and tokens[place].kind == COMMA:
        place += 1
    before = tokens[sign.start - 1].word if sign.start else ""
    if before == "nada" or place < len(tokens) and tokens[place].word in _NONE:
        return True  # "nada borroso", "hinchazón ninguna"
    if page.covers("scope:unseen", place) and not page.covers("scope:unseen", place - 1):
        return True
    if [token.word for token in tokens[place : place + 2]] == ["ya", "no"]:
        place += 1  # "rojo ya no"
    if place >= len(tokens) or tokens[place].word not in _NO_AFTER:
        return False
    if place + 1 == len(tokens) or tokens[place + 1].kind != WORD:
        return not _is_not_gone(page, sign)
    named, denied = tokens[sign.end - 1].word, tokens[place + 1].word
    if named.endswith(("ar", "er")) and (denied in ("me", "se") or denied[:2] == named[:2]):
        return True  # "arder no me arden", "arder no arden"
    if denied in _CLITICS and place + 2 < len(tokens) and tokens[place + 2].word in _SHOWS:
        return True  # "colorados no se ven"
    return denied in _OF_DENIED


_OWN_SUBJECT = listed("its theyre theres im ive")


def has_own_subject(page: Page, sign: Mark) -> bool:
    """Say whether the words of a sign are a sentence of their own, which a denial before them does not reach."""
    words = [token.word for token in page.tokens[sign.start : sign.start + 2]]
    return words[0] in _OWN_SUBJECT or words == ["this", "time"]
