"""Trains the reader's second opinion: ``python tests/bench/train_reader.py [--report]``, on the hands that may be seen.

Writes the weights that `aftercare.core.reading.second` loads; with ``--report`` also prints how often the model is
right on hands that it was not trained on. Beside the replies it learns, at less weight, from the phrases of the
lexicon: it knows words that no reply has held yet.
"""

from __future__ import annotations

import random
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import Any

import numpy as np
from scipy.optimize import minimize
from scipy.sparse import csr_matrix

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))  # run as a script from anywhere

from aftercare.core.reading import features, grading, lexicon, second
from aftercare.core.reading.phrases import Mark, endings
from aftercare.core.reading.reader import unexplained
from aftercare.core.reading.spelling import known
from aftercare.core.reading.tokens import tokenize
from tests.aftercare.core.reading.labelled import CORPUS, SEEN, rows

SMOOTH = 0.02  # ridge penalty, by cross-validation over hands
FOLDS = 5  # groups of whole hands
TIMES = 3  # each phrase of the lexicon is put together anew as often
# What a phrase weighs beside a reply, by what is learned from it; by cross-validation over hands.
WEIGHT = {"emergency": 0.1}
LIGHT = 0.03
MANY = "many_"  # what was gathered under one heading, which says nothing of how often it comes in
LESS = 0.3
MEANS = {"bald": "retention", "shedding": "retention"}  # lists of phrases that tell of a topic of another name


def _is_about(topic: str, row: dict[str, Any]) -> bool:
    return topic in row["about"]


def _tells_of(sign: str, row: dict[str, Any]) -> bool:
    return sign in row["signs"]


Label = Callable[[dict[str, Any]], bool]
LABELS: dict[str, Label] = {
    "sign": lambda row: row["urgency"] in ("emergency", "same_day"),
    "emergency": lambda row: row["urgency"] == "emergency",
    **{topic: partial(_is_about, topic) for topic in ("stop", *second.TOPICS)},
    **{f"sign:{sign}": partial(_tells_of, str(sign)) for sign in second.SIGNS},
}
THRESHOLDS = {"sign": second.SIGN, "emergency": second.EMERGENCY, "stop": second.STOP}


@dataclass(frozen=True, slots=True)
class Material:
    """What is learned from: the labelled replies and then the phrases, and of each its hand, "" of a phrase."""

    rows: list[dict[str, Any]]
    hands: Any
    matrix: Any  # features of each, sparse

    def truth(self, head: str) -> Any:
        return np.array([LABELS[head](row) for row in self.rows], dtype=float)

    def counts(self, head: str) -> Any:
        """Return what each weighs."""
        gathered = np.char.startswith(self.hands, MANY)
        return np.where(self.hands == "", WEIGHT.get(head, LIGHT), np.where(gathered, LESS, 1.0))

    def learned(self, without: Sequence[str] = ()) -> tuple[Any, Any]:
        """Return the weights and the bias of each head, learned from all but these hands."""
        kept = ~np.isin(self.hands, list(without))
        matrix = self.matrix[kept]
        weights = np.zeros((features.SIZE, len(second.HEADS)))
        bias = np.zeros(len(second.HEADS))
        for place, head in enumerate(second.HEADS):
            fitted = _fit(matrix, self.truth(head)[kept], self.counts(head)[kept])
            weights[:, place], bias[place] = fitted[:-1], fitted[-1]
        return weights, bias


def material() -> Material:
    replies = [(hand, row) for hand in SEEN for row in rows(CORPUS / f"{hand}.jsonl")]
    phrases = list(_phrases())
    texts = [unexplained(row["text"]) for _, row in replies] + [_worded(text) for text, _ in phrases]
    hands = np.array([hand for hand, _ in replies] + [""] * len(phrases))
    return Material([row for _, row in replies + phrases], hands, _matrix(texts))


def main() -> None:
    learned = material()
    if "--report" in sys.argv:
        for head in second.HEADS:
            _report(head, learned)
    weights, bias = learned.learned()
    np.savez_compressed(second.WEIGHTS, weights=weights.astype(np.float16), bias=bias.astype(np.float32))
    print(f"{np.sum(learned.hands != ''):,} replies; {second.WEIGHTS} is {second.WEIGHTS.stat().st_size:,} bytes")


def _phrases() -> Iterator[tuple[str, dict[str, Any]]]:
    """Yield the phrases of the lexicon, put together at random, as replies with what they tell of."""
    chance = random.Random(3)
    for signs, topics, classes in lexicon.SOURCES:
        lists = {name: text.split() for name, text in classes.items()}
        for named, is_sign in ((signs, True), (topics, False)):
            for name, text in named.items():
                urgency = "none" if not is_sign else "emergency" if name.endswith("!") else "same_day"
                told = [str(sign) for sign in grading.named(Mark(name, 0, 0))] if is_sign else []
                row = {"urgency": urgency, "about": [] if is_sign else [MEANS.get(name, name)], "signs": told}
                for phrase in text.replace("\n", " ").split(","):
                    for spoken in {_spoken(phrase, lists, chance) for _ in range(TIMES)} - {""}:
                        yield spoken, row


def _spoken(phrase: str, classes: Mapping[str, list[str]], chance: random.Random) -> str:
    """Return one way to say a phrase: an alternative each, a word of each class, nothing in the gaps."""
    words = []
    for element in phrase.split():
        if element == ".." or element.endswith("?") and chance.random() < 0.5:
            continue
        word = chance.choice(element.removesuffix("?").split("|"))
        if (of_class := classes.get(word.strip("<>"))) is not None and word.startswith("<"):
            word = chance.choice(of_class)
        words.append(chance.choice(list(endings(word))))
    return " ".join(words)


def _worded(text: str) -> tuple[str, list[str]]:
    return text, [token.word for token in tokenize(text, known)]


def _matrix(texts: list[tuple[str, list[str]]]) -> Any:
    values: list[float] = []
    columns: list[int] = []
    ends = [0]
    for text, words in texts:
        for found in features.of(text, words):
            values += [1 / max(1, len(found)) ** 0.5] * len(found)
            columns += found
        ends.append(len(columns))
    matrix = csr_matrix((values, columns, ends), shape=(len(texts), features.SIZE))
    matrix.sum_duplicates()
    return matrix


def _fit(matrix: Any, truth: Any, counts: Any) -> Any:
    def loss(weights: Any) -> tuple[float, Any]:
        scores = matrix @ weights[:-1] + weights[-1]
        wrong = counts * (1 / (1 + np.exp(-scores)) - truth)
        penalty = SMOOTH / 2 * weights[:-1] @ weights[:-1]
        value = np.sum(counts * (np.logaddexp(0, scores) - truth * scores)) + penalty
        return value, np.r_[matrix.T @ wrong + SMOOTH * weights[:-1], wrong.sum()]

    return minimize(loss, np.zeros(matrix.shape[1] + 1), jac=True, method="L-BFGS-B", options={"maxiter": 200}).x


def groups(folds: int) -> list[list[str]]:
    """Return the seen hands in groups, each to be left out in turn."""
    return [[hand for place, hand in enumerate(SEEN) if place % folds == fold] for fold in range(folds)]


def _report(head: str, learned: Material) -> None:
    truth, counts = learned.truth(head), learned.counts(head)
    chance = np.zeros(len(truth))
    for group in groups(FOLDS):
        out = np.isin(learned.hands, group)
        weights = _fit(learned.matrix[~out], truth[~out], counts[~out])
        chance[out] = 1 / (1 + np.exp(-(learned.matrix[out] @ weights[:-1] + weights[-1])))
    replies = learned.hands != ""
    least = THRESHOLDS.get(head, second.TOPIC)
    said = chance > least
    print(
        f"{head}: above {least} finds {said[replies & (truth == 1)].mean():.0%} of the unseen, "
        f"wrongly {said[replies & (truth == 0)].mean():.1%}",
        flush=True,
    )


if __name__ == "__main__":
    main()
