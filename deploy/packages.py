"""The virtual environment beside manage.py, and the packages in it."""

from __future__ import annotations

import fcntl
import hashlib
import importlib.util
import os
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from deploy.supervise import ROOT, StepFailed, Supervisor, say

VENV = ROOT / ".venv"
PYTHON = VENV / "bin" / "python"
_PIP = ("-m", "pip", "--disable-pip-version-check", "--no-input")
_LAST_LINES = 12


def ensure(supervisor: Supervisor, *requirements: str) -> None:
    """Make the virtual environment if it is not there, and install each file of requirements that has changed."""
    with _one_at_a_time(supervisor):
        if not _usable(supervisor):
            _make(supervisor)
        for name in requirements:
            _install(supervisor, ROOT / name)


def _usable(supervisor: Supervisor) -> bool:
    """Tell whether there is one that works: it may have been copied from elsewhere, or its Python may be gone."""
    test = "import sys, pip; sys.exit(sys.version_info < (3, 11) or sys.prefix != sys.argv[1])"
    return PYTHON.exists() and supervisor.run([str(PYTHON), "-c", test, str(VENV)], lambda _line: None) == 0


def _make(supervisor: Supervisor) -> None:
    if importlib.util.find_spec("ensurepip") is None:
        version = f"{sys.version_info.major}.{sys.version_info.minor}"
        raise StepFailed(
            f"This Python {version} ({sys.executable}) came without venv. On Debian or Ubuntu: "
            f"apt-get install python{version}-venv. Elsewhere install Python from python.org or your system's package."
        )
    say(f"  making the virtual environment {VENV}")
    if supervisor.run([sys.executable, "-m", "venv", "--clear", str(VENV)]):
        raise StepFailed(f"The virtual environment {VENV} could not be made: see above, then start again.")


def _install(supervisor: Supervisor, file: Path) -> None:
    stamp = VENV / f"installed-{file.relative_to(ROOT).as_posix().replace('/', '-')}"
    wanted = hashlib.sha256(file.read_bytes()).hexdigest()
    if stamp.exists() and stamp.read_text() == wanted:
        say(f"  {file.relative_to(ROOT)}: installed")
        return
    lines = file.read_text(encoding="utf-8").splitlines()
    progress = _Progress(sum("==" in line for line in lines))
    say(f"  {file.relative_to(ROOT)}: installing {progress.of} packages")
    if supervisor.run(
        [str(PYTHON), *_PIP, "install", "--progress-bar=off", "--root-user-action=ignore", "-r", str(file)],
        progress.hear,
    ):
        for line in progress.lines[-_LAST_LINES:]:
            say(f"    {line}")
        raise StepFailed("The packages could not be installed: see above. Is the package index reachable?")
    stamp.write_text(wanted)


class _Progress:
    """Turns pip's talk into a line for every eighth package."""

    def __init__(self, of: int) -> None:
        self.of = of
        self.lines: list[str] = []
        self._seen = 0

    def hear(self, line: str) -> None:
        self.lines.append(line)
        if line.startswith("Collecting "):
            self._seen += 1
            if self._seen % 8 == 0:
                say(f"    {self._seen} of {self.of}: {line.split()[1]}")
        elif line.startswith("Installing collected packages"):
            say("    writing them to disk")


@contextmanager
def _one_at_a_time(supervisor: Supervisor) -> Iterator[None]:
    """Two that start at once must not write into the same virtual environment."""
    handle = os.open(ROOT, os.O_RDONLY)
    try:
        told = False
        while not _taken(handle):
            if not told:
                say("  waiting: another process is installing packages here")
                told = True
            supervisor.check()
            time.sleep(0.2)
        yield
    finally:
        os.close(handle)


def _taken(handle: int) -> bool:
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        return False
    return True
