"""What the rules do not know: ``python tests/bench/left_out.py [--folds 8] [--show]``, five to ten minutes.

On what it was trained with, the second opinion remembers the very reply, and hides where the rules fail. Here each
group of the seen hands is read with one that was trained on the others. Prints the scores of all of them together;
``--show`` also what went wrong: the part, the urgency by label and as read, whether a person was left to read it.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from dataclasses import asdict
from pathlib import Path
from unittest import mock

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))  # run as a script from anywhere

from aftercare.core.reading import Reading, read, second
from tests.aftercare.core.reading.labelled import CORPUS, URGENT, Row, rows, score
from tests.bench.train_reader import groups, material

Read = tuple[str, Row, Reading]


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--folds", type=int, default=8)
    parser.add_argument("--show", action="store_true")
    given = parser.parse_args()
    found = list(_read(given.folds))
    readings = iter([reading for _, _, reading in found])
    for name, value in asdict(score([row for _, row, _ in found], lambda _text: next(readings))).items():
        print(f"{name:<16} {value:8.4f}")
    for one in found if given.show else ():
        if (wrong := _wrong(*one[1:])) is not None:
            hand, row, reading = one
            left = "to a person" if reading.unread else ""
            print(f"{wrong:<12} {hand}: {row['urgency']} read as {reading.urgency} {left}: {row['text']!r}")


def _read(folds: int) -> Iterator[Read]:
    learned = material()
    for group in groups(folds):
        weights = learned.learned(without=group)
        with mock.patch.object(second, "_weights", lambda weights=weights: weights):
            for hand in group:
                yield from ((hand, row, read(row["text"])) for row in rows(CORPUS / f"{hand}.jsonl"))


def _wrong(row: Row, reading: Reading) -> str | None:
    """Return what is the worst that is wrong with a reading, None where that is no more than a topic or a sign."""
    urgent = row["urgency"] in URGENT
    if urgent and reading.urgency == "none" and not reading.unread and "irritation" not in reading.about:
        return "to nobody"
    if row["urgency"] == "emergency" and reading.urgency != "emergency":
        return "emergency"
    if urgent and reading.urgency not in URGENT:
        return "current"
    if row["urgency"] == "none" and reading.urgency in URGENT:
        return "cries wolf"
    if ("stop" in row["about"]) != ("stop" in reading.about):
        return "stop"
    known = row["lang"] in ("en", "es") and row["about"] != ["other"]
    return "unread" if known and reading.unread else None


if __name__ == "__main__":
    main()
