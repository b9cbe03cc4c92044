"""Making forecasts: of the sets of those whose records changed, and of everybody's after a fit."""

from __future__ import annotations

import json
import logging
from collections import defaultdict
from collections.abc import Callable, Iterable, Sequence
from datetime import date, datetime
from functools import lru_cache
from typing import Any

from django.db import transaction
from django.db.models import F, QuerySet

from aftercare import facts
from aftercare.core import shedding
from aftercare.core.shedding import Curve, Forecaster, History, Loss, Population, Quantiles
from aftercare.core.timing import Rules, SetForecast
from aftercare.forecasting import histories
from aftercare.forecasting.histories import Record
from aftercare.models import Fit, Forecast
from studio.models import Client, Studio
from studio.turns import in_turns, let_others_in

log = logging.getLogger(__name__)

BATCH = 500  # clients in one transaction: small enough that no page or reply waits long for it
MOVED = 0.5  # days: a forecast that moves by less says the same, and the one in force stays
SHARE_DIGITS, DAY_DIGITS = 4, 2
QUANTILES = ("fill_low", "fill_day", "fill_high", "full_set_low", "full_set_day", "full_set_high")
BANDS = ("low", "middle", "high", "read_low", "read_high")
USUAL = History("")  # one of whom nothing is known


def catch_up(now: datetime, *, studio: Studio | None = None, progress: Callable[[int], None] | None = None) -> int:
    """Forecast for every client whose records changed since; return how many forecasts were written."""
    written = done = 0
    while ids := list(_behind(studio).values_list("pk", flat=True)[:BATCH]):
        if done:
            let_others_in()
        written += _make(ids, now)
        done += len(ids)
        if progress:
            progress(done)
    return written


def refresh(client_ids: Iterable[int], now: datetime) -> int:
    """Forecast for those of these clients whose records changed since; return how many forecasts were written."""
    behind = _behind(None).filter(pk__in=list(client_ids))
    return _in_batches(behind.values_list("pk", flat=True), now)


def renew(studio: Studio, now: datetime) -> int:
    """Forecast for everybody in a studio who has a set on, as after a fit; return how many forecasts were written."""
    return _in_batches(histories.wearing(studio, now), now)


def as_if(client_ids: Iterable[int], studio: Studio, rules: Rules, now: datetime) -> dict[int, SetForecast]:
    """Return what would be forecast by the levels of ``rules``, by the visit of the set; nothing is written.

    Levels in force have every set forecast anew, so each that is on is among them.
    """
    alike: dict[date, list[Record]] = defaultdict(list)
    for record in histories.load(histories.wearing(studio, now, client_ids), now):
        if record.visit is not None:
            alike[record.today].append(record)
    forecaster = _forecaster_of(Fit.objects.filter(studio=studio).first())
    levels = (rules.fill_level, rules.full_set_level)
    made: dict[int, SetForecast] = {}
    for today, rows in alike.items():
        told = _told(forecaster, [record.history for record in rows], levels, today, curves=False)
        for record, one in zip(rows, told, strict=True):
            if one is not None and record.visit is not None:
                fill, full = one.days[levels[0]], one.days[levels[1]]
                fill_day, low, full_set_day = (round(day, DAY_DIGITS) for day in (fill.middle, full.low, full.middle))
                made[record.visit] = SetForecast(record.visit, fill_day, low, full_set_day)
    return made


def _behind(studio: Studio | None) -> QuerySet[Client]:
    # In any order: the index has them alone.
    behind = Client.objects.filter(revision__gt=F("forecast_revision")).order_by()
    return behind if studio is None else behind.filter(studio=studio)


def _in_batches(ids: Iterable[int], now: datetime) -> int:
    return sum(_make(batch, now) for batch in in_turns(list(ids), BATCH))


@transaction.atomic
def _make(ids: list[int], now: datetime) -> int:
    # The lock keeps the revisions as they are until all is written: what others write meanwhile raises them after it,
    # and is forecast next.
    held = Client.objects.filter(pk__in=ids).select_for_update(no_key=True).order_by("pk")
    locked = list(held.values_list("pk", flat=True))
    found = _forecasts(histories.load(locked, now), now)
    Forecast.objects.bulk_create(found)
    written = {row.client_id for row in found}
    # Ahead of her plan, so that planning follows, and yet not behind her own forecast.
    changed = Client.objects.filter(pk__in=written)
    changed.update(revision=F("revision") + 1, forecast_revision=F("revision") + 1)
    same = Client.objects.filter(pk__in=[pk for pk in locked if pk not in written])
    same.update(forecast_revision=F("revision"))
    return len(found)


def _forecasts(records: list[Record], now: datetime) -> list[Forecast]:
    """Return the forecasts that are to be written: of the sets that are on, where they say something new.

    Of a set that was taken off before it was ever forecast there is one too: without it no reminder of it could say
    that none goes because there is no set on.
    """
    asked = [one for record in records if (one := record if record.visit else record.taken_off) is not None]
    standing = _in_force([record.visit for record in asked])
    off = {record.taken_off.visit for record in records if record.taken_off is not None}
    alike: dict[tuple[int, date], list[Record]] = defaultdict(list)
    for record in asked:
        if record.visit not in off or record.visit not in standing:
            alike[record.studio, record.today].append(record)
    studios = Studio.objects.in_bulk({studio for studio, _today in alike})
    made: list[Forecast] = []
    for (studio, _today), rows in alike.items():
        made += (one for one in _of_studio(studios[studio], rows, now) if _says_more(one, standing.get(one.visit_id)))
    return made


def _of_studio(studio: Studio, records: list[Record], now: datetime) -> list[Forecast]:
    """Forecast for clients of one studio whose calendars show one date."""
    rules = facts.rules_of(studio)
    levels = (rules.fill_level, rules.full_set_level)
    fit = Fit.objects.filter(studio=studio).first()
    forecaster = _forecaster_of(fit)
    usual, *hers = _told(forecaster, [USUAL, *(record.history for record in records)], levels, records[0].today)
    middle = _shares(_curve(usual).middle) if usual else []
    found = zip(records, hers, strict=True)
    return [_row(record, one, levels, middle, fit, now) for record, one in found if one is not None]


def _forecaster_of(fit: Fit | None) -> Forecaster:
    return _forecaster(json.dumps(fit.values) if fit else "")


# Kept by what the fit says, as making it takes longer than one client's forecast.
@lru_cache(maxsize=16)
def _forecaster(values: str) -> Forecaster:
    return Forecaster(Population.from_dict(json.loads(values)) if values else Population.prior())


def _told(
    forecaster: Forecaster,
    histories: list[History],
    levels: tuple[float, float],
    today: date,
    *,
    curves: bool = True,
) -> list[shedding.Forecast | None]:
    """Forecast for all of them; None for one whose readings cannot be, who must not keep the others waiting."""
    try:
        found = shedding.forecast(
            forecaster.population, histories, levels=levels, today=today, curves=curves, forecaster=forecaster
        )
        return list(found)
    except ValueError as error:
        if len(histories) == 1:
            log.warning("no forecast for client %s: %s", histories[0].client, error)
            return [None]
    return [one for history in histories for one in _told(forecaster, [history], levels, today, curves=curves)]


def _row(
    record: Record,
    forecast: shedding.Forecast,
    levels: tuple[float, float],
    usual: list[float],
    fit: Fit | None,
    now: datetime,
) -> Forecast:
    assert record.visit is not None  # only sets come here that are on, or were when they were taken off
    days = [forecast.days[level] for level in levels]
    return Forecast(
        client_id=record.client,
        visit_id=record.visit,
        fit=fit,
        made_at=now,
        readings=forecast.readings,
        fill_level=levels[0],
        full_set_level=levels[1],
        **dict(zip(QUANTILES, (round(day, DAY_DIGITS) for one in days for day in _three(one)), strict=True)),
        curve=_written(_curve(forecast)),
        usual=usual,
        loss=_loss(forecast.loss),
    )


def _curve(forecast: shedding.Forecast) -> Curve:
    assert forecast.curve is not None  # asked for
    return forecast.curve


def _written(curve: Curve) -> dict[str, Sequence[float]]:
    return {"days": list(curve.days), **{name: _shares(getattr(curve, name)) for name in BANDS}}


def _loss(loss: Loss | None) -> dict[str, Any]:
    if loss is None:
        return {}
    shed, bonds = _shares(_three(loss.shed)), _shares(_three(loss.bonds))
    return {"day": round(loss.day, DAY_DIGITS), "shed": shed, "bonds": bonds, "told_apart": loss.told_apart}


def _three(quantiles: Quantiles) -> tuple[float, float, float]:
    return quantiles.low, quantiles.middle, quantiles.high


def _shares(values: Iterable[float]) -> list[float]:
    return [round(value, SHARE_DIGITS) for value in values]


def _in_force(visits: list[int | None]) -> dict[int, dict[str, Any]]:
    """What the newest forecast of each visit says, without its curve."""
    rows = Forecast.objects.filter(visit__in=visits).order_by("made_at", "pk")
    says = rows.values("visit_id", "client_id", "readings", "fill_level", "full_set_level", *QUANTILES)
    return {row["visit_id"]: row for row in says}


def _says_more(forecast: Forecast, standing: dict[str, Any] | None) -> bool:
    """Whether it is to be written: nothing stands yet, or what stands is of another client or of other numbers."""
    if standing is None:
        return True
    same = ("client_id", "readings", "fill_level", "full_set_level")
    if any(getattr(forecast, name) != standing[name] for name in same):
        return True
    return any(abs(getattr(forecast, name) - standing[name]) >= MOVED for name in QUANTILES)
