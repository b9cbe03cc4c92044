"""The standard words of a reply, standing alone: STOP and its kin, START, HELP. Any case, spacing and punctuation.

Sources: the words that always count as a revocation in the United States are stop, quit, end, revoke, opt out, cancel
and unsubscribe (47 CFR 64.1200(a)(10), 2024); carriers add STOPALL, START, UNSTOP, HELP and INFO (common practice of
text messaging, from memory, as are the Spanish words). A word inside a sentence is no command: a person reads those.
"""

from __future__ import annotations

import unicodedata
from enum import StrEnum


class Command(StrEnum):
    """What the standard word asks for."""

    STOP = "stop"
    START = "start"
    HELP = "help"


CANCEL = frozenset({"cancel", "cancelar"})  # a stop, but she may have meant the visit
_STOP = CANCEL | {
    *("stop", "stopall", "quit", "end", "revoke", "optout", "unsubscribe"),
    *("optmeout", "pleaseoptmeout", "pleasestop", "stopplease", "unsubscribeme"),
    *("alto", "parar", "baja"),
}
_START = frozenset({"start", "unstop", "empezar", "reanudar"})
_HELP = frozenset({"help", "info", "ayuda"})
_LONGEST = 60  # letters; what is longer is no standard word, however it is punctuated


def read(text: str) -> Command | None:
    """Return the command that ``text`` consists of, or None.

    >>> read(" S.T.O.P!! "), read("Please opt me out."), read("stop by at 3?"), read("Yes")
    (<Command.STOP: 'stop'>, <Command.STOP: 'stop'>, None, None)
    """
    word = _letters(text)
    if word in _STOP:
        return Command.STOP
    if word in _START:
        return Command.START
    return Command.HELP if word in _HELP else None


def may_mean_the_visit(text: str) -> bool:
    """Say whether a stop could be about her appointment: "cancel" is a word of both."""
    return _letters(text) in CANCEL


def _letters(text: str) -> str:
    """Return letters and digits alone, folded: full-width letters are plain ones, marks and emoji are nothing."""
    if len(text) > 400:
        return ""
    folded = unicodedata.normalize("NFKC", text).casefold()
    found = "".join(character for character in folded if character.isalnum())
    return found if len(found) <= _LONGEST else ""
