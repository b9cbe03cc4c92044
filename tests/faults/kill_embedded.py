#!/usr/bin/env python3
"""Kills the embedded service again and again while it sends, then counts: nothing lost, nothing twice but by policy.

    python tests/faults/kill_embedded.py --kills 20 --messages 2000

It makes a service in a folder of its own, imports a book whose messages are all due now (half aftercare, half
instructions before a visit), goes live, starts ``deploy/start`` against an independent mail server in a process of its
own, and kills -9 at random moments: everything at once, the supervisor, the engine, the web server or one of its
workers. At the end every message must be at rest. The mail server's own count, by our reference, is the judge.
"""

from __future__ import annotations

import argparse
import hashlib
import os
import random
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Callable, Mapping
from contextlib import closing, suppress
from dataclasses import dataclass, field
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests import servers, services  # noqa: E402  found by the path above
from tests.servers import MailServer  # noqa: E402

DUE_NOW = "occasion IN ('care', 'prepare')"  # the checks that follow are days ahead
AT_WORK = "(state IN ('planned', 'claimed', 'handing_over') OR lease_until IS NOT NULL)"
TARGETS = ("everything", "the supervisor", "the engine", "the web server", "a web worker")
SENT_AGAIN = "care"  # the occasion that is sent again after a crash; prepare is not
REST_SECONDS = 420  # longer than the lease of a message that was handing over, more than once


@dataclass
class Service:
    """deploy/start in a folder of its own, with what is known of its processes from /proc."""

    settings: Mapping[str, str]
    folder: Path
    process: subprocess.Popen[bytes] | None = None
    starts: int = 0

    def start(self) -> None:
        with (self.folder / "service.log").open("ab") as log:
            self.process = subprocess.Popen(
                [sys.executable, str(ROOT / "deploy" / "start")],
                env=self.settings,
                stdout=log,
                stderr=log,
                start_new_session=True,
            )
        self.starts += 1

    @property
    def is_up(self) -> bool:
        return self.process is not None and self.process.poll() is None

    def processes(self) -> dict[int, str]:
        """Return its processes and what each of them is."""
        parents, commands = {}, {}
        for entry in Path("/proc").iterdir():
            if entry.name.isdigit():
                with suppress(OSError):
                    commands[int(entry.name)] = (entry / "cmdline").read_bytes().replace(b"\0", b" ").decode()
                    parents[int(entry.name)] = int((entry / "stat").read_text().rpartition(")")[2].split()[1])
        top = self.process.pid if self.process else -1
        return {pid: _role(pid, top, parents, commands[pid]) for pid in parents if _descends(pid, top, parents)}

    def kill(self, target: str) -> bool:
        """Kill one kind of process, or everything at once; return whether there was one."""
        roles = self.processes()
        chosen = [pid for pid, role in roles.items() if target in ("everything", role)]
        for pid in chosen:
            with suppress(ProcessLookupError):
                os.kill(pid, signal.SIGKILL)
        if target in ("everything", "the supervisor") and self.process:
            self.process.wait()
            self._wait_until_gone(list(roles))
        return bool(chosen)

    def kill_soon(self, target: str) -> bool:
        """Kill it as soon as it is there: one that was killed just before is on its way."""
        with suppress(TimeoutError):
            wait_for(lambda: self.kill(target), 15, target)
            return True
        return False

    def stop(self) -> None:
        """End it as Ctrl-C does, and see that nothing is left running."""
        if self.process:
            pids = list(self.processes())
            self.process.send_signal(signal.SIGINT)
            with suppress(subprocess.TimeoutExpired):
                self.process.wait(30)
            self._wait_until_gone(pids)

    def _wait_until_gone(self, pids: list[int]) -> None:
        wait_for(lambda: not any(_lives(pid) for pid in pids), 20, "something was left running")


def _role(pid: int, top: int, parents: Mapping[int, int], command: str) -> str:
    if pid == top:
        return "the supervisor"
    if "run_engine" in command:
        return "the engine"
    if "gunicorn" in command:
        return "the web server" if parents[pid] == top else "a web worker"
    return "a step on the way"


def _descends(pid: int, top: int, parents: Mapping[int, int]) -> bool:
    while pid > 1 and pid != top:
        pid = parents.get(pid, 0)
    return pid == top


def _lives(pid: int) -> bool:
    with suppress(OSError):
        return Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[0] != "Z"
    return False


def wait_for(what: Callable[[], bool], seconds: float, complaint: str) -> None:
    end = time.monotonic() + seconds
    while not what():
        if time.monotonic() > end:
            raise TimeoutError(complaint)
        time.sleep(0.05)


@dataclass
class Result:
    """What became of every message, and how often the mail server accepted it."""

    rows: list[tuple[str, str, bool, int, int]]  # occasion, state, lease, tries lost, accepted
    foreign: int
    messages: int
    faults: list[str] = field(default_factory=list)

    def judge(self) -> list[str]:
        """Return everything that must not be."""
        faults = list(self.faults)
        if len(self.rows) != self.messages:
            faults.append(f"{len(self.rows)} messages instead of {self.messages}")
        if self.foreign:
            faults.append(f"the mail server accepted {self.foreign} references that nobody has written down")
        for occasion, state, leased, lost, accepted in self.rows:
            if state not in ("handed_over", "unsure") or leased:
                faults.append(f"{occasion}: at no rest: {state}")
            if state == "handed_over" and not accepted:
                faults.append(f"{occasion}: lost")
            if state == "unsure" and occasion == SENT_AGAIN:
                faults.append(f"{occasion}: unsure, and not sent again")
            if accepted > 1 and not (occasion == SENT_AGAIN and accepted <= lost + 1):
                faults.append(f"{occasion}: sent {accepted} times, {lost} of them unheard")
            if state == "unsure" and not lost:
                faults.append(f"{occasion}: unsure without a try that nobody heard the end of")
        return faults

    def show(self) -> None:
        print(f"{'occasion':10} {'state':13} {'accepted':>8}  messages")
        counts = Counter((occasion, state, accepted) for occasion, state, _, _, accepted in self.rows)
        for (occasion, state, accepted), number in sorted(counts.items()):
            print(f"{occasion:10} {state:13} {accepted:>8}  {number}")
        lost = Counter(occasion for occasion, _, _, tries, _ in self.rows if tries)
        print(f"cut off between “sent” and “answer heard”: {dict(lost)}")


def count(database: Path, mail: MailServer, messages: int) -> Result:
    accepted = Counter(mail.accepted)
    with closing(sqlite3.connect(database)) as connection:
        tries = connection.execute("SELECT message_id, reference, outcome FROM aftercare_attempt").fetchall()
        columns = f"SELECT id, occasion, state, lease_until FROM aftercare_message WHERE {DUE_NOW}"
        found = connection.execute(columns).fetchall()
    taken: Counter[int] = Counter()
    lost: Counter[int] = Counter()
    for message, reference, outcome in tries:
        taken[message] += accepted.pop(reference, 0)
        lost[message] += outcome == "unsure"
    rows = [(occasion, state, lease is not None, lost[pk], taken[pk]) for pk, occasion, state, lease in found]
    return Result(rows, sum(accepted.values()), messages)


def at_work(database: Path) -> int:
    with closing(sqlite3.connect(database, timeout=20)) as connection:
        busy = f"SELECT count(*) FROM aftercare_message WHERE {DUE_NOW} AND {AT_WORK}"
        [number] = connection.execute(busy).fetchone()
    return int(number)


HURRY = """
from aftercare.lines import lines_of
from studio.models import Studio
line = lines_of(Studio.objects.get())["email"]
line.options = {"patience": %d}
line.save()
"""


def run(folder: Path, kills: int, messages: int, seed: int, pause: float, patience: int = 120) -> Result:
    """Do it all in ``folder``; return what became of every message.

    ``patience`` is in seconds: how long the service waits before it takes for granted that a message was cut off.
    """
    luck = random.Random(seed)
    data = folder / "data"
    data.mkdir()
    # The demo studio is made at a service's first start; this one has a studio of its own.
    (data / f"demo-made-{hashlib.sha256(b'').hexdigest()[:12]}").touch()
    database = data / "studio.sqlite3"
    with servers.smtp(folder, pause) as mail:
        settings = services.environment(data, EMAIL_URL=mail.url, PORT=str(servers.free_port()))
        services.make_live_studio(settings, folder, messages)
        services.manage(settings, "shell", "-c", HURRY % patience)
        service = Service(settings, folder)
        try:
            faults = _kill_again_and_again(service, mail, kills, messages, luck)
            print("waiting until everything is at rest …", file=sys.stderr, flush=True)
            wait_for(lambda: not at_work(database), REST_SECONDS, "some messages never came to rest")
            service.stop()
        finally:
            service.kill("everything")
        result = count(database, mail, messages)
        result.faults = [*faults, *_integrity(database)]
        return result


def _kill_again_and_again(
    service: Service, mail: MailServer, kills: int, messages: int, luck: random.Random
) -> list[str]:
    """Kill at moments spread over the whole run, each at random within its part of it."""
    faults: list[str] = []
    targets = [TARGETS[number % len(TARGETS)] for number in range(kills)]
    luck.shuffle(targets)
    for number, target in enumerate(targets):
        if not service.is_up:
            service.start()
        moment = int((number + luck.random() * 0.9) * messages / kills)
        _wait_for_mails(mail, moment)
        time.sleep(luck.uniform(0, 0.05))
        found = service.kill_soon(target)
        print(f"kill {number + 1:2} after {len(mail.accepted):4} accepted: {target}", file=sys.stderr, flush=True)
        if not found:
            faults.append(f"there was no process that is {target}")
    if not service.is_up:
        service.start()
    return faults


def _wait_for_mails(mail: MailServer, number: int) -> None:
    wait_for(lambda: len(mail.accepted) > number, 90, "it does not send")


def _integrity(database: Path) -> list[str]:
    with closing(sqlite3.connect(database)) as connection:
        [answer] = connection.execute("PRAGMA integrity_check").fetchone()
    return [] if answer == "ok" else [f"the database is damaged: {answer}"]


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--kills", type=int, default=20)
    parser.add_argument("--messages", type=int, default=2000)
    parser.add_argument("--seed", type=int, default=random.randrange(10_000), help="repeats the same kills")
    parser.add_argument(
        "--pause", type=float, default=0.008, help="seconds that the mail server takes for each message"
    )
    options = parser.parse_args()
    print(f"seed {options.seed}", file=sys.stderr)
    with tempfile.TemporaryDirectory(prefix="kill-") as folder:
        result = run(Path(folder), options.kills, options.messages, options.seed, options.pause)
    result.show()
    faults = Counter(result.judge())
    for fault, number in faults.items():
        print(f"FAULT, {number} times: {fault}")
    print("Every message is at rest; nothing lost, nothing twice but by policy." if not faults else "FAILED")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
