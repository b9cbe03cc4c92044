"""The contract of every transport: what it is given, what it answers, and how it hears back.

A transport gets its options in the constructor and never reads settings. It keeps no promise: what to send and what
became of it is written down by its caller, before and after.
"""

from __future__ import annotations

import hashlib
from abc import ABC, abstractmethod
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import Any, ClassVar, Protocol

from aftercare.core.delivery import Event


@dataclass(frozen=True, slots=True, kw_only=True)
class Enclosure:
    """A file that goes with an e-mail; ``inline_id``: shown within its HTML form, which names it so (RFC 2392)."""

    name: str
    media_type: str  # with its parameters, such as text/calendar; method=PUBLISH
    content: bytes
    inline_id: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Outgoing:
    """One message on its way. ``reference`` is ours, is new with every try and must travel with it.

    ``key`` is the same for two tries only where everything else but the reference is (``likeness`` tells): letters,
    digits and hyphens, at most 100; '' asks for none. Where the road knows keys (``Transport.key_lifetime``), the key
    travels in the reference's place, since a provider takes the same key for other contents as a fault. The reference
    of the first of these tries makes the best key: it is found again by it.

    An e-mail has its words in HTML too, and enclosures; a road that knows neither carries the text alone.
    """

    reference: str
    channel: str  # sms, email
    address: str  # E.164, or an e-mail address
    sender: str = ""  # the line's number or address; '' leaves it to the transport
    sender_name: str = ""
    subject: str = ""
    text: str
    html: str = ""
    enclosures: Sequence[Enclosure] = ()
    headers: Mapping[str, str] = field(default_factory=dict)
    key: str = ""

    @property
    def likeness(self) -> str:
        """A digest of all that reaches her: two tries that have the same may go under one key."""
        same = replace(self, reference="", key="", headers=sorted(self.headers.items()))  # type: ignore[arg-type]  # for its repr
        return hashlib.sha256(repr(same).encode()).hexdigest()[:32]


def storable(text: str) -> str:
    r"""Return ``text`` as any database can keep it: NUL and halves of surrogate pairs are written out.

    >>> storable("a\x00b\ud83d")
    'a\\x00b\\ud83d'
    """
    return text.encode("utf-8", "backslashreplace").decode("utf-8").replace("\x00", "\\x00")


def _make_storable(told: Outcome | ReceiptNote, *names: str) -> None:
    """One text that no database keeps would take along everything else that was heard with it."""
    for name in names:
        text = getattr(told, name)
        if "\0" in text or not text.isascii():
            object.__setattr__(told, name, storable(text))  # they are frozen


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """What became of one outgoing message: TAKEN, NOT_TAKEN (certainly), REFUSED (for good) or LOST (nobody knows).

    ``problem`` is one sentence for the artist; ``retry_after`` is the wait in seconds that the provider asked for.
    ``bad_address``, of one that was refused: nobody has that address, so that nothing more should go to it.
    Whatever a provider put into them, these texts can be kept (``storable``).
    """

    reference: str
    event: Event
    provider_ref: str = ""
    problem: str = ""
    retry_after: float | None = None
    bad_address: bool = False

    def __post_init__(self) -> None:
        _make_storable(self, "provider_ref", "problem")


OUTCOMES = frozenset({Event.TAKEN, Event.NOT_TAKEN, Event.REFUSED, Event.LOST})


@dataclass(frozen=True, slots=True, kw_only=True)
class ReceiptNote:
    """One receipt as a provider's callback tells it. ``event`` is DELIVERED or FAILED; None: no news, or unknown.

    Whatever the provider put into them, its texts can be kept (``storable``).
    """

    provider_ref: str
    word: str
    event: Event | None
    reference: str = ""
    at: datetime | None = None
    problem: str = ""
    raw: str = ""

    def __post_init__(self) -> None:
        _make_storable(self, "provider_ref", "word", "reference", "problem", "raw")


@dataclass(frozen=True, slots=True, kw_only=True)
class ReplyNote:
    """One reply as a provider's callback tells it."""

    provider_ref: str
    from_address: str
    to_address: str = ""
    text: str
    subject: str = ""
    at: datetime | None = None
    automatic: bool = False  # a machine's: RFC 3834
    raw: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Callback:
    """A provider's call to us, as it came. ``url`` is built from the configured public address, never from the call."""

    url: str
    headers: Mapping[str, str]  # names in lower case
    body: bytes


class TransportError(Exception):
    """Something a person must read: what happened, to whom, and what to do. ``permanent`` is for the code.

    Raised out of ``send`` it means that nothing of what has no outcome yet has left.
    """

    def __init__(self, sentence: str, *, permanent: bool = False) -> None:
        super().__init__(sentence)
        self.permanent = permanent


class Forged(TransportError):
    """A callback whose signature is missing or wrong."""

    def __init__(self, sentence: str) -> None:
        super().__init__(sentence, permanent=True)


class Transport(ABC):
    """One road to clients. Not shared between threads; ``close`` ends what ``send`` opened."""

    name: ClassVar[str]
    channels: ClassVar[frozenset[str]]
    takes_callback: ClassVar[bool] = False  # takes the option ``callback``: the line's own address for its provider
    window: int = 1  # how many are journaled and in flight at once
    patience: int = 60  # seconds after which a window that nobody answered for is given up as lost
    receipt_wait: int = 0  # seconds for which a lost one may still be cleared up by a receipt; 0: the road gives none
    # Seconds for which the provider takes what comes again under a key for the same message: a lost one may be sent
    # once more under its key, whatever its occasion, and does not come twice. 0: it knows no keys.
    key_lifetime: int = 0

    @property
    def account(self) -> str:
        """Within what the provider's references are unique: two accounts may both speak of their message 1."""
        return self.name

    @abstractmethod
    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        """Hand over up to ``window`` messages and yield one outcome each, in any order."""

    def close(self) -> None:
        """End what ``send`` opened. Never raises."""
        return

    def verify(self, callback: Callback) -> None:
        """Raise Forged unless the callback is signed by the provider."""
        raise Forged(f"{self.name} is never called back: take this address away from the provider's settings.")

    def parse_receipts(self, callback: Callback) -> list[ReceiptNote]:
        """Return the receipts in a verified callback. Raises TransportError where it cannot be read."""
        return []

    def parse_replies(self, callback: Callback) -> list[ReplyNote]:
        """Return the replies in a verified callback. Raises TransportError where it cannot be read."""
        return []


class Stream(Transport):
    """A road that stays open: what is submitted is answered for later, in any order, up to ``window`` at once."""

    trouble: str = ""  # why it is not up, in a sentence

    @property
    @abstractmethod
    def is_up(self) -> bool:
        """Whether what is submitted now would leave."""

    @abstractmethod
    def room(self) -> int:
        """Return how many more would leave at once: what the window and the carrier's pace have left."""

    @classmethod
    @abstractmethod
    def account_of(cls, options: Mapping[str, Any]) -> str:
        """Return the account of the road that would be made with these options, without opening it."""

    @abstractmethod
    def submit(self, batch: Sequence[Outgoing]) -> list[Outcome]:
        """Put a batch on the wire without waiting; return the outcomes that are certain at once.

        That is REFUSED for what cannot be written for this road, NOT_TAKEN for what certainly did not leave.
        """

    @abstractmethod
    def collect(self, seconds: float, besides: Collection[int] = ()) -> list[Outcome]:
        """Return the outcomes heard by now, waiting up to ``seconds`` for the first.

        It does not wait, or not for long, while there is something to read at one of the descriptors ``besides``.
        Every submitted message gets exactly one: of what is not answered in time, or when the line drops, it is LOST.
        """

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        waiting = len(batch)
        heard = self.submit(batch)
        while waiting > 0:
            yield from heard
            waiting -= len(heard)
            heard = self.collect(1.0) if waiting > 0 else []


class Inbox(Protocol):
    """Where a stream puts what comes in. It returns once everything is committed; where it raises, nothing is kept.

    Only after it has returned may a receipt or a reply be acknowledged to the provider.
    """

    def __call__(self, receipts: Sequence[ReceiptNote], replies: Sequence[ReplyNote]) -> None: ...
