"""What follows from a write: forecasts, and then the plan that rests on them. Every edge that wrote calls it.

The stages stay apart; this is the one place that knows their order.
"""

from __future__ import annotations

import logging
from collections import Counter
from collections.abc import Callable, Iterable
from datetime import datetime
from functools import partial

from aftercare import forecasting, planning
from studio import records
from studio.models import Studio

log = logging.getLogger(__name__)


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


def _forecast(make: Callable[[], object]) -> None:
    """Make forecasts. Aftercare, checks and answers wait for none of them: whatever fails there, planning goes on."""
    try:
        make()
    except Exception:
        log.exception("forecasts could not be made; the plan goes by the last ones")
