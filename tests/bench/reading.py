"""How well replies are read, and how fast: ``python tests/bench/reading.py [FILE.jsonl … | --unseen]``, no database.

Without anything it reads the part of the corpus that the reader was made with; a FILE is labelled as it is.
Exits 1 where a line is not met.
"""

from __future__ import annotations

import argparse
import json
import resource
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))  # run as a script from anywhere

_BEGAN = time.perf_counter()
from aftercare.core.reading import read  # noqa: E402

read("The first reply loads the weights.")
LOADED = time.perf_counter() - _BEGAN

from tests.aftercare.core.reading.labelled import Row, Scores, score, seen  # noqa: E402

LEAST = {"emergencies": 0.98, "current": 0.97, "reached": 1.0, "stops": 1.0, "signs": 0.93, "topics": 0.90}
MOST = {"wolf": 0.03, "false_stops": 0.01, "unread": 0.06}
TOLD = ("unread_en_es", "denied", "sides")  # told beside the table, without a limit
A_SECOND, LOAD, MEMORY = 2_000, 1.0, 200  # replies, seconds, MiB
RUNS = 3  # the best counts: by then the words are known, as in a service that runs


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("file", nargs="*", type=Path)
    parser.add_argument("--unseen", action="store_true")
    given = parser.parse_args()
    rows = seen(unseen=given.unseen)
    if given.file:
        lines = [line for file in given.file for line in file.read_text(encoding="utf-8").split("\n") if line.strip()]
        rows = [json.loads(line) for line in lines]
    scores = score(rows, read)
    kept = [_line(name, getattr(scores, name), limit, least=True) for name, limit in LEAST.items()]
    kept += [_line(name, getattr(scores, name), limit, least=False) for name, limit in MOST.items()]
    _tell(scores)
    memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    kept.append(_line("replies a second", max(_speed(rows) for _ in range(RUNS)), A_SECOND, least=True, digits=0))
    kept.append(_line("seconds to load", LOADED, LOAD, least=False, digits=2))
    kept.append(_line("MiB in all", memory, MEMORY, least=False, digits=0))
    print(f"{len(rows)} replies")
    return 0 if all(kept) else 1


def _speed(rows: list[Row]) -> float:
    began = time.process_time()
    for row in rows:
        read(row["text"])
    return len(rows) / (time.process_time() - began)


def _tell(scores: Scores) -> None:
    for name in TOLD:
        print(f"{name:<16} {getattr(scores, name):8.3f}")


def _line(name: str, value: float, limit: float, *, least: bool, digits: int = 3) -> bool:
    kept = value >= limit if least else value <= limit
    bound = f"{'at least' if least else 'at most'} {limit:<5g}"
    print(f"{name:<16} {value:8.{digits}f}   {bound} {'kept' if kept else 'NOT KEPT'}")
    return kept


if __name__ == "__main__":
    raise SystemExit(main())
