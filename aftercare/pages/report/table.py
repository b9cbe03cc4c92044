"""A table of figures: the same rows for the page, in words, and for a spreadsheet, in plain numbers."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Any

from django.utils.formats import number_format
from django.utils.functional import Promise
from django.utils.translation import get_language, gettext_lazy, ngettext
from django.utils.translation import gettext as _

from aftercare.core import say
from aftercare.core.rates import Figure
from aftercare.core.waits import Wait
from aftercare.pages.report.pictures import Picture

Plain = str | int | float | None
RISKY = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")  # what a spreadsheet calculates
BOM = "\ufeff"  # or a spreadsheet program takes UTF-8 for something else


@dataclass(frozen=True, slots=True)
class Cell:
    """What a cell says, and below it what was counted and how sure that is."""

    words: str
    sure: str = ""
    counted: str = ""


@dataclass(frozen=True, slots=True)
class Kind:
    """How a column's values are written: in words, and as plain numbers under these endings of its name."""

    say: Callable[[Any], Cell]
    plain: Callable[[Any], Sequence[Plain]]
    endings: Sequence[str | Promise] = ("",)
    is_number: bool = True


@dataclass(frozen=True, slots=True)
class Row:
    """One row: its name, and its values in the order of the columns."""

    name: str
    values: Sequence[Any]
    few: bool = False  # too few cases stand behind it to say much
    detail: str = ""  # how many stand behind it, for a picture


@dataclass(frozen=True, slots=True)
class Table:
    """A table; ``key`` names it in addresses."""

    key: str
    title: str
    first: str  # what its rows are
    columns: Sequence[tuple[str, Kind]]
    rows: Sequence[Row]
    pictures: Sequence[Picture] = ()
    folded: bool = False  # the numbers behind pictures: folded away on the page

    @property
    def lines(self) -> list[tuple[Row, list[tuple[Cell, bool]]]]:
        """Return the rows as the page shows them: cells, and whether each holds a number."""
        return [(row, self._cells(row)) for row in self.rows]

    def _cells(self, row: Row) -> list[tuple[Cell, bool]]:
        pairs = zip(self.columns, row.values, strict=True)
        return [(_cell(kind, value), kind.is_number) for (_name, kind), value in pairs]

    @property
    def heads(self) -> list[tuple[str, bool]]:
        return [(name, kind.is_number) for name, kind in self.columns]


def _cell(kind: Kind, value: Any) -> Cell:
    return Cell("–") if value is None else kind.say(value)


def as_csv(table: Table, beside: Sequence[tuple[str, str]]) -> str:
    """Write it for a spreadsheet (RFC 4180); ``beside`` are columns that say the same in each row.

    Source of what is made harmless: OWASP, "CSV Injection".
    """
    out = io.StringIO()
    sheet = csv.writer(out, lineterminator="\r\n")
    heads = [f"{name}{ending}" for name, kind in table.columns for ending in kind.endings]
    sheet.writerow([harmless(one) for one in [table.first, *heads, *(name for name, _value in beside)]])
    for row in table.rows:
        cells: list[Plain] = [row.name]
        for (_name, kind), value in zip(table.columns, row.values, strict=True):
            cells += [None] * len(kind.endings) if value is None else kind.plain(value)
        sheet.writerow([_text(one) for one in [*cells, *(value for _name, value in beside)]])
    return BOM + out.getvalue()


def _text(value: Plain) -> str:
    if isinstance(value, float):  # one below 0 is a number, too: nothing to calculate
        return f"{value:.6g}"
    return "" if value is None else harmless(str(value))


def harmless(text: str) -> str:
    """Return a cell that no spreadsheet calculates: with an apostrophe ahead of what would make it.

    >>> harmless("=1+1"), harmless("12.5")
    ("'=1+1", '12.5')
    """
    return f"'{text}" if text.startswith(RISKY) else text


def _number(value: float, digits: int = 0) -> str:
    return str(number_format(round(value, digits) + 0.0, digits))


def _between(low: float | None, high: float | None, say: Callable[[float], str]) -> str:
    if low is None and high is None:
        return ""
    if high is None:
        return _("%(low)s or more") % {"low": say(low or 0.0)}
    return _("%(low)s to %(high)s") % {"low": say(low or 0.0), "high": say(high)}


def cost(currency: str) -> Kind:
    """Return a column of sums in one currency (ISO 4217)."""
    return Kind(
        lambda amount: Cell(say.money(amount, currency, get_language() or "en")),
        lambda amount: [f"{amount.normalize():f}"],  # to the last digit, however large: some coins are small
        (f" ({currency})",),
    )


def _can_be(share: float) -> float:
    """Return a share as it can be: the range of a mean of few may reach beyond none and all."""
    return min(1.0, max(0.0, share))


def _percent(figure: Figure) -> Cell:
    def say(share: float) -> str:
        return _number(100 * _can_be(share))

    return Cell(f"{say(figure.value)} %", _between(figure.low, figure.high, say))


def hits(figure: Figure) -> int:
    """How many of the cases behind a rate are counted in it."""
    return round(figure.value * figure.cases)


def of_them(figure: Figure) -> str:
    """Say a rate by its counts: "17 of 33"."""
    return _("%(n)s of %(all)s") % {"n": _number(hits(figure)), "all": _number(figure.cases)}


def _rate(figure: Figure) -> Cell:
    return replace(_percent(figure), counted=of_them(figure))


def _per_hundred(figure: Figure) -> Cell:
    def say(share: float) -> str:
        return _number(100 * share, 1)

    return Cell(say(figure.value), _between(figure.low, figure.high, say))


def hours(value: float) -> str:
    """Say hours as people do: "12 min", "3.5 h", "4 days".

    >>> hours(0.2)
    '12 min'
    """
    if value < 1:
        return _("%(n)s min") % {"n": _number(60 * value)}
    if value < 48:
        return _("%(n)s h") % {"n": _number(value, 1)}
    return ngettext("%(n)s day", "%(n)s days", round(value / 24)) % {"n": _number(value / 24)}


def _wait(wait: Wait) -> Cell:
    said = hours(wait.value) if wait.value is not None else _("not yet")
    return Cell(said, _between(wait.low, wait.high, hours) if wait.low is not None else "")


def _hundredfold(figure: Figure) -> list[Plain]:
    return [None if one is None else 100 * one for one in (figure.value, figure.low, figure.high)]


_SURE = ("", gettext_lazy(", low"), gettext_lazy(", high"))
_SURE_PERCENT = (gettext_lazy(", %"), gettext_lazy(", low, %"), gettext_lazy(", high, %"))
_SURE_HOURS = (gettext_lazy(", hours"), gettext_lazy(", low, hours"), gettext_lazy(", high, hours"))
COUNT = Kind(lambda value: Cell(_number(value)), lambda value: [value])
DAYS = Kind(lambda value: Cell(_number(value, 1)), lambda value: [round(value, 1)])
PERCENT = Kind(
    _percent,
    lambda figure: [None if one is None else 100 * _can_be(one) for one in (figure.value, figure.low, figure.high)],
    _SURE_PERCENT,
)
PER_HUNDRED = Kind(_per_hundred, _hundredfold, _SURE)
POINTS = PER_HUNDRED  # a difference of shares
RATE = Kind(
    _rate,
    lambda figure: [hits(figure), figure.cases, *_hundredfold(figure)],
    (gettext_lazy(", how many"), gettext_lazy(", of how many"), *_SURE_PERCENT),
)
WAIT = Kind(_wait, lambda wait: [wait.value, wait.low, wait.high], _SURE_HOURS)
WORDS = Kind(lambda value: Cell(value), lambda value: [value], is_number=False)
