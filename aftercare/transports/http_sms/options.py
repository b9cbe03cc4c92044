"""What can be told of a provider, and what is meant where nothing is. A wrong option is a ValueError that names it."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, fields
from typing import TypeVar

from aftercare.core.delivery import Event

Told = TypeVar("Told")
Statuses = Sequence[int]

EVENTS = {"delivered": Event.DELIVERED, "failed": Event.FAILED, "": None}
ALGORITHMS = ("sha1", "sha256", "sha512")
ENCODINGS = ("hex", "base64")
COVERS = ("body", "url+body")
_SECRET = re.compile(r"[A-Za-z0-9_-]{16,120}")


@dataclass(frozen=True, slots=True, kw_only=True)
class Taken:
    """Which answer is a yes: one of ``status`` and, where given, a value or a body that fits ``match``."""

    status: Statuses = (200, 201, 202)
    path: str = ""  # into JSON, with dots: messages.0.status
    match: str = ""  # a regular expression for the whole value at ``path``, or, without a path, anywhere in the body

    def __post_init__(self) -> None:
        _check_numbers("taken.status", self.status)
        _check_expression("taken.match", self.match)


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """Where an answer holds the provider's reference: at a ``path``, as what ``match`` finds, or in a ``header``."""

    path: str = ""
    match: str = ""
    header: str = ""

    def __post_init__(self) -> None:
        _check_expression("provider_ref.match", self.match)


@dataclass(frozen=True, slots=True, kw_only=True)
class Refused:
    """Which answers say that this number will never do: ``codes`` found at ``path`` or by ``match``, or a ``status``.

    ``codes`` are the provider's, each with a sentence for the artist, or ''.
    """

    status: Statuses = ()
    path: str = ""
    match: str = ""  # its first group is the code
    codes: Mapping[str, str] = field(default_factory=dict)

    def __post_init__(self) -> None:
        _check_numbers("refused.status", self.status)
        _check_expression("refused.match", self.match)


@dataclass(frozen=True, slots=True, kw_only=True)
class Receipts:
    """The fields of a callback that tells what became of a text, and what the provider's ``words`` for it mean.

    ``events`` is the path of a list where one callback tells of several; '' is the callback itself, or a list of them.
    """

    word: str
    words: Mapping[str, str]  # to delivered, failed, or '' for no news
    provider_ref: str = ""
    reference: str = ""  # '': our own, within the callback's address
    at: str = ""
    problem: str = ""  # a code or a few words
    problems: Mapping[str, str] = field(default_factory=dict)  # codes, each as a sentence for the artist
    events: str = ""

    def __post_init__(self) -> None:
        for word, meaning in self.words.items():
            if meaning not in EVENTS:
                raise ValueError(f"receipts.words says {word}={meaning!r}: write delivered, failed, or nothing.")


@dataclass(frozen=True, slots=True, kw_only=True)
class Replies:
    """The fields of a callback that brings a text. Numbers without + are ``international`` (4477…) or not (077…)."""

    text: str
    from_address: str
    to_address: str = ""
    provider_ref: str = ""
    at: str = ""
    international: bool = True
    events: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Signature:
    """How a callback is signed: an HMAC (RFC 2104) in a header, over the body alone or the address and the body."""

    header: str
    secret: str
    algorithm: str = "sha256"
    encoding: str = "hex"
    over: str = "body"
    prefix: str = ""  # before the signature, such as sha256=

    def __post_init__(self) -> None:
        for name, value, known in (
            ("algorithm", self.algorithm, ALGORITHMS),
            ("encoding", self.encoding, ENCODINGS),
            ("over", self.over, COVERS),
        ):
            if value not in known:
                raise ValueError(f"signature.{name} is {value!r}: write one of {', '.join(known)}.")
        if not self.secret:
            raise ValueError("signature.secret is blank: anybody could sign. Copy it from the provider's settings.")


def told(kind: type[Told], name: str, given: object) -> Told | None:
    """Read one nested option, or None where it is not given."""
    if given is None:
        return None
    if not isinstance(given, Mapping):
        raise ValueError(f"{name} is no object: write one in JSON.")  # not shown: it may hold a secret
    try:
        return kind(**given)
    except TypeError as error:
        known = ", ".join(one.name for one in fields(kind))  # type: ignore[arg-type]  # each of them is a dataclass
        raise ValueError(f"{name} has too much or too little ({error}): it knows {known}.") from error


def number(name: str, given: float | str, least: float, most: float) -> float:
    """Read a number, which the environment gives as a text."""
    try:
        value = float(given)
    except (TypeError, ValueError):
        raise ValueError(f"{name} is {given!r}: write a number.") from None
    if not least <= value <= most:
        raise ValueError(f"{name} is {given}: write a number from {least:g} to {most:g}.")
    return value


def check_secret(secret: str) -> str:
    """Return a secret that may stand in an address; '' is none."""
    if secret and not _SECRET.fullmatch(secret):
        raise ValueError("callback_secret must be 16 to 120 letters, digits, - and _, as it stands within an address.")
    return secret


def _check_numbers(name: str, given: object) -> None:
    if not isinstance(given, list | tuple) or not all(isinstance(one, int) for one in given):
        raise ValueError(f"{name} is {given!r}: write a list of numbers, like [200, 202].")


def _check_expression(name: str, given: str) -> None:
    try:
        re.compile(given)
    except re.error as error:
        raise ValueError(f"{name} is no regular expression: {error}.") from error
