"""The road itself: requests in threads with kept connections, outcomes as they come, and what is called back."""

from __future__ import annotations

import hashlib
import json
import logging
import threading
from collections.abc import Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor, as_completed
from typing import Any, ClassVar
from urllib.parse import quote, urlsplit

import requests

from aftercare.core.delivery import Event
from aftercare.transports.base import Callback, Outcome, Outgoing, ReceiptNote, ReplyNote, Transport
from aftercare.transports.http_sms import callbacks, templates
from aftercare.transports.http_sms.answers import Answer, Judge, unanswered
from aftercare.transports.http_sms.options import (
    Found,
    Receipts,
    Refused,
    Replies,
    Signature,
    Taken,
    check_secret,
    number,
    told,
)

log = logging.getLogger(__name__)

METHODS, BODIES = ("POST", "GET"), ("form", "json")
_CONNECT_SECONDS = 5.0
_FAULT = "The service failed while it handed this over: nobody knows whether it left."
_LONGEST_ACCOUNT = 40
_RECEIPT_SECONDS = 60  # for which a receipt may clear up what became of a text, where the provider gives receipts


class HttpSms(Transport):
    """``fields`` are the provider's names, each with a template; nested where ``body`` is json. Times are in seconds.

    ``user`` and ``password`` (RFC 7617), ``bearer`` (RFC 6750) or ``headers`` say who we are. With
    ``idempotency_header`` a text whose answer was not heard is sent once more under the same key at once: the provider
    tells it from a new one. ``callback`` is the line's own address; ``callback_secret`` goes into it for a provider
    that cannot sign. How many go in a second is ``window`` over the time that the provider takes for one.
    """

    name: ClassVar[str] = "http_sms"
    channels: ClassVar[frozenset[str]] = frozenset({"sms"})
    takes_callback: ClassVar[bool] = True

    def __init__(
        self,
        *,
        url: str,
        fields: Any,
        method: str = "POST",
        body: str = "form",
        headers: Mapping[str, str] | None = None,
        user: str = "",
        password: str = "",
        bearer: str = "",
        idempotency_header: str = "",
        taken: Mapping[str, Any] | None = None,
        provider_ref: Mapping[str, Any] | None = None,
        refused: Mapping[str, Any] | None = None,
        receipts: Mapping[str, Any] | None = None,
        replies: Mapping[str, Any] | None = None,
        signature: Mapping[str, Any] | None = None,
        callback: str = "",
        callback_secret: str = "",
        account: str = "",
        window: int | str = 10,
        timeout: float | str = 20,
        receipt_wait: int | str | None = None,
    ) -> None:
        parts = urlsplit(url)
        if parts.scheme not in ("http", "https") or not parts.hostname:
            raise ValueError(f"url is {url!r}: write the provider's address, like https://api.example.com/send.")
        if method not in METHODS or body not in BODIES:
            raise ValueError(f"method is {method!r} and body {body!r}: write POST or GET, and form or json.")
        if not isinstance(fields, Mapping) or not fields:
            raise ValueError('fields is missing: write an object in JSON, like {"to": "{to}", "text": "{text}"}.')
        templates.check(fields)
        self.url, self.method, self.body, self.fields = url, method, body, fields
        self.headers = dict(headers or {})
        if bearer:
            self.headers["Authorization"] = f"Bearer {bearer}"
        self.basic = (user, password) if user else None
        self.idempotency_header = idempotency_header
        self.judge = Judge(
            taken=told(Taken, "taken", taken) or Taken(),
            provider_ref=told(Found, "provider_ref", provider_ref),
            refused=told(Refused, "refused", refused),
        )
        self.receipts = told(Receipts, "receipts", receipts)
        self.replies = told(Replies, "replies", replies)
        self.signature = told(Signature, "signature", signature)
        self.callback, self.callback_secret = callback.rstrip("/"), check_secret(callback_secret)
        self._account = (account or _account(parts.hostname, user, self.headers))[:_LONGEST_ACCOUNT]
        self.window = int(number("window", window, 1, 500))
        self.timeout = number("timeout", timeout, 1, 120)
        if receipt_wait is None:
            receipt_wait = _RECEIPT_SECONDS if receipts else 0
        self.receipt_wait = int(number("receipt_wait", receipt_wait, 0, 86_400))
        tries = 2 if idempotency_header else 1
        self.patience = int(tries * (_CONNECT_SECONDS + self.timeout)) + 10
        self._pool: ThreadPoolExecutor | None = None
        self._mine = threading.local()
        self._sessions: list[requests.Session] = []

    @property
    def account(self) -> str:
        return self._account

    # Sending

    def send(self, batch: Sequence[Outgoing]) -> Iterator[Outcome]:
        if self._pool is None:
            self._pool = ThreadPoolExecutor(self.window, thread_name_prefix=self.name)
        going = {self._pool.submit(self._send, outgoing): outgoing.reference for outgoing in batch}
        for done in as_completed(going):
            try:
                yield done.result()
            except Exception:  # a fault of ours with one must not take the outcomes of the others with it
                log.exception("a text could not be handed over")
                yield Outcome(reference=going[done], event=Event.LOST, problem=_FAULT)

    def close(self) -> None:
        if self._pool is not None:
            self._pool.shutdown(wait=True, cancel_futures=True)
        for session in self._sessions:
            session.close()
        self._pool, self._mine, self._sessions = None, threading.local(), []

    def callback_for(self, reference: str) -> str:
        """Return the address at which the provider is to tell of a message; '' where there is none."""
        if not self.callback:
            return ""
        secret = f"/{self.callback_secret}" if self.callback_secret else ""
        return f"{self.callback}{secret}?{callbacks.REFERENCE}={quote(reference)}"

    def _send(self, outgoing: Outgoing) -> Outcome:
        found = templates.values(outgoing, self.callback_for(outgoing.reference))
        arguments = self._arguments(templates.fill(self.fields, found), outgoing.reference)
        outcome = self._request(outgoing, arguments)
        if outcome.event is Event.LOST and self.idempotency_header:
            again = self._request(outgoing, arguments)
            # Of one that was lost, "not taken" speaks of the second try alone.
            return again if again.event in (Event.TAKEN, Event.REFUSED) else outcome
        return outcome

    def _arguments(self, filled: Mapping[str, Any], reference: str) -> dict[str, Any]:
        headers = {self.idempotency_header: reference} if self.idempotency_header else {}
        place = "params" if self.method == "GET" else "json" if self.body == "json" else "data"
        return {"headers": headers, place: filled}

    def _request(self, outgoing: Outgoing, arguments: Mapping[str, Any]) -> Outcome:
        try:
            response = self._session().request(
                self.method,
                self.url,
                timeout=(_CONNECT_SECONDS, self.timeout),
                allow_redirects=False,  # a POST would go on as a GET, and who we are with it
                **arguments,
            )
        except requests.exceptions.RequestException as error:
            return unanswered(outgoing.reference, error)
        answer = Answer(response.status_code, response.headers, response.content.decode("utf-8", "replace"))
        return self.judge.answered(outgoing.reference, outgoing.address, answer)

    def _session(self) -> requests.Session:
        """Return this thread's own session: its connection stays open from message to message."""
        session: requests.Session | None = getattr(self._mine, "session", None)
        if session is None:
            session = requests.Session()
            session.headers.update(self.headers)
            session.auth = self.basic or _as_it_is  # else a .netrc of this machine would speak for us
            self._mine.session = session
            self._sessions.append(session)
        return session

    # Hearing back

    def verify(self, callback: Callback) -> None:
        callbacks.verify(callback, self.signature, self.callback_secret)

    def parse_receipts(self, callback: Callback) -> list[ReceiptNote]:
        return callbacks.read_receipts(self._told(callback), self.receipts, self.replies)

    def parse_replies(self, callback: Callback) -> list[ReplyNote]:
        return callbacks.read_replies(self._told(callback), self.receipts, self.replies)

    def _told(self, callback: Callback) -> callbacks.Told:
        return callbacks.Told.of(callback, with_query=self.signature is None or self.signature.over != "body")


def _account(host: str, user: str, headers: Mapping[str, str]) -> str:
    """Name the account where nobody has: by whom we say that we are, as one provider has several customers."""
    if user or not headers:
        return f"{user}@{host}" if user else host
    digest = hashlib.sha256(json.dumps(headers, sort_keys=True).encode()).hexdigest()[:12]
    return f"{digest}@{host}"


def _as_it_is(request: requests.PreparedRequest) -> requests.PreparedRequest:
    return request
