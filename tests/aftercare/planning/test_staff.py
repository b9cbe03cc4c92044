from __future__ import annotations

from datetime import datetime, time, timedelta

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from aftercare.lines import lines_of
from aftercare.models import Message, Stop
from aftercare.planning import plan_mornings
from studio.models import Staff, Studio
from tests.people import make_staff, make_studio

pytestmark = pytest.mark.django_db
HALF_PAST_SEVEN = datetime.fromisoformat("2027-03-09T07:30:00-05:00")
MINUTE = timedelta(minutes=1)


@pytest.fixture
def studio() -> Studio:
    return make_studio()


@pytest.fixture
def ada(studio: Studio) -> Staff:
    return make_staff(studio, mobile="+12125550111", email="ada@mail.example", is_artist=True)


def test_each_gets_one_list_a_day_at_her_hour(ada: Staff) -> None:
    assert plan_mornings(HALF_PAST_SEVEN - MINUTE) == 0
    assert plan_mornings(HALF_PAST_SEVEN) == 1
    assert plan_mornings(HALF_PAST_SEVEN + MINUTE) == 0
    assert plan_mornings(HALF_PAST_SEVEN + timedelta(days=1)) == 1

    first = Message.objects.earliest("due_at")
    assert first.key == f"artist:{ada.pk}:morning_list:2027-03-09"
    assert (first.staff, first.client, first.occasion, first.state) == (ada, None, "morning_list", "planned")
    assert first.due_at == HALF_PAST_SEVEN
    assert first.no_later_than == HALF_PAST_SEVEN + timedelta(hours=4)


def test_her_own_hour_counts(ada: Staff) -> None:
    Staff.objects.update(morning_at=time(9, 15))

    assert plan_mornings(HALF_PAST_SEVEN) == 0
    assert plan_mornings(HALF_PAST_SEVEN + 105 * MINUTE) == 1


def test_an_hour_that_she_changes_brings_no_second_list_that_day(ada: Staff) -> None:
    plan_mornings(HALF_PAST_SEVEN)
    Staff.objects.update(morning_at=time(9, 15))

    assert plan_mornings(HALF_PAST_SEVEN + 105 * MINUTE) == 0


@pytest.mark.parametrize(
    ("fields", "channel", "address"),
    [
        ({}, "sms", "+12125550111"),
        ({"mobile": ""}, "email", "ada@mail.example"),
        ({"email": ""}, "sms", "+12125550111"),
    ],
)
def test_she_gets_it_by_what_she_has(ada: Staff, fields: dict[str, str], channel: str, address: str) -> None:
    Staff.objects.update(**fields)

    plan_mornings(HALF_PAST_SEVEN)

    message = Message.objects.get()
    assert (message.channel, message.address) == (channel, address)


def test_after_a_stop_it_takes_the_other_way_and_after_two_none(ada: Staff) -> None:
    lines = lines_of(ada.studio)
    Stop.objects.create(line=lines["sms"], address="+12125550111", at=HALF_PAST_SEVEN)

    plan_mornings(HALF_PAST_SEVEN)
    Stop.objects.create(line=lines["email"], address="ada@mail.example", at=HALF_PAST_SEVEN)
    plan_mornings(HALF_PAST_SEVEN + timedelta(days=1))

    assert Message.objects.get().channel == "email"


def test_a_stop_to_another_studio_is_not_hers_here(ada: Staff) -> None:
    line = lines_of(make_studio("elm"))["sms"]
    Stop.objects.create(line=line, address="+12125550111", at=HALF_PAST_SEVEN)

    plan_mornings(HALF_PAST_SEVEN)

    assert Message.objects.get().channel == "sms"


@pytest.mark.parametrize(
    "fields",
    [{"mobile": "", "email": ""}, {"is_active": False}, {"is_artist": False, "is_front_desk": True}],
    ids=["no address", "left", "front desk"],
)
def test_who_has_no_way_or_no_list_is_left_in_peace(ada: Staff, fields: dict[str, object]) -> None:
    Staff.objects.update(**fields)

    assert plan_mornings(HALF_PAST_SEVEN) == 0


def test_the_owner_gets_one_too(studio: Studio) -> None:
    make_staff(studio, "Olga", email="olga@mail.example", is_owner=True)

    assert plan_mornings(HALF_PAST_SEVEN) == 1


def test_only_the_studio_that_is_asked_for_is_planned(ada: Staff) -> None:
    assert plan_mornings(HALF_PAST_SEVEN, studio=make_studio("elm")) == 0
    assert plan_mornings(HALF_PAST_SEVEN, studio=ada.studio) == 1


def test_a_look_that_finds_nothing_new_costs_two_queries(ada: Staff) -> None:
    plan_mornings(HALF_PAST_SEVEN)

    with CaptureQueriesContext(
        connection,
    ) as asked:
        plan_mornings(HALF_PAST_SEVEN + MINUTE)

    assert len(asked) == 2
