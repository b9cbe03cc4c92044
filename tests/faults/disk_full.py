"""The disk is full under SQLite while messages leave: what cannot be written is an error that says so.

The service's data lie on a small file system of their own (tmpfs), which needs root. A file beside them takes what room
is left, again and again, as the log gives some back whenever it is emptied. Once it is gone, everything goes on.
"""

from __future__ import annotations

import os
import subprocess
import threading
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager, suppress
from pathlib import Path

from tests import servers, services
from tests.faults import at_work, ledger
from tests.faults.smtp import WINDOW, end_of_it

MEGABYTES = 96  # the log of ten seconds at full speed is some 20 MB
_ADD_USER = """
from studio.models import Staff, Studio, User
user = User.objects.create_user("owner@birch.example", password="a-long-password")
Staff.objects.create(studio=Studio.objects.get(), name="Olive", user=user, is_owner=True)
"""


def why_not() -> str:
    """Return why it cannot be run here, or ''."""
    return "" if os.geteuid() == 0 else "only root may mount a small file system"


def happen(folder: Path, small: bool) -> tuple[dict[str, int], list[str]]:
    number = 120 if small else 1500
    data = folder / "data"
    data.mkdir()
    url = f"sqlite:///{data / 'studio.sqlite3'}"
    with ExitStack() as stack:
        stack.enter_context(small_disk(data))
        mail = stack.enter_context(servers.smtp(folder, pause=0.05 if small else 0.02))
        settings = services.environment(data, EMAIL_URL=mail.url, PORT=str(servers.free_port()))
        at_work.make_live_studio(settings, folder, [f"mia{place}@mail.example" for place in range(number)])
        options = {"url": "http://127.0.0.1:9/", "fields": {"to": "{to}"}, "callback_secret": "open-sesame-open"}
        receipts = {"word": "state", "words": {"DELIVRD": "delivered"}, "provider_ref": "id"}
        line = at_work.set_line(
            settings,
            "sms",
            transport=at_work.HTTP_SMS,
            options={**options, "receipts": receipts},
            address="+12125550199",
        )
        services.manage(settings, "shell", "-v", "0", "-c", _ADD_USER)
        site = stack.enter_context(at_work.web(settings, folder))
        hook = f"{site}/hooks/{line}/open-sesame-open"
        stack.enter_context(at_work.engine(settings, folder))
        at_work.wait_for(lambda: len(mail.accepted) > number // 4, 90, "it does not send")
        with no_room(data):
            time.sleep(1)
            at_first = len(mail.accepted)
            page = at_work.sign_in(site, "owner@birch.example", "a-long-password")
            status, wait = at_work.post(hook, b'{"id": "SM1", "state": "DELIVRD"}')
            health = at_work.get(f"{site}/healthz")
            time.sleep(3 if small else 25)
            meanwhile = len(mail.accepted) - at_first
        page_after = at_work.sign_in(site, "owner@birch.example", "a-long-password")
        after = at_work.post(hook, b'{"id": "SM1", "state": "DELIVRD"}')[0]
        [(kept,)] = ledger.query(url, "SELECT count(*) FROM aftercare_storedcallback")
        if small:
            ledger.end_claims(url)
        end_of_it(url, small)
        found = ledger.entries(url)
        [(integrity,)] = ledger.query(url, "PRAGMA integrity_check")
        said = (folder / "engine.log").read_text()
    # What was in flight when the room ended may have been given up, as nobody could write what became of it; and the
    # last of the room may hold one or two windows' journal, and not their outcomes.
    unsure = {reference for entry in found for reference, outcome in entry.tries if outcome == "unsure"}
    faults = ledger.judge(found, mail.accepted, (), cut_off=3 * WINDOW)
    figures = {"page while full": page, "call while full": status, "page after": page_after, "call after": after}
    expected = {"page while full": 500, "call while full": 503, "page after": 302, "call after": 200}
    faults += [f"{name}: {figures[name]}, not {right}" for name, right in expected.items() if figures[name] != right]
    if not wait:
        faults.append("the provider is not told when to call again")
    if meanwhile > 3 * WINDOW:
        faults.append(f"{meanwhile} left while nothing could be written")
    if "full" not in said:
        faults.append("the engine does not say that the disk is full")
    if integrity != "ok":
        faults.append(f"the database is damaged: {integrity}")
    more = {"healthz while full": health, "left while full": meanwhile, "calls kept": kept, "in flight": len(unsure)}
    return ledger.counts(found, mail.accepted) | figures | more, faults


@contextmanager
def small_disk(place: Path) -> Iterator[None]:
    """Mount a small file system at a folder."""
    subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={MEGABYTES}m", "tmpfs", str(place)], check=True)
    try:
        yield
    finally:
        subprocess.run(["umount", "--lazy", str(place)], check=True)


@contextmanager
def no_room(place: Path) -> Iterator[None]:
    """Take all the room that there is at a folder, and what is freed meanwhile."""
    ballast = place / "ballast"
    over = threading.Event()

    def fill() -> None:
        with ballast.open("ab", buffering=0) as stream:
            while not over.is_set():
                for size in (1 << 20, 1 << 12):  # down to the last page
                    with suppress(OSError):
                        while stream.write(b"\0" * size) == size:
                            pass
                over.wait(0.01)

    filling = threading.Thread(target=fill, daemon=True)
    filling.start()
    try:
        yield
    finally:
        over.set()
        filling.join()
        ballast.unlink()
