"""The main job end to end, by the commands: a book goes in, the right words reach the phone at the right hour."""

from __future__ import annotations

import json
from io import StringIO
from pathlib import Path
from typing import Any

import pytest
from django.core.management import call_command

from aftercare.models import Message
from studio.models import Client, Studio, Visit

pytestmark = pytest.mark.django_db

HEADER = "visit,client,first_name,last_name,mobile,email,sms_ok,service,artist,starts_at,minutes,status\n"
MIA = "V1,C1,Mia,Ortega,+1 212 555 0101,mia@example.com,yes,full set,Ada,{start},180,{status}\n"
NOW = "2026-06-01T12:00:00Z"


def book(tmp_path: Path, *rows: str, name: str = "book.csv") -> str:
    file = tmp_path / name
    file.write_text(HEADER + "".join(rows), encoding="utf-8")
    return str(file)


def command(name: str, *args: str) -> str:
    out = StringIO()
    call_command(name, *args, stdout=out, stderr=StringIO())
    return out.getvalue()


def do_import(file: str, *args: str, now: str = NOW) -> dict[str, Any]:
    create = ("--create", "--time-zone", "America/New_York", "--region", "US")
    out = command("import_book", file, "--studio", "wren", "--now", now, *create, *args)
    return dict(json.loads(out.strip().splitlines()[-1]))


def messages(now: str = NOW) -> dict[tuple[str, str, int, int], dict[str, Any]]:
    lines = command("list_messages", "--studio", "wren", "--json", "--now", now).splitlines()
    rows = [json.loads(line) for line in lines]
    return {(row["visit"], row["occasion"], row["step"], row["edition"]): row for row in rows}


def send(now: str) -> dict[str, int]:
    return dict(json.loads(command("send_due", "--studio", "wren", "--now", now)))


def test_a_booked_full_set_is_prepared_for_three_days_and_the_evening_before(tmp_path: Path) -> None:
    result = do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked")))

    assert result["visits"] == {"new": 1, "changed": 0, "same": 0, "gone": 0}
    assert result["messages"] == {"planned": 2, "withheld": 0, "withdrawn": 0}
    found = messages()
    assert found["V1", "prepare", 0, 1]["due_at"] == "2026-06-07T14:00:00Z"  # 10:00 in New York, UTC-4
    assert found["V1", "prepare", 1, 1]["due_at"] == "2026-06-09T21:00:00Z"  # 17:00
    assert found["V1", "prepare", 0, 1]["channel"] == "sms"
    assert "Mia" in found["V1", "prepare", 0, 1]["text"]
    assert "Wednesday 10 June" in found["V1", "prepare", 0, 1]["text"]


def test_the_same_book_twice_changes_nothing(tmp_path: Path) -> None:
    file = book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked"))
    do_import(file)
    before = list(Message.objects.order_by("pk").values())

    again = do_import(file, now="2026-06-02T12:00:00Z")

    assert again["visits"] == {"new": 0, "changed": 0, "same": 1, "gone": 0}
    assert again["clients"] == {"new": 0, "changed": 0, "same": 1}
    assert again["messages"] == {"planned": 0, "withheld": 0, "withdrawn": 0}
    assert list(Message.objects.order_by("pk").values()) == before


def test_a_visit_that_moves_before_it_was_announced_is_planned_anew_in_place(tmp_path: Path) -> None:
    do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked")))

    result = do_import(book(tmp_path, MIA.format(start="2026-06-11T14:00", status="booked")))

    assert result["visits"]["changed"] == 1
    assert result["messages"]["planned"] == 2
    assert messages()["V1", "prepare", 0, 1]["due_at"] == "2026-06-08T14:00:00Z"


def test_a_visit_that_moves_after_it_was_announced_is_announced_once_more(tmp_path: Path) -> None:
    do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked")))
    assert send("2026-06-07T14:00:00Z")["handed_over"] >= 1

    moved = book(tmp_path, MIA.format(start="2026-06-20T14:00", status="booked"))
    do_import(moved, now="2026-06-08T12:00:00Z")

    found = messages("2026-06-08T12:00:00Z")
    assert found["V1", "prepare", 0, 1]["state"] == "handed_over"
    assert found["V1", "prepare", 0, 2]["due_at"] == "2026-06-17T14:00:00Z"
    assert "your visit is now" in found["V1", "prepare", 0, 2]["text"].lower()
    assert found["V1", "prepare", 1, 1]["due_at"] == "2026-06-19T21:00:00Z"


def test_a_cancelled_visit_takes_its_messages_back(tmp_path: Path) -> None:
    do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked")))

    result = do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="cancelled")))

    assert result["messages"]["withdrawn"] == 2
    assert {row["state"] for row in messages().values()} == {"withdrawn"}
    assert send("2026-06-07T14:00:00Z").get("handed_over", 0) == 0


def test_a_done_visit_gets_its_aftercare_and_checks(tmp_path: Path) -> None:
    do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked")))

    done = book(tmp_path, MIA.format(start="2026-06-10T14:00", status="done"))
    do_import(done, now="2026-06-10T21:30:00Z")  # half an hour after its booked end, 17:00 in New York

    found = messages("2026-06-10T21:30:00Z")
    assert found["V1", "care", 0, 1]["due_at"] == "2026-06-10T22:00:00Z"  # the moment it was marked + 30 min
    assert [found["V1", "check", step, 1]["due_at"] for step in (1, 2, 3)] == [
        "2026-06-12T14:00:00Z",
        "2026-06-14T14:00:00Z",
        "2026-06-17T14:00:00Z",
    ]
    assert found["V1", "prepare", 0, 1]["state"] == "withdrawn"


def test_what_the_artist_marked_done_stays_done(tmp_path: Path) -> None:
    file = book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked"))
    do_import(file)
    Visit.objects.update(status="done")

    do_import(file)
    do_import(book(tmp_path, MIA.format(start="2026-06-10T15:00", status="booked")))
    do_import(book(tmp_path, MIA.format(start="2026-06-10T15:00", status="cancelled")))

    assert Visit.objects.get().status == "done"


def test_a_book_that_changed_three_fields_changes_three_fields(tmp_path: Path) -> None:
    do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked")))
    Client.objects.update(last_name="Ortega-Halloran", language="es")  # written by hand since
    changed = "V1,C1,Mia,Ortega,+1 212 555 0102,mia@example.org,yes,full set,Ada,2026-06-10T14:00,150,booked\n"

    do_import(book(tmp_path, changed))

    client, visit = Client.objects.get(), Visit.objects.get()
    assert (client.mobile, client.email, visit.minutes) == ("+12125550102", "mia@example.org", 150)
    assert (client.last_name, client.language) == ("Ortega-Halloran", "es")


def test_a_bad_row_changes_nothing_and_leaves_no_studio(tmp_path: Path) -> None:
    good = MIA.format(start="2026-06-10T14:00", status="booked")
    bad = good.replace("V1", "V2").replace("2026-06-10T14:00", "12/03/2026 2:30 PM")
    out = StringIO()

    with pytest.raises(SystemExit) as ended:
        call_command(
            "import_book",
            book(tmp_path, good, bad),
            "--studio=wren",
            "--create",
            "--time-zone=America/New_York",
            "--region=US",
            f"--now={NOW}",
            stdout=out,
            stderr=StringIO(),
        )

    assert ended.value.code == 1
    promised = json.loads(out.getvalue().strip().splitlines()[-1])
    assert [(row["row"], row["field"]) for row in promised["bad_rows"]] == [(3, "starts_at")]
    assert "12/03/2026 2:30 PM" in promised["bad_rows"][0]["problem"]
    assert not Studio.objects.exists()
    assert not Message.objects.exists()


def test_skipping_the_bad_imports_the_good(tmp_path: Path) -> None:
    good = MIA.format(start="2026-06-10T14:00", status="booked")
    bad = good.replace("V1", "V2").replace("2026-06-10T14:00", "soon")

    result = do_import(book(tmp_path, good, bad), "--skip-bad")

    assert result["visits"]["new"] == 1
    assert [row["row"] for row in result["bad_rows"]] == [3]


def test_a_dry_run_says_what_would_happen_and_does_nothing(tmp_path: Path) -> None:
    result = do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked")), "--dry-run")

    assert result["visits"]["new"] == 1
    assert result["messages"]["planned"] == 2
    assert not Studio.objects.exists()


def test_imported_history_stays_quiet(tmp_path: Path) -> None:
    do_import(book(tmp_path, MIA.format(start="2026-03-10T14:00", status="done")))

    assert messages() == {}


def test_a_missing_visit_is_listed_and_left_alone(tmp_path: Path) -> None:
    one = MIA.format(start="2026-06-10T14:00", status="booked")
    two = one.replace("V1", "V2").replace("06-10", "06-20")
    do_import(book(tmp_path, one, two))

    result = do_import(book(tmp_path, two))

    assert result["visits"] == {"new": 0, "changed": 0, "same": 1, "gone": 1}
    assert Visit.objects.get(refs__reference="V1").status == "booked"


def test_yes_never_undoes_an_opt_out_and_no_withdraws_consent(tmp_path: Path) -> None:
    row = MIA.format(start="2026-06-10T14:00", status="booked").replace("mia@example.com", "")
    do_import(book(tmp_path, row))
    assert messages()["V1", "prepare", 0, 1]["channel"] == "sms"

    do_import(book(tmp_path, row.replace("yes", "no")))
    assert messages()["V1", "prepare", 0, 1]["reason"] == "no consent"

    do_import(book(tmp_path, row))
    assert messages()["V1", "prepare", 0, 1]["reason"] == "no consent"


def test_a_rehearsed_message_reaches_the_pretend_phone_alone(tmp_path: Path, mailoutbox: list[Any]) -> None:
    do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked")))

    send("2026-06-07T13:59:59Z")
    assert messages()["V1", "prepare", 0, 1]["state"] == "planned"
    send("2026-06-07T14:00:00Z")

    message = Message.objects.get(occasion="prepare", step=0)
    assert (message.state, message.rehearsed) == ("handed_over", True)
    assert message.address == "+12125550101"
    assert "Mia" in message.text
    assert mailoutbox == []


def test_going_live_says_what_would_leave(tmp_path: Path) -> None:
    do_import(book(tmp_path, MIA.format(start="2026-06-10T14:00", status="booked")))

    assert json.loads(command("go_live", "--studio", "wren")) in ({}, {"prepare": 2}, {"prepare": 1})
    assert Studio.objects.get().live_since is not None
    command("go_live", "--studio", "wren", "--back")
    assert Studio.objects.get().live_since is None
