"""What the owner's page says of the forecasts: how near they were, for whom, and beside what."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.utils.functional import Promise
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from aftercare import figures
from aftercare.figures import Case, Score
from aftercare.pages.scatter import Scatter, scatter
from studio.models import Studio

PERIODS: dict[str, tuple[int | None, Promise]] = {
    "quarter": (91, gettext_lazy("three months")),
    "year": (365, gettext_lazy("a year")),
    "all": (None, gettext_lazy("all")),
}
USUAL_PERIOD = "year"
BAND = 10  # points of forecast share in one row of the table behind the picture


@dataclass(frozen=True, slots=True)
class Group:
    """A kind of visits, scored."""

    name: str
    score: Score


@dataclass(frozen=True, slots=True)
class Step:
    """One row of the table behind the picture: where the forecast lay from ``low`` to ``high`` percent."""

    low: int
    high: int
    visits: int
    seen: float  # mean
    expected: float  # mean


@dataclass(frozen=True, slots=True)
class Quality:
    """Everything that the page says."""

    score: Score | None
    seen: int  # shares that were seen in the period, those without a forecast among them
    picture: Scatter
    steps: Sequence[Step]
    readers: Sequence[Group]
    adhesives: Sequence[Group]
    known: Sequence[Group]

    @property
    def unscored(self) -> int:
        return self.seen - (self.score.visits if self.score else 0)


def quality(studio: Studio, period: str, now: datetime) -> Quality:
    """Read and score a period up to ``now``, one of PERIODS."""
    days, _words = PERIODS[period]
    cases, seen = figures.cases(studio, now - timedelta(days=days) if days else None, now)
    return Quality(
        score=figures.score(cases),
        seen=seen,
        picture=scatter(cases),
        steps=_steps(cases),
        readers=_groups(figures.by(cases, lambda case: case.reader or _("not known who"))),
        adhesives=_groups(figures.by(cases, lambda case: case.adhesive or _("adhesive not known"))),
        known=_groups(figures.by(cases, _known)),
    )


def _groups(scores: Sequence[tuple[str, Score]]) -> list[Group]:
    return [Group(name, score) for name, score in scores]


def _known(case: Case) -> str:
    if case.readings == 0:
        return _("no reading of hers before")
    return _("one or two readings before") if case.readings < 3 else _("three readings or more before")


def _steps(cases: Sequence[Case]) -> list[Step]:
    found: dict[int, list[Case]] = {}
    for case in cases:
        found.setdefault(min(int(100 * case.expected) // BAND, 100 // BAND - 1), []).append(case)
    return [
        Step(
            low=BAND * band,
            high=BAND * (band + 1),
            visits=len(some),
            seen=sum(case.seen for case in some) / len(some),
            expected=sum(case.expected for case in some) / len(some),
        )
        for band, some in sorted(found.items())
    ]
