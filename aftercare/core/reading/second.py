"""The second opinion: logistic regressions over pieces of words, trained on the studio's own corpus.

It never makes a reply less urgent than the rules do. Where it sees danger, or a wish for an end of messages, that the
rules do not, the reply goes to a person as well. `tests/bench/train_reader.py` makes the weights.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

import numpy as np
import numpy.typing as npt

from aftercare.core.reading import features
from aftercare.core.reading.values import Topic

WEIGHTS = Path(__file__).with_name("second.npz")
TOPICS = (Topic.FINE, Topic.BOOKING, Topic.QUESTION, Topic.COMPLAINT, Topic.RETENTION)
HEADS = ("sign", "emergency", "stop", *TOPICS)
# Above these the model's word counts; chosen by cross-validation so that about 2 % of harmless replies are passed on.
SIGN, EMERGENCY, STOP = 0.8, 0.6, 0.35
SIGN_AGAINST_RULES = 0.9  # where the rules know what it is about, or saw a sign that is none now
SIGN_UNEXPLAINED = 0.1  # where the rules understood nothing at all
SURE_EMERGENCY, SURE_STOP = 0.7, 0.4  # no rule has seen it, and yet it is acted on
TOPIC = 0.3  # what a reply is about, of which the rules know nothing
# A topic of which a rule saw a word is doubted below the first, and one of which none did is believed above the second;
# chosen with hands whose replies neither the rules nor the weights had seen.
DOUBTED = {Topic.BOOKING: 0.05, Topic.QUESTION: 0.05, Topic.COMPLAINT: 0.05, Topic.RETENTION: 0.02}
BELIEVED = {Topic.BOOKING: 0.8, Topic.QUESTION: 0.7, Topic.COMPLAINT: 0.8, Topic.RETENTION: 0.7, Topic.FINE: 0.6}


@dataclass(frozen=True, slots=True)
class Opinion:
    """The chances, 0 to 1, that a reply tells of a current sign, of an emergency, of a wish for no more messages.

    ``topics`` has those of what else it may be about.
    """

    sign: float
    emergency: float
    stop: float
    topics: Mapping[Topic, float]

    @property
    def topic(self) -> Topic | None:
        """What it is likeliest about, or None where nothing is likely enough."""
        likeliest = max(self.topics, key=lambda topic: self.topics[topic], default=None)
        return likeliest if likeliest is not None and self.topics[likeliest] > TOPIC else None

    def doubts(self, topic: Topic) -> bool:
        """Whether a word of this topic is likelier of another matter."""
        return self.topics.get(topic, 1.0) < DOUBTED.get(topic, 0.0)

    def believed(self) -> Iterator[Topic]:
        """What it is about, whatever the rules know of it."""
        return (topic for topic, chance in self.topics.items() if chance > BELIEVED[topic])


@lru_cache(maxsize=1)
def _weights() -> tuple[npt.NDArray[np.float32], npt.NDArray[np.float32]]:
    with np.load(WEIGHTS) as stored:
        return stored["weights"].astype(np.float32), stored["bias"].astype(np.float32)


def opinion(text: str) -> Opinion:
    """Return what the model makes of a reply's own words."""
    found = features.of(text)
    if not found:
        return Opinion(0.0, 0.0, 0.0, {})
    weights, bias = _weights()
    scores = weights[found].sum(axis=0) / len(found) ** 0.5 + bias
    sign, emergency, stop, *about = (1 / (1 + np.exp(-scores))).tolist()
    return Opinion(sign, emergency, stop, dict(zip(TOPICS, about, strict=True)))
