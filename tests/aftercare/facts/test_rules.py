"""The rules in force."""

from __future__ import annotations

import json
from dataclasses import fields
from datetime import date, timedelta

import pytest

from aftercare import facts, planning
from aftercare.core.hours import Hours
from aftercare.core.limits import LIMITS, Unit, Why, problems
from aftercare.core.timing import Rules
from aftercare.facts import rules
from aftercare.models import RuleSet
from studio.models import Client, ClosingDay
from tests.people import NOW, make_client, make_studio, make_visit


def test_they_are_the_defaults_where_the_owner_set_none() -> None:
    assert facts.rules_from({}, "US") == Rules()


@pytest.mark.parametrize(("region", "everyone"), [("GB", True), ("IE", True), ("US", False), ("ES", False)])
def test_every_first_client_is_tested_in_two_regions_unless_the_owner_says_otherwise(
    region: str, everyone: bool
) -> None:
    assert facts.rules_from({}, region).test_everyone is everyone
    assert facts.rules_from({"test_everyone": not everyone}, region).test_everyone is not everyone


def test_the_owners_numbers_come_as_core_wants_them_and_unknown_names_do_nothing() -> None:
    values = {"hours": [600, 1080], "care_hours": [480, 1200], "check_days": [1, 3, 6], "colour": "red", "at": 660}

    found = facts.rules_from(values, "US")

    assert (found.hours, found.care_hours) == (Hours(600, 1080), Hours(480, 1200))
    assert (found.check_days, found.at) == ((1, 3, 6), 660)
    assert found.prepare_days == Rules().prepare_days


@pytest.mark.django_db
def test_the_highest_version_of_this_studio_is_in_force() -> None:
    studio, elm = make_studio(), make_studio("elm")
    for place, version, days in ((studio, 2, 5), (studio, 1, 4), (elm, 9, 6)):
        RuleSet.objects.create(studio=place, version=version, values={"prepare_days": days}, at=NOW)

    assert facts.rules_of(studio).prepare_days == 5


def test_reminders_stay_away_from_closing_days_and_the_weekdays_off() -> None:
    closed = [date(2027, 3, 17)]

    assert facts.in_force({}, "US", closed).reminder_hours == Hours(600, 1140, frozenset({6}), frozenset(closed))
    given = facts.rules_from({"reminder_hours": [660, 1080]}, "US").reminder_hours
    assert given == Hours(660, 1080, frozenset({6}))
    given = facts.rules_from({"reminder_hours": [660, 1080, [0, 6]]}, "US").reminder_hours
    assert given == Hours(660, 1080, frozenset({0, 6}))


def test_levels_and_tiers_come_as_core_wants_them() -> None:
    found = facts.rules_from({"fill_level": 0.5, "fill_minutes": [[0.5, 60], [0, 100]], "lead_days": 10}, "US")

    assert (found.fill_level, found.lead_days) == (0.5, 10)
    assert found.fill_minutes == ((0.5, 60), (0.0, 100))


@pytest.mark.parametrize(
    ("name", "value", "cure"),
    [
        ("lead_days", -1, "a whole number"),
        ("lead_days", 7.5, "a whole number"),
        ("lead_days", True, "a whole number"),
        ("at", 1440, "minutes since midnight"),
        ("test_everyone", 1, "true or false"),
        ("fill_level", 60, "a share above 0 and below 1"),
        ("fill_level", "0.6", "a share above 0 and below 1"),
        ("hours", [600], "two numbers of minutes"),
        ("hours", [1140, 600], "two numbers of minutes"),
        ("reminder_hours", [600, 1140, [7]], "the weekdays off"),
        ("reminder_hours", "600", "two numbers of minutes"),
        ("check_days", [2, 4], "three whole numbers"),
        ("check_days", [2, 4, 4], "each above the one before"),
        ("fill_minutes", [], "pairs of a share and minutes"),
        ("fill_minutes", [[0.3, 60]], "falling to 0"),
        ("fill_minutes", [[0.3, 60], [0.5, 70], [0, 90]], "falling to 0"),
        ("fill_minutes", [[0.3, 60, 1], [0, 90]], "pairs of a share and minutes"),
    ],
)
def test_a_number_that_cannot_be_a_rule_is_named_with_its_cure(name: str, value: object, cure: str) -> None:
    with pytest.raises(facts.BadRule, match=cure) as raised:
        facts.rules_from({name: value}, "US")

    assert name in str(raised.value)
    assert repr(value) in str(raised.value)


def test_a_set_is_at_the_fill_level_before_the_full_set_level() -> None:
    with pytest.raises(facts.BadRule, match="fill_level cannot be 0.4: write more than 40 %"):
        facts.rules_from({"fill_level": 0.4}, "US")


@pytest.mark.django_db
def test_the_closing_days_are_this_studios() -> None:
    studio, elm = make_studio(), make_studio("elm")
    ClosingDay.objects.create(studio=studio, date=date(2027, 3, 17))
    ClosingDay.objects.create(studio=elm, date=date(2027, 3, 18))

    assert facts.rules_of(studio).reminder_hours.days_off == {date(2027, 3, 17)}


@pytest.mark.parametrize(
    ("name", "value", "cure"),
    [
        ("prepare_days", 15, "write a number from 1 to 14 days."),
        ("at", 1261, "write an hour from 7:00 am to 9:00 pm."),
        ("fill_level", 0.9, "write a number from 40 % to 85 % of a set."),
        ("hours", [450, 1200], "open at 8:00 am or later and close at 9:00 pm or earlier"),
        ("set_checks", 0, "write a number from 1 to 3 checks."),
        ("check_days", [1, 2, 15], "the third by day 14"),
        ("fill_minutes", [[0.5, 10], [0, 20]], "from 15 to 300 minutes"),
    ],
)
def test_a_number_beyond_its_limits_is_named_with_its_cure(name: str, value: object, cure: str) -> None:
    with pytest.raises(facts.BadRule) as raised:
        facts.rules_from({name: value}, "US")

    assert f"The rule {name} cannot be {value!r}: " in str(raised.value)
    assert cure in str(raised.value)
    assert cure in raised.value.cures[name]


def test_every_reason_and_every_unit_has_its_words() -> None:
    assert set(rules._SAID) == set(Why)
    assert set(rules.UNITS) == set(Unit)


def test_what_is_on_record_is_narrowed_to_a_new_region_and_does_not_stop_the_others() -> None:
    stored = {"hours": [420, 1320], "prepare_days": 5}
    assert facts.rules_from(stored, "ES").hours == Hours(420, 1320)

    moved = facts.in_force(stored, "US")

    assert moved.hours == Hours(480, 1260)
    assert moved.prepare_days == 5


@pytest.mark.parametrize(
    "values",
    [
        *({name: 10**12} for name, limit in LIMITS.items() if limit.unit in (Unit.DAYS, Unit.HOURS, Unit.MINUTES)),
        {"at": 1439},
        {"check_days": [500, 600, 700]},
        {"hours": [0, 1]},
        {"care_minutes": "soon"},
        {"reminder_hours": "all"},
        {"fill_minutes": []},
    ],
    ids=str,
)
def test_what_was_stored_past_every_limit_is_cut_off_or_as_usual_and_stops_nothing(values: dict[str, object]) -> None:
    found = facts.in_force({**values, "lead_days": 9}, "US")

    beyond = {Why.BEYOND, Why.OUTSIDE, Why.CHECK_DAYS, Why.TIERS}
    assert not {problem.why for problem in problems(found, "US")} & beyond
    assert found.lead_days == 9


@pytest.mark.django_db
def test_one_studios_stored_number_never_keeps_others_from_being_planned() -> None:
    studio = make_studio()
    her = make_client(studio, mobile="+12125550101")
    make_visit(her, starts_at=NOW + timedelta(days=9))
    RuleSet.objects.create(studio=studio, version=1, values={"evening_days": 10**6, "care_minutes": "x"}, at=NOW)

    planning.catch_up(NOW)

    assert Client.objects.get().planned_revision == Client.objects.get().revision


def test_values_come_back_as_they_were_stored() -> None:
    stored = facts.defaults("US")

    assert set(stored) == {one.name for one in fields(Rules)} - {"since"}
    assert facts.rules_from(stored, "US") == Rules()
    assert facts.to_values(facts.rules_from(json.loads(json.dumps(stored)), "US")) == stored
