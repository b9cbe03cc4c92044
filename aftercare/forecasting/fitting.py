"""Fitting a studio's population to its readings: each night, and after an import that brought many."""

from __future__ import annotations

import json
import time
from collections.abc import Callable
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from aftercare import heartbeats
from aftercare.core import shedding
from aftercare.core.shedding import History
from aftercare.forecasting import histories
from aftercare.forecasting.making import renew
from aftercare.models import Fit
from studio.models import Studio
from studio.turns import let_others_in

KEPT = 30  # fits of a studio, beside those that a forecast rests on
GROWN = 1.1  # times the readings of the last fit: enough to fit anew before the night
NIGHT_HOUR = 3  # by the studio's clock: nobody marks a visit then


def refit_due(now: datetime, *, seconds: float, stop: Callable[[], bool] = lambda: False) -> int:
    """Fit each studio whose night has come since it was last fitted; return how many.

    Begins no further one after ``seconds``: the next look goes on from there. A night on which nothing ran is made up
    for at the first look.
    """
    end = time.monotonic() + seconds
    looked = heartbeats.last("refit:")
    done = 0
    for studio in Studio.objects.order_by("pk").iterator():
        name = f"refit:{studio.pk}"
        if name in looked and _night(looked[name], studio.zone) >= _night(now, studio.zone):
            continue
        if stop() or time.monotonic() > end:
            break
        refit(now, studio=studio)
        heartbeats.finished(name, now=now)
        done += 1
        let_others_in()
    return done


def refit(now: datetime, *, studio: Studio) -> int:
    """Fit a studio to all its readings, and forecast for everybody who has a set on.

    The forecasts are made even where the fit stays: what is known of a set grows by its age. Returns how many of them
    were written, as only those are that say something new.
    """
    fit(now, studio=studio)
    return renew(studio, now)


def fit_if_grown(now: datetime, *, studio: Studio) -> bool:
    """Fit a studio that has no fit yet, or a tenth more readings than at its last; return whether a new one stands."""
    last = Fit.objects.filter(studio=studio).first()
    enough = GROWN * last.readings if last else 1
    # The count in the database is at least that of the readings, and costs next to nothing.
    if histories.shares_seen(studio) < enough:
        return False
    told = _told(studio, now)
    return _readings(told) >= enough and _fit(told, studio, now)


def fit(now: datetime, *, studio: Studio) -> bool:
    """Fit a studio to all its readings; return whether a new fit stands: without a reading, or as before, none does."""
    return _fit(_told(studio, now), studio, now)


def _fit(told: list[History], studio: Studio, now: datetime) -> bool:
    if not told:
        return False
    values = json.loads(json.dumps(shedding.fit(told).to_dict()))  # as it will be read back
    last = Fit.objects.filter(studio=studio).first()
    if last and last.values == values:
        return False
    Fit.objects.create(studio=studio, made_at=now, values=values, clients=len(told), readings=_readings(told))
    _forget(studio)
    return True


def _told(studio: Studio, now: datetime) -> list[History]:
    """The histories that hold a reading."""
    found = (record.history for record in histories.of_studio(studio, now))
    return [history for history in found if history.past or (history.worn and history.worn.seen)]


def _readings(told: list[History]) -> int:
    return sum(len(one.seen) for history in told for one in (*history.past, history.worn) if one)


def _forget(studio: Studio) -> None:
    """Delete old fits that no forecast rests on."""
    newest = list(Fit.objects.filter(studio=studio).values_list("pk", flat=True)[:KEPT])
    Fit.objects.filter(studio=studio, forecasts=None).exclude(pk__in=newest).delete()


def _night(at: datetime, zone: ZoneInfo) -> date:
    """The date on which the last night began to count, by the studio's clock."""
    local = at.astimezone(zone)
    return local.date() if local.hour >= NIGHT_HOUR else local.date() - timedelta(days=1)
