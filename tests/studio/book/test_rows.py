import json
import subprocess
import sys
from dataclasses import FrozenInstanceError
from datetime import UTC, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from studio.book import csv, ics
from studio.book.drafts import Draft, gather
from studio.book.rows import COLUMNS, NEEDED, SERVICES, Context

FILES = Path(__file__).parent / "files"
NOW = datetime(2026, 3, 5, 12, tzinfo=UTC)
STUDIO = Context(ZoneInfo("America/New_York"), "US", service_names={"supplies": ""})


def test_reading_needs_neither_settings_nor_records() -> None:
    code = (
        "import sys, studio.book.csv, studio.book.ics; print({'studio.settings', 'studio.models'} & set(sys.modules))"
    )

    assert subprocess.check_output([sys.executable, "-c", code], text=True).strip() == "set()"


def test_a_visit_lasts_what_is_usual_for_its_service() -> None:
    """Common practice, no source."""
    assert dict(SERVICES) == {
        "full set": 180,
        "fill": 75,
        "removal": 45,
        "patch test": 15,
        "touch-up": 30,
        "lift": 60,
        "consultation": 30,
        "other": 30,
    }


def test_the_columns_are_those_of_the_contract() -> None:
    client = {"first_name", "last_name", "mobile", "email", "time_zone", "language"}
    consents = {"sms_ok", "email_ok", "sms_reminders_ok", "email_reminders_ok"}
    health = {"sensitive", "under_18", "wears_lenses"}
    visit = {"service", "artist", "starts_at", "minutes", "status", "share_left", "adhesive_lot", "adhesive"}
    assert set(COLUMNS) == {"visit", "client"} | client | consents | health | visit
    assert set(NEEDED) == {"visit", "client", "first_name", "service", "starts_at"}


def test_what_a_row_says_can_be_kept_as_json() -> None:
    book = csv.read((FILES / "book.csv").read_bytes(), STUDIO, now=NOW)
    calendar = ics.read((FILES / "week.ics").read_bytes(), STUDIO, now=NOW)

    for row in (*book.rows, *calendar.rows):
        assert json.loads(json.dumps(row.visit_says)) == row.visit_says
        assert json.loads(json.dumps(row.client_says)) == row.client_says


def test_a_book_does_not_change_once_read() -> None:
    book = csv.read(b"", STUDIO, now=NOW)

    with pytest.raises(FrozenInstanceError):
        book.source = "ics"  # type: ignore[misc]  # the very thing that must fail


def _draft(number: int, visit: str, client: str, **says: str) -> Draft:
    return Draft(number, visit, client, {"starts_at": "2026-03-09T18:30:00Z"}, dict(says))


def test_every_row_of_a_client_that_states_a_field_on_which_they_disagree_is_bad() -> None:
    drafts = [
        _draft(2, "V1", "C1", mobile="+12125550123", email="mia@example.com"),
        _draft(3, "V2", "C1", email="mia@example.com"),
        _draft(4, "V3", "C1", mobile="+12125550124"),
        _draft(5, "V4", "C2", mobile="+12125550124"),
    ]

    book = gather("csv", drafts, now=NOW)

    assert [(bad.row, bad.field, bad.value) for bad in book.bad] == [
        (2, "mobile", "+12125550123"),
        (4, "mobile", "+12125550124"),
    ]
    assert "row 4" in book.bad[0].problem
    assert "row 2" in book.bad[1].problem
    assert [row.number for row in book.rows] == [3, 5]


def test_a_row_that_is_bad_for_another_reason_still_counts_in_a_disagreement() -> None:
    bad = _draft(3, "V2", "C1", first_name="Zoe")
    bad.refuse("starts_at", "x", '"x" is no date: write one.')

    book = gather("csv", [_draft(2, "V1", "C1", first_name="Mia"), bad], now=NOW)

    assert book.rows == ()
    assert [(row.row, row.field) for row in book.bad] == [(2, "first_name"), (3, "starts_at"), (3, "first_name")]


def test_capitals_alone_are_no_disagreement_and_the_first_spelling_stands() -> None:
    drafts = [_draft(2, "V1", "C1", first_name="Mia"), _draft(3, "V2", "C1", first_name="MIA")]

    book = gather("csv", drafts, now=NOW)

    assert [row.client_says["first_name"] for row in book.rows] == ["Mia", "Mia"]


def test_the_later_row_of_two_with_one_visit_is_bad_and_says_which_it_repeats() -> None:
    book = gather("csv", [_draft(2, "V1", "C1"), _draft(9, "V1", "C1")], now=NOW)

    assert [row.number for row in book.rows] == [2]
    assert (book.bad[0].row, book.bad[0].field, book.bad[0].value) == (9, "visit", "V1")
    assert "row 2" in book.bad[0].problem


def test_bad_rows_are_seen_so_that_their_visits_are_not_missing_from_the_book() -> None:
    bad = _draft(3, "V2", "C1")
    bad.refuse("mobile", "x", '"x" is no number: write one.')

    assert gather("csv", [_draft(2, "V1", "C1"), bad], now=NOW).seen == {"V1", "V2"}


def test_remarks_that_nobody_could_read_to_the_end_are_cut() -> None:
    book = gather("csv", [], now=NOW, notes=[f"Remark {number}." for number in range(1000)])

    assert len(book.notes) == 201
    assert "800 more" in book.notes[-1]
