"""The days that figures are about: one of the usual periods, or from one day to another."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime

from django.utils.functional import Promise
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from aftercare.core.hours import DAY, moment
from studio.models import Studio

OWN = "own"
USUAL = "quarter"
PERIODS: dict[str, Promise] = {
    "month": gettext_lazy("this month"),
    "this_quarter": gettext_lazy("this quarter"),
    "last_quarter": gettext_lazy("last quarter"),
    "quarter": gettext_lazy("the last three months"),
    "year": gettext_lazy("the last twelve months"),
    OWN: gettext_lazy("from one day to another"),
}
MONTHS = {"quarter": 3, "year": 12}
LONGEST = 10 * 366  # days
EARLIEST = date(2000, 1, 1)
# Steps of a line over time: the longest period, in days, for which each is fine enough and not too fine.
STEPS = ((100, "week"), (400, "month"), (1_200, "quarter"))


@dataclass(frozen=True, slots=True)
class Period:
    """Days on the studio's clock, both ends included; ``until`` is never ahead of the present."""

    name: str
    first: date
    last: date
    since: datetime
    until: datetime

    @property
    def step(self) -> str:
        """What a point of a line over time stands for."""
        days = (self.last - self.first).days
        return next((step for longest, step in STEPS if days <= longest), "year")


def read(asked: Mapping[str, str], studio: Studio, now: datetime) -> tuple[Period, str]:
    """Return the period asked for, and what is wrong with it, '' for nothing; a wrong one is the usual one."""
    today = now.astimezone(studio.zone).date()
    name = asked.get("period", OWN if "from" in asked or "to" in asked else USUAL)
    if name == OWN:
        found = _own(asked.get("from", ""), asked.get("to", ""), today)
        if isinstance(found, str):
            return _period(USUAL, _months_before(today, MONTHS[USUAL]), today, studio, now), found
        return _period(OWN, *found, studio, now), ""
    if name == "month":
        return _period(name, today.replace(day=1), today, studio, now), ""
    if name in ("this_quarter", "last_quarter"):
        begun = today.replace(month=today.month - (today.month - 1) % 3, day=1)
        if name == "this_quarter":
            return _period(name, begun, today, studio, now), ""
        return _period(name, _months_before(begun - DAY, 3), begun - DAY, studio, now), ""
    name = name if name in MONTHS else USUAL
    return _period(name, _months_before(today, MONTHS[name]), today, studio, now), ""


def _period(name: str, first: date, last: date, studio: Studio, now: datetime) -> Period:
    until = min(moment(last + DAY, 0, studio.zone), now)
    return Period(name, first, last, moment(first, 0, studio.zone), until)


def _own(begin: str, end: str, today: date) -> tuple[date, date] | str:
    """Read both days, or say which is wrong and what would mend it."""
    days = []
    for words, text in ((_("From"), begin), (_("To"), end)):
        try:
            days.append(date.fromisoformat(text.strip()))
        except ValueError:
            said = {"field": words, "text": text.strip()[:20]}
            return _("%(field)s: “%(text)s” is no date. Write it as 2027-03-09.") % said
    first, last = days[0], min(days[1], today)
    if first > days[1]:
        return _("From: the first day lies after the last one. Exchange them.")
    if first > today:
        return _("From: that day is still to come. Choose one up to today.")
    if first < EARLIEST:
        return _("From: there is nothing from before %(year)s. Choose a later day.") % {"year": EARLIEST.year}
    if (last - first).days > LONGEST:
        return _("To: ten years at most. Choose a shorter period.")
    return first, last


def _months_before(day: date, months: int) -> date:
    """Return the first day of so many months, this one among them: steps over time are then whole ones."""
    year, month = divmod(day.year * 12 + day.month - months, 12)
    return date(year, month + 1, 1)
