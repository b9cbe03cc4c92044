"""What a client's card says of the set that she wears: how much is left, and when it will need an artist.

Nothing here promises or diagnoses: it is what the studio's readings and hers make likely. Reads, never writes.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from django.utils.translation import gettext as _

from aftercare.core.delivery import GONE, State
from aftercare.core.expected import share_on
from aftercare.core.reminders import day_of
from aftercare.core.shedding import LONGEST_WORN, Quantiles
from aftercare.core.timing import Occasion
from aftercare.facts import ClientBook
from aftercare.models import Forecast
from aftercare.pages.curve import Event, Picture, draw
from studio.models import Service, Visit

EARLIER = 40  # readings of earlier sets shown, the newest
TO_GO = (State.PLANNED, State.CLAIMED, State.HANDING_OVER)


@dataclass(frozen=True, slots=True)
class Percent:
    """A share with its 80 % band, in whole percent."""

    low: int
    middle: int
    high: int

    @classmethod
    def of(cls, share: Quantiles) -> Percent:
        return cls(round(100 * share.low), round(100 * share.middle), round(100 * share.high))


@dataclass(frozen=True, slots=True)
class When:
    """The day on which a level is reached, with its 80 % band."""

    low: date
    middle: date
    high: date
    is_past: bool


@dataclass(frozen=True, slots=True)
class Split:
    """What is gone by ``when``, by cause."""

    when: date
    gone: int
    shed: Percent
    bonds: Percent
    told_apart: bool


@dataclass(frozen=True, slots=True)
class Row:
    """One row of the table behind the picture."""

    on: date
    share: Percent


@dataclass(frozen=True, slots=True)
class Seen:
    """One reading: how many days after its set, and how much was left."""

    days: int
    share: float
    of_worn: bool


@dataclass(frozen=True, slots=True)
class HerSet:
    """The set on now and what is forecast of it; without a forecast only the visit at which it was put on."""

    visit: Visit
    forecast: Forecast | None = None
    phase: str = ""
    today: Percent | None = None
    fill: When | None = None
    full_set: When | None = None
    split: Split | None = None
    rows: Sequence[Row] = ()
    picture: Picture | None = None


def worn(book: ClientBook) -> Visit | None:
    """Return the visit of the set that she has on: her last done one, unless a removal came after it."""
    found = None
    for visit in book.visits.values():
        if visit.status == Visit.Status.DONE:
            if visit.is_set:
                found = visit
            elif visit.service == Service.REMOVAL:
                found = None
    return found


def her_set(book: ClientBook) -> HerSet | None:
    """Return what is to be said of the set that she has on, or None where she has none. One query, or none."""
    visit = worn(book)
    if visit is None or (_local(book.now, book) - _local(visit.starts_at, book)).days > LONGEST_WORN:
        return None
    forecast = Forecast.objects.in_force().filter(visit=visit).first()
    return HerSet(visit) if forecast is None else _forecast(book, visit, forecast)


def _forecast(book: ClientBook, visit: Visit, forecast: Forecast) -> HerSet:
    start = _local(visit.starts_at, book)
    day = (_local(book.now, book) - start).days
    share = share_on(forecast.curve, day)
    fill = _when(start, day, forecast.fill_low, forecast.fill_day, forecast.fill_high)
    full_set = _when(start, day, forecast.full_set_low, forecast.full_set_day, forecast.full_set_high)
    return HerSet(
        visit=visit,
        forecast=forecast,
        phase=_phase(day, forecast),
        today=Percent.of(share) if share else None,
        fill=fill,
        full_set=full_set,
        split=_split(forecast, start),
        rows=_rows(forecast, start),
        picture=_picture(book, visit, forecast, start, day),
    )


def _phase(day: int, forecast: Forecast) -> str:
    """Say in words how far on she is, by the share of the time to a fill that is over."""
    if day >= forecast.full_set_day:
        return _("She may need a new set")
    part = day / forecast.fill_day if forecast.fill_day > 0 else 1.0
    if part >= 1:
        return _("Ready for a fill")
    if part >= 0.75:
        return _("Soon ready for a fill")
    return _("About half-way to a fill") if part >= 0.35 else _("Put on not long ago")


def _when(start: date, today: int, low: float, middle: float, high: float) -> When:
    days = [day_of(start, value) for value in (low, middle, high)]
    return When(days[0], days[1], days[2], is_past=days[1] <= start + timedelta(days=today))


def _split(forecast: Forecast, start: date) -> Split | None:
    if not forecast.loss:
        return None
    shed, bonds = (Percent.of(Quantiles(*forecast.loss[cause])) for cause in ("shed", "bonds"))
    gone = shed.middle + bonds.middle
    return Split(day_of(start, forecast.loss["day"]), gone, shed, bonds, bool(forecast.loss["told_apart"]))


def _rows(forecast: Forecast, start: date) -> list[Row]:
    days = range(0, int(forecast.curve["days"][-1]) + 1, 7)
    shares = ((day, share_on(forecast.curve, day)) for day in days)
    return [Row(start + timedelta(days=day), Percent.of(share)) for day, share in shares if share]


def _picture(book: ClientBook, visit: Visit, forecast: Forecast, start: date, day: int) -> Picture:
    seen = readings(book)
    return draw(
        forecast.curve,
        start,
        reach=forecast.full_set_high + 3,
        levels=[(forecast.fill_level, _("fill")), (forecast.full_set_level, _("full set"))],
        events=_events(book, visit, start, day),
        earlier=[(one.days, one.share) for one in seen if not one.of_worn][-EARLIER:],
        own=[(one.days, one.share) for one in seen if one.of_worn],
    )


def readings(book: ClientBook) -> list[Seen]:
    """Return what was seen of her sets, each with the days since the set was put on, oldest first."""
    on = worn(book)
    found: list[Seen] = []
    last: Visit | None = None
    for visit in book.visits.values():
        if visit.status != Visit.Status.DONE:
            continue
        if visit.share_left is not None and last is not None:
            days = (_local(visit.starts_at, book) - _local(last.starts_at, book)).days
            if 0 < days <= LONGEST_WORN:
                found.append(Seen(days, float(visit.share_left) / 100, of_worn=last is on))
        if visit.is_set:
            last = visit
        elif visit.service == Service.REMOVAL:
            last = None
    return found


def _events(book: ClientBook, visit: Visit, start: date, today: int) -> list[Event]:
    found = [Event("today", today, _("today"))]
    if reminded := _reminded(book, visit):
        found.append(Event("reminder", (_local(reminded, book) - start).days, _("reminder")))
    for other in book.visits.values():
        if other.status == Visit.Status.BOOKED and other.starts_at > book.now:
            found.append(Event("booked", (_local(other.starts_at, book) - start).days, _("booked")))
    return found


def _reminded(book: ClientBook, visit: Visit) -> datetime | None:
    """Return when the reminder about a fill goes, or went."""
    hers = [m for m in book.messages.values() if m.visit_id == visit.pk and m.occasion == Occasion.FILL_DUE]
    for message in sorted(hers, key=lambda message: message.edition, reverse=True):
        if message.state in TO_GO:
            return message.due_at
        if message.state in GONE:
            return message.handed_over_at or message.due_at
    return None


def _local(at: datetime, book: ClientBook) -> date:
    return at.astimezone(book.facts.zone).date()
