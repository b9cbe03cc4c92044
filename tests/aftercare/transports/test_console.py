from __future__ import annotations

import pytest

from aftercare.transports.base import Callback, Forged, Outgoing, Transport
from aftercare.transports.console import Console
from tests.aftercare.transports.contract import Addresses, TransportContract


class TestConsole(TransportContract):
    @pytest.fixture
    def transport(self) -> Transport:
        return Console()

    @pytest.fixture
    def addresses(self) -> Addresses:
        return Addresses(good="+15550100100")


def test_it_shows_the_message_on_standard_error_alone(capsys: pytest.CaptureFixture[str]) -> None:
    message = Outgoing(
        reference="r",
        channel="email",
        address="mia@example.org",
        sender_name="Wrenfield",
        subject="Tuesday",
        text="a\nb",
    )

    list(Console().send([message]))

    out, err = capsys.readouterr()
    assert out == ""
    assert err == "email to mia@example.org from Wrenfield\nTuesday\n  | a\n  | b\n"


def test_half_a_surrogate_pair_does_not_stop_it(capsys: pytest.CaptureFixture[str]) -> None:
    list(Console().send([Outgoing(reference="r", channel="sms", address="+15550100100", text="\ud83d")]))

    assert "?" in capsys.readouterr().err


def test_nobody_calls_it_back() -> None:
    with pytest.raises(Forged):
        Console().verify(Callback(url="", headers={}, body=b""))
