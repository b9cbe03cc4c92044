"""Runs programs, starts again the one that dies, and leaves nothing running when it ends, however it ends."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path
from types import FrameType
from typing import IO

ROOT = Path(__file__).resolve().parent.parent
_LIFELINE = ROOT / "studio" / "lifeline.py"
_TICK_SECONDS = 0.2
_BACKGROUNDED_WITHIN_SECONDS = 3.0
_STEADY_AFTER_SECONDS = 30.0
_LONGEST_WAIT_SECONDS = 30.0
_Ending = tuple["subprocess.Popen[str]", float, signal.Signals]  # the seconds it may take, and the signal to end by


class Stopped(Exception):  # no error: what was asked for
    """Someone asked for the end: a signal, or the death of the process that started this one."""


class StepFailed(Exception):
    """A step on the way could not be done; the message says which, and the cure."""


def say(line: str) -> None:
    """Print one line at once. Nobody may be reading any more, which is no reason to stop."""
    with suppress(OSError, ValueError):
        print(line, flush=True)


@dataclass(frozen=True, slots=True)
class Program:
    """What to keep running: its name to people, its command, and the seconds it may take to end by itself.

    `user` is who it runs as where root starts it; "" is whoever starts it.
    """

    name: str
    command: Sequence[str]
    environment: Mapping[str, str] = field(default_factory=dict)
    grace: float = 10.0
    user: str = ""
    ended_by: signal.Signals = signal.SIGTERM


class Parent:
    """The process that started this one. When it dies, so does this.

    A parent that is gone within the first seconds meant to leave this process running (`deploy/start &` in a script),
    and PID 1 (systemd, a container) looks after it anyway: neither ties it.
    """

    def __init__(self) -> None:
        self._pid = os.getppid()
        self._tied = self._pid > 1
        self._background_until = time.monotonic() + _BACKGROUNDED_WITHIN_SECONDS

    def gone(self) -> bool:
        if not self._tied or os.getppid() == self._pid:
            return False
        if time.monotonic() < self._background_until:
            say(f"Started in the background: it goes on by itself until it gets SIGTERM (kill {os.getpid()}).")
            self._tied = False
            return False
        return True


class Supervisor:
    """Every program it starts leads a process group of its own and dies with it (see studio/lifeline.py).

    To be made and used in the main thread: the kernel ties a child to the thread that started it.
    """

    def __init__(self, environment: Mapping[str, str] | None = None) -> None:
        self.environment = {**os.environ, **(environment or {})}
        self._parent = Parent()
        self._signals = 0
        self._behind: list[_Kept] = []
        for number in (signal.SIGINT, signal.SIGTERM):
            signal.signal(number, self._asked_to_stop)
        # nohup's wish is left alone.
        if signal.getsignal(signal.SIGHUP) is not signal.SIG_IGN:
            signal.signal(signal.SIGHUP, self._asked_to_stop)

    def check(self) -> None:
        """Raise Stopped if the end was asked for."""
        if self._signals:
            raise Stopped("asked to stop")
        if self._parent.gone():
            raise Stopped("the process that started it is gone")

    def run(
        self,
        command: Sequence[str],
        hear: Callable[[str], None] | None = None,
        environment: Mapping[str, str] | None = None,
        user: str = "",
    ) -> int:
        """Run one step to its end and give its exit code; `hear` gets each line that it says."""
        step = Program(command[0], command, environment or {}, user=user)
        child = self._spawn(step, subprocess.PIPE if hear else None)
        listener = threading.Thread(target=_listen, args=(child.stdout, hear), daemon=True)
        if hear:
            listener.start()
        try:
            while child.poll() is None:
                self.check()
                time.sleep(_TICK_SECONDS / 4)
        finally:
            _end([(child, 3.0, step.ended_by)], lambda: self._signals > 1)
        if hear:
            listener.join(3)
        return child.returncode

    @contextmanager
    def behind(self, programs: Sequence[Program]) -> Iterator[Callable[[], list[str]]]:
        """Have these programs run behind all steps and programs within; they end after them.

        Gives a call that names those that are not running just now. Within `keep` they are started again, too.
        """
        kept = [_Kept(program, self._spawn(program)) for program in programs]
        self._behind += kept
        try:
            yield lambda: [one.program.name for one in kept if one.child.poll() is not None]
        finally:
            for one in kept:
                self._behind.remove(one)
            patient = self._signals
            _end(map(_ending_of, kept), lambda: self._signals > patient)

    def keep(self, programs: Sequence[Program], started: Callable[[], None]) -> None:
        """Keep the programs running until the end is asked for, then end them all; `started` is called once."""
        kept = [_Kept(program, self._spawn(program)) for program in programs]
        try:
            started()
            while True:
                self.check()
                for one in (*self._behind, *kept):
                    self._look_after(one)
                time.sleep(_TICK_SECONDS)
        except Stopped as stopped:
            say(f"Stopping: {stopped}.")
            raise
        finally:
            # Once more and at once, if someone insists.
            patient = self._signals
            _end(map(_ending_of, kept), lambda: self._signals > patient)

    def _look_after(self, one: _Kept) -> None:
        code = one.child.poll()
        if code is None:
            return
        now = time.monotonic()
        if one.again_at is None:
            _kill_group(one.child)
            one.failures = 1 if now - one.since > _STEADY_AFTER_SECONDS else one.failures + 1
            wait = min(0.5 * 2 ** (one.failures - 1), _LONGEST_WAIT_SECONDS)
            one.again_at = now + wait
            say(f"{one.program.name} ended ({_ending(code)}): starting it again in {wait:g} s.")
        elif now >= one.again_at:
            one.child, one.since, one.again_at = self._spawn(one.program), now, None

    def _spawn(self, program: Program, stdout: int | None = None) -> subprocess.Popen[str]:
        return subprocess.Popen(
            [sys.executable, str(_LIFELINE), str(os.getpid()), program.user, *program.command],
            cwd=ROOT,
            env={**self.environment, **program.environment},
            stdin=subprocess.DEVNULL,
            stdout=stdout,
            stderr=subprocess.STDOUT if stdout else None,
            text=True,
            errors="replace",
            start_new_session=True,
        )

    def _asked_to_stop(self, _number: int, _frame: FrameType | None) -> None:
        self._signals += 1


@dataclass(slots=True)
class _Kept:
    program: Program
    child: subprocess.Popen[str]
    since: float = field(default_factory=time.monotonic)
    failures: int = 0
    again_at: float | None = None


def _ending_of(one: _Kept) -> _Ending:
    return (one.child, one.program.grace, one.program.ended_by)


def _end(children: Iterable[_Ending], impatient: Callable[[], bool]) -> None:
    """Ask every child to end, wait as long as each may take, then kill what is left of its group."""
    began = time.monotonic()
    waiting = list(children)
    for child, _, by in waiting:
        if child.poll() is None:
            child.send_signal(by)
    for child, grace, _ in waiting:
        while child.poll() is None and time.monotonic() < began + grace and not impatient():
            time.sleep(0.05)
        _kill_group(child)
        child.wait()


def _kill_group(child: subprocess.Popen[str]) -> None:
    with suppress(ProcessLookupError, PermissionError):
        os.killpg(child.pid, signal.SIGKILL)


def _listen(stream: IO[str] | None, hear: Callable[[str], None] | None) -> None:
    if stream and hear:
        for line in stream:
            hear(line.rstrip())


def _ending(code: int) -> str:
    return f"exit code {code}" if code >= 0 else f"killed by {signal.Signals(-code).name}"
