"""Anymail's own signals and message class, as any of its providers' webhooks send them."""

from __future__ import annotations

from datetime import timedelta
from email import message_from_string
from email.message import EmailMessage
from typing import Any

import pytest
from anymail.inbound import AnymailInboundMessage
from anymail.signals import AnymailInboundEvent, AnymailTrackingEvent, inbound, tracking

from aftercare import machines, receiving, stops
from aftercare.core.delivery import Event
from aftercare.models import Attempt, Line, Message, Receipt, Reply, Stop
from studio.models import Client, Consent
from tests.aftercare.test_letterbox import BROKEN
from tests.aftercare.test_pictures import photo
from tests.letters import begin, end, make_line, make_message
from tests.people import NOW, make_client, make_studio

pytestmark = pytest.mark.django_db
LATER = NOW + timedelta(minutes=1)


@pytest.fixture
def line() -> Line:
    return make_line(make_studio(), "email")


@pytest.fixture
def reference(line: Line) -> str:
    """The reference of an e-mail that was handed over."""
    make_message(make_client(line.studio, email="mia@mail.example"), channel="email")
    [parcel] = begin(line)
    end([parcel], Event.TAKEN, provider_ref="pm-7")
    return parcel.reference


def report(kind: str, **fields: object) -> None:
    facts = {"event_type": kind, "timestamp": LATER, "message_id": "pm-7", "esp_event": {"Type": kind}}
    tracking.send(sender=None, event=AnymailTrackingEvent(**{**facts, **fields}), esp_name="Test")


def test_a_delivery_is_noted_by_our_reference_or_the_providers(reference: str) -> None:
    report("delivered", message_id="another", metadata={"reference": reference})

    message = Message.objects.get()
    assert (message.state, message.ended_at) == ("delivered", LATER)
    assert "delivered" in Receipt.objects.get().raw


def test_a_bounce_is_undelivered_in_the_providers_words(reference: str) -> None:
    report("bounced", description="Mailbox unavailable")

    message = Message.objects.get()
    assert message.state == "undelivered"
    assert message.reason == "The mail provider reports: bounced. Mailbox unavailable"


@pytest.mark.parametrize("kind", ["queued", "sent", "opened", "clicked", "complained", "deferred", "something new"])
def test_what_is_no_news_of_its_arrival_is_only_kept(reference: str, kind: str) -> None:
    report(kind)

    assert Message.objects.get().state == "handed_over"
    assert Receipt.objects.get().word == kind


@pytest.mark.parametrize(("kind", "words"), [("complained", stops.COMPLAINED), ("unsubscribed", stops.UNSUBSCRIBED)])
def test_whoever_calls_our_mail_unwanted_gets_no_more_of_it(reference: str, kind: str, words: str) -> None:
    for _ in range(2):
        report(kind)

    stop = Stop.objects.get()
    assert (stop.address, stop.words) == ("mia@mail.example", words)
    assert Message.objects.get().state == "handed_over"


def test_a_complaint_about_a_message_that_is_none_of_ours_ends_nothing(reference: str) -> None:
    report("complained", message_id="foreign")

    assert not Stop.objects.exists()


def test_a_report_about_nothing_that_we_know_is_kept() -> None:
    report("delivered", message_id="foreign")

    assert Receipt.objects.get().attempt is None


def mail(to: str = "Hello <HELLO@birch.example>", body: str = "my eye is red", **headers: str) -> None:
    raw = EmailMessage()
    raw["From"], raw["To"], raw["Subject"], raw["Message-ID"] = "Mia <Mia@Mail.Example>", to, "Re: aftercare", "<a@b>"
    for name, value in headers.items():
        raw[name.replace("_", "-")] = value
    raw.set_content(body)
    message = AnymailInboundMessage.parse_raw_mime(raw.as_string())
    event = AnymailInboundEvent(event_type="inbound", timestamp=LATER, event_id="1", message=message)
    inbound.send(sender=None, event=event, esp_name="Test")


def test_an_email_to_a_line_is_stored(line: Line) -> None:
    mail()

    reply = Reply.objects.get()
    assert (reply.line, reply.from_address, reply.subject) == (line, "mia@mail.example", "Re: aftercare")
    assert (reply.text.strip(), reply.provider_ref, reply.received_at) == ("my eye is red", "<a@b>", LATER)
    assert "Message-ID: <a@b>" in reply.raw
    assert not reply.automatic
    assert reply.read_at is None


def test_the_same_email_twice_is_one(line: Line) -> None:
    mail()
    mail()

    assert Reply.objects.count() == 1


def test_an_email_to_none_of_our_lines_is_not_ours(line: Line) -> None:
    mail(to="someone@else.example")

    assert not Reply.objects.exists()


def test_an_answer_to_our_message_is_ours_whatever_address_it_went_to(line: Line, reference: str) -> None:
    make_line(make_studio("elm"), "email")

    mail(to="the-old-address@birch.example", In_Reply_To=f"<{reference}@birch.example>")

    assert Reply.objects.get().line == line


@pytest.mark.parametrize(
    ("said", "automatic"),
    [("auto-replied", True), ("auto-generated; owner=x", True), ("No", False), ("no; reason=y", False)],
)
def test_a_machine_is_known_by_what_rfc_3834_says(line: Line, said: str, automatic: bool) -> None:
    mail(Auto_Submitted=said)

    assert Reply.objects.get().automatic is automatic


def test_a_delivery_report_is_a_machines() -> None:
    raw = 'Content-Type: multipart/report; report-type=delivery-status; boundary="b"\n\n--b--\n'

    assert machines.wrote(AnymailInboundMessage.parse_raw_mime(raw))


def report_of(reference: str, action: str = "failed") -> AnymailInboundMessage:
    """A delivery report on a message of ours (RFC 3464)."""
    return AnymailInboundMessage.parse_raw_mime(
        "From: postmaster@mail.example\nTo: hello@birch.example\nMessage-ID: <report@mail.example>\n"
        "Content-Type: multipart/report; report-type=delivery-status; boundary=b\n\n"
        "--b\nContent-Type: text/plain\n\nIt did not arrive.\n"
        f"--b\nContent-Type: message/delivery-status\n\nReporting-MTA: dns; x\n\nAction: {action}\nStatus: 5.1.1\n"
        "Diagnostic-Code: smtp; 550 5.1.1 User unknown\n\n"
        f"--b\nContent-Type: message/rfc822\n\nX-Message-Reference: {reference}\nSubject: x\n\nx\n--b--\n"
    )


def come_in(message: AnymailInboundMessage) -> None:
    event = AnymailInboundEvent(event_type="inbound", timestamp=LATER, event_id="1", message=message)
    inbound.send(sender=None, event=event, esp_name="Test")


def test_a_report_that_it_did_not_arrive_is_the_messages_and_no_reply_of_hers(reference: str) -> None:
    come_in(report_of(reference))

    message = Message.objects.get()
    assert message.state == "undelivered"
    assert message.reason == "A mail server reports: failed 5.1.1. 550 5.1.1 User unknown"
    assert not Reply.objects.exists()


def test_a_report_of_a_delay_changes_nothing(reference: str) -> None:
    come_in(report_of(reference, action="delayed"))

    assert Message.objects.get().state == "handed_over"
    assert not Reply.objects.exists()


# RFC 5965, appendix B.1 (its "minimal email feedback report"), with our own names.
FEEDBACK = """From: <abusedesk@mail.example>
Date: Thu, 8 Mar 2005 17:40:36 EDT
Subject: FW: Earn money
To: <hello@birch.example>
Message-ID: <feedback@mail.example>
MIME-Version: 1.0
Content-Type: multipart/report; report-type=feedback-report; boundary="part1_13d.2e68ed54_boundary"

--part1_13d.2e68ed54_boundary
Content-Type: text/plain; charset="US-ASCII"
Content-Transfer-Encoding: 7bit

This is an email abuse report for an email message received from IP 192.0.2.1.

--part1_13d.2e68ed54_boundary
Content-Type: message/feedback-report

Feedback-Type: {kind}
User-Agent: SomeGenerator/1.0
Version: 1

--part1_13d.2e68ed54_boundary
Content-Type: message/rfc822
Content-Disposition: inline

Received: from mailserver.example.net (mailserver.example.net [192.0.2.1])
From: <hello@birch.example>
To: <Undisclosed Recipients>
Message-ID: <{reference}@birch.example>
Subject: How are your eyes today?

Words.
--part1_13d.2e68ed54_boundary--
"""


def test_a_report_of_abuse_is_an_opt_out_and_no_reply(reference: str) -> None:
    come_in(AnymailInboundMessage.parse_raw_mime(FEEDBACK.format(kind="abuse", reference=reference)))

    stop = Stop.objects.get()
    assert (stop.address, stop.words) == ("mia@mail.example", stops.COMPLAINED)
    assert not Reply.objects.exists()


@pytest.mark.parametrize("kind", ["other", "virus", "not-spam"])
def test_other_feedback_is_kept_and_ends_nothing(reference: str, kind: str) -> None:
    come_in(AnymailInboundMessage.parse_raw_mime(FEEDBACK.format(kind=kind, reference=reference)))

    assert Receipt.objects.get().word == f"report: {kind}"
    assert not Stop.objects.exists()


def test_a_report_on_nothing_of_ours_is_kept_as_a_machines(line: Line) -> None:
    come_in(report_of("somebody-elses"))

    assert Reply.objects.get().automatic


def test_an_e_mail_keeps_her_words_apart_and_its_picture_without_its_place(line: Line) -> None:
    raw = EmailMessage()
    raw["From"], raw["To"], raw["Message-ID"] = "mia@mail.example", "hello@birch.example", "<a@b>"
    raw.set_content(
        "left lid is itchy\n\nOn Tue, 9 Mar 2027 at 10:00, Birch <a@b.example> wrote:\n> How are your eyes?"
    )
    raw.add_attachment(photo(), maintype="image", subtype="jpeg", filename="IMG_7.jpg")
    raw.add_attachment(b"%PDF-1.7", maintype="application", subtype="pdf", filename="a.pdf")
    come_in(AnymailInboundMessage.parse_raw_mime(raw.as_string()))

    reply = Reply.objects.get()
    assert reply.text == "left lid is itchy"
    assert "How are your eyes?" in reply.below
    picture, pdf = reply.attachments.all()
    assert (picture.kind, picture.name, bool(picture.content)) == ("image/jpeg", "IMG_7.jpg", True)
    assert (pdf.content, pdf.name) == (None, "a.pdf")
    assert "Not kept" in pdf.problem


def test_the_same_mail_twice_brings_its_files_once(line: Line) -> None:
    raw = EmailMessage()
    raw["From"], raw["To"], raw["Message-ID"] = "mia@mail.example", "hello@birch.example", "<a@b>"
    raw.set_content("see")
    raw.add_attachment(photo(), maintype="image", subtype="jpeg", filename="IMG_7.jpg")
    for _again in range(2):
        come_in(AnymailInboundMessage.parse_raw_mime(raw.as_string()))

    assert Reply.objects.get().attachments.count() == 1


def test_no_more_files_are_kept_than_one_can_look_at(line: Line) -> None:
    files = [(f"{number}.jpg", photo()) for number in range(10)]

    reply = receiving.receive(line, "mia@mail.example", "see", received_at=LATER, files=files)

    assert reply.attachments.filter(content__isnull=False).count() == 8
    assert reply.attachments.filter(problem__contains="more than 8 files").count() == 2


def test_of_too_many_files_the_largest_are_kept(line: Line) -> None:
    logos = [(f"{number}.png", photo((8, 8), "PNG")) for number in range(60)]
    videos = [(f"{number}.mov", b"moov" * 9_000) for number in range(8)]
    files = [*logos, *videos, ("eye.jpg", photo((600, 400)))]

    reply = receiving.receive(line, "mia@mail.example", "see", received_at=LATER, files=files)

    assert reply.attachments.get(name="eye.jpg").content is not None
    assert reply.attachments.count() == 50


def test_nowhere_is_kept_where_a_photo_was_taken(line: Line) -> None:
    raw = EmailMessage()
    raw["From"], raw["To"], raw["Message-ID"] = "mia@mail.example", "hello@birch.example", "<a@b>"
    raw.set_content("see")
    raw.add_attachment(photo(), maintype="image", subtype="jpeg", filename="IMG_7.jpg")
    come_in(AnymailInboundMessage.parse_raw_mime_bytes(bytes(raw)))

    reply = Reply.objects.get()
    again = message_from_string(reply.raw)
    held = b"".join(part.get_payload(decode=True) or b"" for part in again.walk())  # type: ignore[misc]
    assert b"telephone" not in held + bytes(reply.attachments.get().content or b"")
    assert b"see" in held


@pytest.mark.parametrize("raw", BROKEN)
def test_a_broken_mail_is_stored_all_the_same(line: Line, raw: str) -> None:
    message = AnymailInboundMessage.parse_raw_mime_bytes(raw.encode())
    message.envelope_recipient = "hello@birch.example"

    come_in(message)

    reply = Reply.objects.get()
    assert "my eye is red" in reply.text + reply.raw
    assert reply.read_at is None


def test_a_report_that_sends_nothing_back_finds_its_message_all_the_same(reference: str) -> None:
    come_in(
        AnymailInboundMessage.parse_raw_mime(
            "From: postmaster@mail.example\nTo: hello@birch.example\nMessage-ID: <report@mail.example>\n"
            f"In-Reply-To: <{reference}@birch.example>\n"
            "Content-Type: multipart/report; report-type=delivery-status; boundary=b\n\n"
            "--b\nContent-Type: message/delivery-status\n\nReporting-MTA: dns; x\n\nAction: failed\nStatus: 5.2.2\n\n"
            "--b--\n"
        )
    )

    assert Message.objects.get().state == "undelivered"
    assert not Reply.objects.exists()


@pytest.mark.parametrize(
    "where", ["Message-ID: <\xe9\x00@x>", "In-Reply-To: <\xe9\x00@x>", "References: <\xe9\x00@x> <b"]
)
def test_a_report_with_anything_in_its_headers_is_kept(reference: str, where: str) -> None:
    status = "Original-Envelope-Id: \xe9\x00\nReporting-MTA: dns; x\n\nAction: failed\xe9\x00\nStatus: \xe9\x00\n"
    raw = (
        f"From: postmaster@mail.example\nTo: hello@birch.example\n{where}\n"
        "Content-Type: multipart/report; boundary=b\n\n"
        f"--b\nContent-Type: message/delivery-status\n\n{status}Diagnostic-Code: smtp; \xe9\x00\n\n--b--\n"
    )

    come_in(AnymailInboundMessage.parse_raw_mime_bytes(raw.encode("latin-1")))

    assert Reply.objects.get().automatic


# As providers document their callbacks (from memory), in the fields that are read; codes by RFC 3463.
@pytest.mark.parametrize(
    ("fields", "rests"),
    [
        ({"mta_response": "smtp;550 5.1.1 The email account does not exist"}, True),
        ({"mta_response": "552 5.2.2 Mailbox full", "esp_event": {"Type": "HardBounce"}}, False),
        ({"mta_response": "550 5.7.1 Looks like spam"}, False),
        ({"esp_event": {"RecordType": "Bounce", "Type": "HardBounce"}, "reject_reason": "bounced"}, True),
        ({"esp_event": {"RecordType": "Bounce", "Type": "SoftBounce"}, "reject_reason": "bounced"}, False),
        ({"esp_event": {"event": "soft_bounce"}, "reject_reason": "bounced"}, False),
        ({"esp_event": {"data": {"bounce": {"type": "Permanent"}}}, "reject_reason": "bounced"}, True),
        ({"reject_reason": "invalid"}, True),
        ({"reject_reason": "blocked"}, False),
    ],
)
def test_an_address_rests_only_where_nobody_has_it(reference: str, fields: dict[str, Any], rests: bool) -> None:
    report("bounced", **fields)

    assert [stop.why for stop in Stop.objects.all()] == (["bounced"] if rests else [])
    assert Message.objects.get().state == "undelivered"


def test_what_came_back_goes_by_the_other_channel_once(line: Line, reference: str) -> None:
    her = Message.objects.get().client
    assert her is not None
    Client.objects.filter(pk=her.pk).update(mobile="+12125550101")
    Consent.objects.create(client=her, channel="sms", purpose="visits", given=True, at=NOW, how="on paper")

    for _ in range(2):
        report("bounced", mta_response="550 5.1.1 no such user")

    message = Message.objects.get()
    assert (message.state, message.channel, message.fell_back) == ("planned", "sms", True)


def test_a_report_by_mail_lets_an_address_rest_too(reference: str) -> None:
    come_in(report_of(reference))

    stop = Stop.objects.get()
    assert (stop.address, stop.why) == ("mia@mail.example", "bounced")
    assert stop.words == "A mail server reports: failed 5.1.1. 550 5.1.1 User unknown"


def test_whoever_writes_from_an_address_has_it(reference: str) -> None:
    report("bounced", mta_response="550 5.1.1 no such user")

    mail()

    assert not Stop.objects.filter(lifted_at=None).exists()


def test_a_machine_that_answers_for_an_address_is_not_her(reference: str) -> None:
    report("bounced", mta_response="550 5.1.1 no such user")

    mail(Auto_Submitted="auto-replied")

    assert Stop.objects.filter(lifted_at=None).exists()


def test_a_message_to_somebody_who_works_here_lets_no_address_rest(line: Line) -> None:
    make_message(make_client(line.studio, email="mia@mail.example"), channel="email")
    Message.objects.update(client=None)
    [parcel] = begin(line)
    end([parcel], Event.TAKEN, provider_ref="pm-7")

    report("bounced", mta_response="550 5.1.1 no such user")

    assert not Stop.objects.exists()


@pytest.mark.parametrize("named", [True, False])
def test_what_became_of_it_is_heard_whichever_account_it_went_by(reference: str, named: bool) -> None:
    Attempt.objects.update(provider="email-0123456789abcdef")

    report("delivered", **({"metadata": {"reference": reference}, "message_id": "x"} if named else {}))

    assert Message.objects.get().state == "delivered"
    assert Receipt.objects.get().account == "email-0123456789abcdef"


def test_an_address_that_another_studio_has_by_now_is_that_studios(line: Line) -> None:
    """Whichever of the two lines was made first."""
    older = Line.objects.create(studio=make_studio("alder"), channel="email", address="desk@birch.example")
    newer = Line.objects.create(studio=line.studio, channel="email", address="desk@birch.example", is_active=False)

    mail(to="desk@birch.example")
    Line.objects.filter(pk=older.pk).update(is_active=False)
    Line.objects.filter(pk=newer.pk).update(is_active=True)
    mail(to="desk@birch.example")

    assert [reply.line for reply in Reply.objects.order_by("pk")] == [older, newer]
