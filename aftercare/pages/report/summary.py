"""The few figures that matter most, for the top of the page: each taken from its section, where all of it stands."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from django.utils.translation import gettext as _

from aftercare.core.delivery import State
from aftercare.pages.report.report import Section
from aftercare.pages.report.sets import WAYS
from aftercare.pages.report.table import Row, hours, of_them
from aftercare.pages.report.talk import URGENT
from aftercare.pages.shown import STATES


@dataclass(frozen=True, slots=True)
class Line:
    """One of them: the section that it is from, and what it says."""

    key: str
    title: str
    words: str


def summary(sections: Iterable[Section]) -> list[Line]:
    """Return those that there is anything to say of."""
    found = []
    for section in sections:
        said = "; ".join(_said(section))
        if said:
            found.append(Line(section.key, section.title, said))
    return found


def _said(section: Section) -> Iterator[str]:
    if section.key == "fills":
        names = {str(words) for words in WAYS.values()}
        yield from (f"{row.name}: {of_them(row.values[2])}" for row in _rows(section, "ways") if row.name in names)
    elif section.key == "reactions":
        for row in _rows(section, "all"):
            yield _("%(n)s after %(sets)s sets") % {"n": row.values[1], "sets": row.values[0]}
    elif section.key == "answers":
        urgent = {str(URGENT[name]) for name in ("emergency", "same_day")}
        for row in _rows(section, "waits"):
            half = row.values[2].value
            if row.name in urgent and half is None:
                yield _("%(what)s: not half of them yet") % {"what": row.name}
            elif row.name in urgent:
                yield _("%(what)s: half of them within %(long)s") % {"what": row.name, "long": hours(half)}
    elif section.key == "messages":
        counts = {row.name: row.values[3] for row in _rows(section, "states")}
        if counts:
            lost = counts.get(str(STATES[State.UNDELIVERED]), 0)
            yield _("%(n)s in all, %(lost)s not delivered") % {"n": sum(counts.values()), "lost": lost}


def _rows(section: Section, key: str) -> Sequence[Row]:
    return next((table.rows for table in section.tables if table.key == key), ())
