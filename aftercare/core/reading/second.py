"""The second opinion: logistic regressions over pieces of words, trained on the studio's own corpus.

It makes a reply less urgent than the rules do only where few words are all praise, and then a person reads it. Where it
sees danger, or a wish for an end of messages, that the rules do not, that is acted on if it is sure, and a person reads
the reply as well, unless the wish is certain. Where the rules saw no sign in what is urgent, it names which it is.
`tests/bench/train_reader.py` makes the weights.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path

import numpy as np
import numpy.typing as npt

from aftercare.core.reading import features
from aftercare.core.reading.values import Sign, Topic

WEIGHTS = Path(__file__).with_name("second.npz")
TOPICS = (Topic.FINE, Topic.BOOKING, Topic.QUESTION, Topic.COMPLAINT, Topic.RETENTION)
SIGNS = tuple(Sign)
HEADS = ("sign", "emergency", "stop", *TOPICS, *(f"sign:{sign}" for sign in SIGNS))
# Above these the model's word counts; chosen by leaving out whole hands, one after the other, `sam` to `yan` of the
# labelled replies (1,050), and a few then raised where it took everyday sentences of the tests for signs; that of a
# sure stop then lowered by `ida` to `ned` (600), of which it had seen nothing, and that of nothing understood raised by
# `pam` to `yas` and five headings (2,500): of 78 such replies below it none told of a sign. Where the rules know what
# a reply is about, or saw a sign that is none now, it has to be surer.
SIGN, SIGN_AGAINST_RULES = 0.3, 0.6  # passed on to a person
SIGN_AGAINST_SPANISH_RULES = 0.35  # of 3,788 Spanish replies it hands ten more on
SURE_SIGN, SURE_SIGN_AGAINST_RULES = 0.6, 0.9  # read as a sign of today: five in six are
SIGN_COMES_BACK = 0.85  # what is over by the rules
SIGN_AFTER_ALL = 0.8  # in words that the rules hold for an old story: of 102 true ones, none comes so far
EMERGENCY, EMERGENCY_AGAINST_RULES = 0.2, 0.45  # passed on to a person
SURE_EMERGENCY, SURE_EMERGENCY_AGAINST_RULES = 0.35, 0.6
# What is dictated without a stop heaps up hints: of so many words, those that were no emergencies came up to 0.78.
MANY_WORDS, SURE_OF_MANY = 30, 0.8
WORSE, SOME_WORDS = 0.55, 12  # a sign of today that is an emergency; of fewer words the rules know more
SIGN_UNEXPLAINED = 0.1  # where the rules understood nothing at all; below the next there is nothing in it for a person
NO_SIGN = 0.08
STOP, SURE_STOP = 0.25, 0.3
CERTAIN_STOP = 0.75  # nobody has to read it as well
TOPIC = 0.25  # what a reply is about, of which the rules know nothing
# A topic of which a rule saw a word is doubted below the first, and one of which none did is believed above the second.
DOUBTED = {Topic.BOOKING: 0.05, Topic.QUESTION: 0.05, Topic.COMPLAINT: 0.05, Topic.RETENTION: 0.02, Topic.FINE: 0.02}
BELIEVED = {Topic.BOOKING: 0.4, Topic.QUESTION: 0.7, Topic.COMPLAINT: 0.3, Topic.RETENTION: 0.3, Topic.FINE: 0.5}
# Praise, and no sign, in few words: "breathless, call an ambulance, I am gorgeous". A person sees to it.
PRAISE, NO_SIGN_IN_PRAISE, NO_EMERGENCY_IN_PRAISE, FEW_WORDS = 0.5, 0.08, 0.05, 25
SIGN_BESIDE_DENIAL = 0.5  # in what is left of a reply without the clauses that deny
WISH = 0.2  # a visit or an end of messages, in words that begin like a question
NAMED = 0.5  # which sign it is, where the rules saw none
# Beside a sign she seldom says that all is well.
FINE_DOUBTED_BESIDE_SIGN, BELIEVED_BESIDE_SIGN = 0.1, 0.8
BELIEVED_BESIDE_LOSS = 0.65  # praise of which the rules know nothing, beside falling lashes or a complaint


@dataclass(frozen=True, slots=True)
class Opinion:
    """The chances, 0 to 1, that a reply tells of a current sign, of an emergency, of a wish for no more messages.

    ``topics`` has those of what else it may be about, ``signs`` those of each sign.
    """

    sign: float
    emergency: float
    stop: float
    topics: Mapping[Topic, float]
    signs: Mapping[Sign, float]

    @property
    def topic(self) -> Topic | None:
        """What it is likeliest about, or None where nothing is likely enough."""
        likeliest = max(self.topics, key=lambda topic: self.topics[topic], default=None)
        return likeliest if likeliest is not None and self.topics[likeliest] > TOPIC else None

    def calmed_by(self, other: Opinion) -> Opinion:
        """Return this opinion, but of what is urgent with no more than the ``other`` sees."""
        signs = {sign: min(chance, other.signs.get(sign, 0.0)) for sign, chance in self.signs.items()}
        sign, emergency = min(self.sign, other.sign), min(self.emergency, other.emergency)
        return replace(self, sign=sign, emergency=emergency, signs=signs)

    @property
    def wishes(self) -> bool:
        """Whether what begins like a question may rather be a wish to book or to end messages."""
        return self.topics.get(Topic.BOOKING, 0.0) > WISH or self.stop > WISH

    def doubts(self, topic: Topic) -> bool:
        """Whether a word of this topic is likelier of another matter."""
        return self.topics.get(topic, 1.0) < DOUBTED[topic]

    @property
    def named(self) -> tuple[Sign, ...]:
        """Which signs it tells of."""
        return tuple(sign for sign, chance in self.signs.items() if chance > NAMED)

    def doubts_fine_beside_sign(self) -> bool:
        """Whether a word of praise beside a sign is likelier of another matter."""
        return self.topics.get(Topic.FINE, 1.0) < FINE_DOUBTED_BESIDE_SIGN

    def believed(self, *, beside_sign: bool) -> Iterator[Topic]:
        """What it is about, whatever the rules know of it."""
        least = dict.fromkeys(BELIEVED, BELIEVED_BESIDE_SIGN) if beside_sign else BELIEVED
        return (topic for topic, chance in self.topics.items() if chance > least[topic])


@lru_cache(maxsize=1)
def _weights() -> tuple[npt.NDArray[np.float32], npt.NDArray[np.float32]]:
    with np.load(WEIGHTS) as stored:
        return stored["weights"].astype(np.float32), stored["bias"].astype(np.float32)


def opinion(text: str, words: Iterable[str]) -> Opinion:
    """Return what the model makes of a reply's own words; ``words`` are the same as the lexicon spells them."""
    pieces, kinds = features.of(text, words)
    if not pieces:
        return Opinion(0.0, 0.0, 0.0, {}, {})
    weights, bias = _weights()
    scores = weights[pieces].sum(axis=0) / len(pieces) ** 0.5 + bias
    if kinds:
        scores = scores + weights[kinds].sum(axis=0) / len(kinds) ** 0.5
    sign, emergency, stop, *others = (1 / (1 + np.exp(-scores))).tolist()
    about, named = others[: len(TOPICS)], others[len(TOPICS) :]
    return Opinion(sign, emergency, stop, dict(zip(TOPICS, about, strict=True)), dict(zip(SIGNS, named, strict=True)))
