"""`list_messages` by its contract: which messages, in which order, and every field of them."""

from __future__ import annotations

import json
from datetime import datetime, timedelta
from io import StringIO
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from django.core.management import CommandError, call_command

from aftercare import planning
from aftercare.models import Message, Wording
from studio import records
from studio.models import Client, ClientRef, Consent, Studio, Visit, VisitRef
from tests.books import everything
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

pytestmark = pytest.mark.django_db

FIELDS = ["visit", "client", "occasion", "step", "edition", "channel", "due_at", "state", "reason", "text"]


def listed_as_table() -> list[str]:
    out = StringIO()
    call_command("list_messages", "--studio=birch", "--now=2027-03-09T15:00:00Z", stdout=out, stderr=StringIO())
    return out.getvalue().splitlines()


def listed(now: str = "2027-03-09T15:00:00Z") -> list[dict[str, Any]]:
    out = StringIO()
    call_command("list_messages", "--studio=birch", "--json", f"--now={now}", stdout=out, stderr=StringIO())
    return [json.loads(line) for line in out.getvalue().splitlines()]


def ready(studio: Studio, name: str = "Mia", **fields: Any) -> Client:
    her = make_client(studio, name, **{"mobile": "+12125550101", "time_zone": "America/New_York", **fields})
    Consent.objects.create(client=her, channel="sms", purpose="visits", given=True, at=NOW, how="on paper")
    return her


def test_each_message_is_one_object_a_line_in_order() -> None:
    studio = make_studio()
    her = ready(studio)
    for reference, days in (("V2", 20), ("V1", 9)):
        visit = make_visit(her, service="full set", starts_at=NOW + timedelta(days=days))
        VisitRef.objects.create(studio=studio, source="csv", reference=reference, visit=visit)
    planning.catch_up(NOW)

    rows = listed()

    assert all(list(row) == FIELDS for row in rows)
    assert [(row["visit"], row["step"]) for row in rows] == [("V1", 0), ("V1", 1), ("V2", 0), ("V2", 1)]
    assert rows[0]["due_at"] == "2027-03-15T14:00:00Z"  # 10:00 in New York, by then four hours behind
    assert {(row["state"], row["reason"], row["channel"], row["edition"]) for row in rows} == {
        ("planned", None, "sms", 1)
    }


def test_a_withheld_message_says_why_and_may_lack_the_rest() -> None:
    studio = make_studio()
    make_visit(make_client(studio), service="lift", starts_at=NOW + timedelta(days=9))
    planning.catch_up(NOW)

    (row,) = listed()

    assert (row["state"], row["reason"], row["channel"], row["text"]) == ("withheld", "no way to reach her", None, None)


def test_the_text_is_as_it_would_be_now_until_it_is_handed_over_and_then_as_it_was() -> None:
    studio = make_studio()
    her = ready(studio)
    make_visit(her, service="lift", starts_at=NOW + timedelta(days=9))
    planning.catch_up(NOW)
    assert "Mia" in listed()[0]["text"]

    Client.objects.update(first_name="Maria")
    assert "Maria" in listed()[0]["text"]

    Message.objects.update(state="handed_over", text="Hi Mia, as it was.")
    assert listed()[0]["text"] == "Hi Mia, as it was."


def test_her_language_is_spoken() -> None:
    studio = make_studio()
    make_visit(ready(studio, language="es"), service="lift", starts_at=NOW + timedelta(days=9))
    planning.catch_up(NOW)

    assert "jueves 18 de marzo" in listed()[0]["text"]


def test_an_unknown_studio_is_named_with_those_that_are_known() -> None:
    make_studio("other")

    with pytest.raises(CommandError, match="no studio “birch”. Known here: other"):
        listed()


def refer(visit: Visit, reference: str, client: str = "", source: str = "csv") -> None:
    said = {"client": client} if client else {}
    VisitRef.objects.create(studio=visit.studio, source=source, reference=reference, visit=visit, said=said)


def test_they_are_sorted_by_the_books_reference_then_occasion_step_and_edition() -> None:
    studio = make_studio()
    her = ready(studio)
    for reference in ("V10", "V9", "a", "B"):
        visit = make_visit(her)
        refer(visit, reference)
        for occasion, step, edition in (("prepare", 1, 1), ("prepare", 0, 2), ("prepare", 0, 1), ("care", 0, 1)):
            Message.objects.create(
                studio=studio,
                client=her,
                visit=visit,
                occasion=occasion,
                step=step,
                edition=edition,
                key=f"{visit.pk}:{occasion}:{step}:{edition}",
                planned_from=NOW,
            )

    rows = [(row["visit"], row["occasion"], row["step"], row["edition"]) for row in listed()]

    assert rows == sorted(rows)
    assert [row[0] for row in rows[::4]] == ["B", "V10", "V9", "a"]


@pytest.mark.parametrize(
    ("due", "shown"),
    [
        (NOW.replace(microsecond=999_999), "2027-03-09T15:00:00Z"),
        (NOW.astimezone(ZoneInfo("Asia/Kolkata")), "2027-03-09T15:00:00Z"),
        (None, None),
    ],
)
def test_a_due_moment_is_utc_in_whole_seconds_or_null(due: datetime | None, shown: str | None) -> None:
    studio = make_studio()
    Message.objects.create(
        studio=studio, client=ready(studio), occasion="care", key="1", planned_from=NOW, due_at=due, state="withheld"
    )

    assert listed()[0]["due_at"] == shown


@pytest.mark.parametrize(
    ("state", "reason", "shown"),
    [
        ("planned", "The mail server is busy.", None),
        ("withheld", "too late", "too late"),
        ("withdrawn", "the visit was cancelled", "the visit was cancelled"),
        ("undelivered", "not a mobile", "not a mobile"),
        ("handed_over", "", None),
    ],
)
def test_the_reason_is_null_when_planned(state: str, reason: str, shown: str | None) -> None:
    studio = make_studio()
    Message.objects.create(
        studio=studio, client=ready(studio), occasion="care", key="1", planned_from=NOW, state=state, reason=reason
    )

    (row,) = listed()

    assert (row["state"], row["reason"]) == (state, shown)


def test_listing_plans_nothing_and_changes_nothing_whatever_now_is_said() -> None:
    studio = make_studio()
    make_visit(ready(studio), service="lift", starts_at=NOW + timedelta(days=9))
    planning.catch_up(NOW)
    make_visit(ready(studio, "Zoe"), service="lift", starts_at=NOW + timedelta(days=9))
    before = everything()

    rows = [listed(now) for now in ("2027-03-09T15:00:00Z", "2027-03-18T20:00:00Z", "2031-01-01T00:00:00+05:30")]

    assert everything() == before
    shown = [{name: value for name, value in row.items() if name != "text"} for (row,) in rows]
    assert shown[0] == shown[1] == shown[2]


def test_a_client_whom_a_merge_made_one_is_named_as_the_book_names_her_on_that_visit() -> None:
    studio = make_studio()
    her = ready(studio)
    for number, days in ((1, 9), (2, 20)):
        ClientRef.objects.create(studio=studio, source="csv", reference=f"C{number}", client=her)
        refer(make_visit(her, service="lift", starts_at=NOW + timedelta(days=days)), f"V{number}", f"C{number}")
    refer(make_visit(her, service="lift", starts_at=NOW + timedelta(days=40)), "V3", "C7")
    planning.catch_up(NOW)

    assert [(row["visit"], row["client"]) for row in listed()] == [("V1", "C1"), ("V2", "C2"), ("V3", "C1")]


def test_what_was_written_by_hand_has_a_name_too() -> None:
    studio = make_studio()
    her = ready(studio)
    visit = make_visit(her, service="lift", starts_at=NOW + timedelta(days=9))
    planning.catch_up(NOW)

    (row,) = listed()

    assert (row["visit"], row["client"]) == (f"visit-{visit.pk}", f"client-{her.pk}")


def test_an_answer_to_a_number_that_nobody_has_is_listed_and_a_message_to_staff_is_not() -> None:
    studio = make_studio()
    about = {"studio": studio, "planned_from": NOW, "channel": "sms"}
    Message.objects.create(occasion="answer", kind="help", key="1", state="handed_over", text="Call us.", **about)
    Message.objects.create(occasion="alert", staff=make_staff(studio), key="2", **about)

    assert [(row["occasion"], row["client"], row["visit"], row["text"]) for row in listed()] == [
        ("answer", None, None, "Call us.")
    ]


def test_another_studios_messages_are_not_listed() -> None:
    make_studio()
    make_visit(ready(make_studio("elm")), service="lift", starts_at=NOW + timedelta(days=9))
    planning.catch_up(NOW)

    assert listed() == []


def test_a_moved_visit_is_spoken_of_where_it_is_now_and_its_history_where_it_was() -> None:
    studio = make_studio()
    visit = make_visit(ready(studio), service="lift", starts_at=NOW + timedelta(days=9))
    planning.catch_up(NOW)
    Message.objects.update(state="delivered", text="Thursday 18 March, as it was.")

    records.save_visit(studio=studio, visit=visit, by=None, now=NOW, starts_at=NOW + timedelta(days=10))
    planning.catch_up(NOW)

    first, second = listed()
    assert (first["edition"], first["text"]) == (1, "Thursday 18 March, as it was.")
    assert second["edition"] == 2
    assert "Friday 19 March" in second["text"]
    assert "now" in second["text"]


def test_a_withdrawn_message_about_a_visit_that_is_no_longer_hers_has_no_text() -> None:
    studio = make_studio()
    her = ready(studio)
    make_visit(her, service="lift", starts_at=NOW + timedelta(days=9))
    planning.catch_up(NOW)
    Visit.objects.update(client=make_client(studio, "Zoe"))

    assert [row["text"] for row in listed()] == [None]


def test_a_wording_that_cannot_be_rendered_gives_way_to_the_first_wording() -> None:
    studio = make_studio()
    her = ready(studio)
    make_visit(her, service="lift", starts_at=NOW + timedelta(days=9))
    planning.catch_up(NOW)
    Wording.objects.create(
        studio=studio,
        occasion="prepare",
        kind="lift",
        channel="sms",
        language="en",
        version=1,
        body="{{ nothing_of_the_kind }}",
        at=NOW,
    )
    err = StringIO()
    out = StringIO()

    call_command("list_messages", "--studio=birch", "--json", stdout=out, stderr=err)

    (row,) = [json.loads(line) for line in out.getvalue().splitlines()]
    assert row["state"] == "planned"
    assert "Bare clean lashes" in row["text"]


def test_without_json_it_is_a_table_to_read() -> None:
    studio = make_studio()
    refer(make_visit(ready(studio), service="lift", starts_at=NOW + timedelta(days=9)), "V1")
    planning.catch_up(NOW)

    assert listed_as_table() == ["2027-03-15T14:00:00Z  V1  prepare 0  sms  planned"]
