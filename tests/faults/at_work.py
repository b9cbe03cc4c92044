"""A service at work for a fault to happen to: a live studio whose messages are due now, its line, its processes."""

from __future__ import annotations

import csv
import json
import os
import re
import signal
import subprocess
import sys
import time
import urllib.error
import urllib.request
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import requests

from tests import servers, services
from tests.services import ROOT, SLUG, manage

COLUMNS = (
    "visit",
    "client",
    "first_name",
    "email",
    "mobile",
    "time_zone",
    "sms_ok",
    "service",
    "artist",
    "starts_at",
    "status",
)
HTTP_SMS = "aftercare.transports.http_sms.HttpSms"
EMAIL = "aftercare.transports.email.Email"
NUMBER = "+12125550199"
RESTART_SECONDS = 2  # RestartSec in deploy/systemd
_SET_LINE = """
import json
from aftercare.models import Line
from studio.models import Studio
told = json.loads(%r)
facts = {"studio": Studio.objects.get(slug=%r), "channel": told.pop("channel")}
line, _made = Line.objects.get_or_create(**facts)
Line.objects.filter(pk=line.pk).update(**told)
print(line.pk)
"""


def make_live_studio(settings: Mapping[str, str], folder: Path, addresses: Sequence[str]) -> None:
    """Make the database and a live studio whose clients, by these addresses or numbers, have one message due now each.

    Every other visit is done (care is due), the rest are booked (prepare).
    """
    now = datetime.now(UTC)
    zone = services.zone_at_work(now)
    starts = [(now - timedelta(hours=3)), (now + timedelta(days=2))]
    book = folder / "book.csv"
    with book.open("w", encoding="utf-8", newline="") as stream:
        writer = csv.writer(stream)
        writer.writerow(COLUMNS)
        for number, address in enumerate(addresses):
            email, mobile = (address, "") if "@" in address else ("", address)
            service, status = (("fill", "done"), ("removal", "booked"))[number % 2]
            start = starts[number % 2].astimezone(ZoneInfo(zone)).replace(microsecond=0).isoformat()
            agreed = "yes" if mobile else ""
            # Her zone is stated: else her number's, in which it may be night, would count beside the studio's.
            row = (f"V{number}", f"C{number}", "Mia", email, mobile, zone, agreed, service, "Ada", start, status)
            writer.writerow(row)
    manage(settings, "migrate", "--verbosity=0")
    create = ("--create", "--time-zone", zone, "--region", "US")
    manage(settings, "import_book", str(book), "--studio", SLUG, *create)
    manage(settings, "go_live", "--studio", SLUG)


def set_line(settings: Mapping[str, str], channel: str, **facts: object) -> int:
    """Set the studio's line for a channel; return its id."""
    told = json.dumps({"channel": channel, **facts})
    return int(manage(settings, "shell", "-v", "0", "-c", _SET_LINE % (told, SLUG)).split()[-1])


@contextmanager
def running(settings: Mapping[str, str], log: Path, *command: str) -> Iterator[subprocess.Popen[bytes]]:
    """Run a Python module, or a script of the project, as a process of its own; kill it at the end, all of it."""
    with log.open("ab") as stream:
        process = subprocess.Popen(
            [sys.executable, *command], cwd=ROOT, env=settings, stdout=stream, stderr=stream, start_new_session=True
        )
    try:
        yield process
    finally:
        with suppress(ProcessLookupError):
            os.killpg(process.pid, signal.SIGKILL)
        process.wait()


@dataclass
class Processes:
    """Processes of one service by name, each a group of its own, to be killed and started again."""

    settings: Mapping[str, str]
    folder: Path
    running: dict[str, subprocess.Popen[bytes]] = field(default_factory=dict)
    commands: dict[str, tuple[str, ...]] = field(default_factory=dict)

    def start(self, name: str, *command: str) -> None:
        self.commands[name] = command
        with (self.folder / f"{name}.log").open("ab") as log:
            self.running[name] = subprocess.Popen(
                [sys.executable, *command], cwd=ROOT, env=self.settings, stdout=log, stderr=log, start_new_session=True
            )

    def kill(self, name: str) -> None:
        process = self.running.pop(name)
        with suppress(ProcessLookupError):
            os.killpg(process.pid, signal.SIGKILL)
        process.wait()

    def start_again(self) -> None:
        """Start again what has ended by itself, as the supervisor of a service does."""
        for name, process in list(self.running.items()):
            if process.poll() is not None:
                time.sleep(RESTART_SECONDS)
                self.start(name, *self.commands[name])

    def look_after(self, seconds: float) -> None:
        """Start again whatever ends by itself within so long."""
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            self.start_again()
            time.sleep(0.1)

    def end(self) -> None:
        for name in list(self.running):
            self.kill(name)


@contextmanager
def engine(settings: Mapping[str, str], folder: Path) -> Iterator[subprocess.Popen[bytes]]:
    """Run the embedded engine."""
    with running(settings, folder / "engine.log", "manage.py", "run_engine") as process:
        yield process


@contextmanager
def workers(settings: Mapping[str, str], folder: Path) -> Iterator[None]:
    """Run a Celery worker and the beat."""
    celery = ("-m", "celery", "-A", "studio")
    beat = ("beat", "--pidfile=", f"--schedule={folder / 'beat'}", "--loglevel=WARNING")
    with (
        running(settings, folder / "worker.log", *celery, "worker", "-c", "2", "--loglevel=WARNING"),
        running(settings, folder / "beat.log", *celery, *beat),
    ):
        yield


@contextmanager
def web(settings: Mapping[str, str], folder: Path) -> Iterator[str]:
    """Run the web server as ``deploy/start`` does; yield its address."""
    port = settings["PORT"]
    gunicorn = ("-m", "gunicorn", "-c", "deploy/gunicorn.conf.py")
    with running(settings, folder / "web.log", *gunicorn):
        wait_for(lambda: servers.listens(int(port)), 30, "the web server did not come up")
        yield f"http://127.0.0.1:{port}"


def post(url: str, body: bytes = b"", headers: Mapping[str, str] | None = None, timeout: float = 60) -> tuple[int, str]:
    """Call an address; return the status and Retry-After."""
    request = urllib.request.Request(url, body, dict(headers or {}), method="POST")  # always this machine
    try:
        with urllib.request.urlopen(request, timeout=timeout) as answer:
            return answer.status, answer.headers.get("Retry-After", "")
    except urllib.error.HTTPError as error:
        with error:
            return error.code, error.headers.get("Retry-After", "")


def wait_for(what: Callable[[], bool], seconds: float, complaint: str) -> None:
    """Wait until something has come to pass. Raises TimeoutError with ``complaint``."""
    end = time.monotonic() + seconds
    while not what():
        if time.monotonic() > end:
            raise TimeoutError(complaint)
        time.sleep(0.1)


def get(url: str) -> int:
    """Look at a page; return the status."""
    try:
        with urllib.request.urlopen(url, timeout=60) as answer:  # always this machine
            return int(answer.status)
    except urllib.error.HTTPError as error:
        with error:
            return error.code


def sign_in(site: str, email: str, password: str) -> int:
    """Sign in as a browser does; return the status of the answer: 302 where she is in."""
    session = requests.Session()
    page = session.get(f"{site}/sign-in", timeout=60)
    token = re.search(r'name="csrfmiddlewaretoken" value="([^"]+)"', page.text)
    if token is None:
        return page.status_code
    told = {"username": email, "password": password, "csrfmiddlewaretoken": token[1]}
    return session.post(page.url, told, timeout=60, allow_redirects=False).status_code
