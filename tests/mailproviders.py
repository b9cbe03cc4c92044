"""A small HTTP server that speaks the sending APIs of three mail providers, as their public documentation has them.

Postmark: POST /email (https://postmarkapp.com/developer/api/email-api). Resend: POST /emails, with Idempotency-Key
(https://resend.com/docs/dashboard/emails/idempotency-keys). Brevo: POST /smtp/email, with idempotencyKey
(https://developers.brevo.com/docs/heterogenous-versions-batch-emails). The first word of the recipient's address says
how it answers; ``once-`` before it: the first time alone.
"""

from __future__ import annotations

import json
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from threading import Lock
from typing import Any

from tests.httpservers import Handler, serving

STATUS = {"busy": 429, "broken": 500, "key": 401, "gateway": 504, "proxy": 502, "conflict": 409}
REFUSED = {"postmark": 422, "resend": 422, "brevo": 400}
OPTIONS = {
    "postmark": {"backend": "anymail.backends.postmark.EmailBackend", "server_token": "t"},
    "resend": {"backend": "anymail.backends.resend.EmailBackend", "api_key": "t"},
    "brevo": {"backend": "anymail.backends.brevo.EmailBackend", "api_key": "t"},
}


@dataclass
class MailProvider:
    """A running provider: where it listens, and what it has taken."""

    url: str = ""
    pause: float = 0.0  # seconds that each answer takes
    taken: list[dict[str, Any]] = field(default_factory=list)
    unanswered: list[dict[str, Any]] = field(default_factory=list)
    done: set[str] = field(default_factory=set)  # addresses with "once-" that have had their fault
    connections: set[tuple[str, int]] = field(default_factory=set)
    keys: dict[str, tuple[object, str]] = field(default_factory=dict)  # a key's contents, and the id that it was given
    lock: Lock = field(default_factory=Lock)

    def options(self, name: str, **more: object) -> dict[str, Any]:
        """Return the options of a transport that goes by the named API."""
        return {**OPTIONS[name], "api_url": self.url, "timeout": 5, **more}

    def kind(self, address: str) -> str:
        """Return how it answers to a message for an address."""
        with self.lock:
            if address in self.done:
                return ""
            if address.startswith("once-"):
                self.done.add(address)
        return address.removeprefix("once-").partition("-")[0]

    def take(self, name: str, sent: dict[str, Any], key: str) -> tuple[int, str]:
        """Take a message, once a key; return the status and its id."""
        with self.lock:
            if key in self.keys:
                contents, given = self.keys[key]
                if name == "brevo":
                    return 400, "duplicate_parameter"
                return (200, given) if contents == sent else (409, "invalid_idempotent_request")
            given = f"{name}-{len(self.taken)}"
            self.taken.append(sent)
            if key:
                self.keys[key] = (sent, given)
            return 200, given


@contextmanager
def mail_provider(pause: float = 0.0) -> Iterator[MailProvider]:
    """Run a provider on a private port."""
    provider = MailProvider(pause=pause)
    with serving(_Handler, running=provider) as address:
        provider.url = f"{address}/"
        yield provider


class _Handler(Handler):
    running: MailProvider

    def do_POST(self) -> None:
        sent = json.loads(self.rfile.read(int(self.headers["Content-Length"])))
        self.running.connections.add(self.client_address)
        time.sleep(self.running.pause)
        name = {"/email": "postmark", "/emails": "resend", "/smtp/email": "brevo"}[self.path]
        to = {"postmark": lambda: sent["To"], "resend": lambda: sent["to"][0], "brevo": lambda: sent["to"][0]["email"]}
        kind = self.running.kind(to[name]())
        if kind in ("refuse", "illegible"):
            return self._answer(REFUSED[name], self._problem(name, to[name]() if kind == "refuse" else ""))
        if kind in STATUS:
            return self._answer(STATUS[kind], self._problem(name), retry_after=120 if kind == "busy" else None)
        status, given = self.running.take(name, sent, self._key(name, sent))
        if kind == "mute":
            self.running.unanswered.append(sent)
            self.close_connection = True
            return None
        if status != 200:
            return self._answer(status, {"code": given, "name": given, "message": given})
        answer = {
            "postmark": {"ErrorCode": 0, "Message": "OK", "MessageID": given, "To": to[name]()},
            "resend": {"id": given},
            "brevo": {"messageId": given},
        }[name]
        return self._answer(status, answer)

    def _key(self, name: str, sent: dict[str, Any]) -> str:
        if name == "resend":
            return str(self.headers.get("Idempotency-Key") or "")
        return str(sent.get("headers", {}).get("idempotencyKey", "")) if name == "brevo" else ""

    def _problem(self, name: str, address: str = "") -> dict[str, object]:
        if name == "postmark":
            return {"ErrorCode": 300, "Message": f"Invalid 'To' address: '{address}'." if address else "Invalid 'To'"}
        return {"code": "invalid_parameter", "name": "validation_error", "message": "Invalid `to` field"}

    def _answer(self, status: int, body: dict[str, object], retry_after: int | None = None) -> None:
        headers = {} if retry_after is None else {"Retry-After": str(retry_after)}
        self.say(status, json.dumps(body).encode(), headers)
