"""What asks in a reply: a question that waits for an answer."""

from __future__ import annotations

from aftercare.core.reading import openings
from aftercare.core.reading.page import Page
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.tokens import WORD, listed

_ASKS = listed("""
    what how why when where which who can could should shall is are do does did will would am may any has have
    ought must whats hows que como cuando donde cual cuales cuanto cuantos puedo puede podria debo deberia es
    sera hay sabes me se le tiene tienen usan wat wut cuanta porque sirve vuelvo paso llevo traigo voy quien cuantas
""")


def question(page: Page) -> Mark | None:
    """Return the words that ask for something; a wish to book or to end messages is none, even put as a question."""
    tokens = page.tokens
    no_questions = page.named("topic:booking", "topic:stop", "topic:start", "topic:smalltalk")
    wishes = {page.sentence[mark.start] for mark in no_questions}
    asked = page.asked()
    answered = {where for where in asked if _answers_herself(page, where)}
    asked -= answered
    wishes |= answered
    for mark in page.named("topic:question"):
        sentence = page.sentence[mark.start]
        if sentence not in wishes and (sentence in asked or _begins(page, mark)) and not _is_aside(page, mark, asked):
            return mark
    for place, token in enumerate(tokens):
        if token.kind != WORD or token.word not in _ASKS or page.sentence[place] not in asked - wishes:
            continue
        before = tokens[place - 1] if place else None
        alone = token.word in _ALONE and _is_alone(page, place)
        more = alone or _more_words(page, place) >= 1
        if (before is None or before.kind != WORD or before.word in _OPENERS) and more:
            return Mark("topic:question", place, place + 1)
    cure = _asks_for_a_cure(page, asked - wishes)
    return cure or _opened(page, wishes, answered) or openings.opening(page, wishes | answered)


_CURES = listed("""
    antihistamine antihistamines ice drops piriton cetirizine claritin benadryl zyrtec loratadine hydrocortisone cream
    tablet tablets compress vaseline jelly ointment saline teabag teabags doctor gp pharmacist optician a&e urgent
    allergy hielo gotas crema antialergico loratadina compresa compresas pastilla manzanilla suero farmacia doctora
""")
_CURE_WORDS = 7


def _asks_for_a_cure(page: Page, asked: frozenset[int]) -> Mark | None:
    """Ice? Antihistamine or just wait? -- What helps is asked by naming it."""
    for where in sorted(asked):
        places = [at for at, token in enumerate(page.tokens) if page.sentence[at] == where and token.kind == WORD]
        cure = next((at for at in places if page.tokens[at].word in _CURES), None)
        if cure is not None and len(places) <= _CURE_WORDS:
            return Mark("topic:question", cure, cure + 1)
    return None


_ALONE = listed("why porque")


def _is_alone(page: Page, place: int) -> bool:
    """They go pink around six every day. Why?"""
    return place > 0 and page.sentence[place - 1] != page.sentence[place]


def _opened(page: Page, wishes: set[int], answered: set[int]) -> Mark | None:
    """Return the words between "¿" and its end: whatever they are, they ask."""
    for sentence in sorted(page.opened() - wishes - answered):
        places = [
            place for place, where in enumerate(page.sentence) if where == sentence and page.tokens[place].kind == WORD
        ]
        if (
            places
            and not _is_a_time(page, places)
            and not _is_of_a_sign_alone(page, places)
            and not _asks_after_you(page, places)
        ):
            return Mark("topic:question", places[0], places[-1] + 1)
    return None


def _is_of_a_sign_alone(page: Page, places: list[int]) -> bool:
    """¿Picazón? Ninguna: what she was asked, said again."""
    signs = (one for name, marks in page.marks.items() if name.startswith("sign:") for one in marks)
    return any(one.start == places[0] and one.end > places[-1] for one in signs)


_TIMES = listed("""
    el la las a al por este esta otro otra proximo proxima para pa tipo como semana mes noche mediodia
    lunes martes miercoles jueves viernes sabado domingo manana tarde hoy y media
""")


def _is_a_time(page: Page, places: list[int]) -> bool:
    """¿El jueves? ¿A las 4?"""
    return all(page.tokens[place].word in _TIMES or page.tokens[place].word[0].isdigit() for place in places)


_YOU = listed("tu usted ustedes vos")


def _asks_after_you(page: Page, places: list[int]) -> bool:
    """¿Y tú cómo sigues?"""
    return bool(_YOU & {page.tokens[place].word for place in places[:2]})


_ANSWERS = listed("no nope nah yes yep yup also never si sip tampoco")
_ANSWER = 3  # words
_BESIDE = listed("also big hard still thank god lol unfortunately sadly actually not at all tampoco para nada sir maam")


def _answers_herself(page: Page, sentence: int) -> bool:
    """Does it burn? No. Are they red? Also no."""
    said = [
        t.word for t, where in zip(page.tokens, page.sentence, strict=True) if where == sentence + 1 and t.kind == WORD
    ]
    return 0 < len(said) <= _ANSWER and said[0] in _ANSWERS and set(said) <= _ANSWERS | _BESIDE


def is_rhetorical(page: Page) -> bool:
    """Say whether whatever looks like a question is answered by herself, or only a turn of speech."""
    asked = page.asked()
    if not asked:
        return bool(page.named("topic:notquestion"))
    return all(_answers_herself(page, where) for where in asked)


_OPENERS = listed("""
    and so or but also ok okay please y pero o just hi hey hola then well um uh lol because cuz entonces oye
    oiga pues my like
""")


def _more_words(page: Page, place: int) -> int:
    following = [
        index
        for index in range(place + 1, len(page.tokens))
        if page.sentence[index] == page.sentence[place] and page.tokens[index].kind == WORD
    ]
    return len(following)


def _begins(page: Page, mark: Mark) -> bool:
    """Say whether a phrase without a question mark asks: it opens a clause, or it is one that always asks."""
    words = [token.word for token in page.tokens[mark.start : mark.end]]
    joined = " ".join(words)
    if joined.startswith(_ALWAYS):
        return True
    if len(words) < 2:
        return False
    before = page.tokens[mark.start - 1] if mark.start else None
    return before is None or before.kind != WORD or before.word in _OPENERS


_ALWAYS_ASKING = """
    what do i, what should, what can i, what i do, que hago, q hago, should i, let me know what, let me know if
    i, please advise, help me, pls help, please help, any advice, any tips, just wondering, wondering, wonder
    if, wanted to ask, want to know, wanted to know, im asking, solo pregunto, need help, help pls, quisiera
    saber, quiero saber, dime que, ayuda por favor, call me when, ok or, do i need, can i still, can i, how do
    i, how long, when can i, que me pongo, que debo, who do i, or should i, is that a thing, or nah, is it ok,
    is it normal, es normal, puedo usar, me puedes, quick question, una pregunta, una duda, or am i, yes or no, yay or
    nay, yes or nah, si o no, hasta cuando sirve, hasta cuando vale,
    is it normal, es normal, puedo usar, me puedes, quick question, una pregunta, una duda, or am i,
    what now, now what, is that usual, is that normal, is this normal, is this ok, is that ok, is this usual,
    is that covered, what do you, what else, has anyone, tell me which, is there someone, was it stupid, o que,
    sera normal, sera de, cuanto sale, se lo doy, calamine or, ice or, drops or, lashes or flu, or what do, lmk,
    me thing or
"""
_ALWAYS = tuple(" ".join(phrase.split()) for phrase in _ALWAYS_ASKING.split(","))


def _is_aside(page: Page, mark: Mark, asked: frozenset[int]) -> bool:
    """Say whether words that may ask do not do so here: "normal now", "which is fine"."""
    if page.sentence[mark.start] in asked:
        return False
    words = [token.word for token in page.tokens[mark.start : mark.end]]
    return len(words) == 1
