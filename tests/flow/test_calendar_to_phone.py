"""A calendar by the commands: what it moves, takes out and cancels is so in the messages too.

RFC 5545: 3.8.5.3 RRULE, 3.8.5.1 EXDATE, 3.8.4.4 RECURRENCE-ID, 3.8.1.11 STATUS, 3.1 folded lines. RFC 5546, 2.1.4:
SEQUENCE.
"""

from __future__ import annotations

import json
from io import StringIO
from pathlib import Path
from typing import Any

import pytest
from django.core.management import call_command

from studio.models import Client, Visit
from tests.books import everything

pytestmark = pytest.mark.django_db

NOW = "2027-03-01T15:00:00Z"
START = "DTSTART;TZID=America/New_York"
MIA = {
    "UID": "one@wren.example",
    "DTSTAMP": "20270220T120000Z",
    START: "20270312T143000",  # 14:30 in New York, before the clocks change on the 14th
    "DURATION": "PT1H15M",
    "SUMMARY": "Fill - Mia Ortega",
    "ATTENDEE;CN=Mia Ortega": "mailto:mia@example.com",
}
SERIES = {**MIA, "RRULE": "FREQ=WEEKLY;COUNT=3"}


def calendar(tmp_path: Path, *events: dict[str, str], fold: bool = False) -> str:
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Wren//Book//EN"]
    for event in events:
        lines += ["BEGIN:VEVENT", *(f"{name}:{value}" for name, value in event.items()), "END:VEVENT"]
    lines += ["END:VCALENDAR", ""]
    if fold:
        lines = ["\r\n ".join(line[at : at + 20] for at in range(0, len(line), 20)) for line in lines]
    file = tmp_path / "week.ics"
    file.write_bytes("\r\n".join(lines).encode())
    return str(file)


def do_import(file: str, *args: str) -> tuple[dict[str, Any], str]:
    """Return the promised object and what was said on standard error."""
    out, err = StringIO(), StringIO()
    create = ("--create", "--time-zone=America/New_York", "--region=US")
    call_command("import_book", file, "--studio=wren", f"--now={NOW}", *create, *args, stdout=out, stderr=err)
    return dict(json.loads(out.getvalue().strip().splitlines()[-1])), err.getvalue()


def planned() -> list[str]:
    """Return when a message about a visit ahead is due, in order."""
    out = StringIO()
    call_command("list_messages", "--studio=wren", "--json", f"--now={NOW}", stdout=out, stderr=StringIO())
    rows = [json.loads(line) for line in out.getvalue().splitlines()]
    return sorted(row["due_at"] for row in rows if row["state"] == "planned" and row["step"] == 0)


def starts() -> list[str]:
    booked = Visit.objects.filter(status="booked").order_by("starts_at")
    return [f"{visit.starts_at:%m-%d %H:%M}" for visit in booked]


@pytest.mark.parametrize("fold", [False, True])
def test_an_event_is_a_visit_with_its_message(tmp_path: Path, fold: bool) -> None:
    result, said = do_import(calendar(tmp_path, MIA, fold=fold))

    assert result["visits"] == {"new": 1, "changed": 0, "same": 0, "gone": 0}
    assert result["clients"] == {"new": 1, "changed": 0, "same": 0}
    assert starts() == ["03-12 19:30"]
    assert planned() == ["2027-03-09T15:00:00Z"]  # 10:00, three days before
    assert "reading" in said


def test_the_same_calendar_twice_changes_nothing(tmp_path: Path) -> None:
    file = calendar(tmp_path, SERIES)
    do_import(file)
    before = everything()

    result, _said = do_import(file)

    assert result["visits"] == {"new": 0, "changed": 0, "same": 3, "gone": 0}
    assert result["messages"] == {"planned": 0, "withheld": 0, "withdrawn": 0}
    assert everything() == before


def test_a_series_keeps_its_hour_of_the_wall_clock_when_the_clocks_change(tmp_path: Path) -> None:
    do_import(calendar(tmp_path, SERIES))

    assert starts() == ["03-12 19:30", "03-19 18:30", "03-26 18:30"]
    assert planned() == ["2027-03-09T15:00:00Z", "2027-03-16T14:00:00Z", "2027-03-23T14:00:00Z"]


def test_a_day_taken_out_of_a_series_is_cancelled_with_its_message(tmp_path: Path) -> None:
    do_import(calendar(tmp_path, SERIES))

    result, said = do_import(calendar(tmp_path, {**SERIES, "EXDATE;TZID=America/New_York": "20270319T143000"}))

    assert starts() == ["03-12 19:30", "03-26 18:30"]
    assert planned() == ["2027-03-09T15:00:00Z", "2027-03-23T14:00:00Z"]
    assert result["messages"]["withdrawn"] == 2  # a fill of a first client: three days before, and the evening before
    assert "off, by the book" in said


def test_a_series_that_moves_as_a_whole_is_spoken_of_at_its_new_hour_alone(tmp_path: Path) -> None:
    """RFC 5545, 3.8.4.4: with another DTSTART the days of a series are others."""
    do_import(calendar(tmp_path, SERIES))

    later = {**SERIES, START: "20270312T160000", "SEQUENCE": "1"}
    result, _said = do_import(calendar(tmp_path, later))
    again, _said = do_import(calendar(tmp_path, SERIES))  # the version before it comes late

    assert result["visits"] == {"new": 3, "changed": 0, "same": 0, "gone": 3}
    assert starts() == ["03-12 21:00", "03-19 20:00", "03-26 20:00"]
    assert planned() == ["2027-03-09T15:00:00Z", "2027-03-16T14:00:00Z", "2027-03-23T14:00:00Z"]
    assert again["messages"] == {"planned": 0, "withheld": 0, "withdrawn": 0}


def test_a_day_of_a_series_that_moves_is_the_same_visit_at_another_hour(tmp_path: Path) -> None:
    do_import(calendar(tmp_path, SERIES))
    moved = {**MIA, "RECURRENCE-ID;TZID=America/New_York": "20270319T143000", START: "20270320T110000"}

    result, _said = do_import(calendar(tmp_path, SERIES, moved))

    assert result["visits"] == {"new": 0, "changed": 1, "same": 2, "gone": 0}
    assert starts() == ["03-12 19:30", "03-20 15:00", "03-26 18:30"]
    assert planned() == ["2027-03-09T15:00:00Z", "2027-03-17T14:00:00Z", "2027-03-23T14:00:00Z"]


def test_a_cancelled_day_of_a_series_leaves_the_others(tmp_path: Path) -> None:
    do_import(calendar(tmp_path, SERIES))
    off = {**MIA, "RECURRENCE-ID;TZID=America/New_York": "20270319T143000", START: "20270319T143000"}

    do_import(calendar(tmp_path, SERIES, {**off, "STATUS": "CANCELLED"}))

    assert starts() == ["03-12 19:30", "03-26 18:30"]
    assert planned() == ["2027-03-09T15:00:00Z", "2027-03-23T14:00:00Z"]


def test_a_cancelled_event_takes_its_message_back_and_the_same_file_does_it_once(tmp_path: Path) -> None:
    do_import(calendar(tmp_path, MIA))
    off = calendar(tmp_path, {**MIA, "STATUS": "CANCELLED", "SEQUENCE": "1"})

    first, _said = do_import(off)
    again, _said = do_import(off)

    assert (starts(), planned()) == ([], [])
    assert (first["messages"]["withdrawn"], again["messages"]["withdrawn"]) == (2, 0)


def test_a_cancelled_event_that_comes_first_stays_quiet(tmp_path: Path) -> None:
    do_import(calendar(tmp_path, {**MIA, "STATUS": "CANCELLED"}))

    assert (starts(), planned()) == ([], [])


def test_the_newest_version_of_an_event_counts_in_whatever_order_they_come(tmp_path: Path) -> None:
    newest = {**MIA, "SEQUENCE": "3", START: "20270315T120000"}
    do_import(calendar(tmp_path, {**MIA, "SEQUENCE": "1"}))
    do_import(calendar(tmp_path, newest))

    result, said = do_import(calendar(tmp_path, {**MIA, "SEQUENCE": "2", START: "20270313T120000"}))

    assert "older version" in said
    assert result["visits"]["changed"] == 0
    assert starts() == ["03-15 16:00"]
    assert planned() == ["2027-03-12T15:00:00Z"]


def test_two_versions_in_one_file_are_one_visit_by_the_newest(tmp_path: Path) -> None:
    newest = {**MIA, "SEQUENCE": "2", START: "20270315T120000"}

    do_import(calendar(tmp_path, newest, {**MIA, "SEQUENCE": "1"}))

    assert starts() == ["03-15 16:00"]


def test_the_file_is_a_calendar_by_what_it_holds_whatever_its_name(tmp_path: Path) -> None:
    file = Path(calendar(tmp_path, MIA)).rename(tmp_path / "export.txt")

    assert do_import(str(file))[0]["visits"]["new"] == 1


def test_the_format_stated_is_the_one_that_is_read(tmp_path: Path) -> None:
    out = StringIO()
    args = ("--studio=wren", "--create", "--time-zone=America/New_York", "--region=US", f"--now={NOW}", "--format=csv")

    with pytest.raises(SystemExit) as ended:
        call_command("import_book", calendar(tmp_path, MIA), *args, stdout=out, stderr=StringIO())

    assert ended.value.code == 1
    assert json.loads(out.getvalue().splitlines()[-1])["bad_rows"][0]["row"] == 1
    assert not Client.objects.exists()
