"""Pages of a long list without counting it: what is shown costs the same whatever lies behind it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

from django.db.models import Model, QuerySet

Row = TypeVar("Row", bound=Model)
LAST = 500  # pages; further on a filter is the better way


@dataclass(frozen=True, slots=True)
class Stretch(Generic[Row]):
    """One page of rows, and whether there are pages before and after it."""

    rows: list[Row]
    number: int
    has_next: bool

    @property
    def has_previous(self) -> bool:
        return self.number > 1

    @property
    def before(self) -> int:
        return self.number - 1

    @property
    def after(self) -> int:
        return self.number + 1


def stretch(rows: QuerySet[Row], page: str, size: int) -> Stretch[Row]:
    """Return the page asked for; what is no page number is the first."""
    number = min(max(1, int(page)), LAST) if page.isdecimal() and len(page) < 6 else 1
    begin = (number - 1) * size
    found = list(rows[begin : begin + size + 1])
    return Stretch(found[:size], number, len(found) > size and number < LAST)
