"""An SMS provider that takes texts by HTTP, in a thread of the test: it does as the number says that a text goes to.

Numbers end in: 1 taken, 2 refused for good (its code 21211), 3 429 with Retry-After, 4 500, 5 takes it and hangs up
without an answer, 6 takes it and never answers, 7 503, 8 401, 9 takes it and answers what nobody can read.
"""

from __future__ import annotations

import json
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any, ClassVar
from urllib.parse import parse_qsl, urlsplit

from tests.httpservers import Handler, serving


@dataclass
class Taken:
    """One request, as it came."""

    method: str
    path: str
    query: dict[str, str]
    headers: dict[str, str]
    body: str
    connection: int

    @property
    def form(self) -> dict[str, str]:
        return dict(parse_qsl(self.body, keep_blank_values=True))


@dataclass
class Carrier:
    """A running provider, and what came in; ``pause`` is how long it takes for one, in seconds."""

    url: str = ""
    pause: float = 0.0
    requests: list[Taken] = field(default_factory=list)
    at_once: int = 0
    most_at_once: int = 0
    lock: threading.Lock = field(default_factory=threading.Lock)
    over: threading.Event = field(default_factory=threading.Event)


@contextmanager
def carrier(pause: float = 0.0) -> Iterator[Carrier]:
    """Run the provider."""
    running = Carrier(pause=pause)
    with serving(_Handler, carrier=running) as running.url:
        try:
            yield running
        finally:
            running.over.set()


class _Handler(Handler):
    carrier: ClassVar[Carrier]

    def do_POST(self) -> None:
        taken = self._take()
        try:
            time.sleep(self.carrier.pause)
            fields = {**taken.query, **self._fields(taken)}
            self._answer(str(fields.get("to") or fields.get("To"))[-1:], len(self.carrier.requests))
        finally:
            with self.carrier.lock:
                self.carrier.at_once -= 1

    do_GET = do_POST

    def _take(self) -> Taken:
        length = int(self.headers.get("Content-Length") or 0)
        parts = urlsplit(self.path)
        taken = Taken(
            self.command,
            parts.path,
            dict(parse_qsl(parts.query, keep_blank_values=True)),
            {name.lower(): value for name, value in self.headers.items()},
            self.rfile.read(length).decode(),
            self.client_address[1],
        )
        with self.carrier.lock:
            self.carrier.requests.append(taken)
            self.carrier.at_once += 1
            self.carrier.most_at_once = max(self.carrier.most_at_once, self.carrier.at_once)
        return taken

    def _fields(self, taken: Taken) -> dict[str, Any]:
        return json.loads(taken.body) if "json" in taken.headers.get("content-type", "") else taken.form

    def _answer(self, kind: str, number: int) -> None:
        if kind == "5":
            self.close_connection = True
        elif kind == "6":
            self.carrier.over.wait(20)
            self.close_connection = True
        elif kind == "9":
            self.say(200, b"<p>Welcome</p>")
        elif kind == "2":
            self.say(400, json.dumps({"code": 21211, "message": "not a number"}).encode())
        elif kind in "3478":
            status = {"3": 429, "4": 500, "7": 503, "8": 401}[kind]
            self.say(status, json.dumps({"code": status, "message": "no"}).encode(), {"Retry-After": "90"})
        else:
            self.say(201, json.dumps({"sid": f"SM{number}", "status": "queued"}).encode())
