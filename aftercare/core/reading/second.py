"""The second opinion: three logistic regressions over pieces of words, trained on the studio's own corpus.

It never overrules the rules. Where it sees danger, or a wish for an end of messages, that the rules do not, the reply
goes to a person as well. `tests/bench/train_reader.py` makes the weights.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

import numpy as np
import numpy.typing as npt

from aftercare.core.reading import features

WEIGHTS = Path(__file__).with_name("second.npz")
HEADS = ("sign", "emergency", "stop")
# Above these the model's word counts; chosen by cross-validation so that about 2 % of harmless replies are passed on.
SIGN, EMERGENCY, STOP = 0.8, 0.6, 0.35
SIGN_DISMISSED = 0.97  # where the rules saw the sign and found it denied, over, imagined or another's
SIGN_UNEXPLAINED = 0.35  # where the rules understood nothing at all


@dataclass(frozen=True, slots=True)
class Opinion:
    """The chances, 0 to 1, that a reply tells of a current sign, of an emergency, of a wish for no more messages."""

    sign: float
    emergency: float
    stop: float


@lru_cache(maxsize=1)
def _weights() -> tuple[npt.NDArray[np.float32], npt.NDArray[np.float32]]:
    with np.load(WEIGHTS) as stored:
        return stored["weights"].astype(np.float32), stored["bias"].astype(np.float32)


def opinion(text: str) -> Opinion:
    """Return what the model makes of a reply's own words."""
    found = features.of(text)
    if not found:
        return Opinion(0.0, 0.0, 0.0)
    weights, bias = _weights()
    scores = weights[found].sum(axis=0) / len(found) ** 0.5 + bias
    sign, emergency, stop = (1 / (1 + np.exp(-scores))).tolist()
    return Opinion(sign, emergency, stop)
