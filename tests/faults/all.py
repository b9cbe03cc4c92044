#!/usr/bin/env python3
"""Every fault that the service must survive, and one table of what became of every message.

python tests/faults/all.py [--small] [NAME …]

Prints a line of counts a fault and what must not be below it. Exit 1 where a line does not hold.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests import servers  # found by the path above
from tests.faults import (
    bind,
    disk_full,
    http_sms,
    kannel_killed,
    mail_provider,
    smtp,
    webhook,
    workers,
)

Happening = Callable[[Path, bool], tuple[dict[str, int], list[str]]]


def no_postgres() -> str:
    return "" if servers.has_postgres() else "PostgreSQL is not installed"


def no_servers() -> str:
    return no_postgres() or ("" if servers.has_redis() else "Redis is not installed")


def runs_anywhere() -> str:
    return ""


FAULTS: dict[str, tuple[Happening, Callable[[], str]]] = {
    "killed": (bind.killed, no_postgres),
    "killed_sqlite": (bind.killed_sqlite, runs_anywhere),
    "dropped": (bind.dropped, no_postgres),
    "mute": (bind.mute, no_postgres),
    "gone": (bind.gone, no_postgres),
    "throttled": (bind.throttled, no_postgres),
    "database": (bind.database, no_postgres),
    "receipts": (bind.receipts, no_postgres),
    "receipts_late": (bind.receipts_late, no_postgres),
    "workers": (workers.killed, no_servers),
    "workers_database": (workers.database, no_servers),
    "redis_killed": (workers.redis_killed, no_servers),
    "redis_frozen": (workers.redis_frozen, no_servers),
    "webhook": (webhook.happen, no_postgres),
    "webhook_sqlite": (partial(webhook.happen, postgres=False), runs_anywhere),
    "smtp": (smtp.happen, runs_anywhere),
    "http_sms": (http_sms.happen, runs_anywhere),
    "http_sms_keys": (partial(http_sms.happen, keys=True), runs_anywhere),
    "postmark": (mail_provider.happen, runs_anywhere),
    "resend": (partial(mail_provider.happen, name="resend"), runs_anywhere),
    "kannel_killed": (kannel_killed.happen, kannel_killed.why_not),
    "disk_full": (disk_full.happen, disk_full.why_not),
}


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("names", nargs="*", metavar="NAME", help=f"of {', '.join(FAULTS)}; without: all")
    parser.add_argument("--small", action="store_true", help="each once and with few messages, as the tests do")
    options = parser.parse_args()
    if unknown := set(options.names) - set(FAULTS):
        parser.error(f"there is no fault {', '.join(sorted(unknown))}: write some of {', '.join(FAULTS)}")
    failed = 0
    for name in options.names or FAULTS:
        happen, why_not = FAULTS[name]
        if reason := why_not():
            print(f"{name:15} not shown: {reason}")
            continue
        began = time.monotonic()
        with tempfile.TemporaryDirectory(prefix="fault-", ignore_cleanup_errors=True) as folder:
            try:
                figures, faults = happen(Path(folder), options.small)
            except Exception as error:  # one that breaks must not hide the others
                figures, faults = {}, [f"{type(error).__name__}: {error}", *_last_words(Path(folder))]
        counted = ", ".join(f"{what} {number}" for what, number in figures.items())
        print(f"{name:15} {counted} ({time.monotonic() - began:.0f} s)", flush=True)
        for fault in faults:
            print(f"{'':15} FAULT: {fault}", flush=True)
        failed += bool(faults)
    return 1 if failed else 0


def _last_words(folder: Path) -> list[str]:
    """Return the ends of the logs that a fault left behind."""
    return [f"{log.name}: {log.read_text(errors='replace')[-800:]}" for log in folder.glob("*.log")]


if __name__ == "__main__":
    sys.exit(main())
