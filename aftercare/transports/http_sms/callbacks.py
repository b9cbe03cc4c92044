"""What a provider calls back with: whether it is the provider's own, and what it says."""

from __future__ import annotations

import base64
import hashlib
import hmac
import json
import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from email.utils import parsedate_to_datetime
from typing import Any
from urllib.parse import parse_qsl, urlsplit

from aftercare.transports.base import Callback, Forged, ReceiptNote, ReplyNote, TransportError
from aftercare.transports.http_sms.answers import at_path
from aftercare.transports.http_sms.options import EVENTS, Receipts, Replies, Signature

REFERENCE = "ref"  # our own, in the query of the address that a provider calls
_NAME = re.compile(r"[\w.:-]{1,40}")
_NUMBER = re.compile(r"[1-9][0-9]{7,14}")  # E.164 without its +; shorter ones are short codes


# Whose it is


def verify(callback: Callback, signature: Signature | None, secret: str) -> None:
    """Raise Forged unless the callback is signed, or its address holds the secret, or both where both are told."""
    if signature is None and not secret:
        raise Forged("Callbacks cannot be told from forged ones: set the provider's signature, or callback_secret.")
    if secret and not _same(urlsplit(callback.url).path.rpartition("/")[2], secret):
        raise Forged("The callback's address does not hold the secret: copy the address anew to the provider.")
    if signature is None:
        return
    if signature.over == "body" and not callback.body:
        raise Forged("The callback has no body, so that its signature covers nothing.")
    given = callback.headers.get(signature.header.lower(), "").strip().removeprefix(signature.prefix)
    if not _same(given, sign(signature, callback)):
        raise Forged("The callback's signature is wrong: check the secret at the provider.")


def sign(signature: Signature, callback: Callback) -> str:
    """Return the signature (RFC 2104) that a true callback carries."""
    covered = callback.url.encode() + callback.body if signature.over == "url+body" else callback.body
    digest = hmac.digest(signature.secret.encode(), covered, getattr(hashlib, signature.algorithm))
    return digest.hex() if signature.encoding == "hex" else base64.b64encode(digest).decode()


def _same(given: str, right: str) -> bool:
    return hmac.compare_digest(given.encode("utf-8", "backslashreplace"), right.encode())


# What it says


@dataclass(frozen=True, slots=True)
class Told:
    """The fields of a callback: of its body (a form or JSON), and of its query where the signature covers that."""

    body: Any
    query: Mapping[str, str]
    reference: str

    @classmethod
    def of(cls, callback: Callback, *, with_query: bool = True) -> Told:
        """Take a callback apart. Raises TransportError where it cannot be."""
        query = _form(urlsplit(callback.url).query)
        body = _body(callback)
        return cls(body, query if with_query else {}, query.get(REFERENCE, ""))

    def events(self, path: str) -> list[Happening]:
        found = self.body
        for step in path.split(".") if path else ():
            found = found.get(step) if isinstance(found, Mapping) else None
        return [Happening(one, self) for one in (found if isinstance(found, list) else [found])]


@dataclass(frozen=True, slots=True)
class Happening:
    """One thing that a callback tells of."""

    fields: Any
    told: Told

    def has(self, name: str) -> bool:
        if not name:
            return False
        is_there = isinstance(self.fields, Mapping) and name in self.fields
        return is_there or name in self.told.query or bool(self.value(name))

    def value(self, name: str) -> str:
        """Return a field's value as a text: by its name, or by a path with dots; '' where there is none."""
        if not name:
            return ""
        if isinstance(self.fields, Mapping) and isinstance(self.fields.get(name), str):
            return str(self.fields[name])
        return at_path(self.fields, name) or self.told.query.get(name, "")

    @property
    def raw(self) -> str:
        return json.dumps({"query": self.told.query, "event": self.fields}, ensure_ascii=False, default=str)


def read_receipts(told: Told, receipts: Receipts | None, replies: Replies | None) -> list[ReceiptNote]:
    """Return the receipts that a callback tells of. Raises TransportError where it tells of nothing that we know."""
    found = [event for event in told.events(receipts.events) if event.has(receipts.word)] if receipts else []
    if receipts is None or not found:
        _know(told, receipts, replies)
        return []
    return [_receipt(event, receipts) for event in found]


def read_replies(told: Told, receipts: Receipts | None, replies: Replies | None) -> list[ReplyNote]:
    """Return the texts that a callback brings. Raises TransportError where it tells of nothing that we know."""
    if replies is None:
        return []
    found = [event for event in told.events(replies.events) if _is_reply(event, receipts, replies)]
    if not found:
        _know(told, receipts, replies)
    return [_reply(event, replies) for event in found]


def _know(told: Told, receipts: Receipts | None, replies: Replies | None) -> None:
    """Raise TransportError where a callback is neither of the two."""
    if receipts and any(event.has(receipts.word) for event in told.events(receipts.events)):
        return
    if replies and any(_is_reply(event, receipts, replies) for event in told.events(replies.events)):
        return
    wanted = [f"“{receipts.word}” of a receipt"] if receipts else []
    wanted += [f"“{replies.text}” and “{replies.from_address}” of a text that came in"] if replies else []
    named = {*told.query, *(told.body if isinstance(told.body, Mapping) else ())}
    there = sorted(name for name in named if _NAME.fullmatch(name))  # what has spaces in it may be her words
    raise TransportError(
        f"The callback has not the fields {' or '.join(wanted) or 'of anything that the options name'}; it has "
        f"{', '.join(there)[:200] or 'none'}.",
        permanent=True,
    )


def _is_reply(event: Happening, receipts: Receipts | None, replies: Replies) -> bool:
    is_receipt = receipts is not None and event.has(receipts.word)
    return not is_receipt and event.has(replies.text) and bool(event.value(replies.from_address))


def _receipt(event: Happening, receipts: Receipts) -> ReceiptNote:
    word, code = event.value(receipts.word), event.value(receipts.problem)
    reference = event.value(receipts.reference) or event.told.reference
    provider_ref = event.value(receipts.provider_ref) or reference
    if not provider_ref:
        raise TransportError("The callback is a receipt that names no message.", permanent=True)
    said = receipts.problems.get(code, f"The carrier reports: {' '.join([word, code]).strip()}.")
    return ReceiptNote(
        provider_ref=provider_ref,
        word=word,
        event=EVENTS[receipts.words.get(word, "")],
        reference=reference,
        at=moment(event.value(receipts.at)),
        problem=said,
        raw=event.raw,
    )


def _reply(event: Happening, replies: Replies) -> ReplyNote:
    return ReplyNote(
        provider_ref=event.value(replies.provider_ref),
        from_address=_number(event.value(replies.from_address), replies),
        to_address=_number(event.value(replies.to_address), replies),
        text=event.value(replies.text),
        at=moment(event.value(replies.at)),
        raw=event.raw,
    )


def _number(given: str, replies: Replies) -> str:
    given = given.strip()
    return f"+{given}" if replies.international and _NUMBER.fullmatch(given) else given


def moment(given: str) -> datetime | None:
    """Read a moment: seconds since 1970, ISO 8601 with an offset, or RFC 5322. None: not told, or not to be read.

    A moment without an offset could be anywhere's, and none is worth losing a callback for: then it is when it came.
    """
    try:
        if given.isascii() and given.isdigit():
            return datetime.fromtimestamp(int(given), tz=UTC)
        found = datetime.fromisoformat(given) if "," not in given else parsedate_to_datetime(given)
    except (ValueError, OverflowError, OSError):
        return None
    return found.astimezone(UTC) if found.tzinfo is not None else None


def _form(text: str) -> dict[str, str]:
    return dict(parse_qsl(text, keep_blank_values=True, errors="replace"))


def _body(callback: Callback) -> Any:
    if not callback.body.strip():
        return {}
    text = callback.body.decode("utf-8", "replace")
    if "json" not in callback.headers.get("content-type", "") and text.lstrip()[:1] not in ("{", "["):
        return _form(text)
    try:
        return json.loads(text)
    except ValueError as error:
        raise TransportError(f"The callback is no JSON: {error}.", permanent=True) from error
