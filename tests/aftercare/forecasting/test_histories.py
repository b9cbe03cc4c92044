from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from aftercare.core.shedding import LONGEST_WORN, History, LashSet, Seen
from aftercare.forecasting import histories
from aftercare.forecasting.histories import Record
from studio.models import Adhesive, Client
from tests.people import NOW, make_client, make_staff, make_studio
from tests.readings import done

pytestmark = pytest.mark.django_db
TODAY = date(2027, 3, 9)


@pytest.fixture
def mia() -> Client:
    return make_client(make_studio())


def record(client: Client, now: datetime = NOW) -> Record:
    (found,) = histories.load([client.pk], now)
    return found


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def test_a_set_is_seen_at_the_next_one_and_the_last_is_worn(mia: Client) -> None:
    ada, noor = make_staff(mia.studio), make_staff(mia.studio, "Noor")
    glue = Adhesive.objects.create(studio=mia.studio, product="Birch 4", lot="0226")
    done(mia, 40, service="full set", artist=ada, adhesive=glue)
    done(mia, 22, 62.5, artist=noor)
    last = done(mia, 1, 55, artist=None)

    found = record(mia)

    assert found.history == History(
        str(mia.pk),
        past=(
            LashSet(ago(40), "Birch 4 0226", (Seen(ago(22), 0.625, str(noor.pk)),)),
            LashSet(ago(22), "", (Seen(ago(1), 0.55, ""),)),
        ),
        worn=LashSet(ago(1)),
    )
    assert (found.client, found.studio, found.today, found.visit) == (mia.pk, mia.studio_id, TODAY, last.pk)


def test_a_share_read_at_a_new_full_set_is_of_the_set_before(mia: Client) -> None:
    done(mia, 40, 90, service="full set")  # what was left of a set that nobody knows
    done(mia, 10, 20, service="full set")

    assert record(mia).history.past == (LashSet(ago(40), "", (Seen(ago(10), 0.2),)),)


def test_a_removal_ends_a_set_and_what_was_left_then_counts(mia: Client) -> None:
    done(mia, 40, service="full set")
    done(mia, 12, 35, service="removal", minutes=45)

    found = record(mia)

    assert found.visit is None
    assert found.history == History(str(mia.pk), (LashSet(ago(40), "", (Seen(ago(12), 0.35),)),))


def test_what_a_removal_ended_is_on_record_as_if_it_were_on(mia: Client) -> None:
    done(mia, 60, service="full set")
    last = done(mia, 40, 55)
    done(mia, 12, 35, service="removal", minutes=45)
    done(mia, 11, service="removal", minutes=45)  # entered twice

    found = record(mia).taken_off

    assert found is not None
    assert found.visit == last.pk
    before = (LashSet(ago(60), "", (Seen(ago(40), 0.55),)),)
    assert found.history == History(str(mia.pk), before, LashSet(ago(40), "", (Seen(ago(12), 0.35),)))
    assert record(mia, NOW + timedelta(days=LONGEST_WORN - 39)).taken_off is None, "too long ago"

    done(mia, 5, service="full set")
    assert record(mia).taken_off is None


@pytest.mark.parametrize("first", ["removal", "full set"])
def test_a_set_put_on_at_the_moment_of_a_removal_is_on(mia: Client, first: str) -> None:
    for service in (first, {"removal": "full set", "full set": "removal"}[first]):
        done(mia, 3, service=service)

    assert record(mia).history.worn == LashSet(ago(3))


def test_what_is_read_after_a_removal_is_of_no_set(mia: Client) -> None:
    done(mia, 40, service="full set")
    done(mia, 30, service="removal")
    done(mia, 12, 80, service="full set")

    assert record(mia).history == History(str(mia.pk), (), LashSet(ago(12)))


def test_a_touch_up_shows_the_set_that_is_on_and_ends_none(mia: Client) -> None:
    worn = done(mia, 9, service="full set")
    done(mia, 4, 88, service="touch-up")

    found = record(mia)

    assert found.visit == worn.pk
    assert found.history.worn == LashSet(ago(9), "", (Seen(ago(4), 0.88),))


@pytest.mark.parametrize("status", ["booked", "cancelled", "missed"])
def test_only_what_was_done_counts(mia: Client, status: str) -> None:
    worn = done(mia, 30, service="full set")
    done(mia, 5, 50, status=status)

    assert record(mia).visit == worn.pk
    assert record(mia).history.worn == LashSet(ago(30))


def test_after_a_gap_nothing_of_a_set_is_left(mia: Client) -> None:
    done(mia, LONGEST_WORN + 21, service="full set")
    done(mia, 20, 5)
    zoe = make_client(mia.studio, "Zoe")
    done(zoe, LONGEST_WORN + 1)

    assert record(mia).history.past == ()
    assert record(zoe).visit is None


def test_a_set_of_the_same_day_has_no_reading(mia: Client) -> None:
    done(mia, 10.1, service="full set")
    again = done(mia, 10, 95)

    assert record(mia).history == History(str(mia.pk), (), LashSet(ago(10)))
    assert record(mia).visit == again.pk


def test_days_are_those_of_her_own_calendar(mia: Client) -> None:
    Client.objects.update(time_zone="Pacific/Auckland")
    done(mia, 0, starts_at=datetime(2027, 3, 1, 20, tzinfo=UTC))  # 2 March there

    found = record(mia)

    assert found.history.worn == LashSet(date(2027, 3, 2))
    assert found.today == date(2027, 3, 10)


def test_a_moment_in_the_past_gives_what_was_known_then(mia: Client) -> None:
    first = done(mia, 40, service="full set")
    done(mia, 20, 60)
    done(mia, 1, 60)

    then = record(mia, NOW - timedelta(days=25))

    assert (then.today, then.visit) == (ago(25), first.pk)
    assert then.history == History(str(mia.pk), (), LashSet(ago(40)))


def test_it_takes_as_many_queries_for_many_clients_as_for_one(mia: Client) -> None:
    others = [make_client(mia.studio, f"Client {number}") for number in range(5)]
    for client in others:
        done(client, 30, service="full set")
        done(client, 10, 60)

    with CaptureQueriesContext(connection) as queries:
        found = histories.load([client.pk for client in others], NOW)

    assert [row.client for row in found] == sorted(client.pk for client in others)
    assert len(queries) == 2


def test_a_whole_studio_is_gone_through_page_by_page(mia: Client) -> None:
    Client.objects.bulk_create(Client(studio=mia.studio, first_name="Client") for _ in range(2 * histories.PAGE))
    make_client(make_studio("alder"), "Zoe")

    found = [row.client for row in histories.of_studio(mia.studio, NOW)]

    assert found == list(mia.studio.clients.order_by("pk").values_list("pk", flat=True))
    assert len(found) == 2 * histories.PAGE + 1


def test_who_may_wear_a_set_is_found_without_the_others(mia: Client) -> None:
    done(mia, 30)
    done(make_client(mia.studio, "Zoe"), LONGEST_WORN + 5)
    done(make_client(mia.studio, "Ines"), 3, service="lift")
    make_client(mia.studio, "Rosa")
    done(make_client(make_studio("alder"), "Bea"), 3)

    assert histories.wearing(mia.studio, NOW) == [mia.pk]
