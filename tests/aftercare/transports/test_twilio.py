"""Its own library, which nothing but these tests uses, says what is signed rightly and what a request must hold."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any
from urllib.parse import urlencode

import pytest
from twilio.request_validator import RequestValidator
from twilio.rest import Client

from aftercare.core.delivery import Event
from aftercare.transports.base import Callback, Forged
from aftercare.transports.twilio import Twilio
from tests import carriers
from tests.aftercare.transports.contract import Addresses, CallbackContract, Calls, FailureContract, TransportContract
from tests.aftercare.transports.test_http_sms import BUSY, GONE, GOOD, HANGS_UP, outcome_of, text_to
from tests.carriers import Carrier

SID, TOKEN = f"AC{'0' * 32}", "token-of-the-account"
BACK = "https://studio.example/hooks/3"
RECEIPT = {"AccountSid": SID, "MessageSid": "SM7", "SmsSid": "SM7", "To": GOOD, "From": "+15550100199"}
REPLY = {**RECEIPT, "MessageSid": "SM9", "SmsSid": "SM9", "SmsStatus": "received", "NumMedia": "0"}


@pytest.fixture(scope="module")
def server() -> Iterator[Carrier]:
    with carriers.carrier() as running:
        yield running


@pytest.fixture
def carrier(server: Carrier) -> Carrier:
    server.requests.clear()
    return server


@pytest.fixture
def road(carrier: Carrier) -> Iterator[Twilio]:
    made = Twilio(account_sid=SID, auth_token=TOKEN, api=carrier.url, callback=BACK, timeout=1)
    yield made
    made.close()


def called(fields: dict[str, str], url: str = f"{BACK}?ref=ours-1", algorithm: str = "") -> Callback:
    """A callback signed by the provider's own library."""
    signature = RequestValidator(TOKEN).compute_signature(url, fields, algorithm or None)
    headers = {"content-type": "application/x-www-form-urlencoded; charset=UTF-8", "x-twilio-signature": signature}
    if algorithm:
        headers["x-twilio-webhooks-signature-settings"] = f"key=webhooks_1,algorithm={algorithm}"
    return Callback(url=url, headers=headers, body=urlencode(fields).encode())


class TestTwilio(TransportContract, FailureContract, CallbackContract):
    @pytest.fixture
    def transport(self, road: Twilio) -> Twilio:
        return road

    @pytest.fixture
    def addresses(self) -> Addresses:
        return Addresses(good=GOOD, refused=GONE, busy=BUSY)

    @pytest.fixture
    def calls(self) -> Calls:
        receipt: dict[str, str] = {**RECEIPT, "SmsStatus": "sent"}
        return Calls(
            delivered=called({**receipt, "MessageStatus": "delivered"}),
            failed=called({**receipt, "MessageStatus": "undelivered", "ErrorCode": "30005"}),
            unknown=called({**receipt, "MessageStatus": "pondering"}),
            reply=called({**REPLY, "Body": "it stings & I'm red ¿?"}, url=BACK),
            broken=called({"AccountSid": SID}),
        )


def test_a_request_is_the_one_that_its_own_library_makes(carrier: Carrier, road: Twilio) -> None:
    """The library is led to the same provider; what both send is compared."""
    outcome = outcome_of(road, text_to(GOOD))
    library: Any = Client(SID, TOKEN)
    library.api.base_url = carrier.url
    sent = {"to": GOOD, "from_": "+15550100199", "body": text_to(GOOD).text, "status_callback": f"{BACK}?ref=ours-1"}
    library.messages.create(**sent)

    ours, theirs = carrier.requests
    assert (ours.method, ours.path, ours.form) == (theirs.method, theirs.path, theirs.form)
    assert ours.headers["authorization"] == theirs.headers["authorization"]
    assert (outcome.event, outcome.provider_ref) == (Event.TAKEN, "SM1")


def test_what_it_says_is_told_apart(carrier: Carrier, road: Twilio) -> None:
    busy = outcome_of(road, text_to(BUSY))
    gone = outcome_of(road, text_to(GONE))
    lost = outcome_of(road, text_to(HANGS_UP))

    assert (busy.event, busy.retry_after) == (Event.NOT_TAKEN, 90)
    assert (gone.event, gone.problem) == (
        Event.REFUSED,
        "This is no number that exists. Correct it on the client's card.",
    )
    assert lost.event is Event.LOST


@pytest.mark.parametrize("algorithm", ["", "HMAC_SHA1", "HMAC_SHA256"])
@pytest.mark.parametrize("url", [f"{BACK}?ref=ours-1", "https://studio.example:8443/hooks/3?ref=ours-1&x=%20y"])
def test_what_its_library_signs_is_taken(road: Twilio, url: str, algorithm: str) -> None:
    call = called({**RECEIPT, "MessageStatus": "delivered", "Blank": ""}, url, algorithm)

    road.verify(call)
    for forged in (
        replace(call, url=call.url.replace("https", "http")),
        replace(call, body=call.body.replace(b"delivered", b"failed")),
        replace(call, body=call.body + b"&More=1"),
        replace(call, headers={**call.headers, "x-twilio-webhooks-signature-settings": "algorithm=NONE"}),
    ):
        with pytest.raises(Forged):
            road.verify(forged)


def test_a_receipt_says_why_it_failed_in_a_sentence(road: Twilio) -> None:
    [note] = road.parse_receipts(called({**RECEIPT, "MessageStatus": "undelivered", "ErrorCode": "30003"}))

    assert (note.reference, note.provider_ref, note.event) == ("ours-1", "SM7", Event.FAILED)
    assert note.problem == "Her telephone could not be reached: switched off or out of range."


def test_a_reply_comes_with_both_numbers(road: Twilio) -> None:
    call = called({**REPLY, "From": GOOD, "To": "+15550100199", "Body": "STOP"}, url=BACK)

    [note] = road.parse_replies(call)

    assert (note.provider_ref, note.from_address, note.to_address, note.text) == ("SM9", GOOD, "+15550100199", "STOP")
    assert road.parse_receipts(call) == []


def test_a_photo_without_words_is_a_reply(road: Twilio) -> None:
    [note] = road.parse_replies(called({**REPLY, "Body": "", "NumMedia": "1", "MediaUrl0": "https://x/1"}, url=BACK))

    assert note.text == ""
    assert "https://x/1" in note.raw


def test_it_wants_its_keys() -> None:
    with pytest.raises(ValueError, match="auth_token"):
        Twilio(account_sid=SID, auth_token="")
