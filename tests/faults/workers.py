"""Faults of the grown engine: workers and beats killed, Redis killed and frozen, two beats. E-mails go to a mail server
of another make, whose own count by our reference is the judge."""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
import time
import urllib.request
from collections import Counter
from collections.abc import Iterator, Mapping
from contextlib import ExitStack, contextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path

import psycopg

from tests import servers, services
from tests.faults.bind import ROOT, wait_for
from tests.faults.judging import Fate, Result
from tests.servers import MailServer

PATIENCE = 10  # seconds; what was handing over at a kill is decided after it
DUE = "m.occasion IN ('care', 'prepare')"
AT_WORK = f"""
SELECT count(*) FROM aftercare_message m WHERE {DUE}
AND (state IN ('planned', 'claimed', 'handing_over') OR lease_until IS NOT NULL)
"""
MESSAGES = f"SELECT m.id, m.occasion, m.state, m.lease_until IS NOT NULL FROM aftercare_message m WHERE {DUE}"
ATTEMPTS = f"""
SELECT a.message_id, a.reference, a.outcome FROM aftercare_attempt a JOIN aftercare_message m ON m.id = a.message_id
WHERE {DUE}
"""
HURRY = f"""
from aftercare.lines import lines_of
from studio.models import Studio
line = lines_of(Studio.objects.get())["email"]
line.options = {{"patience": {PATIENCE}}}
line.save()
"""


@dataclass
class Redis:
    """A Redis that can be killed and come back at the same place."""

    port: int
    process: subprocess.Popen[bytes] | None = None

    @property
    def url(self) -> str:
        return f"redis://127.0.0.1:{self.port}/0"

    def start(self) -> None:
        command = ["redis-server", "--port", str(self.port), "--bind", "127.0.0.1", "--save", "", "--appendonly", "no"]
        self.process = subprocess.Popen(command, stdout=subprocess.DEVNULL)
        wait_for(lambda: servers.listens(self.port), 10, "Redis does not come up")

    def send(self, number: signal.Signals) -> None:
        assert self.process is not None  # noqa: S101  started before
        self.process.send_signal(number)

    def kill(self) -> None:
        if self.process is not None:
            self.process.kill()
            self.process.wait()


@dataclass
class Engine:
    """A studio on PostgreSQL and Redis with workers and beats, each a process group of its own."""

    settings: Mapping[str, str]
    database: str
    redis: Redis
    mail: MailServer
    folder: Path
    messages: int
    processes: dict[str, subprocess.Popen[bytes]] = field(default_factory=dict)

    def start(self, name: str) -> None:
        celery = ["-m", "celery", "-A", "studio"]
        commands = {
            "worker": [*celery, "worker", "-c", "2", "-n", name, "--without-gossip", "--without-mingle"],
            "beat": [*celery, "beat", "--pidfile=", f"--schedule={self.folder / name}"],
            "web": ["-m", "gunicorn", "--config", "deploy/gunicorn.conf.py"],
        }
        with (self.folder / f"{name}.log").open("ab") as log:
            self.processes[name] = subprocess.Popen(
                [sys.executable, *commands[name.rstrip("12")]],
                cwd=ROOT,
                env=dict(self.settings),
                stdout=log,
                stderr=log,
                start_new_session=True,
            )

    def kill(self, name: str) -> None:
        process = self.processes.pop(name)
        with suppress(ProcessLookupError):
            os.killpg(process.pid, signal.SIGKILL)
        process.wait()

    def end(self) -> None:
        for name in list(self.processes):
            self.kill(name)

    def ask(self, statement: str) -> list[tuple]:
        with psycopg.connect(self.database, autocommit=True) as connection:
            return connection.execute(statement).fetchall()

    def wait_for_mails(self, number: float, seconds: float = 120) -> None:
        wait_for(lambda: len(self.mail.accepted) > number, seconds, "it does not send")

    def wait_until_at_rest(self, seconds: float) -> None:
        wait_for(lambda: not self.ask(AT_WORK)[0][0], seconds, "some messages never came to rest")

    def result(self, name: str, **seen: object) -> Result:
        accepted = Counter(self.mail.accepted)
        taken: Counter[int] = Counter()
        lost: Counter[int] = Counter()
        for message, reference, outcome in self.ask(ATTEMPTS):
            taken[message] += accepted.pop(reference, 0)
            lost[message] += outcome == "unsure"
        rows = self.ask(MESSAGES)
        fates = [Fate(occasion, state, leased, lost[pk], taken[pk]) for pk, occasion, state, leased in rows]
        found = Result(name, fates, dict(seen)).judge(self.messages)
        if accepted:
            found.faults.append(f"{sum(accepted.values())} mails that nobody has written down")
        return found


@contextmanager
def engine(folder: Path, messages: int) -> Iterator[Engine]:
    with ExitStack() as stack:
        database = stack.enter_context(servers.postgres())
        mail = stack.enter_context(servers.smtp(folder, 0.004))
        redis = Redis(servers.free_port())
        redis.start()
        stack.callback(redis.kill)
        port = servers.free_port()
        settings = services.environment(
            folder,
            DATABASE_URL=database,
            REDIS_URL=redis.url,
            EMAIL_URL=mail.url,
            PORT=str(port),
            REDIS_SOCKET_TIMEOUT="10",
            LOG_LEVEL="WARNING",
        )
        services.make_live_studio(settings, folder, messages)
        services.manage(settings, "shell", "-c", HURRY)
        made = Engine(settings, database, redis, mail, folder, messages)
        stack.callback(made.end)
        yield made


def workers_killed(folder: Path, small: bool) -> Result:
    """kill -9 of workers and beats, two of each, at random moments spread over the whole run."""
    kills, messages = (4, 200) if small else (60, 6_000)
    luck = random.Random(11)
    with engine(folder, messages) as made:
        names = ("worker1", "worker2", "beat1", "beat2")
        for name in names:
            made.start(name)
        for number in range(kills):
            made.wait_for_mails((number + luck.random() * 0.9) * messages / kills)
            time.sleep(luck.uniform(0, 0.05))
            name = names[number % 4]
            made.kill(name)
            made.start(name)
        made.wait_until_at_rest(300)
        return made.result("workers and beats killed", kills=kills)


def redis_killed(folder: Path, small: bool) -> Result:
    """Redis is killed without a trace of what it held, and comes back empty a few seconds later."""
    messages = 300 if small else 3_000
    with engine(folder, messages) as made:
        for name in ("worker1", "worker2", "beat1"):
            made.start(name)
        for number in range(1 if small else 5):
            made.wait_for_mails((number + 0.3) * messages / 5)
            made.redis.kill()
            time.sleep(3)
            made.redis.start()
        made.wait_until_at_rest(180)
        return made.result("Redis killed", kills=1 if small else 5)


def redis_frozen(folder: Path, small: bool) -> Result:
    """Redis is stopped for 30 s: pages answer all the same, and workers do their rounds without it."""
    messages = 400 if small else 2_000
    with engine(folder, messages) as made:
        for name in ("worker1", "worker2", "beat1", "web"):
            made.start(name)
        wait_for(lambda: _seconds(made) < 30, 40, "the pages do not come up")
        made.wait_for_mails(messages / 5)
        made.redis.send(signal.SIGSTOP)
        slowest = max(_seconds(made) for _ in range(10))
        before = len(made.mail.accepted)
        time.sleep(30)
        meanwhile = len(made.mail.accepted) - before
        made.redis.send(signal.SIGCONT)
        made.wait_until_at_rest(180)
        found = made.result("Redis frozen for 30 s", slowest_page=f"{slowest:.2f} s", meanwhile=meanwhile)
        if not meanwhile:
            found.faults.append("nothing left while Redis stood still")
        if slowest > 3:
            found.faults.append(f"a page took {slowest:.1f} s")
        return found


def _seconds(made: Engine) -> float:
    """How long the sign-in page takes; 99 where nobody answers."""
    base = f"http://127.0.0.1:{made.settings['PORT']}"
    began = time.monotonic()
    try:
        with urllib.request.urlopen(f"{base}/sign-in", timeout=30) as page:  # noqa: S310  always this machine
            page.read()
    except OSError:
        return 99.0
    return time.monotonic() - began
