"""Fetching a calendar from its address. Network only: no transaction is open and nothing is written here."""

from __future__ import annotations

import ipaddress
import socket
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from hashlib import sha256
from urllib.parse import urljoin, urlsplit, urlunsplit

import requests
from django.utils.translation import gettext as _
from urllib3.exceptions import HTTPError

TIMEOUT = (5, 20)  # seconds to connect, and between two parts of the answer
MOST_REDIRECTS = 4
PART = 65_536  # bytes


class FeedError(Exception):
    """A calendar cannot be fetched. The message says what happened and the cure."""


@dataclass(frozen=True, slots=True)
class Limits:
    """How much of an answer is taken: a calendar that is endless, or drips, must not keep the others waiting."""

    size: int = 20 * 1024 * 1024  # bytes
    seconds: float = 60


@dataclass(frozen=True, slots=True)
class Fetched:
    """What came back. ``data`` is None where nothing has changed since ``etag``; ``digest`` is that of the data."""

    data: bytes | None
    etag: str
    digest: str = ""


def public_only(host: str) -> None:
    """Raise FeedError where ``host`` is not on the public network: an address must not lead to machines within."""
    try:
        found = {info[4][0] for info in socket.getaddrinfo(host, None)}
    except (OSError, UnicodeError):
        raise FeedError(
            _("“{host}” cannot be found. Check the calendar's address for a slip of the pen.").format(host=host)
        ) from None
    if not all(_is_public(str(address)) for address in found):
        raise FeedError(
            _("“{host}” is not a public address. Use the address that your calendar shares with others.").format(
                host=host
            )
        )


def _is_public(address: str) -> bool:
    found = ipaddress.ip_address(address.split("%")[0])
    within = getattr(found, "ipv4_mapped", None) or found
    return within.is_global and not within.is_multicast


def fetch(
    address: str, etag: str = "", *, allowed: Callable[[str], None] = public_only, limits: Limits | None = None
) -> Fetched:
    """Fetch a calendar. Raises FeedError; ``allowed`` raises it for hosts that may not be asked."""
    for _hop in range(MOST_REDIRECTS + 1):
        address, host = _web_address(address)
        allowed(host)
        with _get(address, etag) as answer:
            if answer.is_redirect:
                address = urljoin(address, answer.headers["Location"])
                continue
            return _read(answer, etag, limits or Limits())
    raise FeedError(_("The calendar's address leads on and on to other addresses. Use the last of them."))


def _web_address(address: str) -> tuple[str, str]:
    """Return the address as one for the web, and its host."""
    try:
        parts = urlsplit(address.strip())
        host = parts.hostname or ""
    except ValueError:
        host = ""
    if not host or parts.scheme not in ("http", "https", "webcal", "webcals"):
        raise FeedError(
            _("“{address}” is not a calendar's address. It starts with https:// or webcal://.").format(address=address)
        )
    scheme = "http" if parts.scheme == "http" else "https"
    return urlunsplit(parts._replace(scheme=scheme)), host


def _get(address: str, etag: str) -> requests.Response:
    headers = {"Accept": "text/calendar", **({"If-None-Match": etag} if etag else {})}
    try:
        return requests.get(address, headers=headers, timeout=TIMEOUT, stream=True, allow_redirects=False)
    except requests.RequestException as error:
        raise FeedError(
            _("The calendar did not answer ({why}). It is asked again later.").format(why=type(error).__name__)
        ) from None


def _read(answer: requests.Response, etag: str, limits: Limits) -> Fetched:
    if answer.status_code == 304:
        return Fetched(None, etag)
    if answer.status_code in (401, 403, 404, 410):
        raise FeedError(
            _("The calendar is not shared at this address (answer {answer}). Copy its address anew.").format(
                answer=answer.status_code
            )
        )
    if answer.status_code != 200:
        raise FeedError(_("The calendar answered {answer}. It is asked again later.").format(answer=answer.status_code))
    try:
        data = _data(answer, limits)
    except (HTTPError, OSError) as error:
        raise FeedError(
            _("The calendar broke off ({why}). It is asked again later.").format(why=type(error).__name__)
        ) from None
    return Fetched(data, answer.headers.get("ETag", "")[:200], sha256(data).hexdigest())


def _data(answer: requests.Response, limits: Limits) -> bytes:
    data = bytearray()
    end = time.monotonic() + limits.seconds
    for part in _parts(answer):
        data += part
        if len(data) > limits.size:
            raise FeedError(
                _("The calendar is larger than {size:,} bytes. Share one that starts at a later date.").format(
                    size=limits.size
                )
            )
        if time.monotonic() > end:
            raise FeedError(
                _("The calendar took over {seconds:g} seconds to come. It is asked again later.").format(
                    seconds=limits.seconds
                )
            )
    return bytes(data)


def _parts(answer: requests.Response) -> Iterator[bytes]:
    """Give what comes as it comes: a part is not waited for until it is full."""
    while part := answer.raw.read1(PART, decode_content=True):
        yield part
