"""The text of an e-mail that came in, parted: what she wrote, and what her program and her sign-off put around it.

What she wrote decides whether an eye is in trouble, so whatever could be hers stays hers: only what a mail program
marks is taken for quoted, and a sign-off is taken off only where it tells of nothing.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from mailparser_reply.parser import EmailMessage

from aftercare.core import reading
from aftercare.core.reading import Topic, Urgency

LONGEST_TEXT = 100_000  # letters that are parted; what is longer is kept whole by whoever calls, and read up to there
LONGEST_BELOW = 4_000
LANGUAGES = ["en", "es", "de", "fr", "it", "nl", "pl", "sv", "da"]  # of mail programs' "On … wrote"

# The kept library knows what mail programs put above a quotation. Its signatures are not used: they begin at
# "Thanks, …" or "- …" and run to the end, and an eye in trouble may stand there.
_HEADER = EmailMessage(text="", languages=LANGUAGES).HEADER_REGEX
# Its patterns take time by the square of a line's length: 33,000 times "On " in one line took minutes.
_LONGEST_HEADER_LINE = 200
_LONGEST_SEARCHED = 20_000
_NAMED = re.compile(
    r"[*\s]*(?:From|Sent|To|Subject|Date|Cc|De|Enviado(?: el)?|Fecha|Para|Asunto|Von|Gesendet|An|Betreff|"
    r"Envoy[ée]|À|Objet)\s?:\*? ?\S",
    re.IGNORECASE,
)
# Headers of that kind that the library misses: with a date, so that "On Monday I wrote: my eye is red" is none.
_WROTE = re.compile(
    r"^[ \t>]*(?:On|El|Le|Am|Il|Op|Em|Den|W dniu)\b(?=[^\n]{0,160}\d)[^\n]{0,160}(?:\n[^\n]{0,80})?\b"
    r"(?:wrote|escribi[oó]|a [ée]crit|schrieb|ha scritto|schreef|escreveu|skrev|napisał)\b[^\n]{0,60}:[ \t]*$",
    re.IGNORECASE | re.MULTILINE,
)
_BLOCK = 3  # named lines on end that are a header, not her words
_FORWARDED = re.compile(
    r"\s*[_-]{2,}\s*(?:Original Message|Forwarded message|Mensaje original|Mensaje reenviado)\s*[_-]{2,}\s*$",
    re.IGNORECASE,
)
_RULE = re.compile(r"\s*[_-]{2,}\s*$")
_QUOTED = re.compile(r"[ \t]*>(?![._:;=(<)-]{1,3}(?:\s|$))")  # a mark of quoting, not a face such as ">.<" or ">:("

_DEVICE = re.compile(
    r"\s*(?:sent from (?:my )?[\w' ]{1,30}|get [\w ]{2,20} for [\w ]{2,12}|"
    r"enviado desde (?:mi )?[\w' ]{1,30})[.!]?\s*$",
    re.IGNORECASE,
)
# Lines that part and say nothing else (common practice, no source); two dashes: RFC 3676, 4.3.
_SIGN_OFF = re.compile(
    r"\s*(?:--|best|cheers|love|sincerely|yours|thanks|thank you|many thanks|all the best|best wishes|"
    r"(?:(?:with )?(?:best|kind|kindest|warm) )?regards|(?:un )?saludos?(?: cordiales?)?|atentamente|"
    r"(?:muchas )?gracias|un abrazo|abrazos|besos)\s*[,.!]*\s*$",
    re.IGNORECASE,
)
_DISCLAIMER = re.compile(
    r"\s*(?:disclaimer|confidential|confidencial|aviso legal|(?:the information in )?this (?:e-?mail|message)|"
    r"este (?:correo|mensaje))\b[^\n]{0,300}(?:confiden|privileg|intended|destinatari)",
    re.IGNORECASE,
)
_MOST_LINES = 12  # of a sign-off with name, trade and address
_LAST_LINES = 60  # among which it begins
_SAYS_NOTHING = frozenset({Topic.OTHER, Topic.FINE})
# "If you are not the intended recipient, delete it" is no wrong person, and no wish to end messages.
_IN_DISCLAIMERS = _SAYS_NOTHING | {Topic.WRONG_PERSON, Topic.STOP, Topic.QUESTION}


@dataclass(frozen=True, slots=True)
class Words:
    """Her own words, and what stands around them: what her program quoted, her sign-off. Either may be empty."""

    own: str
    below: str


def split(text: str) -> Words:
    """Part a text into her own words and all else; she may write above a quotation, below it, or in between.

    Where she wrote in between, ``below`` shows all of it once more, so that one sees which question she answers.

    >>> split("Yes\\n\\nOn Tue, 9 Mar 2027 at 10:00, The Studio <a@b.example> wrote:\\n> Any redness?").own
    'Yes'
    """
    lines = text[:LONGEST_TEXT].replace("\r\n", "\n").replace("\r", "\n").strip().split("\n")
    quoted = _quoted(lines)
    hers = [line for line, marked in zip(lines, quoted, strict=True) if not marked]
    own, parting = _without_sign_off(hers)
    first = quoted.index(True) if True in quoted else len(lines)
    wrote_below = any(line.strip() for line in own[first:])  # up to there all lines are hers
    around = [line for at, line in enumerate(lines) if quoted[at] or (wrote_below and at >= first)]
    return Words("\n".join(own).strip(), "\n".join([*parting, *around]).strip()[:LONGEST_BELOW])


def _quoted(lines: Sequence[str]) -> list[bool]:
    """Say of each line whether it is quoted. Marks with nothing else around them are hers."""
    start, end = _header(lines)
    found = [start <= at < end or bool(_QUOTED.match(line)) for at, line in enumerate(lines)]
    if start == len(lines):
        alone = all(marked or not line.strip() for marked, line in zip(found, lines, strict=True))
        return [False] * len(lines) if alone else found
    if any(found[end:]):  # her program marks what it quotes: what has no mark is hers
        return found
    return [marked or at >= start for at, marked in enumerate(found)]


def _header(lines: Sequence[str]) -> tuple[int, int]:
    """Return from which line to which a mail program says whom it quotes; behind the last where none does."""
    start, end = min(_headers(lines), default=(len(lines), len(lines)))
    while start and (_NAMED.match(lines[start - 1]) or (start < end and _RULE.match(lines[start - 1]))):
        start -= 1
    while start < end < len(lines) and _NAMED.match(lines[end]):
        end += 1
    return start, end


def _headers(lines: Sequence[str]) -> Iterator[tuple[int, int]]:
    searched = "\n".join(line[:_LONGEST_HEADER_LINE] for line in lines)[:_LONGEST_SEARCHED]
    for found in (_HEADER.search(searched), _WROTE.search(searched)):
        if found is None:
            continue
        begins = found.start() + len(found.group()) - len(found.group().lstrip("\n"))
        yield searched.count("\n", 0, begins), searched.count("\n", 0, found.end()) + 1
    for at, line in enumerate(lines):
        named = all(_NAMED.match(one) for one in lines[at : at + _BLOCK]) and at + _BLOCK <= len(lines)
        if named or _FORWARDED.match(line):
            yield at, at + 1
            return


def _without_sign_off(lines: Sequence[str]) -> tuple[list[str], list[str]]:
    """Return her words, and what was taken off: a sign-off with what stands under it, rules, her device's name."""
    own, taken = list(lines), list[str]()
    for at in range(max(1, len(own) - _LAST_LINES), len(own)):
        begins = _SIGN_OFF.match(own[at]) or _DISCLAIMER.match(own[at])
        if begins and "".join(own[:at]).strip() and _is_sign_off(own[at:]):
            own, taken = own[:at], own[at:]
            break
    is_hers = [not (_RULE.match(line) or (_DEVICE.match(line) and _tells_nothing(line))) for line in own]
    rules = [line for line, hers in zip(own, is_hers, strict=True) if not hers]
    return [line for line, hers in zip(own, is_hers, strict=True) if hers], [*rules, *taken]


def _is_sign_off(tail: Sequence[str]) -> bool:
    filled = [line for line in tail if line.strip()]
    if _DISCLAIMER.match(tail[0]):
        return _tells_nothing("\n".join(filled), _IN_DISCLAIMERS)
    disclaimer = next((at for at, line in enumerate(filled) if _DISCLAIMER.match(line)), len(filled))
    rest = "\n".join(filled[disclaimer:])
    return (
        disclaimer <= _MOST_LINES
        and _tells_nothing("\n".join(filled[1:disclaimer]))
        and _tells_nothing(rest, _IN_DISCLAIMERS)
    )


def _tells_nothing(text: str, about: frozenset[Topic] = _SAYS_NOTHING) -> bool:
    """Whether it tells neither of an eye nor of anything that she wants. What cannot be read may tell of both."""
    if not text.strip():
        return True
    try:
        found = reading.read(text)
    except Exception:  # a line too many on a page is better than a sign too few
        return False
    return found.urgency is Urgency.NONE and not found.signs and not found.negated and about >= set(found.about)
