"""The rules in force."""

from __future__ import annotations

import pytest

from aftercare import facts
from aftercare.core.hours import Hours
from aftercare.core.timing import Rules
from aftercare.models import RuleSet
from tests.people import NOW, make_studio


def test_they_are_the_defaults_where_the_owner_set_none() -> None:
    assert facts.rules_from({}, "US") == Rules()


@pytest.mark.parametrize(("region", "everyone"), [("GB", True), ("IE", True), ("US", False), ("ES", False)])
def test_every_first_client_is_tested_in_two_regions_unless_the_owner_says_otherwise(
    region: str, everyone: bool
) -> None:
    assert facts.rules_from({}, region).test_everyone is everyone
    assert facts.rules_from({"test_everyone": not everyone}, region).test_everyone is not everyone


def test_the_owners_numbers_come_as_core_wants_them_and_unknown_names_do_nothing() -> None:
    values = {"hours": [600, 1080], "care_hours": [420, 1200], "check_days": [1, 3, 6], "colour": "red", "at": 540}

    rules = facts.rules_from(values, "US")

    assert (rules.hours, rules.care_hours) == (Hours(600, 1080), Hours(420, 1200))
    assert (rules.check_days, rules.at) == ((1, 3, 6), 540)
    assert rules.prepare_days == Rules().prepare_days


@pytest.mark.django_db
def test_the_highest_version_of_this_studio_is_in_force() -> None:
    studio, elm = make_studio(), make_studio("elm")
    for place, version, days in ((studio, 2, 5), (studio, 1, 4), (elm, 9, 6)):
        RuleSet.objects.create(studio=place, version=version, values={"prepare_days": days}, at=NOW)

    assert facts.rules_of(studio).prepare_days == 5
