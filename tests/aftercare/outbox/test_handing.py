from __future__ import annotations

from datetime import timedelta

import pytest
from django.db import transaction

from aftercare import outbox
from aftercare.core import delivery
from aftercare.core.delivery import Event
from aftercare.models import Attempt, Line, Message
from aftercare.outbox import Answered
from aftercare.transports.base import Outcome
from studio import clock
from studio.models import Client
from tests.letters import begin, end, make_message
from tests.people import NOW

pytestmark = pytest.mark.django_db


def test_what_was_taken_is_handed_over(mia: Client, line: Line) -> None:
    make_message(mia)

    end(begin(line), Event.TAKEN, provider_ref="their-7")

    message, attempt = Message.objects.get(), Attempt.objects.get()
    assert (message.state, message.handed_over_at, message.lease_until) == ("handed_over", NOW, None)
    assert (attempt.outcome, attempt.ended_at, attempt.provider_ref) == ("handed_over", NOW, "their-7")


def test_what_was_certainly_not_taken_is_due_again_after_a_wait(mia: Client, line: Line) -> None:
    make_message(mia, occasion="care")

    end(begin(line), Event.NOT_TAKEN, problem="Busy.")

    message = Message.objects.get()
    assert (message.state, message.tries, message.reason) == ("planned", 1, "")
    assert message.due_at is not None
    assert timedelta(seconds=16) <= message.due_at - NOW <= timedelta(seconds=24)
    assert Attempt.objects.get().problem == "Busy."


def test_each_try_is_an_attempt_of_the_same_message_and_waits_longer(mia: Client, line: Line) -> None:
    make_message(mia)
    now = NOW
    waits = []
    for _ in range(3):
        end(begin(line, now=now), Event.NOT_TAKEN, now=now)
        due = Message.objects.get().due_at
        assert due is not None
        waits.append(due - now)
        now = due

    assert waits == sorted(waits)
    assert list(Attempt.objects.order_by("number").values_list("number", flat=True)) == [1, 2, 3]
    assert len(set(Attempt.objects.values_list("reference", flat=True))) == 3


def test_the_wait_that_a_provider_asks_for_is_kept(mia: Client, line: Line) -> None:
    make_message(mia)

    end(begin(line), Event.NOT_TAKEN, retry_after=900.0)

    message = Message.objects.get()
    assert message.due_at == message.not_before == NOW + timedelta(minutes=15, seconds=2)


def test_after_many_tries_it_is_given_up_and_says_so(mia: Client, line: Line) -> None:
    make_message(mia)
    Message.objects.update(tries=delivery.MOST_TRIES - 1)

    end(begin(line), Event.NOT_TAKEN, problem="Busy.")

    message = Message.objects.get()
    assert (message.state, message.ended_at) == ("undelivered", NOW)
    assert message.reason == f"given up after {delivery.MOST_TRIES} tries: Busy."


def test_what_was_refused_for_good_is_not_tried_again(mia: Client, line: Line) -> None:
    make_message(mia, occasion="prepare")

    end(begin(line), Event.REFUSED, problem="No such number.", other="email")

    message = Message.objects.get()
    assert (message.state, message.reason, message.ended_at) == ("undelivered", "No such number.", NOW)
    assert outbox.claim(NOW + timedelta(days=9), 10) == []


@pytest.mark.parametrize("occasion", ["care", "check", "patch_test"])
def test_what_safety_hangs_on_is_tried_once_by_the_other_channel(mia: Client, line: Line, occasion: str) -> None:
    make_message(mia, occasion=occasion)

    end(begin(line), Event.REFUSED, problem="No such number.", other="email")
    message = Message.objects.get()
    assert (message.state, message.channel, message.due_at, message.fell_back) == ("planned", "email", NOW, True)

    end(begin(line), Event.REFUSED, problem="No such mailbox.", other="sms")
    message = Message.objects.get()
    assert (message.state, message.reason) == ("undelivered", "No such mailbox.")


def test_where_there_is_no_other_channel_it_is_undelivered(mia: Client, line: Line) -> None:
    make_message(mia, occasion="care")

    end(begin(line), Event.REFUSED, problem="No such number.", other="")

    assert Message.objects.get().state == "undelivered"


def test_what_was_lost_is_unsure(mia: Client, line: Line) -> None:
    make_message(mia)

    end(begin(line), Event.LOST, problem="The line dropped.")

    message = Message.objects.get()
    assert (message.state, message.reason, message.ended_at) == ("unsure", "The line dropped.", NOW)
    assert Attempt.objects.get().outcome == "unsure"


def test_the_outcomes_of_a_window_are_counted_by_the_state_that_came_of_them(mia: Client, line: Line) -> None:
    for _ in range(4):
        make_message(mia)
    parcels = begin(line)
    events = [Event.TAKEN, Event.TAKEN, Event.REFUSED, Event.NOT_TAKEN]

    answers = [
        Answered(one, Outcome(reference=one.reference, event=event)) for one, event in zip(parcels, events, strict=True)
    ]
    with transaction.atomic():
        counts = outbox.settle(answers, NOW)

    assert counts == {"handed_over": 2, "undelivered": 1, "planned": 1}


def test_bad_news_of_a_try_that_was_given_up_changes_nothing(mia: Client, line: Line) -> None:
    make_message(mia)
    first = begin(line)
    Message.objects.update(lease_until=clock.now() - timedelta(seconds=1))
    outbox.expire_leases(NOW)
    outbox.resolve_unsure(NOW)
    second = begin(line)

    end(first, Event.REFUSED, problem="No such number.")
    assert Message.objects.get().state == "handing_over"

    end(second, Event.TAKEN)
    assert Message.objects.get().state == "handed_over"


def test_good_news_of_a_try_that_was_given_up_stops_the_next(mia: Client, line: Line) -> None:
    make_message(mia)
    first = begin(line)
    Message.objects.update(lease_until=clock.now() - timedelta(seconds=1))
    outbox.expire_leases(NOW)
    outbox.resolve_unsure(NOW)
    assert Message.objects.get().state == "planned"

    end(first, Event.TAKEN)

    assert Message.objects.get().state == "handed_over"
    assert outbox.claim(NOW, 10) == []


def test_a_long_answer_of_a_provider_is_cut_to_fit(mia: Client, line: Line) -> None:
    make_message(mia, occasion="prepare")

    end(begin(line), Event.REFUSED, problem="x" * 1000, provider_ref="y" * 1000)

    assert len(Message.objects.get().reason) == 200
    assert len(Attempt.objects.get().problem) == 400
    assert len(Attempt.objects.get().provider_ref) == 120


@pytest.mark.parametrize("event", [Event.TAKEN, Event.NOT_TAKEN, Event.LOST])
def test_what_no_database_keeps_is_written_out_and_takes_no_other_answer_along(
    mia: Client, line: Line, event: Event
) -> None:
    made = make_message(mia)

    end(begin(line), event, provider_ref="7\0\ud83d", problem="500 \0\ud83d")

    attempt = made.attempts.get()
    assert (attempt.provider_ref, attempt.problem) == ("7\\x00\\ud83d", "500 \\x00\\ud83d")
