"""What a report is about, how its time goes step by step, and what it is made of."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from functools import cached_property

from django.db.models import Case, Q, Value, When
from django.utils import formats
from django.utils.functional import Promise
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from aftercare.figures import Group, Span
from aftercare.pages.report.period import Period
from aftercare.pages.report.pictures import FEW
from aftercare.pages.report.table import Table
from studio.models import Adhesive, Staff, Studio

STEP_NAMES: dict[str, Promise] = {
    "week": gettext_lazy("Week from"),
    "month": gettext_lazy("Month from"),
    "quarter": gettext_lazy("Quarter from"),
    "year": gettext_lazy("Year from"),
}
SHORT = {"week": "j M", "month": "M", "quarter": "M y", "year": "Y"}
LONGEST = {"week": 7, "month": 31, "quarter": 92, "year": 366}  # days

Parts = Mapping[tuple[str, ...], Group]


@dataclass(frozen=True, slots=True)
class Section:
    """One heading of the page: what is counted and what that does not say, tables with pictures of them."""

    key: str
    title: str
    about: Sequence[str]
    tables: Sequence[Table]
    empty: str = ""  # what to do so that there is something here
    links: Sequence[tuple[str, str]] = ()  # address and words

    @property
    def is_empty(self) -> bool:
        return not any(table.rows for table in self.tables)


@dataclass(frozen=True, slots=True)
class Names:
    """What people and adhesives are called, by their keys as text; ``treats``: whose figures there can be."""

    people: Mapping[str, str]
    adhesives: Mapping[str, str]
    treats: frozenset[str]


def names(studio: Studio) -> Names:
    """Read them, those who have left among them. One query."""
    treats = Case(When(Q(is_artist=True) | Q(is_owner=True), then=Value("treats")), default=Value("staff"))
    staff = Staff.objects.filter(studio=studio).order_by().values_list(treats, "pk", "name", Value(""))
    glues = Adhesive.objects.filter(studio=studio).order_by().values_list(Value("adhesive"), "pk", "product", "lot")
    found = sorted(staff.union(glues, all=True), key=lambda row: (row[2], row[1]))
    return Names(
        {str(pk): name for what, pk, name, _lot in found if what != "adhesive"},
        {str(pk): str(Adhesive(product=name, lot=lot)) for what, pk, name, lot in found if what == "adhesive"},
        frozenset(str(pk) for what, pk, _name, _lot in found if what == "treats"),
    )


@dataclass
class Report:
    """The figures of a period: a studio's, or one artist's."""

    studio: Studio
    period: Period
    now: datetime
    names: Names
    artist: int | None = None
    is_owners: bool = False

    @cached_property
    def span(self) -> Span:
        return Span(self.studio, self.period.since, self.period.until, self.period.step, self.artist)

    @property
    def whose(self) -> str:
        """Whose figures they are."""
        return _("whole studio") if self.artist is None else self.artist_name(str(self.artist))

    @cached_property
    def steps(self) -> dict[str, tuple[str, str]]:
        """The steps of the period by the day that each begins on: as tables and as pictures name them."""
        found, step = {}, self.period.step
        day = begin(self.period.first, step)
        while day <= self.period.last:
            shown = max(day, self.period.first)
            found[day.isoformat()] = (shown.isoformat(), formats.date_format(shown, SHORT[step]))
            day = begin(day + timedelta(days=LONGEST[step]), step)
        return found

    @property
    def by_step(self) -> str:
        """What the first column of a table over time is called."""
        return f"{STEP_NAMES[self.period.step]} ({self.studio.time_zone})"

    def over_time(self, parts: Parts, own: tuple[str, ...] = ()) -> list[tuple[str, str, Group | None]]:
        """Return each step with its long and its short name, and what was counted in it of ``own``."""
        return [(long, short, parts.get((*own, step))) for step, (long, short) in self.steps.items()]

    def artist_name(self, key: str) -> str:
        return self.names.people.get(key) or _("nobody known")

    def adhesive_name(self, key: str) -> str:
        return self.names.adhesives.get(key) or _("not known")

    def artists_in_order(self, keys: Iterable[str]) -> list[str]:
        """Sort the keys of artists by name, that of nobody last."""
        return sorted(set(keys), key=lambda key: (key not in self.names.people, self.names.people.get(key, "")))


def begin(day: date, step: str) -> date:
    """Return the first day of the step that a day lies in.

    >>> begin(date(2027, 3, 9), "quarter"), begin(date(2027, 3, 9), "week")
    (datetime.date(2027, 1, 1), datetime.date(2027, 3, 8))
    """
    if step == "week":
        return day - timedelta(days=day.weekday())
    month = {"month": day.month, "quarter": day.month - (day.month - 1) % 3, "year": 1}[step]
    return date(day.year, month, 1)


def is_few(group: Group) -> bool:
    return group.sums.cases < FEW


def most_first(parts: Parts) -> list[tuple[str, ...]]:
    """Return the keys, that of the most cases first."""
    return sorted(parts, key=lambda key: (-parts[key].sums.cases, key))
