"""Visits that a file lacks."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from studio.book import missing
from studio.book.rows import BadRow, Book
from studio.models import Studio, Visit
from tests.books import WHOLE_WEEK, book_of, bring_in, row
from tests.people import NOW, make_client, make_studio, make_visit

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

    found = missing.called_off(missing.find(book, studio), book, studio, (date(2027, 3, 10), date(2027, 3, 15)))

    assert {one.reference for one in found} == {"first", "last"}


DAYS = ("uid/20270312T193000Z", "uid/20270319T183000Z", "uid/20270326T183000Z")


def known_series(studio: Studio, sequence: int = 1) -> None:
    rows = [row(day, starts_at=f"2027-03-{day[10:12]}T19:30:00Z", sequence=sequence) for day in DAYS]
    bring_in(studio, *rows, source="ics")


def off(studio: Studio, book: Book) -> set[str]:
    return {one.reference for one in missing.called_off(missing.find(book, studio), book, studio, None)}


def test_a_day_that_an_event_no_longer_has_is_off_and_its_other_days_are_not(studio: Studio) -> None:
    """RFC 5545, 3.8.5: RRULE, RDATE and EXDATE of an event state all its days."""
    known_series(studio)

    assert off(studio, book_of(row(DAYS[0]), row(DAYS[2]), source="ics", stated={"uid": 1})) == {DAYS[1]}


def test_an_event_that_is_not_in_the_file_at_all_tells_nothing_of_its_days(studio: Studio) -> None:
    known_series(studio)

    assert off(studio, book_of(row("other"), source="ics", stated={"other": 1})) == set()


def test_an_event_that_had_a_fault_tells_nothing_of_its_days(studio: Studio) -> None:
    known_series(studio)

    assert off(studio, book_of(row(DAYS[0]), source="ics", stated={})) == set()


def test_an_older_version_of_an_event_calls_nothing_off(studio: Studio) -> None:
    """RFC 5546, 2.1.4."""
    known_series(studio, sequence=2)

    assert off(studio, book_of(row(DAYS[0]), source="ics", stated={"uid": 1})) == set()


def test_what_repeats_beyond_reach_is_not_off(studio: Studio) -> None:
    known_series(studio)
    Visit.objects.filter(refs__reference=DAYS[1]).update(starts_at=NOW + timedelta(days=400))

    assert off(studio, book_of(row(DAYS[0]), source="ics", stated={"uid": 1})) == {DAYS[2]}


def test_a_single_event_that_repeats_from_now_on_is_its_days(studio: Studio) -> None:
    bring_in(studio, row("uid", sequence=0), source="ics")

    assert off(studio, book_of(row(DAYS[0]), source="ics", stated={"uid": 1})) == {"uid"}


def test_what_an_event_dropped_stays_off_though_an_older_version_comes_again(studio: Studio) -> None:
    known_series(studio)
    bring_in(studio, row(DAYS[0], sequence=2), source="ics", stated={"uid": 2})
    statuses = dict(Visit.objects.values_list("refs__reference", "status"))
    assert statuses == {DAYS[0]: "booked", DAYS[1]: "cancelled", DAYS[2]: "cancelled"}

    bring_in(studio, *(row(day, sequence=1) for day in DAYS), source="ics", stated={"uid": 1})

    assert dict(Visit.objects.values_list("refs__reference", "status")) == statuses


def test_a_day_that_an_event_has_again_is_booked_again(studio: Studio) -> None:
    known_series(studio)
    bring_in(studio, row(DAYS[0], sequence=1), source="ics", stated={"uid": 1})

    bring_in(studio, *(row(day, sequence=1) for day in DAYS), source="ics", stated={"uid": 1})

    assert set(Visit.objects.values_list("status", flat=True)) == {"booked"}


def test_without_a_word_on_its_days_nothing_is_called_off(studio: Studio) -> None:
    bring_in(studio, row(), row("V2"))

    bring_in(studio, row())
    bring_in(studio, row(), whole=WHOLE_WEEK)

    assert dict(Visit.objects.values_list("refs__reference", "status")) == {"V1": "booked", "V2": "cancelled"}
