"""From visits to histories: which set was seen how, and which one each client has on."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from decimal import Decimal
from itertools import groupby
from operator import attrgetter
from typing import NamedTuple
from zoneinfo import ZoneInfo

from django.db.models import QuerySet

from aftercare.core.shedding import LONGEST_WORN, History, LashSet, Seen
from aftercare.facts.rows import BY_KIND
from studio.models import SETS, Client, Service, Studio, Visit

PAGE = 500  # clients that are read at a time


@dataclass(frozen=True, slots=True)
class Record:
    """One client's history as known today, by her own calendar; ``visit`` is that of the set she has on, if any.

    ``taken_off``: where a removal ended her last set, the same as if that set were on still.
    """

    client: int
    studio: int
    today: date
    history: History
    visit: int | None
    taken_off: Record | None = None


class _Row(NamedTuple):
    client: int
    visit: int
    service: str
    starts_at: datetime
    share_left: Decimal | None  # percent
    artist: int | None
    product: str | None
    lot: str | None


@dataclass(slots=True)
class _Set:
    visit: int
    on: date
    lot: str
    seen: list[Seen] = field(default_factory=list)

    def value(self) -> LashSet:
        return LashSet(self.on, self.lot, tuple(self.seen))


def load(client_ids: Iterable[int], now: datetime) -> list[Record]:
    """Return the records of these clients in the order of their keys, in two queries.

    What lies after today, by the client's calendar, is left out: a moment in the past gives what was known then.
    """
    ids = list(client_ids)
    visits = {client: list(rows) for client, rows in groupby(_visits(ids, now), key=attrgetter("client"))}
    clients = Client.objects.filter(pk__in=ids).order_by("pk")
    return [
        _record(pk, studio, ZoneInfo(own or studios), visits.get(pk, []), now)
        for pk, studio, own, studios in clients.values_list("pk", "studio", "time_zone", "studio__time_zone")
    ]


def of_studio(studio: Studio, now: datetime) -> Iterator[Record]:
    """Give the records of all clients of a studio, some hundred at a time."""
    last = 0
    while ids := list(studio.clients.filter(pk__gt=last).order_by("pk").values_list("pk", flat=True)[:PAGE]):
        yield from load(ids, now)
        last = ids[-1]


def wearing(studio: Studio, now: datetime, client_ids: Iterable[int] | None = None) -> list[int]:
    """Return the clients, or those of ``client_ids``, who may have a set on, in the order of their keys.

    The others need not be looked at.
    """
    since = now - timedelta(days=LONGEST_WORN + 1)
    sets = Visit.objects.filter(studio=studio, status=Visit.Status.DONE, service__in=SETS, starts_at__gte=since)
    if client_ids is not None:
        sets = sets.filter(client__in=list(client_ids))
    return sorted(set(sets.order_by().values_list("client", flat=True)))


def shares_seen(studio: Studio) -> int:
    """Return how many shares left are on record, those that are of no set among them."""
    return _seen(Visit.objects.filter(studio=studio, status=Visit.Status.DONE)).count()


def _seen(visits: QuerySet[Visit]) -> QuerySet[Visit]:
    return visits.filter(share_left__isnull=False)


def _visits(ids: list[int], now: datetime) -> Iterator[_Row]:
    done = Visit.objects.filter(client__in=ids, status=Visit.Status.DONE, starts_at__lt=now + timedelta(days=2))
    told = done.filter(service__in=[*SETS, Service.REMOVAL]) | _seen(done)
    rows = told.order_by("client", "starts_at", BY_KIND, "pk").values_list(
        "client", "pk", "service", "starts_at", "share_left", "artist", "adhesive__product", "adhesive__lot"
    )
    return (_Row(*row) for row in rows.iterator(chunk_size=5000))


def _record(client: int, studio: int, zone: ZoneInfo, rows: list[_Row], now: datetime) -> Record:
    today = now.astimezone(zone).date()
    past: list[LashSet] = []
    worn: _Set | None = None
    off: _Set | None = None
    for row in rows:
        day = row.starts_at.astimezone(zone).date()
        if day > today:
            break
        if worn and row.share_left is not None and 0 < (day - worn.on).days <= LONGEST_WORN:
            worn.seen.append(Seen(day, float(row.share_left) / 100, str(row.artist or "")))
        if row.service in SETS or row.service == Service.REMOVAL:
            past += _told_by(worn)
            off = (worn or off) if row.service == Service.REMOVAL else None
            worn = _Set(row.visit, day, _lot(row)) if row.service in SETS else None
    if worn and (today - worn.on).days > LONGEST_WORN:
        past += _told_by(worn)
        worn = None
    history = History(str(client), tuple(past), worn.value() if worn else None)
    taken_off = None
    if off and (today - off.on).days <= LONGEST_WORN:
        before = past[: len(past) - len(_told_by(off))]
        taken_off = Record(client, studio, today, History(str(client), tuple(before), off.value()), off.visit)
    return Record(client, studio, today, history, worn.visit if worn else None, taken_off)


def _told_by(ended: _Set | None) -> list[LashSet]:
    """A set that is no longer on, where something was seen of it: another says nothing."""
    return [ended.value()] if ended and ended.seen else []


def _lot(row: _Row) -> str:
    """The lot's name with its product's, as two makers may number alike; '' where the lot is unknown."""
    return f"{row.product} {row.lot}".strip() if row.lot else ""
