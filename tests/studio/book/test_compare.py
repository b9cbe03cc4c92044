"""What a file changes, and what only the records show to be wrong. Nothing is written."""

from __future__ import annotations

from typing import Any

import pytest

from studio import records
from studio.book.compare import Change, Comparison, compare
from studio.book.rows import BadRow, Row
from studio.models import Studio, Visit
from tests.books import WHOLE_WEEK, book_of, bring_in, everything, row
from tests.people import NOW, make_studio

pytestmark = pytest.mark.django_db


@pytest.fixture
def studio() -> Studio:
    return make_studio()


def look(studio: Studio, *rows: Row, **about: Any) -> Comparison:
    before = everything()
    found = compare(book_of(*rows, **about), studio)
    assert everything() == before
    return found


def fields(comparison: Comparison) -> list[str]:
    changes = [change for client in comparison.clients.values() for change in client.changes]
    return [change.field for change in [*changes, *(change for visit in comparison.visits for change in visit.changes)]]


def test_what_the_book_never_named_is_new(studio: Studio) -> None:
    found = look(studio, row(), row("V2"), row("V3", "C2"))

    assert found.counts() == {
        "visits": {"new": 3, "changed": 0, "same": 0, "gone": 0},
        "clients": {"new": 2, "changed": 0, "same": 0},
    }


def test_a_book_without_rows_changes_nothing(studio: Studio) -> None:
    assert not look(studio).visits


def test_a_change_says_what_the_book_said_before_and_says_now(studio: Studio) -> None:
    bring_in(studio, row(minutes=75, email="mia@mail.example"))

    found = look(studio, row(minutes=90, email="mia@mail.example", last_name="Ortega"))

    assert found.visits[0].changes == [Change("V1", "minutes", 75, 90)]
    assert found.clients["C1"].changes == [Change("C1", "last_name", None, "Ortega")]


def test_a_field_is_compared_with_the_book_and_not_with_the_records(studio: Studio) -> None:
    bring_in(studio, row(minutes=75, email="mia@mail.example"))
    visit = Visit.objects.get()
    records.save_visit(studio=studio, visit=visit, by=None, now=NOW, minutes=90)
    records.save_client(studio=studio, client=visit.client, by=None, now=NOW, email="own@mail.example")

    assert fields(look(studio, row(minutes=75, email="mia@mail.example"))) == []


def test_a_field_that_the_file_leaves_out_is_no_change(studio: Studio) -> None:
    bring_in(studio, row(minutes=75, artist="Ada", email="mia@mail.example", sensitive=True))

    assert fields(look(studio, row())) == []


def test_what_one_row_of_a_client_adds_counts_once(studio: Studio) -> None:
    bring_in(studio, row(), row("V2"), row("V3"))

    found = look(studio, row(), row("V2", email="mia@mail.example"), row("V3", email="mia@mail.example"))

    assert fields(found) == ["email"]


def test_a_visit_whose_client_the_book_corrects_changes_that_field(studio: Studio) -> None:
    bring_in(studio, row())

    found = look(studio, row(client="C2", first_name="Zoe"))

    assert found.visits[0].changes == [Change("V1", "client", "C1", "C2")]
    assert found.counts()["clients"] == {"new": 1, "changed": 0, "same": 0}


@pytest.mark.parametrize(
    ("was", "marked", "says", "changes"),
    [
        ("booked", "", "done", True),
        ("booked", "", "cancelled", True),
        ("cancelled", "", "booked", True),
        ("missed", "", "booked", True),
        ("done", "", "booked", False),  # never turned back
        ("done", "", "cancelled", True),  # its own word
        ("done", "", "missed", True),
        ("booked", "done", "booked", False),
        ("booked", "done", "cancelled", False),  # what a person marked done stays done
        ("booked", "done", "missed", False),
        ("booked", "missed", "done", True),
    ],
)
def test_a_status_changes_unless_it_would_undo_what_was_done(
    studio: Studio, was: str, marked: str, says: str, changes: bool
) -> None:
    bring_in(studio, row(status=was))
    if marked:
        Visit.objects.update(status=marked)

    found = look(studio, row(status=says))

    assert (fields(found) == ["status"]) is changes
    assert found.counts()["visits"]["changed"] == int(changes)


def test_an_older_version_of_an_event_is_the_same_and_passed_over(studio: Studio) -> None:
    """RFC 5546, 2.1.4: the higher SEQUENCE is the newer."""
    bring_in(studio, row(sequence=2), source="ics")

    found = look(studio, row(sequence=1, minutes=20, email="old@mail.example"), source="ics")

    assert fields(found) == []
    assert found.counts()["visits"] == {"new": 0, "changed": 0, "same": 1, "gone": 0}
    assert found.notes == ["Passed over, as an older version than the one on record: row 2."]


def test_a_version_number_alone_is_no_change(studio: Studio) -> None:
    bring_in(studio, row(sequence=2), source="ics")

    assert look(studio, row(sequence=3), source="ics").counts()["visits"]["same"] == 1


def test_an_event_that_says_no_more_that_it_is_off_stands_again(studio: Studio) -> None:
    """RFC 5545, 3.8.1.11: only an event whose STATUS is CANCELLED is off. A spreadsheet's blank says nothing."""
    bring_in(studio, row(status="cancelled", sequence=1), source="ics")
    bring_in(studio, row(status="cancelled"), source="csv")

    found = look(studio, row(sequence=1), source="ics")

    assert found.visits[0].changes == [Change("V1", "status", "cancelled", "booked")]
    assert fields(look(studio, row(), source="csv")) == []


def test_a_cancelled_event_that_was_never_known_is_passed_over(studio: Studio) -> None:
    rows = [Row(number, f"V{number}", "", {"status": "cancelled", "sequence": 1}, {}) for number in range(1, 11)]

    found = look(studio, *rows, source="ics")

    assert not found.visits
    assert found.notes == ["Passed over, as cancelled and never known here: rows 1, 2, 3, 4, 5, 6, 7, 8 and more."]


def test_a_calendars_client_with_a_new_address_is_the_same_under_the_same_name(studio: Studio) -> None:
    bring_in(studio, row(client="mia", sequence=0), source="ics")

    found = look(studio, row(client="mia@mail.example", email="mia@mail.example", sequence=0), source="ics")

    assert found.renamed == {"mia@mail.example": "mia"}
    assert fields(found) == ["email"]
    assert found.counts()["clients"]["new"] == 0


def test_a_calendars_visit_under_another_name_is_another_clients(studio: Studio) -> None:
    bring_in(studio, row(client="mia", sequence=0), source="ics")

    found = look(studio, row(client="zoe@mail.example", first_name="Zoe", sequence=0), source="ics")

    assert found.renamed == {}
    assert fields(found) == ["client"]


def test_a_spreadsheets_own_reference_is_believed_whatever_the_name(studio: Studio) -> None:
    bring_in(studio, row())

    assert look(studio, row(client="C9")).counts()["clients"]["new"] == 1


@pytest.mark.parametrize("status", ["booked", "cancelled", "missed"])
def test_a_share_left_goes_with_a_done_set_alone(studio: Studio, status: str) -> None:
    bring_in(studio, row(status=status))

    found = look(studio, row(share_left=60), row("V2", number=3, share_left=60))

    assert [(bad.row, bad.field) for bad in found.bad] == [(2, "share_left"), (3, "share_left")]
    assert f"a visit that is {status}: set its status to done" in found.bad[0].problem
    assert found.visits == []


def test_a_share_left_comes_after_the_artist_marked_it_done(studio: Studio) -> None:
    bring_in(studio, row())
    Visit.objects.update(status="done")

    assert fields(look(studio, row(share_left=60))) == ["share_left"]


def test_another_studios_book_is_another_book(studio: Studio) -> None:
    bring_in(make_studio("elm"), row())

    assert look(studio, row()).counts()["visits"]["new"] == 1


def test_a_calendar_and_a_spreadsheet_may_use_the_same_reference(studio: Studio) -> None:
    bring_in(studio, row())

    assert look(studio, row(sequence=0), source="ics").counts()["visits"] == {
        "new": 1,
        "changed": 0,
        "same": 0,
        "gone": 0,
    }


def test_a_whole_book_with_a_row_that_cannot_be_used_cancels_nothing(studio: Studio) -> None:
    bring_in(studio, row(), row("V2"))
    damaged = BadRow(3, "visit", "4.1E+09", '"4.1E+09" is a long number that a spreadsheet cut short.')

    found = compare(book_of(row(), bad=(damaged,)), studio, whole=WHOLE_WEEK)

    assert [one.reference for one in found.gone] == ["V2"]
    assert found.to_cancel == []
    assert "No visit is cancelled" in found.notes[0]


def test_nothing_is_cancelled_that_the_person_who_confirmed_was_not_shown(studio: Studio) -> None:
    bring_in(studio, row(), row("V2"), row("V3"))

    found = compare(book_of(row()), studio, whole=WHOLE_WEEK, seen={"V2"})

    assert [one.reference for one in found.to_cancel] == ["V2"]
