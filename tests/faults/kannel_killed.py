"""Kannel is killed while 200 texts wait in it for a carrier that is down: each reaches it once after the restart.

The carrier is the SMS centre of tests/smsc, to which Kannel is bound by SMPP: its count is the judge.
"""

from __future__ import annotations

import signal
from collections import Counter
from collections.abc import Mapping
from contextlib import ExitStack
from pathlib import Path

from tests import kannel, servers, services, smsc
from tests.faults import at_work, ledger

SECRET = "a-secret-of-the-two"  # of this fault alone
# Kannel's user guide, 1.4.5, "SMSC centers, SMPP": a transceiver at an address, tried again each second.
CARRIER = """\
group = smsc
smsc = smpp
host = 127.0.0.1
port = {carrier}
transceiver-mode = true
smsc-username = studio
smsc-password = s3cret
system-type = ""
reconnect-delay = 1
"""
STORE = "store-type = spool\nstore-location = {store}\n"


def why_not() -> str:
    """Return why it cannot be run here, or ''."""
    return "" if kannel.is_there() else "Kannel is not installed"


def happen(folder: Path, small: bool) -> tuple[dict[str, int], list[str]]:
    clients = 10 if small else 100  # with each text goes an introduction ahead
    data, store = folder / "data", folder / "spool"
    data.mkdir()
    store.mkdir()
    url = f"sqlite:///{data / 'studio.sqlite3'}"
    numbers = [f"+1212555{place:04}" for place in range(1000, 1000 + clients)]
    carrier = servers.free_port()
    with ExitStack() as stack:
        settings = services.environment(data, PORT=str(servers.free_port()))
        at_work.make_live_studio(settings, folder, numbers)
        line = at_work.set_line(settings, "sms", address=at_work.NUMBER, transport=at_work.HTTP_SMS)
        site = stack.enter_context(at_work.web(settings, folder))
        conf = kannel.Configured(
            folder,
            f"{site}/hooks/{line}/{SECRET}?",
            CARRIER.format(carrier=carrier),
            STORE.format(store=store),
        )
        killed = stack.enter_context(ExitStack())
        boxes = [killed.enter_context(box) for box in conf.boxes()]
        options = {**kannel.OPTIONS, "url": conf.url, "callback_secret": SECRET}
        at_work.set_line(settings, "sms", options=options)
        stack.enter_context(at_work.engine(settings, folder))
        at_work.wait_for(lambda: _states(url)["handed_over"] == 2 * clients, 90, f"not all went: {_states(url)}")
        for box in boxes:
            box.send_signal(signal.SIGKILL)
        killed.close()
        waiting = sum(file.is_file() for file in store.rglob("*"))
        centre = stack.enter_context(smsc.smsc(port=carrier))
        for again in conf.boxes():
            stack.enter_context(again)
        at_work.wait_for(lambda: centre.counts.units >= 2 * clients, 90, "the carrier did not get them all")
        at_work.wait_for(lambda: _states(url)["delivered"] == 2 * clients, 90, f"no receipts: {_states(url)}")
        counted = centre.counts
        found = ledger.entries(url)
    figures = {
        "queued": waiting,
        "carrier took": counted.units,
        "numbers": len(counted.by_destination),
        "receipts": counted.receipts,
        "delivered": sum(entry.state == "delivered" for entry in found),
        "tries": sum(len(entry.tries) for entry in found),
    }
    return figures, judge(figures, counted.by_destination, clients)


def judge(figures: dict[str, int], by_destination: Mapping[str, int], clients: int) -> list[str]:
    """Return what is not 200 of 200 once: two texts to each number, and a receipt for each."""
    every = 2 * clients
    faults = [
        f"{name}: {figures[name]}, not {every}"
        for name in ("queued", "carrier took", "receipts", "delivered", "tries")
        if figures[name] != every
    ]
    if odd := {number: times for number, times in by_destination.items() if times != 2}:
        faults.append(f"{len(odd)} numbers were not sent two texts each")
    return faults


def _states(url: str) -> Counter[str]:
    return Counter(
        dict(ledger.query(url, f"SELECT state, count(*) FROM aftercare_message WHERE {ledger.DUE_NOW} GROUP BY state"))
    )
