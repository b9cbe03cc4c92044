"""A road that stays open, in this process: it takes what it is given and answers when it is told to."""

from __future__ import annotations

import time
from collections import deque
from collections.abc import Collection, Sequence
from typing import Any

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing, Stream
from aftercare.transports.smpp.session import has_come

PATH = "tests.streams.Pipe"


class Pipe(Stream):
    """``fate`` says by address what becomes of a message, "" that no answer comes; all else is taken at once.

    Answers are heard ``slow`` seconds after the last was submitted, all that there are or ``one_by_one``.
    """

    name = "pipe"
    channels = frozenset({"sms"})

    def __init__(
        self,
        *,
        bind: str = "main",
        window: int = 3,
        fate: dict[str, Event | None] | None = None,
        slow: float = 0.0,
        one_by_one: bool = False,
    ) -> None:
        self.bind, self.window, self.fate, self.slow, self.one_by_one = bind, window, fate or {}, slow, one_by_one
        self.submitted_at = 0.0
        self.taken: list[Outgoing] = []
        self.answers: deque[Outcome] = deque()
        self.in_flight = self.most_in_flight = 0
        self.on_submit: list[Any] = []

    @classmethod
    def account_of(cls, options: Any) -> str:
        return f"pipe:{options.get('bind', '')}"

    @property
    def is_up(self) -> bool:
        return True

    def room(self) -> int:
        return self.window - self.in_flight

    @property
    def account(self) -> str:
        return f"pipe:{self.bind}"

    def submit(self, batch: Sequence[Outgoing]) -> list[Outcome]:
        for call in self.on_submit:
            call(batch)
        self.submitted_at = time.monotonic()
        self.in_flight += len(batch)
        self.most_in_flight = max(self.most_in_flight, self.in_flight)
        for one in batch:
            event = self.fate.get(one.address, Event.TAKEN)
            if event in (Event.TAKEN, None):
                self.taken.append(one)
            if event is not None:
                self.answers.append(
                    Outcome(
                        reference=one.reference, event=event, provider_ref=f"p{len(self.taken)}", problem=str(event)
                    )
                )
        return []

    def collect(self, seconds: float, besides: Collection[int] = ()) -> list[Outcome]:
        if besides:
            has_come(*besides, seconds=seconds)
        if time.monotonic() < self.submitted_at + self.slow:
            time.sleep(min(seconds, self.slow))
            return []
        number = 1 if self.one_by_one else len(self.answers)
        heard = [self.answers.popleft() for _ in range(min(number, len(self.answers)))]
        self.in_flight -= len(heard)
        return heard
