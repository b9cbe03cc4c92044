"""Changing the owner's numbers."""

from __future__ import annotations

import re
from datetime import timedelta
from pathlib import Path

import pytest
from django.core.exceptions import ValidationError

from aftercare import facts, ruling
from aftercare.core import limits
from aftercare.models import RuleSet
from studio.models import Client
from tests.cast import Cast, make
from tests.people import NOW, make_client, make_studio


@pytest.fixture
def cast(db: None) -> Cast:
    return make()


def test_a_change_is_one_version_more_and_leaves_the_other_numbers(cast: Cast) -> None:
    ruling.change(cast.studio, by=cast.olga, now=NOW, prepare_days=5)
    made = ruling.change(cast.studio, by=cast.olga, now=NOW + timedelta(days=1), lead_days=3)

    assert made.version == 2
    assert RuleSet.objects.count() == 2
    rules = facts.rules_of(cast.studio)
    assert (rules.prepare_days, rules.lead_days) == (5, 3)


def test_whoever_is_planned_from_it_is_planned_anew_and_nobody_elses_clients(cast: Cast) -> None:
    mia, other = cast.client("Mia", "Quist"), make_client(make_studio(slug="elsewhere"))
    before = mia.revision, other.revision

    ruling.change(cast.studio, by=cast.olga, now=NOW, lot_chance=0.1)
    assert Client.objects.get(pk=mia.pk).revision == before[0]
    ruling.change(cast.studio, by=cast.olga, now=NOW, prepare_days=5)

    assert Client.objects.get(pk=mia.pk).revision == before[0] + 1
    assert Client.objects.get(pk=other.pk).revision == before[1]


def test_a_number_that_cannot_be_a_rule_is_refused_with_the_cure_and_changes_nothing(cast: Cast) -> None:
    with pytest.raises(ValidationError, match="prepare_days cannot be -1: write a whole number, 0 or above"):
        ruling.change(cast.studio, by=cast.olga, now=NOW, prepare_days=-1)

    assert not RuleSet.objects.exists()


def test_a_number_as_the_service_came_is_no_number_of_hers(cast: Cast) -> None:
    ruling.change(cast.studio, by=cast.olga, now=NOW, prepare_days=5, lead_days=3)
    made = ruling.change(cast.studio, by=cast.olga, now=NOW, prepare_days=3)

    assert made.values == {"lead_days": 3}


def test_of_two_who_saw_the_same_version_the_second_is_refused_and_changes_nothing(cast: Cast) -> None:
    seen = ruling.version_of(cast.studio)
    ruling.change(cast.studio, by=cast.olga, now=NOW, seen=seen, prepare_days=5)

    with pytest.raises(ValidationError, match="changed the rules meanwhile"):
        ruling.change(cast.studio, by=cast.olga, now=NOW, seen=seen, prepare_days=6)

    assert facts.rules_of(cast.studio).prepare_days == 5


def test_an_earlier_version_is_put_back_as_a_whole_and_plans_anew(cast: Cast) -> None:
    mia = cast.client("Mia", "Quist")
    first = ruling.change(cast.studio, by=cast.olga, now=NOW, prepare_days=5)
    ruling.change(cast.studio, by=cast.olga, now=NOW, lead_days=9, prepare_days=6)
    before = Client.objects.get(pk=mia.pk).revision

    ruling.put(cast.studio, first.values, by=cast.olga, now=NOW, seen=2)

    assert ruling.values_of(cast.studio) == {"prepare_days": 5}
    assert Client.objects.get(pk=mia.pk).revision == before + 1


def test_numbers_that_plan_nothing_are_just_those_that_no_plan_reads() -> None:
    """The modules that a message's moment follows from; a number that none of them names moves nothing."""
    core = Path(ruling.__file__).parent / "core"
    modules = ("table", "reminders", "promises", "patchtests", "visits", "timing", "rules")
    source = "".join((core / f"{name}.py").read_text("utf-8") for name in modules)
    read = {name for name in limits.NUMBERS if re.search(rf"rules\.{name}\b|self\.{name}\b", source)}
    levels = {"fill_level", "full_set_level"}  # forecasts are made for them

    assert set(limits.NUMBERS) - read - levels == ruling.PLANS_NOTHING
