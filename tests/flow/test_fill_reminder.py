"""The fill reminder by the commands: what was seen of her sets says when it goes, and it goes then and not sooner."""

from __future__ import annotations

import json
import math
from datetime import UTC, date, datetime, timedelta
from io import StringIO
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from django.core.management import call_command

from aftercare.models import Message
from studio.models import Studio

pytestmark = pytest.mark.django_db

NOW = "2026-06-01T12:00:00Z"  # a Monday, 8:00 in New York
HEADER = (
    "visit,client,first_name,mobile,sms_ok,sms_reminders_ok,service,artist,starts_at,status,share_left,adhesive_lot\n"
)
LAST = date(2026, 5, 25)
LEAD, NOT_SOONER = 7, 9  # days; the defaults (common practice, no source)
# What was left of each client's sets, oldest first, the days that each was on, and the day she got the one she wears.
SEEN: dict[str, tuple[list[int], int, date]] = {
    "mia": ([75, 80, 75, 80], 20, LAST),
    "zoe": ([50, 55, 45, 50], 20, LAST),
    "ada": ([70, 65, 60, 70], 19, date(2026, 5, 20)),
    "ines": ([60, 65], 21, date(2026, 5, 12)),
}


def days_of(client: str) -> list[date]:
    shares, every, last = SEEN[client]
    return [last - timedelta(days=every * ago) for ago in reversed(range(len(shares) + 1))]


def book(tmp_path: Path, *more: str) -> str:
    rows = []
    for number, (client, (shares, _, _)) in enumerate(SEEN.items()):
        for at, (day, share) in enumerate(zip(days_of(client), ["", *shares], strict=True)):
            service = "fill" if at else "full set"
            who = f"{client}-{at},{client},{client.title()},+1 212 555 010{number},yes,yes"
            rows.append(f"{who},{service},Noor,{day}T14:00,done,{share},0226\n")
    file = tmp_path / "book.csv"
    file.write_text(HEADER + "".join([*rows, *more]), encoding="utf-8")
    return str(file)


def command(name: str, *args: str) -> str:
    out = StringIO()
    call_command(name, *args, stdout=out, stderr=StringIO())
    return out.getvalue()


def do_import(file: str, now: str = NOW) -> dict[str, Any]:
    create = ("--create", "--time-zone", "America/New_York", "--region", "US")
    out = command("import_book", file, "--studio", "wren", "--now", now, *create)
    return dict(json.loads(out.strip().splitlines()[-1]))


def messages(now: str = NOW) -> dict[tuple[str, str], dict[str, Any]]:
    lines = command("list_messages", "--studio", "wren", "--json", "--now", now).splitlines()
    return {(row["visit"], row["occasion"]): row for row in map(json.loads, lines)}


def send(now: str) -> dict[str, int]:
    return dict(json.loads(command("send_due", "--studio", "wren", "--now", now)))


def forecast(tmp_path: Path) -> dict[str, dict[str, list[float]]]:
    """The same readings through the command that has no database."""
    rows = ["client,set_on,observed_on,fraction_left,adhesive_lot"]
    for client, (shares, _, last) in SEEN.items():
        days = days_of(client)
        for on, off, share in zip(days, days[1:], shares, strict=False):
            rows.append(f"{client},{on},{off},{share / 100},0226")
        rows.append(f"{client},{last},,,0226")
    (tmp_path / "seen.csv").write_text("\n".join(rows))
    out = tmp_path / "forecast.json"
    command("forecast_fills", str(tmp_path / "seen.csv"), "--out", str(out), "--today", NOW[:10])
    return dict(json.loads(out.read_text()))


def ten_oclock(day: date) -> str:
    local = datetime(day.year, day.month, day.day, 10, tzinfo=ZoneInfo("America/New_York"))
    return f"{local.astimezone(UTC):%Y-%m-%dT%H:%M:%SZ}"


def fill_aim(on: date, days: dict[str, list[float]]) -> date:
    """By the default rules: the earlier of the fill level's median and the full-set level's 10 % day, less the lead."""
    return on + timedelta(days=math.floor(max(min(days["0.6"][1], days["0.4"][0]) - LEAD, NOT_SOONER)))


def test_when_it_goes_follows_from_what_was_seen_of_her_sets(tmp_path: Path) -> None:
    do_import(book(tmp_path))

    found, days = messages(), forecast(tmp_path)
    assert found["mia-4", "fill_due"]["due_at"] == ten_oclock(fill_aim(LAST, days["mia"]))
    assert found["zoe-4", "fill_due"]["due_at"] == ten_oclock(fill_aim(LAST, days["zoe"]))
    assert found["mia-4", "fill_due"]["due_at"] > found["zoe-4", "fill_due"]["due_at"], "of hers more was left"
    full_set = LAST + timedelta(days=math.floor(days["zoe"]["0.4"][1]))
    assert found["zoe-4", "full_set_due"]["due_at"] == ten_oclock(full_set)
    assert {found[visit, "fill_due"]["state"] for visit in ("mia-4", "zoe-4")} == {"planned"}
    assert {visit for visit, _ in found} <= {"mia-4", "zoe-4", "ada-4", "ines-2"}, "each client's last set alone"


def test_it_reaches_the_pretend_phone_at_that_moment_and_not_sooner(tmp_path: Path) -> None:
    do_import(book(tmp_path))
    due = messages()["mia-4", "fill_due"]["due_at"]
    before = f"{datetime.fromisoformat(due) - timedelta(seconds=1):%Y-%m-%dT%H:%M:%SZ}"

    send(before)
    assert messages(before)["mia-4", "fill_due"]["state"] == "planned"
    send(due)

    message = Message.objects.get(occasion="fill_due", visit__refs__reference="mia-4")
    assert (message.state, message.rehearsed, message.address) == ("handed_over", True, "+12125550100")
    assert "Mia" in message.text
    assert "between " in message.text, "with the days that are good for it"
    assert send(due)["handed_over"] == 0, "and once"


def test_a_set_that_is_booked_in_time_needs_no_reminder(tmp_path: Path) -> None:
    do_import(book(tmp_path))
    booked = "mia-5,mia,Mia,+1 212 555 0100,yes,yes,fill,Noor,{day}T14:00,booked,,\n"

    do_import(book(tmp_path, booked.format(day="2026-06-16")), now="2026-06-02T12:00:00Z")

    found = messages()
    assert (found["mia-4", "fill_due"]["state"], found["mia-4", "fill_due"]["reason"]) == ("withheld", "already booked")
    assert found["mia-4", "full_set_due"]["reason"] == "already booked"
    assert found["zoe-4", "fill_due"]["state"] == "planned"
    do_import(book(tmp_path, booked.format(day="2026-08-10")), now="2026-06-03T12:00:00Z")
    assert messages()["mia-4", "fill_due"]["state"] == "planned", (
        "so late a visit is met with the offer of an earlier one"
    )


def test_a_new_set_takes_the_old_ones_reminders_along(tmp_path: Path) -> None:
    do_import(book(tmp_path))
    filled = "mia-5,mia,Mia,+1 212 555 0100,yes,yes,fill,Noor,2026-06-12T14:00,done,80,0226\n"

    do_import(book(tmp_path, filled), now="2026-06-12T22:00:00Z")

    found = messages("2026-06-12T22:00:00Z")
    assert found["mia-4", "fill_due"]["state"] == "withdrawn"
    assert found["mia-5", "fill_due"]["state"] == "planned"
    assert found["mia-5", "fill_due"]["due_at"] > "2026-06-21", "not sooner than nine days after it"


def test_what_was_due_before_the_first_book_waits_for_the_owner(tmp_path: Path) -> None:
    do_import(book(tmp_path))

    late = messages()["ines-2", "fill_due"]
    assert (late["state"], late["reason"]) == ("withheld", "waiting for the owner's go")
    assert Studio.objects.get().first_import_at == datetime(2026, 6, 1, 12, tzinfo=UTC)


def test_the_same_book_twice_leaves_forecasts_and_reminders_as_they_are(tmp_path: Path) -> None:
    file = book(tmp_path)
    do_import(file)
    before = messages()

    again = do_import(file, now="2026-06-01T13:00:00Z")

    assert again["messages"] == {"planned": 0, "withheld": 0, "withdrawn": 0}
    assert messages() == before
