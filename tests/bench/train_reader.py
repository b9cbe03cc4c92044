"""Trains the reader's second opinion: ``python tests/bench/train_reader.py``, on the hands that may be seen.

Writes the weights that `aftercare.core.reading.second` loads, and prints how often the model is right on replies that
it was not trained on, by five-fold cross-validation.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

import numpy as np
from scipy.optimize import minimize
from scipy.sparse import csr_matrix

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))  # run as a script from anywhere

from aftercare.core.reading import features, second  # noqa: E402
from aftercare.core.reading.reader import unexplained  # noqa: E402
from tests.aftercare.core.reading.labelled import seen  # noqa: E402

SMOOTH = 0.03  # ridge penalty, by cross-validation
FOLDS = 5


def _is_about(topic: str, row: dict[str, Any]) -> bool:
    return topic in row["about"]


Label = Callable[[dict[str, Any]], bool]
LABELS: dict[str, Label] = {
    "sign": lambda row: row["urgency"] in ("emergency", "same_day"),
    "emergency": lambda row: row["urgency"] == "emergency",
    **{topic: partial(_is_about, topic) for topic in ("stop", *second.TOPICS)},
}
THRESHOLDS = {"sign": second.SIGN, "emergency": second.EMERGENCY, "stop": second.STOP}


def main() -> None:
    rows = seen()
    matrix = _matrix(rows)
    weights = np.zeros((features.SIZE, len(second.HEADS)))
    bias = np.zeros(len(second.HEADS))
    for place, head in enumerate(second.HEADS):
        truth = np.array([LABELS[head](row) for row in rows], dtype=float)
        _report(head, matrix, truth)
        fitted = _fit(matrix, truth)
        weights[:, place], bias[place] = fitted[:-1], fitted[-1]
    np.savez_compressed(second.WEIGHTS, weights=weights.astype(np.float16), bias=bias.astype(np.float32))
    print(f"{len(rows)} replies; {second.WEIGHTS} is {second.WEIGHTS.stat().st_size:,} bytes")


def _matrix(rows: list[dict[str, Any]]) -> Any:
    values: list[float] = []
    columns: list[int] = []
    ends = [0]
    for row in rows:
        found = features.of(unexplained(row["text"]))
        values += [1 / max(1, len(found)) ** 0.5] * len(found)
        columns += found
        ends.append(len(columns))
    return csr_matrix((values, columns, ends), shape=(len(rows), features.SIZE))


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
    said = chance > THRESHOLDS.get(head, second.TOPIC)
    print(
        f"{head}: above {THRESHOLDS.get(head, second.TOPIC)} finds {said[truth == 1].mean():.0%} of the unseen, "
        f"wrongly {said[truth == 0].mean():.1%}"
    )


if __name__ == "__main__":
    main()
