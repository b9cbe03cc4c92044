"""From a line to the transport that its messages take, and everything that can go wrong on the way."""

from __future__ import annotations

import json
import logging
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from types import TracebackType

from django.conf import settings
from django.db import DatabaseError
from django.utils.module_loading import import_string

from aftercare import lines
from aftercare.core.delivery import Event
from aftercare.models import Line
from aftercare.sending.health import Health
from aftercare.transports.base import OUTCOMES, Outcome, Outgoing, Stream, Transport, TransportError

log = logging.getLogger(__name__)

LOST = "The service failed while it handed this over: nobody knows whether it left."


class Elsewhere(Exception):  # no error: another process has this road
    """A road that stays open is another process's own: its messages are left to that one."""


@dataclass(slots=True, eq=False)
class Road:
    """One transport, open for the length of a sweep, and how it fares."""

    transport: Transport
    health: Health = field(default_factory=Health)

    @property
    def rests(self) -> bool:
        """Whether it has failed so often in a row that trying the others now would only cost time."""
        return self.health.rests

    def send(self, batch: Sequence[Outgoing]) -> list[Outcome]:
        """Hand over a window and return exactly one outcome each, whatever the transport does."""
        heard: dict[str, Outcome] = {}
        event, problem = Event.LOST, LOST
        try:
            for outcome in self.transport.send(batch):
                if outcome.event in OUTCOMES:
                    heard.setdefault(outcome.reference, outcome)
        except TransportError as error:  # says: nothing of the others has left
            event, problem = Event.REFUSED if error.permanent else Event.NOT_TAKEN, str(error)
        except Exception:  # a fault of ours must not take the whole window's outcomes with it
            log.exception("the transport %s failed", self.transport.name)
        found = [heard.get(one.reference) or silent(one, event, problem) for one in batch]
        try:
            self.health.note(found)
        except DatabaseError as error:  # the outcomes are still to be written, and must not be lost with it
            log.warning("how %s fares could not be written: %s", self.transport.name, error)
        return found


def silent(outgoing: Outgoing, event: Event = Event.LOST, problem: str = LOST) -> Outcome:
    """Return the outcome of a message that the transport said nothing of."""
    return Outcome(reference=outgoing.reference, event=event, problem=problem)


class Roads:
    """The roads of one sweep: each transport is made once, opened by its first message, and closed at the end.

    ``held`` are those that this process keeps open, by the name of their bind: they stay as they are.
    """

    def __init__(self, held: Mapping[str, Stream] | None = None) -> None:
        self._held = {bind: Road(stream, Health.of(stream.account)) for bind, stream in (held or {}).items()}
        self._roads: dict[str, Road] = {}

    def __enter__(self) -> Roads:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        for road in self._roads.values():
            road.transport.close()

    def of(self, line: Line, *, rehearsed: bool) -> Road:
        """Return the road of a line; in rehearsal it is the pretend phone's, whatever the line.

        Raises Elsewhere where another process has it, and ImproperlyConfigured or TypeError for a transport that cannot
        be made as configured.
        """
        if rehearsed:
            configured = settings.AFTERCARE["REHEARSAL"]
            made, options = import_string(configured["TRANSPORT"]), configured["OPTIONS"]
        else:
            made, options = lines.kind_of(line)
        if issubclass(made, Stream):
            return self.held(str(options.get("bind", "")))
        key = json.dumps([made.__module__, made.__name__, options], sort_keys=True, default=str)
        if key not in self._roads:
            transport = made(**options)
            self._roads[key] = Road(transport, Health.of(transport.account))
        return self._roads[key]

    def held(self, bind: str) -> Road:
        """Return a road that this process keeps open. Raises Elsewhere where another has it."""
        if bind not in self._held:
            raise Elsewhere(bind)
        return self._held[bind]
