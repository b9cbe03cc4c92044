"""E-mails taken apart. Kinds of mail programs are described by how they set out an answer, not by name."""

from __future__ import annotations

from email import message_from_bytes, message_from_string
from email.message import Message

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aftercare import letterbox
from aftercare.core import reading

QUESTION = "> How are your eyes today? Any redness, itching or swelling?\n> Reply STOP to end texts"


@pytest.mark.parametrize(
    ("text", "own"),
    [
        (f"Yes, a bit\n\nOn Tue, 9 Mar 2027 at 10:00, The Studio <a@b.example> wrote:\n{QUESTION}", "Yes, a bit"),
        (
            f"Sí, un poco\n\nEl mar, 9 mar 2027 a las 10:00, Estudio (<a@b.example>) escribió:\n\n{QUESTION}",
            "Sí, un poco",
        ),
        (f"Oui un peu\n\nLe mar. 9 mars 2027 à 10:00, Studio <a@b.example> a écrit :\n{QUESTION}", "Oui un peu"),
        (f"{QUESTION}\n\nnot good, they burn", "not good, they burn"),
        ("all good\n\n-- \nMia Quist\n14 Juniper Row", "all good"),
        ("it stings\n\nSent from my phone", "it stings"),
        ("me pica\n\nEnviado desde mi teléfono", "me pica"),
        (
            "My left eye is red\n\n-----Original Message-----\nFrom: The Studio\nSubject: Eyes\n\nHow are they?",
            "My left eye is red",
        ),
        ("one line\r\n\r\nanother, with > in it", "one line\n\nanother, with > in it"),
        ("", ""),
    ],
)
def test_her_own_words_stand_apart_from_what_her_program_put_below(text: str, own: str) -> None:
    found = letterbox.split(text)

    assert found.own == own
    for word in found.own.split():
        assert word not in found.below.split() or word in text.replace(found.own, "", 1).split()


def test_a_bare_yes_has_its_meaning_from_the_question_below() -> None:
    found = letterbox.split(f"Yes\n\nOn Tue, 9 Mar 2027 at 10:00, The Studio <a@b.example> wrote:\n{QUESTION}")
    quoted = "\n".join(f"> {line}" for line in found.below.splitlines())

    assert reading.read(f"{found.own}\n\n{quoted}").urgency == "same_day"


def mail(body: str, kind: str = "text/plain; charset=utf-8", **headers: str) -> Message:
    lines = [f"{name.replace('_', '-')}: {value}" for name, value in headers.items()]
    return message_from_string("\n".join([*lines, f"Content-Type: {kind}", "", body]))


def test_a_mail_in_html_alone_is_read_as_text() -> None:
    html = (
        "<html><head><style>p{color:red}</style></head><body><p>My eye is <b>swollen</b></p><p>since Tuesday</p></body>"
    )

    words = letterbox.words_of(mail(html, "text/html; charset=utf-8")).own

    assert "My eye is swollen" in words
    assert "since Tuesday" in words
    assert "color" not in words


def test_the_plain_part_is_taken_where_there_is_one() -> None:
    both = mail(
        "--b\nContent-Type: text/plain\n\nmy eye\n--b\nContent-Type: text/html\n\n<p>other</p>\n--b--",
        "multipart/alternative; boundary=b",
    )

    assert letterbox.words_of(both).own == "my eye"


@pytest.mark.parametrize(
    ("charset", "raw"), [("iso-8859-1", b"est\xe1 rojo"), ("nonsense", b"rojo"), ("utf-8", b"\xff rojo")]
)
def test_any_character_set_is_read_as_well_as_can_be(charset: str, raw: bytes) -> None:
    message = message_from_bytes(b"Content-Type: text/plain; charset=" + charset.encode() + b"\n\n" + raw)

    assert "rojo" in letterbox.body_of(message)


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
        ({"Subject": "Automatic reply: How are your eyes"}, True),
        ({"Subject": "Out of the office until Monday"}, True),
        ({"Subject": "Respuesta automática: Tus ojos"}, True),
        ({"Subject": "Re: out of habit I rub them"}, False),
    ],
)
def test_a_machine_is_told_from_a_person(headers: dict[str, str], automatic: bool) -> None:
    assert letterbox.is_automatic(mail("I am away.", **headers)) is automatic


# RFC 3464, appendix D.1 (a report of two recipients that failed), shortened to the parts that matter; our own names.
REPORT = """From: Mail Delivery Subsystem <postmaster@mail.example>
To: <hello@birch.example>
Subject: Returned mail: User unknown
MIME-Version: 1.0
Content-Type: multipart/report; report-type=delivery-status; boundary="RAA14128.773615765/CS.UTK.EDU"

--RAA14128.773615765/CS.UTK.EDU

The original message was received from the studio.

--RAA14128.773615765/CS.UTK.EDU
content-type: message/delivery-status

Reporting-MTA: dns; cs.utk.edu

Original-Recipient: rfc822;mia@mail.example
Final-Recipient: rfc822;mia@mail.example
Action: {action}
Status: {status}
Diagnostic-Code: smtp; 550 5.1.1 User unknown

--RAA14128.773615765/CS.UTK.EDU
content-type: {returned}

Message-ID: <{identity}@birch.example>
{reference}From: <hello@birch.example>
Subject: How are your eyes today?

--RAA14128.773615765/CS.UTK.EDU--
"""


@pytest.mark.parametrize("returned", ["message/rfc822", "text/rfc822-headers"])
@pytest.mark.parametrize("reference", ["X-Message-Reference: ref-7\n", ""])
def test_a_delivery_report_says_which_message_failed_and_why(returned: str, reference: str) -> None:
    raw = REPORT.format(action="failed", status="5.1.1", returned=returned, identity="ref-7", reference=reference)

    found = letterbox.report_of(message_from_string(raw))

    assert found is not None
    assert (found.reference, found.action, found.status) == ("ref-7", "failed", "5.1.1")
    assert found.problem == "550 5.1.1 User unknown"


def test_what_is_no_report_or_names_nothing_of_ours_is_none() -> None:
    assert letterbox.report_of(mail("my eye is red")) is None
    without = REPORT.partition("--RAA14128.773615765/CS.UTK.EDU\ncontent-type: {returned}")[0]
    assert letterbox.report_of(message_from_string(without.format(action="failed", status="5.1.1"))) is None


def test_files_come_with_their_names_and_pictures_inside_the_text_too() -> None:
    both = mail(
        "--b\nContent-Type: text/plain\n\nsee\n"
        "--b\nContent-Type: image/png\nContent-Transfer-Encoding: base64\n\nAAAA\n"
        '--b\nContent-Type: application/pdf\nContent-Disposition: attachment; filename="a.pdf"\n\nx\n--b--',
        "multipart/mixed; boundary=b",
    )

    assert [name for name, _data in letterbox.files_of(both)] == ["", "a.pdf"]
    assert letterbox.words_of(both).own == "see"


@settings(max_examples=60, deadline=None)
@given(raw=st.binary(max_size=3000))
def test_whatever_comes_in_is_taken_apart_without_a_fault(raw: bytes) -> None:
    for message in (
        message_from_bytes(raw),
        message_from_bytes(b"Content-Type: multipart/report; boundary=x\n\n" + raw),
    ):
        letterbox.words_of(message)
        letterbox.is_automatic(message)
        letterbox.report_of(message)
        letterbox.files_of(message)


@settings(max_examples=60, deadline=None)
@given(text=st.text(max_size=400))
def test_no_word_is_lost_between_hers_and_what_stands_below(text: str) -> None:
    found = letterbox.split(text)

    kept = f"{found.own} {found.below}".split()
    assert sorted(kept) == sorted(text.replace("\r\n", "\n").replace("\r", "\n").split())
