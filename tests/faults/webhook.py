"""A carrier's calls through the real web server: the same one a hundred times at once, forged, too large, and while the
database is down."""

from __future__ import annotations

import hashlib
import hmac
import json
from collections import Counter
from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from contextlib import ExitStack
from pathlib import Path

from tests import servers, services
from tests.faults import at_work, ledger

TOO_LARGE = 65 * 1024
SECRET = "a-secret-of-the-two"  # of this fault alone
_MAKE = """
from aftercare.core.delivery import Event
from tests import hooks, letters, people
studio = people.make_studio()
line = hooks.make_line(studio, signature={"header": "X-Signature", "secret": "%s"})
for number in (1, 2):
    letters.make_message(people.make_client(studio, mobile=hooks.MIA))
    letters.end(letters.begin(line), Event.TAKEN, provider_ref=f"SM{number}")
print(line.pk)
"""


def happen(folder: Path, small: bool, postgres: bool = True) -> tuple[dict[str, int], list[str]]:
    data = folder / "data"
    data.mkdir()
    with ExitStack() as stack:
        url = stack.enter_context(servers.postgres()) if postgres else f"sqlite:///{data / 'studio.sqlite3'}"
        settings = services.environment(
            data, DATABASE_URL=url, PORT=str(servers.free_port()), WEB_PROCESSES="2" if postgres else "1"
        )
        services.manage(settings, "migrate", "--verbosity=0")
        line = int(services.manage(settings, "shell", "-v", "0", "-c", _MAKE % SECRET).split()[-1])
        hook = f"{stack.enter_context(at_work.web(settings, folder))}/hooks/{line}/"
        stack.enter_context(at_work.engine(settings, folder))
        doubled = _at_once(hook, _receipt("SM1"), 20 if small else 100)
        forged = at_work.post(hook, _receipt("SM1"), {"X-Signature": "0" * 64})[0]
        unsigned = at_work.post(hook, _receipt("SM1"))[0]
        large = b'{"id": "SM1", "state": "' + b"x" * TOO_LARGE + b'"}'
        too_large = at_work.post(hook, large, signed(large))[0]
        while_down, wait = (0, "")
        if postgres:
            servers.halt(url)
            while_down, wait = at_work.post(hook, _receipt("SM2"), signed(_receipt("SM2")))
            servers.restart(url)
        again = _until_taken(hook, _receipt("SM2"))
        at_work.wait_for(lambda: _states(url) == {"delivered": 2}, 30, f"the receipts are not read: {_states(url)}")
        [(receipts,)] = ledger.query(url, "SELECT count(*) FROM aftercare_receipt")
        [(waiting,)] = ledger.query(url, "SELECT count(*) FROM aftercare_storedcallback")
    figures = {f"doubled: {status}": times for status, times in doubled.items()}
    figures |= {"forged": forged, "unsigned": unsigned, "too large": too_large, "database down": while_down}
    figures |= {"calls until it was kept": again, "receipts": receipts, "left": waiting}
    expected = {"forged": 403, "unsigned": 403, "too large": 413, "database down": 503 if postgres else 0}
    faults = [f"{name}: {figures[name]}, not {right}" for name, right in expected.items() if figures[name] != right]
    if doubled != {200: 20 if small else 100}:
        faults.append(f"the same call at once: {dict(doubled)}")
    if (receipts, waiting) != (2, 0):
        faults.append(f"{receipts} receipts of 2, {waiting} calls unread")
    if postgres and not wait:
        faults.append("the provider is not told when to call again")
    return figures, faults


def signed(body: bytes) -> dict[str, str]:
    return {"X-Signature": hmac.new(SECRET.encode(), body, hashlib.sha256).hexdigest()}


def _receipt(reference: str) -> bytes:
    return json.dumps({"id": reference, "state": "DELIVRD"}).encode()


def _at_once(hook: str, body: bytes, times: int) -> Counter[int]:
    def call(_number: int) -> int:
        return at_work.post(hook, body, signed(body))[0]

    with ThreadPoolExecutor(times) as pool:
        return Counter(pool.map(call, range(times)))


def _until_taken(hook: str, body: bytes) -> int:
    """Call until it is taken, as a provider does; return how often it took."""
    for number in range(1, 10):
        if at_work.post(hook, body, signed(body))[0] == 200:
            return number
    return 0


def _states(url: str) -> Mapping[str, int]:
    return dict(ledger.query(url, "SELECT state, count(*) FROM aftercare_message GROUP BY state"))
