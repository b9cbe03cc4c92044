"""deploy/start as a whole, in a copied tree with a tiny manage.py: what is looked at is who lives and who dies."""

from __future__ import annotations

import http.client
import os
import shutil
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
PATIENCE_SECONDS = 30

pytestmark = [
    pytest.mark.servers,
    pytest.mark.skipif(not sys.platform.startswith("linux"), reason="looks at processes through /proc"),
]

MANAGE = """
import signal, sys, time
if sys.argv[1] == "run_engine":
    from studio.lifeline import tie_if_asked
    tie_if_asked()
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(0))
    while True:
        time.sleep(0.1)
print("manage.py did", sys.argv[1])
if sys.argv[1] == "make_demo":
    print("  owner  ada@care.example  a-new-password")
"""

WSGI = """
def application(environ, start_response):
    start_response("200 OK" if environ["PATH_INFO"] == "/healthz" else "404 Not Found", [])
    return [b"{}"]
"""


class Service:
    """One copied tree, and what was started in it."""

    def __init__(self, root: Path, port: int) -> None:
        self.root, self.port = root, port
        self.output = root / "output"
        self.started: list[subprocess.Popen[bytes]] = []

    def start(self, *command: str, **environment: str) -> subprocess.Popen[bytes]:
        """Run a command (deploy/start by itself) from elsewhere, with nothing to read and a pipe's worth of a log."""
        kept = {name: value for name, value in os.environ.items() if name not in ("DATABASE_URL", "REDIS_URL")}
        with self.output.open("ab") as stream:
            process = subprocess.Popen(
                command or (str(self.root / "deploy" / "start"),),
                cwd="/",
                env={**kept, "PORT": str(self.port), "DATA_DIR": str(self.root / "data"), **environment},
                stdin=subprocess.DEVNULL,
                stdout=stream,
                stderr=stream,
            )
        self.started.append(process)
        return process

    def said(self) -> str:
        return self.output.read_text()

    def answers(self) -> bool:
        with closing(http.client.HTTPConnection("127.0.0.1", self.port, timeout=2)) as connection:
            try:
                connection.request("GET", "/healthz")
                with connection.getresponse() as response:
                    return response.status == 200
            except (OSError, http.client.HTTPException):
                return False

    def ready(self) -> bool:
        if any(process.poll() for process in self.started):
            pytest.fail(self.said())
        return "Ready: " in self.said() and self.answers()

    def running(self, word: str = "") -> dict[int, str]:
        """Every process of this tree by its id, those whose command line has `word`."""
        found = {}
        for folder in Path("/proc").iterdir():
            try:
                line = (folder / "cmdline").read_bytes().replace(b"\0", b" ").decode() if folder.name.isdigit() else ""
                ours = str(self.root) in line or os.path.samefile(folder / "cwd", self.root) if line else False
            except OSError:
                continue
            if ours and word in line:
                found[int(folder.name)] = line
        return found


@pytest.fixture
def service(tmp_path: Path) -> Iterator[Service]:
    shutil.copytree(ROOT / "deploy", tmp_path / "deploy", ignore=shutil.ignore_patterns("__pycache__"))
    shutil.copy(ROOT / "requirements.txt", tmp_path)
    (tmp_path / ".venv").symlink_to(ROOT / ".venv")
    (tmp_path / "studio").mkdir()
    for name in ("env.py", "lifeline.py"):
        shutil.copy(ROOT / "studio" / name, tmp_path / "studio")
    (tmp_path / "studio" / "wsgi.py").write_text(WSGI)
    reading = tmp_path / "aftercare" / "core" / "reading"
    reading.mkdir(parents=True)
    (reading / "reader.py").touch()
    (tmp_path / "manage.py").write_text(MANAGE)
    (tmp_path / "output").touch()
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]
    one = Service(tmp_path, port)
    yield one
    for pid in one.running():
        os.kill(pid, signal.SIGKILL)
    for process in one.started:
        process.wait(10)


def soon(condition: Callable[[], object], seconds: float = PATIENCE_SECONDS) -> bool:
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        if condition():
            return True
        time.sleep(0.05)
    return False


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
def test_it_says_what_it_does_serves_and_stops_cleanly(service: Service, number: signal.Signals) -> None:
    started = service.start()

    assert soon(service.ready), service.said()
    steps = ["Packages", "Database", "did migrate", "did collectstatic", "did make_demo", f"127.0.0.1:{service.port}"]
    assert [service.said().find(step) for step in steps] == sorted(service.said().find(step) for step in steps)
    assert -1 not in [service.said().find(step) for step in steps]

    started.send_signal(number)

    assert started.wait(PATIENCE_SECONDS) == 0
    assert service.running() == {}
    assert "Nothing is left running." in service.said()


def test_the_demo_studio_is_made_at_the_first_start_only(service: Service) -> None:
    for _ in range(2):
        started = service.start()
        assert soon(service.answers), service.said()
        started.terminate()
        assert started.wait(PATIENCE_SECONDS) == 0

    assert service.said().count("did migrate") == 2
    assert service.said().count("did make_demo") == 1
    assert service.said().count("a-new-password") == 1
    assert "changepassword ada@care.example" in service.said()
    assert "a-new-password" not in "".join(file.read_text() for file in (service.root / "data").iterdir())


def test_nothing_outlives_its_own_killing(service: Service) -> None:
    started = service.start()
    assert soon(service.ready), service.said()

    started.kill()

    assert soon(lambda: not service.running(), 5), service.running()


def test_nothing_outlives_the_killing_of_its_parent(service: Service) -> None:
    parent = service.start("/bin/sh", "-c", f"{service.root}/deploy/start; true")
    assert soon(service.ready), service.said()
    time.sleep(3)  # the seconds within which a lost parent means "in the background"

    parent.kill()

    assert soon(lambda: not service.running(), 8), service.running()
    assert "the process that started it is gone" in service.said()


def test_started_in_the_background_it_goes_on_when_its_script_has_ended(service: Service) -> None:
    script = service.start("/bin/sh", "-c", f"{service.root}/deploy/start & exit 0")
    assert script.wait(10) == 0

    assert soon(service.ready), service.said()
    time.sleep(1)
    assert service.answers()
    supervisor = min(service.running("deploy/start"))

    os.kill(supervisor, signal.SIGINT)

    assert soon(lambda: not service.running()), service.running()


@pytest.mark.parametrize("member", ["gunicorn", "run_engine"])
def test_a_member_that_is_killed_is_started_again(service: Service, member: str) -> None:
    service.start()
    assert soon(service.ready), service.said()
    assert soon(lambda: service.running(member)), service.said()
    before = set(service.running(member))

    os.kill(min(before), signal.SIGKILL)

    assert soon(lambda: service.running(member) and not before & set(service.running(member))), service.said()
    assert soon(service.answers), service.said()
    assert soon(lambda: "ended (killed by SIGKILL): starting it again" in service.said()), service.said()


def test_a_web_process_killed_under_its_server_is_replaced(service: Service) -> None:
    service.start()
    assert soon(service.ready), service.said()
    before = set(service.running("gunicorn"))

    os.kill(max(before), signal.SIGKILL)

    assert soon(lambda: set(service.running("gunicorn")) - before), service.said()
    assert soon(service.answers), service.said()


def test_a_second_start_is_refused_and_harms_nothing(service: Service) -> None:
    service.start()
    assert soon(service.ready), service.said()

    second = service.start()

    assert second.wait(PATIENCE_SECONDS) == 1
    assert "The service is already running on" in service.said()
    assert service.answers()


def test_a_port_in_use_is_told_before_anything_is_done(service: Service) -> None:
    with socket.socket() as other:
        other.bind(("127.0.0.1", service.port))
        other.listen()
        refused = service.start()

        assert refused.wait(PATIENCE_SECONDS) == 1

    assert f"Port {service.port} cannot be used" in service.said()
    assert "Packages" not in service.said()


@pytest.mark.parametrize("port", ["http", "0", "70000", "-1"])
def test_a_port_that_is_none_is_refused_with_the_cure(service: Service, port: str) -> None:
    refused = service.start(PORT=port)

    assert refused.wait(PATIENCE_SECONDS) == 1
    assert f"PORT={port} is not a port: write a number from 1 to 65535" in service.said()


def test_a_python_without_venv_is_told_what_to_install(service: Service) -> None:
    (service.root / ".venv").unlink()
    hide = "import runpy, sys; sys.modules['ensurepip'] = None; sys.argv[1:] = []; "

    refused = service.start(
        sys.executable, "-c", f"{hide}runpy.run_path('{service.root}/deploy/start', None, '__main__')"
    )

    assert refused.wait(PATIENCE_SECONDS) == 1
    assert "came without venv. On Debian or Ubuntu: apt-get install python3." in service.said()


def test_a_step_that_fails_ends_the_start_with_its_name(service: Service) -> None:
    (service.root / "manage.py").write_text("import sys; print('the disk is full'); sys.exit(3)")

    failed = service.start()

    assert failed.wait(PATIENCE_SECONDS) == 1
    assert "the disk is full" in service.said()
    assert "manage.py migrate failed" in service.said()
    assert service.running() == {}


def test_it_stops_in_the_middle_of_a_step(service: Service) -> None:
    (service.root / "manage.py").write_text("import time; print('busy', flush=True); time.sleep(60)")
    started = service.start()
    assert soon(lambda: "busy" in service.said()), service.said()

    started.send_signal(signal.SIGINT)

    assert started.wait(10) == 0
    assert service.running() == {}


def test_closed_streams_do_not_stop_it(service: Service) -> None:
    started = service.start("/bin/sh", "-c", f"exec {service.root}/deploy/start <&- >&- 2>&-")

    assert soon(service.answers)
    started.send_signal(signal.SIGTERM)
    assert started.wait(PATIENCE_SECONDS) == 0
    assert service.running() == {}
