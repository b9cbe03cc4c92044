"""An e-mail that came in, taken apart: her own words and what stands below them, whether a machine wrote it.

Nothing here raises for a mail that is broken: what cannot be read is left out, and the whole is kept by whoever calls.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass
from email.errors import MessageError
from email.message import Message
from email.parser import HeaderParser

from inscriptis import get_text
from mailparser_reply import EmailReplyParser

from aftercare.core.reading import quoting

LONGEST_TEXT = 100_000  # letters that are taken apart; what is longer is kept whole and read up to there
LONGEST_QUOTED = 4_000
LANGUAGES = ["en", "es", "de", "fr", "it", "nl", "pl", "sv", "da"]  # of mail programs' "On … wrote"
_READING_FAILS = (LookupError, ValueError, MessageError, TypeError, AttributeError, RecursionError)

_AUTOMATIC_PRECEDENCE = frozenset({"bulk", "junk", "list", "auto_reply"})
# Subjects of answering machines, as mail programs write them in the two languages (common practice, no source).
_AUTOMATIC_SUBJECT = re.compile(
    r"^\s*(automatic reply|auto(matic)? ?-?reply|autoreply|out of (the )?office|away from (the )?office|"
    r"respuesta autom[aá]tica|fuera de (la )?oficina|ausente de la oficina)\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Words:
    """Her own words, and what stands below them: what her program quoted, her signature. Either may be empty."""

    own: str
    below: str


@dataclass(frozen=True, slots=True)
class Report:
    """What a delivery report says of a message of ours (RFC 3464): by our reference, or the identity that it had."""

    reference: str
    action: str  # failed, delayed, delivered, relayed, expanded
    status: str  # RFC 3463, such as 5.1.1
    problem: str


def words_of(message: Message) -> Words:
    """Return what she wrote, apart from what her mail program put below it."""
    return split(body_of(message))


def split(text: str) -> Words:
    """Part a text into her own words and what stands below them; she may also have written under a quotation.

    >>> split("Yes\\n\\nOn Tue, 9 Mar 2027 at 10:00, The Studio <a@b.example> wrote:\\n> Any redness?").own
    'Yes'
    """
    text = text[:LONGEST_TEXT].replace("\r\n", "\n").replace("\r", "\n").strip()
    own = text
    with suppress(*_READING_FAILS):
        parts = EmailReplyParser(languages=LANGUAGES).read(text).replies
        own = (parts[0].body or "").strip() if parts else text
    if own and own == text:  # the kept parser looks for what is quoted below: this one also above
        parts_here = quoting.split(text)
        own = parts_here.answer.strip() or text
    start = text.find(own) if own else -1
    below = text if start < 0 else f"{text[:start]}\n{text[start + len(own) :]}"
    return Words(own, below.strip()[:LONGEST_QUOTED])


def body_of(message: Message) -> str:
    """Return the text of a mail: its plain part, else its HTML as text; '' where it has none that can be read."""
    plain, html = [], []
    for part in _parts(message):
        if part.get_content_type() == "text/plain":
            plain.append(_text(part))
        elif part.get_content_type() == "text/html":
            html.append(_text(part))
    found = "\n".join(one for one in plain if one.strip())
    if found or not html:
        return found
    return "\n".join(_plain(one) for one in html).strip()


def _plain(html: str) -> str:
    try:
        return str(get_text(html[:LONGEST_TEXT]))
    except Exception:  # whatever a parser trips over: tags out is better than words lost
        return re.sub(r"<[^>]{0,2000}>", " ", html[:LONGEST_TEXT])


def _parts(message: Message) -> Iterator[Message]:
    for part in message.walk():
        if not part.is_multipart() and part.get_content_disposition() != "attachment" and not part.get_filename():
            yield part


def _text(part: Message) -> str:
    payload = part.get_payload(decode=True)
    if not isinstance(payload, bytes):
        return str(part.get_payload() or "")
    charset = part.get_content_charset() or "utf-8"
    try:
        return payload.decode(charset, "replace")
    except (LookupError, ValueError):  # a character set that is none
        return payload.decode("utf-8", "replace")


def is_automatic(message: Message) -> bool:
    """Whether a machine wrote it (RFC 3834, 2 and 5): out of the office, a list, a report of what did not arrive."""
    if _header(message, "Auto-Submitted", "no").partition(";")[0].strip().lower() not in ("no", ""):
        return True
    if _header(message, "Precedence").strip().lower() in _AUTOMATIC_PRECEDENCE:
        return True
    if any(message.get(name) is not None for name in ("X-Autoreply", "X-Autorespond", "List-Id")):
        return True
    if _header(message, "Return-Path").strip() == "<>" or message.get_content_type() == "multipart/report":
        return True
    return bool(_AUTOMATIC_SUBJECT.search(_header(message, "Subject")))


def report_of(message: Message) -> Report | None:
    """Return what a delivery report says, if it is one and names a message of ours; else None."""
    if message.get_content_type() != "multipart/report":
        return None
    fields = _first(message, "message/delivery-status")
    if fields is None:
        return None
    reference = _reference(message)
    action, status, problem = "", "", ""
    for block in _blocks(fields):
        action = action or _header(block, "Action").strip().lower()
        status = status or _header(block, "Status").strip()
        problem = problem or _header(block, "Diagnostic-Code").partition(";")[2].strip()
    return Report(reference, action, status, problem[:300]) if reference and action else None


def _blocks(part: Message) -> list[Message]:
    payload = part.get_payload()
    if isinstance(payload, list):
        return [one for one in payload if isinstance(one, Message)]
    return [HeaderParser().parsestr(block) for block in re.split(r"\n\s*\n", str(payload or ""))]


def _reference(message: Message) -> str:
    """Our reference: from the headers of the message that is sent back, whose identity it is as well."""
    for part in message.walk():
        if part.get_content_type() not in ("message/rfc822", "text/rfc822-headers"):
            continue
        payload = part.get_payload()
        inner = payload[0] if isinstance(payload, list) and payload else HeaderParser().parsestr(str(payload or ""))
        if not isinstance(inner, Message):
            continue
        named = _header(inner, "X-Message-Reference").strip()
        identity = re.match(r"\s*<([^@>]+)@", _header(inner, "Message-ID"))
        if named or identity:
            return named or (identity[1] if identity else "")
    return ""


def _first(message: Message, kind: str) -> Message | None:
    return next((part for part in message.walk() if part.get_content_type() == kind), None)


def _header(message: Message, name: str, otherwise: str = "") -> str:
    try:
        found = message.get(name)
    except _READING_FAILS:
        return otherwise
    return otherwise if found is None else str(found)


def files_of(message: Message) -> list[tuple[str, bytes]]:
    """Return the files that came with it, each with the name that it was given; pictures inside the text too."""
    found = []
    for part in message.walk():
        if part.is_multipart() or part.get_content_maintype() in ("message",):
            continue
        is_file = part.get_content_disposition() == "attachment" or bool(part.get_filename())
        if is_file or part.get_content_maintype() in ("image", "audio", "video"):
            payload = part.get_payload(decode=True)
            if isinstance(payload, bytes):
                found.append((_name(part), payload))
    return found


def _name(part: Message) -> str:
    try:
        return str(part.get_filename() or "")
    except _READING_FAILS:
        return ""
