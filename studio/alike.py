"""Names as people look them up: capitals and accents make no difference, in either direction."""

from __future__ import annotations

import re
import unicodedata
from functools import cache

MARKS = "[\u0300-\u036f]*"  # accents that stand behind their letter as signs of their own
# Letters that Unicode takes for whole, though people type them without their stroke or dot.
STROKED = {"đ": "d", "ħ": "h", "ı": "i", "ł": "l", "ø": "o", "ŧ": "t"}


def pattern(word: str) -> str:
    """Return a regular expression for a word within a name, for SQLite and PostgreSQL alike.

    >>> bool(re.search(pattern("zoe"), "Zoë", re.IGNORECASE)), bool(re.search(pattern("Núñez"), "NUNEZ", re.IGNORECASE))
    (True, True)
    """
    return "".join(_letter(letter) for letter in plain(word))


def plain(text: str) -> str:
    """Return the text small and without accents."""
    letters = unicodedata.normalize("NFD", text.lower())
    return "".join(STROKED.get(letter, letter) for letter in letters if not unicodedata.combining(letter))


def _letter(letter: str) -> str:
    forms = _forms().get(letter)
    return f"[{forms}]{MARKS}" if forms else re.escape(letter)


@cache
def _forms() -> dict[str, str]:
    """Return for each plain letter all that stand for it, capitals too: not every database folds those of each."""
    forms: dict[str, set[str]] = {}
    for code in (*range(0x41, 0x5B), *range(0x61, 0x7B), *range(0xC0, 0x250), *range(0x1E00, 0x1F00)):
        letter = chr(code)
        bare = plain(letter)
        if len(bare) == 1 and bare.isalpha():
            forms.setdefault(bare, set()).add(letter)
    return {bare: "".join(sorted(letters)) for bare, letters in forms.items()}
