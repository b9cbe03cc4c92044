"""`list_messages` and `go_live` by their contract."""

from __future__ import annotations

import json
from datetime import timedelta
from io import StringIO
from typing import Any

import pytest
from django.core.management import CommandError, call_command

from aftercare import planning
from aftercare.models import Message
from studio import clock
from studio.models import Client, Consent, Studio, VisitRef
from tests.people import NOW, make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db

FIELDS = ["visit", "client", "occasion", "step", "edition", "channel", "due_at", "state", "reason", "text"]


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


def test_going_live_counts_what_leaves_in_two_days_by_occasion() -> None:
    studio = make_studio()
    now = clock.now()
    her = ready(studio)
    make_visit(her, service="lift", starts_at=now + timedelta(days=4), heard_at=now - timedelta(days=9))
    make_visit(her, service="lift", starts_at=now + timedelta(days=30), heard_at=now - timedelta(days=9))
    planning.catch_up(now)
    out = StringIO()

    call_command("go_live", "--studio=birch", stdout=out, stderr=StringIO())
    assert json.loads(out.getvalue()) == {"prepare": 1}
    studio.refresh_from_db()
    assert not studio.in_rehearsal

    call_command("go_live", "--studio=birch", "--back", stdout=StringIO(), stderr=StringIO())
    studio.refresh_from_db()
    assert studio.in_rehearsal
