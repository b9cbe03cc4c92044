"""The leanest sender that journals: what can be had here at all, beside which the service's own rate is to be read.

One loop, raw SQL and one narrow table: no client, studio or wording, nothing judged, no tries, no leases that end. It
claims 500, journals as many as the window has room for before their first byte, and commits outcomes and receipts in
groups of 500, or each 50 ms. A part of ``handing.py``.

The same loop on the service's own tables (``OwnPostgres``, ``OwnSqlite``) tells what their rows cost by themselves: a
message is written as it is claimed, handed over and delivered, its try once, and a portion is journaled as a single row
of keys and texts. No guard is asked, and nothing but these rows is written.
"""

from __future__ import annotations

import json
import socket
import sqlite3
import time
from abc import ABC, abstractmethod
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path

import psycopg

from aftercare.transports.smpp import pdu
from tests.bench.delivery.bare import TEXT
from tests.smsc import Smsc

GROUP = 500
LONGEST = 0.05  # seconds for which what was heard waits for its commit
_TABLES = (
    "DROP TABLE IF EXISTS leanest; DROP TABLE IF EXISTS leanest_receipt;"
    "CREATE TABLE leanest (id {key}, state text, due {moment}, lease {moment}, address text, words text, ref text);"
    "CREATE INDEX leanest_due ON leanest (due) WHERE state = 'planned'; CREATE INDEX leanest_ref ON leanest (ref);"
    "CREATE TABLE leanest_receipt (ref text, word text, UNIQUE (ref, word))"
)
_SOURCE = pdu.write_address(1, 1, "15550109999")
_OPTION = pdu.write_option(pdu.USER_MESSAGE_REFERENCE, b"\x12\x34")
_NUMBER = b"\x00\x1e"  # receipted_message_id
_NOW = "strftime('%Y-%m-%d %H:%M:%f', 'now')"  # on SQLite, as Django writes it

Row = tuple[int, str, str]  # key, address, words


class Table(ABC):
    """The one table, in a database."""

    @abstractmethod
    def fill(self, number: int) -> None: ...

    @abstractmethod
    def claim(self) -> list[Row]: ...

    @abstractmethod
    def journal(self, keys: Sequence[int]) -> None: ...

    @abstractmethod
    def settle(self, heard: Sequence[tuple[int, str]]) -> None:
        """Write down what was taken, by their keys, and the carrier's numbers."""

    @abstractmethod
    def report(self, refs: Sequence[str]) -> int:
        """Store receipts; return how many texts are delivered by them."""

    @abstractmethod
    def close(self) -> None: ...


class Postgres(Table):
    def __init__(self, url: str) -> None:
        self.line = psycopg.connect(url, autocommit=True)

    def fill(self, number: int) -> None:
        self.line.execute(_TABLES.format(key="bigint PRIMARY KEY", moment="timestamptz").encode())
        self.line.execute(
            "INSERT INTO leanest SELECT g, 'planned', now(), NULL, '1555' || lpad(g::text, 7, '0'), %s::text, NULL"
            " FROM generate_series(1, %s::int) g",
            (TEXT, number),
        )
        self.line.execute("VACUUM ANALYZE leanest")

    def claim(self) -> list[Row]:
        return self.line.execute(
            "WITH d AS (SELECT id FROM leanest WHERE state = 'planned' AND due <= now() ORDER BY due, id LIMIT %s"
            " FOR UPDATE SKIP LOCKED) UPDATE leanest SET state = 'claimed', lease = now() + interval '60 s' FROM d"
            " WHERE leanest.id = d.id RETURNING leanest.id, address, words",
            (GROUP,),
        ).fetchall()

    def journal(self, keys: Sequence[int]) -> None:
        self.line.execute("UPDATE leanest SET state = 'handing_over' WHERE id = ANY(%s)", (list(keys),))

    def settle(self, heard: Sequence[tuple[int, str]]) -> None:
        keys, refs = map(list, zip(*heard, strict=True))
        self.line.execute(
            "UPDATE leanest SET state = 'handed_over', ref = g.ref FROM unnest(%s::bigint[], %s::text[]) AS g (id, ref)"
            " WHERE leanest.id = g.id",
            (keys, refs),
        )

    def report(self, refs: Sequence[str]) -> int:
        with self.line.transaction():
            self.line.execute(
                "INSERT INTO leanest_receipt SELECT ref, 'DELIVRD' FROM unnest(%s::text[]) AS g (ref)"
                " ON CONFLICT DO NOTHING",
                (list(refs),),
            )
            return self.line.execute(
                "UPDATE leanest SET state = 'delivered' FROM unnest(%s::text[]) AS g (ref) WHERE leanest.ref = g.ref",
                (list(refs),),
            ).rowcount

    def close(self) -> None:
        self.line.close()


class Sqlite(Table):
    def __init__(self, path: Path) -> None:
        self.line = sqlite3.connect(path, isolation_level=None)
        self.line.executescript("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA cache_size=-65536")

    def fill(self, number: int) -> None:
        self.line.executescript(_TABLES.format(key="integer PRIMARY KEY", moment="real"))
        rows = [(place, f"1555{place:07}", TEXT) for place in range(1, number + 1)]
        self._many("INSERT INTO leanest VALUES (?, 'planned', 0, NULL, ?, ?, NULL)", rows)
        self.line.execute("PRAGMA wal_checkpoint(TRUNCATE)")

    def claim(self) -> list[Row]:
        return self.line.execute(
            "UPDATE leanest SET state = 'claimed', lease = 60 WHERE id IN (SELECT id FROM leanest WHERE"
            " state = 'planned' AND due <= 1 ORDER BY due, id LIMIT ?) RETURNING id, address, words",
            (GROUP,),
        ).fetchall()

    def journal(self, keys: Sequence[int]) -> None:
        self._many("UPDATE leanest SET state = 'handing_over' WHERE id = ?", [(key,) for key in keys])

    def settle(self, heard: Sequence[tuple[int, str]]) -> None:
        changes = [(number, key) for key, number in heard]
        self._many("UPDATE leanest SET state = 'handed_over', ref = ? WHERE id = ?", changes)

    def report(self, refs: Sequence[str]) -> int:
        one = [(ref,) for ref in refs]
        self.line.execute("BEGIN IMMEDIATE")
        self.line.executemany("INSERT OR IGNORE INTO leanest_receipt VALUES (?, 'DELIVRD')", one)
        found = self.line.executemany("UPDATE leanest SET state = 'delivered' WHERE ref = ?", one).rowcount
        self.line.execute("COMMIT")
        return found

    def close(self) -> None:
        self.line.close()

    def _many(self, statement: str, rows: Sequence[tuple[object, ...]]) -> None:
        self.line.execute("BEGIN IMMEDIATE")
        self.line.executemany(statement, rows)
        self.line.execute("COMMIT")


_TRY = (
    "INSERT INTO aftercare_attempt (message_id, number, line_id, provider, reference, started_at, ended_at, outcome,"
    " problem, provider_ref, key, likeness)"
)
_HANDED = "UPDATE aftercare_message SET state = 'handed_over', handing_over_at = {now}, handed_over_at = {now},"
_RECEIPT = "INSERT INTO aftercare_receipt (account, provider_ref, word, event, at, kept_at, raw, attempt_id)"
_DELIVERED = "UPDATE aftercare_message SET state = 'delivered', ended_at = {now}"
_WORDED = "prepare/removal/sms/en@1"


class OwnPostgres(Postgres):
    """On the messages that ``book`` has planned."""

    sender = 0

    def fill(self, number: int) -> None:
        self.line.execute("DROP TABLE IF EXISTS leanest_portion")
        self.line.execute("CREATE TABLE leanest_portion (keys bigint[], texts text[], until timestamptz)")
        ((self.sender,),) = self.line.execute("SELECT min(id) FROM aftercare_line WHERE channel = 'sms'").fetchall()

    def claim(self) -> list[Row]:
        return self.line.execute(
            "WITH d AS (SELECT id FROM aftercare_message WHERE state = 'planned' AND due_at <= now()"
            " ORDER BY due_at, id LIMIT %s FOR UPDATE SKIP LOCKED) UPDATE aftercare_message SET state = 'claimed',"
            " claimed_at = now(), lease_until = now() + interval '60 s' FROM d WHERE aftercare_message.id = d.id"
            " RETURNING aftercare_message.id, '1555' || lpad(aftercare_message.id::text, 7, '0'), %s::text",
            (GROUP, TEXT),
        ).fetchall()

    def journal(self, keys: Sequence[int]) -> None:
        given = (list(keys), [TEXT] * len(keys))
        self.line.execute("INSERT INTO leanest_portion VALUES (%s, %s, now() + interval '90 s')", given)

    def settle(self, heard: Sequence[tuple[int, str]]) -> None:
        keys, refs = map(list, zip(*heard, strict=True))
        statement = (
            "WITH g (id, ref) AS (SELECT * FROM unnest(%s::bigint[], %s::text[])),"
            f" tried AS ({_TRY} SELECT id, 1, %s::bigint, 'bench', id || ':' || ref, now(), now(), 'handed_over', '',"
            f" ref, '', '' FROM g) {_HANDED.format(now='now()')} lease_until = NULL, line_id = %s::bigint, text = %s,"
            " segments = 1, worded = %s, address = '1555' || g.id FROM g WHERE aftercare_message.id = g.id"
        )
        self.line.execute(statement.encode(), (keys, refs, self.sender, self.sender, TEXT, _WORDED))

    def report(self, refs: Sequence[str]) -> int:
        statement = (
            "WITH g (id, message_id, ref) AS (SELECT id, message_id, provider_ref FROM aftercare_attempt"
            " WHERE provider_ref = ANY(%s) AND provider = 'bench'),"
            f" kept AS ({_RECEIPT} SELECT 'bench', ref, 'DELIVRD', 'delivered', now(), now(), '', id FROM g"
            f" ON CONFLICT DO NOTHING) {_DELIVERED.format(now='now()')}"
            " FROM g WHERE aftercare_message.id = g.message_id"
        )
        return self.line.execute(statement.encode(), (list(refs),)).rowcount


class OwnSqlite(Sqlite):
    """On the messages that ``book`` has planned."""

    sender = 0

    def fill(self, number: int) -> None:
        self.line.execute("DROP TABLE IF EXISTS leanest_portion")
        self.line.execute("CREATE TABLE leanest_portion (keys text, texts text, until text)")
        (self.sender,) = self.line.execute("SELECT min(id) FROM aftercare_line WHERE channel = 'sms'").fetchone()

    def claim(self) -> list[Row]:
        return self.line.execute(
            f"UPDATE aftercare_message SET state = 'claimed', claimed_at = {_NOW}, lease_until = {_NOW} WHERE id IN"
            f" (SELECT id FROM aftercare_message WHERE state = 'planned' AND due_at <= {_NOW} ORDER BY due_at, id"
            " LIMIT ?) RETURNING id, '1555' || printf('%07d', id), ?",
            (GROUP, TEXT),
        ).fetchall()

    def journal(self, keys: Sequence[int]) -> None:
        given = (json.dumps(list(keys)), json.dumps([TEXT] * len(keys)))
        self.line.execute(f"INSERT INTO leanest_portion VALUES (?, ?, {_NOW})", given)

    def settle(self, heard: Sequence[tuple[int, str]]) -> None:
        tried = f"{_TRY} VALUES (?, 1, ?, 'bench', ?, {_NOW}, {_NOW}, 'handed_over', '', ?, '', '')"
        changes = (
            f"{_HANDED.format(now=_NOW)} lease_until = NULL, line_id = ?, text = ?, segments = 1, worded = ?,"
            " address = ? WHERE id = ?"
        )
        self.line.execute("BEGIN IMMEDIATE")
        self.line.executemany(tried, [(key, self.sender, f"{key}:{ref}", ref) for key, ref in heard])
        self.line.executemany(changes, [(self.sender, TEXT, _WORDED, f"1555{key}", key) for key, _ in heard])
        self.line.execute("COMMIT")

    def report(self, refs: Sequence[str]) -> int:
        one = [(ref,) for ref in refs]
        tried = "FROM aftercare_attempt WHERE provider_ref = ? AND provider = 'bench'"
        kept = f"SELECT 'bench', provider_ref, 'DELIVRD', 'delivered', {_NOW}, {_NOW}, '', id {tried}"
        self.line.execute("BEGIN IMMEDIATE")
        self.line.executemany(f"{_RECEIPT} {kept} ON CONFLICT DO NOTHING", one)
        delivered = f"{_DELIVERED.format(now=_NOW)} WHERE id = (SELECT message_id {tried})"
        found = self.line.executemany(delivered, one).rowcount
        self.line.execute("COMMIT")
        return found


@dataclass(slots=True)
class Leanest:
    """The loop."""

    line: socket.socket
    table: Table
    window: int
    receipts: bool
    sequence: int = 1
    flying: dict[int, int] = field(default_factory=dict)  # keys by sequence number
    heard: list[tuple[int, str]] = field(default_factory=list)  # keys and the carrier's numbers
    reported: list[tuple[int, str]] = field(default_factory=list)  # sequence and the carrier's numbers
    since: float = field(default_factory=time.monotonic)
    done: int = 0  # handed over, or with receipts delivered

    def run(self, number: int) -> None:
        """Send all of ``number`` texts, until the last is written down."""
        waiting: list[Row] = []
        rest = b""
        while self.done < number:
            waiting = waiting or self.table.claim()
            free = self.window - len(self.flying)
            self._submit(waiting[:free])
            waiting = waiting[free:]
            with suppress(TimeoutError):
                units, rest = pdu.read(rest + self.line.recv(256 * 1024))
                self._take_in(units)
            self._write(at_once=not (self.flying or waiting))

    def _submit(self, going: Sequence[Row]) -> None:
        if not going:
            return
        self.table.journal([key for key, _, _ in going])
        units = []
        for key, address, words in going:
            self.sequence += 1
            self.flying[self.sequence] = key
            body = pdu.write_message(
                _SOURCE,
                pdu.write_address(1, 1, address),
                words.encode(),
                registered_delivery=int(self.receipts),
                options=_OPTION,
            )
            units.append(pdu.write(pdu.SUBMIT_SM, self.sequence, body))
        self.line.sendall(b"".join(units))

    def _take_in(self, units: Sequence[pdu.Unit]) -> None:
        for command, _, sequence, body in units:
            if command == pdu.SUBMIT_SM_RESP:
                self.heard.append((self.flying.pop(sequence), body[:-1].decode()))
            elif command == pdu.DELIVER_SM:  # the centre writes receipted_message_id first (SMPP 3.4, 5.3.2.12)
                named = body.index(_NUMBER) + 4
                self.reported.append((sequence, body[named : body.index(b"\0", named)].decode()))

    def _write(self, *, at_once: bool) -> None:
        """Commit what was heard once it is enough, or has waited; then answer its receipts."""
        now = time.monotonic()
        if not at_once and max(len(self.heard), len(self.reported)) < GROUP and now - self.since < LONGEST:
            return
        self.since = now
        if self.heard:
            self.table.settle(self.heard)
            self.done += 0 if self.receipts else len(self.heard)
            self.heard.clear()
        if self.reported:
            self.done += self.table.report([number for _, number in self.reported])
            answers = [pdu.write(pdu.DELIVER_SM_RESP, sequence, b"\0") for sequence, _ in self.reported]
            self.line.sendall(b"".join(answers))
            self.reported.clear()


def leanest_rate(centre: Smsc, table: Table, window: int, number: int, *, receipts: bool) -> float:
    """Return texts a second."""
    table.fill(number)
    with socket.create_connection(("127.0.0.1", centre.port)) as line:
        line.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        line.sendall(pdu.write(pdu.BIND_TRANSCEIVER, 1, pdu.write_bind("studio", "s3cret")))
        line.recv(1000)
        line.settimeout(LONGEST)
        began = time.monotonic()
        Leanest(line, table, window, receipts).run(number)
        return number / (time.monotonic() - began)
