"""Forecasts as rows, for tests of what is done with them: a set that is lost at one rate, and others by and by."""

from __future__ import annotations

import math
from datetime import datetime
from typing import Any

from aftercare.models import Forecast
from studio.models import Visit

DAYS = list(range(0, 99, 2))
FILL, FULL_SET = 0.6, 0.4
SLOWER = math.log(FULL_SET) / math.log(FILL)  # how much later than the fill level the full-set level is reached
EYE = 0.05  # beyond the band, for what an artist would write down


def shares(fill_day: float) -> list[float]:
    """Return the share left on each of DAYS of a set that falls to the fill level on ``fill_day``."""
    return [FILL ** (day / fill_day) for day in DAYS]


def forecast(visit: Visit, made_at: datetime, *, fill_day: float = 18, usual: float = 20, **fields: Any) -> Forecast:
    """Keep a forecast of a visit's set: 10 and 90 % at 0.8 and 1.25 of its days."""
    low, middle, high = (shares(fill_day * part) for part in (0.8, 1, 1.25))
    values = {
        "readings": 3,
        "fill_level": FILL,
        "full_set_level": FULL_SET,
        "fill_low": 0.8 * fill_day,
        "fill_day": fill_day,
        "fill_high": 1.25 * fill_day,
        "full_set_low": 0.8 * fill_day * SLOWER,
        "full_set_day": fill_day * SLOWER,
        "full_set_high": 1.25 * fill_day * SLOWER,
        "curve": {
            "days": DAYS,
            "low": low,
            "middle": middle,
            "high": high,
            "read_low": [max(0.0, share - EYE) for share in low],
            "read_high": [min(1.0, share + EYE) for share in high],
        },
        "usual": shares(usual),
        "loss": {"day": fill_day, "shed": [0.2, 0.25, 0.31], "bonds": [0.09, 0.15, 0.2], "told_apart": True},
        **fields,
    }
    return Forecast.objects.create(client=visit.client, visit=visit, made_at=made_at, **values)
