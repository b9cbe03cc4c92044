"""Trains the reader's second opinion: ``python tests/bench/train_reader.py [--by-hand]``.

Writes the weights that `aftercare.core.reading.second` loads. With ``--by-hand`` it writes nothing: each hand that no
rule was made with is read with weights that never saw it, and the table of `tests/bench/reading.py` is printed of them.
"""

from __future__ import annotations

import argparse
import sys
from dataclasses import asdict
from pathlib import Path
from typing import Any

import numpy as np
from scipy.optimize import minimize
from scipy.sparse import csr_matrix

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))  # run as a script from anywhere

from aftercare.core.reading import features, read, second  # noqa: E402
from aftercare.core.reading.reader import by_rules  # noqa: E402
from tests.aftercare.core.reading.labelled import CORPUS, SEEN, WEIGHED, Row, Scores, rows, score  # noqa: E402

SMOOTH = 1 / 30  # ridge penalty, by cross-validation
FRESH = 2.0  # weight of a reply that no rule was made with: there the rules are as wrong as they will be
STEPS = 300
URGENCIES = len(second.URGENCIES)
Corpus = tuple[list[Row], Any, Any, Any, list[str]]  # replies, features, truth by head, weights, hands


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--by-hand", action="store_true")
    if parser.parse_args().by_hand:
        by_hand()
        return
    _all, matrix, truth, weights, _hands = _corpus()
    fitted = _fit(matrix, truth, weights)
    _save(fitted)
    print(f"{len(truth)} replies; {second.WEIGHTS} is {second.WEIGHTS.stat().st_size:,} bytes")


def by_hand() -> None:
    """Print how each fresh hand is read with the weights of all others, and all of them together."""
    kept = second._weights()
    together: list[tuple[Row, Any]] = []
    _all, matrix, truth, weights, hands = _corpus()
    try:
        for hand in WEIGHED:
            others = np.array([one != hand for one in hands])
            _use(_fit(matrix[others], truth[others], weights[others]))
            read_now = [(row, read(row["text"])) for row in rows(CORPUS / f"{hand}.jsonl")]
            together += read_now
            print(hand, _told(_scores(read_now)))
    finally:
        second._weights = lambda: kept  # type: ignore[assignment]  # the function that reads the file is left alone
    print("all", _told(_scores(together)))


def _scores(pairs: list[tuple[Row, Any]]) -> Scores:
    found = {row["text"]: reading for row, reading in pairs}
    return score([row for row, _reading in pairs], lambda text: found[text])


def _told(scores: Scores) -> str:
    return " ".join(f"{name} {value:.3f}" for name, value in asdict(scores).items())


def _corpus() -> Corpus:
    """Lay out every reply that the second opinion is asked about."""
    all_rows: list[Row] = []
    hands: list[str] = []
    values: list[float] = []
    columns: list[int] = []
    ends = [0]
    for hand in (*SEEN, *WEIGHED):
        for row in rows(CORPUS / f"{hand}.jsonl"):
            laid = by_rules(row["text"])
            if laid is None:
                continue
            for numbers, value in second.groups(laid.answer, laid.page, laid.found, laid.reading):
                values += [value] * len(numbers)
                columns += numbers
            ends.append(len(columns))
            all_rows.append(row)
            hands.append(hand)
    matrix = csr_matrix((values, columns, ends), shape=(len(all_rows), features.SIZE))
    truth = np.array(
        [
            [row["urgency"] == urgency for urgency in second.URGENCIES]
            + [topic in row["about"] for topic in second.TOPICS]
            for row in all_rows
        ],
        dtype=float,
    )
    return all_rows, matrix, truth, np.array([FRESH if hand in WEIGHED else 1.0 for hand in hands]), hands


def _fit(matrix: Any, truth: Any, weights: Any) -> Any:
    """Return the weights of every head, the bias in the last row."""
    urgency = _solve(matrix, truth[:, :URGENCIES], weights, _together)
    topics = [_solve(matrix, truth[:, [head]], weights, _alone) for head in range(URGENCIES, truth.shape[1])]
    return np.hstack([urgency, *topics])


def _solve(matrix: Any, truth: Any, weights: Any, likelihood: Any) -> Any:
    shape = (matrix.shape[1] + 1, truth.shape[1])

    def loss(flat: Any) -> tuple[float, Any]:
        given = flat.reshape(shape)
        value, wrong = likelihood(matrix @ given[:-1] + given[-1], truth)
        wrong = wrong * weights[:, None]
        slope = np.vstack([matrix.T @ wrong + SMOOTH * given[:-1], wrong.sum(axis=0)])
        return float(value @ weights) + SMOOTH / 2 * float((given[:-1] ** 2).sum()), slope.ravel()

    start = np.zeros(shape).ravel()
    return minimize(loss, start, jac=True, method="L-BFGS-B", options={"maxiter": STEPS}).x.reshape(shape)


def _together(scores: Any, truth: Any) -> tuple[Any, Any]:
    """One of several: the loss of each reply, and its slope."""
    most = scores.max(axis=1, keepdims=True)
    norm = most[:, 0] + np.log(np.exp(scores - most).sum(axis=1))
    return norm - (scores * truth).sum(axis=1), np.exp(scores - norm[:, None]) - truth


def _alone(scores: Any, truth: Any) -> tuple[Any, Any]:
    """Yes or no: the same."""
    return np.logaddexp(0, scores)[:, 0] - (scores * truth)[:, 0], 1 / (1 + np.exp(-scores)) - truth


def _save(fitted: Any) -> None:
    np.savez_compressed(second.WEIGHTS, weights=fitted[:-1].astype(np.float16), bias=fitted[-1].astype(np.float32))


def _use(fitted: Any) -> None:
    now = fitted[:-1].astype(np.float32), fitted[-1].astype(np.float32)
    second._weights = lambda: now  # type: ignore[assignment]


if __name__ == "__main__":
    main()
