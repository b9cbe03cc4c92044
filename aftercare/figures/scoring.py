"""How good the forecasts were: each share seen at a visit beside what had been forecast of it just before.

Reads, never writes. Errors are shares (0.05 is five points), seen less forecast where they have a sign.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from zoneinfo import ZoneInfo

from django.db.models import OuterRef, Subquery

from aftercare.core import rates
from aftercare.core.expected import reading_on, value_on
from aftercare.core.rates import Figure
from aftercare.facts.rows import BY_KIND
from aftercare.models import Forecast
from studio.models import SETS, Service, Studio, Visit

ENOUGH = 10  # visits; fewer say nothing


@dataclass(frozen=True, slots=True)
class Case:
    """One share that an artist saw, and the forecast of that set which was in force just before the visit.

    ``expected`` is the middle of its curve on that day, ``low`` to ``high`` its 80 % band for what would be written
    down, and ``usual`` what one calendar for everybody would have said: the curve of a client of whom nothing is known.
    """

    client: int
    reader: str  # who saw it; '' is unknown
    adhesive: str  # of the set; '' is unknown
    readings: int  # of hers that the forecast rested on
    seen: float
    expected: float
    low: float
    high: float
    usual: float

    @property
    def is_covered(self) -> bool:
        return self.low <= self.seen <= self.high


@dataclass(frozen=True, slots=True)
class Score:
    """Some cases together, with intervals that count clients: visits of one client are alike."""

    visits: int
    clients: int
    error: Figure  # mean absolute
    usual_error: Figure  # the same of one calendar for all
    gain: Figure  # by how much the forecasts were nearer than that calendar
    bias: Figure  # above 0: more was left than forecast
    covered: Figure  # how often the band held what was seen

    @property
    def says_something(self) -> bool:
        return self.visits >= ENOUGH


def cases(
    studio: Studio,
    since: datetime | None,
    until: datetime,
    *,
    reader: int | None = None,
    newest: int | None = None,
) -> tuple[list[Case], int]:
    """Return what can be scored of the visits in a period, and how many shares were seen in it at all.

    Of one ``reader`` and of the ``newest`` visits alone, where that is asked for.

    Left out is what nothing was forecast of: sets from before the first forecast, days beyond a curve's last, and
    shares seen after a removal, which are of no set of this studio's.
    """
    seen = _seen(studio, since, until, reader, newest)
    rows = Forecast.objects.select_related("client", "visit__adhesive").defer("loss")
    forecasts = rows.in_bulk([pk for _visit, pk in seen if pk])
    found = (_case(visit, forecasts[pk], studio) for visit, pk in seen if pk in forecasts)
    return [case for case in found if case is not None], len(seen)


def _seen(
    studio: Studio, since: datetime | None, until: datetime, reader: int | None, newest: int | None
) -> list[tuple[Visit, int]]:
    """Return the done sets at which a share was seen, each with the key of the forecast to hold it against, or 0."""
    done = Visit.objects.filter(studio=studio, status=Visit.Status.DONE)
    ends = done.filter(client=OuterRef("client"), service__in=[*SETS, Service.REMOVAL])
    former = (
        ends.filter(starts_at__lt=OuterRef("starts_at")).order_by("-starts_at", BY_KIND.desc(), "-pk").values("pk")[:1]
    )
    # A removal has no forecast, so what was seen after one finds none.
    known = Forecast.objects.filter(visit=OuterRef("former"), made_at__lt=OuterRef("starts_at"))
    in_force = known.order_by("-made_at", "-pk").values("pk")[:1]
    rows = done.filter(service__in=SETS, share_left__isnull=False, starts_at__lt=until)
    if since is not None:
        rows = rows.filter(starts_at__gte=since)
    if reader is not None:
        rows = rows.filter(artist=reader)
    told = rows.select_related("artist").annotate(former=Subquery(former), forecast=Subquery(in_force))
    if newest is not None:
        told = told.order_by("-starts_at", "-pk")[:newest]
    return [(visit, visit.forecast or 0) for visit in told]


def _case(visit: Visit, forecast: Forecast, studio: Studio) -> Case | None:
    zone = ZoneInfo(forecast.client.time_zone) if forecast.client.time_zone else studio.zone
    days = (_date(visit.starts_at, zone) - _date(forecast.visit.starts_at, zone)).days
    said = reading_on(forecast.curve, days)
    if said is None or visit.share_left is None:
        return None
    return Case(
        client=visit.client_id,
        reader=visit.artist.name if visit.artist else "",
        adhesive=str(forecast.visit.adhesive or ""),
        readings=forecast.readings,
        seen=float(visit.share_left) / 100,
        expected=said.middle,
        low=said.low,
        high=said.high,
        usual=value_on(forecast.curve["days"], forecast.usual, days),
    )


def _date(at: datetime, zone: ZoneInfo) -> date:
    return at.astimezone(zone).date()


def score(some: Sequence[Case]) -> Score | None:
    """Score cases together; None where there are none."""
    if not some:
        return None
    clients = [case.client for case in some]
    errors = [abs(case.seen - case.expected) for case in some]
    usual = [abs(case.seen - case.usual) for case in some]
    return Score(
        visits=len(some),
        clients=len(set(clients)),
        error=rates.mean(errors, clients),
        usual_error=rates.mean(usual, clients),
        gain=rates.mean([far - near for far, near in zip(usual, errors, strict=True)], clients),
        bias=rates.mean([case.seen - case.expected for case in some], clients),
        covered=rates.rate([case.is_covered for case in some], clients),
    )


def by(some: Iterable[Case], kind: Callable[[Case], str]) -> list[tuple[str, Score]]:
    """Score cases kind by kind, the kind with the most visits first."""
    kinds: dict[str, list[Case]] = {}
    for case in some:
        kinds.setdefault(kind(case), []).append(case)
    scores = [(name, found) for name, of_kind in kinds.items() if (found := score(of_kind))]
    return sorted(scores, key=lambda pair: (-pair[1].visits, pair[0]))
