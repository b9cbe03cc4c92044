"""A mail server that refuses in the middle of a batch, is busy, takes and hangs up, and is gone for some seconds."""

from __future__ import annotations

import time
from contextlib import ExitStack
from pathlib import Path

from tests import servers, services
from tests.faults import at_work, ledger

WINDOW = 8  # messages in flight at once: so many can be cut off where the server is killed
KINDS = ("refuse", "spam", "once-busy", "once-later", "once-drop", "once-hangup")
FOR_GOOD = ("refuse", "spam")


def happen(folder: Path, small: bool) -> tuple[dict[str, int], list[str]]:
    number = 48 if small else 1200
    addresses = [f"{_kind(place)}{place}@mail.example" for place in range(number)]
    data = folder / "data"
    url = f"sqlite:///{data / 'studio.sqlite3'}"
    port = servers.free_port()
    with ExitStack() as stack:
        settings = services.environment(data, EMAIL_URL=f"smtp://127.0.0.1:{port}")
        data.mkdir()
        at_work.make_live_studio(settings, folder, addresses)
        first = stack.enter_context(ExitStack())
        mail = first.enter_context(servers.smtp(folder, pause=0.02, port=port))
        stack.enter_context(at_work.engine(settings, folder))
        at_work.wait_for(lambda: len(mail.accepted) > number // 3, 90, "it does not send")
        first.close()  # killed with what it had in hand
        gone_at = len(mail.accepted)
        time.sleep(1 if small else 8)
        stack.enter_context(servers.smtp(folder, pause=0.005, port=port))
        end_of_it(url, small)
    found = ledger.entries(url)
    refused = sum(address.startswith(FOR_GOOD) for address in addresses)
    faults = ledger.judge(found, mail.accepted, mail.unanswered, refused, cut_off=WINDOW)
    figures = {"gone after": gone_at, "hung up on": len(mail.unanswered), "refused": refused}
    return ledger.counts(found, mail.accepted) | figures, faults


def _kind(place: int) -> str:
    """Every fourth message meets a fault, each kind in turn, on aftercare and on instructions alike."""
    if place % 4 > 1:
        return "mia"
    return f"{KINDS[place // 4 % len(KINDS)]}-" if place % 8 < 2 else "mia"


def end_of_it(url: str, small: bool, seconds: float = 300) -> None:
    """Wait until every message is at rest; small, the waits between two tries are cut short."""

    def is_over() -> bool:
        if small:
            ledger.hurry(url)
        return not ledger.at_work(url)

    at_work.wait_for(is_over, 60 if small else seconds, "some messages never came to rest")
