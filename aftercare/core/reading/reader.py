"""Reading one reply: urgency, topics, signs, denials, side, and the words behind each."""

from __future__ import annotations

import re
from dataclasses import replace

from aftercare.core import commands
from aftercare.core.reading import (
    bare,
    foreign,
    grading,
    language,
    lengthy,
    others,
    pictures,
    quoting,
    second,
    sides,
    topics,
)
from aftercare.core.reading.findings import Findings, sort_out
from aftercare.core.reading.page import Page, lay_out
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.second import Opinion
from aftercare.core.reading.second_look import look_again, opinion_of, sees_denials_alone, without
from aftercare.core.reading.spelling import known
from aftercare.core.reading.tokens import Token, tokenize
from aftercare.core.reading.values import Finding, Reading, Sign, Topic, Urgency

_STANDARD = {
    commands.Command.STOP: Topic.STOP,
    commands.Command.START: Topic.START,
    commands.Command.HELP: Topic.HELP,
}
_HAMMERED = re.compile(r"\s*[^\W\d_']+(?:[.!] +[^\W\d_']+){2,7}[.!]*\s*")
_ONE_SENTENCE = re.compile(r"[.!](?=\s)")
_LONGEST_HAMMERED = 100  # characters
Shown = list[tuple[Sign, Token]]


def read(text: str) -> Reading:
    """Return what ``text`` says. Any text can be read; spans count its characters."""
    parts = quoting.split(text)
    if lengthy.is_lengthy(parts.answer):
        reading = lengthy.read(parts.answer, lambda piece: _answer(piece, parts.question))
    else:
        reading = _answer(parts.answer, parts.question)
    if len(text) > lengthy.LONGEST:
        reading = replace(reading, unread=True)
    return lengthy.shifted(reading, parts.start)


def unexplained(text: str) -> tuple[str, list[str]]:
    """Return her own words without those that look like signs and, by the rules, are none now: the text, its words."""
    answer = quoting.split(text[: lengthy.LONGEST]).answer
    tokens = tokenize(answer, known)
    told = language.tell(tokens, answer)
    if told.foreign:
        return answer, [token.word for token in tokens]
    page = lay_out(tokens, english=told.english, spanish=told.spanish)
    return without(answer, page, sort_out(page).explained)


def _unstopped(answer: str) -> str:
    """Return "Lose. My. Number." without the stops between words where it is wholly written so; nothing moves."""
    if len(answer) > _LONGEST_HAMMERED or not _HAMMERED.fullmatch(answer):
        return answer
    words = _ONE_SENTENCE.sub(" ", answer)
    marks = lay_out(tokenize(words, known), english=True, spanish=True).marks
    return words if marks.get("topic:stop") else answer


def _answer(answer: str, question: str) -> Reading:
    if (command := commands.read(answer)) is not None:
        return _command(answer, _STANDARD[command])
    tokens = tokenize(_unstopped(answer), known)
    told = language.tell(tokens, answer)
    if told.foreign:  # "mal" is a word of many languages
        return bare.under_question(answer, tokens, question, told) or _of_another_language(answer, tokens, told.code)
    if (reading := bare.read(answer, tokens, question, told)) is not None:
        return reading
    page = lay_out(tokens, english=told.english, spanish=told.spanish)
    found = sort_out(page)
    opinion = opinion_of(answer, page, found.explained)
    if found.around:
        opinion = opinion.calmed_by(opinion_of(answer, page, [*found.explained, *found.around]))
    reading = _judged(page, answer, found, opinion, told.code)
    over, praised = bool(page.marks.get("scope:over")), topics.is_praised(page)
    if (answered := bare.answered(tokens, question, reading, over=over, praised=praised)) is not None:
        return answered
    after_all = bool(found.long_ago) and opinion.sign > second.SIGN_AFTER_ALL
    if found.long_ago or found.of_others:  # of what is urgent, they have no say
        silent = [*found.explained, *found.around, *found.long_ago, *found.of_others]
        calmed = opinion.calmed_by(opinion_of(answer, page, silent))
        opinion = calmed if reading.urgency is Urgency.NONE else replace(opinion, emergency=calmed.emergency)
    of_others = others.tell_of_eyes(page, found.of_others)
    seen_again = look_again(reading, opinion, page, found.explained, of_others=of_others)
    raised = reading.urgency is Urgency.NONE and seen_again.urgency in _URGENT
    if raised and not found.told and found.denied and sees_denials_alone(answer, page, found.explained, found.denied):
        seen_again = replace(reading, unread=True)
    if after_all and seen_again.urgency is Urgency.NONE:  # a story that may be of today is for a person
        seen_again = replace(seen_again, unread=True)
    if seen_again.urgency in _URGENT and not seen_again.signs:
        seen_again = _named(seen_again, opinion, answer)
    if bare.needs_its_question(tokens, seen_again) or bare.leaves_open(tokens, question, seen_again):
        seen_again = replace(seen_again, unread=True)
    return _or_foreign(seen_again, answer, page, guessed=raised and not found.told)


def _of_another_language(answer: str, tokens: list[Token], code: str) -> Reading:
    """Return the guess; where it knows nothing, "mi eye dem a bun mi" may be an English of its own."""
    guess = foreign.read(answer, code)
    if guess.about != (Topic.OTHER,) or not any(token.word in grading.EYES for token in tokens):
        return guess
    page = lay_out(tokens, english=True, spanish=True)
    found = sort_out(page)
    reading = _judged(page, answer, found, opinion_of(answer, page, found.explained), code)
    return replace(reading, unread=True) if reading.urgency in _URGENT else guess


_URGENT = {Urgency.SAME_DAY, Urgency.EMERGENCY}


def _named(reading: Reading, opinion: Opinion, answer: str) -> Reading:
    """Add the signs that the second opinion alone sees: the whole of her words stands behind them."""
    signs = tuple(sign for sign in opinion.named if sign not in reading.negated)
    return replace(
        reading, signs=signs, why=(*(Finding(str(sign), answer, 0, len(answer)) for sign in signs), *reading.why)
    )


def _or_foreign(reading: Reading, answer: str, page: Page, *, guessed: bool) -> Reading:
    """Look for alarms of other languages in what was not understood; whoever speaks of a hospital is for a person.

    So is what has words that are not known: it may be wholly of another language. ``guessed``: the rules saw no sign.
    """
    if reading.urgency is Urgency.NONE and (page.marks.get("sign:hospital!") or language.is_strange(page.tokens)):
        reading = replace(reading, unread=True)
    unknown = reading.unread and reading.about == (Topic.OTHER,) and not page.marks.get("scope:past")
    if not (unknown or guessed):
        return reading
    other = foreign.read(answer, "und")
    return other if other.urgency is Urgency.EMERGENCY else reading


def _judged(page: Page, answer: str, found: Findings, opinion: Opinion, code: str) -> Reading:
    """Return the reading by the rules; of what it is about, the second opinion has a say."""
    shown = pictures.signs_beside_words(page.tokens, bool(found.current))
    signs = {sign for mark in found.told for sign in grading.named(mark)} | {sign for sign, _ in shown}
    negated = {sign for mark in found.denied for sign in grading.named(mark)} - signs
    urgency = _urgency(page, found, shown)
    about = topics.topics_of(
        page, answer, opinion, found.of_others, irritation=urgency is not Urgency.NONE, denied=bool(found.denied)
    )
    side, side_mark = sides.side_of(page, [*found.told, *found.over] or found.denied)
    why = _why(page, answer, found, shown)
    why += [_finding(page, answer, mark, str(topic)) for topic, mark in about.items() if mark is not None]
    if side is not None and side_mark is not None:
        why.append(_finding(page, answer, side_mark, str(side)))
    return Reading(
        urgency=urgency,
        about=tuple(topic for topic in Topic if topic in about),
        signs=tuple(sign for sign in Sign if sign in signs),
        negated=tuple(sign for sign in Sign if sign in negated),
        side=side,
        language=code,
        unread=False,
        why=tuple(sorted(set(why), key=lambda one: (one.start, one.end, one.finding))),
    )


def _urgency(page: Page, found: Findings, shown: Shown) -> Urgency:
    alarms = [mark for mark in found.near if mark.name.endswith("!")]
    if grading.is_emergency(page, [*found.current, *alarms]):
        return Urgency.EMERGENCY
    if found.telling or shown:
        return Urgency.SAME_DAY
    return Urgency.WATCH if found.near or found.over else Urgency.NONE


def _why(page: Page, answer: str, found: Findings, shown: Shown) -> list[Finding]:
    """Return the words behind the signs: told, denied, over, drawn."""
    named = [(mark, str(sign)) for mark in found.told for sign in grading.named(mark) or ("irritation",)]
    named += [(mark, f"no {sign}") for mark in found.denied for sign in grading.named(mark)]
    named += [(mark, "over") for mark in found.over if mark not in found.denied]
    why = [_finding(page, answer, mark, name) for mark, name in named]
    return why + [Finding(str(sign), answer[t.start : t.end], t.start, t.end) for sign, t in shown]


def _finding(page: Page, answer: str, mark: Mark, name: str) -> Finding:
    start, end = page.tokens[mark.start].start, page.tokens[mark.end - 1].end
    return Finding(name, answer[start:end], start, end)


def _command(answer: str, topic: Topic) -> Reading:
    inner = re.search(r"\S(?:.*\S)?", answer, re.DOTALL)
    first, last = (inner.start(), inner.end()) if inner else (0, 0)
    finding = Finding(str(topic), answer[first:last], first, last)
    return Reading(Urgency.NONE, (topic,), (), (), None, "en", False, (finding,))
