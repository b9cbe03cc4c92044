"""Two records of one client are merged, and the book, which knows of no merge, comes in again."""

from __future__ import annotations

import json
from collections import Counter
from io import StringIO
from pathlib import Path
from typing import Any

import pytest
from django.core.management import call_command

from aftercare import planning
from aftercare.management.arguments import moment
from aftercare.models import Message
from studio import records
from studio.models import Client, Visit

pytestmark = pytest.mark.django_db

NOW = "2027-03-01T15:00:00Z"
HEADER = "visit,client,first_name,email,email_ok,service,starts_at,minutes,status\n"
FIRST = "V1,C1,Mia,mia@example.com,yes,lift,2027-03-12T14:30,60,booked\n"
SECOND = "V2,C2,Mia,mia@example.org,yes,lift,2027-03-19T14:30,60,booked\n"


def do_import(tmp_path: Path, *rows: str) -> dict[str, Any]:
    file = tmp_path / "book.csv"
    file.write_text(HEADER + "".join(rows), encoding="utf-8")
    out = StringIO()
    create = ("--create", "--time-zone=America/New_York", "--region=US")
    command = ("import_book", str(file), "--studio=wren", f"--now={NOW}", *create)
    call_command(*command, stdout=out, stderr=StringIO())
    return dict(json.loads(out.getvalue().splitlines()[-1]))


def merged(tmp_path: Path) -> tuple[Client, Client]:
    """Bring in the two of them, merge them and plan; return who is kept and who is gone."""
    do_import(tmp_path, FIRST, SECOND)
    kept, gone = Client.objects.order_by("pk")
    now = moment(NOW)
    assert now is not None
    records.merge(kept=kept, gone=gone, by=None, now=now)
    planning.catch_up(now)
    return kept, gone


def standing() -> Counter[tuple[str, str, str]]:
    """Count messages by the book's reference of the visit, occasion and state."""
    rows = Message.objects.values_list("visit__refs__reference", "occasion", "state")
    return Counter((str(visit), str(occasion), str(state)) for visit, occasion, state in rows)


def test_the_same_book_brings_nobody_back_and_plans_nothing_twice(tmp_path: Path) -> None:
    kept, _gone = merged(tmp_path)
    before = list(Message.objects.order_by("pk").values())

    result = do_import(tmp_path, FIRST, SECOND)

    assert result["clients"] == {"new": 0, "changed": 0, "same": 2}
    assert result["visits"] == {"new": 0, "changed": 0, "same": 2, "gone": 0}
    assert set(Visit.objects.values_list("client", flat=True)) == {kept.pk}
    assert standing() == {("V1", "prepare", "planned"): 1, ("V2", "prepare", "planned"): 1}
    assert list(Message.objects.order_by("pk").values()) == before


def test_a_visit_that_the_book_moves_stays_hers_and_is_planned_in_place(tmp_path: Path) -> None:
    kept, _gone = merged(tmp_path)

    result = do_import(tmp_path, FIRST, SECOND.replace("03-19", "03-26"))

    assert result["visits"]["changed"] == 1
    assert set(Visit.objects.values_list("client", flat=True)) == {kept.pk}
    assert set(Message.objects.values_list("client", "state")) == {(kept.pk, "planned")}
    assert standing() == {("V1", "prepare", "planned"): 1, ("V2", "prepare", "planned"): 1}


def test_a_new_visit_under_the_reference_that_went_is_hers_who_was_kept(tmp_path: Path) -> None:
    kept, gone = merged(tmp_path)

    do_import(tmp_path, FIRST, SECOND, SECOND.replace("V2", "V3").replace("03-19", "03-29"))

    assert Visit.objects.get(refs__reference="V3").client == kept
    assert not Visit.objects.filter(client=gone).exists()
    assert standing()["V3", "prepare", "planned"] == 1


def test_a_no_under_the_reference_that_went_counts_for_her_who_was_kept(tmp_path: Path) -> None:
    kept, _gone = merged(tmp_path)

    do_import(tmp_path, FIRST, SECOND.replace("yes", "no"))

    newest = kept.consents.order_by("-at", "-pk").filter(channel="email", purpose="visits").first()
    assert newest is not None
    assert not newest.given
    assert set(Message.objects.values_list("state", "reason")) == {("withheld", "no consent")}
