#!/usr/bin/env python3
"""Faults of what lies outside the service: carriers, mail servers, providers, a gateway, the disk. One table of counts.

python tests/faults/outside.py [--small] [NAME …]
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections.abc import Callable
from functools import partial
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests import servers  # noqa: E402  found by the path above
from tests.faults import disk_full, http_sms, kannel_killed, mail_provider, smtp, webhook  # noqa: E402

Happening = Callable[[Path, bool], tuple[dict[str, int], list[str]]]


def no_postgres() -> str:
    return "" if servers.has_postgres() else "PostgreSQL is not installed"


def runs_anywhere() -> str:
    return ""


FAULTS: dict[str, tuple[Happening, Callable[[], str]]] = {
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
    parser.add_argument("--small", action="store_true")
    options = parser.parse_args()
    if unknown := set(options.names) - set(FAULTS):
        parser.error(f"there is no fault {', '.join(sorted(unknown))}: write some of {', '.join(FAULTS)}")
    failed = 0
    for name in options.names or FAULTS:
        happen, why_not = FAULTS[name]
        if reason := why_not():
            print(f"{name:15} skipped: {reason}")
            continue
        with tempfile.TemporaryDirectory(prefix="fault-", ignore_cleanup_errors=True) as folder:
            figures, faults = happen(Path(folder), options.small)
        print(f"{name:15}", ", ".join(f"{what} {number}" for what, number in figures.items()), flush=True)
        for fault in faults:
            print(f"{'':15} FAULT: {fault}", flush=True)
        failed += bool(faults)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
