"""A PostgreSQL and a Redis of the service's own in its data folder, from the system's packages, for `--workers`.

Both listen to this machine alone: PostgreSQL on a socket in a folder that only its user may enter, Redis with a
password made at each start. What they keep stays between two starts.
"""

from __future__ import annotations

import os
import pwd
import secrets
import shutil
import signal
import socket
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import quote

from deploy.supervise import Program, StepFailed, Supervisor, say

_USER = "aftercare"  # PostgreSQL's name for the service, and nobody's name here
_UNPRIVILEGED = ("postgres", "nobody")  # who runs them where root starts the service: PostgreSQL refuses root
_PORT = 5432  # only a part of the socket's name
_LONGEST_SOCKET = 107  # bytes, of sun_path less its last zero: unix(7)
_PATIENCE_SECONDS = 60.0
_REDIS_CONF = """\
bind 127.0.0.1
port {port}
requirepass {password}
dir "{folder}"
daemonize no
loglevel warning
save ""
appendonly yes
appendfsync everysec
maxmemory-policy noeviction
"""


@dataclass(frozen=True, slots=True)
class Servers:
    """Where the two listen."""

    database_url: str
    redis_url: str

    @property
    def environment(self) -> dict[str, str]:
        return {"DATABASE_URL": self.database_url, "REDIS_URL": self.redis_url}


def refuse_if_missing() -> None:
    """Raise StepFailed, with what to install, where one of the two is not on this machine."""
    missing = [name for name, found in (("PostgreSQL", _newest()), ("Redis or Valkey", _redis())) if not found]
    if missing:
        raise StepFailed(
            f"--workers brings PostgreSQL and Redis along from the system's packages, and {' and '.join(missing)} is "
            "not installed. On Debian or Ubuntu: apt-get install postgresql redis-server. Or set DATABASE_URL and "
            "REDIS_URL to servers elsewhere."
        )


@contextmanager
def running(supervisor: Supervisor, data: Path, workers: int) -> Iterator[Servers]:
    """Keep both running, the data folder's own; they are ended after everything that uses them."""
    refuse_if_missing()
    user = _unprivileged()
    database = _Database(supervisor, data / "postgres", user)
    database.make()
    port, password = _free_port(), secrets.token_urlsafe(32)
    broker = _broker(data / "redis", user, port, password)
    servers = Servers(database.url, f"redis://:{password}@127.0.0.1:{port}/1")
    with supervisor.behind([database.program(50 + 12 * workers), broker]) as ended:
        _wait("PostgreSQL", lambda: _takes_calls(database.socket), supervisor, ended)
        _wait("Redis", lambda: _pongs(port, password), supervisor, ended)
        yield servers


class _Database:
    """The cluster in `folder`: its files in `folder`/data, its socket beside them."""

    def __init__(self, supervisor: Supervisor, folder: Path, user: str) -> None:
        self.supervisor, self.folder, self.user = supervisor, folder, user
        self.data, self.socket = folder / "data", folder / f".s.PGSQL.{_PORT}"

    @property
    def url(self) -> str:
        return f"postgres://{_USER}@{quote(str(self.folder), safe='')}:{_PORT}/postgres"

    def make(self) -> None:
        """Make the cluster at the first start; in one step, as a start may be killed at any moment."""
        if len(os.fsencode(self.socket)) > _LONGEST_SOCKET:
            raise StepFailed(
                f"The path {self.socket} is too long for a socket ({_LONGEST_SOCKET} letters at most): set DATA_DIR to "
                "a folder with a shorter one."
            )
        _own(self.folder, self.user)
        if self.data.exists():
            return
        say("  making a PostgreSQL cluster of its own")
        new = self.folder / "new"
        shutil.rmtree(new, ignore_errors=True)
        heard: list[str] = []
        command = [str(self._programs() / "initdb"), "-D", str(new), "-U", _USER, "-E", "UTF8", "--locale=C.UTF-8"]
        auth = ["--auth-local=trust", "--auth-host=reject"]  # nobody else gets into the socket's folder
        if self.supervisor.run([*command, *auth], heard.append, user=self.user):
            raise StepFailed("\n".join([*heard[-5:], f"PostgreSQL could not make its files in {self.folder}."]))
        new.rename(self.data)

    def program(self, connections: int) -> Program:
        settings = {
            "unix_socket_directories": str(self.folder),
            "unix_socket_permissions": "0700",
            "listen_addresses": "",
            "port": str(_PORT),
            "max_connections": str(connections),
            "log_min_messages": "fatal",
        }
        options = [part for name, value in settings.items() for part in ("-c", f"{name}={value}")]
        command = [str(self._programs() / "postgres"), "-D", str(self.data), *options]
        # SIGINT is its fast shutdown: it waits for nobody's session (PostgreSQL manual, 19.5).
        return Program("PostgreSQL", command, grace=20, user=self.user, ended_by=signal.SIGINT)

    def _programs(self) -> Path:
        """Give the folder of the programs: those of the version that made the files."""
        file = self.data / "PG_VERSION"
        if not file.exists():
            return _newest() or Path()
        version = file.read_text().strip()
        found = next((one for one in _installed() if one.parent.name == version), None)
        elsewhere = _newest()
        if found is None and elsewhere is not None and elsewhere.parent.name.isdigit():
            raise StepFailed(
                f"The database in {self.data} was made by PostgreSQL {version}, which is not installed any more: "
                f"apt-get install postgresql-{version}, or bring it over with pg_upgrade."
            )
        return found or elsewhere or Path()


def _broker(folder: Path, user: str, port: int, password: str) -> Program:
    _own(folder, user)
    file = folder / "redis.conf"
    file.touch(mode=0o600)
    file.write_text(_REDIS_CONF.format(port=port, password=password, folder=folder))
    if user:
        shutil.chown(file, user)
    return Program("Redis", [_redis(), str(file)], grace=10, user=user)


def _own(folder: Path, user: str) -> None:
    """Make a folder that only its user may enter; raise StepFailed where that user cannot get there."""
    folder.mkdir(mode=0o700, exist_ok=True)
    if not user:
        return
    shutil.chown(folder, user)
    closed = next((one for one in folder.parents if not one.stat().st_mode & 0o001), None)
    if closed is not None:
        raise StepFailed(
            f"Started by root, PostgreSQL and Redis run as {user}, who cannot enter {closed}: chmod o+x {closed}, set "
            "DATA_DIR to a folder elsewhere, or start the service as another user than root."
        )


def _unprivileged() -> str:
    """Give the user to run as: nobody else unless this is root."""
    if os.geteuid() != 0:
        return ""
    names = {entry.pw_name for entry in pwd.getpwall()}
    return next((name for name in _UNPRIVILEGED if name in names), _UNPRIVILEGED[-1])


def _installed() -> list[Path]:
    folders = [path.parent for path in Path("/usr/lib/postgresql").glob("*/bin/initdb")]
    return sorted((one for one in folders if one.parent.name.isdigit()), key=lambda one: int(one.parent.name))


def _newest() -> Path | None:
    if installed := _installed():
        return installed[-1]
    found = shutil.which("initdb")
    return Path(found).resolve().parent if found else None


def _redis() -> str:
    return shutil.which("redis-server") or shutil.which("valkey-server") or ""


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


def _wait(name: str, is_up: Callable[[], bool], supervisor: Supervisor, ended: Callable[[], list[str]]) -> None:
    until = time.monotonic() + _PATIENCE_SECONDS
    while not is_up():
        supervisor.check()
        if name in ended() or time.monotonic() > until:
            raise StepFailed(f"{name} did not start: see what it says above, mend it and start again.")
        time.sleep(0.1)


def _takes_calls(path: Path) -> bool:
    """Tell whether PostgreSQL has got as far as asking who calls: a start-up packet is answered by 'R' (55.2.1)."""
    said = _asked(socket.AF_UNIX, str(path), _hello())
    return said.startswith(b"R")


def _hello() -> bytes:
    body = (196608).to_bytes(4, "big") + f"user\0{_USER}\0database\0postgres\0\0".encode()
    return (len(body) + 4).to_bytes(4, "big") + body


def _pongs(port: int, password: str) -> bool:
    return b"+PONG" in _asked(socket.AF_INET, ("127.0.0.1", port), f"AUTH {password}\r\nPING\r\n".encode())


def _asked(family: socket.AddressFamily, address: str | tuple[str, int], words: bytes) -> bytes:
    with suppress(OSError), socket.socket(family) as call:
        call.settimeout(2)
        call.connect(address)
        call.sendall(words)
        said = call.recv(200)
        time.sleep(0.01)
        call.setblocking(False)
        with suppress(OSError):
            said += call.recv(200)
        return said
    return b""
