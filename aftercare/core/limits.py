"""How far the owner's numbers may go: to what law and sense allow, each with both ends included.

Sources: 47 CFR 64.1200(c)(1), no solicitation by telephone before 8 or after 21 o'clock where the called person is,
from memory; it is kept here for every message of a studio in the United States. All other limits are common practice,
no source: that aftercare comes while it can still help, that a reaction of the next days is asked about, that what must
follow on something does, and that hours are long enough to find a moment in.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, fields, replace
from enum import Enum, StrEnum

from aftercare.core.hours import Hours
from aftercare.core.rules import Rules

HOUR = 60  # minutes
SHORTEST_HOURS = 4 * HOUR
MOST_DAYS_OFF = 4  # weekdays without reminders
MOST_TIERS = 6
CHECK_DAYS = ((1, 4), (2, 10), (3, 14))  # of each of the three checks
FILL_MINUTES = (15, 300)
FILL_SHARES = (0.05, 0.95)
QUIET_IN = frozenset({"US", "PR", "GU", "VI", "AS", "MP"})  # the United States and its territories
QUIET = (8 * HOUR, 21 * HOUR)
ELSEWHERE = (7 * HOUR, 22 * HOUR)


class Unit(StrEnum):
    """What a number counts."""

    DAYS = "days"
    HOURS = "hours"
    MINUTES = "minutes"
    OPEN_MINUTES = "open minutes"
    CLOCK = "clock"  # minutes since midnight
    SHARE = "share"
    CHECKS = "checks"
    SETS = "sets"
    TIMES = "times"
    REMINDERS = "reminders"
    CHANCE = "chance"


@dataclass(frozen=True, slots=True)
class Limit:
    """From where to where a number may go, both included."""

    unit: Unit
    least: float
    most: float


LIMITS: dict[str, Limit] = {
    "at": Limit(Unit.CLOCK, 7 * HOUR, 21 * HOUR),
    "evening_at": Limit(Unit.CLOCK, 7 * HOUR, 21 * HOUR),
    "prepare_days": Limit(Unit.DAYS, 1, 14),
    "prepare_last_hours": Limit(Unit.HOURS, 1, 24),
    "evening_days": Limit(Unit.DAYS, 0, 7),
    "evening_last_hours": Limit(Unit.HOURS, 1, 12),
    "patch_test_days": Limit(Unit.DAYS, 3, 30),
    "patch_test_last_hours": Limit(Unit.HOURS, 24, 240),
    "test_valid_days": Limit(Unit.DAYS, 30, 365),
    "test_booked_hours": Limit(Unit.HOURS, 24, 168),
    "care_minutes": Limit(Unit.MINUTES, 0, 180),
    "care_last_hours": Limit(Unit.HOURS, 4, 48),
    "check_last_hours": Limit(Unit.HOURS, 12, 48),
    "set_checks": Limit(Unit.CHECKS, 1, 3),
    "other_checks": Limit(Unit.CHECKS, 1, 3),
    "sensitive_sets": Limit(Unit.SETS, 1, 20),
    "fill_level": Limit(Unit.SHARE, 0.40, 0.85),
    "full_set_level": Limit(Unit.SHARE, 0.20, 0.60),
    "lead_days": Limit(Unit.DAYS, 0, 21),
    "reminder_after_days": Limit(Unit.DAYS, 5, 28),
    "early_days": Limit(Unit.DAYS, 5, 21),
    "full_set_last_days": Limit(Unit.DAYS, 3, 42),
    "reminder_gap_days": Limit(Unit.DAYS, 2, 30),
    "reminder_clear_hours": Limit(Unit.HOURS, 12, 168),
    "most_declined": Limit(Unit.TIMES, 1, 10),
    "go_a_day": Limit(Unit.REMINDERS, 1, 200),
    "longest_fill_days": Limit(Unit.DAYS, 14, 70),
    "page_next_minutes": Limit(Unit.MINUTES, 5, 30),
    "nobody_after_minutes": Limit(Unit.MINUTES, 15, 120),
    "page_again_minutes": Limit(Unit.MINUTES, 15, 120),
    "page_again_times": Limit(Unit.TIMES, 4, 48),
    "same_day_owner_minutes": Limit(Unit.OPEN_MINUTES, 15, 240),
    "call_within_minutes": Limit(Unit.OPEN_MINUTES, 30, 480),
    "lot_chance": Limit(Unit.CHANCE, 0.001, 0.1),
}
HOURS = ("hours", "care_hours", "reminder_hours")


class Why(Enum):
    """What is wrong with a number."""

    BEYOND = "beyond its limits"
    OUTSIDE = "hours outside those that the region allows"
    TOO_SHORT = "hours too short to find a moment in"
    NO_DAYS_OFF = "weekdays off where every day is needed"
    DAYS_OFF = "too many weekdays off"
    CHECK_DAYS = "days of checks beyond their limits"
    TIERS = "minutes of fills beyond their limits"
    CLOSED_THEN = "an hour of the day after which nothing may leave"
    CLOSED_BEFORE = "hours that close before anything falls due"
    AFTER_EVENING = "the first instructions not before the evening ones"
    TEST_TOO_LATE = "asked for a patch test with no day left to make one"
    TEST_UNBOOKED = "a test that could not be booked in time any more"
    LEVELS = "the fill level not above the full-set level"
    NOBODY_FIRST = "told that nobody could see it before anybody but the first was asked"


@dataclass(frozen=True, slots=True)
class Problem:
    """A number that cannot be: which, why, and the figures that its cure names."""

    name: str
    why: Why
    figures: dict[str, object] = field(default_factory=dict)


def allowed_hours(region: str) -> tuple[int, int]:
    """Return the minutes since midnight between which messages may leave in ``region``, on her own clock.

    >>> allowed_hours("US"), allowed_hours("ES")
    ((480, 1260), (420, 1320))
    """
    return QUIET if region in QUIET_IN else ELSEWHERE


def narrowed(rules: Rules, region: str) -> Rules:
    """Return the rules with hours cut down to what the region allows, as after a move to another country."""
    least, most = allowed_hours(region)
    return replace(
        rules,
        hours=_within(rules.hours, least, most),
        care_hours=_within(rules.care_hours, least, most),
        reminder_hours=_within(rules.reminder_hours, least, most),
    )


def bounded(rules: Rules) -> Rules:
    """Return the rules with each number that is beyond its limit at the limit, and days of checks as they usually are.

    >>> bounded(replace(Rules(), prepare_days=10**9)).prepare_days
    14
    """
    numbers = {name: getattr(rules, name) for name in LIMITS}
    inside = {name: min(max(number, LIMITS[name].least), LIMITS[name].most) for name, number in numbers.items()}
    kept = {name: type(numbers[name])(number) for name, number in inside.items() if number != numbers[name]}
    spans = zip(rules.check_days, CHECK_DAYS, strict=True)
    days = rules.check_days if all(least <= day <= most for day, (least, most) in spans) else Rules().check_days
    return replace(rules, check_days=days, **kept)


def _within(hours: Hours, least: int, most: int) -> Hours:
    opens, closes = max(hours.opens, least), min(hours.closes, most)
    if (opens, closes) == (hours.opens, hours.closes):
        return hours
    return replace(hours, opens=opens, closes=closes) if opens < closes else replace(hours, opens=least, closes=most)


def problems(rules: Rules, region: str) -> Iterator[Problem]:
    """Give everything by which ``rules`` go beyond what law and sense allow in ``region``; nothing where they do not.

    >>> [problem.why.name for problem in problems(replace(Rules(), prepare_days=15), "US")]
    ['BEYOND']
    """
    for name, limit in LIMITS.items():
        if not limit.least <= getattr(rules, name) <= limit.most:
            yield Problem(name, Why.BEYOND, {"least": limit.least, "most": limit.most, "unit": limit.unit})
    for name in HOURS:
        yield from _of_hours(name, getattr(rules, name), region)
    spans = zip(rules.check_days, CHECK_DAYS, strict=True)
    if not all(least <= day <= most for day, (least, most) in spans):
        yield Problem("check_days", Why.CHECK_DAYS, {"spans": CHECK_DAYS})
    if not _are_tiers(rules.fill_minutes):
        yield Problem("fill_minutes", Why.TIERS, {"minutes": FILL_MINUTES, "shares": FILL_SHARES, "most": MOST_TIERS})
    yield from _together(rules)


def _of_hours(name: str, hours: Hours, region: str) -> Iterator[Problem]:
    least, most = allowed_hours(region)
    if hours.opens < least or hours.closes > most:
        yield Problem(name, Why.OUTSIDE, {"opens": least, "closes": most})
    if hours.closes - hours.opens < SHORTEST_HOURS:
        yield Problem(name, Why.TOO_SHORT, {"hours": SHORTEST_HOURS // HOUR})
    if name != "reminder_hours" and hours.weekdays_off:
        yield Problem(name, Why.NO_DAYS_OFF)
    elif len(hours.weekdays_off) > MOST_DAYS_OFF:
        yield Problem(name, Why.DAYS_OFF, {"most": MOST_DAYS_OFF})


def _are_tiers(tiers: tuple[tuple[float, int], ...]) -> bool:
    """The less is left, the longer a fill takes; the last tier is of whatever is less than the one before."""
    minutes = [long for _share, long in tiers]
    shares = [share for share, _long in tiers[:-1]]
    return (
        1 <= len(tiers) <= MOST_TIERS
        and all(FILL_MINUTES[0] <= long <= FILL_MINUTES[1] for long in minutes)
        and all(FILL_SHARES[0] <= share <= FILL_SHARES[1] for share in shares)
        and minutes == sorted(minutes)
    )


def _together(rules: Rules) -> Iterator[Problem]:
    """What two numbers must keep to together; the one named is the one that its owner more likely means to change."""
    for name in ("at", "evening_at"):
        if getattr(rules, name) >= rules.hours.closes:
            yield Problem(name, Why.CLOSED_THEN, {"closes": rules.hours.closes})
    if rules.at >= rules.reminder_hours.closes:
        yield Problem("reminder_hours", Why.CLOSED_BEFORE, {"at": rules.at})
    if rules.evening_days >= rules.prepare_days:
        yield Problem("evening_days", Why.AFTER_EVENING, {"most": rules.prepare_days - 1})
    if rules.patch_test_days * 24 < rules.patch_test_last_hours + 24:
        yield Problem("patch_test_days", Why.TEST_TOO_LATE, {"least": -(-rules.patch_test_last_hours // 24) + 1})
    if rules.test_booked_hours > rules.patch_test_last_hours:
        yield Problem("test_booked_hours", Why.TEST_UNBOOKED, {"most": rules.patch_test_last_hours})
    if not rules.full_set_level < rules.fill_level:
        yield Problem("fill_level", Why.LEVELS, {"full": rules.full_set_level})
    if rules.page_next_minutes >= rules.nobody_after_minutes:
        yield Problem("nobody_after_minutes", Why.NOBODY_FIRST, {"least": rules.page_next_minutes + 1})


NUMBERS = tuple(one.name for one in fields(Rules) if one.name != "since")  # what the owner may change
