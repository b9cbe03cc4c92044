"""How well replies are read, and how fast: ``python tests/bench/reading.py [FILE.jsonl | --unseen]``, no database.

Without anything it reads the two thirds of the corpus that the reader was made with; FILE is labelled as they are.
Exits 1 where a line is not met.
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))  # run as a script from anywhere

from aftercare.core.reading import read  # noqa: E402
from tests.aftercare.core.reading.labelled import Scores, score, seen

LEAST = {"emergencies": 0.98, "current": 0.97, "reached": 1.0, "stops": 1.0, "signs": 0.93, "topics": 0.90}
MOST = {"wolf": 0.03, "false_stops": 0.01, "unread": 0.06}
A_SECOND = 2_000


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("file", nargs="?", type=Path)
    parser.add_argument("--unseen", action="store_true")
    given = parser.parse_args()
    rows = seen(unseen=given.unseen)
    if given.file:
        rows = [json.loads(line) for line in given.file.read_text(encoding="utf-8").splitlines()]
    read("warm up")
    began = time.perf_counter()
    scores = score(rows, read)
    speed = len(rows) / (time.perf_counter() - began)
    kept = [_line(scores, name, limit, least=True) for name, limit in LEAST.items()]
    kept += [_line(scores, name, limit, least=False) for name, limit in MOST.items()]
    print(f"{'replies a second':<16} {speed:8.0f}   at least {A_SECOND}")
    return 0 if all(kept) and speed >= A_SECOND else 1


def _line(scores: Scores, name: str, limit: float, *, least: bool) -> bool:
    share = float(getattr(scores, name))
    kept = share >= limit if least else share <= limit
    print(
        f"{name:<16} {share:8.3f}   {'at least' if least else 'at most'} {limit:<5g} {'kept' if kept else 'NOT KEPT'}"
    )
    return kept


if __name__ == "__main__":
    raise SystemExit(main())
