"""Texts of an open road that has been away for long: what safety hangs on goes by the other channel.

Everybody leaves these texts to the process that holds the road, which hands over nothing while its line is down, and
may be gone itself. So a sweep looks at them, too, once nothing has left by it for as long as by any road that rests.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from datetime import datetime

from aftercare import heartbeats, outbox
from aftercare.core.delivery import Event
from aftercare.facts import Verdict
from aftercare.lines import Bound
from aftercare.outbox import Lane
from aftercare.sending.health import DETOUR_AFTER, Health
from aftercare.sending.judging import Judge
from aftercare.sending.roads import Roads
from aftercare.texts import Count
from studio import clock


def look(
    now: datetime, bound: Bound, batch: int, *, studio_id: int | None, stop: Callable[[], bool], count: Count | None
) -> Counter[str]:
    """Judge what is due by an open road, if that has been away for long; return how messages came to stand.

    Nothing is handed over here: what has no other channel, or need not take one, waits for its road.
    """
    before = clock.now() - DETOUR_AFTER
    if not (Health.of(bound.account).away_since(before) or bound.account in heartbeats.late(before)):
        return Counter()
    lane = Lane(frozenset(bound.studios), frozenset(bound.lines), only=True)
    with Roads() as roads:
        judge = Judge(now, roads, count, detours=True)
        while not stop() and (claimed := outbox.claim(now, batch, studio_id, lane)):
            elsewhere = judge.judge(claimed)  # what takes another road by now is due by that in a moment
            for letter in elsewhere:
                judge.apply(letter.message, Verdict(Event.PLAN))
            judge.put_back(letter.message for letter in elsewhere)
    return judge.counts
