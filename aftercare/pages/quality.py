"""What the owner's page says of the forecasts: how near they were, for whom, and beside what."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.utils.functional import Promise
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from aftercare import figures
from aftercare.core.shrinkage import FEWEST, BetaBinomial, shrink_means
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
    """A kind of visits, scored; and, where there are enough kinds to compare, drawn towards the whole."""

    name: str
    score: Score
    bias: float | None = None
    covered: float | None = None


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
        readers=compared(figures.by(cases, lambda case: case.reader or _("not known who"))),
        adhesives=compared(figures.by(cases, lambda case: case.adhesive or _("adhesive not known"))),
        known=_groups(figures.by(cases, _known)),
    )


def _groups(scores: Sequence[tuple[str, Score]]) -> list[Group]:
    return [Group(name, score) for name, score in scores]


def compared(scores: Sequence[tuple[str, Score]]) -> list[Group]:
    """Kinds that are to be compared: of few visits each, most of what sets them apart is chance."""
    some = [score for _name, score in scores if score.says_something and score.bias.variance]
    if len(some) < FEWEST:
        return _groups(scores)
    drawn = iter(shrink_means([one.bias.value for one in some], [one.bias.variance or 0.0 for one in some]))
    hits = [round(one.covered.value * one.visits) for one in some]
    law = BetaBinomial.fit(hits, [one.visits for one in some])
    return [
        Group(name, one, next(drawn), law.rate(round(one.covered.value * one.visits), one.visits))
        if one in some
        else Group(name, one)
        for name, one in scores
    ]


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
