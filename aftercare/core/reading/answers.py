"""One short answer, said in words that have no meaning without a question: "a bit", "not any more", "just the left"."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum, auto

from aftercare.core.reading.phrases import Mark, Phrases
from aftercare.core.reading.tokens import LINE, PICTURE, WORD, Token, listed
from aftercare.core.reading.words.answers import ANSWERS, LABELS


class Says(Enum):
    """What an answer says to "any redness, swelling or itching?"."""

    YES = auto()
    NO = auto()
    BETTER = auto()  # there still is some, and it gets less
    OVER = auto()
    UNSURE = auto()
    GOOD = auto()
    BAD = auto()
    WORSE = auto()  # or the same as it was
    SOME = auto()  # a little, of a part of her, at some times
    THANKS = auto()
    COMING = auto()  # "see you Friday"


def _tree() -> Phrases:
    tree = Phrases({})
    for name, text in (*ANSWERS.items(), ("label", LABELS["rest"])):
        tree.add(name, text)
    return tree


_PHRASES = _tree()
_ONLY, _BUT = (
    listed("only just solo solamente nomas unicamente mas"),
    listed("but pero though although except aunque sino"),
)
_CLOSING = listed("regards wishes saludos cordialmente atentamente sincerely cheers yours sent enviado")
_THANKS, _THEN_A_NAME = listed("thanks thank ty thx love gracias x xx"), 4  # tokens
_KIND = listed("kind best warm warmest many all with cordiales muchos un")
_LONGEST_CLOSING, _LONGEST_NAME = 10, 3  # tokens
_DOWN, _UP = listed("👎 ❌ ✖ ✗ ✘ 🚫"), listed("✅ ✔ ☑ ✓")


def marks_in(tokens: Sequence[Token]) -> list[Mark]:
    """Return every phrase of an answer that stands in ``tokens``."""
    return _PHRASES.find(list(tokens))


def phrases_in(tokens: Sequence[Token]) -> list[Mark] | None:
    """Return the phrases that an answer is wholly made of, one after the other; or None where it says more."""
    longest: dict[int, Mark] = {}
    for mark in marks_in(tokens):
        best = longest.get(mark.start)
        if best is None or mark.end > best.end or mark.end == best.end and best.name == "and":
            longest[mark.start] = mark
    found: list[Mark] = []
    place = 0
    while place < len(tokens):
        token = tokens[place]
        if token.kind == PICTURE and token.word in _DOWN | _UP:
            found.append(Mark("no" if token.word in _DOWN else "yes", place, place + 1))
        elif token.kind == WORD:
            told = _letter(tokens, place) or longest.get(place)
            if told is None:
                return None
            found.append(told)
            place = told.end
            continue
        place += 1
    return found


def _letter(tokens: Sequence[Token], place: int) -> Mark | None:
    """Chat takes "n" for "and", which alone is a no; "y" within an answer is the Spanish and."""
    token = tokens[place]
    within = place > 0 and tokens[place - 1].kind == WORD
    if token.written == "n" and not within:
        return Mark("no", place, place + 1)
    return Mark("and", place, place + 1) if token.written == "y" and within else None


def said_by(tokens: Sequence[Token], found: Sequence[Mark]) -> Says | None:
    """Return what phrases say together; None where they say nothing: "well, thanks"."""
    names = [mark.name for mark in found]
    held = set(names)
    if "unsure" in held:
        return Says.YES if held & {"yes", "some", "part", "when"} else Says.UNSURE
    if "goes_on" in held:
        return Says.WORSE
    if "over" in held:
        return Says.SOME if _is_of_now(tokens, found) else Says.OVER
    if "better" in held:
        return Says.BETTER
    if "yes" in held:
        return _yes(tokens, found, held)
    if "no" in held:
        return Says.SOME if _is_but_some(tokens, found) else Says.NO
    if "bad" in held:
        return Says.BAD
    if "good" in held:
        return Says.GOOD
    if "maybe" in held or held & {"some", "part", "when"}:
        return Says.SOME
    if "arrival" in held:
        return Says.COMING
    return Says.THANKS if "thanks" in held else None


def _yes(tokens: Sequence[Token], found: Sequence[Mark], held: set[str]) -> Says:
    """Return yes; but "yes all good" is good, "yes see you then" comes, and "no, it is fine, yes" says too much."""
    if "arrival" in held:
        return Says.COMING
    if "no" in held or held & {"some", "part", "when", "bad"}:
        return Says.YES
    return Says.GOOD if "good" in held else Says.YES


_NOW = listed("now today tonight ahora hoy ahorita")


def _is_of_now(tokens: Sequence[Token], found: Sequence[Mark]) -> bool:
    """Nothing at first but now yes; not the first day, a bit now."""
    over = next(place for place, mark in enumerate(found) if mark.name == "over")
    denied = any(mark.name == "no" for mark in found[:over])
    told = [mark for mark in found[over + 1 :] if mark.name in ("yes", "some", "part")]
    return denied and bool(told) and any(token.word in _NOW for token in tokens[found[over].end :])


def _is_but_some(tokens: Sequence[Token], found: Sequence[Mark]) -> bool:
    """No, only the left one; not really, just when I blink; no but a bit."""
    first = next(place for place, mark in enumerate(found) if mark.name == "no")
    later = [mark for mark in found[first + 1 :] if mark.name in ("some", "part", "when", "maybe")]
    if not later:
        return False
    if any(mark.name == "some" and _is_a_degree(tokens, mark) for mark in later):
        return True  # "no, no, a bit"
    between = {token.word for token in tokens[found[first].end : later[-1].end]}
    return bool(between & (_ONLY | _BUT))


_DEGREES = listed("bit little slightly somewhat mildly poco poquito tantito algo")


def _is_a_degree(tokens: Sequence[Token], mark: Mark) -> bool:
    return bool(_DEGREES & {token.word for token in tokens[mark.start : mark.end]})


def without_closing(tokens: list[Token], answer: str) -> list[Token]:
    """Return the answer without "Regards, F. Achterberg", and without a name in a line of its own."""
    while tokens and tokens[-1].kind == LINE:
        tokens = tokens[:-1]
    for place, token in enumerate(tokens):
        if token.word in _CLOSING and place and len(tokens) - place <= _LONGEST_CLOSING:
            start = place - (tokens[place - 1].word in _KIND)
            if start and tokens[start - 1].kind != WORD:
                return tokens[:start]
        if (
            token.word in _THANKS
            and 1 < len(tokens) - place <= _THEN_A_NAME
            and _is_a_name(tokens[place + 1 :], answer)
        ):
            return tokens[: place + 1]
    breaks = [place for place, token in enumerate(tokens) if token.kind == LINE]
    last = tokens[breaks[-1] + 1 :] if breaks else []
    return tokens[: breaks[-1]] if _is_a_name(last, answer) else tokens


def _is_a_name(tokens: list[Token], answer: str) -> bool:
    words = [token for token in tokens if token.kind == WORD]
    written_so = 0 < len(words) <= _LONGEST_NAME and all(answer[one.start].isupper() for one in words)
    return written_so and phrases_in(tokens) is None
