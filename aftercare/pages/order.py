"""The order of the morning list: what comes first at seven in the morning, and under which heading."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date

from aftercare.models import Flag
from aftercare.pages.matter import Matter
from aftercare.pages.promises import EARLY, Unkept

GROUPS = (
    "emergency",  # nobody has it
    "emergency taken",
    "same day",
    "coming in",  # an open matter of hers, and she comes in today
    "tests today",  # a patch test missing or not answered, of whoever comes in today
    "not reached",
    "not understood",
    "not delivered",
    "no address",
    "not marked",
    "unhappy",
    "tests ahead",
    "rest",
    "early",
)
REST = ("watch", "none")
_OF_LINES = {
    "not delivered": "not delivered",
    "unsure": "not delivered",
    "no address": "no address",
    "not marked": "not marked",
    "unhappy": "unhappy",
    EARLY: "early",
}


@dataclass(slots=True)
class Group:
    """What stands under one heading."""

    name: str
    matters: list[Matter] = field(default_factory=list)
    lines: list[Unkept] = field(default_factory=list)


def grouped(matters: Iterable[Matter], lines: Iterable[Unkept], today: date) -> Sequence[Group]:
    """Return the groups that have anything, the most pressing first; within one, what has waited longest."""
    groups = {name: Group(name) for name in GROUPS}
    for matter in matters:
        groups[_of_matter(matter, today)].matters.append(matter)
    for line in lines:
        groups[_of_line(line, today)].lines.append(line)
    for group in groups.values():
        group.matters.sort(key=lambda matter: (matter.flag.urgency == "none", matter.since, matter.flag.pk))
    return [group for group in groups.values() if group.matters or group.lines]


def _of_matter(matter: Matter, today: date) -> str:
    flag = matter.flag
    taken = flag.state == Flag.State.TAKEN
    if flag.urgency == "emergency":
        return "emergency taken" if taken else "emergency"
    if flag.urgency == "same_day":
        return "not reached" if flag.try_again_at else "same day"
    if matter.comes_in_on(today):
        return "coming in"
    if flag.try_again_at:
        return "not reached"
    return "rest" if flag.urgency in REST else "not understood"


def _of_line(line: Unkept, today: date) -> str:
    if line.kind in _OF_LINES:
        return _OF_LINES[line.kind]
    is_today = line.visit is not None and line.visit.starts_at.astimezone(line.book.studio.zone).date() == today
    return "tests today" if is_today else "tests ahead"
