"""Find in a text what carriers of texts block, or filter so often that it may not arrive.

What is blocked outright follows CTIA's Messaging Principles and Best Practices (May 2023), 5.3, from memory: adult
content, firearms, gambling, cannabis, and lending to strangers. What is filtered is common practice, no source: no
carrier says what it looks for.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

_LEAST_SHOUTED = 24  # letters; a shorter text may well be one word that must be seen
_SHOUTED = 0.7


@dataclass(frozen=True, slots=True)
class Blocked:
    """What was found, where it begins, why it may not arrive, and the cure; ``surely``: carriers refuse it outright."""

    start: int
    words: str
    why: str
    cure: str
    surely: bool


def _whole(alternatives: str) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w)(?:{alternatives})(?!\w)", re.IGNORECASE)


_REFUSED = _whole(
    r"cannabis|marijuana|cbd|thc|casinos?|gambling|sports? ?bet(?:s|ting)?|firearms?|guns?|ammo|"
    r"porn\w*|xxx|payday loans?|cash advance|debt relief|crypto(?:currency)?|bitcoin|"
    r"apuestas|préstamos?|prestamos?|armas"
)
# Vaping is refused where it is sold; “no vaping for a day” is honest aftercare, and its owner decides.
_FILTERED = _whole(
    r"vapes?|vaping|poker|escorts?|"
    r"click (?:here|below|this)|act (?:now|fast)|limited time|last chance|you(?:'ve| have)? won|winners?|prizes?|"
    r"100 ?% free|free (?:gift|money|trial)s?|earn (?:cash|money)|risk[- ]free|guaranteed|once in a lifetime|"
    r"haz clic(?: aquí| aqui)?|has ganado|ganaste|premios?|gana dinero|garantizado|[uú]ltima oportunidad"
)
_SHOUTS = re.compile(r"[!¡?¿]{3,}|\$\$+")
_RAW_ADDRESS = re.compile(r"https?://(?:\d{1,3}\.){3}\d{1,3}\S*", re.IGNORECASE)


def find_blocked(text: str) -> Iterator[Blocked]:
    """Find what would keep a text from arriving, from its beginning to its end; shouting at last."""
    kinds = [
        (_REFUSED, "Carriers refuse texts with it.", "Leave it out.", True),
        (_RAW_ADDRESS, "Carriers block links that are bare numbers.", "Write your page's own name.", True),
        (_FILTERED, "Carriers’ filters take it for an advertisement of strangers.", "Say it in plain words.", False),
        (_SHOUTS, "Carriers’ filters take it for an advertisement of strangers.", "One mark is enough.", False),
    ]
    found = [
        Blocked(match.start(), match[0], why, cure, surely)
        for pattern, why, cure, surely in kinds
        for match in pattern.finditer(text)
    ]
    yield from sorted(found, key=lambda one: one.start)
    letters = [letter for letter in text if letter.isalpha()]
    if len(letters) >= _LEAST_SHOUTED and sum(map(str.isupper, letters)) > _SHOUTED * len(letters):
        yield Blocked(0, text[:20], "Carriers’ filters stop texts in capitals.", "Write in small letters.", False)
