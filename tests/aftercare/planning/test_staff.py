from __future__ import annotations

from datetime import datetime, time, timedelta

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from aftercare import facts
from aftercare.lines import lines_of
from aftercare.models import Message, Stop
from aftercare.planning import plan_clients, plan_mornings, plan_nudges
from studio.models import Absence, Staff, Studio, Visit
from tests.people import NOW, make_client, make_staff, make_studio, make_visit

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


# A visit of hers is over and nobody marked it


@pytest.fixture
def over(studio: Studio, ada: Staff) -> Visit:
    """A visit of Ada's that ends at noon, NOW."""
    return make_visit(make_client(studio), artist=ada, starts_at=NOW - timedelta(minutes=75), minutes=75)


def test_its_artist_is_asked_once_half_an_hour_after_its_end(over: Visit, ada: Staff) -> None:
    assert plan_nudges(NOW + 29 * MINUTE) == 0
    assert plan_nudges(NOW + 30 * MINUTE) == 1
    assert plan_nudges(NOW + 31 * MINUTE) == 0

    nudge = Message.objects.get(occasion="alert")
    assert (nudge.key, nudge.kind, nudge.staff) == (f"visit:{over.pk}:alert:unmarked", "unmarked", ada)
    assert nudge.due_at == NOW + 30 * MINUTE
    over.status = Visit.Status.DONE
    assert facts.judge(Message(staff=ada, visit=over, occasion="alert"), None, NOW).event == "withdraw"


@pytest.mark.parametrize("status", ["done", "missed", "cancelled"])
def test_what_is_marked_is_asked_about_by_nobody(over: Visit, status: str) -> None:
    Visit.objects.update(status=status)

    assert plan_nudges(NOW + 30 * MINUTE) == 0


def test_history_and_what_is_long_over_are_left_to_the_morning_list(over: Visit) -> None:
    assert plan_nudges(NOW + timedelta(days=1)) == 0
    Visit.objects.update(heard_at=NOW + MINUTE)
    assert plan_nudges(NOW + 30 * MINUTE) == 0


def test_whoever_covers_is_asked_else_an_owner(over: Visit, studio: Studio, ada: Staff) -> None:
    olga = make_staff(studio, "Olga", is_owner=True, email="olga@mail.example")
    noor = make_staff(studio, "Noor", is_artist=True, email="noor@mail.example")
    away = Absence.objects.create(staff=ada, cover=noor, first_day=NOW.date(), last_day=NOW.date())
    plan_nudges(NOW + 30 * MINUTE)
    assert Message.objects.get(occasion="alert").staff == noor

    Message.objects.all().delete()
    away.cover = None
    away.save()
    plan_nudges(NOW + 30 * MINUTE)
    assert Message.objects.get(occasion="alert").staff == olga


def test_the_nudge_outlives_planning_her_client_anew(over: Visit) -> None:
    plan_nudges(NOW + 30 * MINUTE)
    plan_clients([over.client_id], NOW + 31 * MINUTE)

    assert Message.objects.get(occasion="alert").state == "planned"
