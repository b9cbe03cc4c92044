"""Real servers on private ports, started for a test and stopped after it: PostgreSQL, Redis, and a mail server.

The mail server is aiosmtpd in a process of its own. It writes the reference of each message that it accepts to a file,
synced to disk before it answers, and does as the recipient's address says: ``refuse-…`` 550 at RCPT, ``busy-…`` 451 at
RCPT, ``spam-…`` 554 after DATA, ``later-…`` 451 after DATA, ``drop-…`` takes the message and hangs up unanswered,
``hangup-…`` hangs up at RCPT, ``slow-…`` takes a second; ``once-`` before any of these: the first time alone. The
references of messages that it took and left unanswered are in a second file.
"""

from __future__ import annotations

import asyncio
import os
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any

SUPERUSER = "postgres"


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


@dataclass(frozen=True)
class MailServer:
    """A running mail server: where it listens, and what it has accepted."""

    port: int
    log: Path
    host: str = "127.0.0.1"

    @property
    def url(self) -> str:
        return f"smtp://{self.host}:{self.port}"

    @property
    def accepted(self) -> list[str]:
        """References in the order of acceptance, as often as they were accepted."""
        return self.log.read_text().splitlines() if self.log.exists() else []

    @property
    def unanswered(self) -> list[str]:
        """References of those that it hung up on once it had them."""
        log = self.log.with_name("unanswered")
        return log.read_text().splitlines() if log.exists() else []

    @property
    def newest(self) -> bytes:
        """The message that was accepted last, as it came over the wire."""
        return self.log.with_name("newest.eml").read_bytes()


@contextmanager
def smtp(folder: Path, pause: float = 0.0, host: str = "127.0.0.1", port: int = 0) -> Iterator[MailServer]:
    """Run the mail server, which takes ``pause`` seconds for each message; its log survives it."""
    server = MailServer(port or free_port(), folder / "accepted", host)
    command = [sys.executable, __file__, "smtp", str(server.port), str(server.log), str(pause), host]
    with _process(command, lambda: listens(server.port, host)):
        yield server


@contextmanager
def redis(host: str = "127.0.0.1") -> Iterator[str]:
    """Run a Redis without persistence; yield its URL."""
    port = free_port()
    program = shutil.which("redis-server") or shutil.which("valkey-server")
    if program is None:
        raise FileNotFoundError("redis-server is not installed")
    command = [program, "--port", str(port), "--bind", host, "--save", "", "--appendonly", "no"]
    with _process([*command, "--protected-mode", "no"], lambda: listens(port, host)):
        yield f"redis://{host}:{port}/0"


@contextmanager
def postgres(host: str = "") -> Iterator[str]:
    """Run a PostgreSQL of its own on a Unix socket, or at an address; yield the URL of an empty database."""
    programs = _postgres_programs()
    folder = Path(tempfile.mkdtemp(prefix="pg-", dir="/tmp"))  # a socket's path must be short
    port = free_port()
    try:
        if os.geteuid() == 0:  # PostgreSQL refuses to run as root
            shutil.chown(folder, SUPERUSER, SUPERUSER)
        data = str(folder / "data")
        _as_postgres([f"{programs}/initdb", "-D", data, "-U", SUPERUSER, "-A", "trust", "--no-sync", "-E", "UTF8"])
        settings = f"-k {folder} -p {port} -c listen_addresses={host} -c max_connections=60"
        if host:
            with (folder / "data" / "pg_hba.conf").open("a") as rules:
                rules.write("host all all samenet trust\n")
        _as_postgres([f"{programs}/pg_ctl", "-D", data, "-w", "-o", settings, "-l", f"{folder}/log", "start"])
        try:
            at = f"{host}:{port}/postgres" if host else f":{port}/postgres?host={folder}"
            yield f"postgres://{SUPERUSER}@{at}"
        finally:
            _as_postgres([f"{programs}/pg_ctl", "-D", data, "-m", "immediate", "-w", "stop"])
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def restart(url: str) -> None:
    """Stop the PostgreSQL of a URL that :func:`postgres` gave, at once as when it crashes, and start it again."""
    folder = url.rpartition("host=")[2]
    control = f"{_postgres_programs()}/pg_ctl"
    _as_postgres([control, "-D", f"{folder}/data", "-m", "immediate", "-w", "-l", f"{folder}/log", "restart"])


def halt(url: str) -> None:
    """Stop the PostgreSQL of a URL that :func:`postgres` gave, as when it crashes; :func:`restart` starts it."""
    folder = url.rpartition("host=")[2]
    _as_postgres([f"{_postgres_programs()}/pg_ctl", "-D", f"{folder}/data", "-m", "immediate", "-w", "stop"])


def has_postgres() -> bool:
    with suppress(FileNotFoundError):
        return bool(_postgres_programs())
    return False


def has_redis() -> bool:
    return bool(shutil.which("redis-server") or shutil.which("valkey-server"))


def _postgres_programs() -> str:
    versions = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"), key=lambda path: int(path.parts[-3]))
    found = str(versions[-1]) if versions else shutil.which("initdb")
    if not found:
        raise FileNotFoundError("PostgreSQL is not installed")
    return str(Path(found).parent)


def _as_postgres(command: list[str]) -> None:
    prefix = ["runuser", "-u", SUPERUSER, "--"] if os.geteuid() == 0 else []
    done = subprocess.run([*prefix, *command], capture_output=True, text=True, timeout=60, cwd="/", check=False)
    if done.returncode:
        raise RuntimeError(f"{command[0]}: {done.stdout}{done.stderr}")


@contextmanager
def _process(command: list[str], is_up: Callable[[], bool]) -> Iterator[subprocess.Popen[bytes]]:
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, start_new_session=True)
    try:
        deadline = time.monotonic() + 20
        while not is_up():
            if process.poll() is not None or time.monotonic() > deadline:
                raise RuntimeError(f"{command} did not come up")
            time.sleep(0.02)
        yield process
    finally:
        with suppress(ProcessLookupError):
            os.killpg(process.pid, signal.SIGKILL)
        process.wait()


def listens(port: int, host: str = "127.0.0.1") -> bool:
    with socket.socket() as probe:
        return probe.connect_ex((host, port)) == 0


class _Handler:
    """What the mail server does with a message, by the recipient's address."""

    def __init__(self, log: Path, pause: float) -> None:
        self.pause = pause
        self.newest = log.with_name("newest.eml")
        self.log = open(log, "a", encoding="ascii")  # noqa: SIM115  open as long as the process lives
        self.unanswered = open(log.with_name("unanswered"), "a", encoding="ascii")  # noqa: SIM115  the same
        self.done: set[str] = set()  # addresses with "once-" that have had their fault

    async def handle_RCPT(self, server: Any, session: Any, envelope: Any, address: str, options: list[str]) -> str:
        kind = self._kind(address, "refuse", "busy", "hangup")
        if kind == "hangup":
            server.transport.abort()
            return "421 gone"
        if kind in ("refuse", "busy"):
            return "550 5.1.1 No such mailbox" if kind == "refuse" else "451 4.3.0 Try again later"
        envelope.rcpt_tos.append(address)
        return "250 OK"

    async def handle_DATA(self, server: Any, session: Any, envelope: Any) -> str:
        kind = self._kind(envelope.rcpt_tos[0], "spam", "later", "slow", "drop")
        if kind in ("spam", "later"):
            return "554 5.7.1 Not wanted here" if kind == "spam" else "451 4.7.1 Try again later"
        await asyncio.sleep(1 if kind == "slow" else self.pause)
        self.newest.write_bytes(envelope.content)
        for line in envelope.content.split(b"\r\n\r\n")[0].splitlines():
            name, _, value = line.partition(b":")
            if name.lower() == b"x-message-reference":
                for log in (self.log, self.unanswered) if kind == "drop" else (self.log,):
                    log.write(value.decode("ascii").strip() + "\n")
                    log.flush()
                    os.fsync(log.fileno())
        if kind == "drop":
            server.transport.abort()
        return "250 OK"

    def _kind(self, address: str, *here: str) -> str:
        """Return which of the faults that belong to this step the address asks for, or ''."""
        kind = address.removeprefix("once-").partition("-")[0]
        if kind not in here or address in self.done:
            return ""
        if address.startswith("once-"):
            self.done.add(address)
        return kind


def _serve_smtp(port: int, log: Path, pause: float, host: str) -> None:
    from aiosmtpd.smtp import SMTP  # only this process needs it

    async def serve() -> None:
        handler = _Handler(log, pause)
        loop = asyncio.get_running_loop()
        server = await loop.create_server(lambda: SMTP(handler, hostname="mail.test"), host, port)
        async with server:
            await server.serve_forever()

    asyncio.run(serve())


if __name__ == "__main__":
    _serve_smtp(int(sys.argv[2]), Path(sys.argv[3]), float(sys.argv[4]), sys.argv[5])
