"""Faults of the grown engine: workers and beats killed, Redis killed and frozen, two beats. E-mails go to a mail server
of another make, whose own count by our reference is the judge."""

from __future__ import annotations

import random
import signal
import subprocess
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path

from celery import Celery
from kombu.exceptions import OperationalError
from redis.exceptions import RedisError

from tests import servers, services
from tests.faults import at_work, ledger
from tests.faults.at_work import Processes
from tests.servers import MailServer

PATIENCE = 10  # seconds; what was handing over at a kill is decided after it
FLYING = 8  # e-mails in flight at once for each of a worker's two children
BACK_WITHIN = 10  # seconds from Redis being there again to every worker taking tasks
PASSWORD = "a-long-enough-one"  # of nobody: it is the trying that is measured

Outcome = tuple[dict[str, int], list[str]]


@dataclass
class Redis:
    """A Redis that can be killed and come back at the same place."""

    port: int
    process: subprocess.Popen[bytes] | None = None

    def start(self) -> None:
        command = ["redis-server", "--port", str(self.port), "--bind", "127.0.0.1", "--save", "", "--appendonly", "no"]
        self.process = subprocess.Popen(command, stdout=subprocess.DEVNULL)
        at_work.wait_for(lambda: servers.listens(self.port), 10, "Redis does not come up")

    def send(self, number: signal.Signals) -> None:
        assert self.process is not None  # started before
        self.process.send_signal(number)

    def kill(self) -> None:
        if self.process is not None:
            self.process.kill()
            self.process.wait()


@dataclass
class Grown(Processes):
    """A studio on PostgreSQL and Redis, and its mail server."""

    url: str = ""
    redis: Redis = None  # type: ignore[assignment]  # always given
    mail: MailServer = None  # type: ignore[assignment]  # always given

    def start_one(self, name: str) -> None:
        """Start a worker, a beat or the pages by that name."""
        celery = ("-m", "celery", "-A", "studio")
        commands = {
            "worker": (*celery, "worker", "-c", "2", "-n", name, "--without-gossip", "--without-mingle"),
            "beat": (*celery, "beat", "--pidfile=", f"--schedule={self.folder / name}"),
        }
        self.start(name, *commands[name.rstrip("12")])

    def seconds_until_back(self, workers: int) -> float:
        """Return after how many seconds so many workers take what comes through Redis; 60 at the longest."""
        began = time.monotonic()
        with Celery(broker=self.settings["REDIS_URL"]) as asking:
            while time.monotonic() - began < 60:
                # Celery 5.7 ends by itself where a line breaks at a bad moment (celery#9250, kombu#582).
                self.start_again()
                with suppress(OSError, RedisError, OperationalError):
                    if len(asking.control.ping(timeout=0.5)) >= workers:
                        break
        return time.monotonic() - began

    def wait_for_mails(self, number: float) -> None:
        at_work.wait_for(lambda: len(self.mail.accepted) > number, 120, "it does not send")

    def outcome(self, *, cut_off: int = 0, **more: int) -> Outcome:
        """Wait until all is at rest, and judge it; ``cut_off`` is how many can have been in flight at kills."""
        at_work.wait_for(lambda: not ledger.at_work(self.url), 300, "some messages never came to rest")
        found = ledger.entries(self.url)
        faults = ledger.judge(found, self.mail.accepted, self.mail.unanswered, cut_off=cut_off)
        return ledger.counts(found, self.mail.accepted) | more, faults


@contextmanager
def grown(folder: Path, messages: int) -> Iterator[Grown]:
    """Run a service with so many e-mails due; its processes are not yet started."""
    with ExitStack() as stack:
        url = stack.enter_context(servers.postgres())
        mail = stack.enter_context(servers.smtp(folder, 0.004))
        redis = Redis(servers.free_port())
        redis.start()
        stack.callback(redis.kill)
        settings = services.environment(
            folder,
            DATABASE_URL=url,
            REDIS_URL=f"redis://127.0.0.1:{redis.port}/0",
            EMAIL_URL=mail.url,
            PORT=str(servers.free_port()),
            REDIS_SOCKET_TIMEOUT="10",
            LOG_LEVEL="WARNING",
        )
        at_work.make_live_studio(settings, folder, [f"mia{number}@mail.example" for number in range(messages)])
        at_work.set_line(settings, "email", options={"patience": PATIENCE})
        made = Grown(settings, folder, url=url, redis=redis, mail=mail)
        stack.callback(made.end)
        yield made


def killed(folder: Path, small: bool) -> Outcome:
    """kill -9 of workers and beats, two of each, at random moments spread over the whole run."""
    kills, messages = (4, 200) if small else (60, 6_000)
    luck = random.Random(11)
    with grown(folder, messages) as made:
        names = ("worker1", "worker2", "beat1", "beat2")
        for name in names:
            made.start_one(name)
        for number in range(kills):
            made.wait_for_mails((number + luck.random() * 0.9) * messages / kills)
            time.sleep(luck.uniform(0, 0.05))
            name = names[number % 4]
            made.kill(name)
            made.start_one(name)
        return made.outcome(cut_off=kills // 2 * 2 * FLYING, kills=kills)


def database(folder: Path, small: bool) -> Outcome:
    """PostgreSQL is restarted at once under workers and pages: the next page is shown, and the sending goes on."""
    messages, restarts = (300, 1) if small else (3_000, 5)
    with grown(folder, messages) as made:
        for name in ("worker1", "worker2", "beat1"):
            made.start_one(name)
        with at_work.web(made.settings, folder) as site:
            refused = []
            for number in range(restarts):
                made.wait_for_mails((number + 0.3) * messages / 5)
                at_work.get(f"{site}/health")  # its connections are open when the server ends
                servers.restart(made.url)
                asked = (at_work.get(f"{site}/health"), at_work.sign_in(site, "ines@birch.example", PASSWORD))
                refused += [status for status in asked if status >= 500]
            figures, faults = made.outcome(cut_off=restarts * 4 * FLYING, restarts=restarts)
        faults += [f"a page after a restart ended with {status}" for status in refused]
        return figures, faults


def redis_killed(folder: Path, small: bool) -> Outcome:
    """Redis is killed without a trace of what it held, and comes back empty a few seconds later."""
    messages, kills = (300, 1) if small else (3_000, 5)
    with grown(folder, messages) as made:
        for name in ("worker1", "worker2", "beat1"):
            made.start_one(name)
        slowest = 0.0
        for number in range(kills):
            made.wait_for_mails((number + 0.3) * messages / 5)
            made.redis.kill()
            made.look_after(3)
            made.redis.start()
            slowest = max(slowest, made.seconds_until_back(2))
        figures, faults = made.outcome(kills=kills, back_ms=round(slowest * 1000))
        if slowest > BACK_WITHIN:
            faults.append(f"the workers took {slowest:.1f} s to be back")
        return figures, faults


def redis_frozen(folder: Path, small: bool) -> Outcome:
    """Redis is stopped for 30 s: a sign-in, which counts tries in the cache, goes on, and workers do their rounds."""
    with grown(folder, 400 if small else 2_000) as made:
        for name in ("worker1", "worker2", "beat1"):
            made.start_one(name)
        with at_work.web(made.settings, folder) as site:
            made.wait_for_mails(80)
            made.redis.send(signal.SIGSTOP)
            before = len(made.mail.accepted)
            slowest = max(_seconds(site) for _ in range(5))
            time.sleep(30)
            meanwhile = len(made.mail.accepted) - before
            made.redis.send(signal.SIGCONT)
            figures, faults = made.outcome(meanwhile=meanwhile, slowest_ms=round(slowest * 1000))
        if not meanwhile:
            faults.append("nothing left while Redis stood still")
        if slowest > 3:
            faults.append(f"a sign-in took {slowest:.1f} s")
        return figures, faults


def _seconds(site: str) -> float:
    began = time.monotonic()
    at_work.sign_in(site, "ines@birch.example", PASSWORD)
    return time.monotonic() - began
