"""What a caution says to do, and which of it other words for it leave out.

The parts are those that the sources of the first wordings agree on (rinse, no force, doctor, emergency): whoever
changes the words must have had a professional look at just these.
"""

from __future__ import annotations

import re

# What is to be done, and how each language says it: by a field, or by words of the first wordings.
PARTS: tuple[tuple[str, re.Pattern[str]], ...] = tuple(
    (what, re.compile(pattern, re.IGNORECASE))
    for what, pattern in (
        ("the emergency number", r"\bemergency_call\b"),
        ("where to get emergency eye care", r"\bemergency_care\b|urgent eye care|\burgencias\b"),
        ("rinsing first", r"\brins\w+|\benju[aá]g\w+|\blava el ojo"),
        ("for at least 20 minutes", r"\b20\b"),
        ("seeing a doctor", r"\bdoctor\w*|\bm[eé]dic\w+|\boculist\w*|\boftalm[oó]log\w+|\bclinician"),
        ("not to wait for the studio", r"\bwait for (?:us|our)\b|\besper\w+"),
        ("contact lenses out", r"\blens(?:es)?\b|\blentillas\b|\blentes\b"),
        ("not to pull, and not to take the lashes off", r"\bpull\w*|lashes off|\btir\w+|\bquit\w+|\barranq\w+"),
        ("breathing, or a swollen face", r"\bbreath\w*|\brespir\w+"),
        ("not to drive", r"\bdriv\w+|\bcondu[cz]\w+|\bmanej\w+"),
        ("the poison line", r"\bpoison_line\b"),
    )
)


def left_out(first: str, changed: str) -> tuple[str, ...]:
    """Name what ``first`` says to do and ``changed`` does not, both with the names of their fields."""
    return tuple(what for what, words in PARTS if words.search(first) and not words.search(changed))
