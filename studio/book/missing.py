"""Visits that a book once named and a file lacks: they stay as they are, but for those that the file says are off."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime

from studio.book.rows import Book
from studio.models import Studio, Visit, VisitRef

MISSING = "missing"  # beside what a book last said of a visit: that it was called off by being left out
Days = tuple[date, date]  # first and last, on the studio's wall clock


@dataclass(frozen=True, slots=True)
class Missing:
    """A visit that the file lacks; ``pk`` is that of the book's reference for it."""

    pk: int
    reference: str
    starts_at: datetime
    status: str


def find(book: Book, studio: Studio) -> list[Missing]:
    """Return the known visits that the file lacks, the latest first."""
    if book.bad and not book.seen:
        return []  # the file could not be read at all: it says nothing of what it lacks
    known = VisitRef.objects.filter(studio=studio, source=book.source)
    rows = known.values_list("pk", "reference", "visit__starts_at", "visit__status")
    gone = [Missing(*row) for row in rows.iterator(2000) if row[1] not in book.seen]
    return sorted(gone, key=lambda one: (one.starts_at, one.reference), reverse=True)


def called_off(gone: Iterable[Missing], book: Book, studio: Studio, whole: Days | None) -> list[Missing]:
    """Return those that the file says are off and that are booked still.

    A calendar takes days out of its series by name; a file that is the whole book of some days by holding no more.
    """
    return [
        one
        for one in gone
        if one.status == Visit.Status.BOOKED
        and (one.reference in book.left_out or (whole is not None and _falls_within(one, studio, whole)))
    ]


def _falls_within(one: Missing, studio: Studio, whole: Days) -> bool:
    return whole[0] <= one.starts_at.astimezone(studio.zone).date() <= whole[1]
