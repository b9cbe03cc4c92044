"""A book with anything bad in it changes nothing at all, and says of each bad row the field, the value and the cure."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from studio.models import Visit
from tests.aftercare.management.commands.books import Ended, csv_of, ics_of, run
from tests.books import everything
from tests.people import make_studio

pytestmark = pytest.mark.django_db

CURE = re.compile(
    r"\b(write|format|check|correct|change|choose|save|set|give|name|export|fill|remove|rename|shorten|close|add)\b"
)


def refused(ended: Ended, row: int, field: str, value: str) -> None:
    """Look that a bad book ended as promised: by row, field, value and cure, as JSON and in words."""
    assert ended.code == 1
    assert (row, field) in ended.bad
    problem = next(bad["problem"] for bad in ended.result["bad_rows"] if (bad["row"], bad["field"]) == (row, field))
    assert value[:50] in problem
    assert CURE.search(problem.lower()), problem
    assert f"row {row}, {field}: {problem}" in ended.said
    assert "Nothing was changed" in ended.said


BAD_ROWS: list[tuple[dict[str, str], str]] = [
    ({"visit": ""}, "visit"),
    ({"visit": "6.14125E+10"}, "visit"),
    ({"visit": "V1"}, "visit"),  # once more
    ({"client": ""}, "client"),
    ({"client": "1.2E+12"}, "client"),
    ({"first_name": ""}, "first_name"),
    ({"first_name": "M" * 81}, "first_name"),
    ({"first_name": "#N/A"}, "first_name"),
    ({"last_name": '"=B2&C2"'}, "last_name"),
    ({"mobile": "6.14125E+10"}, "mobile"),
    ({"mobile": "12"}, "mobile"),
    ({"mobile": "call her mother"}, "mobile"),
    ({"mobile": "12345678901234567"}, "mobile"),
    ({"mobile": "212 555 0123 / 212 555 0124"}, "mobile"),
    ({"mobile": "#REF!"}, "mobile"),
    ({"email": "mia at example.com"}, "email"),
    ({"email": "mia@"}, "email"),
    ({"email": "mia@example.com; zoe@example.com"}, "email"),
    ({"time_zone": "New York"}, "time_zone"),
    ({"time_zone": "EST5"}, "time_zone"),
    ({"language": "english please"}, "language"),
    ({"sms_ok": "maybe"}, "sms_ok"),
    ({"sensitive": "a bit"}, "sensitive"),
    ({"service": ""}, "service"),
    ({"service": "brows"}, "service"),
    ({"starts_at": ""}, "starts_at"),
    ({"starts_at": "12/03/2027 2:30 PM"}, "starts_at"),
    ({"starts_at": "12.03.2027 14:30"}, "starts_at"),
    ({"starts_at": "2027-03-12"}, "starts_at"),
    ({"starts_at": "2027-02-30T10:00"}, "starts_at"),
    ({"starts_at": "2027-03-12T25:00"}, "starts_at"),
    ({"starts_at": "46093.604"}, "starts_at"),
    ({"starts_at": "tomorrow"}, "starts_at"),
    ({"starts_at": "1899-03-12T14:30"}, "starts_at"),
    ({"starts_at": "2027-03-12T14:30+19:00"}, "starts_at"),
    ({"minutes": "an hour"}, "minutes"),
    ({"minutes": "0"}, "minutes"),
    ({"minutes": "-5"}, "minutes"),
    ({"minutes": "2000"}, "minutes"),
    ({"status": "confirmed?"}, "status"),
    ({"status": "done", "share_left": "0.6"}, "share_left"),
    ({"status": "done", "share_left": "120"}, "share_left"),
    ({"status": "done", "share_left": "half"}, "share_left"),
    ({"status": "booked", "share_left": "60"}, "share_left"),
    ({"status": "", "share_left": "60"}, "share_left"),  # blank is booked
    ({"service": "lift", "status": "done", "share_left": "60"}, "share_left"),
    ({"client": "C1", "email": "other@example.com"}, "email"),  # her rows disagree
]


@pytest.mark.parametrize(("bad", "field"), BAD_ROWS, ids=[f"{field}-{n}" for n, (_, field) in enumerate(BAD_ROWS)])
def test_a_bad_row_is_named_with_its_cure_and_changes_nothing(tmp_path: Path, bad: dict[str, str], field: str) -> None:
    make_studio()
    assert run(csv_of(tmp_path, {})).code == 0
    before = everything()

    fine = {"visit": "V2", "client": "C2", "minutes": "90"}
    ended = run(csv_of(tmp_path, {"minutes": "100"}, fine, {"visit": "V3", "client": "C3", **bad}))

    refused(ended, 4, field, bad[field].strip('"'))
    assert everything() == before


HEADER = b"visit,client,first_name,service,starts_at\n"
BAD_FILES: list[tuple[str, bytes, int, str, str]] = [
    ("empty", b"", 1, "file", "empty"),
    ("blank cells alone", b",,,\n,,,\n", 1, "header", "blank"),
    ("UTF-16", "visit,client".encode("utf-16"), 1, "file", "UTF-16"),
    ("a spreadsheet's own format", b"PK\x03\x04 a workbook", 1, "file", "xlsx"),
    ("an old spreadsheet's", b"\xd0\xcf\x11\xe0 a workbook", 1, "file", "spreadsheet"),
    ("a printed page", b"%PDF-1.7", 1, "file", "printed"),
    ("a web page", b"<!doctype html><title>Sign in</title>", 1, "file", "web page"),
    ("no header", b"V1,C1,Mia,fill,2027-03-12T14:30\n", 1, "header", "V1"),
    ("needed columns missing", b"visit,client\nV1,C1\n", 1, "first_name", "first_name, service, starts_at"),
    ("a column twice", b"visit,visit,client,first_name,service,starts_at\n", 1, "visit", "twice"),
    ("an open quote", HEADER + b'V1,C1,"Mia,fill,2027-03-12T14:30\n', 2, "file", 'V1,C1,"Mia'),
    ("a quote in the wrong place", HEADER + b'V1,C1,"Mia"x,fill,2027-03-12T14:30\n', 2, "file", "quote"),
    ("too few cells", HEADER + b"V1,C1,Mia,fill\n", 2, "row", "fill"),
    ("too many cells", HEADER + b"V1,C1,Mia,fill,2027-03-12T14:30,x\n", 2, "row", "x"),
    ("a NUL", HEADER + b"V1,C1,Mi\x00a,fill,2027-03-12T14:30\n", 2, "file", "NUL"),
]


@pytest.mark.parametrize(
    ("data", "row", "field", "words"), [bad[1:] for bad in BAD_FILES], ids=[bad[0] for bad in BAD_FILES]
)
def test_a_file_that_is_no_book_is_refused_whole(tmp_path: Path, data: bytes, row: int, field: str, words: str) -> None:
    make_studio()
    assert run(csv_of(tmp_path, {})).code == 0
    before = everything()
    file = tmp_path / "other.csv"
    file.write_bytes(data)

    refused(run(file), row, field, words)

    assert everything() == before


START = "DTSTART;TZID=America/New_York"
BAD_EVENTS: list[tuple[dict[str, str | None], str, str]] = [
    ({"UID": None}, "UID", "no UID"),
    ({START: None}, "DTSTART", "no DTSTART"),
    ({START: "tomorrow"}, "DTSTART", "tomorrow"),
    ({START: None, "DTSTART;TZID=Nowhere/Land": "20270312T143000"}, "DTSTART", "Nowhere/Land"),
    ({"DURATION": "75 minutes"}, "DURATION", "75 minutes"),
    ({"SUMMARY": "Brows - Mia Ortega"}, "service", "Brows"),
    ({"SUMMARY": "Fill"}, "first_name", "Fill"),
    ({"DESCRIPTION": "Mobile: 6.14125E+10"}, "mobile", "6.14125E+10"),
    ({"RRULE": "FREQ=SECONDLY"}, "RRULE", "FREQ=SECONDLY"),
    ({"SEQUENCE": "newest"}, "SEQUENCE", "newest"),
    ({"DESCRIPTION": "Share left: 60"}, "share_left", "60"),  # of a visit that is booked
]


@pytest.mark.parametrize(
    ("bad", "field", "value"), BAD_EVENTS, ids=[f"{bad[1]}-{n}" for n, bad in enumerate(BAD_EVENTS)]
)
def test_a_bad_event_is_named_with_its_cure_and_changes_nothing(
    tmp_path: Path, bad: dict[str, str | None], field: str, value: str
) -> None:
    make_studio()
    assert run(ics_of(tmp_path, {})).code == 0
    before = everything()

    ended = run(ics_of(tmp_path, {"DURATION": "PT90M"}, {"UID": "two@studio.example", **bad}))

    refused(ended, 2, field, value)
    assert {row for row, _ in ended.bad} == {2}
    assert everything() == before


def test_every_bad_row_is_listed_and_every_bad_field_of_a_row(tmp_path: Path) -> None:
    make_studio()

    ended = run(
        csv_of(
            tmp_path,
            {"visit": "V1", "minutes": "long", "status": "perhaps"},
            {"visit": "V2"},
            {"visit": "V3", "client": "C3", "mobile": "12"},
        )
    )

    assert ended.bad == [(2, "minutes"), (2, "status"), (4, "mobile")]
    assert not Visit.objects.exists()


def test_a_calendar_that_breaks_off_is_refused_whole(tmp_path: Path) -> None:
    make_studio()
    file = ics_of(tmp_path, {}, {"UID": "two@studio.example"})
    file.write_bytes(file.read_bytes()[:-40])

    refused(run(file), 2, "file", "VEVENT")

    assert not Visit.objects.exists()


def test_skipping_the_bad_of_a_file_that_is_no_book_imports_nothing_and_misses_nothing(tmp_path: Path) -> None:
    make_studio()
    run(csv_of(tmp_path, {}))
    before = everything()
    file = tmp_path / "other.csv"
    file.write_bytes(b"PK\x03\x04 a workbook")

    ended = run(file, "--skip-bad")

    assert ended.code == 0
    assert ended.bad == [(1, "file")]
    assert ended.visits == {}
    assert everything() == before
