"""The links by which a client reaches her own pages: signed, short enough for a text, one purpose each, revocable.

A link names its purpose and the visit, or the client, that it is about, and is kept nowhere: showing a message makes
no row. Its signature covers how often her links were revoked, so that revoking ends all that were made before and
none that is made after; and whose the visit was, so that one which the book gives to another client since is closed to
the first. 71 bits of signature are tried one request at a time: guessing is hopeless.
"""

from __future__ import annotations

import hashlib
import hmac
import re
import string
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from functools import lru_cache

from django.conf import settings
from django.db.models import Q
from django.utils.crypto import constant_time_compare

from aftercare.models import Revocation
from studio.models import Client, Visit

_DIGITS = string.digits + string.ascii_uppercase + string.ascii_lowercase
_MARK = 12  # characters of the signature
_MARKS = len(_DIGITS) ** _MARK
_LONGEST = 40
_LINK = re.compile(r"(https?://[^\s/]+/[vcdq]/)[0-9A-Za-z]{13,40}")


class Purpose(StrEnum):
    """What a link opens. The letter stands in the address."""

    VISIT = "v"  # her page about one visit
    CONSULTATION = "c"  # the questions before a visit, with what she answered before
    ANEW = "q"  # the same from her page about a visit, which may be forwarded: nothing of what she answered before
    DATA = "d"  # what is kept about her, her choices of channel and language, being forgotten


ABOUT_A_VISIT = frozenset({Purpose.VISIT, Purpose.CONSULTATION, Purpose.ANEW})


@dataclass(frozen=True, slots=True)
class Opened:
    """What a link opens: hers alone."""

    purpose: Purpose
    client: Client
    visit: Visit | None


def address(purpose: Purpose, subject: Visit | Client, *, revoked: int | None = None) -> str:
    """Return the whole address of a link, with the service's public one before it.

    ``revoked`` is how often her links were, where many are made and it is known.
    """
    return f"{settings.PUBLIC_URL}/{purpose}/{token(purpose, subject, revoked=revoked)}"


def hidden(text: str) -> str:
    """Return a text with its links cut short, for who may read the message and not what they open."""
    return _LINK.sub(r"\1…", text)


def token(purpose: Purpose, subject: Visit | Client, *, revoked: int | None = None) -> str:
    """Return what stands for a purpose and a visit (a client, for `Purpose.DATA`): letters and digits."""
    if isinstance(subject, Visit) is not (purpose in ABOUT_A_VISIT):
        raise TypeError(f"A link for {purpose.name} is not about a {type(subject).__name__}.")
    client_id = subject.client_id if isinstance(subject, Visit) else subject.merged_into_id or subject.pk
    times = revocations(client_id) if revoked is None else revoked
    owner = client_id if isinstance(subject, Visit) else subject.pk
    return _written(subject.pk) + _signature(purpose, subject.pk, owner, times)


def opened(purpose: Purpose, given: str) -> Opened | None:
    """Return what a link opens; None for one that is not ours, of another purpose, or revoked."""
    if not _MARK < len(given) <= _LONGEST or not set(given) <= set(_DIGITS):
        return None
    pk = _read(given[:-_MARK])
    found = _visit(pk) if purpose in ABOUT_A_VISIT else _client(pk)
    if found is None:
        return None
    client, visit = found
    times = revocations(client.pk)
    for owner in _owners(client) if visit is not None else (pk,):
        if constant_time_compare(given[-_MARK:], _signature(purpose, pk, owner, times)):
            return Opened(purpose, client, visit)
    return None


def revoke(client: Client, *, why: str, now: datetime) -> None:
    """End every link that was made for her up to now."""
    Revocation.objects.create(client=client, at=now, why=why)


def part(kept: Client, gone: Client, *, since: datetime, now: datetime) -> None:
    """Of two that were one client since then and are two again, let what was revoked meanwhile stay so for both.

    What was revoked stands with ``kept`` alone by now, and she has lost what she had got from ``gone``: each is given
    what she lacks.
    """
    meanwhile = Revocation.objects.filter(client=kept, at__gte=since).count()
    if meanwhile:
        lacking = {kept: Revocation.objects.filter(client=gone).count(), gone: meanwhile}
        rows = [
            Revocation(client=one, at=now, why="parted") for one, times in lacking.items() for _time in range(times)
        ]
        Revocation.objects.bulk_create(rows)


def revocations(client_id: int) -> int:
    """Return how often the links of a client, or of one merged into her, were revoked."""
    hers = Q(client=client_id) | Q(client__merged_into=client_id)
    return Revocation.objects.filter(hers).count()


def _visit(pk: int) -> tuple[Client, Visit] | None:
    rows = Visit.objects.select_related("studio", "artist", "adhesive", "client__studio", "client__merged_into__studio")
    visit = rows.filter(pk=pk).first()
    return (visit.client.merged_into or visit.client, visit) if visit is not None else None


def _client(pk: int) -> tuple[Client, None] | None:
    client = Client.objects.select_related("studio", "merged_into__studio").filter(pk=pk).first()
    return (client.merged_into or client, None) if client is not None else None


def _owners(client: Client) -> Iterator[int]:
    """Whose a visit of hers may have been when its link was made: her own, or that of one who was merged into her."""
    yield client.pk
    yield from client.merged.order_by("pk").values_list("pk", flat=True)


def _signature(purpose: Purpose, pk: int, owner: int, revoked: int) -> str:
    digest = hmac.digest(_key(purpose, settings.SECRET_KEY), f"{pk}.{owner}.{revoked}".encode(), "sha256")
    return _written(int.from_bytes(digest, "big") % _MARKS).rjust(_MARK, _DIGITS[0])


@lru_cache
def _key(purpose: Purpose, secret: str) -> bytes:
    """Return a purpose's own key, as Django's `salted_hmac` makes it, which makes it anew for each signature."""
    return hashlib.sha256(f"aftercare.links.{purpose}{secret}".encode()).digest()


def _written(number: int) -> str:
    """Write a number in base 62."""
    digits: list[str] = []
    while number or not digits:
        number, last = divmod(number, len(_DIGITS))
        digits.append(_DIGITS[last])
    return "".join(reversed(digits))


def _read(digits: str) -> int:
    number = 0
    for digit in digits:
        number = number * len(_DIGITS) + _DIGITS.index(digit)
    return number if number < 2**63 else 0
