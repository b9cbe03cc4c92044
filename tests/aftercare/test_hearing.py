"""From a kept call to the message and the reply."""

from __future__ import annotations

import json
from datetime import timedelta
from typing import Any

import pytest

from aftercare import erasing, hearing, receiving, tasks, webhooks
from aftercare.core.delivery import Event
from aftercare.models import Flag, Line, Message, Receipt, Reply, StoredCallback
from tests import hooks
from tests.hooks import MIA, NUMBER
from tests.letters import begin, end, make_message
from tests.pages import quiet_static
from tests.people import NOW, make_client, make_staff, make_studio

__all__ = ["quiet_static"]
pytestmark = pytest.mark.django_db


@pytest.fixture(autouse=True)
def lines_anew() -> None:
    webhooks.forget()


@pytest.fixture
def line() -> Line:
    return hooks.make_line(make_studio())


def hand_over(line: Line, provider_ref: str = "SM1") -> str:
    """Hand one message over by the line; return our reference of it."""
    make_message(make_client(line.studio, mobile=MIA))
    [parcel] = begin(line)
    end([parcel], Event.TAKEN, provider_ref=provider_ref)
    return parcel.reference


def reply(text: str = "my eye is red", **fields: Any) -> dict[str, Any]:
    return {"id": "MO1", "from": MIA, "to": NUMBER, "text": text, **fields}


@pytest.mark.parametrize(("word", "state"), [("DELIVRD", "delivered"), ("UNDELIV", "undelivered")])
def test_a_receipt_reaches_its_message_and_the_callback_is_gone(line: Line, word: str, state: str) -> None:
    reference = hand_over(line)
    hooks.call(line.pk, {"id": "SM1", "state": word}, query=f"?ref={reference}")

    assert hearing.read_waiting(NOW) == 1

    assert Message.objects.get().state == state
    assert Receipt.objects.get().word == word
    assert not StoredCallback.objects.exists()


def test_the_providers_reference_will_do(line: Line) -> None:
    hand_over(line)
    hooks.call(line.pk, {"id": "SM1", "state": "DELIVRD"})

    hearing.read_waiting(NOW)

    assert Message.objects.get().state == "delivered"


def test_a_text_stands_as_a_reply_once_however_often_it_is_told(line: Line) -> None:
    for again in (1, 2):
        hooks.call(line.pk, reply(attempt=again))  # not the same call: the same text
        hearing.read_waiting(NOW)

    [found] = Reply.objects.all()
    assert (found.line, found.from_address, found.text) == (line, MIA, "my eye is red")


def test_a_reply_goes_to_the_line_whose_number_it_was_sent_to(line: Line) -> None:
    other = hooks.make_line(make_studio("larkhill"), "+12125550198")

    hooks.call(line.pk, reply(to="12125550198"))
    hearing.read_waiting(NOW)

    assert Reply.objects.get().line == other
    assert Reply.objects.get().studio == other.studio


def test_a_number_on_another_account_is_another_line(line: Line) -> None:
    hooks.make_line(make_studio("larkhill"), "+12125550198", account="another carrier")

    hooks.call(line.pk, reply(to="+12125550198"))
    hearing.read_waiting(NOW)

    assert not Reply.objects.exists()


def test_a_number_of_no_line_is_kept_with_its_problem_and_read_once_a_line_has_it(line: Line) -> None:
    hooks.call(line.pk, [reply(to="+12125550197"), reply("fine", id="", to=NUMBER)])

    assert hearing.read_waiting(NOW) == 0
    [stored] = StoredCallback.objects.all()
    assert stored.problem == "A text came in to +12125550197, which is no line's number here: set it on the line."
    assert [one.text for one in Reply.objects.all()] == ["fine"]

    hooks.make_line(line.studio, "+12125550197")
    assert hearing.read_waiting(NOW) == 0  # not at once
    assert hearing.read_waiting(NOW + hearing.FIRST_WAIT) == 1
    assert sorted(one.text for one in Reply.objects.all()) == ["fine", "my eye is red"]


@pytest.mark.parametrize("given", [{"to": ""}, {"to": "+12125550197"}])
def test_a_line_without_a_number_takes_what_comes_to_its_address(given: dict[str, str]) -> None:
    line = hooks.make_line(make_studio(), "")

    hooks.call(line.pk, reply(**given))
    hearing.read_waiting(NOW)

    assert Reply.objects.get().line == line


def test_what_cannot_be_understood_is_tried_a_few_times_and_stays_for_a_person(line: Line) -> None:
    hooks.call(line.pk, {"balance": 3})
    hooks.call(line.pk, reply())
    moment = NOW

    assert hearing.read_waiting(moment) == 1  # the other one
    for _ in range(hearing.MOST_TRIES + 3):
        moment += hearing.LONGEST_WAIT + timedelta(seconds=1)
        hearing.read_waiting(moment)

    stored = StoredCallback.objects.get()
    assert (stored.tries, stored.waits) == (hearing.MOST_TRIES, False)
    assert "“state” of a receipt" in stored.problem


def test_once_the_options_are_mended_it_is_understood(line: Line) -> None:
    hooks.call(line.pk, {"id": "MO1", "sender": MIA, "text": "it stings"})
    hearing.read_waiting(NOW)

    line.options["replies"]["from_address"] = "sender"
    line.save()

    assert hearing.read_waiting(NOW + hearing.FIRST_WAIT) == 1
    assert Reply.objects.get().text == "it stings"


def test_one_that_breaks_something_does_not_keep_the_others_waiting(
    line: Line, monkeypatch: pytest.MonkeyPatch
) -> None:
    receive = receiving.receive

    def faulty(to: Line, from_address: str, text: str, **more: Any) -> Reply:
        if text == "broken":
            raise ValueError(text)
        return receive(to, from_address, text, **more)

    monkeypatch.setattr(receiving, "receive", faulty)
    for number, text in enumerate(["one", "broken", "two"]):
        hooks.call(line.pk, reply(text, id=f"MO{number}"))

    assert hearing.read_waiting(NOW) == 2

    assert sorted(found.text for found in Reply.objects.all()) == ["one", "two"]
    assert "ValueError" in StoredCallback.objects.get().problem


def test_words_that_no_database_keeps_are_written_out(line: Line) -> None:
    hooks.call(line.pk, json.dumps(reply("a\x00b\ud83d")).encode())

    assert hearing.read_waiting(NOW) == 1
    assert Reply.objects.get().text == "a\\x00b\\ud83d"


def test_a_sweep_begins_with_what_came_in(line: Line) -> None:
    mia = make_client(line.studio, mobile=MIA)
    hooks.call(line.pk, reply("I cannot see with my left eye"))

    tasks.send_due(now=NOW)

    assert Flag.objects.get().clients.get() == mia


def test_once_she_is_forgotten_nothing_of_hers_waits_to_be_understood(line: Line) -> None:
    mia = make_client(line.studio, mobile=MIA)
    hooks.call(line.pk, {"sender": MIA, "words": "it stings"})
    hooks.call(line.pk, {"sender": "+12125550102", "words": "fine"})
    hearing.read_waiting(NOW)

    erasing.erase(mia, by=make_staff(line.studio, is_owner=True), now=NOW)

    assert [b"+12125550102" in bytes(one.body) for one in StoredCallback.objects.all()] == [True]


def test_a_number_that_another_studio_has_by_now_is_that_studios_wherever_the_carrier_calls(line: Line) -> None:
    """The carrier still calls at the address of the line that had the number before."""
    Line.objects.filter(pk=line.pk).update(is_active=False)
    theirs = hooks.make_line(make_studio("alder"))

    hooks.call(line.pk, reply())
    hearing.read_waiting(NOW)

    assert Reply.objects.get().line == theirs
