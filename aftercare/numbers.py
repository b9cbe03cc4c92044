"""The owner's numbers in words: what each is for, in which group it stands, and how its value is said."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import time
from typing import Any

from babel import Locale
from django.utils.functional import Promise
from django.utils.translation import get_language, gettext_lazy, ngettext
from django.utils.translation import gettext as _

from aftercare import facts
from aftercare.core import limits, say
from aftercare.core.limits import Unit

HOURS = limits.HOURS
ONE_IN = (10, 20, 50, 100, 1000)


@dataclass(frozen=True, slots=True)
class Number:
    """One number: its name in the rules, what it is called, and a plain sentence on what it does."""

    name: str
    label: Promise
    sentence: Promise


@dataclass(frozen=True, slots=True)
class Group:
    """Numbers that are looked at together."""

    slug: str
    title: Promise
    numbers: tuple[Number, ...]
    note: Promise | str = ""

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(number.name for number in self.numbers)


GROUPS: tuple[Group, ...] = (
    Group(
        "before",
        gettext_lazy("Before a visit"),
        (
            Number(
                "at",
                gettext_lazy("Hour of instructions, checks and reminders"),
                gettext_lazy(
                    "All of these fall due at this hour, on her own clock: it also moves the checks after a visit and "
                    "the reminders of a fill."
                ),
            ),
            Number("prepare_days", gettext_lazy("First instructions"), gettext_lazy("So many days before her visit.")),
            Number(
                "prepare_last_hours",
                gettext_lazy("First instructions at the latest"),
                gettext_lazy("So many hours before the visit; after that they would come too late to be of use."),
            ),
            Number(
                "evening_days",
                gettext_lazy("Second instructions"),
                gettext_lazy("So many days before a full set, or before a new client’s first fill."),
            ),
            Number("evening_at", gettext_lazy("Hour of the second instructions"), gettext_lazy("On her own clock.")),
            Number(
                "evening_last_hours",
                gettext_lazy("Second instructions at the latest"),
                gettext_lazy("So many hours before the visit."),
            ),
        ),
    ),
    Group(
        "patch-tests",
        gettext_lazy("Patch tests"),
        (
            Number(
                "test_everyone",
                gettext_lazy("Who is patch-tested"),
                gettext_lazy(
                    "Before a first set, and again where the last is long ago. Some insurers ask for everyone."
                ),
            ),
            Number(
                "patch_test_days",
                gettext_lazy("She is asked to come for a test"),
                gettext_lazy("So many days before her set."),
            ),
            Number(
                "patch_test_last_hours",
                gettext_lazy("She is asked until"),
                gettext_lazy("So many hours before her set; a reaction can take days to show."),
            ),
            Number(
                "test_valid_days",
                gettext_lazy("A test counts for"),
                gettext_lazy("So many days; and so long after her last set none is due."),
            ),
            Number(
                "test_booked_hours",
                gettext_lazy("A booked test counts"),
                gettext_lazy("If it is to be at least so many hours before her set."),
            ),
        ),
        gettext_lazy("A patch test without a sign does not rule a reaction out."),
    ),
    Group(
        "after",
        gettext_lazy("After a visit"),
        (
            Number(
                "care_minutes", gettext_lazy("Aftercare"), gettext_lazy("So many minutes after the end of the visit.")
            ),
            Number(
                "care_last_hours",
                gettext_lazy("Aftercare at the latest"),
                gettext_lazy("So many hours after the end; the first day is when most of it matters."),
            ),
        ),
    ),
    Group(
        "checks",
        gettext_lazy("How her eyes are"),
        (
            Number(
                "check_days",
                gettext_lazy("Days of the checks"),
                gettext_lazy("So many days after the visit she is asked how her eyes are."),
            ),
            Number(
                "check_last_hours",
                gettext_lazy("A check at the latest"),
                gettext_lazy("So many hours after its moment, where it could not go before."),
            ),
            Number(
                "set_checks",
                gettext_lazy("Checks after a regular’s set"),
                gettext_lazy("Patch tests, first sets and the first set after a reaction always get all three."),
            ),
            Number("other_checks", gettext_lazy("Checks after a removal or a lift"), gettext_lazy("One at least.")),
            Number(
                "sensitive_sets",
                gettext_lazy("Sets of a sensitive client with all three"),
                gettext_lazy("Her first so many sets here."),
            ),
        ),
    ),
    Group(
        "reminders",
        gettext_lazy("Reminders and levels"),
        (
            Number(
                "fill_level",
                gettext_lazy("A set needs a fill at"),
                gettext_lazy("The share of the set that is left. The forecast says on which day it comes to that."),
            ),
            Number(
                "full_set_level",
                gettext_lazy("Only a new set helps at"),
                gettext_lazy("The share left under which a fill takes as long as a full set."),
            ),
            Number(
                "lead_days",
                gettext_lazy("Reminder before the set needs a fill"),
                gettext_lazy(
                    "The reminder goes so many days before the day on which her set needs the fill: as long as clients "
                    "wait for a chair with you."
                ),
            ),
            Number(
                "reminder_after_days",
                gettext_lazy("No reminder sooner than"),
                gettext_lazy("So many days after the set, whatever the forecast says."),
            ),
            Number(
                "early_days",
                gettext_lazy("A set that fails early"),
                gettext_lazy(
                    "Forecast to need a fill sooner than after so many days: her artist is told instead of her."
                ),
            ),
            Number(
                "full_set_last_days",
                gettext_lazy("Reminder of a full set at the latest"),
                gettext_lazy("So many days after the day on which only a new set helps."),
            ),
            Number("reminder_gap_days", gettext_lazy("Between two reminders"), gettext_lazy("At least so many days.")),
            Number(
                "reminder_clear_hours",
                gettext_lazy("Away from checks and missed visits"),
                gettext_lazy(
                    "No reminder within so many hours of a check, or of a visit that she missed or cancelled."
                ),
            ),
            Number(
                "most_declined",
                gettext_lazy("An earlier visit is offered until"),
                gettext_lazy("She has declined one so many times."),
            ),
            Number(
                "go_a_day",
                gettext_lazy("Reminders of a first import"),
                gettext_lazy(
                    "So many leave in a day once you let them go, so that your chairs are not asked for all at once."
                ),
            ),
        ),
    ),
    Group(
        "hours",
        gettext_lazy("Sending hours"),
        (
            Number(
                "hours",
                gettext_lazy("Instructions and checks"),
                gettext_lazy("They leave within these hours, on her own clock."),
            ),
            Number(
                "care_hours",
                gettext_lazy("Aftercare"),
                gettext_lazy("It may leave a little earlier and later: it is waited for."),
            ),
            Number(
                "reminder_hours",
                gettext_lazy("Reminders"),
                gettext_lazy("They leave within these hours, and never on your closing days."),
            ),
        ),
        gettext_lazy("Answers to what she writes, and pages to staff, go at any hour."),
    ),
    Group(
        "fills",
        gettext_lazy("Minutes of a fill"),
        (
            Number(
                "fill_minutes",
                gettext_lazy("Minutes by the share left"),
                gettext_lazy("The day sheet says whether the booked minutes look right for what is likely to be left."),
            ),
            Number(
                "longest_fill_days",
                gettext_lazy("A fill is offered until"),
                gettext_lazy("So many days after the last set; then the day sheet says that your rule offers none."),
            ),
        ),
    ),
    Group(
        "paging",
        gettext_lazy("Paging"),
        (
            Number(
                "page_next_minutes",
                gettext_lazy("The next person is asked after"),
                gettext_lazy("So many minutes in which nobody took an emergency."),
            ),
            Number(
                "nobody_after_minutes",
                gettext_lazy("She is told that nobody could see it after"),
                gettext_lazy("So many minutes, with what to do at once."),
            ),
            Number(
                "page_again_minutes",
                gettext_lazy("Everybody is asked again every"),
                gettext_lazy("So many minutes, as long as nobody takes it."),
            ),
            Number(
                "page_again_times",
                gettext_lazy("So often at most"),
                gettext_lazy("Then it stays at the top of the morning list."),
            ),
            Number(
                "same_day_owner_minutes",
                gettext_lazy("The owner is told of what is for today after"),
                gettext_lazy("So many minutes of your sending hours in which nobody took it."),
            ),
            Number(
                "call_within_minutes",
                gettext_lazy("“A person calls you by”"),
                gettext_lazy(
                    "So many minutes of your sending hours, closing days left out; by ten o’clock of the next day."
                ),
            ),
        ),
    ),
    Group(
        "lots",
        gettext_lazy("Lots of adhesive"),
        (
            Number(
                "lot_chance",
                gettext_lazy("A lot is marked to be looked at"),
                gettext_lazy("Of so many lots like all others, one may ever be marked by chance."),
            ),
        ),
    ),
)
BY_NAME = {number.name: number for group in GROUPS for number in group.numbers}


@dataclass(frozen=True, slots=True)
class Standing:
    """How one number stands: its value and its usual one, in words."""

    number: Number
    value: str
    usual: str
    is_changed: bool


@dataclass(frozen=True, slots=True)
class Difference:
    """One number that differs between two versions."""

    number: Number
    before: str
    after: str


def standing(group: Group, values: Mapping[str, object], region: str) -> Iterator[Standing]:
    """Give each number of a group as the owner's ``values`` have it."""
    usual = facts.defaults(region)
    for number in group.numbers:
        value, default = values.get(number.name, usual[number.name]), usual[number.name]
        yield Standing(number, said(number.name, value, region), said(number.name, default, region), value != default)


def differences(before: Mapping[str, object], after: Mapping[str, object], region: str) -> list[Difference]:
    """Return what differs between two versions of the owner's numbers, in the order of the groups."""
    usual = facts.defaults(region)
    found = []
    for name, number in BY_NAME.items():
        one, other = before.get(name, usual[name]), after.get(name, usual[name])
        if one != other:
            found.append(Difference(number, said(name, one, region), said(name, other, region)))
    return found


def said(name: str, value: Any, region: str) -> str:
    """Say a number's value as it is stored: "3 days", "10:00 am", "9:00 am to 8:00 pm"."""
    if name in HOURS:
        return _hours(value, region)
    if name == "check_days":
        return _("%(days)s days after") % {"days": _listed([str(day) for day in value])}
    if name == "fill_minutes":
        return "; ".join(_tiers(value))
    if name == "test_everyone":
        return _("every client") if value else _("sensitive clients")
    return _UNITS[limits.LIMITS[name].unit](value, region)


def span(name: str, region: str) -> str:
    """Say from where to where a number may go; '' where it is a choice that says so itself."""
    if name in HOURS:
        opens, closes = limits.allowed_hours(region)
        return _("From %(least)s to %(most)s at the widest.") % {
            "least": _clock(opens, region),
            "most": _clock(closes, region),
        }
    limit = limits.LIMITS.get(name)
    if limit is None or limit.unit in (Unit.CHECKS, Unit.CHANCE):
        return ""
    least, most = said(name, _of_kind(limit.least, limit), region), said(name, _of_kind(limit.most, limit), region)
    return _("From %(least)s to %(most)s.") % {"least": least, "most": most}


def _of_kind(end: float, limit: limits.Limit) -> float:
    return end if limit.unit is Unit.SHARE else int(end)


def _clock(minutes: int, region: str) -> str:
    at = time(minutes // 60 % 24, minutes % 60)
    return say.hour(at, say.language_of(get_language() or "en"), region)


def _hours(value: Sequence[Any], region: str) -> str:
    opens, closes, *off = value
    words = _("%(opens)s to %(closes)s") % {"opens": _clock(opens, region), "closes": _clock(closes, region)}
    days = [weekday(day) for day in (off[0] if off else ())]
    return _("%(hours)s, not on %(days)s") % {"hours": words, "days": _listed(days)} if days else words


def weekday(day: int) -> str:
    """Name a day of the week; Monday is 0."""
    names = Locale.parse(say.language_of(get_language() or "en")).days["stand-alone"]["wide"]
    return str(names[day])


def _listed(words: Sequence[str]) -> str:
    if len(words) < 2:
        return "".join(words)
    return _("%(some)s and %(last)s") % {"some": ", ".join(words[:-1]), "last": words[-1]}


def _tiers(value: Sequence[Any]) -> Iterator[str]:
    for share, minutes in value:
        figures = {"share": _share(share, ""), "minutes": minutes}
        yield (
            _("%(minutes)s min from %(share)s left") % figures if share else _("%(minutes)s min below that") % figures
        )


def _share(value: float, _region: str) -> str:
    return _("%(n)s %%") % {"n": round(100 * value)}


_UNITS: dict[Unit, Callable[[Any, str], str]] = {
    Unit.DAYS: lambda n, _region: ngettext("%(n)s day", "%(n)s days", n) % {"n": n},
    Unit.HOURS: lambda n, _region: ngettext("%(n)s hour", "%(n)s hours", n) % {"n": n},
    Unit.MINUTES: lambda n, _region: ngettext("%(n)s minute", "%(n)s minutes", n) % {"n": n},
    Unit.OPEN_MINUTES: lambda n, _region: ngettext("%(n)s minute", "%(n)s minutes", n) % {"n": n},
    Unit.CLOCK: _clock,
    Unit.SHARE: _share,
    Unit.CHECKS: lambda n, _region: ngettext("%(n)s check", "%(n)s checks", n) % {"n": n},
    Unit.SETS: lambda n, _region: ngettext("%(n)s set", "%(n)s sets", n) % {"n": n},
    Unit.TIMES: lambda n, _region: ngettext("%(n)s time", "%(n)s times", n) % {"n": n},
    Unit.REMINDERS: lambda n, _region: ngettext("%(n)s a day", "%(n)s a day", n) % {"n": n},
    Unit.CHANCE: lambda chance, _region: _("1 of %(n)s by chance") % {"n": round(1 / chance)},
}
