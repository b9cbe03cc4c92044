"""The rules in force for a studio: the defaults, and the owner's numbers."""

from __future__ import annotations

import logging
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime, time

from django.utils.translation import get_language
from django.utils.translation import gettext as _

from aftercare.core import limits, say, timing
from aftercare.core.hours import Hours
from aftercare.core.limits import Problem, Unit, Why
from aftercare.core.timing import Rules
from aftercare.models import RuleSet
from studio.models import Studio

log = logging.getLogger(__name__)
DEFAULTS = Rules()
DAY_MINUTES = 24 * 60


class BadRule(ValueError):  # read by people as it stands
    """A number cannot be a rule. The message names the rule, the value and the cure; ``cures`` has one a name."""

    def __init__(self, *found: tuple[str, object, str]) -> None:
        super().__init__(" ".join(f"The rule {name} cannot be {value!r}: {cure}" for name, value, cure in found))
        self.cures = {name: cure for name, _value, cure in reversed(found)}


def rules_of(studio: Studio) -> Rules:
    """Return the rules in force for a studio: the defaults, and the owner's numbers where she set any."""
    newest = RuleSet.objects.filter(studio=studio).order_by("-version").first()
    closed = studio.closing_days.values_list("date", flat=True)
    return in_force(newest.values if newest else {}, studio.region, closed, newest.at if newest else None)


def in_force(
    values: Mapping[str, object], region: str, closed: Iterable[date] = (), since: datetime | None = None
) -> Rules:
    """Return the rules that stored ``values`` stand for since ``since``; reminders stay away from days in ``closed``.

    They were within their limits when they were stored. What the region does not allow any more, as the studio has
    moved to another country, is cut off here, so that nothing leaves at such hours and everything else goes on. So is
    what was stored past the limits, by another release or by hand, and what cannot be read is as usual: one studio's
    number must never keep everybody's messages from being planned.
    """
    rules = limits.narrowed(limits.bounded(_read(_readable(values), region)), region)
    hours = rules.reminder_hours
    return replace(rules, since=since, reminder_hours=replace(hours, days_off=hours.days_off | frozenset(closed)))


def rules_from(values: Mapping[str, object], region: str) -> Rules:
    """Return the rules that ``values`` stand for, where all of them may be stored.

    Hours are pairs of minutes since midnight, with the weekdays off as a list after them (Monday is 0; where there is
    none, those of the default). Raises BadRule for a value that cannot be one, and for those beyond their limits
    (``core.limits``). Unknown names do nothing.
    """
    rules = _read(values, region)
    found = list(limits.problems(rules, region))
    if found:
        raise BadRule(
            *((one.name, values.get(one.name, _plain(getattr(rules, one.name))), cure(one, region)) for one in found)
        )
    return rules


def defaults(region: str) -> dict[str, object]:
    """Return every number as it is stored where the owner set none."""
    return to_values(_read({}, region))


def to_values(rules: Rules) -> dict[str, object]:
    """Return every number of ``rules`` as it is stored."""
    return {name: _plain(getattr(rules, name)) for name in limits.NUMBERS}


def _plain(value: object) -> object:
    """As JSON keeps it."""
    if isinstance(value, Hours):
        return [value.opens, value.closes, sorted(value.weekdays_off)]
    return [_plain(one) for one in value] if isinstance(value, tuple) else value


def _read(values: Mapping[str, object], region: str) -> Rules:
    given: dict[str, object] = {"test_everyone": region in timing.EVERYONE_TESTED_IN}
    for name in limits.NUMBERS:
        if name in values:
            given[name] = _rule(name, values[name])
    return replace(DEFAULTS, **given)  # type: ignore[arg-type]  # each was read as its default's type


def _readable(values: Mapping[str, object]) -> dict[str, object]:
    return {name: value for name, value in values.items() if name not in limits.NUMBERS or _can_be_read(name, value)}


def _can_be_read(name: str, value: object) -> bool:
    try:
        _rule(name, value)
    except BadRule:
        log.exception("a stored rule cannot be read: it is as usual")
        return False
    return True


def _rule(name: str, value: object) -> object:
    default = getattr(DEFAULTS, name)
    try:
        if isinstance(default, Hours):
            return _hours(value, default)
        return _READERS.get(name, _READERS_BY_TYPE.get(type(default), _whole))(value)
    except (TypeError, ValueError, IndexError) as error:
        cure = _CURES[name] if name in _CURES else _CURES[type(default)]
        raise BadRule((name, value, f"write {cure}.")) from error


def cure(problem: Problem, region: str) -> str:
    """Return what to do about a number beyond its limits; hours as they are said in ``region``."""
    figures = {name: _figure(name, value, problem, region) for name, value in problem.figures.items()}
    if problem.figures.get("unit") is Unit.CLOCK:
        return _("write an hour from %(least)s to %(most)s.") % figures
    return _SAID[problem.why]() % figures


def _figure(name: str, value: object, problem: Problem, region: str) -> object:
    unit = problem.figures.get("unit")
    if name in ("opens", "closes", "at") or (unit is Unit.CLOCK and isinstance(value, int)):
        minutes = int(str(value))
        at = time(minutes // 60 % 24, minutes % 60)
        return say.hour(at, say.language_of(get_language() or "en"), region)
    if name == "full" or (unit is Unit.SHARE and isinstance(value, float)):
        return f"{float(str(value)):.0%}".replace("%", " %")
    if name == "unit":
        return UNITS[Unit(str(value))]()
    return value


# Functions, so that each is said in the language of whoever reads it.
UNITS: dict[Unit, Callable[[], str]] = {
    Unit.DAYS: lambda: _("days"),
    Unit.HOURS: lambda: _("hours"),
    Unit.MINUTES: lambda: _("minutes"),
    Unit.OPEN_MINUTES: lambda: _("minutes within your sending hours"),
    Unit.CLOCK: lambda: "",  # an hour says so itself
    Unit.SHARE: lambda: _("of a set"),
    Unit.CHECKS: lambda: _("checks"),
    Unit.SETS: lambda: _("sets"),
    Unit.TIMES: lambda: _("times"),
    Unit.REMINDERS: lambda: _("reminders"),
    Unit.CHANCE: lambda: _("of one"),
}
_SAID: dict[Why, Callable[[], str]] = {
    Why.BEYOND: lambda: _("write a number from %(least)s to %(most)s %(unit)s."),
    Why.OUTSIDE: lambda: _(
        "open at %(opens)s or later and close at %(closes)s or earlier: outside these hours nobody is to be disturbed, "
        "in the United States by law."
    ),
    Why.TOO_SHORT: lambda: _("leave at least %(hours)s hours open, or what falls due finds no moment to go."),
    Why.NO_DAYS_OFF: lambda: _("open on every day of the week: instructions and checks cannot wait for another day."),
    Why.DAYS_OFF: lambda: _("take at most %(most)s days of the week off."),
    Why.CHECK_DAYS: lambda: _(
        "write three numbers of days, each above the one before: the first from 1 to 4, the second by day 10, the "
        "third by day 14. Reactions mostly show within these days."
    ),
    Why.TIERS: lambda: _(
        "write 1 to 6 steps from 15 to 300 minutes: the less is left, the longer a fill takes. Shares are 5 to 95 %%."
    ),
    Why.CLOSED_THEN: lambda: _(
        "sending hours close at %(closes)s, so everything would wait for the next day: write an earlier hour, or close "
        "them later."
    ),
    Why.CLOSED_BEFORE: lambda: _(
        "close later than %(at)s, when reminders fall due, or all would wait for the next day."
    ),
    Why.AFTER_EVENING: lambda: _(
        "write %(most)s days or fewer: the second instructions follow on the first, and more days before is earlier."
    ),
    Why.TEST_TOO_LATE: lambda: _("write %(least)s days or more, so that a day is left to come for the test."),
    Why.TEST_UNBOOKED: lambda: _(
        "write %(most)s hours or fewer: she is asked until then, and must still be able to book a test that counts."
    ),
    Why.LEVELS: lambda: _(
        "write more than %(full)s: a set is at the fill level first, and later at the full-set level."
    ),
    Why.NOBODY_FIRST: lambda: _("write %(least)s minutes or more: the next person is asked before she is told so."),
}


def _whole(value: object) -> int:
    if isinstance(value, bool) or not isinstance(value, int) or value < 0:
        raise ValueError
    return value


def _clock(value: object) -> int:
    if _whole(value) >= DAY_MINUTES:
        raise ValueError
    return _whole(value)


def _yes_or_no(value: object) -> bool:
    if not isinstance(value, bool):
        raise TypeError
    return value


def _level(value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float) or not 0 < value < 1:
        raise ValueError
    return float(value)


def _list(value: object) -> Sequence[object]:
    if not isinstance(value, list | tuple):
        raise TypeError
    return value


def _hours(value: object, default: Hours) -> Hours:
    opens, closes, *off = _list(value)
    weekdays = frozenset(_whole(day) for day in _list(off[0])) if off else default.weekdays_off
    if len(off) > 1 or not weekdays <= frozenset(range(7)):
        raise ValueError
    return Hours(_whole(opens), _whole(closes), weekdays)


def _check_days(value: object) -> tuple[int, int, int]:
    first, second, third = (_whole(days) for days in _list(value))
    if not first < second < third:
        raise ValueError
    return first, second, third


def _tiers(value: object) -> tuple[tuple[float, int], ...]:
    pairs = [tuple(_list(pair)) for pair in _list(value)]
    tiers = tuple((0.0 if share == 0 else _level(share), _whole(minutes)) for share, minutes in pairs)
    shares = [share for share, _minutes in tiers]
    if not shares or shares[-1] != 0 or any(before <= after for before, after in zip(shares, shares[1:], strict=False)):
        raise ValueError
    return tiers


_READERS: dict[str, Callable[[object], object]] = {
    "at": _clock,
    "evening_at": _clock,
    "check_days": _check_days,
    "fill_minutes": _tiers,
}
_READERS_BY_TYPE: dict[type, Callable[[object], object]] = {int: _whole, bool: _yes_or_no, float: _level}
_CURES: dict[object, str] = {
    "at": "minutes since midnight, under 1440",
    "evening_at": "minutes since midnight, under 1440",
    "check_days": "three whole numbers of days, each above the one before",
    "fill_minutes": "pairs of a share and minutes, the shares falling to 0",
    int: "a whole number, 0 or above",
    bool: "true or false",
    float: "a share above 0 and below 1",
    Hours: "two numbers of minutes since midnight, the first below the second, and the weekdays off (Monday is 0)",
}
