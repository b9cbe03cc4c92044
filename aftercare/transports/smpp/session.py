"""One bound connection to a carrier: opened, kept alive, read and written. What the units mean is told elsewhere."""

from __future__ import annotations

import select
import socket
import ssl
import time
from collections.abc import Callable, Collection
from contextlib import suppress
from dataclasses import dataclass, field

from aftercare.transports.base import TransportError
from aftercare.transports.smpp import pdu, statuses
from aftercare.transports.smpp.pdu import BadUnit, Unit

_READ = 256 * 1024
_OPEN_SECONDS = 10.0  # to connect, and again to be let in
_WRITE_SECONDS = 10.0  # a carrier that reads nothing for so long is gone
_UNBIND_SECONDS = 1.0


class Dropped(Exception):  # read by people as it stands
    """The connection is gone; the message says how."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Account:
    """Where a bind connects, and as whom. ``ca_file`` holds the certificates to trust in place of the system's."""

    host: str
    port: int
    system_id: str
    password: str = field(repr=False)
    system_type: str = ""
    tls: bool = False
    ca_file: str = ""

    def __str__(self) -> str:
        return f"{self.host}:{self.port}"


class Session:
    """Opened by its constructor, which raises TransportError; of no use any more after ``Dropped``.

    ``idle`` is the seconds of silence after which the carrier is asked whether it is there, ``answer_within`` those
    that it has for an answer (SMPP 3.4, 2.9 and 7.2: enquire_link_timer).
    """

    def __init__(
        self,
        account: Account,
        *,
        idle: float,
        answer_within: float,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        self.account, self.idle, self.answer_within, self.clock = account, idle, answer_within, clock
        self._rest = b""
        self._sequence = 0
        self._asked_at: float | None = None
        self._ready: list[Unit] = []  # came with the answer to the bind
        self._socket = _connected(account)
        self._heard_at = clock()
        try:
            self._bind()
        except BaseException:
            self._socket.close()
            raise

    def next_sequence(self) -> int:
        """Return the number of the next unit (5.1.4: from 1 to 0x7FFFFFFF, and round again)."""
        self._sequence = self._sequence % pdu.LAST_SEQUENCE + 1
        return self._sequence

    def write(self, octets: bytes) -> None:
        """Write units. Raises Dropped; then any part of them may have left."""
        try:
            self._socket.settimeout(_WRITE_SECONDS)
            self._socket.sendall(octets)
        except OSError as error:
            raise Dropped(_said(error)) from error

    def read(self, seconds: float, besides: Collection[int] = ()) -> list[Unit]:
        """Return what has come, waiting up to ``seconds`` for the first; asks and answers enquire_link on the way.

        It does not wait any longer once there is something to read at one of the descriptors ``besides``.
        Raises Dropped: the connection broke, the carrier unbound, did not answer in time, or does not speak SMPP.
        """
        if self._ready:
            ready, self._ready = self._ready, []
            return ready
        now = self.clock()
        self._keep_alive(now)
        wait = max(0.0, min(seconds, self._next_check() - now))
        try:
            if besides:
                self._wait(wait, besides)
            self._socket.settimeout(0.0 if besides else wait)
            octets = self._socket.recv(_READ)
        except (TimeoutError, BlockingIOError, ssl.SSLWantReadError):
            return []
        except OSError as error:
            raise Dropped(_said(error)) from error
        if not octets:
            raise Dropped("it closed the connection")
        self._heard_at, self._asked_at = self.clock(), None
        try:
            units, self._rest = pdu.read(self._rest + octets if self._rest else octets)
        except BadUnit as error:
            raise Dropped(str(error)) from error
        return units

    def answer(self, command: int, sequence: int) -> bool:
        """Answer what is not about texts; say whether it was. Raises Dropped where the carrier unbinds."""
        if command == pdu.ENQUIRE_LINK:
            self.write(pdu.write(pdu.ENQUIRE_LINK_RESP, sequence))
        elif command == pdu.UNBIND:
            with suppress(Dropped):
                self.write(pdu.write(pdu.UNBIND_RESP, sequence))
            raise Dropped("it ended the session")
        elif not command & pdu.RESPONSE:
            self.write(pdu.write(pdu.GENERIC_NACK, sequence, status=statuses.UNKNOWN_COMMAND))
        elif command != pdu.ENQUIRE_LINK_RESP:
            return False
        return True

    def close(self) -> None:
        """Unbind, wait a moment for the answer, and close. Never raises."""
        until = self.clock() + _UNBIND_SECONDS
        with suppress(Dropped):
            self.write(pdu.write(pdu.UNBIND, self.next_sequence()))
            while (left := until - self.clock()) > 0:
                if any(unit[0] == pdu.UNBIND_RESP for unit in self.read(left)):
                    break
        self.drop()

    def drop(self) -> None:
        """Close the connection without a word."""
        with suppress(OSError):
            self._socket.close()

    def _bind(self) -> None:
        account = self.account
        sequence = self.next_sequence()
        try:
            body = pdu.write_bind(account.system_id, account.password, account.system_type)
        except BadUnit as error:
            raise TransportError(f"The account at {account} cannot be used: {error}.", permanent=True) from error
        until = self.clock() + _OPEN_SECONDS
        try:
            self.write(pdu.write(pdu.BIND_TRANSCEIVER, sequence, body))
            while (left := until - self.clock()) > 0:
                units = self.read(left)
                for place, (command, status, number, _) in enumerate(units):
                    if number == sequence and command in (pdu.BIND_TRANSCEIVER_RESP, pdu.GENERIC_NACK):
                        _let_in(account, status if command == pdu.BIND_TRANSCEIVER_RESP else status or 0x0D)
                        self._ready = units[place + 1 :]
                        return
        except Dropped as error:
            raise TransportError(f"The carrier at {account} hung up before it let us in: {error}.") from error
        raise TransportError(f"The carrier at {account} did not let us in within {_OPEN_SECONDS:g} seconds.")

    def _keep_alive(self, now: float) -> None:
        if self._asked_at is not None:
            if now - self._asked_at >= self.answer_within:
                raise Dropped(f"it has not answered for {now - self._heard_at:.0f} seconds")
        elif now - self._heard_at >= self.idle:
            self.write(pdu.write(pdu.ENQUIRE_LINK, self.next_sequence()))
            self._asked_at = now

    def _wait(self, seconds: float, besides: Collection[int]) -> None:
        """Wait until something can be read, here or there."""
        if not (isinstance(self._socket, ssl.SSLSocket) and self._socket.pending()):
            has_come(self._socket.fileno(), *besides, seconds=seconds)

    def _next_check(self) -> float:
        return self._heard_at + self.idle if self._asked_at is None else self._asked_at + self.answer_within


def has_come(*descriptors: int, seconds: float = 0.0) -> bool:
    """Wait until there is something to read at one of these, if there are any; return whether there is."""
    poll = select.poll()
    for descriptor in descriptors:
        poll.register(descriptor, select.POLLIN)
    return bool(descriptors and poll.poll(seconds * 1000))


def _connected(account: Account) -> socket.socket:
    try:
        raw = socket.create_connection((account.host, account.port), _OPEN_SECONDS)
    except OSError as error:
        raise TransportError(f"The carrier at {account} cannot be reached: {_said(error)}.") from error
    try:
        # Small units must not wait for the acknowledgement of the ones before: that made it 40 times slower.
        raw.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        raw.setsockopt(socket.SOL_SOCKET, socket.SO_KEEPALIVE, 1)
        if not account.tls:
            return raw
        context = ssl.create_default_context(cafile=account.ca_file or None)
        return context.wrap_socket(raw, server_hostname=account.host)
    except OSError as error:  # ssl's errors are OSErrors
        raw.close()
        raise TransportError(f"The carrier at {account} cannot be spoken to under TLS: {_said(error)}.") from error


def _let_in(account: Account, status: int) -> None:
    if status == statuses.OK:
        return
    known = statuses.BIND_REFUSED.get(status)
    why = known or f"it refused the bind (SMPP status {status:#x})"
    raise TransportError(f"The carrier at {account} does not let {account.system_id} in: {why}.", permanent=bool(known))


def _said(error: OSError) -> str:
    if isinstance(error, ssl.SSLCertVerificationError):
        return f"its certificate is not trusted ({error.verify_message})"
    if isinstance(error, TimeoutError):
        return "it did not answer in time"
    return error.strerror or str(error) or type(error).__name__
