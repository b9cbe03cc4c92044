"""What stands around a sign: denial, time, condition, and whose it is.

After the ideas of NegEx (Chapman and others, J Biomed Inform 2001) and ConText (Harkema and others, 2009): a trigger
reaches forward until a word that ends it; phrases that only look like triggers are taken out first.
"""

from __future__ import annotations

from enum import StrEnum

from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import ASK, COMMA, LINE, PICTURE, STOP, WORD, Token

_REACH = 14
# Signs whose phrases may hold a denial that is none of theirs: "the light isn't bothering me".
_MAY_HOLD = frozenset(
    ("sign:light", "sign:gritty", "sign:poking", "sign:watering", "sign:discharge", "sign:swelling!", "sign:irritated")
)
_NOW = frozenset(["now", "today", "again", "these", "time", "since", "ahora", "hoy", "ahorita", "contigo", "still"])
_PAST_WORDS = frozenset(
    [
        "was",
        "were",
        "had",
        "got",
        "did",
        "went",
        "swelled",
        "couldnt",
        "ended",
        "came",
        "gave",
        "took",
        "turned",
        "broke",
        "felt",
        "looked",
        "tuve",
        "tenia",
        "estaba",
        "fue",
        "se",
        "hincharon",
        "hincho",
        "dio",
        "pico",
        "ardio",
        "salio",
        "started",
        "hurt",
        "made",
        "needed",
        "lost",
        "estuve",
        "ardian",
        "picaban",
        "ardieron",
        "picaron",
        "dolieron",
        "lloraron",
    ]
)
_PRESENT_WORDS = frozenset(
    [
        "is",
        "are",
        "am",
        "im",
        "now",
        "today",
        "its",
        "theyre",
        "hoy",
        "ahora",
        "estoy",
        "esta",
        "estan",
        "tengo",
        "feels",
        "still",
    ]
)
_ADJECTIVES = frozenset(
    [
        "red",
        "pink",
        "itchy",
        "swollen",
        "puffy",
        "sore",
        "watery",
        "gritty",
        "blurry",
        "crusty",
        "flaky",
        "tender",
        "painful",
        "irritated",
        "inflamed",
        "bloodshot",
        "teary",
        "sticky",
        "scratchy",
        "dry",
        "sandy",
        "weepy",
        "hurts",
        "itches",
        "burns",
        "stings",
        "hurt",
        "itching",
        "burning",
        "stinging",
    ]
)
_NOUN_AFTER = frozenset(
    [
        "eye",
        "eyes",
        "lid",
        "lids",
        "eyelid",
        "eyelids",
        "skin",
        "spots",
        "spot",
        "or",
        "nor",
        "and",
        "marks",
        "patches",
        "bumps",
        "areas",
        "anything",
    ]
)
_EYE_WORDS = frozenset(["eyes", "eye", "lids", "lid", "ojos", "ojo"])
_JOINS = frozenset(["or", "and", "nor", "y", "ni", "o", "e"])
_LIST_WORDS = frozenset(
    [
        "or",
        "and",
        "nor",
        "y",
        "ni",
        "o",
        "e",
        "any",
        "no",
        "even",
        "so",
        "much",
        "as",
        "the",
        "a",
        "at",
        "all",
        "of",
        "more",
        "real",
        "kind",
        "sort",
        "type",
        "in",
        "my",
        "eyes",
        "eye",
        "anything",
        "too",
        "also",
        "particularly",
        "really",
        "not",
        "so",
        "much",
        "as",
        "very",
        "overly",
        "bit",
        "excess",
        "excessive",
        "extra",
        "bad",
        "unusual",
        "tampoco",
        "nada",
        "de",
        "ningun",
        "ninguna",
    ]
)
_SAYS_NO = frozenset(
    [
        "no",
        "none",
        "nope",
        "nah",
        "nada",
        "zero",
        "0",
        "never",
        "nil",
        "negative",
        "ninguna",
        "ninguno",
        "neither",
        "n",
        "nothing",
    ]
)


class Standing(StrEnum):
    """How a sign stands in the reply."""

    CURRENT = "current"
    NEARLY_OVER = "nearly over"
    OVER = "over"
    DENIED = "denied"
    DENIED_NOW = "denied now"  # there before, denied of today: "doesn't burn any more"
    NOT_HERS = "not hers"
    LONG_AGO = "long ago"
    IMAGINED = "imagined"


def standing_of(page: Page, sign: Mark, signs: list[Mark]) -> Standing:
    """Return how ``sign`` stands; ``signs`` are all of the page, in order."""
    if _is_another_persons(page, sign):
        return Standing.NOT_HERS
    if _is_long_ago(page, sign):
        return Standing.LONG_AGO
    if _is_imagined(page, sign):
        return Standing.IMAGINED
    if _is_denied(page, sign):
        return Standing.DENIED_NOW if _no_longer(page, sign) else Standing.DENIED
    return _by_time(page, sign, signs)


# Denial -------------------------------------------------------------------------------------------------------------


def _is_denied(page: Page, sign: Mark) -> bool:
    if _answered_no(page, sign) or _no_after(page, sign) or _asked_of_others(page, sign):
        return True
    if any(mark.start <= sign.start < mark.end for mark in page.named("scope:nonneg")):
        return False
    for mark in reversed(page.named("scope:no", "scope:not")):
        if mark.start >= sign.end or page.sentence[mark.start] != page.sentence[sign.start]:
            continue
        inside = sign.start < mark.start < sign.end and sign.name in _MAY_HOLD
        if mark.start >= sign.start and not inside:
            continue
        if inside or mark.start < sign.start < mark.end or _reaches(page, mark, sign.start):
            return not _has_condition(page, sign)
    return False


def _answered_no(page: Page, sign: Mark) -> bool:
    """Redness? No. Swelling - none. Itch free."""
    tokens = page.tokens
    place = sign.end
    if place < len(tokens) and tokens[place].word in ("free", "cero"):
        return True
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
            place < len(tokens) and said < 2 and tokens[place].word in ("also", "again", "big", "hard", "tambien", "a")
        ):
            place += 1
            said += 1
        return place < len(tokens) and tokens[place].word in _SAYS_NO
    return False


def _no_after(page: Page, sign: Mark) -> bool:
    """Picazón no; rojo no está."""
    tokens = page.tokens
    place = sign.end
    if place >= len(tokens) or tokens[place].word not in ("no", "tampoco", "nope"):
        return False
    if place + 1 == len(tokens) or tokens[place + 1].kind != WORD:
        return True
    return tokens[place + 1].word in ("esta", "estan", "hay", "tengo", "but", "pero", "is", "ist")


def _asked_of_others(page: Page, sign: Mark) -> bool:
    """Is it normal for eyes to water? Mine haven't."""
    sentence = page.sentence[sign.start]
    asks = any(token.kind == ASK and where == sentence for token, where in zip(page.tokens, page.sentence, strict=True))
    return asks and any(page.sentence[mark.start] == sentence + 1 for mark in page.named("scope:minenot"))


def _reaches(page: Page, mark: Mark, target: int) -> bool:
    """Say whether a denial reaches forward to the token at ``target``."""
    tokens = page.tokens
    place = mark.end
    if target - place > _REACH:
        return False
    before_noun = mark.name == "scope:no"
    if place < len(tokens) and tokens[place].kind in (COMMA, STOP, PICTURE) and tokens[mark.end - 1].word in _SAYS_NO:
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
        elif place > mark.end and any(other.start == place for other in page.marks.get("scope:nonneg", ())):
            return False
        if token.kind == WORD:
            walked = True
        place += 1
    if before_noun and walked and crossed and tokens[target].word in _ADJECTIVES:
        after = tokens[target + 1].word if target + 1 < len(tokens) else ""
        return tokens[target - 1].word in ("or", "nor", "no") or after in ("eyes", "eye", "lids", "spots", "skin")
    return not (before_noun and walked and tokens[target].word in _ADJECTIVES and tokens[target - 1].word == "and")


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
        if token.word in _EYE_WORDS:
            return False
        if any(mark.start == place and name.startswith("sign:") for name, marks in signs.items() for mark in marks):
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


def _has_condition(page: Page, sign: Mark) -> bool:
    """It doesn't hurt unless I touch it."""
    return any(
        0 <= mark.start - sign.end <= 3 and page.sentence[mark.start] == page.sentence[sign.end - 1]
        for mark in page.named("scope:unless")
    )


def _no_longer(page: Page, sign: Mark) -> bool:
    words = [token.word for token in page.tokens]
    after = words[sign.end : sign.end + 5]
    before = words[max(0, sign.start - 5) : sign.start]
    if (
        "anymore" in after
        or "no more" in " ".join(after[:3])
        or "any" in after
        and "more" in after
        or "longer" in after
        or "longer" in before
    ):
        return True
    return "ya" in before and "no" in before[before.index("ya") :]


# Whose, when, whether -------------------------------------------------------------------------------------------------


def _is_another_persons(page: Page, sign: Mark) -> bool:
    sentence = page.sentence[sign.start]
    if page.marks.get("scope:proxy"):
        return False  # her mother writes for her
    nearest: Mark | None = None
    others = page.named("scope:other")
    own = [
        mark
        for mark in page.named("scope:self")
        if not any(one.start < mark.start and mark.end <= one.end for one in others)
    ]
    for mark in sorted((*others, *own), key=lambda one: one.start):
        if page.sentence[mark.start] == sentence and mark.start <= sign.start:
            if mark.start == sign.start and mark.name == "scope:other":
                continue
            if nearest is None or mark.start > nearest.start or mark.end > nearest.end:
                nearest = mark
    if nearest is None or nearest.name == "scope:self":
        return False
    return not any(
        page.sentence[mark.start] == sentence and mark.start < sign.start and mark.end > nearest.start
        for mark in page.named("scope:report")
    )


def _is_long_ago(page: Page, sign: Mark) -> bool:
    sentence = page.sentence[sign.start]
    for mark in page.named("scope:past"):
        if page.sentence[mark.start] == sentence:
            low, high = sorted((mark.end, sign.start)) if mark.start < sign.start else (sign.end, mark.start)
            between = {token.word for token in page.tokens[low:high]}
            if mark.start < sign.start:
                if not between & _NOW and "but" not in between and "pero" not in between:
                    return True
            elif high - low <= 10 and not between & (_NOW | {"but", "pero"}):
                return True
        elif page.sentence[mark.start] == sentence - 1 and mark.start < sign.start:
            words = {token.word for token, place in zip(page.tokens, page.sentence, strict=True) if place == sentence}
            if words & _PAST_WORDS and not words & _PRESENT_WORDS:
                return True
    return False


def _is_imagined(page: Page, sign: Mark) -> bool:
    sentence = page.sentence[sign.start]
    for mark in page.named("scope:if", "scope:will"):
        if page.sentence[mark.start] != sentence or mark.start > sign.start:
            continue
        between = page.tokens[mark.end : sign.start]
        if any(token.word in ("but", "pero") for token in between):
            continue
        if page.tokens[mark.start].word == "si" and not _has_consequence(page, sentence):
            continue
        commas = sum(token.kind in (COMMA, LINE) for token in between)
        if mark.name == "scope:if" and commas == 0 or mark.name == "scope:will" and not commas and len(between) <= 8:
            return True
    return False


_CONSEQUENCE = frozenset(
    [
        "que",
        "puedo",
        "puede",
        "debo",
        "deberia",
        "entonces",
        "hago",
        "pasa",
        "voy",
        "vengo",
        "llamo",
        "aviso",
        "aviso",
        "quitan",
        "cuanto",
        "como",
        "regreso",
    ]
)


def _has_consequence(page: Page, sentence: int) -> bool:
    """Say whether a Spanish "si" is "if" here: without a consequence or a question it is more likely a "sí"."""
    return any(
        where == sentence and (token.kind == ASK or token.word in _CONSEQUENCE)
        for token, where in zip(page.tokens, page.sentence, strict=True)
    )


# Time -----------------------------------------------------------------------------------------------------------------


def _by_time(page: Page, sign: Mark, signs: list[Mark]) -> Standing:
    over = _resolution(page, sign, signs, "scope:over")
    near = _resolution(page, sign, signs, "scope:near")
    if over is not None and not _came_back(page, sign, over):
        if near is not None and near.start <= over.start < near.end + 2 and _hedges(page, near):
            return Standing.NEARLY_OVER
        return Standing.OVER
    if near is not None and not _came_back(page, sign, near, and_still=False):
        return Standing.NEARLY_OVER
    return Standing.CURRENT


_PAST_SIGNS = frozenset(
    [
        "itched",
        "burned",
        "burnt",
        "stung",
        "watered",
        "teared",
        "ached",
        "throbbed",
        "puffed",
        "flared",
        "poked",
        "lloraban",
        "lloraron",
        "picaba",
        "picaban",
        "ardia",
        "ardian",
        "dolia",
        "dolian",
        "molesto",
        "molestaba",
        "enrojecieron",
        "enrojecio",
        "hincharon",
        "irritaron",
        "lloraba",
    ]
)
_DAYS = frozenset(
    [
        "monday",
        "tuesday",
        "wednesday",
        "thursday",
        "friday",
        "saturday",
        "sunday",
        "lunes",
        "martes",
        "miercoles",
        "jueves",
        "viernes",
        "sabado",
        "domingo",
        "1st",
        "day",
    ]
)


_HEDGES = frozenset(
    ["almost", "nearly", "mostly", "basically", "practically", "pretty", "casi", "most", "just", "only"]
)


def _hedges(page: Page, mark: Mark) -> bool:
    return any(token.word in _HEDGES for token in page.tokens[mark.start : mark.end])


def _is_past(page: Page, sign: Mark) -> bool:
    """Say whether the clause of the sign, or what leads to it in the sentence, is told in the past."""
    sentence = page.sentence[sign.start]
    place = sign.end - 1
    while place >= 0 and page.sentence[place] == sentence:
        word = page.tokens[place].word
        if word in _PRESENT_WORDS and place < sign.start:
            return False
        if word in _PAST_WORDS or place >= sign.start and word in _PAST_SIGNS:
            return True
        place -= 1
    around = [
        token.word
        for place, token in enumerate(page.tokens)
        if page.sentence[place] == sentence and sign.start - 6 <= place < sign.end + 6
    ]
    if "since" in around or "desde" in around:
        return False
    return bool({*_DAYS, "yesterday", "first", "night", "ayer", "primer", "primera", "anoche"} & set(around))


def _resolution(page: Page, sign: Mark, signs: list[Mark], name: str) -> Mark | None:
    for mark in page.named(name):
        if sign.name not in _OPENED and any(token.word in _OPENING for token in page.tokens[mark.start : mark.end]):
            continue  # it opened again: that ends the sticking, not what stuck
        if mark.start <= sign.start < mark.end and mark.end - mark.start > sign.end - sign.start:
            return mark
        if mark.end <= sign.start:
            if _leads(page, mark, sign):
                return mark
        elif mark.start >= sign.end and _follows(page, mark, sign, signs):
            return mark
    return None


_OPENED = frozenset(("sign:sealed_eye!", "sign:swollen_shut!"))
_OPENING = frozenset(["opened", "abrir", "abre", "abrio"])
_LEADING_OVER = frozenset(["stopped", "settled", "calmed", "cleared"])


def _leads(page: Page, mark: Mark, sign: Mark) -> bool:
    """Hardly red; almost no itching; stopped burning; going down, the swelling."""
    if page.sentence[mark.start] != page.sentence[sign.start] or sign.start - mark.end > 4:
        return False
    between = page.tokens[mark.end : sign.start]
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
        return False
    strong = not _is_vague(page, mark)
    if page.sentence[mark.start] == page.sentence[sign.start]:
        return strong or _is_past(page, sign)
    if page.sentence[mark.start] - page.sentence[sign.start] > 2:
        return False
    return _is_past(page, sign) or strong and mark.name == "scope:over" and _is_about_it(page, mark)


def _is_vague(page: Page, mark: Mark) -> bool:
    """Say whether a resolution could be about anything: "good today", "less"."""
    words = {token.word for token in page.tokens[mark.start : mark.end]}
    if mark.name == "scope:near" and mark.end - mark.start > 2:
        return False
    return bool(
        words & {"good", "less", "not", "menos", "today", "hoy", "expected", "bien", "perfect", "great", "mejor"}
    )


def _is_about_it(page: Page, mark: Mark) -> bool:
    before = [token.word for token in page.tokens[max(0, mark.start - 4) : mark.start]]
    return (
        bool({"it", "its", "they", "theyre", "all", "that", "se", "ya", "everything", "todo"} & set(before))
        or mark.start == 0
    )


def _is_conditional(page: Page, mark: Mark) -> bool:
    """I will tell you if it comes back."""
    return any(token.word in ("if", "si", "unless") for token in page.tokens[max(0, mark.start - 4) : mark.start])


def _came_back(page: Page, sign: Mark, resolution: Mark, *, and_still: bool = True) -> bool:
    """Still red; gone but back again."""
    for mark in page.named("scope:worse"):
        words = {token.word for token in page.tokens[mark.start : mark.end]}
        if words & {"now", "new", "wont", "ahora", "hoy"} or _is_conditional(page, mark):
            continue
        if mark.start < sign.start and page.clause[mark.start] == page.clause[sign.start]:
            if words & {"still", "sigue", "siguen", "todavia", "aun"} and and_still:
                return True
        elif mark.start >= resolution.end and page.sentence[mark.start] - page.sentence[resolution.start] <= 1:
            if words & {"back"} and page.covers("scope:over", mark.start):
                continue
            if words & {"again", "started", "starting", "keep", "keeps", "every", "de"} and page.covers(
                "scope:over", mark.start
            ):
                continue
            if words & {
                "back",
                "returned",
                "again",
                "worse",
                "comes",
                "coming",
                "came",
                "volvio",
                "regreso",
                "nuevo",
                "otra",
                "peor",
                "va",
            }:
                return True
    return False
