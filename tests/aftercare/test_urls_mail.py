"""A provider's callback, from its address to the morning list: with the secret alone."""

from __future__ import annotations

import base64
import importlib
import json
import sys
import time
from collections.abc import Iterator
from typing import Any

import pytest
from django.db import connection
from django.test import Client as Browser
from django.urls import clear_url_caches

from aftercare import triage
from aftercare.core.delivery import Event
from aftercare.models import Flag, Message, Receipt, Reply, Stop
from tests.letters import begin, end, make_line, make_message
from tests.pages import quiet_static
from tests.people import NOW, make_client, make_studio

__all__ = ["quiet_static"]

pytestmark = pytest.mark.django_db
SECRET = "birch:long-and-secret"  # of the test alone
PATH = "/mail/postmark/inbound/"
# As that provider documents its inbound callback, shortened to the fields that are read (from memory).
CALLED = {
    "From": "mia@mail.example",
    "FromFull": {"Email": "mia@mail.example", "Name": "Mia"},
    "To": "hello@birch.example",
    "ToFull": [{"Email": "hello@birch.example", "Name": ""}],
    "Cc": "",
    "CcFull": [],
    "Subject": "Re: How are your eyes today?",
    "MessageID": "73e6d360-66eb-11e1-8e72-a8904824019b",
    "Date": "Tue, 09 Mar 2027 10:00:00 -0500",
    "TextBody": "my left eye is swollen\n\n> How are your eyes today?",
    "HtmlBody": "",
    "Headers": [{"Name": "Message-ID", "Value": "<a@mail.example>"}],
    "Attachments": [],
}


def read_anew() -> None:
    """Read the routes again, as a process that starts with these settings does."""
    for name in ("aftercare.urls_mail", "aftercare.urls", "studio.urls"):
        if name in sys.modules:
            importlib.reload(sys.modules[name])
    clear_url_caches()


@pytest.fixture
def with_secret(settings: object) -> Iterator[None]:
    settings.ANYMAIL = {"WEBHOOK_SECRET": SECRET}  # type: ignore[attr-defined]
    read_anew()
    yield
    settings.ANYMAIL = {}  # type: ignore[attr-defined]
    read_anew()


def call(secret: str, called: dict[str, Any] = CALLED, path: str = PATH) -> int:
    key = base64.b64encode(secret.encode()).decode()
    return (
        Browser(raise_request_exception=False)
        .post(path, called, content_type="application/json", headers={"Authorization": f"Basic {key}"})
        .status_code
    )


def piece(kind: str, text: str) -> dict[str, Any]:
    content = base64.b64encode(text.encode()).decode()
    return {"Name": "part", "Content": content, "ContentType": kind, "ContentLength": len(text)}


def test_what_a_client_answers_by_e_mail_comes_to_the_morning_list(with_secret: None) -> None:
    studio = make_studio()
    make_line(studio, "email")
    mia = make_client(studio, email="mia@mail.example")

    assert call(SECRET) == 200
    assert call(SECRET) == 200  # a provider that calls twice brings it once

    reply = Reply.objects.get()
    assert reply.text == "my left eye is swollen"
    triage.read_waiting(NOW)
    assert Flag.objects.get().clients.get() == mia


def test_a_report_that_the_provider_took_to_pieces_is_the_messages(with_secret: None) -> None:
    """Its parts come as files, and its own type is gone."""
    line = make_line(make_studio(), "email")
    make_message(make_client(line.studio, email="mia@mail.example"), channel="email")
    [parcel] = begin(line)
    end([parcel], Event.TAKEN)
    status = "Reporting-MTA: dns; x\n\nFinal-Recipient: rfc822; mia@mail.example\nAction: failed\nStatus: 5.1.1\n"
    returned = f"Message-ID: <{parcel.reference}@birch.example>\nSubject: Your visit\n\nHello"
    sender = {"Email": "MAILER-DAEMON@mail.example", "Name": "Mail Delivery System"}
    pieces = [piece("message/delivery-status", status), piece("message/rfc822", returned)]

    assert call(SECRET, {**CALLED, "FromFull": sender, "TextBody": "It failed.", "Attachments": pieces}) == 200

    assert Message.objects.get().state == "undelivered"
    assert not Reply.objects.exists()


# As Postmark and Brevo document what they call back with, shortened to the fields that are read (from memory).
POSTMARK: dict[str, dict[str, Any]] = {
    "delivered": {"RecordType": "Delivery", "DeliveredAt": "2027-03-09T15:00:00Z"},
    "nobody": {"RecordType": "Bounce", "Type": "HardBounce", "ID": 7, "Details": "smtp;550 5.1.1 no such user"},
    "full": {"RecordType": "Bounce", "Type": "SoftBounce", "ID": 8, "Details": "smtp;552 5.2.2 mailbox full"},
    "unwanted": {"RecordType": "SpamComplaint", "Type": "SpamComplaint", "ID": 9},
}
BREVO: dict[str, dict[str, Any]] = {
    "delivered": {"event": "delivered"},
    "nobody": {"event": "hard_bounce", "reason": "550 5.1.1 no such user"},
    "full": {"event": "soft_bounce", "reason": "552 5.2.2 mailbox full"},
    "unwanted": {"event": "spam"},
}


@pytest.fixture
def reference() -> str:
    """The reference of an e-mail that was handed over."""
    line = make_line(make_studio(), "email")
    make_message(make_client(line.studio, email="mia@mail.example"), channel="email")
    [parcel] = begin(line)
    end([parcel], Event.TAKEN)
    return parcel.reference


@pytest.mark.parametrize(
    ("what", "state", "why"),
    [
        ("delivered", "delivered", []),
        ("nobody", "undelivered", ["bounced"]),
        ("full", "undelivered", []),
        ("unwanted", "handed_over", ["said"]),
    ],
)
@pytest.mark.parametrize("provider", ["postmark", "brevo"])
def test_what_became_of_a_message_is_acted_on(
    provider: str, what: str, state: str, why: list[str], with_secret: None, reference: str
) -> None:
    called = {"MessageID": "pm-7", "Email": "mia@mail.example", "Metadata": {"reference": reference}, **POSTMARK[what]}
    if provider == "brevo":
        custom = {"X-Mailin-custom": json.dumps({"reference": reference})}
        called = {"message-id": "b-7", "email": "mia@mail.example", "ts_epoch": 1804950000000, **custom, **BREVO[what]}

    assert call(SECRET, called, f"/mail/{provider}/tracking/") == 200
    assert call(SECRET, called, f"/mail/{provider}/tracking/") == 200

    assert Message.objects.get().state == state
    assert [stop.why for stop in Stop.objects.all()] == why


@pytest.mark.filterwarnings("ignore")
def test_what_became_of_a_message_is_heard_with_the_secret_alone(with_secret: None, reference: str) -> None:
    called = {"MessageID": "pm-7", "Metadata": {"reference": reference}, **POSTMARK["nobody"]}

    assert call("birch:guessed", called, "/mail/postmark/tracking/") == 400
    assert Message.objects.get().state == "handed_over"
    assert not Receipt.objects.exists()


def test_what_cannot_be_kept_is_not_acknowledged_so_that_the_provider_calls_again(
    with_secret: None, reference: str
) -> None:
    called = {"MessageID": "pm-7", "Metadata": {"reference": reference}, **POSTMARK["delivered"]}
    with connection.cursor() as cursor:
        cursor.execute("ALTER TABLE aftercare_receipt RENAME TO gone")

    assert call(SECRET, called, "/mail/postmark/tracking/") == 500

    with connection.cursor() as cursor:
        cursor.execute("ALTER TABLE gone RENAME TO aftercare_receipt")
    assert call(SECRET, called, "/mail/postmark/tracking/") == 200
    assert Message.objects.get().state == "delivered"


@pytest.mark.filterwarnings("ignore")
def test_without_the_right_secret_nothing_comes_in(with_secret: None) -> None:
    make_line(make_studio(), "email")

    assert call("birch:guessed") == 400
    assert not Reply.objects.exists()


def test_without_a_secret_there_is_no_such_address() -> None:
    assert call(SECRET) == 404


def raw(body: str, kind: str) -> str:
    headers = "From: mia@mail.example\nTo: hello@birch.example\nMessage-ID: <big@mail.example>\nSubject: My eye"
    return f"{headers}\nContent-Type: {kind}\n\n{body}"


def many_parts(number: int) -> str:
    part = "--b\nContent-Type: text/plain\n\nmy left eye is swollen shut\n"
    return raw(part * number + "--b--\n", "multipart/mixed; boundary=b")


def parts_within_parts(number: int) -> str:
    inner = "".join(f"--b{one}\nContent-Type: multipart/mixed; boundary=b{one + 1}\n\n" for one in range(number))
    last = f"--b{number}\nContent-Type: text/plain\n\nmy left eye is swollen shut\n"
    return raw(inner + last, "multipart/mixed; boundary=b0")


def in_a_form(mail: str) -> int:
    """Call as a provider does that hands a mail over as it came, in a form (from memory)."""
    key = base64.b64encode(SECRET.encode()).decode()
    browser = Browser(raise_request_exception=False)
    said = {"email": mail, "envelope": '{"to": ["hello@birch.example"], "from": "mia@mail.example"}'}
    return browser.post("/mail/sendgrid/inbound/", said, headers={"Authorization": f"Basic {key}"}).status_code


# Its support is dropped, and said to be with a warning; of those that use a form it alone asks for no signature.
IN_A_FORM = pytest.mark.filterwarnings("ignore::anymail.exceptions.AnymailNotSupportedWarning")


@IN_A_FORM
@pytest.mark.parametrize(
    "mail", [many_parts(600), many_parts(8_000), parts_within_parts(100), parts_within_parts(2_000)], ids=range(4)
)
def test_a_mail_of_parts_without_end_is_kept_whole_and_soon_for_a_person(with_secret: None, mail: str) -> None:
    studio = make_studio()
    make_line(studio, "email")
    mia = make_client(studio, email="mia@mail.example")
    began = time.process_time()

    assert in_a_form(mail) == 200
    assert in_a_form(mail) == 200

    assert time.process_time() - began < 4
    reply = Reply.objects.get()
    assert reply.from_address == "mia@mail.example"
    assert len(reply.raw) > 0.9 * len(mail)
    triage.read_waiting(NOW)
    flag = Flag.objects.get()
    assert flag.clients.get() == mia
    assert flag.urgency == "emergency"


def test_a_mail_of_many_parts_comes_by_json_too(with_secret: None) -> None:
    """One provider hands it over in a field of JSON, base64 or not (from memory)."""
    studio = make_studio()
    make_line(studio, "email")
    make_client(studio, email="mia@mail.example")
    mail = parts_within_parts(2_000)
    for number, content in enumerate((mail, base64.b64encode(mail.encode()).decode())):
        content = {"email_rfc822": content, "email_rfc822_is_base64": bool(number)}  # type: ignore[assignment]
        event = {"protocol": "smtp", "content": content, "msg_from": "mia@mail.example"}
        called: Any = [{"msys": {"relay_message": event}}]
        assert call(SECRET, called, "/mail/sparkpost/inbound/") == 200

    assert Reply.objects.count() == 1


@IN_A_FORM
def test_a_mail_of_parts_as_programs_write_them_is_parsed_as_ever(with_secret: None) -> None:
    make_line(make_studio(), "email")

    assert in_a_form(raw("--b\n\nmy eye is red\n--b\n\nand sore\n--b--\n", "multipart/mixed; boundary=b")) == 200

    assert Reply.objects.get().text == "my eye is red\nand sore"
