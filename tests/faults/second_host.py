#!/usr/bin/env python3
"""A worker on a second host takes its part of the load by settings alone: counted by who handed over what.

    python tests/faults/second_host.py --messages 3000

The second host is a network namespace of its own, joined by one cable (a veth pair): nothing of this machine's network
is there but what comes over it. PostgreSQL, Redis and the mail server listen at this end. One worker runs here, one
there, alike but for where they are; the second knows the service by DATABASE_URL, REDIS_URL, EMAIL_URL and the key.
Needs root. Each must hand over 35 % or more, and nothing may be lost or sent twice. Exit 1 where that is not so.
"""

from __future__ import annotations

import argparse
import os
import re
import signal
import subprocess
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Iterator, Mapping
from contextlib import ExitStack, contextmanager, suppress
from pathlib import Path

import psycopg

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests import servers, services  # noqa: E402  found by the path above

LEAST_SHARE = 0.35
HERE, THERE = "10.213.77.1", "10.213.77.2"
PATIENCE_SECONDS = 240
ROUND = re.compile(r"(here|there)@\S+: a round of .*?'handed_over': (\d+)")


def run(*command: str) -> None:
    subprocess.run(command, check=True, capture_output=True, text=True)


@contextmanager
def second_host() -> Iterator[str]:
    """Make a network of its own with a cable to this one; give its name."""
    name = f"second{os.getpid()}"
    cable, end = f"va{os.getpid()}", f"vb{os.getpid()}"
    run("ip", "netns", "add", name)
    try:
        run("ip", "link", "add", cable, "type", "veth", "peer", "name", end, "netns", name)
        run("ip", "address", "add", f"{HERE}/30", "dev", cable)
        run("ip", "link", "set", cable, "up")
        run("ip", "-n", name, "address", "add", f"{THERE}/30", "dev", end)
        run("ip", "-n", name, "link", "set", end, "up")
        run("ip", "-n", name, "link", "set", "lo", "up")
        yield name
    finally:
        with suppress(subprocess.CalledProcessError):  # by itself it would go only some time after its network
            run("ip", "link", "delete", cable)
        run("ip", "netns", "delete", name)


@contextmanager
def process(command: list[str], settings: Mapping[str, str], log: Path) -> Iterator[None]:
    with log.open("ab") as stream:
        one = subprocess.Popen(command, cwd=ROOT, env=settings, stdout=stream, stderr=stream, start_new_session=True)
    try:
        yield
    finally:
        with suppress(ProcessLookupError):
            os.killpg(one.pid, signal.SIGKILL)
        one.wait()


def count(database: str) -> Counter[str]:
    with psycopg.connect(database) as connection:
        rows = connection.execute("SELECT state, count(*) FROM aftercare_message GROUP BY state").fetchall()
    return Counter(dict(rows))


def share(folder: Path, messages: int, pause: float) -> list[str]:
    """Have two hosts send; print who did what, and return everything that must not be."""
    logs = {name: folder / f"{name}.log" for name in ("here", "there")}
    with ExitStack() as stack:
        host = stack.enter_context(second_host())
        database = stack.enter_context(servers.postgres(HERE))
        redis = stack.enter_context(servers.redis(HERE))
        mail = stack.enter_context(servers.smtp(folder, pause, HERE))
        settings = services.environment(
            folder, DATABASE_URL=database, REDIS_URL=redis, EMAIL_URL=mail.url, SECRET_KEY="k" * 50
        )
        services.make_live_studio(settings, folder, messages)
        celery = [sys.executable, "-m", "celery", "-A", "studio"]
        for name, prefix in (("here", []), ("there", ["ip", "netns", "exec", host])):
            own = folder / f"{name}-data"  # another host has another disk
            worker = [*celery, "worker", "--loglevel=INFO", "--concurrency=2", "--without-gossip", "--without-mingle"]
            command = [*prefix, *worker, f"--hostname={name}@%h"]
            environment = {**settings, "DATA_DIR": str(own), "REDIS_SOCKET_TIMEOUT": "10"}
            stack.enter_context(process(command, environment, logs[name]))
        wait_for_both(logs)
        began = time.monotonic()
        beat = [*celery, "beat", "--pidfile=", f"--schedule={folder / 'beat'}", "--loglevel=WARNING"]
        stack.enter_context(process(beat, settings, folder / "beat.log"))
        until = began + PATIENCE_SECONDS
        while count(database)["handed_over"] < messages and time.monotonic() < until:
            time.sleep(0.2)
        seconds = time.monotonic() - began
        time.sleep(6)  # the last rounds end, and are written to the logs
        states, accepted = count(database), mail.accepted
    return judge(messages, seconds, states, accepted, "".join(log.read_text() for log in logs.values()))


def wait_for_both(logs: Mapping[str, Path]) -> None:
    until = time.monotonic() + 60
    while not all(" ready." in log.read_text() for log in logs.values()):
        if time.monotonic() > until:
            raise TimeoutError("".join(log.read_text()[-1500:] for log in logs.values()))
        time.sleep(0.2)


def judge(messages: int, seconds: float, states: Counter[str], accepted: list[str], log: str) -> list[str]:
    done: Counter[str] = Counter()
    for name, number in ROUND.findall(log):
        done[name] += int(number)
    total = done.total()
    print(f"{'worker':8} {'messages':>8} {'share':>6}")
    for name in ("here", "there"):
        print(f"{name:8} {done[name]:>8} {done[name] / max(total, 1):>6.0%}")
    print(f"{messages} messages in {seconds:.1f} s, {messages / seconds:.0f} a second; states {dict(states)}")
    faults = [
        f"the worker {name} handed over {done[name] / max(total, 1):.0%}, less than {LEAST_SHARE:.0%}"
        for name in ("here", "there")
        if done[name] < LEAST_SHARE * total
    ]
    if states["handed_over"] != messages or total != messages:
        faults.append(f"{states['handed_over']} of {messages} are handed over, and the workers tell of {total}")
    if not len(accepted) == len(set(accepted)) == messages:
        faults.append(f"the mail server accepted {len(accepted)}, {len(set(accepted))} of them different")
    return faults


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--messages", type=int, default=3000)
    parser.add_argument(
        "--pause", type=float, default=0.005, help="seconds that the mail server takes for each message"
    )
    options = parser.parse_args()
    if reason := why_not():
        print(f"Skipped: {reason}.")
        return 0
    with tempfile.TemporaryDirectory(prefix="second-") as folder:
        faults = share(Path(folder), options.messages, options.pause)
    for fault in faults:
        print(f"FAULT: {fault}")
    print("Both hosts had their share; nothing lost, nothing twice." if not faults else "FAILED")
    return 1 if faults else 0


def why_not() -> str:
    """Return why it cannot be run here, or ''."""
    if os.geteuid() != 0:
        return "only root may make a network"
    if not (servers.has_postgres() and servers.has_redis()):
        return "PostgreSQL or Redis is not installed"
    try:
        with second_host():
            return ""
    except (OSError, subprocess.CalledProcessError) as error:
        return f"this machine makes no network of its own ({error})"


if __name__ == "__main__":
    sys.exit(main())
