"""Trains the reader's second opinion: ``python tests/bench/train_reader.py CORPUS.jsonl … [--skip-every 3]``.

Reads labelled replies, one JSON object a line with "text", "urgency" and "about", and writes the weights that
`aftercare.core.reading.second` loads. ``--skip-every 3`` leaves every third line of each file unseen. Prints how often
the model is right on replies that it was not trained on, by five-fold cross-validation.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
from scipy.optimize import minimize

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))  # run as a script from anywhere

from aftercare.core.reading import features, quoting, second  # noqa: E402

SMOOTH = 0.03  # ridge penalty, by cross-validation
FOLDS = 5
Label = Callable[[dict[str, Any]], bool]
LABELS: dict[str, Label] = {
    "sign": lambda row: row["urgency"] in ("emergency", "same_day"),
    "emergency": lambda row: row["urgency"] == "emergency",
    "stop": lambda row: "stop" in row["about"],
}
THRESHOLDS = {"sign": second.SIGN, "emergency": second.EMERGENCY, "stop": second.STOP}


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("corpus", type=Path, nargs="+")
    parser.add_argument("--skip-every", type=int, default=0)
    parser.add_argument("--out", type=Path, default=second.WEIGHTS)
    options = parser.parse_args()
    rows = [row for file in options.corpus for row in _rows(file, options.skip_every)]
    matrix = _matrix(rows)
    weights = np.zeros((features.SIZE, len(second.HEADS)))
    bias = np.zeros(len(second.HEADS))
    for place, head in enumerate(second.HEADS):
        truth = np.array([LABELS[head](row) for row in rows], dtype=float)
        _report(head, matrix, truth)
        fitted = _fit(matrix, truth)
        weights[:, place], bias[place] = fitted[:-1], fitted[-1]
    np.savez_compressed(options.out, weights=weights.astype(np.float16), bias=bias.astype(np.float32))
    print(f"{len(rows)} replies; {options.out} is {options.out.stat().st_size:,} bytes")


def _rows(file: Path, skip_every: int) -> list[dict[str, Any]]:
    lines = file.read_text(encoding="utf-8").splitlines()
    return [
        json.loads(line)
        for number, line in enumerate(lines, start=1)
        if line.strip() and not (skip_every and number % skip_every == 0)
    ]


def _matrix(rows: list[dict[str, Any]]) -> Any:
    matrix = np.zeros((len(rows), features.SIZE))
    for place, row in enumerate(rows):
        found = features.of(quoting.split(row["text"]).answer)
        matrix[place, found] = 1 / max(1, len(found)) ** 0.5
    return matrix


def _fit(matrix: Any, truth: Any) -> Any:
    def loss(weights: Any) -> tuple[float, Any]:
        scores = matrix @ weights[:-1] + weights[-1]
        wrong = 1 / (1 + np.exp(-scores)) - truth
        value = np.sum(np.logaddexp(0, scores) - truth * scores) + SMOOTH / 2 * weights[:-1] @ weights[:-1]
        return value, np.r_[matrix.T @ wrong + SMOOTH * weights[:-1], wrong.sum()]

    return minimize(loss, np.zeros(matrix.shape[1] + 1), jac=True, method="L-BFGS-B", options={"maxiter": 200}).x


def _report(head: str, matrix: Any, truth: Any) -> None:
    fold = np.random.default_rng(7).permutation(len(truth)) % FOLDS
    chance = np.zeros(len(truth))
    for one in range(FOLDS):
        weights = _fit(matrix[fold != one], truth[fold != one])
        chance[fold == one] = 1 / (1 + np.exp(-(matrix[fold == one] @ weights[:-1] + weights[-1])))
    said = chance > THRESHOLDS[head]
    print(
        f"{head}: above {THRESHOLDS[head]} finds {said[truth == 1].mean():.0%} of the unseen, "
        f"wrongly {said[truth == 0].mean():.1%}"
    )


if __name__ == "__main__":
    main()
