"""What deploy/test does: packages, then every check of the house, each with its seconds, the tests last."""

from __future__ import annotations

import importlib.util
import os
import secrets
import shutil
import sys
import tempfile
import time
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from deploy import packages
from deploy.supervise import ROOT, StepFailed, Stopped, Supervisor, say

_USAGE = """\
deploy/test                  installs what the tests need, then runs every check and every test
deploy/test PYTEST-ARGUMENT… runs those tests only: deploy/test -k segments, deploy/test tests/studio
Without root or sudo, tests that need system packages are skipped and named at the end (a failure where CI=true).
"""
_BIN = packages.VENV / "bin"
# The long tests stand together: whoever is through with the short ones takes some of them over.
_PYTEST = ("pytest", "-n", "2", "--dist=worksteal", "--durations=5")
# What the service itself reads from the environment must not reach its tests.
_NOT_FOR_TESTS = ("ANYMAIL_", "CACHE_", "DATABASE_", "EMAIL_", "PUBLIC_", "REDIS_", "SECRET_", "SMPP_", "SMS_")


@dataclass(frozen=True, slots=True)
class SystemPackage:
    """A package of the system by Debian's name, and the files of which any tells that it is there."""

    name: str
    anywhere: tuple[str, ...]

    def missing(self) -> bool:
        return not any(shutil.which(one) or any(Path("/").glob(one.removeprefix("/"))) for one in self.anywhere)


SYSTEM_PACKAGES = (
    SystemPackage("chromium", ("chromium", "chromium-browser")),
    SystemPackage("postgresql", ("initdb", "/usr/lib/postgresql/*/bin/initdb")),
    SystemPackage("redis-server", ("redis-server", "valkey-server")),
    SystemPackage("kannel", ("bearerbox",)),
    SystemPackage("kannel-extras", ("/usr/lib/kannel/test/fakesmsc",)),
    SystemPackage("openssl", ("openssl",)),
    SystemPackage("libfaketime", ("/usr/lib/*/faketime/libfaketime.so.1",)),
    SystemPackage("fonts-dejavu-core", ("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf",)),
)


@dataclass(frozen=True, slots=True)
class Check:
    """One check of the house: quiet unless it fails, but for the tests, which are heard as they go."""

    name: str
    command: Sequence[str]
    environment: Mapping[str, str] = field(default_factory=dict)
    quiet: bool = True


def main(arguments: Sequence[str]) -> int:
    if set(arguments) & {"-h", "--help"}:
        say(_USAGE)
        return 0
    try:
        return _test(arguments)
    except StepFailed as failure:
        say(f"\n{failure}")
        return 1
    except Stopped as stopped:
        say(f"\nStopped: {stopped}.")
        return 130


def _test(arguments: Sequence[str]) -> int:
    with tempfile.TemporaryDirectory(prefix="test-data-") as data:
        for name in [name for name in os.environ if name.startswith(_NOT_FOR_TESTS)]:
            del os.environ[name]
        supervisor = Supervisor({"DATA_DIR": data})
        missing = _install(supervisor)
        checks = [Check("tests", [*_PYTEST, *arguments], quiet=False)]
        results = [_run(supervisor, check) for check in (checks if arguments else [*house(), *checks])]
    for line, _ in results:
        say(line)
    failed = not all(good for _, good in results)
    if missing:
        say(f"Skipped, where a test needs it: {', '.join(missing)} (not installed; needs root or sudo and apt-get).")
        failed = failed or os.environ.get("CI") == "true"
    return int(failed)


def house() -> list[Check]:
    """Every check beside the tests. The settings are checked as deploy/env.example would have them in use."""
    python, scripts = "python", ["deploy/start", "deploy/test"]
    example = {**read_example(ROOT / "deploy" / "env.example"), "SECRET_KEY": secrets.token_urlsafe(50)}
    return [
        Check("style", ["ruff", "check", ".", *scripts]),
        Check("format", ["ruff", "format", "--check", ".", *scripts]),
        Check("types", ["mypy", "."]),
        Check("layers", ["lint-imports"]),
        Check("templates", ["djlint", "--lint", "templates"]),
        Check("migrations", [python, "manage.py", "makemigrations", "--check", "--dry-run"]),
        Check("settings", [python, "manage.py", "check", "--deploy", "--fail-level", "WARNING"], example),
    ]


def read_example(file: Path) -> dict[str, str]:
    """Read the settings that a file of NAME=value lines gives; its comments are for people."""
    lines = (line.strip() for line in file.read_text(encoding="utf-8").splitlines())
    pairs = (line.partition("=") for line in lines if line and not line.startswith("#"))
    return {name: value for name, _, value in pairs}


def _run(supervisor: Supervisor, check: Check) -> tuple[str, bool]:
    say(f"== {check.name}")
    began = time.monotonic()
    heard: list[str] = []
    command = [str(_BIN / check.command[0]), *check.command[1:]]
    good = supervisor.run(command, heard.append if check.quiet else None, check.environment) == 0
    if not good:
        for line in heard:
            say(f"   {line}")
    line = f"== {check.name}: {'ok' if good else 'FAILED'} in {time.monotonic() - began:.1f} s"
    say(line)
    return line, good


def _install(supervisor: Supervisor) -> list[str]:
    """Install what is needed; gives the system packages that could not be."""
    wanted = [package for package in SYSTEM_PACKAGES if package.missing()]
    names = [package.name for package in wanted]
    if importlib.util.find_spec("ensurepip") is None:
        names.append(f"python{sys.version_info.major}.{sys.version_info.minor}-venv")
    as_root = _as_root()
    if names and as_root is not None:
        say(f"System packages: {', '.join(names)}")
        for command in (["update"], ["install", "-y", "--no-install-recommends", *names]):
            _apt(supervisor, [*as_root, "env", "DEBIAN_FRONTEND=noninteractive", "apt-get", "-q", *command])
    say("Packages")
    packages.ensure(supervisor, "requirements.txt", "tests/requirements.txt")
    return [package.name for package in wanted if package.missing()]


def _apt(supervisor: Supervisor, command: Sequence[str]) -> None:
    heard: list[str] = []
    if supervisor.run(command, heard.append):
        for line in heard[-10:]:
            say(f"   {line}")


def _as_root() -> list[str] | None:
    """Give what to put before a command that root must run, or None where that cannot be."""
    if not shutil.which("apt-get"):
        return None
    if os.geteuid() == 0:
        return []
    return ["sudo", "-n"] if shutil.which("sudo") else None
