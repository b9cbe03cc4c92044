"""Handing over window by window, for roads that are opened when something is due."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from aftercare import outbox
from aftercare.core.delivery import Event
from aftercare.core.occasions import SAFETY
from aftercare.facts import Verdict
from aftercare.sending import health
from aftercare.sending.journaling import Journal
from aftercare.sending.judging import Judge
from aftercare.sending.letters import Letter
from aftercare.sending.roads import Road
from aftercare.transports.base import Outcome
from studio import clock

LONGEST_TURN = timedelta(seconds=2)  # to wait for within a sweep; beyond it messages are due again at their turn


@dataclass(slots=True)
class Windows:
    """Hands over letters by whatever roads they take. ``stop`` is asked between windows."""

    judge: Judge
    now: datetime
    stop: Callable[[], bool]
    began: float = field(default_factory=time.monotonic)

    @property
    def moment(self) -> datetime:
        """The sweep's ``now`` and the seconds for which it has gone on: a provider's Retry-After counts from then."""
        return self.now + timedelta(seconds=int(time.monotonic() - self.began))

    def hand_over(self, ready: Iterable[Letter]) -> None:
        """Hand over these letters, or put them back where their road rests or the sweep ends."""
        by_road: dict[int, list[Letter]] = {}
        for letter in ready:
            by_road.setdefault(id(letter.road), []).append(letter)
        for group in by_road.values():
            self._by_one_road(group[0].road, group)

    def _by_one_road(self, road: Road, ready: list[Letter]) -> None:
        """Hand over window by window; what became of one is written with the journal of the next, in one commit."""
        journal = Journal(road, self.judge, self.moment)
        heard: list[tuple[Letter, Outcome]] = []
        left: Sequence[Letter] = ()
        size = _window(road, ready)
        for start in range(0, len(ready), size):
            if self.stop():
                left = ready[start:]
                break
            journal.now = self.moment
            if road.health.failed:  # some may be put back now: what was heard does not hang on that
                journal.write(heard, [])
                heard = []
            window = leave_resting(road, ready[start : start + size], self.judge, self.now)
            if any(is_limited(letter) for letter in window):  # what was heard does not wait for another's turn
                journal.write(heard, [])
                window, heard = self._in_turn(window), []
            window = journal.write(heard, window)
            outcomes = road.send([letter.outgoing for letter in window]) if window else []
            heard = list(zip(window, outcomes, strict=True))
            journal.now = self.moment
        journal.write(heard, [])
        outbox.let_go(letter.message for letter in left)
        self.judge.counts += journal.counts

    def _in_turn(self, window: Sequence[Letter]) -> list[Letter]:
        """Wait where the owner lets only so many a second leave; put back those whose turn is later than soon."""
        going = list(window)
        limited = {letter.parcel.line.pk: letter.parcel.line for letter in window if is_limited(letter)}
        for line in limited.values():
            hers = [letter for letter in going if letter.parcel.line.pk == line.pk]
            held = [letter for letter in hers if letter.message.occasion not in SAFETY]
            name, a_second = f"line:{line.pk}", float(line.most_a_second or 1)
            wait = health.turn(name, len(hers), a_second, within=LONGEST_TURN if held else timedelta.max)
            if held and wait <= LONGEST_TURN:
                time.sleep(wait.total_seconds())
            elif held:
                self._put_off(held, clock.now() + wait)
                going = [letter for letter in going if letter not in held]
                if len(hers) > len(held):  # these leave all the same, and count
                    health.turn(name, len(hers) - len(held), a_second)
        return going

    def _put_off(self, late: Sequence[Letter], until: datetime) -> None:
        for letter in late:
            self.judge.apply(letter.message, Verdict(Event.PLAN, due_at=until))
        self.judge.put_back(letter.message for letter in late)


def leave_resting(road: Road, ready: Sequence[Letter], judge: Judge, now: datetime) -> list[Letter]:
    """Return those that are tried by this road now: all, or while it rests those alone that cannot wait.

    The others are due again after a rest.
    """
    if not road.rests:
        return list(ready)
    staying = [letter for letter in ready if letter.message.rank > 0]
    for letter in staying:
        judge.apply(letter.message, Verdict(Event.PLAN, due_at=now + health.SHORTEST_REST))
    judge.put_back(letter.message for letter in staying)
    return [letter for letter in ready if letter.message.rank == 0]


def is_limited(letter: Letter) -> bool:
    """Whether the owner lets only so many a second leave by its line."""
    return (
        letter.parcel.channel == "sms" and letter.parcel.line.most_a_second is not None and not letter.parcel.rehearsed
    )


def _window(road: Road, ready: Sequence[Letter]) -> int:
    """Return how many leave at once: what the road takes, and no more than the owner lets leave in a second."""
    slowest = [letter.parcel.line.most_a_second or road.transport.window for letter in ready if is_limited(letter)]
    return max(1, min([road.transport.window, *slowest]))
