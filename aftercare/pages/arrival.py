"""What to expect of a booked set when she comes in: how much will be left, and whether the booked minutes look right.

Reads, never writes.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime

from aftercare.core.expected import Advice, advise, share_on
from aftercare.facts import ClientBook
from aftercare.models import Forecast
from aftercare.pages.herset import Percent, worn
from studio.models import Service, Visit


@dataclass(frozen=True, slots=True)
class Arrival:
    """The share expected at a visit; of a fill also what the owner's numbers say of it."""

    share: Percent
    advice: Advice | None
    longest_days: int  # after the last set, for a fill


def forecasts(books: Iterable[ClientBook]) -> dict[int, Forecast]:
    """Return the forecasts in force of the sets that these clients have on, by visit. One query."""
    sets = [visit.pk for book in books if (visit := worn(book))]
    rows = Forecast.objects.in_force().filter(visit__in=sets).defer("usual", "loss")
    return {forecast.visit_id: forecast for forecast in rows}


def arrival(visit: Visit, book: ClientBook, forecasts: dict[int, Forecast]) -> Arrival | None:
    """Return what to expect at a booked set, or None where it is not to be known: no forecast, or one set in between.

    What will be left of a set that is not on yet, nobody forecasts.
    """
    on = worn(book)
    if on is None or not _is_next(visit, on, book) or (forecast := forecasts.get(on.pk)) is None:
        return None
    days = (_local(visit.starts_at, book) - _local(on.starts_at, book)).days
    share = share_on(forecast.curve, days)
    if share is None:
        return None
    fill = visit.service == Service.FILL
    advice = _advice(share.middle, days, visit, book, forecast) if fill else None
    return Arrival(Percent.of(share), advice, book.rules.longest_fill_days)


def _advice(share: float, days: int, visit: Visit, book: ClientBook, forecast: Forecast) -> Advice:
    return advise(
        share,
        days,
        visit.minutes,
        tiers=book.rules.fill_minutes,
        longest_days=book.rules.longest_fill_days,
        new_set=forecast.full_set_level,
    )


def _is_next(visit: Visit, on: Visit, book: ClientBook) -> bool:
    """Whether nothing that is booked, or not marked yet, changes the set that is on before this visit."""
    if not visit.is_set or visit.status != Visit.Status.BOOKED or visit.starts_at <= on.starts_at:
        return False
    return not any(
        other.status == Visit.Status.BOOKED
        and (other.is_set or other.service == Service.REMOVAL)
        and on.starts_at < other.starts_at < visit.starts_at
        for other in book.visits.values()
    )


def _local(at: datetime, book: ClientBook) -> date:
    return at.astimezone(book.facts.zone).date()
