"""The rules in force for a studio: the defaults, and the owner's numbers."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import fields, replace
from datetime import date

from aftercare.core import timing
from aftercare.core.hours import Hours
from aftercare.core.timing import Rules
from aftercare.models import RuleSet
from studio.models import Studio

DEFAULTS = Rules()
DAY_MINUTES = 24 * 60


class BadRule(ValueError):  # noqa: N818  read by people as it stands
    """A stored number cannot be a rule. The message names the rule, the value and the cure."""


def rules_of(studio: Studio) -> Rules:
    """Return the rules in force for a studio: the defaults, and the owner's numbers where she set any."""
    newest = RuleSet.objects.filter(studio=studio).order_by("-version").first()
    closed = studio.closing_days.values_list("date", flat=True)
    return rules_from(newest.values if newest else {}, studio.region, closed)


def rules_from(values: Mapping[str, object], region: str, closed: Iterable[date] = ()) -> Rules:
    """Return the rules that stored ``values`` stand for; reminders stay away from the days in ``closed``.

    Hours are pairs of minutes since midnight, with the weekdays off as a list after them (Monday is 0; where there is
    none, those of the default). Raises BadRule for a value that cannot be one. Unknown names do nothing.
    """
    given: dict[str, object] = {"test_everyone": region in timing.EVERYONE_TESTED_IN}
    for one in fields(Rules):
        if one.name in values:
            given[one.name] = _rule(one.name, values[one.name])
    rules: Rules = replace(DEFAULTS, **given)  # type: ignore[arg-type]  # each was read as its default's type
    if not rules.full_set_level < rules.fill_level:
        raise BadRule(
            f"The rules full_set_level and fill_level are {rules.full_set_level} and {rules.fill_level}: "
            "a set is at the fill level first, so make that the higher one."
        )
    hours = rules.reminder_hours
    return replace(rules, reminder_hours=replace(hours, days_off=hours.days_off | frozenset(closed)))


def _rule(name: str, value: object) -> object:
    default = getattr(DEFAULTS, name)
    try:
        if isinstance(default, Hours):
            return _hours(value, default)
        return _READERS.get(name, _READERS_BY_TYPE.get(type(default), _whole))(value)
    except (TypeError, ValueError, IndexError) as error:
        cure = _CURES[name] if name in _CURES else _CURES[type(default)]
        raise BadRule(f"The rule {name} cannot be {value!r}: write {cure}.") from error


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
