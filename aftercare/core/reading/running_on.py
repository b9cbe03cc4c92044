"""Who dictates makes no stops: where a new sentence begins all the same."""

from __future__ import annotations

from aftercare.core.reading.tokens import Token, listed

_TOLD_ON = 3  # tokens after which who dictates may be at her next sentence
_HAVE = listed("have had got feel felt")
_ANEW, _SOME = listed("ive theres siento traigo"), listed("a an some slight lots")
_OPINION = listed("say think that if any anything whether mean creo diga")


def begins_anew(tokens: list[Token], first: int, place: int, target: int) -> bool:
    """I haven't got my glasses she says hello I have an itch: no stops, but a sentence of its own."""
    word = tokens[place].word
    if not (word in _ANEW or word == "i" and place + 1 < target and tokens[place + 1].word in _HAVE):
        return False
    if place - first < _TOLD_ON and not {token.word for token in tokens[place + 1 : place + 3]} & _SOME:
        return False
    return not _OPINION & {token.word for token in tokens[max(0, place - 3) : target]}
