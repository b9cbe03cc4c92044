"""The project's own policy for an unsure handing over: twice is better than never where safety hangs on it."""

from __future__ import annotations

from datetime import timedelta

import pytest

from aftercare import outbox
from aftercare.core import delivery
from aftercare.core.delivery import Event
from aftercare.core.timing import SAFETY, Occasion
from aftercare.models import Attempt, Line, Message
from aftercare.transports.base import ReceiptNote
from studio import clock
from studio.models import Client
from tests.letters import begin, end, make_message
from tests.people import NOW

pytestmark = pytest.mark.django_db
NOT_AGAIN = sorted(set(Occasion) - SAFETY)


def let_time_pass() -> None:
    Message.objects.exclude(lease_until=None).update(lease_until=clock.now() - timedelta(seconds=1))


def test_a_lease_that_has_not_ended_is_left_alone(mia: Client, line: Line) -> None:
    make_message(mia)
    begin(line)
    make_message(mia)
    outbox.claim(NOW, 10)

    assert outbox.expire_leases(NOW) == {}


def test_a_claimed_message_whose_sender_died_is_simply_due_again(mia: Client) -> None:
    made = make_message(mia)
    outbox.claim(NOW, 10)
    let_time_pass()

    assert outbox.expire_leases(NOW) == {"planned": 1}
    assert [message.pk for message in outbox.claim(NOW, 10)] == [made.pk]


def test_the_only_sender_takes_up_at_once_what_an_earlier_run_had_claimed(mia: Client, line: Line) -> None:
    make_message(mia)
    begun = begin(line)
    made = make_message(mia)
    outbox.claim(NOW, 10)

    assert outbox.free_claimed() == 1

    assert [message.pk for message in outbox.claim(NOW, 10)] == [made.pk]
    assert Message.objects.get(pk=begun[0].message.pk).state == "handing_over"


def test_one_that_was_handing_over_is_unsure_and_says_why(mia: Client, line: Line) -> None:
    make_message(mia)
    begin(line)
    let_time_pass()

    assert outbox.expire_leases(NOW) == {"unsure": 1}

    message, attempt = Message.objects.get(), Attempt.objects.get()
    assert (message.state, message.ended_at) == ("unsure", NOW)
    assert "nobody knows" in message.reason
    assert (attempt.outcome, attempt.ended_at) == ("unsure", NOW)


@pytest.mark.parametrize("occasion", sorted(SAFETY))
def test_what_safety_hangs_on_is_sent_again(mia: Client, line: Line, occasion: str) -> None:
    make_message(mia, occasion=occasion)
    end(begin(line), Event.LOST, problem="The line dropped.")

    assert outbox.resolve_unsure(NOW) == {"planned": 1}

    message = Message.objects.get()
    assert (message.state, message.due_at, message.reason, message.ended_at) == ("planned", NOW, "", None)


@pytest.mark.parametrize("occasion", NOT_AGAIN)
def test_anything_else_is_not_sent_again_and_says_so(mia: Client, line: Line, occasion: str) -> None:
    make_message(mia, occasion=occasion)
    end(begin(line), Event.LOST, problem="The line dropped.")

    assert outbox.resolve_unsure(NOW) == {"unsure": 1}
    assert outbox.resolve_unsure(NOW) == {}  # decided once

    message = Message.objects.get()
    assert message.reason == "The line dropped. It is not sent again, so that it does not come twice."
    assert outbox.claim(NOW + timedelta(days=9), 10) == []


def test_where_the_road_gives_receipts_one_is_waited_for_first(mia: Client, line: Line) -> None:
    make_message(mia)
    end(begin(line, receipt_wait=300), Event.LOST)

    assert outbox.resolve_unsure(NOW) == {}
    let_time_pass()
    assert outbox.resolve_unsure(NOW) == {"planned": 1}


def test_a_crash_is_given_the_time_for_an_answer_and_a_receipt(mia: Client, line: Line) -> None:
    make_message(mia)
    begin(line, patience=60, receipt_wait=300)

    lease = Message.objects.get().lease_until
    assert lease is not None
    assert timedelta(seconds=350) < lease - clock.now() <= timedelta(seconds=360)


def test_what_is_lost_again_and_again_is_left_to_a_person(mia: Client, line: Line) -> None:
    make_message(mia)
    now = NOW
    for _ in range(delivery.MOST_LOST):
        end(begin(line, now=now), Event.LOST, now=now, problem="The line dropped.")
        outbox.resolve_unsure(now)
        now += timedelta(hours=1)

    message = Message.objects.get()
    assert message.state == "unsure"
    assert message.reason == f"The line dropped. It was lost {delivery.MOST_LOST} times: please ask her."
    assert outbox.claim(now, 10) == []


def test_what_would_come_too_late_is_not_sent_again(mia: Client, line: Line) -> None:
    make_message(mia, no_later_than=NOW + timedelta(hours=1))
    end(begin(line), Event.LOST, problem="The line dropped.")

    outbox.resolve_unsure(NOW + timedelta(hours=2))

    message = Message.objects.get()
    assert (message.state, message.reason) == ("unsure", "The line dropped. It is too late to send it again.")


def tried_under(key: str, message: Message, *, left: timedelta) -> None:
    message.attempts.update(key=key, likeness="same", key_until=clock.now() + left)


@pytest.mark.parametrize(("left", "after"), [(timedelta(hours=1), "planned"), (timedelta(0), "unsure")])
def test_what_the_provider_knows_again_by_its_key_is_sent_again_whatever_it_is(
    mia: Client, line: Line, left: timedelta, after: str
) -> None:
    made = make_message(mia, occasion="prepare")
    end(begin(line), Event.LOST)
    tried_under("k1", made, left=left)

    outbox.resolve_unsure(NOW)

    made.refresh_from_db()
    assert made.state == after


def test_a_second_try_goes_under_the_key_of_the_first_only_with_the_same_contents(mia: Client, line: Line) -> None:
    made = make_message(mia, occasion="prepare")
    assert outbox.key_of(made, "same", "r1") == "r1"
    end(begin(line), Event.LOST)
    made.refresh_from_db()
    tried_under("k1", made, left=timedelta(hours=1))

    assert outbox.key_of(made, "same", "r2") == "k1"
    assert outbox.key_of(made, "other", "r2") == "r2"
    tried_under("k1", made, left=timedelta(0))
    assert outbox.key_of(made, "same", "r2") == "r2"


def test_bad_news_of_an_earlier_try_under_the_same_key_is_the_newest_ones(mia: Client, line: Line) -> None:
    made = make_message(mia, occasion="prepare")
    [first] = begin(line)
    end([first], Event.LOST)
    tried_under("k1", made, left=timedelta(hours=1))
    outbox.resolve_unsure(NOW)
    end(begin(line), Event.TAKEN)
    made.attempts.update(key="k1")
    note = ReceiptNote(provider_ref="x", word="bounced", event=Event.FAILED, reference=first.reference)

    outbox.note_receipts("memory", [note], NOW)

    made.refresh_from_db()
    assert made.state == "undelivered"
