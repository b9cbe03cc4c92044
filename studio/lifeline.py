"""Ties a process to its parent's life, so that nothing stays behind when the parent is killed, with -9 too.

Run as a program, `python lifeline.py PARENT USER COMMAND…` ties itself to that process and becomes COMMAND, as USER
where that is not "". This file needs the standard library alone, as it runs before any package is installed.
"""

from __future__ import annotations

import ctypes
import os
import pwd
import signal
import sys
import threading
import time

PARENT = "LIFELINE_PARENT"

_PR_SET_PDEATHSIG = 1  # linux/prctl.h; see prctl(2): outlives exec, is not handed on to children
_LOOK_EVERY_SECONDS = 0.5


def tie(parent: int) -> None:
    """Die with the process `parent`, which must be this one's parent; ends this process at once if it is gone."""
    if not _kernel_will():
        threading.Thread(target=_watch, args=(parent,), daemon=True, name="lifeline").start()
    # It may have died before the kernel was asked.
    if os.getppid() != parent:
        os._exit(1)


def tie_if_asked() -> None:
    """Die with the parent that started this command through this file; does nothing in a command started by hand."""
    parent = os.environ.get(PARENT, "")
    if parent == str(os.getppid()):
        tie(int(parent))


def _kernel_will() -> bool:
    if not sys.platform.startswith("linux"):
        return False
    return bool(ctypes.CDLL(None).prctl(_PR_SET_PDEATHSIG, signal.SIGKILL, 0, 0, 0) == 0)


def _watch(parent: int) -> None:
    while os.getppid() == parent:
        time.sleep(_LOOK_EVERY_SECONDS)
    os._exit(1)


def _become(parent: int, user: str, command: list[str]) -> None:
    if user:
        _be(user)
    _kernel_will()  # after the user has changed, which makes the kernel forget it
    if os.getppid() != parent:
        os._exit(1)
    os.environ[PARENT] = str(parent)
    try:
        os.execvp(command[0], command)
    except OSError as error:
        sys.exit(f"{command[0]} cannot be run: {error.strerror}.")


def _be(user: str) -> None:
    entry = pwd.getpwnam(user)
    os.setgid(entry.pw_gid)
    os.initgroups(user, entry.pw_gid)
    os.setuid(entry.pw_uid)
    os.environ |= {"HOME": entry.pw_dir, "USER": user, "LOGNAME": user}
    os.chdir("/")


if __name__ == "__main__":
    _become(int(sys.argv[1]), sys.argv[2], sys.argv[3:])
