"""STARTTLS (RFC 3207) with a mail server that takes nothing in the clear, by a certificate made for the test."""

from __future__ import annotations

import shutil
import ssl
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
from aiosmtpd.controller import Controller
from aiosmtpd.handlers import Sink
from aiosmtpd.smtp import SMTP

from aftercare.core.delivery import Event
from aftercare.transports.email import Email
from tests import servers
from tests.aftercare.transports.contract import hand_over, outgoing
from tests.aftercare.transports.test_email import SMTP as BACKEND

OPENSSL = shutil.which("openssl")
pytestmark = [pytest.mark.servers, pytest.mark.skipif(OPENSSL is None, reason="needs openssl")]


@pytest.fixture(scope="module")
def certificate(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A certificate for localhost and its key, in one file."""
    folder = tmp_path_factory.mktemp("tls")
    made, key = folder / "cert.pem", folder / "key.pem"
    new = [str(OPENSSL), "req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256", "-nodes", "-days", "2"]
    names = ["-subj", "/CN=localhost", "-addext", "subjectAltName=DNS:localhost"]
    subprocess.run([*new, *names, "-out", str(made), "-keyout", str(key)], check=True, capture_output=True, timeout=20)
    made.write_text(made.read_text() + key.read_text())
    return made


class Guarded(Controller):
    """A mail server that takes nothing before STARTTLS."""

    def __init__(self, certificate: Path) -> None:
        self.context = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
        self.context.load_cert_chain(certificate)
        super().__init__(Sink(), hostname="localhost", port=servers.free_port())

    def factory(self) -> SMTP:
        return SMTP(self.handler, hostname="localhost", tls_context=self.context, require_starttls=True)


@pytest.fixture
def guarded(certificate: Path) -> Iterator[Controller]:
    controller = Guarded(certificate)
    controller.start()
    yield controller
    controller.stop()


def sent(port: int, *, tls: bool) -> tuple[Event, str]:
    transport = Email(backend=BACKEND, host="localhost", port=port, use_tls=tls, timeout=5)
    [outcome] = hand_over(transport, outgoing(transport, ["mia@example.org"]))
    transport.close()
    return outcome.event, outcome.problem


def test_it_goes_by_tls_where_the_servers_certificate_holds(
    guarded: Controller, certificate: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SSL_CERT_FILE", str(certificate))

    assert sent(guarded.port, tls=True) == (Event.TAKEN, "")


def test_nothing_goes_to_a_server_whose_certificate_does_not_hold(guarded: Controller) -> None:
    event, problem = sent(guarded.port, tls=True)

    assert event is Event.NOT_TAKEN
    assert "certificate" in problem.lower()


def test_a_server_that_wants_tls_first_has_taken_nothing(guarded: Controller) -> None:
    event, problem = sent(guarded.port, tls=False)

    assert event is Event.NOT_TAKEN
    assert "STARTTLS" in problem
