"""Mails that a provider hands over, before they are parsed: what would keep a parser for minutes is kept unparsed.

No mail program writes a mail of tens of thousands of parts, or of parts within parts without end. It is her mail all
the same: its text is read as it came, which a person looks at, and the provider is told yes, lest it come for ever.
"""

from __future__ import annotations

import base64
import binascii
import json
import logging
import re
from collections.abc import Iterator
from contextlib import suppress
from email import policy
from email.message import Message
from email.parser import HeaderParser
from typing import Any

from anymail.inbound import AnymailInboundMessage
from anymail.signals import AnymailInboundEvent, EventType
from anymail.webhooks.base import AnymailBaseWebhookView
from django.http import HttpRequest, RawPostDataException

log = logging.getLogger(__name__)

MOST_PARTS = 500
DEEPEST = 30  # parts within parts: a mail that was forwarded ten times has 20
_PARTS = re.compile(r"^--", re.MULTILINE)  # what parts them: two for each at most, and her dashes
_MOST_DASHES = 2 * MOST_PARTS
_HEADER = re.compile(r"^(?:From|To|Content-Type):", re.MULTILINE | re.IGNORECASE)
# What parts a mail and names its parts, and files that are written as letters: no words of hers.
_STRUCTURE = re.compile(
    r"^(?:--\S.*|(?:Content-[\w-]{1,40}|MIME-Version):.*(?:\n[ \t]+\S.*)*|[A-Za-z0-9+/=]{60,})\r?$", re.MULTILINE | re.I
)
_IN_JSON = 8  # texts within texts: some providers put JSON in JSON


class Bounded(AnymailBaseWebhookView):  # type: ignore[misc]  # anymail has no types
    """A provider's view of what comes in, once it has checked whose call it is."""

    def parse_events(self, request: HttpRequest) -> list[Any]:
        """Return what came; of a mail that no parser takes to pieces in time, its headers and the rest as one text."""
        mail = _mail(request)
        if mail is not None and len(_PARTS.findall(mail)) > _MOST_DASHES:
            return [_unparsed(mail, "it has too many parts")]
        try:
            events: list[Any] = super().parse_events(request)
        except RecursionError:
            if mail is None:
                raise
            return [_unparsed(mail, "its parts lie too deep")]
        if mail is not None and any(not _is_bounded(event.message) for event in events):
            return [_unparsed(mail, "its parts are too many, or lie too deep")]
        return events


def _unparsed(mail: str, why: str) -> AnymailInboundEvent:
    log.warning("A mail came in that is kept unparsed: %s.", why)
    message = HeaderParser(AnymailInboundMessage, policy=policy.default).parsestr(mail)
    del message["Content-Type"]  # it is one text now, whatever it says
    del message["Content-Transfer-Encoding"]
    message.set_payload(_STRUCTURE.sub("", str(message.get_payload())))
    message.whole = mail  # type: ignore[attr-defined]
    return AnymailInboundEvent(
        event_type=EventType.INBOUND, timestamp=None, event_id=None, esp_event=None, message=message
    )


def _is_bounded(message: Message) -> bool:
    parts, waiting = 0, [(message, 1)]
    while waiting:
        part, depth = waiting.pop()
        parts += 1
        if parts > MOST_PARTS or depth > DEEPEST:
            return False
        inner = part.get_payload()
        if isinstance(inner, list):
            waiting += [(one, depth + 1) for one in inner if isinstance(one, Message)]
    return True


def _mail(request: HttpRequest) -> str | None:
    """Return the mail as it came, wherever a provider puts it in its call; None where it sends it in pieces."""
    if request.content_type == "application/json":
        texts = list(_texts(_json(request.body.decode("utf-8", "replace")), _IN_JSON))
    else:
        with suppress(RawPostDataException):
            _kept = request.body  # anymail asks some forms for it later, which is too late once the form is read
        texts = [str(value) for _name, values in request.POST.lists() for value in values]
    mails = [text for text in texts if len(_HEADER.findall(text[:100_000])) > 1]
    return max(mails, key=len, default=None)


def _texts(value: object, deeper: int) -> Iterator[str]:
    if isinstance(value, dict | list) and deeper:
        for one in value.values() if isinstance(value, dict) else value:
            yield from _texts(one, deeper - 1)
    elif isinstance(value, str):
        yield value
        if deeper and value[:1] in ("{", "["):
            yield from _texts(_json(value), deeper - 1)
        elif len(value) > 1_000 and "\n" not in value and " " not in value[:1_000]:
            yield _decoded(value)


def _json(text: str) -> object:
    try:
        return json.loads(text)
    except (ValueError, RecursionError):
        return None


def _decoded(text: str) -> str:
    try:
        return base64.b64decode(text).decode("utf-8", "replace")
    except (ValueError, binascii.Error):
        return ""
