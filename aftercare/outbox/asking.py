"""PostgreSQL is asked for something and answers later: meanwhile other work goes on in the same thread."""

from __future__ import annotations

import select
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import datetime
from itertools import count
from typing import Any

import psycopg
from django.db import connection
from django.db.backends.base.base import BaseDatabaseWrapper
from psycopg import pq

from aftercare.outbox import rows

_NAME = b"asked"
_DONE = (pq.ExecStatus.COMMAND_OK, pq.ExecStatus.TUPLES_OK)


class Asking:
    """One statement that gives keys back, asked again and again, on a connection of its own and by itself each time.

    psycopg's cursors wait for what they ask; libpq, on which they stand, need not (PostgreSQL's manual, 34.4). Whatever
    fails raises Django's DatabaseError and ends the connection; the next question opens another.
    """

    def __init__(self, statement: str) -> None:
        *parts, last = statement.split("%s")
        places = count(1)
        self._statement = "".join(f"{part}${next(places)}" for part in parts) + last
        self._wrapper: BaseDatabaseWrapper | None = None
        self._socket = -1
        self._keys: set[int] = set()
        self._is_whole = True  # the answer: with its last word the transaction has been committed

    def ask(self, given: Sequence[Any]) -> None:
        """Send the statement with these values; a list is an array."""
        written = [_written(one) for one in given]
        with self._line() as line:
            self._socket, self._keys, self._is_whole = line.socket, set(), False
            line.send_query_prepared(_NAME, written)
            while line.flush():
                select.select([], [line.socket], [])

    def fileno(self) -> int:
        """Return the descriptor at which there is something to read once the answer comes, or none will come."""
        return self._socket

    def has_answer(self) -> bool:
        """Whether it need not be waited for."""
        with self._line() as line:
            line.consume_input()
            while not (self._is_whole or line.is_busy()):
                result = line.get_result()
                if result is None:
                    self._is_whole = True
                else:
                    _look_at(result)
                    self._keys.update(int(result.get_value(place, 0) or 0) for place in range(result.ntuples))
        return self._is_whole

    def answer(self) -> set[int]:
        """Return the keys that came back; waits for them."""
        while not self.has_answer():
            select.select([self._socket], [], [])
        return self._keys

    def close(self) -> None:
        """End the connection."""
        if self._wrapper is not None:
            self._wrapper.close()
            self._wrapper = None

    @contextmanager
    def _line(self) -> Iterator[pq.abc.PGconn]:
        try:
            wrapper = self._wrapper or connection.copy()
            with wrapper.wrap_database_errors:
                if self._wrapper is None:
                    self._wrapper = wrapper
                    wrapper.ensure_connection()
                    _look_at(wrapper.connection.pgconn.prepare(_NAME, self._statement.encode()))
                yield wrapper.connection.pgconn
        except BaseException:
            self.close()
            raise


def _written(value: object) -> bytes | None:
    """Return a value as PostgreSQL reads it."""
    if isinstance(value, list):
        value = rows.array(value)
    if value is not None and not isinstance(value, (str, int, datetime)):
        raise TypeError(f"{value!r} cannot be asked with")
    return None if value is None else str(value).encode()


def _look_at(result: pq.abc.PGresult) -> None:
    """Raise what PostgreSQL says, where it did not do as it was asked."""
    if result.status in _DONE:
        return
    code = (result.error_field(pq.DiagnosticField.SQLSTATE) or b"").decode()
    try:
        kind: type[psycopg.Error] = psycopg.errors.lookup(code)
    except KeyError:
        kind = psycopg.OperationalError
    raise kind(result.get_error_message())
