"""Her answer, apart from what her mail program quoted under it and from what stands under her name."""

from __future__ import annotations

import re
from dataclasses import dataclass

_HEADER = re.compile(
    r"^[ \t>]*(?:"
    r"On\b[^\n]{0,120}(?:\n[^\n]{0,80})?\bwrote:|El\b[^\n]{0,120}(?:\n[^\n]{0,80})?\bescribi[oó]:|"
    r"Le\b[^\n]{0,120}a [ée]crit\s?:|Am\b[^\n]{0,120}schrieb[^\n]{0,60}:|"
    r"-{2,}\s*(?:Original Message|Forwarded message|Mensaje original)|"
    r"(?:From|De|Von|Sent|Enviado|Subject|Asunto):[ \t]|_{8,}|"
    r"Sent from my |Enviado desde mi |Get Outlook|Sent with "
    r")",
    re.IGNORECASE | re.MULTILINE,
)
_QUOTED_LINE = re.compile(r"^[ \t]*(?:>|&gt;|\|)[^\n]*", re.MULTILINE)
_SIGNATURE = re.compile(r"^-- ?$|^--$", re.MULTILINE)


@dataclass(frozen=True, slots=True)
class Parts:
    """``answer`` ends at ``end`` of the text; ``question`` is what is quoted, or ""."""

    answer: str
    start: int
    question: str


def split(text: str) -> Parts:
    """Return her own words, from ``start`` of the text, and the quoted ones. She may write under the quotation too."""
    cuts = [found.start() for pattern in (_HEADER, _QUOTED_LINE, _SIGNATURE) if (found := pattern.search(text))]
    if not cuts:
        return Parts(text, 0, "")
    cut = min(cuts)
    answer, rest = text[:cut], text[cut:]
    if answer.strip():
        return Parts(answer, 0, rest)
    below = _last_quoted(rest)
    return Parts(text[cut + below :], cut + below, rest[:below]) if rest[below:].strip() else Parts(text, 0, "")


def _last_quoted(rest: str) -> int:
    end = 0
    for pattern in (_HEADER, _QUOTED_LINE):
        for found in pattern.finditer(rest):
            line = rest.find("\n", found.end())
            end = max(end, len(rest) if line < 0 else line)
    return end
