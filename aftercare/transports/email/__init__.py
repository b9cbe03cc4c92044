"""E-mail through Django's mail: an SMTP server, any provider that anymail knows, or Django's backends for trying out.

Messages go one by one, each on an open connection: Django's ``send_messages`` stops at the first refusal and does not
tell which had gone. Several connections are at work at once, so that a server that takes its time for each answer does
not set the pace of all.
"""

from __future__ import annotations

import hashlib
import json
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor, as_completed
from contextlib import suppress
from email.errors import MessageError
from email.utils import parseaddr
from queue import SimpleQueue
from typing import Any, ClassVar

from anymail.backends.base import AnymailBaseBackend
from anymail.exceptions import AnymailError
from django.core.exceptions import ImproperlyConfigured, ValidationError
from django.core.mail import EmailMessage, get_connection
from django.core.mail.backends.base import BaseEmailBackend
from django.core.mail.backends.console import EmailBackend as ConsoleBackend
from django.core.mail.backends.smtp import EmailBackend as SMTPBackend
from django.core.validators import validate_email

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing, Transport
from aftercare.transports.email import keys
from aftercare.transports.email.outcomes import not_taken, refused, said
from aftercare.transports.email.provider import by_backend
from aftercare.transports.email.smtp import by_smtp
from aftercare.transports.email.writing import as_bytes, write

# Common practice, no source: mail servers take some ten connections from one sender, and grow slow or refuse beyond.
CONNECTIONS = 8
_OURS = ("patience", "connections", "from_address")  # options that say nothing of the server


class Email(Transport):
    """``backend`` is a Django mail backend's dotted path, else the one in Django's settings; the rest is its own.

    ``connections`` is how many messages are on their way at once, each on a connection of its own.
    """

    name: ClassVar[str] = "email"
    channels: ClassVar[frozenset[str]] = frozenset({"email"})

    # Two minutes are six answers of a server that is slow with each of them.
    def __init__(
        self,
        *,
        backend: str | None = None,
        from_address: str = "",
        patience: int | str = 120,
        connections: int | str = CONNECTIONS,
        **options: Any,
    ) -> None:
        self.patience = _whole("patience", patience)
        self.from_address = parseaddr(from_address or EmailMessage().from_email)[1]  # else Django's own default
        first = _opened(backend, options)
        goes_out = isinstance(first, SMTPBackend | AnymailBaseBackend)  # Django's others write to one file or list
        self.window = _whole("connections", connections) if goes_out else 1
        self.key_lifetime = keys.lifetime(first)
        named = {**options, "backend": backend} if backend else options
        self._account = self.account_of(named)
        self._all = [_Connection(first, self.from_address)]
        self._more: Callable[[], BaseEmailBackend] = lambda: _opened(backend, options)
        self._threads: ThreadPoolExecutor | None = None

    @classmethod
    def account_of(cls, options: Mapping[str, Any]) -> str:
        """Return one account a server or provider, so that one that is away holds up nobody else's mail."""
        own = {name: value for name, value in options.items() if name not in _OURS}
        if not own:
            return cls.name  # the one in Django's settings
        told = json.dumps(own, sort_keys=True, default=str)
        return f"{cls.name}-{hashlib.sha256(told.encode()).hexdigest()[:16]}"

    @property
    def account(self) -> str:
        return self._account

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        if self.window == 1 or len(batch) == 1:
            yield from map(self._all[0].send, batch)
            return
        while len(self._all) < min(self.window, len(batch)):
            self._all.append(_Connection(self._more(), self.from_address))
        self._threads = self._threads or ThreadPoolExecutor(self.window, thread_name_prefix="mail")
        free: SimpleQueue[_Connection] = SimpleQueue()
        for connection in self._all:
            free.put(connection)
        sent = [self._threads.submit(_send_by_one, free, outgoing) for outgoing in batch]
        fault: BaseException | None = None
        for done in as_completed(sent):  # a fault of ours with one of them takes no other's outcome with it
            fault = fault or done.exception()
            if done.exception() is None:
                yield done.result()
        if fault is not None:
            raise fault

    def close(self) -> None:
        if self._threads is not None:
            self._threads.shutdown()
            self._threads = None
        for connection in self._all:
            connection.close()


def _opened(backend: str | None, options: Mapping[str, Any]) -> BaseEmailBackend:
    """Return Django's connection; the one that shows mail does so on standard error, as the commands print data."""
    connection: BaseEmailBackend = get_connection(backend, **options)
    if isinstance(connection, ConsoleBackend) and connection.stream is sys.stdout:
        connection.stream = sys.stderr
    return connection


def _whole(name: str, given: int | str) -> int:
    """Read an option that may come from the environment, as text."""
    if not str(given).isdecimal() or int(given) < 1:
        raise ImproperlyConfigured(f"The option {name} of e-mail is “{given}”: write a whole number from 1.")
    return int(given)


def _send_by_one(free: SimpleQueue[_Connection], outgoing: Outgoing) -> Outcome:
    connection = free.get()
    try:
        return connection.send(outgoing)
    finally:
        free.put(connection)


class _Connection:
    """One connection to the server, used by one thread at a time."""

    def __init__(self, backend: BaseEmailBackend, from_address: str) -> None:
        self.backend = backend
        self.from_address = from_address
        self.is_open = False

    def send(self, outgoing: Outgoing) -> Outcome:
        try:
            validate_email(outgoing.address)
            named = keys.wire_reference(self.backend, outgoing)
            email = write(outgoing, self.from_address, named, self.backend)
            keys.put(self.backend, email, outgoing.key)
            raw = as_bytes(email)
        except (ValidationError, ValueError, MessageError):
            return refused(outgoing, f"“{outgoing.address}” is not an e-mail address.")
        try:
            self._open()
        except (OSError, AnymailError) as error:
            self.close()
            return not_taken(outgoing, f"The mail server could not be reached ({said(error)}).")
        if isinstance(self.backend, SMTPBackend):
            outcome = by_smtp(self.backend, outgoing, email, raw)
        else:
            keys.put_in_session(self.backend, outgoing.key)
            outcome = by_backend(self.backend, outgoing, email)
        if outcome.event not in (Event.TAKEN, Event.REFUSED):
            self.close()  # whatever state the connection is in, the next message begins on a fresh one
        return outcome

    def close(self) -> None:
        self.is_open = False
        with suppress(OSError):  # smtplib's errors are OSErrors too; what was taken was answered for before
            self.backend.close()

    def _open(self) -> None:
        if not self.is_open:
            self.backend.open()
            self.is_open = True
