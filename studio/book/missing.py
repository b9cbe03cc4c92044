"""Visits that a book once named and a file lacks: they stay as they are, but for those that the file says are off."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime

from studio.book.rows import Book
from studio.models import Studio, Visit, VisitRef

MISSING = "missing"  # beside what a book last said of a visit: that it was called off by being left out
_OCCURRENCE = re.compile(r"(.+)/\d{8}T\d{6}Z", re.DOTALL)  # of an event that repeats: its UID, and which
Days = tuple[date, date]  # first and last, on the studio's wall clock


@dataclass(frozen=True, slots=True)
class Missing:
    """A visit that the file lacks; ``pk`` is that of the book's reference for it.

    ``sequence`` is the version of its event that was last heard, or that calls it off.
    """

    pk: int
    reference: str
    starts_at: datetime
    status: str
    sequence: int | None = None


def find(book: Book, studio: Studio) -> list[Missing]:
    """Return the known visits that the file lacks, the latest first."""
    if book.bad and not book.seen:
        return []  # the file could not be read at all: it says nothing of what it lacks
    known = VisitRef.objects.filter(studio=studio, source=book.source)
    rows = known.values_list("pk", "reference", "visit__starts_at", "visit__status", "said__sequence")
    gone = [Missing(*row) for row in rows.iterator(2000) if row[1] not in book.seen]
    return sorted(gone, key=lambda one: (one.starts_at, one.reference), reverse=True)


def called_off(gone: Iterable[Missing], book: Book, studio: Studio, whole: Days | None) -> Iterator[Missing]:
    """Give those that the file says are off and that are booked still.

    A file that is the whole book of some days says so by holding no more; a calendar, which states an event with all
    its repetitions, of the days that an event no longer has: taken out, moved with the whole series, or after its end.
    """
    for one in gone:
        if one.status == Visit.Status.BOOKED:
            version = _dropped_by(one, book)
            if version is not None:
                yield replace(one, sequence=version)
            elif whole is not None and _falls_within(one, studio, whole):
                yield one


def _dropped_by(one: Missing, book: Book) -> int | None:
    """Return the version of its event in the file, which has this day no more; None where the file does not tell."""
    found = _OCCURRENCE.fullmatch(one.reference)
    version = book.stated.get(found[1] if found else one.reference)
    if version is None or version < (one.sequence or 0) or book.reach is None:
        return None
    return version if book.reach[0] <= one.starts_at <= book.reach[1] else None


def _falls_within(one: Missing, studio: Studio, whole: Days) -> bool:
    return whole[0] <= one.starts_at.astimezone(studio.zone).date() <= whole[1]
