from __future__ import annotations

from datetime import timedelta

import pytest

from aftercare import outbox
from aftercare.core.delivery import NoSuchStep
from aftercare.models import Message
from studio.models import Client
from tests.letters import begin, make_line, make_message
from tests.people import NOW, make_client, make_studio

pytestmark = pytest.mark.django_db


@pytest.fixture
def mia() -> Client:
    return make_client(make_studio(), mobile="+12125550101")


def new(client: Client, key: str, **fields: object) -> Message:
    return Message(studio=client.studio, client=client, key=key, occasion="care", planned_from=NOW, **fields)


def test_a_message_is_promised_once(mia: Client) -> None:
    assert outbox.promise([new(mia, "visit:1:care:0:1", due_at=NOW)]) == 1
    assert outbox.promise([new(mia, "visit:1:care:0:1", reason="late"), new(mia, "visit:2:care:0:1")]) == 1

    assert Message.objects.get(key="visit:1:care:0:1").reason == ""
    assert Message.objects.get(key="visit:1:care:0:1").due_at == NOW
    assert Message.objects.count() == 2


def test_the_same_key_in_another_studio_is_another_promise(mia: Client) -> None:
    zoe = make_client(make_studio("alder"), "Zoe")

    assert outbox.promise([new(mia, "number:1"), new(zoe, "number:1")]) == 2


def test_nothing_to_promise_is_nothing_done() -> None:
    assert outbox.promise([]) == 0
    assert outbox.replan([]) == 0


def test_thousands_are_promised_in_one_go(mia: Client) -> None:
    assert outbox.promise(new(mia, f"visit:{number}") for number in range(3000)) == 3000
    assert outbox.promise(new(mia, f"visit:{number}") for number in range(1, 3001)) == 1


def test_nothing_begins_its_life_as_handed_over(mia: Client) -> None:
    with pytest.raises(NoSuchStep, match="visit:1 handed_over"):
        outbox.promise([new(mia, "visit:1", state="handed_over")])


def test_planning_anew_writes_what_it_changed(mia: Client) -> None:
    message = make_message(mia)
    message.state, message.reason, message.due_at, message.ended_at = "withheld", "too late", None, NOW

    assert outbox.replan([message]) == 1

    found = Message.objects.get()
    assert (found.state, found.reason, found.due_at, found.ended_at) == ("withheld", "too late", None, NOW)


def test_planning_anew_takes_a_claimed_message_from_its_sender(mia: Client) -> None:
    message = make_message(mia)
    [claimed] = outbox.claim(NOW, 10)
    message.due_at = NOW + timedelta(days=1)

    outbox.replan([message])
    claimed.state, claimed.reason = "withdrawn", "of yesterday's facts"
    outbox.put_back([claimed])

    found = Message.objects.get()
    assert (found.state, found.due_at, found.lease_until) == ("planned", NOW + timedelta(days=1), None)


def test_planning_anew_leaves_alone_what_has_begun_to_leave(mia: Client) -> None:
    message = make_message(mia)
    begin(make_line(mia.studio))
    message.state = "withdrawn"

    assert outbox.replan([message]) == 0
    assert Message.objects.get().state == "handing_over"


def test_planning_cannot_claim_or_hand_over(mia: Client) -> None:
    message = make_message(mia)
    message.state = "claimed"

    with pytest.raises(NoSuchStep):
        outbox.replan([message])
