from __future__ import annotations

import base64
import json
import socket
import subprocess
import threading
import time
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest

from aftercare.core.delivery import Event
from aftercare.transports.base import Callback, Forged, Outcome, Outgoing, TransportError
from aftercare.transports.http_sms import HttpSms
from aftercare.transports.http_sms.answers import retry_after
from aftercare.transports.http_sms.callbacks import moment
from tests import carriers, servers
from tests.aftercare.transports.contract import (
    Addresses,
    CallbackContract,
    Calls,
    FailureContract,
    TransportContract,
    hand_over,
)
from tests.carriers import Carrier

GOOD, GONE, BUSY, BROKEN = "+15550100101", "+15550100102", "+15550100103", "+15550100104"
HANGS_UP, MUTE, AWAY, NO_KEY, STRANGE = ("+1555010010" + end for end in "56789")
SECRET = "a-secret-of-the-two"  # of the test alone
OPTIONS: dict[str, Any] = {
    "fields": {"to": "{to}", "from": "{from}", "text": "{text}", "tell": "{callback}", "mine": "{reference}"},
    "taken": {"status": [200, 201], "path": "status", "match": "queued|sent"},
    "provider_ref": {"path": "sid"},
    "refused": {"path": "code", "codes": {"21211": ""}},
    "receipts": {
        "word": "state",
        "words": {"DELIVRD": "delivered", "UNDELIV": "failed", "ACCEPTD": ""},
        "provider_ref": "id",
        "problem": "err",
        "problems": {"041": "Her telephone is switched off."},
        "at": "when",
    },
    "replies": {"text": "body.text", "from_address": "msisdn", "to_address": "to", "provider_ref": "id"},
    "signature": {"header": "X-Signature", "secret": SECRET, "prefix": "sha256="},
    "timeout": 1,
}


@pytest.fixture(scope="module")
def server() -> Iterator[Carrier]:
    with carriers.carrier() as running:
        yield running


@pytest.fixture
def carrier(server: Carrier) -> Carrier:
    server.requests.clear()
    return server


def road_to(carrier: Carrier, **more: Any) -> HttpSms:
    return HttpSms(url=f"{carrier.url}/send", **{**OPTIONS, **more})


def text_to(address: str, reference: str = "ours-1", **more: Any) -> Outgoing:
    facts = {"channel": "sms", "sender": "+15550100199", "text": "Hello Mia & co, ¿qué tal?"}
    return Outgoing(reference=reference, address=address, **{**facts, **more})


def outcome_of(road: HttpSms, outgoing: Outgoing) -> Outcome:
    try:
        [outcome] = road.send([outgoing])
        return outcome
    finally:
        road.close()


def called(*rows: dict[str, Any], query: str = "?ref=ours-1") -> Callback:
    """A signed callback. The judge of the signature is OpenSSL's own program, see the test below."""
    body = json.dumps(rows[0] if len(rows) == 1 else rows).encode()
    found = subprocess.run(
        ["openssl", "dgst", "-sha256", "-hmac", SECRET], input=body, capture_output=True, check=True
    ).stdout.split()[-1]
    headers = {"content-type": "application/json", "x-signature": f"sha256={found.decode()}"}
    return Callback(url=f"https://studio.example/hooks/3{query}", headers=headers, body=body)


class TestHttpSms(TransportContract, FailureContract, CallbackContract):
    @pytest.fixture
    def transport(self, carrier: Carrier) -> Iterator[HttpSms]:
        road = road_to(carrier)
        yield road
        road.close()

    @pytest.fixture
    def addresses(self) -> Addresses:
        return Addresses(good=GOOD, refused=GONE, busy=BUSY)

    @pytest.fixture
    def calls(self) -> Calls:
        return Calls(
            delivered=called({"id": "SM1", "state": "DELIVRD"}),
            failed=called({"id": "SM2", "state": "UNDELIV", "err": "041"}),
            unknown=called({"id": "SM3", "state": "PONDERING"}),
            reply=called({"id": "MO1", "msisdn": "15550100101", "to": "15550100199", "body": {"text": "it stings"}}),
            broken=replace(called({}), body=b'{"id": '),
        )


# Handing over


def test_fields_are_what_the_options_make_of_them(carrier: Carrier) -> None:
    road = road_to(carrier, callback="https://studio.example/hooks/3", bearer="key", headers={"X-App": "studio"})

    outcome = outcome_of(road, text_to(GOOD, sender=""))

    [taken] = carrier.requests
    assert (outcome.event, outcome.provider_ref) == (Event.TAKEN, "SM1")
    assert taken.form == {  # no sender: the field is left out
        "to": GOOD,
        "text": "Hello Mia & co, ¿qué tal?",
        "tell": "https://studio.example/hooks/3?ref=ours-1",
        "mine": "ours-1",
    }
    assert (taken.headers["authorization"], taken.headers["x-app"]) == ("Bearer key", "studio")


def test_json_may_be_nested_and_numbers_without_their_plus(carrier: Carrier) -> None:
    fields = {"to": "{to_digits}", "messages": [{"content": {"text": "{text}"}, "flash": False}]}

    outcome_of(road_to(carrier, body="json", fields=fields, user="u", password="p"), text_to(GOOD, text="{from}"))

    [taken] = carrier.requests
    assert json.loads(taken.body) == {
        "to": GOOD[1:],
        "messages": [{"content": {"text": "{from}"}, "flash": False}],  # her words are no template
    }
    assert taken.headers["authorization"] == "Basic " + base64.b64encode(b"u:p").decode()


def test_a_get_has_its_fields_in_the_address(carrier: Carrier) -> None:
    outcome_of(road_to(carrier, method="GET"), text_to(GOOD))

    [taken] = carrier.requests
    assert (taken.method, taken.query["to"], taken.body) == ("GET", GOOD, "")


@pytest.mark.parametrize(
    ("address", "event", "wait"),
    [
        (GOOD, Event.TAKEN, None),
        (GONE, Event.REFUSED, None),
        (BUSY, Event.NOT_TAKEN, 90),
        (AWAY, Event.NOT_TAKEN, 90),
        (BROKEN, Event.NOT_TAKEN, None),
        (NO_KEY, Event.NOT_TAKEN, None),
        (HANGS_UP, Event.LOST, None),
        (MUTE, Event.LOST, None),
        (STRANGE, Event.LOST, None),
    ],
)
def test_what_became_of_it_is_told_from_the_answer(
    carrier: Carrier, address: str, event: Event, wait: float | None
) -> None:
    outcome = outcome_of(road_to(carrier), text_to(address))

    assert (outcome.event, outcome.retry_after) == (event, wait)
    assert len(carrier.requests) == 1


def test_a_provider_that_is_not_there_has_taken_nothing() -> None:
    for url in (f"http://127.0.0.1:{servers.free_port()}", "http://no.such.host.invalid"):
        outcome = outcome_of(HttpSms(url=url, fields={"to": "{to}", "password": "secret"}, method="GET"), text_to(GOOD))

        assert outcome.event is Event.NOT_TAKEN
        assert "secret" not in outcome.problem


def test_a_provider_that_does_not_speak_tls_has_taken_nothing(carrier: Carrier) -> None:
    road = HttpSms(url=carrier.url.replace("http:", "https:"), fields={"to": "{to}"})

    assert outcome_of(road, text_to(GOOD)).event is Event.NOT_TAKEN


def test_who_breaks_off_amid_the_answer_may_have_taken_it() -> None:
    with socket.create_server(("127.0.0.1", 0)) as listening:
        road = HttpSms(url=f"http://127.0.0.1:{listening.getsockname()[1]}", fields={"to": "{to}"}, timeout=1)
        outcomes = road.send([text_to(GOOD)])

        def cut() -> None:
            connection = listening.accept()[0]
            connection.recv(65_536)
            connection.sendall(b"HTTP/1.1 200 OK\r\nContent-Length: 500\r\n\r\nhalf")
            connection.close()

        thread = threading.Thread(target=cut)
        thread.start()
        [outcome] = outcomes
        thread.join()
        road.close()

    assert outcome.event is Event.LOST


def test_a_fault_of_ours_with_one_text_leaves_the_others_alone(carrier: Carrier) -> None:
    road = road_to(carrier)

    outcomes = {one.reference: one.event for one in road.send([text_to(GOOD), text_to(GOOD, "odd", text="\ud83d")])}
    road.close()

    assert outcomes == {"ours-1": Event.TAKEN, "odd": Event.LOST}


def test_under_an_idempotency_key_it_is_sent_once_more_at_once(carrier: Carrier) -> None:
    road = road_to(carrier, idempotency_header="Idempotency-Key")

    assert outcome_of(road, text_to(HANGS_UP)).event is Event.LOST

    assert [one.headers["idempotency-key"] for one in carrier.requests] == ["ours-1", "ours-1"]


def test_a_window_goes_at_once_on_kept_connections() -> None:
    """Rate = window / latency: 200 texts at 50 ms and a window of 20 take 0.5 s, one by one they would take 10 s."""
    with carriers.carrier(pause=0.05) as slow:
        road = road_to(slow, window=20)
        began = time.monotonic()
        hand_over(road, [text_to(GOOD, f"ours-{number}") for number in range(200)])
        took = time.monotonic() - began
        road.close()

    assert slow.most_at_once == 20
    assert len({one.connection for one in slow.requests}) <= 20
    assert took < 2.5


def test_outcomes_come_as_they_are_known(carrier: Carrier) -> None:
    road = road_to(carrier)

    first = next(iter(road.send([text_to(MUTE, "slow"), text_to(GOOD, "quick")])))
    road.close()

    assert first.reference == "quick"


@pytest.mark.parametrize(
    ("options", "said"),
    [
        ({"fields": {"to": "{number}"}}, r"fields\.to has \{number\}"),
        ({"url": "api.example"}, "write the provider's address"),
        ({"taken": {"stat": [200]}}, "it knows status, path, match"),
        ({"taken": {"match": "("}}, r"taken\.match is no regular expression"),
        ({"window": "many"}, "window is 'many': write a number"),
        ({"signature": {"header": "X", "secret": "s", "algorithm": "md5"}}, "write one of sha1, sha256, sha512"),
        ({"receipts": {"word": "w", "words": {"ok": "arrived"}}}, "write delivered, failed, or nothing"),
        ({"callback_secret": "short"}, "16 to 120 letters"),
    ],
)
def test_a_wrong_option_is_named(options: dict[str, Any], said: str) -> None:
    with pytest.raises(ValueError, match=said):
        HttpSms(**{"url": "https://api.example", **OPTIONS, **options})


def test_a_wait_may_be_a_moment() -> None:
    """RFC 9110, 10.2.3 has both forms."""
    date = {"Date": "Wed, 10 Mar 2027 10:00:00 GMT"}

    assert retry_after({"Retry-After": "Wed, 10 Mar 2027 10:02:00 GMT", **date}) == 120
    assert retry_after({"Retry-After": "7"}) == 7
    assert retry_after({"Retry-After": "soon"}) is None


# Hearing back


def test_what_the_provider_says_of_a_text_is_known_by_our_reference() -> None:
    road = HttpSms(url="https://api.example", **OPTIONS)

    [note] = road.parse_receipts(called({"id": "SM2", "state": "UNDELIV", "err": "041", "when": "1805000000"}))

    assert (note.reference, note.provider_ref, note.event) == ("ours-1", "SM2", Event.FAILED)
    assert note.problem == "Her telephone is switched off."
    assert note.at is not None
    assert note.at.timestamp() == 1_805_000_000


def test_one_callback_may_tell_of_several() -> None:
    road = HttpSms(url="https://api.example", **OPTIONS)

    call = called({"id": "SM1", "state": "DELIVRD"}, {"id": "MO1", "msisdn": "15550100101", "body": {"text": "hi"}})

    assert [note.provider_ref for note in road.parse_receipts(call)] == ["SM1"]
    assert [note.from_address for note in road.parse_replies(call)] == ["+15550100101"]


def test_a_callback_that_tells_of_neither_names_its_fields() -> None:
    road = HttpSms(url="https://api.example", **OPTIONS)

    for read in (road.parse_receipts, road.parse_replies):
        with pytest.raises(TransportError, match=r"^The callback has not the fields .*; it has balance\.$"):
            read(called({"balance": 3}))


def test_what_is_wrong_is_said_without_her_words() -> None:
    road = HttpSms(url="https://api.example", **OPTIONS)
    call = Callback(url="https://studio.example/hooks/3", headers={}, body=b"my eye is red & it stings")

    with pytest.raises(TransportError, match=r"it has none\.$"):
        road.parse_replies(call)


@pytest.mark.parametrize("algorithm", ["sha1", "sha256", "sha512"])
@pytest.mark.parametrize("encoding", ["hex", "base64"])
def test_a_signature_over_address_and_body_is_as_openssl_makes_it(algorithm: str, encoding: str) -> None:
    signature = {"header": "X-Sig", "secret": SECRET, "algorithm": algorithm, "encoding": encoding, "over": "url+body"}
    road = HttpSms(url="https://api.example", **{**OPTIONS, "signature": signature})
    call = called({"id": "SM1", "state": "DELIVRD"})
    digest = subprocess.run(
        ["openssl", "dgst", f"-{algorithm}", "-hmac", SECRET, "-binary"],
        input=call.url.encode() + call.body,
        capture_output=True,
        check=True,
    ).stdout
    given = digest.hex() if encoding == "hex" else base64.b64encode(digest).decode()

    road.verify(replace(call, headers={"x-sig": given}))
    with pytest.raises(Forged):
        road.verify(replace(call, headers={"x-sig": given}, url=call.url + "0"))


def test_fields_that_no_signature_covers_say_nothing() -> None:
    road = HttpSms(url="https://api.example", **OPTIONS)
    call = called({"id": "SM1", "state": "UNDELIV"}, query="?ref=ours-1&state=DELIVRD")

    assert road.parse_receipts(call)[0].event is Event.FAILED
    with pytest.raises(Forged):
        road.verify(replace(call, body=b"", headers={}))


def test_a_secret_within_the_address_will_do_where_a_provider_cannot_sign() -> None:
    options = {**OPTIONS, "signature": None, "callback_secret": SECRET, "callback": "https://studio.example/hooks/3"}
    road = HttpSms(url="https://api.example", **options)
    call = Callback(url=road.callback_for("ours-1") + "&id=SM1&state=DELIVRD", headers={}, body=b"")

    road.verify(call)
    [note] = road.parse_receipts(call)

    assert (note.reference, note.event) == ("ours-1", Event.DELIVERED)
    with pytest.raises(Forged):
        road.verify(replace(call, url=call.url.replace(SECRET, SECRET[:-1])))


def test_without_signature_or_secret_nothing_is_believed() -> None:
    road = HttpSms(url="https://api.example", **{**OPTIONS, "signature": None})

    with pytest.raises(Forged, match="callback_secret"):
        road.verify(called({"id": "SM1", "state": "DELIVRD"}))


def test_a_moment_without_an_offset_is_not_believed() -> None:
    assert moment("2027-03-10 10:00:00") is None
    assert moment("2027-03-10T10:00:00+01:00") == moment("Wed, 10 Mar 2027 09:00:00 +0000")
    assert moment("soon") is None


def test_two_keys_at_one_provider_are_two_accounts() -> None:
    """One that is wrong must not have the other's texts wait, nor may their references be taken for each other's."""
    facts: dict[str, Any] = {"url": "http://127.0.0.1:9/send", "fields": {"to": "{to}"}}
    one, again, other = (HttpSms(**facts, bearer=key) for key in ("key-1", "key-1", "key-2"))

    assert one.account == again.account != other.account
    assert "key-1" not in one.account
    assert len({HttpSms(**facts, headers={"X-Key": key}).account for key in ("a", "b")}) == 2


def test_where_receipts_come_back_one_is_waited_for_before_a_text_whose_answer_was_lost_goes_again() -> None:
    facts: dict[str, Any] = {"url": "http://127.0.0.1:9/send", "fields": {"to": "{to}", "report": "{callback}"}}
    receipts = {"word": "state", "words": {"DELIVRD": "delivered"}}

    assert HttpSms(**facts).receipt_wait == 0
    assert HttpSms(**facts, receipts=receipts).receipt_wait == 60
    assert HttpSms(**facts, receipts=receipts, receipt_wait=0).receipt_wait == 0
