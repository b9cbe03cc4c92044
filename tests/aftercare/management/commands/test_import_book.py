"""`import_book` by its contract: what comes out, how it ends, and that a bad book changes nothing at all."""

from __future__ import annotations

import json
from dataclasses import dataclass
from io import StringIO
from pathlib import Path
from typing import Any

import pytest
from django.apps import apps
from django.core.management import call_command

from aftercare.models import Message
from studio.models import Client, ServiceName, Studio, Visit
from tests.people import make_studio

pytestmark = pytest.mark.django_db

NOW = "2027-03-09T15:00:00Z"
GOOD = {
    "visit": "V1",
    "client": "C1",
    "first_name": "Mia",
    "last_name": "Ortega",
    "mobile": "(212) 555-0123",
    "email": "mia@example.com",
    "time_zone": "",
    "language": "",
    "sms_ok": "yes",
    "sensitive": "",
    "service": "fill",
    "starts_at": "2027-03-12T14:30",
    "minutes": "75",
    "status": "booked",
    "share_left": "",
}
EVENT = {
    "UID": "one@studio.example",
    "DTSTAMP": "20270301T120000Z",
    "DTSTART;TZID=America/New_York": "20270312T143000",
    "DURATION": "PT75M",
    "SUMMARY": "Fill - Mia Ortega",
    "DESCRIPTION": "Mobile: (212) 555-0123\\nSMS ok: yes",
}


@dataclass(frozen=True)
class Ended:
    code: int
    result: dict[str, Any]
    said: str  # on standard error

    @property
    def bad(self) -> list[tuple[int, str]]:
        return [(row["row"], row["field"]) for row in self.result["bad_rows"]]


def run(file: Path | str, *args: str, studio: str = "birch") -> Ended:
    out, err = StringIO(), StringIO()
    code = 0
    try:
        call_command("import_book", str(file), f"--studio={studio}", f"--now={NOW}", *args, stdout=out, stderr=err)
    except SystemExit as ended:
        code = int(ended.code or 0)
    return Ended(code, json.loads(out.getvalue().strip().splitlines()[-1]), err.getvalue())


def csv_of(folder: Path, *rows: dict[str, str], name: str = "book.csv") -> Path:
    file = folder / name
    lines = [",".join(GOOD), *(",".join({**GOOD, **row}.values()) for row in rows)]
    file.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return file


def ics_of(folder: Path, *events: dict[str, str | None], name: str = "week.ics") -> Path:
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Birch//Book//EN"]
    for event in events:
        stated = {name: value for name, value in {**EVENT, **event}.items() if value is not None}
        lines += ["BEGIN:VEVENT", *(f"{name}:{value}" for name, value in stated.items()), "END:VEVENT"]
    file = folder / name
    file.write_bytes("\r\n".join([*lines, "END:VCALENDAR", ""]).encode())
    return file


def everything() -> dict[str, list[dict[str, Any]]]:
    """Every row of every table of ours."""
    models = [*apps.get_app_config("studio").get_models(), *apps.get_app_config("aftercare").get_models()]
    return {model._meta.label: list(model._default_manager.order_by("pk").values()) for model in models}


BAD_ROWS = [
    ({"visit": ""}, "visit"),
    ({"client": ""}, "client"),
    ({"first_name": ""}, "first_name"),
    ({"service": ""}, "service"),
    ({"starts_at": ""}, "starts_at"),
    ({"first_name": "M" * 81}, "first_name"),
    ({"mobile": "6.14125E+10"}, "mobile"),
    ({"mobile": "12"}, "mobile"),
    ({"mobile": "call her mother"}, "mobile"),
    ({"mobile": "12345678901234567"}, "mobile"),
    ({"mobile": "212 555 0123 / 212 555 0124"}, "mobile"),
    ({"mobile": "#REF!"}, "mobile"),
    ({"email": "mia at example.com"}, "email"),
    ({"email": "mia@"}, "email"),
    ({"time_zone": "New York"}, "time_zone"),
    ({"time_zone": "EST5"}, "time_zone"),
    ({"language": "english please"}, "language"),
    ({"sms_ok": "maybe"}, "sms_ok"),
    ({"sensitive": "a bit"}, "sensitive"),
    ({"service": "brows"}, "service"),
    ({"starts_at": "12/03/2027 2:30 PM"}, "starts_at"),
    ({"starts_at": "12.03.2027 14:30"}, "starts_at"),
    ({"starts_at": "2027-03-12"}, "starts_at"),
    ({"starts_at": "2027-02-30T10:00"}, "starts_at"),
    ({"starts_at": "2027-03-12T25:00"}, "starts_at"),
    ({"starts_at": "46093.604"}, "starts_at"),
    ({"starts_at": "tomorrow"}, "starts_at"),
    ({"starts_at": "1899-03-12T14:30"}, "starts_at"),
    ({"minutes": "an hour"}, "minutes"),
    ({"minutes": "0"}, "minutes"),
    ({"minutes": "-5"}, "minutes"),
    ({"minutes": "2000"}, "minutes"),
    ({"status": "confirmed?"}, "status"),
    ({"status": "done", "share_left": "0.6"}, "share_left"),
    ({"status": "done", "share_left": "120"}, "share_left"),
    ({"status": "done", "share_left": "half"}, "share_left"),
    ({"service": "lift", "status": "done", "share_left": "60"}, "share_left"),
]


@pytest.mark.parametrize(("bad", "field"), BAD_ROWS, ids=[f"{field}-{n}" for n, (_, field) in enumerate(BAD_ROWS)])
def test_a_bad_row_is_named_with_its_cure_and_changes_nothing(tmp_path: Path, bad: dict[str, str], field: str) -> None:
    make_studio()
    assert run(csv_of(tmp_path, {})).code == 0
    before = everything()

    fine = {"visit": "V2", "client": "C2", "minutes": "90"}
    ended = run(csv_of(tmp_path, {"minutes": "100"}, fine, {"visit": "V3", "client": "C3", **bad}))

    assert ended.code == 1
    assert (4, field) in ended.bad
    problem = next(row["problem"] for row in ended.result["bad_rows"] if row["field"] == field)
    value = bad[field]
    assert value[:20] in problem
    assert len(problem.split()) > 5, "says what is wrong and what would mend it"
    assert f"row 4, {field}" in ended.said
    assert everything() == before


BAD_FILES = [
    (b"", (1, "file")),
    (b"\xff\xfe\x00\x01", (1, "file")),
    (b"PK\x03\x04 a workbook", (1, "file")),
    (b"visit,client\nV1,C1\n", (1, "first_name")),
    (b"visit,visit,client,first_name,service,starts_at\n", (1, "visit")),
    (b'visit,client,first_name,service,starts_at\nV1,C1,"Mia,fill,2027-03-12T14:30\n', (2, "file")),
    (b"visit,client,first_name,service,starts_at\nV1,C1,Mia,fill\n", (2, "row")),
    (b"visit,client,first_name,service,starts_at\nV1,C1,Mi\x00a,fill,2027-03-12T14:30\n", (2, "file")),
]


@pytest.mark.parametrize(("data", "where"), BAD_FILES, ids=range(len(BAD_FILES)))
def test_a_file_that_is_no_book_is_refused_whole(tmp_path: Path, data: bytes, where: tuple[int, str]) -> None:
    make_studio()
    before = everything()
    file = tmp_path / "book.csv"
    file.write_bytes(data)

    ended = run(file)

    assert ended.code == 1
    assert ended.bad[0] == where
    assert len(ended.result["bad_rows"][0]["problem"].split()) > 5
    assert everything() == before


BAD_EVENTS: list[tuple[dict[str, str | None], str]] = [
    ({"UID": None}, "visit"),
    ({"DTSTART;TZID=America/New_York": None}, "starts_at"),
    ({"DTSTART;TZID=America/New_York": None, "DTSTART;TZID=Nowhere/Land": "20270312T143000"}, "starts_at"),
    ({"SUMMARY": "Brows - Mia Ortega"}, "service"),
    ({"DESCRIPTION": "Mobile: 6.14125E+10"}, "mobile"),
    ({"RRULE": "FREQ=SECONDLY"}, "starts_at"),
]


@pytest.mark.parametrize(("bad", "field"), BAD_EVENTS, ids=range(len(BAD_EVENTS)))
def test_a_bad_event_is_named_with_its_cure_and_changes_nothing(
    tmp_path: Path, bad: dict[str, str | None], field: str
) -> None:
    make_studio()
    assert run(ics_of(tmp_path, {})).code == 0
    before = everything()

    ended = run(ics_of(tmp_path, {"DURATION": "PT90M"}, {"UID": "two@studio.example", **bad}))

    assert ended.code == 1
    assert [row for row, _ in ended.bad] == [2]
    assert all(len(row["problem"].split()) > 5 for row in ended.result["bad_rows"])
    assert everything() == before


def test_rows_of_one_client_that_disagree_are_all_bad(tmp_path: Path) -> None:
    make_studio()

    ended = run(csv_of(tmp_path, {}, {"visit": "V2", "email": "other@example.com"}))

    assert ended.code == 1
    assert ended.bad == [(2, "email"), (3, "email")]
    assert not Client.objects.exists()


def test_a_visit_that_the_book_gives_to_another_client_is_hers_with_its_messages(tmp_path: Path) -> None:
    make_studio()
    run(csv_of(tmp_path, {}))

    ended = run(csv_of(tmp_path, {"client": "C9", "first_name": "Zoe", "email": "zoe@example.com", "mobile": ""}))

    assert ended.code == 0
    assert ended.result["visits"]["changed"] == 1
    assert Visit.objects.get().client.first_name == "Zoe"
    standing = Message.objects.exclude(state="withdrawn")
    assert {message.client.first_name for message in standing if message.client} == {"Zoe"}


@pytest.mark.parametrize(
    ("args", "field"),
    [
        (("--now=soon",), "now"),
        (("--now=2027-03-09T15:00:00",), "now"),
        (("--studio=nobody",), "studio"),
        (("--studio=nobody", "--create"), "studio"),
        (("--studio=nobody", "--create", "--time-zone=Mars/Base", "--region=US"), "time_zone"),
        (("--studio=nobody", "--create", "--time-zone=America/New_York", "--region=XX"), "region"),
    ],
)
def test_a_bad_argument_ends_with_the_promised_json(tmp_path: Path, args: tuple[str, ...], field: str) -> None:
    make_studio()
    before = everything()

    ended = run(csv_of(tmp_path, {}), *args)

    assert ended.code == 1
    assert ended.bad == [(0, field)]
    assert everything() == before


def test_a_file_that_is_not_there_is_named(tmp_path: Path) -> None:
    ended = run(tmp_path / "nothing.csv")

    assert ended.code == 1
    assert ended.bad == [(0, "file")]
    assert "nothing.csv" in ended.said


def test_skipping_the_bad_exits_well_and_lists_them(tmp_path: Path) -> None:
    make_studio()

    ended = run(csv_of(tmp_path, {}, {"visit": "V2", "client": "C2", "minutes": "long"}), "--skip-bad")

    assert ended.code == 0
    assert ended.bad == [(3, "minutes")]
    assert Visit.objects.count() == 1


def test_a_dry_run_counts_and_changes_nothing(tmp_path: Path) -> None:
    make_studio()
    before = everything()

    ended = run(csv_of(tmp_path, {}), "--dry-run")

    assert ended.result["visits"]["new"] == 1
    assert ended.result["messages"]["planned"] >= 1
    assert everything() == before


def test_a_calendar_comes_in_twice_and_changes_nothing_the_second_time(tmp_path: Path) -> None:
    make_studio()
    file = ics_of(tmp_path, {})

    first = run(file)
    before = everything()
    again = run(file)

    assert first.result["visits"]["new"] == 1
    visit = Visit.objects.get()
    assert (visit.service, visit.client.name, visit.client.mobile, visit.minutes) == (
        "fill",
        "Mia Ortega",
        "+12125550123",
        75,
    )
    assert (
        visit.starts_at.isoformat() == "2027-03-12T19:30:00+00:00"
    )  # RFC 5545: 14:30 in New York, UTC-5 before the 14th
    assert again.result["visits"] == {"new": 0, "changed": 0, "same": 1, "gone": 0}
    assert everything() == before


def test_a_higher_sequence_moves_a_visit_and_a_lower_one_does_not(tmp_path: Path) -> None:
    """RFC 5546, 2.1.4: of two versions of an event the higher SEQUENCE is the newer."""
    make_studio()
    key = "DTSTART;TZID=America/New_York"
    run(ics_of(tmp_path, {"SEQUENCE": "2"}))

    stale = run(ics_of(tmp_path, {"SEQUENCE": "1", key: "20270312T160000"}))
    assert Visit.objects.get().starts_at.hour == 19
    newer = run(ics_of(tmp_path, {"SEQUENCE": "3", key: "20270312T170000"}))

    assert "older version" in stale.said
    assert newer.result["visits"]["changed"] == 1
    assert Visit.objects.get().starts_at.hour == 22


def test_a_cancelled_event_cancels_its_visit_and_takes_its_messages_back(tmp_path: Path) -> None:
    make_studio()
    run(ics_of(tmp_path, {}))
    assert Message.objects.filter(state="planned").exists()

    ended = run(ics_of(tmp_path, {"STATUS": "CANCELLED", "SEQUENCE": "1"}))

    assert ended.result["messages"]["withdrawn"] >= 1
    assert Visit.objects.get().status == "cancelled"
    assert set(Message.objects.values_list("state", flat=True)) == {"withdrawn"}


def test_a_series_has_a_visit_a_date_less_its_exceptions(tmp_path: Path) -> None:
    """RFC 5545, 3.8.5: RRULE with EXDATE."""
    make_studio()
    series: dict[str, str | None] = {
        "RRULE": "FREQ=WEEKLY;COUNT=4",
        "EXDATE;TZID=America/New_York": "20270319T143000",
    }

    run(ics_of(tmp_path, series))

    days = [visit.starts_at.astimezone(visit.studio.zone) for visit in Visit.objects.order_by("starts_at")]
    assert [f"{day:%m-%d %H:%M}" for day in days] == ["03-12 14:30", "03-26 14:30", "04-02 14:30"]


def test_a_calendar_client_who_gets_an_address_stays_the_same_client(tmp_path: Path) -> None:
    make_studio()
    run(ics_of(tmp_path, {"DESCRIPTION": None}))

    ended = run(ics_of(tmp_path, {"ATTENDEE;CN=Mia Ortega": "mailto:mia@example.com", "DESCRIPTION": None}))
    again = run(ics_of(tmp_path, {"ATTENDEE;CN=Mia Ortega": "mailto:mia@example.com", "DESCRIPTION": None}))

    assert ended.code == again.code == 0
    assert Client.objects.get().email == "mia@example.com"
    assert again.result["visits"]["same"] == 1


def test_the_owners_pattern_and_table_of_names_are_used(tmp_path: Path) -> None:
    studio = make_studio(calendar_pattern="SUMMARY: {name} / {service}")
    ServiceName.objects.create(studio=studio, name="two-week top-up", kind="fill")

    ended = run(ics_of(tmp_path, {"SUMMARY": "Mia Ortega / Two-Week Top-Up"}))

    assert ended.code == 0
    visit = Visit.objects.get()
    assert (visit.service, visit.service_name, visit.client.name) == ("fill", "Two-Week Top-Up", "Mia Ortega")


def test_dates_are_read_in_the_order_that_the_studio_set(tmp_path: Path) -> None:
    make_studio(date_order=Studio.DateOrder.DMY)

    assert run(csv_of(tmp_path, {"starts_at": "12/03/2027 2:30 PM"})).code == 0

    assert f"{Visit.objects.get().starts_at:%Y-%m-%d %H:%M}" == "2027-03-12 19:30"


def test_progress_goes_to_standard_error_alone(tmp_path: Path) -> None:
    make_studio()
    out = StringIO()
    err = StringIO()

    call_command("import_book", str(csv_of(tmp_path, {})), "--studio=birch", f"--now={NOW}", stdout=out, stderr=err)

    assert len(out.getvalue().strip().splitlines()) == 1
    assert "writing visits 1 to 1 of 1" in err.getvalue()
