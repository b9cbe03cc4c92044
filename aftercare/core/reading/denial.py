"""Denial: a trigger reaches forward until a word that ends it; lists go on over commas, new subjects stop it."""

from __future__ import annotations

from aftercare.core.reading.carried import is_carried
from aftercare.core.reading.denied_after import EYE_WORDS, SAYS_NO, has_own_subject, is_affirmed_after, is_denied_after
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.running_on import begins_anew
from aftercare.core.reading.taken_back import denies_an_end, denies_backwards, has_condition, is_unsaid
from aftercare.core.reading.tokens import ASK, COMMA, LINE, PICTURE, STOP, WORD, Token, listed
from aftercare.core.reading.until_now import is_turned_round

_REACH = 14
# Signs whose phrases may hold a denial that is none of theirs: "the light isn't bothering me".
_MAY_HOLD = listed("""
    sign:light sign:gritty sign:poking sign:watering sign:discharge sign:swelling! sign:irritated
""")
_ADJECTIVES = listed("""
    red pink itchy swollen puffy sore watery gritty blurry crusty flaky tender painful irritated inflamed
    bloodshot teary sticky scratchy dry sandy weepy hurts itches burns stings hurt itching burning stinging
""")
_JOINS = listed("or and nor y ni o e")
_LIST_WORDS = listed("""
    or and nor y ni o e any no even so much as the a at all of more real kind sort type in my eyes eye anything
    too also particularly really not very overly bit excess excessive extra bad unusual tampoco nada de ningun
    ninguna
""")
_SELF = listed("i im ive my me yo mi mis tengo estoy siento traigo")


def is_denied(page: Page, sign: Mark) -> bool:
    """Say whether the words beside a sign deny it: "no redness", "rojo no tengo"."""
    if is_denied_after(page, sign) or asked_of_others(page, sign) or _sees_no_blur(page, sign):
        return True
    if is_affirmed_after(page, sign):
        return False
    after = [token.word for token in page.tokens[sign.end : sign.end + 2]]
    if after[:1] == ["sip"] and (len(after) == 1 or not after[1].isalpha()):
        return False  # "rojo no tengo, picazón sí"
    if any(mark.start >= sign.end for mark in page.named("scope:wrong", "scope:isnow")):
        return False  # "I said no itching. I spoke too soon"
    if is_turned_round(page, sign):
        return False
    if any(mark.start <= sign.start < mark.end and not _never_went(page, mark) for mark in page.named("scope:nonneg")):
        return False
    for mark in reversed(page.named("scope:no", "scope:not", "scope:turned")):
        if mark.start >= sign.end or page.sentence[mark.start] != page.sentence[sign.start]:
            continue
        inside = sign.start < mark.start < sign.end and (sign.name in _MAY_HOLD or _is_of_sight(page, sign))
        if mark.start >= sign.start and not inside:
            continue
        if denies_backwards(page, mark):
            continue
        if is_unsaid(page, mark) or is_carried(page, mark, sign) or denies_an_end(page, mark, sign):
            return False
        if not inside and mark.end < sign.start and has_own_subject(page, sign):
            continue  # "it's not red it's my breathing"
        if (
            inside
            or mark.start < sign.start < mark.end
            or _reaches(page, mark, sign.start, alarm=sign.name.endswith("!"))
        ):
            return not has_condition(page, sign)
    return False


_WENT, _NEVER = listed("went gone go"), listed("never didnt havent hasnt dont wont")


def _never_went(page: Page, mark: Mark) -> bool:
    """Say whether what sounds like "gone red" is denied itself: "they never went red"."""
    words = [token.word for token in page.tokens[max(0, mark.start - 1) : mark.start + 1]]
    return len(words) == 2 and words[0] in _NEVER and words[1] in _WENT


_UNCLEAR = listed("hazy blurry blurred foggy cloudy fuzzy misty dim dark double wavy milky")


def _is_of_sight(page: Page, sign: Mark) -> bool:
    """My sight isn't hazy."""
    return sign.name.startswith("sign:vision") and page.tokens[sign.end - 1].word in _UNCLEAR


_SEES = listed("veo miro vi ve veia")
_BLURRED = listed("""
    borroso borrosa borrosos doble dobles nublado nublada empanado opaco turbio raro manchas moscas puntos sombras
    destellos halos mal nubladito
""")


def _sees_no_blur(page: Page, sign: Mark) -> bool:
    """No veo borroso: she sees, where "no veo" by itself is that she does not."""
    if not sign.name.startswith("sign:vision"):
        return False
    first = max(0, sign.start - 3)
    words = [token.word for token in page.tokens[first : sign.end + 2]]
    return any(
        word == "no" and words[at + 1] in _SEES and words[at + 2] in _BLURRED for at, word in enumerate(words[:-2])
    )


def asked_of_others(page: Page, sign: Mark) -> bool:
    """Is it normal for eyes to water? Mine haven't."""
    sentence = page.sentence[sign.start]
    return sentence in page.asked() and any(
        page.sentence[mark.start] == sentence + 1 for mark in page.named("scope:minenot")
    )


def _reaches(page: Page, mark: Mark, target: int, *, alarm: bool) -> bool:
    """Say whether a denial reaches forward to the token at ``target``; not so far where that is an ``alarm``."""
    tokens = page.tokens
    place = mark.end
    if target - place > _REACH:
        return False
    in_one = all(token.kind == WORD for token in tokens[place:target])
    spoken = place + (in_one and tokens[place].word == "me")  # "no me salieron ronchas": the verb's own "me"
    if alarm and {token.word for token in tokens[spoken:target]} & _SELF:
        return False  # "I don't feel good my throat is tight"
    before_noun = mark.name == "scope:no"
    if place < len(tokens) and tokens[place].kind in (COMMA, STOP, PICTURE) and tokens[mark.end - 1].word in SAYS_NO:
        return False  # "No, my eye is red."
    crossed = False
    walked = False
    while place < target:
        token = tokens[place]
        if token.kind in (STOP, ASK):
            return False
        if token.kind in (COMMA, LINE, PICTURE):
            if not _goes_on(page, place + 1, target, before_noun):
                return False
            if not (crossed or before_noun or _denies_a_sign(page, mark, place, target)):
                return False  # "I never rinsed it off, gritty as"
            crossed = True
        elif (
            page.covers("scope:but", place)
            and not page.covers("scope:nonneg", place)
            and not _is_so_much(tokens, place)
        ):
            return False
        elif page.covers("scope:subject", place) and (crossed or walked and tokens[place - 1].word in _JOINS):
            if token.word not in ("any", "in", "a", "bit"):
                return False
        elif (
            mark.name == "scope:no"
            and not crossed
            and place == mark.end
            and token.word
            in ("i", "my", "they", "its", "theyre", "it", "im", "the", "ive", "she", "you", "there", "that", "thats")
        ):
            return False  # "no i have redness"
        elif (
            walked
            and begins_anew(tokens, mark.end, place, target)
            or place > mark.end
            and any(other.start == place for other in page.marks.get("scope:nonneg", ()))
        ):
            return False
        if token.kind == WORD:
            walked = True
        place += 1
    if (
        tokens[target - 1].word == "y"
        and page.covers("scope:not", mark.start)
        and not _denies_a_sign(page, mark, target - 1, target)
    ):
        return False  # "todavía no seca y arde"
    if _begins_anew(tokens[mark.end : target + 1]):
        return False  # "no me pasó nada y con estas me pica"
    if before_noun and walked and crossed and tokens[target].word in _ADJECTIVES:
        after = tokens[target + 1].word if target + 1 < len(tokens) else ""
        if any(token.word in ("or", "nor") for token in tokens[target + 1 : target + 3]):
            return True  # "no itching, burning, or discharge"
        return tokens[target - 1].word in ("or", "nor", "no") or after in ("eyes", "eye", "lids", "spots", "skin")
    return not (before_noun and walked and tokens[target].word in _ADJECTIVES and tokens[target - 1].word == "and")


_CLITICS = listed("me se")


def _begins_anew(between: list[Token]) -> bool:
    """Say whether after an "y" another verb has its own "me"."""
    words = [token.word for token in between]
    return "y" in words and bool(_CLITICS & set(words[words.index("y") + 1 :]))


def _is_so_much(tokens: list[Token], place: int) -> bool:
    return tokens[place].word == "so" and place + 1 < len(tokens) and tokens[place + 1].word in ("much", "far", "bad")


def _goes_on(page: Page, place: int, target: int, before_noun: bool) -> bool:
    """Say whether after a comma the list of what is denied goes on: "no redness, swelling or pain"."""
    tokens = page.tokens
    steps = 0
    signs = page.marks
    while place < len(tokens) and steps < 4:
        token = tokens[place]
        if token.kind != WORD:
            return False
        if token.word in EYE_WORDS:
            return False
        here = [
            mark for name, marks in signs.items() if name.startswith("sign:") for mark in marks if mark.start == place
        ]
        if any(_IS & {token.word for token in tokens[mark.start : mark.end]} for mark in here):
            return False  # "without trying, lip is up": a sentence of its own
        if here:
            after = place + 1
            while after < len(tokens) and tokens[after].kind == WORD and page.clause[after] == page.clause[place]:
                if tokens[after].word in ("though", "tho", "now", "today", "instead", "however", "si"):
                    return False
                after += 1
            return True
        if token.word not in _LIST_WORDS:
            return False
        steps += 1
        place += 1
    return False


_TROUBLES = listed("""
    bother trouble problem problems issue issues anything thing symptoms reaction reactions irritation discomfort
    bad complaints side effects nada molestia molestias problema problemas
""")


def _denies_a_sign(page: Page, mark: Mark, comma: int, target: int) -> bool:
    """Say whether what a verb denies before a comma is a sign or trouble, so that the list may go on after it."""
    if any(token.word in ("or", "nor") for token in page.tokens[comma : target + 3]):
        return True  # "haven't cried, swelled or crusted"
    if _TROUBLES & {token.word for token in page.tokens[mark.start : comma]} or mark.end == comma:
        return True
    return any(
        name.startswith("sign:") and mark.start <= other.start < comma
        for name, marks in page.marks.items()
        for other in marks
    )


_IS = listed("is are has have keeps wont cant esta estan")


def no_longer(page: Page, sign: Mark) -> bool:
    """Say whether a sign was there and is no more: "not itchy anymore", "rojo ya no"."""
    words = [token.word for token in page.tokens]
    after = words[sign.end : sign.end + 5]
    before = words[max(0, sign.start - 5) : sign.start]
    if "than" in after:
        return False  # "doesn't sting any more than usual"
    if after[:2] == ["ya", "no"]:
        return True  # "rojo ya no"
    if (
        "anymore" in after
        or "no more" in " ".join(after[:3])
        or "any" in after
        and "more" in after
        or "longer" in after
        or "longer" in before
    ):
        return True
    said = [place for place, word in enumerate(before) if word == "no"]
    return bool(said) and "ya" in before[max(0, said[-1] - 2) : said[-1]]
