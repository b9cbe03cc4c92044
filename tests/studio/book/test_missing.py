"""Visits that a file lacks."""

from __future__ import annotations

from datetime import date

import pytest

from studio.book import missing
from studio.book.rows import BadRow, Book
from studio.models import Studio, Visit
from tests.books import WHOLE_WEEK, book_of, bring_in, row
from tests.people import make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db


@pytest.fixture
def studio() -> Studio:
    return make_studio()


def test_what_a_file_lacks_is_listed_the_latest_first(studio: Studio) -> None:
    bring_in(studio, row(), row("V2", starts_at="2027-03-20T19:30:00Z"), row("V3"), row("V4", status="done"))

    found = missing.find(book_of(row("V3")), studio)

    assert [(one.reference, one.status) for one in found] == [("V2", "booked"), ("V4", "done"), ("V1", "booked")]


def test_a_visit_written_by_hand_is_in_no_book_and_never_missing(studio: Studio) -> None:
    make_visit(make_client(studio))

    assert missing.find(book_of(row()), studio) == []


def test_a_visit_of_another_source_is_not_missing(studio: Studio) -> None:
    bring_in(studio, row(sequence=0), source="ics")

    assert missing.find(book_of(row("V2")), studio) == []


def test_a_row_that_cannot_be_used_is_not_missing(studio: Studio) -> None:
    bring_in(studio, row(), row("V2"))
    bad = BadRow(3, "minutes", "long", "…")

    assert missing.find(Book("csv", (row(),), (bad,), seen=frozenset({"V1", "V2"})), studio) == []


def test_a_file_that_cannot_be_read_lacks_nothing(studio: Studio) -> None:
    bring_in(studio, row())

    assert missing.find(Book("csv", (), (BadRow(1, "file", "zip", "…"),)), studio) == []


def test_a_whole_book_calls_off_what_is_booked_within_its_days_on_the_studios_clock(studio: Studio) -> None:
    bring_in(
        studio,
        row("first", starts_at="2027-03-10T05:00:00Z"),  # midnight in New York
        row("before", starts_at="2027-03-10T04:59:59Z"),
        row("last", starts_at="2027-03-16T03:59:59Z"),
        row("after", starts_at="2027-03-16T04:00:00Z"),
        row("done", status="done"),
        row("missed", status="missed"),
    )
    book = book_of()

    off = missing.called_off(missing.find(book, studio), book, studio, (date(2027, 3, 10), date(2027, 3, 15)))

    assert {one.reference for one in off} == {"first", "last"}


def test_a_day_that_a_calendar_takes_out_of_its_series_is_off_and_its_other_days_are_not(studio: Studio) -> None:
    """RFC 5545, 3.8.5.1: EXDATE names the times at which a series does not come up."""
    bring_in(studio, row("s/1", sequence=0), row("s/2", sequence=0), row("s/3", sequence=0), source="ics")
    book = book_of(row("s/1"), source="ics", left_out={"s/2"})

    assert [one.reference for one in missing.called_off(missing.find(book, studio), book, studio, None)] == ["s/2"]


def test_without_a_word_on_its_days_nothing_is_called_off(studio: Studio) -> None:
    bring_in(studio, row(), row("V2"))

    bring_in(studio, row())
    bring_in(studio, row(), whole=WHOLE_WEEK)

    assert dict(Visit.objects.values_list("refs__reference", "status")) == {"V1": "booked", "V2": "cancelled"}
