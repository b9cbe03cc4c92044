"""Changing the owner's numbers."""

from __future__ import annotations

from datetime import timedelta

import pytest
from django.core.exceptions import ValidationError

from aftercare import facts, ruling
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
