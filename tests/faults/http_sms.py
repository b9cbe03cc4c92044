"""An SMS provider by HTTP that is busy, fails, never answers and breaks off: with keys for what comes again, or none.

The provider keeps its own count: what it took, by our reference and, where it knows them, by the key in the header
``Idempotency-Key``; what it left unanswered; when each came.
"""

from __future__ import annotations

import json
import socket
import struct
import threading
import time
from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping
from contextlib import AbstractContextManager, ExitStack, contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import ClassVar

from tests import servers, services
from tests.faults import at_work, ledger
from tests.faults.smtp import end_of_it
from tests.httpservers import Handler, serving

KEY = "Idempotency-Key"
RETRY_AFTER = 45  # seconds, longer than the service would wait by itself after a first try
TIMEOUT = 2  # seconds for which the line waits for an answer
FAULTS = ("busy", "broken", "mute", "reset", "refused")
WINDOW = 10


@dataclass
class Provider:
    """A running provider: each fault happens to a number once, with the first or the second text to it."""

    fault_of: Mapping[str, tuple[str, int]]  # by number, with which text; refused are all
    keys: bool
    url: str = ""
    taken: list[str] = field(default_factory=list)  # references
    unanswered: list[str] = field(default_factory=list)
    came: dict[str, list[float]] = field(default_factory=lambda: defaultdict(list))  # moments, by number
    busy_at: dict[str, float] = field(default_factory=dict)  # when a number was told to wait
    known: set[str] = field(default_factory=set)
    lock: threading.Lock = field(default_factory=threading.Lock)
    refused: int = 0

    def next_fault(self, number: str) -> str:
        """Return what happens to the text that comes now for a number."""
        with self.lock:
            self.came[number].append(time.monotonic())
            fault, which = self.fault_of.get(number, ("", 0))
            if fault != "refused" and len(self.came[number]) != which:
                return ""
            self.refused += fault == "refused"
            if fault == "busy":
                self.busy_at[number] = time.monotonic()
            return fault

    @property
    def waits(self) -> list[float]:
        """How many seconds went by until each number that was told to wait was written to again."""
        return [
            next(moment for moment in [*self.came[number], float("inf")] if moment > told) - told
            for number, told in self.busy_at.items()
        ]

    def take(self, reference: str, key: str) -> None:
        """Take a text, once a key where it knows keys."""
        with self.lock:
            if not (self.keys and key in self.known):
                self.taken.append(reference)
            self.known.add(key)

    def note(self, reference: str, *, answered: bool) -> None:
        """Note whether the last that came under a reference was answered."""
        with self.lock:
            self.unanswered = [one for one in self.unanswered if one != reference]
            if not answered:
                self.unanswered.append(reference)


@contextmanager
def provider(fault_of: Mapping[str, tuple[str, int]], *, keys: bool) -> Iterator[Provider]:
    """Run the provider."""
    running = Provider(fault_of, keys)
    with serving(_Handler, provider=running) as address:
        running.url = f"{address}/send"
        yield running


class _Handler(Handler):
    provider: ClassVar[Provider]

    def do_POST(self) -> None:
        sent = json.loads(self.rfile.read(int(self.headers["Content-Length"])))
        number, reference = sent["to"], sent["reference"]
        fault = self.provider.next_fault(number)
        if fault == "reset":  # it had begun to take it, and breaks off
            self.provider.note(reference, answered=False)
            self.connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
            self.connection.close()
            self.close_connection = True
            return
        if fault in ("busy", "broken", "refused"):
            self.provider.note(reference, answered=True)
            self._say({"busy": 429, "broken": 500, "refused": 400}[fault], {"code": 21211 if fault == "refused" else 1})
            return
        self.provider.take(reference, self.headers.get(KEY, ""))
        self.provider.note(reference, answered=fault != "mute")
        if fault == "mute":
            time.sleep(TIMEOUT + 1)
            self.close_connection = True
            return
        self._say(201, {"sid": f"SM{reference}"})

    def _say(self, status: int, answer: Mapping[str, object]) -> None:
        self.say(status, json.dumps(answer).encode(), {"Retry-After": str(RETRY_AFTER)} if status == 429 else None)


def happen(folder: Path, small: bool, keys: bool = False) -> tuple[dict[str, int], list[str]]:
    number = 20 if small else 300
    numbers = [f"+1212555{place:04}" for place in range(1000, 1000 + number)]
    # Aftercare and instructions alike; with the first text, which is the introduction, or with what follows it.
    fault_of = {
        one: (FAULTS[place // 2 % len(FAULTS)], 1 + place // (2 * len(FAULTS)) % 2)
        for place, one in enumerate(numbers)
        if small or place % 20 < 10 or place % 40 < 20
    }
    data = folder / "data"
    data.mkdir()
    with ExitStack() as stack:
        carrier = stack.enter_context(provider(fault_of, keys=keys))
        settings = dict(services.environment(data))
        url = f"sqlite:///{data / 'studio.sqlite3'}"
        run: Callable[[Mapping[str, str], Path], AbstractContextManager[object]] = at_work.engine
        if not small and servers.has_postgres() and servers.has_redis():
            url = stack.enter_context(servers.postgres())
            settings |= {"DATABASE_URL": url, "REDIS_URL": stack.enter_context(servers.redis())}
            run = at_work.workers
        at_work.make_live_studio(settings, folder, numbers)
        told: dict[str, object] = {
            "url": carrier.url,
            "body": "json",
            "fields": {"to": "{to}", "text": "{text}", "reference": "{reference}"},
            "provider_ref": {"path": "sid"},
            "refused": {"path": "code", "codes": {"21211": ""}},
            "timeout": TIMEOUT,
            "window": WINDOW,
            **({"idempotency_header": KEY} if keys else {}),
        }
        at_work.set_line(settings, "sms", address=at_work.NUMBER, transport=at_work.HTTP_SMS, options=told)
        stack.enter_context(run(settings, folder))
        waits = _waits_written(url, carrier) if small else []
        end_of_it(url, small)
        found = ledger.entries(url)
    faults = ledger.judge(found, carrier.taken, carrier.unanswered, carrier.refused)
    early = [wait for wait in waits or carrier.waits if wait < RETRY_AFTER]
    if early:
        faults.append(f"{len(early)} came again before the provider's Retry-After, the first after {min(early):.0f} s")
    if len(carrier.busy_at) != sum(fault == "busy" for fault, _which in fault_of.values()):
        faults.append("not every fault happened")
    figures = {"told to wait": len(carrier.busy_at), "refused": carrier.refused, "unanswered": len(carrier.unanswered)}
    return ledger.counts(found, carrier.taken) | figures, faults


def _waits_written(url: str, carrier: Provider) -> list[float]:
    """Return for how many seconds those wait that were told to, as written down: small, nobody waits for it."""
    busy = sum(fault == "busy" for fault, _which in carrier.fault_of.values())

    def waits() -> list[float]:
        asked = """SELECT strftime('%s', m.due_at) - strftime('%s', a.ended_at) FROM aftercare_attempt a
            JOIN aftercare_message m ON m.id = a.message_id WHERE a.problem LIKE '%429%'"""
        return [float(seconds) for (seconds,) in ledger.query(url, asked)]

    at_work.wait_for(lambda: len(waits()) >= busy, 30, "not everybody was told to wait")
    return waits()
