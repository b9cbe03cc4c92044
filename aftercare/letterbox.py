"""An e-mail that came in, taken apart: from whom, to whom, her words, what came with them, whether a machine wrote it.

Nothing here raises for a mail that is broken: what cannot be read is left out, and the whole is kept beside it.
"""

from __future__ import annotations

import logging
import re
from collections.abc import Callable, Iterator
from copy import deepcopy
from dataclasses import dataclass
from email import policy
from email.message import Message
from email.utils import parseaddr
from html import unescape
from typing import TypeVar

from inscriptis import get_text

from aftercare import quotations
from aftercare.quotations import Words

Found = TypeVar("Found")
log = logging.getLogger(__name__)

LONGEST_HEADER = 10_000  # letters; Python's parser takes time by the square of a header's length
LONGEST_HTML = 500_000  # letters that are read as text; what a browser is told about looks may be long
_AS_IT_CAME = policy.default.clone(refold_source="none")  # headers are not set anew: that takes long, too
_NO_FILES = frozenset({"application/pkcs7-signature", "application/x-pkcs7-signature", "application/pgp-signature"})
# Each pattern here takes time by the length of what it reads, whatever a mail holds: nothing without an end or a bound.
_ADDRESS = re.compile(r"[^\s<>,;:\"'()\[\]@]{1,254}@[^\s<>,;:\"'()\[\]]{1,254}")
# What programs call Latin-1 or ASCII is Windows-1252 (WHATWG Encoding Standard, 4.2): their "can’t" is in it.
_LATIN = frozenset({"iso-8859-1", "iso8859-1", "latin1", "latin-1", "us-ascii", "ascii"})
_BLOCK = re.compile(r"<blockquote\b[^>]{0,800}>", re.I)
_QUOTES = re.compile(r"\bcite\b|quote", re.I)  # among a block's attributes: a mail program's quotation
_UNQUOTES = re.compile(r"</blockquote\s*>", re.I)
_OPENS, _CLOSES = "\ue000", "\ue001"  # of private use: no mail has them
_PICTURE_IN_TEXT = re.compile(r"data:image/[\w.+-]{1,20};base64,[\w+/=\s%]{40,}")
_UNSEEN = re.compile(r"<(style|script|title)\b", re.I)


@dataclass(frozen=True, slots=True)
class Mail:
    """An e-mail as it is kept. ``raw`` is the whole but for its files: those are kept apart, without their place."""

    sender: str
    recipients: tuple[str, ...]  # in lower case
    subject: str
    identity: str  # its Message-ID
    words: Words
    files: tuple[tuple[str, bytes], ...]  # name and content
    raw: str


def read(message: Message) -> Mail:
    """Read a mail, however broken: what cannot be read is empty. Headers without end are cut, in the mail itself."""
    _safely(_cut, message, None)
    return Mail(
        sender=_safely(_sender, message, ""),
        recipients=_safely(_recipients, message, ()),
        subject=header(message, "Subject"),
        identity=header(message, "Message-ID").strip(),
        words=_safely(words_of, message, Words("", "")),
        files=_safely(files_of, message, ()),
        raw=_safely(raw_of, message, ""),
    )


def _safely(look: Callable[[Message], Found], message: Message, otherwise: Found) -> Found:
    try:
        return look(message)
    except Exception:  # whatever a broken mail breaks in a parser: the rest of it is read all the same
        log.exception("%s: a mail that came in could not be read", look.__name__)
        return otherwise


def _cut(message: Message) -> None:
    for part in message.walk():
        headers = list(part.raw_items())
        if any(len(str(value)) > LONGEST_HEADER for _name, value in headers):
            for name, _value in headers:
                del part[name]
            for name, value in headers:
                part.set_raw(name, str(value)[:LONGEST_HEADER])


def header(message: Message, name: str) -> str:
    """Return a header as text, '' where there is none; unread as it came where it cannot be parsed."""
    try:
        return str(message.get(name) or "")
    except Exception:  # Python's parser of headers trips over some in many ways
        return _unparsed(message, name)


def _unparsed(message: Message, name: str) -> str:
    return next((str(value) for key, value in message.raw_items() if key.lower() == name.lower()), "")


def _sender(message: Message) -> str:
    value = _unparsed(message, "From")
    found = _ADDRESS.findall(parseaddr(value)[1]) or _ADDRESS.findall(value)
    return str(found[0] if found else getattr(message, "envelope_sender", None) or value).strip()


def _recipients(message: Message) -> tuple[str, ...]:
    """Return all to whom it may be: its envelope first, then what its headers name."""
    named = [str(getattr(message, "envelope_recipient", None) or "")]
    for name in ("To", "Cc", "Delivered-To", "X-Original-To"):
        named += [str(value) for key, value in message.raw_items() if key.lower() == name.lower()]
    return tuple(address.lower() for value in named for address in _ADDRESS.findall(value))


def words_of(message: Message) -> Words:
    """Return what she wrote, apart from what her mail program and her sign-off put around it."""
    return quotations.split(body_of(message))


def body_of(message: Message) -> str:
    """Return the text of a mail: its plain part, else its HTML as text; '' where it has none that can be read."""
    return _body(message)[0]


def _body(message: Message) -> tuple[str, list[Message]]:
    """Return the text, and the parts that it is from. Some telephones send text as a file: it is her words as well."""
    leaves = list(_leaves(message))
    texts = [part for part in leaves if part.get_content_maintype() == "text"]
    shown = [part for part in texts if part.get_content_disposition() != "attachment" and not part.get_filename()]
    unparted = [] if message.is_multipart() or message.get_content_maintype() != "multipart" else [message]
    for parts in (
        [part for part in shown if part.get_content_subtype() == "plain"],
        [part for part in shown if part.get_content_subtype() == "html"],
        shown,
        [part for part in texts if part.get_content_subtype() == "plain"],
        unparted,
    ):
        found = "\n".join(_plain(part) for part in parts).strip()
        if found:
            return found, parts
    return "", []


def _leaves(message: Message) -> Iterator[Message]:
    """Walk her mail, but not into those that she forwards."""
    if message.get_content_maintype() == "message":
        return
    payload = message.get_payload()
    if isinstance(payload, list):
        for part in payload:
            if isinstance(part, Message):
                yield from _leaves(part)
    else:
        yield message


def _plain(part: Message) -> str:
    text = _text(part)
    return _from_html(text[:LONGEST_HTML]) if part.get_content_subtype() == "html" else text


def _from_html(html: str) -> str:
    """Return HTML as text, with marks of quoting before what a mail program marks as quoted."""
    marked = _BLOCK.sub(_with_mark, html)
    if marked != html:
        marked = _UNQUOTES.sub(f"<div>{_CLOSES}</div></blockquote>", marked)
    try:
        text = str(get_text(marked))
    except Exception:  # whatever a parser trips over: tags out is better than words lost
        text = ""
    if not text.strip():
        text = unescape(re.sub(r"<[^<>]{0,2000}>", " ", _seen(marked)))
    return "\n".join(_marked(text))


def _with_mark(found: re.Match[str]) -> str:
    block = found.group()
    return f"<div>{_OPENS}</div>{block}" if _QUOTES.search(block, len("<blockquote")) else block


def _seen(html: str) -> str:
    """Leave out what a browser does not show."""
    kept, at = [], 0
    while (opened := _UNSEEN.search(html, at)) is not None:
        closed = re.compile(rf"</{opened[1]}", re.I).search(html, opened.end())
        if closed is None:
            break
        kept.append(html[at : opened.start()])
        at = closed.start()
    return " ".join([*kept, html[at:]])


def _marked(text: str) -> Iterator[str]:
    depth = 0
    for line in text.split("\n"):
        depth += line.count(_OPENS)
        clean = line.replace(_OPENS, "").replace(_CLOSES, "")
        yield f"> {clean.strip()}" if depth > 0 else clean
        depth = max(0, depth - line.count(_CLOSES))


def _text(part: Message) -> str:
    payload = part.get_payload(decode=True)
    if not isinstance(payload, bytes):
        return str(part.get_payload() or "")
    named = (part.get_content_charset() or "utf-8").lower()
    for charset in ("utf-8", "cp1252") if named in _LATIN else (named, "utf-8"):
        try:
            return payload.decode(charset)
        except (LookupError, ValueError):  # a character set that is none, or not the one that was used
            continue
    return payload.decode("cp1252", "replace")


def files_of(message: Message) -> tuple[tuple[str, bytes], ...]:
    """Return the files that came with it, each with the name that it was given; pictures inside the text too."""
    return tuple((_safely(_name, part, ""), _content(part)) for part in _file_parts(message))


def _file_parts(message: Message) -> list[Message]:
    body = {id(part) for part in _body(message)[1]}
    return [part for part in message.walk() if _is_file(part) and id(part) not in body]


def _is_file(part: Message) -> bool:
    kind = part.get_content_maintype()
    if part.is_multipart() or kind in ("message", "multipart") or part.get_content_type() in _NO_FILES:
        return False
    return kind != "text" or part.get_content_disposition() == "attachment" or bool(_safely(_name, part, ""))


def _name(part: Message) -> str:
    return str(part.get_filename() or "")


def _content(part: Message) -> bytes:
    payload = part.get_payload(decode=True)
    return payload if isinstance(payload, bytes) else b""


def raw_of(message: Message) -> str:
    """Return a mail as it came, but for the content of its files: a photo in there would tell where it was taken.

    One that was not parsed, see `mailhooks`, is kept whole.
    """
    if whole := getattr(message, "whole", ""):
        return str(whole)
    try:
        return _without_files(deepcopy(message)).as_string(policy=_AS_IT_CAME)
    except Exception:  # headers or letters that cannot be written again in their own character set
        return "\n".join([*(f"{name}: {value}" for name, value in message.raw_items()), "", body_of(message)])


def _without_files(message: Message) -> Message:
    for part in _file_parts(message):
        _put(part, f"[a file of {len(_content(part))} bytes, kept apart from this]")
    for part in message.walk():
        if part.get_content_type() == "text/html" and _PICTURE_IN_TEXT.search(found := _text(part)):
            _put(part, _PICTURE_IN_TEXT.sub("[a picture]", found).encode("ascii", "xmlcharrefreplace").decode())
    return message


def _put(part: Message, text: str) -> None:
    """Put plain ASCII in place of what a part held: no character set has to be named in a header that may be broken."""
    del part["Content-Transfer-Encoding"]
    part.set_payload(text)
