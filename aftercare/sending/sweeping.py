"""Sending: take what is due, judge it anew, write down that it goes, hand it over, write down what became of it.

No promise hangs on a process here: whatever is killed at whatever moment, the rows say where each message stands.
Nothing is handed over within a transaction, and nothing without having been journaled in one before.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from datetime import datetime
from functools import partial

from aftercare import lines, outbox
from aftercare.outbox import Lane
from aftercare.sending import detours
from aftercare.sending.judging import Judge
from aftercare.sending.roads import Roads
from aftercare.sending.windows import Windows
from aftercare.texts import Count

BATCH = 100  # claimed and judged at once: what is judged leaves at once, whatever else is due


def sweep(
    now: datetime,
    *,
    studio_id: int | None = None,
    stop: Callable[[], bool] = lambda: False,
    enough: Callable[[], bool] = lambda: False,
    count: Count | None = None,
) -> Counter[str]:
    """Hand over all that is due at ``now``; return how many messages came to stand how.

    Texts that go by a road that another process keeps open are left to it. ``enough`` is asked between batches: once it
    is true, no more is claimed. ``stop`` is asked between windows: once it is true, what was claimed is let go and the
    sweep ends. ``count`` says what waits for a member of staff: no morning list can be written without it.
    """
    bound = lines.bound().values()
    judge_away = partial(detours.look, now, batch=BATCH, studio_id=studio_id, stop=stop, count=count)
    away = sum(map(judge_away, bound), Counter[str]())
    lane = Lane(
        frozenset(pk for one in bound for pk in one.studios), frozenset(pk for one in bound for pk in one.lines)
    )
    with Roads() as roads:
        judge = Judge(now, roads, count)
        windows = Windows(judge, now, stop)
        while not (stop() or enough()) and (batch := outbox.claim(now, BATCH, studio_id, lane)):
            introduced = judge.introduce(judge.judge(batch))
            windows.hand_over(introduced.urgent)
            windows.hand_over(introduced.ahead)
            windows.hand_over(judge.without_waiting(introduced))
        return +(judge.counts + away)
