"""`change_rules`: the owner's numbers by command, with the same limits and the same look ahead as by the page."""

from __future__ import annotations

import json
from datetime import timedelta
from io import StringIO
from typing import Any

import pytest
from django.core.management import CommandError, call_command

from aftercare import planning, ruling
from aftercare.models import Message, RuleSet
from studio.models import Studio
from tests.people import NOW, make_client, make_studio, make_visit

pytestmark = pytest.mark.django_db


@pytest.fixture
def studio() -> Studio:
    made = make_studio()
    her = make_client(made, email="mia@mail.example", time_zone="America/New_York")
    make_visit(her, service="lift", starts_at=NOW + timedelta(days=6))
    planning.plan_studio(made, NOW)
    return made


def change(*args: str) -> dict[str, Any]:
    out = StringIO()
    call_command("change_rules", "--studio=birch", f"--now={NOW.isoformat()}", *args, stdout=out, stderr=StringIO())
    found: dict[str, Any] = json.loads(out.getvalue())
    return found


def test_without_a_change_it_shows_every_number(studio: Studio) -> None:
    found = change()

    assert found["version"] == 0
    assert found["numbers"]["prepare_days"] == 3
    assert found["numbers"]["hours"] == [540, 1200, []]
    assert found["changed"] == []
    assert not RuleSet.objects.exists()


def test_a_dry_run_counts_what_would_move_and_changes_nothing(studio: Studio) -> None:
    before = Message.objects.get(occasion="prepare").due_at

    found = change("--set=prepare_days=4", "--dry-run")

    assert found["moves"] == {"moves": 1, "goes away": 0, "new": 0}
    assert not RuleSet.objects.exists()
    assert Message.objects.get(occasion="prepare").due_at == before


def test_a_change_is_in_force_planned_and_taken_back(studio: Studio) -> None:
    before = Message.objects.get(occasion="prepare").due_at

    assert change("--set=prepare_days=4", "--set=hours=[600,1200]")["changed"] == ["hours", "prepare_days"]
    assert before is not None
    assert Message.objects.get(occasion="prepare").due_at == before - timedelta(days=1)
    found = change("--set=prepare_days=usual", "--set=hours=usual")

    assert (found["version"], found["changed"]) == (2, [])
    assert Message.objects.get(occasion="prepare").due_at == before


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ("prepare_days=15", "The rule prepare_days cannot be 15: write a number from 1 to 14 days."),
        ("prepare_days=-1", "write a whole number, 0 or above"),
        ("prepare_days=four", "is not JSON"),
        ("hours=[420,1200]", "open at 8:00 am or later"),
        ("since=1", "there is no number “since”"),
        ("prepare_days", "Write NAME=VALUE"),
    ],
)
def test_what_cannot_be_is_named_with_its_cure_and_changes_nothing(studio: Studio, given: str, said: str) -> None:
    with pytest.raises(CommandError) as raised:
        change(f"--set={given}")

    assert said in str(raised.value)
    assert not RuleSet.objects.exists()
    assert ruling.values_of(studio) == {}
