"""A first guess at a reply in another language. A person reads it, unless it pages one at once as an emergency."""

from __future__ import annotations

import re
from dataclasses import replace

from aftercare.core.reading.tokens import fold
from aftercare.core.reading.values import Finding, Reading, Side, Sign, Topic, Urgency
from aftercare.core.reading.words import others

_PIECES = {
    name: re.compile("|".join(_piece for _piece in (fold(one.strip())[0] for one in text.split("|")) if _piece))
    for name, text in others.SIGNS.items()
}


def _topic(text: str) -> re.Pattern[str]:
    return re.compile(
        "|".join(
            r"(?:\b" + one + ")" if one[0].isascii() else one
            for one in (fold(piece.strip())[0] for piece in text.split("|"))
            if one
        )
    )


_NOT = _topic(others.NOT)
_FACE, _GLUE, _IN_EYE = _topic(others.FACE), _topic(others.GLUE), _topic(others.IN_EYE)
_FEVER = _topic(others.FEVER)
_RETURNS = _topic(others.RETURNS)
_OVER, _NEAR = _topic(others.OVER), _topic(others.NEAR)
_TOPICS = {
    Topic.STOP: _topic(others.STOP),
    Topic.WRONG_PERSON: _topic(others.WRONG),
    Topic.FINE: _topic(others.FINE),
    Topic.RETENTION: _topic(others.RETENTION),
    Topic.BOOKING: _topic(others.BOOKING),
    Topic.QUESTION: _topic(others.QUESTION),
}
_LEFT, _RIGHT = _topic(others.LEFT), _topic(others.RIGHT)
_SIGNS = frozenset(str(sign) for sign in Sign)
_BEFORE = 14  # letters within which a denial belongs to a sign


def has_alarm(text: str) -> bool:
    """Say whether words of an emergency in another language stand in the text."""
    folded = fold(text)[0]
    return any(pattern.search(folded) for name, pattern in _PIECES.items() if name.endswith("!"))


def read(text: str, code: str) -> Reading:
    """Return the guess; ``unread`` is true, but for an emergency, of which a person hears at once."""
    folded, places = fold(text)
    signs: list[Sign] = []
    negated: list[Sign] = []
    why: list[Finding] = []
    emergency = False
    gone = _OVER.search(folded)
    over = gone is not None and _RETURNS.search(folded, gone.end()) is None
    near = bool(_NEAR.search(folded))
    for name, pattern in _PIECES.items():
        for found in pattern.finditer(folded):
            plain = name.removesuffix("!")
            if name.endswith("!"):
                emergency = True
            elif _denied(folded, found.start(), found.end()):
                if plain in _SIGNS and (sign := Sign(plain)) not in negated:
                    negated.append(sign)
                continue
            if plain in _SIGNS and (sign := Sign(plain)) not in signs:
                signs.append(sign)
            start, end = places[found.start()], places[found.end() - 1] + 1
            why.append(Finding(plain, text[start:end], start, end))
    emergency = emergency or _is_emergency(folded, signs)
    if not emergency and Sign.GLUE_IN_EYE not in signs and _GLUE.search(folded) and _IN_EYE.search(folded):
        signs.append(Sign.GLUE_IN_EYE)
        emergency = True
    about: list[Topic] = []
    for topic, pattern in _TOPICS.items():
        if (topic_found := pattern.search(folded)) is not None:
            about.append(topic)
            start, end = places[topic_found.start()], places[topic_found.end() - 1] + 1
            why.append(Finding(topic, text[start:end], start, end))
    reading = _judged(code, signs, negated, about, why, emergency=emergency, over=over, near=near)
    return replace(reading, side=_side(folded))


_PROPERLY = re.compile(r"\b(?:enxerg\w+|ver|vejo|abr\w+|respir\w+|fech\w+|dormir) direito\b")


def _side(folded: str) -> Side | None:
    folded = _PROPERLY.sub(" ", folded)
    left, right = _LEFT.search(folded), _RIGHT.search(folded)
    if left and right:
        return None  # which is meant is for a person to say
    return Side.LEFT if left else Side.RIGHT if right else None


def _is_emergency(folded: str, signs: list[Sign]) -> bool:
    if Sign.SWELLING in signs and (_FACE.search(folded) or _FEVER.search(folded)):
        return True
    return Sign.REDNESS in signs and Sign.LIGHT in signs or Sign.VISION in signs


def _judged(
    code: str,
    signs: list[Sign],
    negated: list[Sign],
    about: list[Topic],
    why: list[Finding],
    *,
    emergency: bool,
    over: bool,
    near: bool,
) -> Reading:
    has_sign = bool(signs) or emergency
    if Topic.STOP in about:
        about = [Topic.STOP]
    elif Topic.BOOKING in about:
        about = [topic for topic in about if topic not in (Topic.QUESTION, Topic.FINE)]
    elif has_sign:
        about = [topic for topic in about if topic is not Topic.BOOKING]
    if emergency:
        urgency = Urgency.EMERGENCY
    elif has_sign:
        urgency = Urgency.WATCH if over or near else Urgency.SAME_DAY
    else:
        urgency = Urgency.NONE
    kept = [] if over and not near and not emergency else signs
    topics = [Topic.IRRITATION, *about] if has_sign else about or ([Topic.FINE] if negated else [Topic.OTHER])
    negated = [sign for sign in negated if sign not in kept]
    ordered = tuple(topic for topic in Topic if topic in topics)
    return Reading(
        urgency,
        ordered,
        tuple(s for s in Sign if s in kept),
        tuple(s for s in Sign if s in negated),
        None,
        code,
        urgency is not Urgency.EMERGENCY,
        tuple(why),
    )


def _denied(folded: str, start: int, end: int) -> bool:
    if _NOT.search(folded, max(0, start - _BEFORE), start) is not None:
        return True
    return (
        folded[start:end][0] > "\u2fff"
        and re.match(r"\s*(?:ない|なし|ありません|없|안)", folded[end : end + 5]) is not None
    )
