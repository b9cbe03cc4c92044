"""An SMS centre on private ports, independent of our code: server.js on the npm package smpp, run by a wheel's node."""

from __future__ import annotations

import fcntl
import json
import os
import shutil
import subprocess
import sys
import urllib.request
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tests.servers import _process, free_port, listens

FOLDER = Path(__file__).resolve().parent
_BIN = Path(sys.executable).parent
_PACKAGES = FOLDER / "node_modules"
_LOCK = FOLDER / "package-lock.json"


@dataclass(frozen=True, slots=True)
class Taken:
    """A text as a telephone would show it. ``well_formed``: no part of it ended within a surrogate pair."""

    source: str
    source_kind: tuple[int, int]  # type of number, numbering plan
    destination: str
    destination_kind: tuple[int, int]
    coding: int
    parts: int
    text: str
    well_formed: bool
    reference: int | None


@dataclass(frozen=True, slots=True)
class Counts:
    """What the centre has seen since it began, or since ``reset``. ``units`` are those that it has accepted."""

    units: int
    by_destination: Mapping[str, int]
    texts: Sequence[Taken]
    unfinished: int
    throttled: int
    receipts: int
    again: int  # receipts that came once more, see ``insist``
    answers: Sequence[tuple[int, int]]  # to what it delivered: sequence number, status
    unacknowledged: Sequence[int]
    binds: int
    sessions: int
    enquired: int
    unbound: int


@dataclass(slots=True)
class Smsc:
    """A running centre: how it is reached, what it is told, what it tells."""

    port: int
    control: int
    certificate: Path | None = None

    @property
    def address(self) -> dict[str, Any]:
        """The options that ``Smpp`` needs to reach it."""
        tls = {"tls": True, "ca_file": str(self.certificate)} if self.certificate else {}
        return {"host": "127.0.0.1", "port": self.port, "system_id": "studio", "password": "s3cret", **tls}

    def set(self, **settings: Any) -> None:
        """Change how it behaves: see DEFAULTS in server.js."""
        self._ask("/set", settings)

    def reset(self) -> None:
        """Behave as at first, and forget what was counted."""
        self._ask("/reset")

    def inject(self, sender: str, to: str, *parts: bytes, coding: int = 0, **more: Any) -> list[int]:
        """Deliver a text that somebody wrote, part by part; return the sequence numbers."""
        told = {"from": sender, "to": to, "coding": coding, "parts": [part.hex() for part in parts], **more}
        numbers: list[int] = self._ask("/inject", told)["numbers"]
        return numbers

    def write(self, octets: bytes) -> None:
        """Write octets to everybody who is bound, whatever they are."""
        self._ask("/raw", {"octets": octets.hex()})

    def hang_up(self) -> None:
        """Destroy every connection."""
        self._ask("/hangup")

    def unbind(self) -> None:
        """End every session as the protocol says."""
        self._ask("/unbind")

    def ask(self) -> None:
        """Ask everybody whether they are there."""
        self._ask("/ask")

    @property
    def counts(self) -> Counts:
        told = self._ask("/count")
        texts = [
            Taken(
                source=one["source"],
                source_kind=(one["source_ton"], one["source_npi"]),
                destination=one["destination"],
                destination_kind=(one["destination_ton"], one["destination_npi"]),
                coding=one["coding"],
                parts=one["parts"],
                text=one["text"],
                well_formed=one["well_formed"],
                reference=one["reference"],
            )
            for one in told.pop("texts")
        ]
        answers = [(sequence, status) for sequence, status in told.pop("answers")]
        return Counts(texts=texts, answers=answers, **told)

    def _ask(self, path: str, body: Mapping[str, Any] | None = None) -> Any:
        request = urllib.request.Request(  # always this machine
            f"http://127.0.0.1:{self.control}{path}", json.dumps(body or {}).encode(), method="POST"
        )
        with urllib.request.urlopen(request, timeout=10) as response:
            return json.load(response)


@contextmanager
def smsc(*, port: int | None = None, tls_in: Path | None = None) -> Iterator[Smsc]:
    """Run the centre, on ``port`` if it must be a certain one; with TLS where there is a folder for its certificate."""
    install()
    centre = Smsc(port or free_port(), free_port())
    command = [str(_BIN / "node"), str(FOLDER / "server.js"), str(centre.port), str(centre.control)]
    if tls_in is not None:
        key, centre.certificate = _certificate(tls_in)
        command += [str(key), str(centre.certificate)]
    with _process(command, lambda: listens(centre.control) and listens(centre.port)):
        yield centre


def has_tls() -> bool:
    return shutil.which("openssl") is not None


def install() -> None:
    """Install the packages of package-lock.json, once for all tests."""
    done = _PACKAGES / ".done"
    wanted = _LOCK.read_text(encoding="utf-8")
    with open(FOLDER / "package.json", encoding="utf-8") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if done.exists() and done.read_text(encoding="utf-8") == wanted:
            return
        paths = {**os.environ, "PATH": f"{_BIN}{os.pathsep}{os.environ.get('PATH', '')}"}
        command = [str(_BIN / "npm"), "ci", "--no-audit", "--no-fund", "--loglevel=error"]
        ran = subprocess.run(
            command,
            cwd=FOLDER,
            env=paths,
            capture_output=True,
            text=True,
            timeout=120,
            check=False,
        )
        if ran.returncode:
            raise RuntimeError(f"npm ci: {ran.stdout}{ran.stderr}")
        done.write_text(wanted, encoding="utf-8")


def _certificate(folder: Path) -> tuple[Path, Path]:
    """Make a certificate for this machine that nobody else trusts."""
    key, certificate = folder / "key.pem", folder / "certificate.pem"
    subject = ["-subj", "/CN=127.0.0.1", "-addext", "subjectAltName=IP:127.0.0.1", "-days", "2"]
    made = ["req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes", *subject]
    subprocess.run(
        ["openssl", *made, "-keyout", str(key), "-out", str(certificate)], capture_output=True, timeout=20, check=True
    )
    return key, certificate
