"""From a line to the transport that its messages take, and everything that can go wrong on the way."""

from __future__ import annotations

import json
import logging
from collections.abc import Sequence
from dataclasses import dataclass
from types import TracebackType
from typing import Any

from django.conf import settings
from django.utils.module_loading import import_string

from aftercare.core.delivery import Event
from aftercare.models import Line
from aftercare.transports.base import OUTCOMES, Outcome, Outgoing, Transport, TransportError

log = logging.getLogger(__name__)

FAILING = 5  # windows in a row of which nothing was taken: the road rests for the remainder of the sweep
_LOST = "The service failed while it handed this over: nobody knows whether it left."


@dataclass(slots=True, eq=False)
class Road:
    """One transport, open for the length of a sweep."""

    transport: Transport
    failed: int = 0

    @property
    def rests(self) -> bool:
        """Whether it has failed so often in a row that trying the others now would only cost time."""
        return self.failed >= FAILING

    def send(self, batch: Sequence[Outgoing]) -> list[Outcome]:
        """Hand over a window and return exactly one outcome each, whatever the transport does."""
        heard: dict[str, Outcome] = {}
        event, problem = Event.LOST, _LOST
        try:
            for outcome in self.transport.send(batch):
                if outcome.event in OUTCOMES:
                    heard.setdefault(outcome.reference, outcome)
        except TransportError as error:  # says: nothing of the others has left
            event, problem = Event.REFUSED if error.permanent else Event.NOT_TAKEN, str(error)
        except Exception:  # a fault of ours must not take the whole window's outcomes with it
            log.exception("the transport %s failed", self.transport.name)
        found = [heard.get(one.reference) or _silent(one, event, problem) for one in batch]
        taken = any(outcome.event is not Event.NOT_TAKEN for outcome in found)
        self.failed = 0 if taken else self.failed + 1
        return found


def _silent(outgoing: Outgoing, event: Event, problem: str) -> Outcome:
    return Outcome(reference=outgoing.reference, event=event, problem=problem)


class Roads:
    """The roads of one sweep: each transport is made once, opened by its first message, and closed at the end."""

    def __init__(self) -> None:
        self._roads: dict[str, Road] = {}

    def __enter__(self) -> Roads:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        for road in self._roads.values():
            road.transport.close()

    def of(self, line: Line, *, rehearsed: bool) -> Road:
        """Return the road of a line; in rehearsal it is the pretend phone's, whatever the line.

        Raises ImproperlyConfigured, ImportError or TypeError for a transport that cannot be made as configured.
        """
        path, options = _named(line, rehearsed)
        key = json.dumps([path, options], sort_keys=True, default=str)
        if key not in self._roads:
            self._roads[key] = Road(import_string(path)(**options))
        return self._roads[key]


def _named(line: Line, rehearsed: bool) -> tuple[str, dict[str, Any]]:
    configured = settings.AFTERCARE["REHEARSAL" if rehearsed else line.channel.upper()]
    if rehearsed or not line.transport:
        return configured["TRANSPORT"], {**configured["OPTIONS"], **({} if rehearsed else line.options)}
    return line.transport, dict(line.options)
