"""What follows from a write: forecasts, and then the plan that rests on them. Every edge that wrote calls it.

The stages stay apart; this is the one place that knows their order.
"""

from __future__ import annotations

import logging
from collections import Counter
from collections.abc import Callable, Iterable
from datetime import datetime
from functools import partial

from aftercare import facts, forecasting, planning
from aftercare.core.timing import Rules
from aftercare.planning import ahead
from aftercare.planning.ahead import Moves
from studio import records
from studio.models import Studio

log = logging.getLogger(__name__)

AT_ONCE = 200  # clients: planned within a second or two


def plan_clients(client_ids: Iterable[int], now: datetime) -> Counter[str]:
    """Forecast for those of these clients whose records changed, and plan all of them anew.

    Returns how many messages came to stand how, as :func:`aftercare.planning.plan_clients`.
    """
    ids = list(client_ids)
    _forecast(partial(forecasting.refresh, ids, now))
    return planning.plan_clients(ids, now)


def catch_up(
    now: datetime, *, studio: Studio | None = None, progress: Callable[[int], None] | None = None
) -> Counter[str]:
    """Forecast for every client whose records changed, and plan every client who is ahead of her plan.

    Returns how many messages came to stand how, as :func:`aftercare.planning.catch_up`.
    """
    records.end_pauses(now, studio=studio)
    records.count_done(now, studio=studio)
    _forecast(partial(forecasting.catch_up, now, studio=studio))
    return planning.catch_up(now, studio=studio, progress=progress)


def settle(studio: Studio, now: datetime) -> int:
    """Plan what is behind in a studio, where that takes no longer than a page may; return how many clients still are.

    A look ahead beside a plan that has not caught up would show what the change before this one moves.
    """
    if 0 < planning.behind(studio) <= AT_ONCE:
        catch_up(now, studio=studio)
    return planning.behind(studio)


def _forecast(make: Callable[[], object]) -> None:
    """Make forecasts. Aftercare, checks and answers wait for none of them: whatever fails there, planning goes on."""
    try:
        make()
    except Exception:
        log.exception("forecasts could not be made; the plan goes by the last ones")


def preview(
    studio: Studio,
    rules: Rules,
    now: datetime,
    *,
    days: int = ahead.DAYS,
    stop: Callable[[], bool] = lambda: False,
) -> Moves:
    """Return what would move within ``days`` if ``rules`` were in force from ``now`` on; nothing is written.

    It goes by the forecasts on record, which each night renews, or where the levels change by what they would be.
    ``stop`` is asked between some hundred clients and the next: once it is true, the others are not looked at.
    """
    in_force = facts.rules_of(studio)
    reminders_alone = rules.moves_reminders_alone(in_force)
    ids = ahead.concerned(studio, now, reminders_alone=reminders_alone)
    moves = Moves(clients=len(ids))
    if reminders_alone:
        moves.stay = ahead.staying(studio, now, set(ids), days)
    other_levels = (rules.fill_level, rules.full_set_level) != (in_force.fill_level, in_force.full_set_level)
    with ahead.uninterrupted():
        for start in range(0, len(ids), ahead.BATCH):
            if stop():
                break
            batch = ids[start : start + ahead.BATCH]
            forecasts = forecasting.as_if(batch, studio, rules, now) if other_levels else {}
            ahead.compare(batch, studio, rules, in_force, now, forecasts, moves, days)
    moves.found.sort(key=lambda move: (move.at, move.key))
    return moves
