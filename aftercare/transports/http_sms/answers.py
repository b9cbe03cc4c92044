"""What an answer by HTTP, or the want of one, says of a message: whether it was taken, and whether anybody can know."""

from __future__ import annotations

import json
import re
import ssl
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from email.utils import parsedate_to_datetime
from functools import cached_property
from typing import Any

import requests
from urllib3.exceptions import NameResolutionError, NewConnectionError

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome
from aftercare.transports.http_sms.options import Found, Refused, Taken

# RFC 9110, 15.6.3 and 15.6.5: whoever stands before the provider says so, and it may have passed the message on.
UNKNOWABLE = frozenset({502, 504})
_BUSY = frozenset({429, 503})  # RFC 6585, 4; RFC 9110, 15.6.4
# OpenSSL's reasons for ending a handshake, before which nothing of the request leaves.
_NO_HANDSHAKE = frozenset({"CERTIFICATE_VERIFY_FAILED", "WRONG_VERSION_NUMBER", "UNSUPPORTED_PROTOCOL"})
_NEVER_BEGAN = (
    *(requests.exceptions.ConnectTimeout, requests.exceptions.ProxyError, requests.exceptions.InvalidURL),
    *(requests.exceptions.MissingSchema, requests.exceptions.InvalidSchema, requests.exceptions.InvalidHeader),
)


@dataclass(frozen=True)
class Answer:
    """A provider's answer, as it came."""

    status: int
    headers: Mapping[str, str]  # looked up in any case
    body: str

    @cached_property
    def parsed(self) -> Any:
        try:
            return json.loads(self.body)
        except ValueError:
            return None

    @property
    def excerpt(self) -> str:
        return f"{self.status} {' '.join(self.body.split())[:160]}".strip()


def at_path(parsed: Any, path: str) -> str:
    """Return the value at a path with dots as a text; '' where there is none.

    >>> at_path({"messages": [{"id": 7}]}, "messages.0.id")
    '7'
    """
    found = parsed
    for step in path.split("."):
        if isinstance(found, Mapping) and step in found:
            found = found[step]
        elif isinstance(found, list) and step.isdigit() and int(step) < len(found):
            found = found[int(step)]
        else:
            return ""
    return "" if found is None or isinstance(found, Mapping | list) else str(found)


@dataclass(frozen=True, slots=True, kw_only=True)
class Judge:
    """What a provider's answers mean, as its options tell."""

    taken: Taken
    provider_ref: Found | None
    refused: Refused | None

    def answered(self, reference: str, address: str, answer: Answer) -> Outcome:
        """Judge an answer. Only what the options name as for good is; a key that is wrong can be mended."""
        refused = self._refused(answer)
        if refused is not None:
            problem = refused or f"The carrier refused {address} ({answer.excerpt}). Correct it on the client's card."
            return Outcome(reference=reference, event=Event.REFUSED, problem=problem[:400])
        if answer.status in self.taken.status:
            return self._said_yes(reference, answer)
        event = Event.LOST if answer.status in UNKNOWABLE or answer.status < 200 else Event.NOT_TAKEN
        problem = f"The carrier did not take the text ({answer.excerpt})."
        if event is Event.LOST:
            problem = f"The carrier's answer does not tell whether it took the text ({answer.excerpt})."
        after = retry_after(answer.headers) if answer.status in _BUSY else None
        return Outcome(reference=reference, event=event, problem=problem, retry_after=after)

    def _said_yes(self, reference: str, answer: Answer) -> Outcome:
        """A status that means yes; the body may still say no, or nothing that can be read."""
        found = at_path(answer.parsed, self.taken.path) if self.taken.path else answer.body
        if self.taken.path and not found:
            problem = f"The carrier's answer cannot be read ({answer.excerpt}): nobody knows whether the text left."
            return Outcome(reference=reference, event=Event.LOST, problem=problem)
        fits = re.fullmatch if self.taken.path else re.search
        if self.taken.match and not fits(self.taken.match, found):
            problem = f"The carrier did not take the text ({answer.excerpt})."
            return Outcome(reference=reference, event=Event.NOT_TAKEN, problem=problem)
        return Outcome(reference=reference, event=Event.TAKEN, provider_ref=self._provider_ref(answer)[:120])

    def _provider_ref(self, answer: Answer) -> str:
        where = self.provider_ref
        if where is None:
            return ""
        if where.header:
            return answer.headers.get(where.header, "").strip()
        if where.path:
            return at_path(answer.parsed, where.path)
        return _group(where.match, answer.body)

    def _refused(self, answer: Answer) -> str | None:
        """Return the sentence for a refusal for good, '' where there is none for it; None: it is no such one."""
        where = self.refused
        if where is None:
            return None
        code = at_path(answer.parsed, where.path) if where.path else _group(where.match, answer.body)
        if code in where.codes:
            return where.codes[code]
        return "" if answer.status in where.status else None


def unanswered(reference: str, error: requests.exceptions.RequestException) -> Outcome:
    """Judge a request without an answer. Never shows the error's own words: they hold the address and its fields."""
    if never_left(error):
        problem = f"The carrier could not be reached ({reason(error)})."
        return Outcome(reference=reference, event=Event.NOT_TAKEN, problem=problem)
    problem = f"The line dropped before the carrier answered ({reason(error)}): nobody knows whether the text left."
    return Outcome(reference=reference, event=Event.LOST, problem=problem)


def never_left(error: requests.exceptions.RequestException) -> bool:
    """Whether nothing of the request can have left: no connection, or no handshake, had come about."""
    if isinstance(error, _NEVER_BEGAN):
        return True
    return any(
        isinstance(cause, NewConnectionError | NameResolutionError)
        or (isinstance(cause, ssl.SSLError) and cause.reason in _NO_HANDSHAKE)
        for cause in _causes(error)
    )


def reason(error: BaseException) -> str:
    """Say what happened in the system's words."""
    for cause in _causes(error):
        if (
            isinstance(cause, OSError)
            and cause.strerror
            and not isinstance(cause, requests.exceptions.RequestException)
        ):
            return cause.strerror
    return "no answer in time" if isinstance(error, requests.exceptions.Timeout) else type(error).__name__


def retry_after(headers: Mapping[str, str]) -> float | None:
    """Read Retry-After in seconds: a number, or a moment reckoned from the answer's own Date (RFC 9110, 10.2.3).

    >>> retry_after({"Retry-After": "Wed, 10 Mar 2027 10:00:30 GMT", "Date": "Wed, 10 Mar 2027 10:00:00 GMT"})
    30.0
    """
    given = headers.get("Retry-After", "").strip()
    if given.isascii() and given.isdigit():
        return float(given[:9])
    try:
        wait = parsedate_to_datetime(given) - parsedate_to_datetime(headers.get("Date", ""))
    except (TypeError, ValueError):
        return None
    return max(0.0, wait.total_seconds())


def _causes(error: BaseException) -> Iterator[BaseException]:
    """Give an error and all that are within it: requests wraps urllib3's, which wrap the system's."""
    seen: set[int] = set()
    waiting: list[object] = [error]
    while waiting:
        one = waiting.pop(0)
        if isinstance(one, BaseException) and id(one) not in seen:
            seen.add(id(one))
            yield one
            waiting += [*one.args, getattr(one, "reason", None), one.__cause__]


def _group(expression: str, text: str) -> str:
    found = re.search(expression, text) if expression else None
    if found is None:
        return ""
    return (found[1] if found.re.groups else found[0]) or ""
