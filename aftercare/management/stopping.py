"""How a command that runs on and on is asked to end."""

from __future__ import annotations

import signal
import threading
from types import FrameType


def when_asked() -> threading.Event:
    """Return an event that SIGTERM or Ctrl-C sets from now on, in place of ending the process."""
    stop = threading.Event()

    def end(_number: int, _frame: FrameType | None) -> None:
        stop.set()

    signal.signal(signal.SIGTERM, end)
    signal.signal(signal.SIGINT, end)
    return stop
