from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from django.db import connection

from aftercare import outbox
from aftercare.core.delivery import State
from aftercare.models import Message
from aftercare.outbox import claiming, rows
from studio import clock
from studio.models import Client
from tests.letters import make_message
from tests.people import NOW, make_client, make_studio

pytestmark = pytest.mark.django_db
SECOND = timedelta(seconds=1)


@pytest.fixture
def mia() -> Client:
    return make_client(make_studio(), mobile="+12125550101")


def test_what_is_due_exactly_now_is_due(mia: Client) -> None:
    due = make_message(mia, due_at=NOW)
    make_message(mia, due_at=NOW + SECOND)

    assert [message.pk for message in outbox.claim(NOW, 10)] == [due.pk]


def test_a_claimed_message_is_nobody_elses(mia: Client) -> None:
    make_message(mia)

    [claimed] = outbox.claim(NOW, 10)

    assert outbox.claim(NOW, 10) == []
    assert (claimed.state, claimed.claimed_at) == ("claimed", NOW)
    assert claimed == Message.objects.get()
    assert claimed.lease_until == Message.objects.get().lease_until


def test_only_what_is_planned_is_claimed(mia: Client) -> None:
    for state in ("withheld", "withdrawn"):
        make_message(mia, state=state)

    assert outbox.claim(NOW, 10) == []


def test_a_limit_is_a_limit_and_the_oldest_go_first(mia: Client) -> None:
    made = [make_message(mia, due_at=NOW - hours * timedelta(hours=1)) for hours in range(5)]

    assert [message.pk for message in outbox.claim(NOW, 2)] == [made[4].pk, made[3].pk]
    assert len(outbox.claim(NOW, 10)) == 3


def test_an_answer_goes_before_a_backlog_of_older_messages(mia: Client) -> None:
    for occasion in ("prepare", "fill_due", "care"):
        make_message(mia, occasion=occasion, due_at=NOW - timedelta(days=1))
    make_message(mia, occasion="answer", due_at=NOW)

    assert [message.occasion for message in outbox.claim(NOW, 2)] == ["answer", "care"]


def test_one_studio_can_be_swept_alone(mia: Client) -> None:
    zoe = make_client(make_studio("alder"), "Zoe")
    make_message(mia)
    hers = make_message(zoe)

    assert [message.pk for message in outbox.claim(NOW, 10, zoe.studio_id)] == [hers.pk]


def test_a_client_ahead_of_her_plan_waits_for_it_but_her_answer_does_not(mia: Client) -> None:
    make_message(mia, occasion="care")
    answer = make_message(mia, occasion="answer")
    Client.objects.update(revision=2)

    assert [message.pk for message in outbox.claim(NOW, 10)] == [answer.pk]

    Client.objects.update(planned_revision=2)
    assert [message.occasion for message in outbox.claim(NOW, 10)] == ["care"]


def test_a_lease_is_by_the_databases_clock_whatever_now_is_said_to_be(mia: Client) -> None:
    make_message(mia)

    [claimed] = outbox.claim(datetime(2099, 1, 1, tzinfo=UTC), 10)

    assert claimed.lease_until is not None
    assert timedelta(0) < claimed.lease_until - clock.now() <= claiming.LEASE


def test_what_is_let_go_is_due_again_at_once(mia: Client) -> None:
    made = make_message(mia)

    outbox.let_go(outbox.claim(NOW, 10))

    assert [message.pk for message in outbox.claim(NOW, 10)] == [made.pk]


def test_what_is_put_back_stands_as_it_was_judged(mia: Client) -> None:
    make_message(mia)
    [message] = outbox.claim(NOW, 10)
    message.state, message.reason, message.ended_at = "withheld", "no consent", NOW

    assert outbox.put_back([message]) == {"withheld": 1}

    found = Message.objects.get()
    assert (found.state, found.reason, found.ended_at, found.lease_until) == ("withheld", "no consent", NOW, None)


def test_messages_can_be_taken_before_they_are_due_and_after_they_were_withheld(mia: Client) -> None:
    later = make_message(mia, due_at=NOW + timedelta(days=1))
    withheld = make_message(mia, state="withheld", reason="no consent", ended_at=NOW)
    claimed = make_message(mia, due_at=NOW)
    outbox.claim(NOW, 1)

    found = outbox.claim_these([later.pk, withheld.pk, claimed.pk], NOW)

    assert [message.pk for message in found] == [later.pk, withheld.pk]
    assert set(Message.objects.values_list("state", "reason", "ended_at")) == {("claimed", "", None)}


on_sqlite = pytest.mark.skipif(connection.vendor != "sqlite", reason="reads SQLite's own account of its plan")


def plan_of(statement: str, given: list[str | int]) -> list[str]:
    """Return SQLite's own account of how it would run the statement."""
    with connection.cursor() as cursor:
        cursor.execute(f"EXPLAIN QUERY PLAN {statement}", given)
        return [row[3] for row in cursor.fetchall()]


@on_sqlite
def test_finding_what_is_due_reads_the_index_of_what_is_planned() -> None:
    plan = plan_of(claiming._statement(2, False, outbox.ALL), [2, "x", 500, "x", "x"])

    assert "SEARCH m USING INDEX message_due (rank=? AND due_at<?)" in plan
    assert not [line for line in plan if line.startswith("SCAN") and line != "SCAN due"]


@on_sqlite
def test_finding_what_is_due_in_one_studio_reads_an_index_of_what_is_due() -> None:
    plan = plan_of(claiming._statement(2, True, outbox.ALL), [2, "x", 1, 500, "x", "x"])

    assert [line for line in plan if line.startswith("SEARCH m USING INDEX") and "due_at<?" in line]
    assert not [line for line in plan if line.startswith("SCAN") and line != "SCAN due"]


@on_sqlite
def test_finding_leases_that_ended_reads_the_index_of_leases() -> None:
    over = rows.leases_over(NOW, State.CLAIMED, State.HANDING_OVER)

    assert "USING INDEX message_leased" in over.explain()
