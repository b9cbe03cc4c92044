"""`import_book` by its contract: what comes out, how it ends, and what it writes from both kinds of file."""

from __future__ import annotations

from io import StringIO
from pathlib import Path

import pytest
from django.core.management import call_command

from aftercare.models import Message
from studio.models import Client, ServiceName, Studio, Visit
from tests.aftercare.management.commands.books import NOW, csv_of, ics_of, run
from tests.books import everything
from tests.people import make_studio

pytestmark = pytest.mark.django_db


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


def test_the_same_book_twice_changes_nothing_whatever_columns_it_has(tmp_path: Path) -> None:
    make_studio()
    rows = [
        {"language": "es", "time_zone": "America/Chicago", "sensitive": "yes"},
        {"visit": "V2", "client": "C2", "status": "done", "share_left": "55%", "starts_at": "2027-03-08T14:30"},
        {"visit": "V3", "client": "C3", "status": "cancelled", "sms_ok": "no"},
    ]
    first = run(csv_of(tmp_path, *rows))
    before = everything()

    again = run(csv_of(tmp_path, *rows), now="2027-03-11T08:00:00Z")

    assert (first.visits, again.visits) == ({"new": 3}, {"same": 3})
    assert again.result["messages"] == {"planned": 0, "withheld": 0, "withdrawn": 0}
    assert everything() == before


def test_columns_in_any_order_with_any_separator_and_unknown_ones_reported(tmp_path: Path) -> None:
    make_studio()
    file = tmp_path / "book.csv"
    text = "starts_at;colour;Service;first name;CLIENT;visit\r\n2027-03-12T14:30;red;fill;Mia;C1;V1\r\n"

    file.write_bytes(b"\xef\xbb\xbf" + text.encode())
    ended = run(file)
    file.write_bytes(text.replace(";", "\t").encode())
    again = run(file)

    assert (ended.code, ended.visits, again.visits) == (0, {"new": 1}, {"same": 1})
    assert '"colour"' in ended.said


def test_a_header_alone_is_a_book_of_nothing(tmp_path: Path) -> None:
    make_studio()

    ended = run(csv_of(tmp_path))

    assert (ended.code, ended.visits, ended.bad) == (0, {}, [])
    assert "no rows" in ended.said


def test_a_missing_visit_is_named_and_counted_and_left_as_it_is(tmp_path: Path) -> None:
    make_studio()
    run(csv_of(tmp_path, {}, {"visit": "V2", "starts_at": "2027-03-20T10:00"}))
    before = everything()

    ended = run(csv_of(tmp_path, {}))

    assert ended.visits == {"same": 1, "gone": 1}
    assert "no longer in the book: visit V2, Mia Ortega, 2027-03-20 10:00" in ended.said
    assert everything() == before


def test_of_many_missing_visits_the_latest_are_named_and_the_others_counted(tmp_path: Path) -> None:
    make_studio()
    run(csv_of(tmp_path, *({"visit": f"V{number}", "client": f"C{number}"} for number in range(60))))

    ended = run(csv_of(tmp_path))

    assert ended.visits == {"gone": 60}
    assert ended.said.count("no longer in the book: visit") == 50
    assert "no longer in the book: 10 more" in ended.said


def test_a_studio_that_is_there_is_not_made_again(tmp_path: Path) -> None:
    studio = make_studio()

    ended = run(csv_of(tmp_path, {}), "--create", "--time-zone=Europe/London", "--region=GB")

    assert ended.code == 0
    assert Studio.objects.values_list("pk", "time_zone", "region").get() == (studio.pk, "America/New_York", "US")


def test_a_studio_is_made_with_its_lines_and_in_rehearsal(tmp_path: Path) -> None:
    ended = run(csv_of(tmp_path, {}), "--create", "--time-zone=Europe/London", "--region=gb", studio="lower-marsh")

    studio = Studio.objects.get()
    assert ended.code == 0
    assert (studio.name, studio.time_zone, studio.region) == ("Lower Marsh", "Europe/London", "GB")
    assert studio.in_rehearsal
    assert set(studio.lines.values_list("channel", flat=True)) == {"sms", "email"}


@pytest.mark.parametrize("args", [("--dry-run",), ()])
def test_no_studio_is_left_behind_where_nothing_was_written(tmp_path: Path, args: tuple[str, ...]) -> None:
    before = everything()
    bad = {} if args else {"minutes": "long"}

    run(csv_of(tmp_path, bad), "--create", "--time-zone=Europe/London", "--region=GB", *args)

    assert everything() == before


def test_a_studio_is_made_from_a_book_that_has_no_rows_yet(tmp_path: Path) -> None:
    ended = run(csv_of(tmp_path), "--create", "--time-zone=Europe/London", "--region=GB", studio="lower-marsh")

    assert (ended.code, ended.bad) == (0, [])
    assert Studio.objects.get().slug == "lower-marsh"


def test_the_present_moment_of_the_import_is_the_one_that_is_said(tmp_path: Path) -> None:
    make_studio()

    run(csv_of(tmp_path, {}), now="2027-03-11T10:30:00-05:00")

    assert f"{Visit.objects.get().heard_at:%Y-%m-%d %H:%M}" == "2027-03-11 15:30"
    assert {f"{message.planned_from:%Y-%m-%d %H:%M}" for message in Message.objects.all()} == {"2027-03-11 15:30"}


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


def test_a_set_that_was_taken_off_is_reminded_of_by_nobody_and_says_so_in_one_file_or_two(tmp_path: Path) -> None:
    worn = {"starts_at": "2027-03-04T10:00", "status": "done", "sms_reminders_ok": "yes"}
    removal = {**worn, "visit": "V2", "service": "removal", "minutes": "45", "starts_at": "2027-03-08T10:00"}

    in_one, in_two = [[worn, removal]], [[worn], [worn, removal]]
    for number, books in enumerate((in_one, in_two)):
        studio = make_studio(f"birch-{number}")
        for rows in books:
            assert run(csv_of(tmp_path, *rows), studio=studio.slug).code == 0

        reminders = Message.objects.filter(studio=studio, occasion__in=["fill_due", "full_set_due"])
        assert sorted(reminders.values_list("occasion", "state", "reason")) == [
            ("fill_due", "withheld", "no set on"),
            ("full_set_due", "withheld", "no set on"),
        ]


def test_progress_goes_to_standard_error_alone(tmp_path: Path) -> None:
    make_studio()
    out = StringIO()
    err = StringIO()

    call_command("import_book", str(csv_of(tmp_path, {})), "--studio=birch", f"--now={NOW}", stdout=out, stderr=err)

    assert len(out.getvalue().strip().splitlines()) == 1
    assert "writing visits 1 to 1 of 1" in err.getvalue()
