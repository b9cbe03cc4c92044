"""Kannel, a real SMS gateway, on private ports, with its own pretend carrier: it takes texts by HTTP and calls back."""

from __future__ import annotations

import shutil
import subprocess
import time
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, ExitStack, contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tests.servers import free_port, listens

FAKE_CARRIER = Path("/usr/lib/kannel/test/fakesmsc")
USER, PASSWORD = "studio", "open-sesame"  # of the test alone
_CONF = """\
group = core
admin-port = {admin}
admin-interface = 127.0.0.1
admin-password = {password}
smsbox-port = {boxes}
smsbox-interface = 127.0.0.1
log-level = 1
{store}
{carrier}
group = smsbox
bearerbox-host = 127.0.0.1
sendsms-port = {sending}
sendsms-interface = 127.0.0.1
log-level = 1

group = sendsms-user
username = {user}
password = {password}

group = sms-service
keyword = default
get-url = "{comes_in}from=%p&to=%P&text=%a&id=%I"
catch-all = true
max-messages = 0
"""

_FAKE = """\
group = smsc
smsc = fake
port = {port}
connect-allow-ip = 127.0.0.1
"""
# Kannel's user guide, 1.4.5: "SMS push reply codes" and "Delivery reports".
OPTIONS: dict[str, Any] = {
    "method": "GET",
    "fields": {
        **{"username": USER, "password": PASSWORD, "to": "{to}", "from": "{from}", "text": "{text}"},
        **{"charset": "UTF-8", "dlr-mask": "31", "dlr-url": "{callback}&state=%d&id=%I"},
    },
    "taken": {"status": [202], "match": "^(0: Accepted|3: Queued)"},
    "receipts": {"word": "state", "words": {"1": "delivered", "8": "", "2": "failed", "4": "", "16": "failed"}},
}


class Configured:
    """A gateway with the groups of its carrier and its store, which runs as often as it is asked to."""

    def __init__(self, folder: Path, comes_in: str, carrier: str, store: str = "") -> None:
        self.folder, self.log, self.conf = folder, folder / "bearerbox.log", folder / "kannel.conf"
        self.ports = {name: free_port() for name in ("admin", "boxes", "sending")}
        self.url = f"http://127.0.0.1:{self.ports['sending']}/cgi-bin/sendsms"
        told = {"user": USER, "password": PASSWORD, "comes_in": comes_in, "carrier": carrier, "store": store}
        self.conf.write_text(_CONF.format(**told, **self.ports))

    def boxes(self) -> Iterator[AbstractContextManager[subprocess.Popen[bytes]]]:
        """Give its two processes, each to be entered before the next is asked for; the second is up once it ends."""
        yield _running(["bearerbox", str(self.conf)], self.log)
        wait_for(lambda: listens(self.ports["boxes"]))
        yield _running(["smsbox", str(self.conf)], self.folder / "smsbox.log")
        wait_for(lambda: listens(self.ports["sending"]))


@dataclass(frozen=True)
class Kannel:
    """A running gateway: where it takes texts, and how one comes in from a telephone."""

    url: str
    telephones: subprocess.Popen[bytes]  # the pretend carrier, which takes their texts on its standard input
    folder: Path

    @property
    def carried(self) -> str:
        """What the pretend carrier was given, as it prints it."""
        return (self.folder / "carrier.log").read_text(errors="replace")

    def text_comes_in(self, sender: str, receiver: str, text: str) -> None:
        """Have a telephone send one text to a number of the gateway's."""
        assert self.telephones.stdin is not None
        self.telephones.stdin.write(f"{sender} {receiver} text {text}\n".encode())
        self.telephones.stdin.flush()


def wait_for(what: Callable[[], bool], seconds: float = 20) -> None:
    """Wait until something has come to pass."""
    end = time.monotonic() + seconds
    while not what():
        assert time.monotonic() < end, "it did not come to pass"
        time.sleep(0.05)


def is_there() -> bool:
    return bool(shutil.which("bearerbox") and shutil.which("smsbox") and FAKE_CARRIER.exists())


@contextmanager
def kannel(folder: Path, comes_in: str) -> Iterator[Kannel]:
    """Run the gateway; it calls ``comes_in``, an address up to its query, with each text that comes in."""
    port = free_port()
    gateway = Configured(folder, comes_in, _FAKE.format(port=port))
    carrier = [str(FAKE_CARRIER), "-H", "127.0.0.1", "-r", str(port)]
    with ExitStack() as stack:
        for box in gateway.boxes():
            stack.enter_context(box)
        telephones = stack.enter_context(_running(carrier, folder / "carrier.log"))
        wait_for(
            lambda: "client connected" in gateway.log.read_text(errors="replace")
        )  # else a text waits for half a minute
        yield Kannel(gateway.url, telephones, folder)


@contextmanager
def _running(command: list[str], log: Path) -> Iterator[subprocess.Popen[bytes]]:
    with log.open("ab") as output:
        process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=output, stderr=output, cwd=log.parent)
    try:
        yield process
    finally:
        process.kill()
        process.communicate()
