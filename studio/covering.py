"""Who stands in for whom: absences, and the chain of covers."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime, timedelta
from typing import Any, NamedTuple

from django.db.models import Case, CharField, F, OuterRef, QuerySet, Subquery, Value, When
from django.db.models.functions import Cast, Coalesce, Concat

from studio.aggregates import Listed
from studio.models import Absence, Staff, Studio

DAY = timedelta(days=1)


def away_on(studio: Studio, day: date) -> QuerySet[Absence]:
    """Return who is away on ``day``, each with her ``stand_in``: her cover, where that works here."""
    stand_in = Case(When(cover__is_active=True, then=F("cover_id")))
    absences = Absence.objects.filter(staff__studio=studio, first_day__lte=day, last_day__gte=day)
    return absences.annotate(stand_in=stand_in).select_related("cover").order_by("pk")


class DayOff(NamedTuple):
    """What a day sheet says of a day: who is away and who covers, or where ``is_closed`` why nobody is there."""

    name: str
    cover: str
    is_closed: bool


def days_off(studio: Studio, day: date) -> list[DayOff]:
    """Return whether the studio is closed on ``day``, and who is away. One query."""
    closed = studio.closing_days.filter(date=day).order_by()
    away = away_on(studio, day).order_by().annotate(cover_name=Case(When(cover__is_active=True, then=F("cover__name"))))
    rows = closed.values_list("name", Value(""), Value(1)).union(
        away.values_list("staff__name", Coalesce("cover_name", Value("")), Value(0)), all=True
    )
    return [DayOff(name, cover, bool(is_closed)) for name, cover, is_closed in rows]


def away(studio: Studio, day: date) -> dict[int, int | None]:
    """Return the same by who is away. One query."""
    return {
        one.staff_id: one.cover_id if one.cover is not None and one.cover.is_active else None
        for one in away_on(studio, day)
    }


def near(now: datetime) -> Any:
    """Return an expression that brings along, with a row of a studio's, who is away there about ``now``.

    Two days either way: a studio's date is up to one off, and a machine's clock may be wrong by hours.
    """
    days = Absence.objects.filter(first_day__lte=(now + 2 * DAY).date(), last_day__gte=(now - 2 * DAY).date())
    return _rows(days)


def ahead(now: datetime) -> Any:
    """Return the same of every absence that is not over yet."""
    return _rows(Absence.objects.filter(last_day__gte=(now - DAY).date()))


def _rows(days: QuerySet[Absence]) -> Any:
    cover = Case(When(cover__is_active=True, then=Cast("cover", CharField())), default=Value(""))
    row = Concat(Cast("staff", CharField()), *_apart(cover, "first_day", "last_day"), output_field=CharField())
    of_studio = days.filter(staff__studio=OuterRef("studio")).order_by().values("staff__studio")
    return Subquery(of_studio.annotate(rows=Listed(row)).values("rows"))


def _apart(*parts: Any) -> list[Any]:
    return [one for part in parts for one in (Value(" "), Cast(part, CharField()))]


def on(rows: str | None, day: date) -> dict[int, int | None]:
    """Return who is away on ``day``, each with her cover, from what `near` brought along.

    >>> on("1 2 2027-03-09 2027-03-12,3  2027-03-01 2027-03-08", date(2027, 3, 9))
    {1: 2}
    """
    return {one.staff: one.cover for one in spans(rows) if one.first <= day <= one.last}


class Span(NamedTuple):
    """One absence: who is away, who covers for her, and the first and the last day."""

    staff: int
    cover: int | None
    first: date
    last: date


def spans(rows: str | None) -> tuple[Span, ...]:
    """Return the absences that `near` or `ahead` brought along."""
    parted = (row.split(" ") for row in (rows.split(",") if rows else ()))
    return tuple(
        Span(int(staff), int(cover) if cover else None, date.fromisoformat(first), date.fromisoformat(last))
        for staff, cover, first, last in parted
    )


def stands_in(away: Mapping[int, int | None], staff_id: int) -> int | None:
    """Return whoever does her work: she herself, or while she is away her cover; hers, if that is away too.

    >>> stands_in({1: 2, 2: 3}, 1), stands_in({1: 2, 2: 1}, 1), stands_in({}, 1)
    (3, None, 1)
    """
    asked = {staff_id}
    while staff_id in away:
        cover = away[staff_id]
        if cover is None or cover in asked:
            return None
        asked.add(cover)
        staff_id = cover
    return staff_id


def covered_by(away: Mapping[int, int | None], person: Staff) -> set[int]:
    """Return whose lists she has beside her own; those that nobody stands in for are the owners'."""
    stand_ins = {pk: stands_in(away, pk) for pk in away if pk != person.pk}
    return {pk for pk, one in stand_ins.items() if (person.is_owner if one is None else one == person.pk)}
