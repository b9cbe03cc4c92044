"""The second opinion: regressions over her words and over what the rules made of them, trained on labelled replies.

`tests/bench/train_reader.py` makes the weights and prints what the limits below rest on: each hand of the corpus read
with weights that never saw it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

import numpy as np
import numpy.typing as npt

from aftercare.core.reading import features
from aftercare.core.reading.findings import Findings
from aftercare.core.reading.page import Page
from aftercare.core.reading.values import Reading, Topic, Urgency

WEIGHTS = Path(__file__).with_name("second.npz")
URGENCIES = (Urgency.NONE, Urgency.WATCH, Urgency.SAME_DAY, Urgency.EMERGENCY)
TOPICS = (Topic.STOP, Topic.FINE, Topic.BOOKING, Topic.QUESTION, Topic.COMPLAINT, Topic.RETENTION)
HEADS = (*URGENCIES, *TOPICS)
RULES = 0.3  # how much what the rules read weighs beside her words, by cross-validation


@dataclass(frozen=True, slots=True)
class Opinion:
    """The chances, 0 to 1, of each urgency (they add up to 1), and that a reply is about each of `TOPICS`."""

    urgency: Mapping[Urgency, float]
    topics: Mapping[Topic, float]

    @property
    def current(self) -> float:
        """The chance that she tells of a sign that she has now."""
        return self.urgency[Urgency.SAME_DAY] + self.urgency[Urgency.EMERGENCY]

    @property
    def emergency(self) -> float:
        return self.urgency[Urgency.EMERGENCY]


@lru_cache(maxsize=1)
def _weights() -> tuple[npt.NDArray[np.float32], npt.NDArray[np.float32]]:
    with np.load(WEIGHTS) as stored:
        return stored["weights"].astype(np.float32), stored["bias"].astype(np.float32)


def opinion(text: str, page: Page, found: Findings, reading: Reading) -> Opinion:
    """Return what the model makes of a reply's own words and of their reading by the rules."""
    weights, bias = _weights()
    scores = bias.copy()
    for numbers, weight in groups(text, page, found, reading):
        if numbers:
            scores += weights[numbers].sum(axis=0) * weight
    of_urgency = np.exp(scores[: len(URGENCIES)] - scores[: len(URGENCIES)].max())
    of_topics = 1 / (1 + np.exp(-scores[len(URGENCIES) :]))
    return Opinion(
        dict(zip(URGENCIES, (of_urgency / of_urgency.sum()).tolist(), strict=True)),
        dict(zip(TOPICS, of_topics.tolist(), strict=True)),
    )


def groups(text: str, page: Page, found: Findings, reading: Reading) -> tuple[tuple[list[int], float], ...]:
    """Return the numbers of the features and the value that each has: a long reply says no more than a short one."""
    words, rules = features.of_words(text), features.of_rules(page, found, reading)
    return (words, len(words) ** -0.5 if words else 0.0), (rules, RULES * len(rules) ** -0.5 if rules else 0.0)
