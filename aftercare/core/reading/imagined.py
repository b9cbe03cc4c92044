"""Whether a sign is only imagined: what would be, what was expected, what might come."""

from __future__ import annotations

import itertools

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import COMMA, LINE, WORD, Token, listed

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
_I_HAVE = listed("i im ive my")  # "I'm going to have to skip Monday as I have a rash"


_IT_DOES = {(it, does) for it in ("it", "they", "this") for does in ("does", "did", "do", "is", "are", "has", "have")}


def _is_still_so(between: list[Token]) -> bool:
    """Would it normally still be puffy: it is."""
    return any(token.word == "still" for token in between[-_BESIDE:])


_BESIDE = 3  # tokens before a sign


def _turns_to_now(between: list[Token]) -> bool:
    """You warned me it would itch and it's itching badly."""
    words = [token.word for token in between]
    triples = zip(words, words[1:], words[2:], strict=False)
    if any(one in _AND and (it, does) in _IT_DOES for one, it, does in triples):
        return True
    pairs = itertools.pairwise(words)
    return any(first in _AND and then in _THIS_IS or first == "as" and then in _I_HAVE for first, then in pairs)


_ASKED = listed("how should do does is are")
_SO_FAR = listed("been since still dozens constantly hours days")
_NOT_YET = listed("not never havent hasnt isnt arent fine good if before until")
_SOON = 3  # words


def _goes_on(page: Page, mark: Mark, sign: Mark) -> bool:
    """How long does the blur last? Been a day now. -- Should I worry about flashes, dozens an hour?"""
    if page.tokens[mark.start].word not in _ASKED:
        return False
    clause = page.clause[sign.start]
    places = [
        place for place, where in enumerate(page.clause) if where == clause + 1 and page.tokens[place].kind == WORD
    ]
    words = [page.tokens[place].word for place in places]
    return bool(_SO_FAR & set(words[:_SOON])) and not _NOT_YET & set(words)


def _while_it_is_so(between: list[Token]) -> bool:
    """If you text me once more while my lids are peeling off: they are."""
    return any(one.word == "while" and then.word == "my" for one, then in itertools.pairwise(between))


_WHAT_THEN = listed("who what how do does would will can could call ring come i we if")


def _asks_of_her_state(page: Page, mark: Mark, sign: Mark) -> bool:
    """Should my lid be folding over like that? -- But: should my lid swell, who do I ring?"""
    sentence = page.sentence[sign.start]
    words = {token.word for token in page.tokens[mark.start : sign.end]}
    asked = page.tokens[mark.start].word == "should" and sentence in page.asked()
    return asked and bool(words & {"be", "look", "feel"}) and not page.said(sentence) & _WHAT_THEN


_THE, _END = listed("the this my"), listed("end ends ending stop stops ease settle fade leave go wear quit")
_IN_GENERAL = listed("normally usually typically generally people clients ladies everyone after")


def _asks_for_its_end(page: Page, sign: Mark) -> bool:
    """Does the burning end eventually? -- What she wants an end of is there."""
    before = page.tokens[sign.start - 1].word if sign.start else ""
    after = page.tokens[sign.end].word if sign.end < len(page.tokens) else ""
    here = before in _THE and after in _END
    return here and not page.said(page.sentence[sign.start]) & _IN_GENERAL and not page.marks.get("scope:before")


_FEARED = listed("thought scared afraid worried nervous terrified expected expecting feared convinced dreading")
_ADDING = listed("all so really very with a big and or like proper totally completely just even")


def _only_adds(between: list[Token]) -> bool:
    """Say whether after a comma the same is told on: "thought I'd look like a clown, all blotchy"."""
    comma = next(place for place, token in enumerate(between) if token.kind in (COMMA, LINE))
    return all(token.word in _ADDING for token in between[comma + 1 :])


_MAY = listed("is does will would can could do are should")
_ACTS = listed("squinting crying rubbing scratching sweating sneezing blinking itching")
_RUBS, _I = listed("rub scratch touch"), listed("i you we")  # "can I rub my eyes"
_NORMAL = listed("normal ok okay usual expected common")


def _asks_of_an_act(page: Page, sign: Mark, sentence: int) -> bool:
    """Is squinting at a screen bad for them? Does rubbing make them shed? -- But not: is itching normal?"""
    before = page.tokens[sign.start - 1] if sign.start else None
    if page.tokens[sign.start].word in _RUBS and sign.start > 1 and before is not None and before.word in _I:
        asks = sign.start == 2 or page.tokens[sign.start - 3].kind != WORD
        return asks and page.tokens[sign.start - 2].word in _MAY
    if before is None or before.word not in _MAY or page.tokens[sign.start].word not in _ACTS:
        return False
    opens = sign.start == 1 or page.tokens[sign.start - 2].kind != WORD
    return opens and not _NORMAL & page.said(sentence)


_SUPPOSES = listed("suppose supposing hypothetically theoretically theory hypothetical imagine say")


def is_imagined(page: Page, sign: Mark) -> bool:
    """Say whether a sign is only supposed, feared or asked about: "what if my eyes swell?"."""
    sentence = page.sentence[sign.start]
    if _asks_of_an_act(page, sign, sentence):
        return True
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
        if (
            _is_still_so(between)
            or mark.name == "scope:will"
            and (_turns_to_now(between) or _goes_on(page, mark, sign))
        ):
            continue
        if _while_it_is_so(between) or _asks_of_her_state(page, mark, sign) or _asks_for_its_end(page, sign):
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
    que puedo puede debo deberia entonces hago pasa voy vengo llamo aviso quitan cuanto como regreso quitas quitarias
    harias haces hacen devuelven devuelves cobran cobras reembolsan atiendes atienden vendria iria llamaria avisaria
""")


def _has_consequence(page: Page, sentence: int) -> bool:
    """Say whether a Spanish "si" is "if" here: without a consequence or a question it is more likely a "sí"."""
    return sentence in page.asked() or bool(_CONSEQUENCE & page.said(sentence))
