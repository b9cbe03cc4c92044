"""Replies that mean nothing by themselves: a bare yes, no or number, a photo, pictures alone."""

from __future__ import annotations

import re
from dataclasses import replace

from aftercare.core.reading import answers, judging, numbered, pictures, questions, scales
from aftercare.core.reading.answers import Says
from aftercare.core.reading.judging import Judged
from aftercare.core.reading.language import Told
from aftercare.core.reading.questions import Asks
from aftercare.core.reading.tokens import ASK, PICTURE, WORD, Token, listed
from aftercare.core.reading.values import Finding, Reading, Side, Sign, Topic, Urgency
from aftercare.core.reading.words import english_commands, spanish_topics


def _words(name: str) -> frozenset[str]:
    text = english_commands.COMMANDS[name] + "," + spanish_topics.TOPICS[name]
    return frozenset(" ".join(phrase.split()) for phrase in text.split(",") if phrase.strip())


_YES, _NO, _POLITE, _PHOTO = (_words(name) for name in ("yes", "no", "please", "photo"))
_NONE_OF_IT = re.compile(
    r"\b(?:no|none|not|without|fine|good|well|perfect|happy|nada|sin|bien|ningun[ao]?)\b", re.IGNORECASE
)
_NONE_FIRST = re.compile(
    r"\W*(?:no|none|without|nothing|nada|sin|ningun[ao]?)\b(?!.*\b(?:but|pero|bit|some|little|poco)\b)"
)
_NUMBER = re.compile(r"\d+(?:[.,/]\d+)?(?: \d+)*")
_SCORES = ("10/10", "100", "11/10", "100/10", "5/5")
_LONGEST, _LONGEST_ANSWER = 6, 24  # words


def read(answer: str, tokens: list[Token], question: str, told: Told) -> Reading | None:
    """Return the reading of a reply that has no words of its own to read, or None."""
    words = [token.word for token in tokens if token.kind == WORD]
    if not words:
        reading = _without_words(tokens)
        return _simple(Topic.BOOKING, told) if asks_of_visit(question) and _is_mild(reading) else reading
    if question and len(words) <= _LONGEST_ANSWER:
        return under_question(answer, tokens, question, told) or _alone(words, told)
    return _alone(words, told, unasked=tokens)


def under_question(answer: str, tokens: list[Token], question: str, told: Told) -> Reading | None:
    """Return the reading of an answer that the quoted question gives its meaning."""
    if not question or len(tokens) > 2 * _LONGEST_ANSWER or any(token.kind == ASK for token in tokens):
        return None
    tokens = answers.without_closing(tokens, answer)
    said = " ".join(token.word for token in tokens if token.kind == WORD)
    if (chosen := questions.choices(question).get(said)) is not None:
        return _chosen(chosen, told)
    if (judged := scales.read(said, question)) is not None:
        return _of_all(judged, tokens, told)
    items = questions.asked(question)
    several = items if items and items[0].label else ()
    direct = several or tuple(item for item in items if item.asks not in (Asks.WARNING, Asks.STATE))
    if (numbers := numbered.answers(tokens, several)) is not None:
        return _of_all(judging.of_numbers(numbers, several), tokens, told)
    if (numbers := numbered.one_by_one(tokens, direct)) is not None:
        return _of_all(judging.of_numbers(numbers, direct), tokens, told)
    if (letters := _by_letters(tokens)) is not None:
        says: Says | None = letters
    else:
        marks = answers.phrases_in(tokens)
        says = answers.said_by(tokens, marks) if marks else None
    judged = judging.of_one(says, [item.asks for item in items]) if says is not None else None
    return _of_all(judged, tokens, told) if judged is not None else None


_LETTERS = re.compile(r"[yn](?: [yn])+|[yn]{2,}|(?:[1-9] ?[yn] ?){2,}")


def _by_letters(tokens: list[Token]) -> Says | None:
    """Return what "n n y n" and "nnn" come to: one yes is enough."""
    said = " ".join(token.written for token in tokens if token.kind == WORD)
    if _LETTERS.fullmatch(said) is None:
        return None
    return Says.YES if "y" in said else Says.NO


def _alone(words: list[str], told: Told, unasked: list[Token] | None = None) -> Reading | None:
    """Return the reading of what means nothing by itself; of ``unasked`` tokens, numbered answers too."""
    core = " ".join(word for word in words if word not in _POLITE or word in _YES or word in _NO)
    has_numbers = len(words) <= _LONGEST_ANSWER and any(word[-1].isdigit() or word[0].isdigit() for word in words)
    if unasked and has_numbers and (numbers := numbered.answers(unasked, ())) is not None:
        return _of_all(judging.of_numbers(numbers, ()), unasked, told)
    if len(words) > _LONGEST:
        return None
    said = " ".join(words)
    is_number = _NUMBER.fullmatch(core) and core not in _SCORES
    is_photo = (
        len(words) <= 3
        and words[0] not in _SAYS_YES
        and (words[0] in _PHOTO or words[-1] in ("photo", "image", "attachment", "foto"))
    )
    if is_number or is_photo or len(said) == 1 or {core, said} & (_YES | _NO):
        return _simple(Topic.OTHER, told, unread=True)
    if unasked and _says_unasked(unasked) is Says.WORSE:
        return _simple(Topic.OTHER, told, unread=True)
    return None


def _is_mild(reading: Reading | None) -> bool:
    return reading is not None and reading.urgency is Urgency.NONE and Topic.STOP not in reading.about


def asks_of_visit(question: str) -> bool:
    """Say whether a quoted text asks of a visit alone, and names no signs."""
    items = questions.asked(question) if question else ()
    return bool(items) and all(item.asks is Asks.VISIT for item in items) and not questions.names_signs(question)


def needs_its_question(tokens: list[Token], reading: Reading) -> bool:
    """Say whether she answers what only she knows: "just the left", "sometimes"."""
    return reading.about == (Topic.OTHER,) and _says_unasked(tokens) in _NEEDS_QUESTION


def _says_unasked(tokens: list[Token]) -> Says | None:
    """Return what a few words say for which nothing is quoted; None where they deny, which needs no question."""
    if len(tokens) > _LONGEST or any(token.kind == PICTURE for token in tokens):
        return None
    marks = answers.phrases_in(tokens) or []
    return None if any(mark.name == "no" for mark in marks) else answers.said_by(tokens, marks)


_NEEDS_QUESTION = {Says.YES, Says.SOME, Says.UNSURE}


def _of_all(judged: Judged, tokens: list[Token], told: Told) -> Reading:
    about = tuple(topic for topic in Topic if topic in judged.about)
    side = _side(tokens) if Topic.IRRITATION in about else None
    return Reading(judged.urgency, about, (), (), side, told.code, judged.unread, ())


_LEFT, _RIGHT = listed("left izquierdo izquierda"), listed("right derecho derecha")
_BOTH, _EYES = listed("both either each ambos dos"), listed("eye eyes lid lids side sides ojos ojo lados parpados")


def _side(tokens: list[Token]) -> Side | None:
    """Return the side that she names: "just the left one", "both eyes"."""
    marks = answers.phrases_in(tokens) or []
    said = {token.word for mark in marks if mark.name == "part" for token in tokens[mark.start : mark.end]}
    left, right = bool(said & _LEFT), bool(said & _RIGHT)
    if left and right or said & _BOTH and said & _EYES:
        return Side.BOTH
    return Side.LEFT if left else Side.RIGHT if right else None


def _chosen(chosen: str, told: Told) -> Reading:
    """Return what the number stands for in the question: "2 for some redness"."""
    if _NONE_OF_IT.search(chosen):  # "no redness"; but "not bad, a bit sore" is for a person
        plain = _NONE_FIRST.match(chosen) is not None or not questions.names_signs(chosen)
        return _simple(Topic.FINE if plain else Topic.OTHER, told, unread=not plain)
    if questions.names_signs(chosen):
        return _simple(Topic.IRRITATION, told, Urgency.SAME_DAY)
    return _simple(Topic.OTHER, told, unread=True)


_SAYS_YES = listed("yes yeah yep yup si sip affirmative affirmativo yess ja oui sim")
_SAYS_NO = listed("no nope nah none nothing neither not nada ninguna ninguno nein non nao")
_NUMBERED = re.compile(
    r"(?:^|\D)[1-9]\s*[).:-]?\s*(?:yes|yeah|yep|si|sí)\b|\b(?:yes|yeah|sí|si)\b.{0,12}\b(?:number|question|numero|last|second)\b",
    re.IGNORECASE,
)


def answered(tokens: list[Token], question: str, reading: Reading, *, over: bool, praised: bool) -> Reading | None:
    """Return the reading of words that answer a quoted question, or several numbered ones, without naming a sign."""
    words = [token.word for token in tokens if token.kind == WORD]
    if reading.urgency is not Urgency.NONE or Topic.STOP in reading.about:
        return None
    unclear = not set(reading.about) - {Topic.OTHER, Topic.FINE} and not reading.negated
    if unclear and len(words) <= _LITTLE and asks_of_visit(question):
        return replace(reading, about=(Topic.BOOKING,), unread=False)
    if reading.negated and not _but_yes(words):
        return None
    text = " ".join(words)
    asks = judging.deciding([item.asks for item in questions.asked(question)]) if question else Asks.NOTHING
    yes = any(word in _SAYS_YES for word in words[:8]) if len(words) <= 14 else words[0] in _SAYS_YES
    about_signs = asks in judging.OF_SIGNS
    if (
        _NUMBERED.search(text)
        and any(word in _SAYS_YES for word in words)
        and (about_signs or any(word.isdigit() for word in words))
    ):
        return _simple_like(reading, over)
    if not about_signs:
        return None
    leads = _SAYS_NO if asks in judging.NO_IS_TROUBLE else _SAYS_YES
    if words[0] in leads and asks not in (Asks.EITHER, Asks.WARNING):  # the trouble, whatever else she says
        if praised and not _BUT & set(words):
            return replace(reading, unread=True)  # "Any itching?" -- "Yes I love them"
        return _simple_like(reading, over)
    other = {Topic.FINE, Topic.BOOKING} & set(reading.about)
    if reading.negated and not praised:
        other -= {Topic.FINE}
    if asks in judging.NO_IS_TROUBLE:
        return None
    if yes and not other or "affirmative" in words:
        return _simple_like(reading, over)
    if words[0] in _SAYS_NO and len(words) <= _LONGEST and reading.about == (Topic.OTHER,):
        return replace(reading, about=(Topic.FINE,), unread=False)
    if over and reading.about == (Topic.OTHER,):
        return _simple_like(reading, over)  # "day one only, it has passed"
    return None


_BUT = listed("but though although still except however pero aunque")
_LITTLE = 8  # words


def leaves_open(tokens: list[Token], question: str, reading: Reading) -> bool:
    """Say whether she was asked about her eyes and the few words that she answers tell nothing of them."""
    if not question or reading.urgency is not Urgency.NONE or reading.negated or Topic.STOP in reading.about:
        return False
    asks = judging.deciding([item.asks for item in questions.asked(question)])
    if sum(token.kind == WORD for token in tokens) > _LITTLE:
        return False
    of_eyes = asks in judging.OF_SIGNS - {Asks.WARNING} and Topic.FINE not in reading.about
    return of_eyes or reading.about == (Topic.OTHER,) and questions.names_signs(question)


def _but_yes(words: list[str]) -> bool:
    """Say whether she denies one and affirms another: "not swelling but the other two yes", "1 not red 2 yes"."""
    turns = (place for place, word in enumerate(words) if word in ("but", "pero") or place and word.isdigit())
    turn = next(turns, len(words))
    return any(word in _SAYS_YES for word in words[turn:])


def _simple_like(reading: Reading, over: bool) -> Reading:
    beside = {Topic.QUESTION, Topic.BOOKING, Topic.RETENTION, Topic.COMPLAINT} & set(reading.about)
    about = tuple(topic for topic in Topic if topic is Topic.IRRITATION or topic in beside)
    return Reading(
        Urgency.WATCH if over else Urgency.SAME_DAY,
        about,
        (),
        reading.negated,
        reading.side,
        reading.language,
        False,
        reading.why,
    )


def _without_words(tokens: list[Token]) -> Reading:
    shown = pictures.signs_of(tokens)
    if shown:
        found = {sign for sign, _ in shown}
        why = tuple(Finding(str(sign), token.word, token.start, token.end) for sign, token in shown)
        signs = tuple(sign for sign in Sign if sign in found)
        return Reading(Urgency.SAME_DAY, (Topic.IRRITATION,), signs, (), None, "und", False, why)
    if pictures.is_praise(tokens):
        return Reading(Urgency.NONE, (Topic.FINE,), (), (), None, "und", False, ())
    return Reading(Urgency.NONE, (Topic.OTHER,), (), (), None, "und", True, ())


def _simple(topic: Topic, told: Told, urgency: Urgency = Urgency.NONE, *, unread: bool = False) -> Reading:
    return Reading(urgency, (topic,), (), (), None, told.code, unread, ())
