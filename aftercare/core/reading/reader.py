"""Reading one reply: urgency, topics, signs, denials, side, and the words behind each."""

from __future__ import annotations

import re
from dataclasses import replace

from aftercare.core import commands
from aftercare.core.reading import bare, foreign, grading, language, pictures, quoting, second, sides, topics
from aftercare.core.reading.page import Page, lay_out
from aftercare.core.reading.phrases import Mark
from aftercare.core.reading.scope import Standing, standing_of
from aftercare.core.reading.spelling import known
from aftercare.core.reading.tokens import ASK, WORD, Token, listed, tokenize
from aftercare.core.reading.values import Finding, Reading, Sign, Topic, Urgency

LONGEST = 6_000  # characters that are read; what is longer a person reads too
_STANDARD = {
    commands.Command.STOP: Topic.STOP,
    commands.Command.START: Topic.START,
    commands.Command.HELP: Topic.HELP,
}
_PICTURED = {Sign.BURNING, Sign.REDNESS, Sign.WATERING}


def read(text: str) -> Reading:
    """Return what ``text`` says. Any text can be read; spans count its characters."""
    parts = quoting.split(text[:LONGEST])
    if (command := commands.read(parts.answer)) is not None:
        return _command(parts.answer, parts.start, _STANDARD[command], text)
    tokens = tokenize(parts.answer, known)
    told = language.tell(tokens, parts.answer)
    if told.foreign:
        return _shifted(foreign.read(parts.answer, told.code), parts.start, text)
    if (reading := bare.read(tokens, parts.question, told)) is not None:
        return _shifted(reading, parts.start, text)
    page = lay_out(tokens, english=told.english, spanish=told.spanish)
    reading = _read(page, parts.answer, told, too_long=len(text) > LONGEST)
    reading = _second_look(reading, parts.answer, page)
    if (
        answered := bare.answered(tokens, parts.question, reading, over=bool(page.marks.get("scope:over")))
    ) is not None:
        reading = answered
    return _shifted(reading, parts.start, text)


def _read(page: Page, answer: str, told: language.Told, *, too_long: bool) -> Reading:
    found = [mark for name in list(page.marks) if name.startswith("sign:") for mark in page.marks[name]]
    found.sort(key=lambda mark: (mark.start, -mark.end))
    found = [mark for mark in grading.with_glue(page, found) if not _is_elsewhere(page, mark)]
    if page.marks.get("scope:good_kind"):
        found = [mark for mark in found if mark.name not in ("sign:burning", "sign:pain", "sign:swelling")]
    stand = [(mark, standing_of(page, mark, found)) for mark in found]
    if grading.clears_on_blinking(page):  # what clears on blinking comes back: it is not over
        stand = [
            (mark, Standing.CURRENT if mark.name.startswith("sign:vision") and standing is Standing.OVER else standing)
            for mark, standing in stand
        ]
    gone = {mark.name for mark, standing in stand if standing is Standing.DENIED_NOW}
    stand = [
        (mark, Standing.OVER if standing is Standing.CURRENT and mark.name in gone else standing)
        for mark, standing in stand
    ]
    current = [mark for mark, standing in stand if standing is Standing.CURRENT]
    near = [mark for mark, standing in stand if standing is Standing.NEARLY_OVER]
    current = [mark for mark in current if not _is_taken_back(page, mark, stand)]
    over = [mark for mark, standing in stand if standing in (Standing.OVER, Standing.DENIED_NOW)]
    denied = [mark for mark, standing in stand if standing in (Standing.DENIED, Standing.DENIED_NOW)]
    shown = pictures.signs_beside_words(page.tokens, bool(current))
    signs = {sign for mark in (*current, *near) for sign in grading.named(mark)} | {sign for sign, _ in shown}
    negated = {sign for mark in denied for sign in grading.named(mark)} - signs
    telling = [
        mark
        for mark in current
        if mark.name not in ("sign:fever", "sign:headache", "sign:sickly", "sign:hospital!", "sign:agony")
    ]
    emergency = grading.is_emergency(page, [*current, *(mark for mark in near if mark.name.endswith("!"))])
    urgency = _urgency(emergency, bool(telling or shown), bool(near or over))
    irritation = urgency is not Urgency.NONE
    about = topics.topics_of(page, irritation=irritation, denied=bool(denied))
    side, side_mark = sides.side_of(page, [*current, *near, *over] or denied)
    why = [
        _finding(page, answer, mark, str(sign))
        for mark in (*current, *near)
        for sign in grading.named(mark) or ("irritation",)
    ]
    why += [_finding(page, answer, mark, f"no {sign}") for mark in denied for sign in grading.named(mark)]
    why += [_finding(page, answer, mark, "over") for mark in over if mark not in denied]
    why += [Finding(str(sign), answer[t.start : t.end], t.start, t.end) for sign, t in shown]
    why += [_finding(page, answer, mark, str(topic)) for topic, mark in about.items() if mark is not None]
    if side is not None and side_mark is not None:
        why.append(_finding(page, answer, side_mark, str(side)))
    return Reading(
        urgency=urgency,
        about=tuple(topic for topic in Topic if topic in about),
        signs=tuple(sign for sign in Sign if sign in signs),
        negated=tuple(sign for sign in Sign if sign in negated),
        side=side,
        language=told.code,
        unread=too_long,
        why=tuple(sorted(set(why), key=lambda one: (one.start, one.end, one.finding))),
    )


def _is_taken_back(page: Page, mark: Mark, stand: list[tuple[Mark, Standing]]) -> bool:
    """Define red? Kidding, they're not red. -- A question or a twisted denial, plainly denied afterwards."""
    doubtful = any(twisted.start <= mark.start < twisted.end + 4 for twisted in page.named("scope:nonneg")) or any(
        token.kind == ASK and where == page.sentence[mark.start]
        for token, where in zip(page.tokens, page.sentence, strict=True)
    )
    habit = {"always", "usually", "normally", "siempre"} & {
        token.word for token in page.tokens[max(0, mark.start - 4) : mark.start]
    }
    return any(
        standing is Standing.DENIED and other.name == mark.name and (habit or doubtful and other.start > mark.start)
        for other, standing in stand
    )


_SAID_LITTLE = 3  # tokens: "lol", "brb in 5"
_EXPLAINED = ("topic:figure", "topic:auto", "topic:spam", "scope:other", "scope:past", "topic:start")


def _second_look(reading: Reading, answer: str, page: Page) -> Reading:
    """Hand a reply to a person where the second opinion sees danger, or an end of messages, that the rules do not."""
    if reading.unread or reading.urgency is Urgency.EMERGENCY:
        return reading
    opinion = second.opinion(answer)
    calm = reading.urgency is Urgency.NONE
    lost = reading.about == (Topic.OTHER,) and not any(page.marks.get(name) for name in _EXPLAINED)
    dismissed = any(name.startswith("sign:") for name, marks in page.marks.items() if marks) or page.marks.get(
        "topic:figure"
    )
    unread = (
        calm
        and opinion.sign > (second.SIGN_DISMISSED if dismissed else second.SIGN)
        or lost
        and (opinion.sign > second.SIGN_UNEXPLAINED or len(page.tokens) > _SAID_LITTLE)
        or opinion.emergency > second.EMERGENCY
        or opinion.stop > second.STOP
        and Topic.STOP not in reading.about
    )
    return replace(reading, unread=True) if unread else reading


def _urgency(emergency: bool, current: bool, before: bool) -> Urgency:
    if emergency:
        return Urgency.EMERGENCY
    if current:
        return Urgency.SAME_DAY
    return Urgency.WATCH if before else Urgency.NONE


def _has_words(tokens: list[Token]) -> bool:
    return any(token.kind == WORD for token in tokens)


_WIDE = listed("""
    sign:pain sign:burning sign:rash sign:itching sign:swelling sign:redness sign:pain! sign:watering
    sign:redness!
""")


def _is_elsewhere(page: Page, mark: Mark) -> bool:
    """Say whether the words are about another part of her: her back, her feet, her purse."""
    if mark.name not in _WIDE:
        return False
    clause = page.clause[mark.start]
    near = [
        other
        for other in page.named("scope:elsewhere")
        if page.clause[other.start] == clause and -4 <= other.start - mark.start <= 5
    ]
    if not near:
        return False
    words = {token.word for token, where in zip(page.tokens, page.clause, strict=True) if where == clause}
    return not words & {
        "eye",
        "eyes",
        "lid",
        "lids",
        "eyelid",
        "eyelids",
        "ojo",
        "ojos",
        "parpado",
        "parpados",
        "lashes",
    }


def _finding(page: Page, answer: str, mark: Mark, name: str) -> Finding:
    start, end = page.tokens[mark.start].start, page.tokens[mark.end - 1].end
    return Finding(name, answer[start:end], start, end)


def _command(answer: str, start: int, topic: Topic, text: str) -> Reading:
    inner = re.search(r"\S(?:.*\S)?", answer, re.DOTALL)
    first, last = (inner.start(), inner.end()) if inner else (0, 0)
    finding = Finding(str(topic), answer[first:last], first, last)
    reading = Reading(Urgency.NONE, (topic,), (), (), None, "en", False, (finding,))
    return _shifted(reading, start, text)


def _shifted(reading: Reading, start: int, text: str) -> Reading:
    if not start:
        return reading
    why = tuple(Finding(one.finding, one.text, one.start + start, one.end + start) for one in reading.why)
    return Reading(
        reading.urgency,
        reading.about,
        reading.signs,
        reading.negated,
        reading.side,
        reading.language,
        reading.unread,
        why,
    )
