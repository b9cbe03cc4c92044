"""Against an independent mail server (aiosmtpd).

Outside facts: RFC 5321 4.2.1 (5yz permanent, 4yz passing), 4.5.2 (dots), RFC 3834 (Auto-Submitted), RFC 5322 3.6.4
(Message-ID).
"""

from __future__ import annotations

import time
from collections.abc import Iterator
from email import message_from_bytes, policy
from email.message import EmailMessage
from pathlib import Path
from socketserver import StreamRequestHandler, ThreadingTCPServer
from threading import Thread
from typing import Any, ClassVar

import pytest
from django.core import mail
from django.core.exceptions import ImproperlyConfigured
from django.core.mail import get_connection

from aftercare.core import calendar_file
from aftercare.core.delivery import Event
from aftercare.transports.base import Enclosure, Outcome, Outgoing, Transport
from aftercare.transports.email import Email, keys
from aftercare.transports.email.writing import write
from tests import servers
from tests.aftercare.transports.contract import (
    Addresses,
    FailureContract,
    TransportContract,
    by_reference,
    hand_over,
    outgoing,
)
from tests.servers import MailServer

SMTP = "django.core.mail.backends.smtp.EmailBackend"
MEMORY = "django.core.mail.backends.locmem.EmailBackend"


@pytest.fixture(scope="module")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[MailServer]:
    with servers.smtp(tmp_path_factory.mktemp("mail")) as running:
        yield running


@pytest.fixture
def smtp(server: MailServer) -> Iterator[Email]:
    transport = Email(backend=SMTP, host="127.0.0.1", port=server.port, timeout=10)
    yield transport
    transport.close()


class TestEmailBySMTP(TransportContract, FailureContract):
    @pytest.fixture
    def transport(self, smtp: Email) -> Transport:
        return smtp

    @pytest.fixture
    def addresses(self) -> Addresses:
        return Addresses(good="mia@example.org", refused="refuse-mia@example.org", busy="busy-mia@example.org")


def one(transport: Email, address: str) -> Outcome:
    [outcome] = hand_over(transport, outgoing(transport, [address]))
    return outcome


def test_our_reference_travels_with_it(smtp: Email, server: MailServer) -> None:
    batch = [
        Outgoing(reference="abc123", channel="email", address="mia@example.org", sender="s@example.org", text="Hi")
    ]

    [outcome] = hand_over(smtp, batch)

    assert server.accepted[-1] == "abc123"
    assert outcome.provider_ref == "<abc123@example.org>"


@pytest.mark.parametrize(
    ("address", "event"),
    [
        ("refuse-mia@example.org", Event.REFUSED),
        ("spam-mia@example.org", Event.REFUSED),
        ("busy-mia@example.org", Event.NOT_TAKEN),
        ("later-mia@example.org", Event.NOT_TAKEN),
        ("hangup-mia@example.org", Event.NOT_TAKEN),
        ("drop-mia@example.org", Event.LOST),
    ],
)
def test_each_way_to_fail_is_told_from_the_others_and_ends_there(
    smtp: Email, server: MailServer, address: str, event: Event
) -> None:
    before = len(server.accepted)

    outcomes = by_reference(hand_over(smtp, batch := outgoing(smtp, ["zoe@example.org", address, "mia@example.org"])))

    assert [outcomes[each.reference].event for each in batch] == [Event.TAKEN, event, Event.TAKEN]
    assert len(server.accepted) - before == (3 if event is Event.LOST else 2)


def test_a_refusal_names_the_address_and_the_cure(smtp: Email) -> None:
    outcome = one(smtp, "refuse-mia@example.org")

    assert "refuse-mia@example.org" in outcome.problem
    assert "550" in outcome.problem
    assert outcome.problem.endswith("Correct it on the client's card.")


@pytest.mark.parametrize(
    "address", ["not an address", "mia@example.org\nBcc: zoe@example.org", "", "@", "ü ü@example.org"]
)
def test_what_is_no_address_is_refused_and_never_sent(smtp: Email, server: MailServer, address: str) -> None:
    before = len(server.accepted)

    assert one(smtp, address).event is Event.REFUSED
    assert len(server.accepted) == before


def test_a_server_that_is_not_there_has_not_taken_it() -> None:
    transport = Email(backend=SMTP, host="127.0.0.1", port=servers.free_port(), timeout=2)

    outcome = one(transport, "mia@example.org")

    assert outcome.event is Event.NOT_TAKEN
    assert "could not be reached" in outcome.problem


def test_many_messages_share_one_connection(smtp: Email) -> None:
    hand_over(smtp, outgoing(smtp, ["mia@example.org"]))
    connection = getattr(smtp._all[0].backend, "connection")  # noqa: B009  Django's, without a type

    hand_over(smtp, outgoing(smtp, ["mia@example.org", "refuse-zoe@example.org", "mia@example.org"]))

    assert getattr(smtp._all[0].backend, "connection") is connection  # noqa: B009


def written(outgoing: Outgoing) -> EmailMessage:
    """Return the message as it would leave, read by Python's own parser."""
    mail.outbox = []
    [outcome] = Email(backend=MEMORY, from_address="fallback@example.org").send([outgoing])
    assert outcome.event is Event.TAKEN
    parsed = message_from_bytes(mail.outbox[0].message().as_bytes(), policy=policy.default)
    assert isinstance(parsed, EmailMessage)
    return parsed


def test_it_is_written_in_the_studios_name_and_asks_machines_not_to_answer() -> None:
    message = written(
        Outgoing(
            reference="abc",
            channel="email",
            address="mia@example.org",
            sender="studio@wrenfield.example",
            sender_name="Estudio Añil, Ada",
            subject="Your visit\r\nBcc: all@example.org",
            text="Mañana a las 14:30.\n.\nAda",
        )
    )

    assert message["From"].addresses[0].display_name == "Estudio Añil, Ada"
    assert message["From"].addresses[0].addr_spec == "studio@wrenfield.example"
    assert message["To"] == "mia@example.org"
    assert message["Subject"] == "Your visit Bcc: all@example.org"
    assert message["Bcc"] is None
    assert message["Message-ID"] == "<abc@wrenfield.example>"
    assert message["X-Message-Reference"] == "abc"
    assert message["Auto-Submitted"] == "auto-generated"
    assert message.get_content().strip() == "Mañana a las 14:30.\n.\nAda"


def test_a_line_without_an_address_writes_from_the_services_own_in_the_studios_name(
    settings: pytest.FixtureRequest,
) -> None:
    settings.DEFAULT_FROM_EMAIL = "The service <service@example.org>"  # type: ignore[attr-defined]  # pytest-django's
    outgoing = Outgoing(reference="abc", channel="email", address="mia@example.org", sender_name="Birch", text="Hi")

    assert written(outgoing)["From"] == "Birch <fallback@example.org>"
    assert Email(backend=MEMORY).from_address == "service@example.org"


class Reporting(StreamRequestHandler):
    """A mail server that sends reports on what it could not deliver (RFC 3461), and writes down what it is told."""

    told: ClassVar[list[str]] = []

    def handle(self) -> None:
        self.wfile.write(b"220 here\r\n")
        answers = {"EHLO": "250-here\r\n250-SIZE 1000000\r\n250 DSN", "DATA": "354 go on", "QUIT": "221 bye"}
        while line := self.rfile.readline().decode().strip():
            self.told.append(line)
            word = line.split()[0].upper()
            self.wfile.write(f"{answers.get(word, '250 yes')}\r\n".encode())
            if word == "DATA":
                while self.rfile.readline() != b".\r\n":
                    pass
                self.wfile.write(b"250 taken\r\n")


def test_a_report_is_asked_to_name_our_reference_and_to_leave_out_her_words() -> None:
    with ThreadingTCPServer(("127.0.0.1", 0), Reporting) as running:
        Thread(target=running.serve_forever, daemon=True).start()
        transport = Email(backend=SMTP, host="127.0.0.1", port=running.server_address[1], timeout=10)
        [message] = outgoing(transport, ["mia@example.org"])
        [outcome] = hand_over(transport, [message])
        transport.close()
        running.shutdown()

    [begun] = [line for line in Reporting.told if line.lower().startswith("mail from:")]
    assert begun.endswith(f" ENVID={message.reference} RET=HDRS")
    assert outcome.event is Event.TAKEN


PICTURE = b"\x89PNG\r\n\x1a\n" + bytes(range(256)) * 4
CALENDAR = b"BEGIN:VCALENDAR\r\nSUMMARY:Visit \xc3\xa9\r\nEND:VCALENDAR\r\n"


def letter(**changed: Any) -> Outgoing:
    given: dict[str, Any] = {
        "reference": "ref9",
        "channel": "email",
        "address": "mia@example.org",
        "sender": "s@example.org",
        "subject": "Your visit",
        "text": "Hola Mía,\n\n.\n- " + "x" * 1200,
        "html": "<p>Hola Mía</p>\n.\n<p>" + "x" * 1200 + "</p>",
        "enclosures": (
            Enclosure(name="logo.png", media_type="image/png", content=PICTURE, inline_id="logo"),
            Enclosure(name="visit.ics", media_type=calendar_file.MEDIA_TYPE, content=CALENDAR),
        ),
    }
    return Outgoing(**{**given, **changed})


def shape(part: EmailMessage) -> object:
    """Return a mail's parts as nested lists of their types."""
    if part.is_multipart():
        return [part.get_content_subtype(), *(shape(one) for one in part.iter_parts())]  # type: ignore[arg-type]
    return part.get_content_type()


def arrived(server: MailServer) -> EmailMessage:
    found = message_from_bytes(server.newest, policy=policy.default)
    assert isinstance(found, EmailMessage)
    return found


def test_a_letter_arrives_in_two_forms_with_its_logo_within_and_its_calendar_file(
    smtp: Email, server: MailServer
) -> None:
    """RFC 2046, 5.1.4: the plainest form first. RFC 2387: what belongs together. RFC 2392: cid names a Content-ID."""
    hand_over(smtp, [letter()])

    mail_ = arrived(server)
    assert shape(mail_) == [
        "mixed",
        ["alternative", "text/plain", ["related", "text/html", "image/png"]],
        "text/calendar",
    ]
    plain, html = mail_.get_body(("plain",)), mail_.get_body(("html",))
    assert plain is not None
    assert plain.get_content().splitlines() == letter().text.splitlines()
    assert html is not None
    assert html.get_content().splitlines() == letter().html.splitlines()
    [picture] = [part for part in mail_.walk() if part.get_content_type() == "image/png"]
    assert picture["Content-ID"] == "<logo>"
    assert picture.get_content_disposition() == "inline"
    assert picture.get_payload(decode=True) == PICTURE
    [calendar] = mail_.iter_attachments()
    assert calendar.get_filename() == "visit.ics"
    assert (calendar.get_param("method"), calendar.get_content_charset()) == ("PUBLISH", "utf-8")
    assert calendar.get_payload(decode=True) == CALENDAR


def test_no_line_of_a_letter_is_longer_than_smtp_carries(smtp: Email, server: MailServer) -> None:
    """RFC 5321, 4.5.3.1.6: 1,000 octets with the line's end."""
    hand_over(smtp, [letter()])

    assert max(len(line) for line in server.newest.split(b"\r\n")) <= 998


@pytest.mark.parametrize(
    ("changed", "expected"),
    [
        ({"enclosures": ()}, ["alternative", "text/plain", "text/html"]),
        ({"enclosures": letter().enclosures[:1]}, ["alternative", "text/plain", ["related", "text/html", "image/png"]]),
        ({"enclosures": (), "html": ""}, "text/plain"),
    ],
)
def test_a_letter_has_no_parts_that_it_does_not_need(changed: dict[str, Any], expected: object) -> None:
    assert shape(written(letter(**changed))) == expected


def test_a_letter_says_how_to_end_it_and_that_a_machine_wrote_it() -> None:
    """RFC 8058, 3.1, and RFC 3834, 5, beside the parts."""
    headers = {
        "List-Unsubscribe": "<https://lashes.example/u/x>",
        "List-Unsubscribe-Post": "List-Unsubscribe=One-Click",
    }

    found = written(letter(headers=headers))

    assert found["List-Unsubscribe"] == "<https://lashes.example/u/x>"
    assert found["List-Unsubscribe-Post"] == "List-Unsubscribe=One-Click"
    assert found["Auto-Submitted"] == "auto-generated"


@pytest.mark.parametrize("length", [20, 300, 900])
def test_the_way_out_stays_on_one_line(smtp: Email, server: MailServer, length: int) -> None:
    """Relays fold and unfold as they like, and a signature (RFC 6376) may not outlast it; RFC 8058 wants it signed."""
    way_out = f"<https://aftercare.example.com/unsubscribe/{'x' * length}>"

    hand_over(smtp, [letter(headers={"List-Unsubscribe": way_out})])

    assert f"List-Unsubscribe: {way_out}".encode() in server.newest.split(b"\r\n")


def test_a_slow_mail_server_sets_the_pace_of_a_connection_and_not_of_all(tmp_path: Path) -> None:
    with servers.smtp(tmp_path, pause=0.1) as slow:
        transport = Email(backend=SMTP, host="127.0.0.1", port=slow.port, timeout=10, connections="8")
        batch = outgoing(transport, ["mia@example.org"] * 24)
        began = time.monotonic()
        outcomes = hand_over(transport, batch)
        took = time.monotonic() - began
        transport.close()

    assert {outcome.event for outcome in outcomes} == {Event.TAKEN}
    assert sorted(slow.accepted) == sorted(one.reference for one in batch)
    assert took < 24 * 0.1 / 2  # one by one: 2.4 s


@pytest.mark.parametrize(
    ("address", "bad"),
    [("refuse-mia@example.org", True), ("spam-mia@example.org", False), ("busy-mia@example.org", False)],
)
def test_an_address_is_called_bad_only_where_nobody_has_it(smtp: Email, address: str, bad: bool) -> None:
    assert one(smtp, address).bad_address is bad


@pytest.mark.parametrize("given", ["ten", "0", "-1", "", "1.5"])
def test_an_option_that_is_no_number_is_said_to_be_none(given: str) -> None:
    with pytest.raises(ImproperlyConfigured, match=r"^The option connections of e-mail is “.*”: write a whole number"):
        Email(backend=SMTP, connections=given)


@pytest.mark.parametrize(("host", "lifetime"), [("smtp.resend.com", 86_400), ("mail.example.org", 0)])
def test_the_key_goes_in_a_header_of_the_mail_where_the_server_knows_it(host: str, lifetime: int) -> None:
    """Resend's documentation names the header for SMTP."""
    backend = get_connection(SMTP, host=host)
    message = letter(key="k1")
    email = write(message, "", keys.wire_reference(backend, message), backend)

    keys.put(backend, email, message.key)

    assert keys.lifetime(backend) == lifetime
    assert email.message()["Resend-Idempotency-Key"] == ("k1" if lifetime else None)
    assert email.message()["X-Message-Reference"] == ("k1" if lifetime else "ref9")


def test_each_server_has_an_account_of_its_own() -> None:
    one, two = {"host": "mail.birch.example"}, {"host": "mail.elm.example"}

    assert Email.account_of({}) == Email.account_of({"connections": "3", "patience": "9"}) == "email"
    assert len({Email.account_of(options) for options in ({}, one, two, {**one, "backend": SMTP})}) == 4
    assert Email(backend=SMTP, connections=3, **one).account == Email.account_of({"backend": SMTP, **one})
    assert len(Email.account_of(one)) <= 40


def test_mail_that_is_only_shown_goes_to_standard_error_alone(capsys: pytest.CaptureFixture[str]) -> None:
    transport = Email(backend="django.core.mail.backends.console.EmailBackend")

    assert one(transport, "mia@example.org").event is Event.TAKEN

    out, err = capsys.readouterr()
    assert out == ""
    assert "To: mia@example.org" in err
