"""Mail providers through anymail, against a server that speaks their APIs.

Outside facts: the providers' public documentation (named in tests/mailproviders.py); RFC 9110, 15.5.10 (409), 15.6.3
(502) and 15.6.5 (504).
"""

from __future__ import annotations

import base64
import time
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest

from aftercare.core.delivery import Event
from aftercare.transports.base import Outcome, Outgoing, Transport
from aftercare.transports.email import Email
from tests import servers
from tests.aftercare.transports.contract import (
    Addresses,
    FailureContract,
    TransportContract,
    by_reference,
    hand_over,
    outgoing,
)
from tests.aftercare.transports.test_email import CALENDAR, PICTURE, letter
from tests.mailproviders import MailProvider, mail_provider

pytestmark = pytest.mark.servers
NAMES = ["postmark", "resend", "brevo"]
KEYED = ["resend", "brevo"]


@pytest.fixture(params=NAMES)
def name(request: pytest.FixtureRequest) -> str:
    return str(request.param)


@pytest.fixture
def running() -> Iterator[MailProvider]:
    with mail_provider() as provider:
        yield provider


@pytest.fixture
def provider(running: MailProvider, name: str) -> Iterator[Email]:
    transport = Email(**running.options(name))
    yield transport
    transport.close()


class TestEmailByAProvider(TransportContract, FailureContract):
    @pytest.fixture
    def transport(self, provider: Email) -> Transport:
        return provider

    @pytest.fixture
    def addresses(self) -> Addresses:
        return Addresses(good="mia@example.org", refused="refuse-mia@example.org", busy="busy-mia@example.org")


def one(transport: Email, address: str) -> Outcome:
    [outcome] = hand_over(transport, outgoing(transport, [address]))
    return outcome


def keyed(address: str = "mia@example.org", **changed: Any) -> Outgoing:
    given: dict[str, Any] = {"reference": "first", "key": "first", "sender": "s@example.org", "text": "Hi"}
    return Outgoing(channel="email", address=address, **{**given, **changed})


def test_the_providers_own_reference_is_kept(provider: Email, name: str) -> None:
    assert one(provider, "mia@example.org").provider_ref == f"{name}-0"


def test_our_reference_travels_where_the_provider_gives_it_back(running: MailProvider, provider: Email) -> None:
    [message] = outgoing(provider, ["mia@example.org"])

    hand_over(provider, [message])

    assert f'"reference": "{message.reference}"' in str(running.taken).replace("'", '"').replace('\\"', '"')


def test_the_providers_wish_for_a_wait_is_kept(provider: Email) -> None:
    outcome = one(provider, "busy-mia@example.org")

    assert (outcome.event, outcome.retry_after) == (Event.NOT_TAKEN, 120)


@pytest.mark.parametrize(
    ("kind", "event"),
    [
        ("refuse", Event.REFUSED),
        ("illegible", Event.REFUSED),
        ("broken", Event.NOT_TAKEN),
        ("key", Event.NOT_TAKEN),
        ("mute", Event.LOST),
        ("gateway", Event.LOST),
        ("proxy", Event.LOST),
        ("conflict", Event.LOST),
    ],
)
def test_each_way_to_fail_is_told_from_the_others(provider: Email, kind: str, event: Event) -> None:
    batch = outgoing(provider, ["zoe@example.org", f"{kind}-mia@example.org", "ada@example.org"])

    outcomes = by_reference(hand_over(provider, batch))

    assert [outcomes[each.reference].event for each in batch] == [Event.TAKEN, event, Event.TAKEN]


def test_an_answer_that_does_not_come_in_time_leaves_us_unsure(name: str) -> None:
    with mail_provider(pause=0.6) as running:
        transport = Email(**running.options(name, timeout=0.2))
        outcome = one(transport, "mia@example.org")
        transport.close()

    assert outcome.event is Event.LOST


def test_a_provider_that_is_not_there_has_not_taken_it(running: MailProvider, name: str) -> None:
    away = {**running.options(name), "api_url": f"http://127.0.0.1:{servers.free_port()}/"}

    assert one(Email(**away), "mia@example.org").event is Event.NOT_TAKEN


@pytest.mark.parametrize("name", KEYED, indirect=True)
def test_what_was_lost_goes_again_under_its_key_and_does_not_come_twice(running: MailProvider, provider: Email) -> None:
    message = keyed("mute-mia@example.org")
    assert provider.key_lifetime > 0
    assert hand_over(provider, [message])[0].event is Event.LOST
    assert len(running.taken) == 1

    again = replace(message, reference="second", address="mute-mia@example.org")
    assert again.likeness == message.likeness
    outcome = hand_over(provider, [again])[0]

    assert len(running.taken) == 1
    assert outcome.event is Event.LOST  # mute still, and still one


@pytest.mark.parametrize("name", KEYED, indirect=True)
def test_the_same_key_twice_is_one_message_that_was_taken(running: MailProvider, provider: Email) -> None:
    hand_over(provider, [keyed()])

    [outcome] = hand_over(provider, [keyed(reference="second")])

    assert (outcome.reference, outcome.event, len(running.taken)) == ("second", Event.TAKEN, 1)


@pytest.mark.parametrize("name", ["resend"], indirect=True)
def test_other_words_under_a_key_that_was_used_are_never_said_to_have_been_taken(
    running: MailProvider, provider: Email
) -> None:
    hand_over(provider, [keyed()])

    [outcome] = hand_over(provider, [keyed(text="Other words")])

    assert (outcome.event, len(running.taken)) == (Event.LOST, 1)


@pytest.mark.parametrize("name", KEYED, indirect=True)
def test_a_message_without_a_key_takes_none_from_the_one_before(running: MailProvider, provider: Email) -> None:
    hand_over(provider, [keyed()])

    hand_over(provider, [keyed(key="", reference="second")])

    assert (len(running.taken), len(running.keys)) == (2, 1)


def test_a_provider_that_knows_no_keys_gets_our_reference(running: MailProvider) -> None:
    transport = Email(**running.options("postmark"))
    hand_over(transport, [keyed(reference="second")])
    transport.close()

    assert transport.key_lifetime == 0
    assert running.taken[0]["Metadata"] == {"reference": "second"}


def test_two_that_differ_in_anything_that_reaches_her_are_not_alike() -> None:
    first = letter()
    others = [
        letter(text="x"),
        letter(html=""),
        letter(subject="x"),
        letter(address="zoe@example.org"),
        letter(sender_name="x"),
        letter(headers={"X": "y"}),
        letter(enclosures=first.enclosures[:1]),
    ]

    assert first.likeness not in {one.likeness for one in others}
    assert letter(reference="x", key="y").likeness == first.likeness


def test_a_slow_provider_sets_the_pace_of_a_connection_and_not_of_all(name: str) -> None:
    with mail_provider(pause=0.1) as running:
        transport = Email(**running.options(name, connections=8))
        batch = outgoing(transport, ["mia@example.org"] * 24)
        began = time.monotonic()
        outcomes = hand_over(transport, batch)
        took = time.monotonic() - began
        transport.close()

    assert {outcome.event for outcome in outcomes} == {Event.TAKEN}
    assert len(running.taken) == 24
    assert len(running.connections) <= 8  # each is kept open
    assert took < 24 * 0.1 / 2  # one by one: 2.4 s; eight at once: 0.3 s and the machine's own time


def test_a_provider_is_given_both_forms_and_the_files(running: MailProvider) -> None:
    transport = Email(**running.options("postmark"))
    [outcome] = hand_over(transport, [letter()])
    transport.close()

    [sent] = running.taken
    assert outcome.event is Event.TAKEN
    assert (sent["TextBody"], sent["HtmlBody"]) == (letter().text, letter().html)
    inline, calendar = sent["Attachments"]
    assert (inline["Name"], inline["ContentType"], inline["ContentID"]) == ("logo.png", "image/png", "cid:logo")
    assert (calendar["Name"], calendar["ContentType"].split(";")[0]) == ("visit.ics", "text/calendar")
    assert base64.b64decode(inline["Content"]) == PICTURE
    assert base64.b64decode(calendar["Content"]) == CALENDAR
