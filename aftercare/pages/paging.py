"""Pages of a long list, told by where they begin: what is shown costs the same whatever lies around it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Generic, TypeVar

from django.db.models import Model, Q, QuerySet

Row = TypeVar("Row", bound=Model)
Key = tuple[datetime, int]  # a row's moment, and its number among those of one moment
BEFORE, AFTER = "b", "a"
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Stream(Generic[Row]):
    """A part of a list that an index has in order; ``moment`` is the field that it is ordered by, never null here."""

    rows: QuerySet[Row]
    moment: str

    def read(self, start: Key | None, most: int, *, falling: bool) -> list[Row]:
        """Return the next rows after ``start``, from the newest back where ``falling``."""
        rows, sign, than = self.rows, "-" if falling else "", "lt" if falling else "gt"
        if start is not None:
            at, pk = start
            further = Q(**{f"{self.moment}__{than}": at}) | Q(**{f"pk__{than}": pk})
            rows = rows.filter(further, **{f"{self.moment}__{than}e": at})  # the last lets the index begin there
        return list(rows.order_by(f"{sign}{self.moment}", f"{sign}pk")[:most])


@dataclass(frozen=True, slots=True)
class Stretch(Generic[Row]):
    """One page of rows, and what to ask for to get those before and after it; '' where there are none."""

    rows: list[Row]
    before: str
    after: str


def stretch(
    streams: Sequence[Stream[Row]], key: Callable[[Row], Key], page: str, size: int, *, falling: bool
) -> Stretch[Row]:
    """Merge the streams and return the page asked for; what asks for none is the first. A query a stream."""
    where = _read(page)
    back = where is not None and where[0] == BEFORE
    start = where[1] if where else None
    way = falling != back  # backwards, the list is read from there to its beginning
    found = [row for stream in streams for row in stream.read(start, size + 1, falling=way)]
    found.sort(key=key, reverse=way)
    more = len(found) > size
    if back and not more:  # fewer than a page lie before it: the list's beginning is a full one
        return stretch(streams, key, "", size, falling=falling)
    rows = found[:size][::-1] if back else found[:size]
    before = _write(BEFORE, key(rows[0])) if rows and start is not None else ""
    after = _write(AFTER, key(rows[-1])) if rows and (more or back) else ""
    return Stretch(rows, before, after)


def _write(way: str, key: Key) -> str:
    return f"{way}{(key[0] - _EPOCH) // timedelta(microseconds=1)}-{key[1]}"


def _read(page: str) -> tuple[str, Key] | None:
    moment, _dash, pk = page[1:].partition("-")
    if page[:1] not in (BEFORE, AFTER) or not (moment.isdecimal() and pk.isdecimal()) or len(page) > 40:
        return None
    try:
        return page[0], (_EPOCH + timedelta(microseconds=int(moment)), min(int(pk), 2**63 - 1))
    except OverflowError:
        return None
