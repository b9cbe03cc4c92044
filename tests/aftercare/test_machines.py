"""Machines' mail, told from a person's, and what their reports say."""

from __future__ import annotations

from email import message_from_string
from email.message import Message
from email.mime.message import MIMEMessage
from email.mime.multipart import MIMEMultipart
from email.mime.text import MIMEText

import pytest

from aftercare import machines
from aftercare.machines import Report
from tests.aftercare.test_letterbox import mail


@pytest.mark.parametrize(
    ("headers", "automatic"),
    [
        ({}, False),
        ({"Auto_Submitted": "no"}, False),
        ({"Auto_Submitted": "auto-replied"}, True),  # RFC 3834, 5
        ({"Auto_Submitted": "auto-generated; type=x"}, True),
        ({"Precedence": "bulk"}, True),
        ({"Precedence": "first-class"}, False),
        ({"X_Autoreply": "yes"}, True),
        ({"List_Id": "<list.example>"}, True),  # RFC 2919
        ({"Return_Path": "<>"}, True),
        ({"Return_Path": "<MAILER-DAEMON>"}, True),
        ({"Return_Path": "<mia@mail.example>"}, False),
        ({"X_Precedence": "auto_reply"}, True),
        ({"X_Auto_Response_Suppress": "All"}, False),  # asks that no machine answers: people's mail has it, too
        ({"From": "Mail Delivery System <MAILER-DAEMON@mail.example>"}, True),  # RFC 5321, 4.5.1: postmaster
        ({"From": "Mia <mia@mail.example>"}, False),
        ({"Subject": "Automatic reply: How are your eyes"}, True),
        ({"Subject": "Out of the office until Monday"}, True),
        ({"Subject": "Respuesta automática: Tus ojos"}, True),
        ({"Subject": "Autorespuesta: Tus ojos"}, True),
        ({"Subject": "Re: out of habit I rub them"}, False),
        ({"Subject": "On vacation and my eye is red"}, False),
    ],
)
def test_a_machine_is_told_from_a_person(headers: dict[str, str], automatic: bool) -> None:
    assert machines.wrote(mail("I am away.", **headers)) is automatic


# RFC 3464, the first of its examples ("Simple DSN"), with our own names; shortened to the parts that matter.
REPORT = """Date: Thu, 7 Jul 1994 17:16:05 -0400
From: Mail Delivery Subsystem <MAILER-DAEMON@mail.example>
Message-Id: <199407072116.RAA14128@mail.example>
Subject: Returned mail: Cannot send message for 5 days
To: <hello@birch.example>
MIME-Version: 1.0
Content-Type: multipart/report; report-type=delivery-status; boundary="RAA14128.773615765/CS.UTK.EDU"

--RAA14128.773615765/CS.UTK.EDU

   The original message was received at Sat, 2 Jul 1994 17:10:28 -0400

--RAA14128.773615765/CS.UTK.EDU
content-type: message/delivery-status

{envelope}Reporting-MTA: dns; mail.example

Original-Recipient: rfc822;mia@mail.example
Final-Recipient: rfc822;mia@mail.example
Action: {action}
Status: 4.0.0
Diagnostic-Code: smtp; 426 connection timed out
Last-Attempt-Date: Thu, 7 Jul 1994 17:15:49 -0400

"""
RETURNED = """--RAA14128.773615765/CS.UTK.EDU
content-type: {kind}

Message-ID: <{identity}@birch.example>
{reference}From: <hello@birch.example>
Subject: How are your eyes today?

"""
END = "--RAA14128.773615765/CS.UTK.EDU--\n"


def report(*more: str, envelope: str = "", action: str = "failed") -> Message:
    return message_from_string(REPORT.format(envelope=envelope, action=action) + "".join(more) + END)


@pytest.mark.parametrize(
    "kind", ["message/rfc822", "text/rfc822-headers", "message/global", "message/global-headers"]
)  # RFC 6522, 3; RFC 6533
@pytest.mark.parametrize("reference", ["X-Message-Reference: ref-7\n", ""])
def test_a_delivery_report_says_which_message_failed_and_why(kind: str, reference: str) -> None:
    identity = "ref-7" if not reference else "rewritten-on-its-way"

    found = machines.report_of(report(RETURNED.format(kind=kind, identity=identity, reference=reference)))

    assert found == Report("ref-7", "failed", "4.0.0", "426 connection timed out")


def test_a_report_that_sends_nothing_back_is_told_by_the_envelope_that_we_named() -> None:
    found = machines.report_of(report(envelope="Original-Envelope-Id: ref-7\n"))  # RFC 3464, 2.2.1

    assert found is not None
    assert found.reference == "ref-7"


def test_a_report_that_sends_nothing_back_is_told_by_what_it_follows() -> None:
    found = machines.report_of(message_from_string(f"In-Reply-To: <ref-7@birch.example>\n{report().as_string()}"))

    assert found is not None
    assert found.reference == "ref-7"


def test_what_is_no_report_or_names_nothing_of_ours_is_none() -> None:
    assert machines.report_of(mail("my eye is red")) is None
    assert machines.report_of(report()) is None


def test_a_report_in_pieces_is_a_report() -> None:
    """As a provider gives it on that makes an ordinary mail with files of what came in."""
    whole = report(RETURNED.format(kind="message/rfc822", identity="ref-7", reference=""), action="delayed")
    pieces = whole.as_string().replace("multipart/report; report-type=delivery-status;", "multipart/mixed;")

    found = machines.report_of(message_from_string(pieces))

    assert found is not None
    assert (found.reference, found.action) == ("ref-7", "delayed")


def test_a_report_that_she_forwards_is_her_mail() -> None:
    inner = report(RETURNED.format(kind="message/rfc822", identity="ref-7", reference=""))
    forwarded = MIMEMultipart(_subparts=[MIMEText("I got this from you, my eye is red"), MIMEMessage(inner)])
    forwarded["From"] = "mia@mail.example"

    assert machines.report_of(forwarded) is None
    assert not machines.wrote(forwarded)


def test_what_a_mail_follows_is_named_the_nearest_first() -> None:
    """RFC 5322, 3.6.4: References has the whole thread, the nearest last."""
    found = machines.references(mail("", In_Reply_To="<c@x>", References="<a@x> <b@x> <c@x>"))

    assert found == ["c", "b", "a"]
    assert machines.references(mail("", In_Reply_To="your message of Tuesday")) == []
