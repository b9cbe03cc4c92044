"""Pictures alone: an eye in trouble, praise, or something for a person to make out."""

from __future__ import annotations

from aftercare.core.reading.tokens import PICTURE, Token, listed
from aftercare.core.reading.values import Sign
from aftercare.core.reading.words.pictures import EYES, PAINED, PICTURE_SIGNS, PRAISE, RED

OPEN_EYE = "👁"
_EYE_WORDS = listed("eye eyes lid lids eyelid eyelids ojo ojos parpado parpados")


def signs_of(tokens: list[Token]) -> list[tuple[Sign, Token]]:
    """Return the signs that pictures show: an eye, with red, fire or tears, and a face in pain."""
    pictures = [token for token in tokens if token.kind == PICTURE]
    shown = {token.word for token in pictures}
    red = OPEN_EYE in shown and shown & RED and not shown & PRAISE
    if not red and (not shown & EYES or not shown & PAINED):
        return []
    return [(Sign(name), token) for token in pictures if (name := PICTURE_SIGNS.get(token.word))]


def signs_beside_words(tokens: list[Token], has_sign: bool) -> list[tuple[Sign, Token]]:
    """Return the signs that pictures beside words show: at an eye, drawn or written, or with a face in pain."""
    pictures = [token for token in tokens if token.kind == PICTURE]
    if not pictures:
        return []
    shown = {token.word for token in pictures}
    eye = bool(shown & EYES)
    written = any(token.word in _EYE_WORDS for token in tokens)
    found = []
    for token in pictures:
        name = PICTURE_SIGNS.get(token.word)
        if not name:
            continue
        fire = name == "burning"
        if (
            eye
            and (not fire or has_sign or shown & PAINED)
            or written
            and not fire
            and name != "pain"
            and not shown & PRAISE
        ):
            found.append((Sign(name), token))
    return found


def is_praise(tokens: list[Token]) -> bool:
    """Say whether the pictures, with no words beside them, are plainly praise or thanks."""
    shown = [token.word for token in tokens if token.kind == PICTURE]
    praise = sum(one in PRAISE for one in shown)
    return bool(shown) and praise * 2 > len(shown) and not any(one in PAINED for one in shown)
