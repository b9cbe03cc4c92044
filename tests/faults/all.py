"""Every fault that the service must survive, and one table of what became of every message.

    python tests/faults/all.py [--small] [NAME …]

Prints a line a fault: messages, how often each arrived by the judge's own count, what is unsure. Exit 1 where a line
does not hold.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.faults import bind, workers  # noqa: E402  found by the path above
from tests.faults.judging import Result  # noqa: E402
from tests.faults.outside import FAULTS  # noqa: E402

REGISTRY: dict[str, Callable[[Path, bool], Result]] = {
    "killed": bind.killed_again_and_again,
    "dropped": bind.centre_drops,
    "mute": bind.centre_is_mute,
    "gone": bind.centre_is_gone,
    "throttled": bind.centre_throttles,
    "database": bind.database_restarts,
    "receipts": bind.receipts_in_disorder,
    "workers": workers.workers_killed,
    "redis": workers.redis_killed,
    "frozen": workers.redis_frozen,
}


def _outside(name: str) -> Callable[[Path, bool], Result]:
    """Return a fault of what lies outside the service as one of these: it counts and judges by itself."""
    happen, why_not = FAULTS[name]

    def run(folder: Path, small: bool) -> Result:
        if reason := why_not():
            return Result(name, seen={"skipped": reason})
        figures, faults = happen(folder, small)
        return Result(name, seen=dict(figures), faults=faults)

    return run


REGISTRY |= {name: _outside(name) for name in FAULTS}


def main(names: list[str], *, small: bool) -> int:
    failed = False
    for name in names or list(REGISTRY):
        began = time.monotonic()
        with tempfile.TemporaryDirectory(prefix=f"fault-{name}-") as folder:
            try:
                result = REGISTRY[name](Path(folder), small)
            except Exception as error:  # one that breaks must not hide the others
                result = Result(name, faults=[f"{type(error).__name__}: {error}"])
                for log in Path(folder).glob("*.log"):
                    print(f"--- {log.name}\n{log.read_text()[-2000:]}", file=sys.stderr)
        failed |= bool(result.faults)
        print(f"{result.row()}  ({time.monotonic() - began:.0f} s)", flush=True)
    return int(failed)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("names", nargs="*", choices=[*REGISTRY, []], metavar="NAME", help=", ".join(REGISTRY))
    parser.add_argument("--small", action="store_true", help="each once and with few messages, as the tests do")
    chosen = parser.parse_args()
    sys.exit(main(chosen.names, small=chosen.small))
