"""Sending by a road that stays open: the window is kept full, and what was heard is committed in groups.

Three threads: one claims and judges what is due, one has the road and the journal, one writes down what was heard; on
SQLite, where two writers only wait for each other, one does all in turn. The road is listened to while PostgreSQL
writes into the journal: to wait for that in a thread of its own cost more than it gave. A message is journaled only
once there is room for it in the window, so that what a crash leaves open is what was truly in flight.
"""

from __future__ import annotations

import logging
import queue
import sys
import threading
import time
from collections import Counter, deque
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import datetime

from django.db import DatabaseError, connection

from aftercare import lines, outbox
from aftercare.core.delivery import RANKS, Event
from aftercare.core.occasions import SAFETY
from aftercare.core.pace import Pace
from aftercare.facts import Verdict
from aftercare.lines import Bound
from aftercare.outbox import Lane
from aftercare.sending.journaling import Heard, Journal, not_left
from aftercare.sending.judging import Judge
from aftercare.sending.leaving import AT_ONCE, Leaving
from aftercare.sending.letters import Letter
from aftercare.sending.roads import Road, Roads, silent
from aftercare.sending.settling import LISTEN, Settler
from aftercare.sending.windows import is_limited, leave_resting
from aftercare.texts import Count
from aftercare.transports.base import Outcome, Stream
from studio import clock

log = logging.getLogger(__name__)

LEAST, MOST = 20, 250  # claimed and judged at once: what leaves in a second, so that an answer never waits behind many
# Seconds for which a thread of Python's keeps the others waiting: judging is all Python, and what was heard from the
# carrier or the database must not wait for it.
SWITCH = 0.0005
# Seconds between two looks for answers and alerts while what is judged already waits: where a carrier takes one text a
# second, that may be a minute's worth.
URGENT = 0.5
EXACT = 1.0  # seconds: a moment is in whole ones
GRACE = 8.0  # seconds for the answers that are still out when the end is asked for


def stream(
    road: Stream,
    bind: str,
    *,
    stop: Callable[[], bool] = lambda: False,
    pause: Callable[[], bool] = lambda: False,
    count: Count | None = None,
) -> Counter[str]:
    """Hand over what is due for the live lines of a bind until nothing is; return how messages came to stand.

    Once ``stop`` is true nothing more leaves, answers are waited for a little, and what was claimed is let go. Once
    ``pause`` is true nothing more is claimed but what is urgent, and all that is on its way is waited for, as long as
    the road does.
    """
    bound = lines.bound().get(bind, Bound())
    lane = Lane(frozenset(bound.studios), frozenset(bound.lines), only=True)
    if lane.is_empty:
        return Counter()
    return hand_over(Feeder(road, bind, lane, lambda: stop() or pause(), count), stop)


def hand_over(feeder: Feeder, stop: Callable[[], bool] = lambda: False) -> Counter[str]:
    """Hand over all that a feeder gives; return how messages came to stand. ``stop`` is as for :func:`stream`."""
    if not feeder.fill():  # nothing is due: no thread for it
        return +feeder.counts
    wire = _Wire(feeder.roads.held(feeder.bind), feeder, stop)
    if connection.vendor != "sqlite":
        feeder.start()
        wire.start()
    try:
        wire.run()
    finally:
        feeder.end()
        wire.end()
        outbox.let_go(letter.message for letter in [*wire.waiting, *feeder.rest()])
    return +(feeder.counts + wire.counts)


@dataclass(slots=True)
class Feeder:
    """Claims and judges ahead of the wire, in a thread of its own once it is started."""

    road: Stream
    bind: str
    lane: Lane
    stop: Callable[[], bool]
    count: Count | None
    counts: Counter[str] = field(default_factory=Counter)
    roads: Roads = field(init=False)
    ready: queue.Queue[list[Letter]] = field(default_factory=lambda: queue.Queue(1))
    at_once: deque[Letter] = field(default_factory=deque)  # answers and alerts that are judged
    batch: int = LEAST
    error: BaseException | None = None
    ended: threading.Event = field(default_factory=threading.Event)
    thread: threading.Thread | None = None

    def __post_init__(self) -> None:
        self.roads = Roads({self.bind: self.road})

    def fill(self) -> bool:
        """Judge one more batch and queue it; return whether anything was due."""
        now = clock.now()
        batch = outbox.claim(now, self.batch, lane=self.lane)
        if not batch:
            return False
        judge = Judge(now, self.roads, self.count)
        introduced = judge.introduce(self._ours(judge.judge(batch), judge))
        # Those whose introduction is on its way here are due again in a moment, as their numbers are known by then.
        self.at_once.extend(introduced.urgent)  # not behind what is queued
        self._put([*introduced.ahead, *judge.without_waiting(introduced)])
        self.counts += judge.counts
        return True

    def look_for_urgent(self) -> Counter[str]:
        """Have answers and alerts that are due by now judged at once; return how those came to stand that do not go.

        They wait behind nothing that is judged already. Where the database fails they are looked for a little later.
        """
        try:
            now = clock.now()
            batch = outbox.claim(now, LEAST, lane=self.lane, ranks=RANKS[:1])
            judge = Judge(now, self.roads, self.count)
            self.at_once.extend(self._ours(judge.judge(batch), judge) if batch else [])
            return judge.counts
        except DatabaseError as error:
            log.warning("what is urgent is looked for a little later: %s", error)
            connection.close_if_unusable_or_obsolete()
            return Counter()

    def _ours(self, ready: Sequence[Letter], judge: Judge) -> list[Letter]:
        """Return those that take this road; what must go by another by now is left to whoever has that one."""
        road = self.roads.held(self.bind)
        for letter in ready:
            if letter.road is not road:
                judge.apply(letter.message, Verdict(Event.PLAN))
        judge.put_back(letter.message for letter in ready if letter.road is not road)
        return [letter for letter in ready if letter.road is road]

    def take(self, *, idle: bool) -> list[Letter]:
        """Return what is judged by now; where there is nothing else to do, wait for it a little."""
        if self.thread is None and self.ready.empty() and (self._is_over() or not self.fill()):
            self.ended.set()
        try:
            return self.ready.get(timeout=LISTEN) if idle and self.thread else self.ready.get_nowait()
        except queue.Empty:
            return []

    def take_urgent(self) -> list[Letter]:
        """Return the answers and alerts that are judged by now."""
        return [self.at_once.popleft() for _ in range(len(self.at_once))]

    def start(self) -> None:
        """Judge in a thread from now on, until nothing is due."""
        sys.setswitchinterval(SWITCH)
        self.thread = threading.Thread(target=self._run, name=f"judging for {self.bind}", daemon=True)
        self.thread.start()

    def end(self) -> None:
        """Judge nothing more."""
        self.ended.set()
        if self.thread is not None:
            self.thread.join()

    def _run(self) -> None:
        try:
            while not self._is_over() and self.fill():
                pass
        except BaseException as error:  # the wire raises it
            self.error = error
        finally:
            connection.close()
            self.ended.set()

    def _is_over(self) -> bool:
        return self.ended.is_set() or self.stop()

    def is_at_it(self) -> bool:
        """Whether more may come from it."""
        return not (self.ended.is_set() and self.ready.empty() and not self.at_once)

    def rest(self) -> list[Letter]:
        """Return what is judged and has not been taken."""
        found: list[Letter] = list(self.at_once)
        while not self.ready.empty():
            found += self.ready.get_nowait()
        return found

    def _put(self, letters: list[Letter]) -> None:
        while letters:
            try:
                self.ready.put(letters, timeout=0.2)
                return
            except queue.Full:
                if self._is_over():
                    outbox.let_go(letter.message for letter in letters)
                    return


@dataclass(slots=True)
class _Wire:
    """Keeps the window of one road full."""

    road: Road
    feeder: Feeder
    stop: Callable[[], bool]
    waiting: deque[Letter] = field(default_factory=deque)
    flying: dict[str, tuple[Letter, float]] = field(default_factory=dict)  # by reference, and since when
    counts: Counter[str] = field(default_factory=Counter)
    settler: Settler = field(init=False)
    leaving: Leaving = field(init=False)
    paces: dict[int, Pace] = field(default_factory=dict)  # by line
    holds: bool = False  # all that waits is held by an owner's limit just now
    moment: datetime | None = None  # by the database's clock, when it was asked last
    asked_at: float = 0.0
    looked_at: float = 0.0  # when something was last taken from the feeder, or urgent things were last looked for

    def __post_init__(self) -> None:
        self.settler = Settler(self._settle)
        beside = [outbox.Departures() for _ in range(AT_ONCE)] if connection.vendor == "postgresql" else []
        self.leaving = Leaving(self.road, self.feeder.roads, beside)

    def run(self) -> None:
        stream = self._stream()
        began, left = time.monotonic(), 0
        while self._goes_on():
            going = self.leaving.end()
            # First the next are begun: the database is at work on them while these are put on the wire.
            try:
                self._begin(going)
            except BaseException:
                self.leaving.failed += going  # written down, and not handed over
                raise
            left += len(going)
            self._submit(going)
            self._settle_failed()
            self.feeder.batch = max(LEAST, min(MOST, int(left / max(1.0, time.monotonic() - began))))
            self.settler.turn()
            self._hear(stream.collect(self._patience(), self.leaving.descriptors()))
        self._end()

    def start(self) -> None:
        """Write down what was heard in a thread."""
        self.settler.start(f"settling for {self.feeder.bind}")

    def end(self) -> None:
        """Leave nothing that was heard unwritten. Raises what keeps it from being written."""
        self.leaving.give_up()
        self._settle_failed()
        self.settler.end()
        self.counts += self.settler.counts + self.leaving.counts
        self.settler.counts, self.leaving.counts = Counter(), Counter()

    def _stream(self) -> Stream:
        assert isinstance(self.road.transport, Stream)  # see stream()
        return self.road.transport

    def _goes_on(self) -> bool:
        if self.stop() or not (self._stream().is_up or self.flying):
            return False
        under_way = bool(self.flying or self.leaving.under_way)
        if not self.waiting:
            self.waiting.extend(self.feeder.take(idle=not (under_way or self.feeder.ended.is_set())))
            self.looked_at = time.monotonic()
        elif time.monotonic() - self.looked_at >= URGENT:
            self.counts += self.feeder.look_for_urgent()
            self.looked_at = time.monotonic()
        self.waiting.extendleft(reversed(self.feeder.take_urgent()))
        if self.feeder.error is not None:
            self._end()
            raise self.feeder.error
        return bool(self.waiting or under_way or self.feeder.is_at_it())

    def _begin(self, going: list[Letter]) -> None:
        """Have the next ones journaled, beside those that leave now; add to these what may leave at once."""
        for _ in range(self.leaving.free):
            window = self._window(len(going))
            going += self.leaving.begin(window, self._now) if window else []

    def _window(self, leaving: int) -> list[Letter]:
        """Take what there is room for beside so many that are leaving."""
        places = self._places() - leaving
        if places <= 0:
            return []
        taken, held = self._in_turn(self.leaving.share(places))
        self.waiting.extendleft(reversed(held))
        self.holds = bool(held) and not taken
        with self.leaving.for_a_while(taken):
            if not taken or not self.road.rests:
                return taken
            now = self._now()
            judge = Judge(now, self.feeder.roads, None)
            going = leave_resting(self.road, taken, judge, now)
            self.leaving.absence.end()
            self.counts += judge.counts
            return going
        return []

    def _places(self) -> int:
        """Return how many may be journaled, since they could leave as soon as they are."""
        if not self._stream().is_up:
            return 0
        return min(self.road.transport.window - len(self.flying), self._stream().room()) - self.leaving.held

    def _in_turn(self, free: int) -> tuple[list[Letter], list[Letter]]:
        """Take those that leave now, and apart from them those that an owner's limit a second holds back."""
        taken: list[Letter] = []
        held: list[Letter] = []
        while self.waiting and len(taken) < free:
            letter = self.waiting.popleft()
            (taken if self._is_due(letter) else held).append(letter)
        return taken, held

    def _is_due(self, letter: Letter) -> bool:
        """Whether the owner's limit a second lets it leave now: the bind is one process's, which counts by itself."""
        if not is_limited(letter):
            return True
        line, now = letter.parcel.line, time.monotonic()
        pace = self.paces.setdefault(line.pk, Pace(float(line.most_a_second or 0)))
        if pace.room(now) < 1 and letter.message.occasion not in SAFETY:
            return False
        pace.spend(1, now)
        return True

    def _patience(self) -> float:
        """Return how long to listen: not at all while more could leave."""
        more = self.waiting and not self.holds and self.leaving.free and self._places() > 0
        return 0.0 if more else LISTEN

    def _submit(self, going: Sequence[Letter]) -> None:
        if going:
            now = time.monotonic()
            self.flying |= {letter.parcel.reference: (letter, now) for letter in going}
            self._hear(self._stream().submit([letter.outgoing for letter in going]))

    def _settle_failed(self) -> None:
        """Have what the database failed at, and may have written down all the same, settled as what has not left."""
        if self.leaving.failed:
            failed, self.leaving.failed = self.leaving.failed, []
            self.settler.take([*map(not_left, failed)])

    def _now(self) -> datetime:
        """Return the moment by the database's clock, which is asked once in the second that a moment is exact to."""
        if self.moment is None or time.monotonic() - self.asked_at >= EXACT:
            self.asked_at, self.moment = time.monotonic(), clock.now()
        return self.moment

    def _settle(self, heard: Sequence[Heard]) -> Counter[str]:
        now = clock.now()
        journal = Journal(self.road, Judge(now, self.feeder.roads, None), now)
        journal.settle(heard)
        return journal.counts

    def _hear(self, outcomes: Sequence[Outcome]) -> None:
        known = [(*self.flying.pop(one.reference), one) for one in outcomes if one.reference in self.flying]
        if known:
            self.settler.take([(letter, outcome) for letter, _since, outcome in known])
            self.road.health.note([outcome for *_, outcome in known], max(since for _, since, _ in known))

    def _end(self) -> None:
        """Wait for the answers that are still out, and write everything down."""
        self._submit(self.leaving.end(wait=True))  # it is no longer anybody else's
        self._settle_failed()
        until = time.monotonic() + GRACE
        while self.flying and time.monotonic() < until:
            self._hear(self._stream().collect(LISTEN))
        self._hear([silent(letter.outgoing) for letter, _since in self.flying.values()])
        self.end()
