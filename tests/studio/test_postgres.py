"""Many values at once: what is asked and what comes back is the same on every database."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, timezone

import pytest
from django.db import connection
from django.db.models import Q

from aftercare.core.delivery import State
from aftercare.models import Line, Message
from studio.models import Client
from studio.postgres import MANY, MomentLoader
from tests.letters import make_line, make_message
from tests.people import NOW, make_client, make_studio

pytestmark = pytest.mark.django_db
ON_POSTGRES = pytest.mark.skipif(connection.vendor != "postgresql", reason="it is PostgreSQL that is asked")
NOBODY = range(2**31, 2**31 + MANY)  # keys that an integer of PostgreSQL's cannot hold


@pytest.fixture
def clients() -> list[Client]:
    names = ("Ana", 'O\'Neill "Bo"', "{Cleo, Di}", "back\\slash", "NULL")
    studio = make_studio()
    return [make_client(studio, last_name=name) for name in names]


def test_many_keys(clients: list[Client]) -> None:
    asked = [clients[0].pk, clients[3].pk, clients[3].pk, None, *NOBODY]

    assert set(Client.objects.filter(pk__in=asked)) == {clients[0], clients[3]}
    assert set(Client.objects.exclude(pk__in=asked)) == {clients[1], clients[2], clients[4]}


def test_many_words(clients: list[Client]) -> None:
    asked = [clients[1].last_name, clients[2].last_name, clients[3].last_name, "null", None, *map(str, NOBODY)]

    assert set(Client.objects.filter(last_name__in=asked)) == {clients[1], clients[2], clients[3]}
    assert set(Client.objects.filter(~Q(last_name__in=asked))) == {clients[0], clients[4]}


def test_many_of_whom_something_is(clients: list[Client]) -> None:
    first, second = make_message(clients[0]), make_message(clients[1])
    make_message(clients[2])

    assert set(Message.objects.filter(client__in=[clients[0].pk, clients[1].pk, *NOBODY])) == {first, second}
    assert set(Message.objects.filter(client_id__in=[clients[0].pk, *NOBODY])) == {first}
    assert set(Message.objects.filter(client__in=clients[:2] * MANY)) == {first, second}
    assert set(Client.objects.filter(messages__in=[first.pk, *NOBODY])) == {clients[0]}


def test_many_states_and_moments(clients: list[Client]) -> None:
    message = make_message(clients[0])

    assert list(Message.objects.filter(state__in=[*State, *map(str, NOBODY)])) == [message]
    moments = [message.planned_from, *(NOW + timedelta(days=day) for day in range(1, MANY))]
    assert list(Message.objects.filter(planned_from__in=moments)) == [message]


def test_many_of_another_kind_are_asked_as_before(clients: list[Client]) -> None:
    line = make_line(clients[0].studio, rate=7)

    assert list(Line.objects.filter(options__in=[{"rate": rate} for rate in range(MANY)])) == [line]
    assert list(Line.objects.filter(options__in=list(range(MANY)))) == []


@ON_POSTGRES
def test_they_are_one_parameter() -> None:
    for found in (Client.objects.filter(pk__in=NOBODY), Message.objects.filter(client__in=NOBODY)):
        _, given = found.query.sql_with_params()
        assert [set(one) for one in given] == [set(NOBODY)]


@pytest.mark.parametrize(
    "moment",
    [
        datetime(2026, 11, 29, 7, 30, tzinfo=UTC),
        datetime(2026, 11, 29, 7, 30, 0, 120, tzinfo=UTC),
        datetime(2026, 11, 29, 7, 30, tzinfo=timezone(timedelta(hours=-9, minutes=-30))),
        datetime(1, 1, 1, tzinfo=UTC),
        datetime(9999, 12, 31, 23, 59, 59, 999_999, tzinfo=UTC),
    ],
    ids=str,
)
def test_a_moment_comes_back_as_it_was(moment: datetime, clients: list[Client]) -> None:
    message = make_message(clients[0])
    Message.objects.filter(pk=message.pk).update(planned_from=moment)

    found = Message.objects.values_list("planned_from", flat=True).get()

    assert found == moment
    assert found.tzinfo is UTC


@ON_POSTGRES
def test_moments_are_read_the_short_way_and_what_python_has_none_for_is_said() -> None:
    with connection.cursor() as cursor:
        reader = cursor.connection.adapters.get_loader(connection.connection.adapters.types["timestamptz"].oid, 0)
        assert reader is MomentLoader
        cursor.execute("SELECT 'infinity'::timestamptz")
        with pytest.raises(Exception, match="timestamp too large"):
            cursor.fetchone()
